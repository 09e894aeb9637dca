import { isOpen, type OpenEnd } from "../layout/stair-facts";
import { isProblem, type Problem } from "../problem";
import { type ClosureLimits, closureNotes } from "./closure-notes";
import { type CornerProblem, corners } from "./corner-reading";
import { endCuts } from "./end-cuts";

/** Readings of one riser at its back, in one unit; angles in degrees, leans are the skirts' angles in plan. */
export interface RiserReading {
  readonly step?: string | number;
  readonly height: number;
  readonly top: number;
  readonly bottom: number;
  readonly diagonal?: number;
  readonly secondDiagonal?: number;
  readonly leftOffset?: number;
  readonly leftAngle?: number;
  readonly cutHeight?: number;
  readonly leftLean: number;
  readonly rightLean: number;
}

/** What all risers of a flight share. */
export interface RiserPiece {
  readonly openEnd: OpenEnd;
  readonly runPast: number;
  readonly thickness: number;
  readonly closure: ClosureLimits;
}

export type RiserFitProblem = CornerProblem | "edges-cross";

export interface RiserFit {
  readonly step: string | number | undefined;
  readonly length: number;
  readonly longPoint: number;
  readonly shortPoint: number;
  readonly top: number;
  readonly bottom: number;
  readonly leftAngle: number;
  readonly rightAngle: number;
  readonly leftTilt: number;
  readonly rightTilt: number;
  readonly height: number;
  readonly closure?: number;
  readonly note: string;
}

export interface FailedRiserFit {
  readonly step: string | number | undefined;
  readonly bad: Problem<RiserFitProblem>;
}

const one = (reading: RiserReading, piece: RiserPiece) => {
  const { top, bottom, height } = reading;
  const cutHeight = reading.cutHeight ?? height;
  const read = corners({ ...reading, distance: height, near: top, far: bottom });
  if (isProblem(read)) return read;
  const [leftOpen, rightOpen] = [isOpen("left", piece.openEnd), isOpen("right", piece.openEnd)];
  const cuts = endCuts(read, cutHeight, piece.thickness, {
    leftLean: leftOpen ? 0 : reading.leftLean,
    rightLean: rightOpen ? 0 : reading.rightLean,
    leftPast: leftOpen ? piece.runPast : 0,
    rightPast: rightOpen ? piece.runPast : 0,
  });
  if (isProblem(cuts)) return cuts;
  // The blank must hold the underside too, so an undercut shortens no blank.
  const undercuts = Math.max(0, -cuts.leftGain) + Math.max(0, -cuts.rightGain);
  return { read, cuts, cutHeight, length: cuts.longPoint + undercuts };
};

/** Cut lengths, angles and tilts of risers from tape readings, carried from the distance measured to the height of the piece, from the top down. */
export const riserFits = (readings: readonly RiserReading[], piece: RiserPiece): readonly (RiserFit | FailedRiserFit)[] => {
  const fitted = readings.map((reading) => one(reading, piece));
  const notes = closureNotes(fitted.map((found) => (isProblem(found) ? undefined : found.read)), piece.closure);
  return fitted.map((found, row): RiserFit | FailedRiserFit => {
    const step = readings[row]?.step;
    if (isProblem(found)) return { step, bad: found };
    const { cuts, read } = found;
    return {
      step,
      length: found.length,
      longPoint: cuts.longPoint,
      shortPoint: cuts.shortPoint,
      top: cuts.near,
      bottom: cuts.far,
      leftAngle: cuts.leftAngle,
      rightAngle: cuts.rightAngle,
      leftTilt: cuts.leftTilt,
      rightTilt: cuts.rightTilt,
      height: found.cutHeight,
      ...(read.closure === undefined ? {} : { closure: read.closure }),
      note: notes[row] ?? "",
    };
  });
};
