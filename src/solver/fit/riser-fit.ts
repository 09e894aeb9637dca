import type { OpenEnd } from "../layout/stair-facts";
import type { Unit } from "../length/length";
import { isProblem, type Problem } from "../problem";
import { adjusted, type ClosureLimits } from "./closure-notes";
import { type CornerProblem, corners } from "./corner-reading";
import { doubtfulNotes } from "./doubtful-notes";
import { endCuts, reach } from "./end-cuts";
import { pieceFrame } from "./piece-frame";
import { cutFigures, endsOf, type Fitted, fittedRows } from "./fitted-rows";
import type { RiserReading } from "./riser-reading";
import { riserPiece } from "./skirt-surface/piece-readings";
import { unusedAtOpenEnds } from "./unused-at-open-ends";

/** What all risers of a flight share. */
export interface RiserPiece {
  readonly openEnd: OpenEnd;
  readonly runPast: number;
  readonly thickness: number;
  /** Clearance to the skirt at each closed end, square to it. */
  readonly gap: number;
  /** Degrees every closed end is undercut by on purpose. */
  readonly undercut: number;
  readonly closure: ClosureLimits;
  /** Of all lengths here. */
  readonly unit: Unit;
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
  readonly leftSet: string;
  readonly rightSet: string;
  readonly note: string;
}

export interface FailedRiserFit {
  readonly step: string | number | undefined;
  readonly bad: Problem<RiserFitProblem>;
}

const one = (reading: RiserReading, piece: RiserPiece): Fitted<Omit<RiserFit, "note">> | Problem<RiserFitProblem> => {
  const { step, top, bottom, height } = reading;
  const cutHeight = reading.cutHeight ?? height;
  const lines = { leftDistance: height, rightDistance: height };
  const found = corners({ ...reading, ...lines, near: top, ...(bottom === undefined ? {} : { far: bottom }) });
  if (isProblem(found)) return found;
  const read = adjusted(found, piece.closure);
  const ends = { left: { lean: reading.leftFlare, gap: reading.leftGap }, right: { lean: reading.rightFlare, gap: reading.rightGap } };
  const cuts = endCuts(pieceFrame(read), { from: 0, to: cutHeight }, piece.thickness, endsOf(ends, piece, piece.runPast), piece.undercut);
  if (isProblem(cuts)) return cuts;
  const { left, right } = reach(cuts);
  return {
    read,
    unused: unusedAtOpenEnds(piece.openEnd, ends, "flare"),
    fit: {
      step,
      // The blank must hold the back too, where that is the longer.
      length: right - left,
      top: cuts.near,
      bottom: cuts.far,
      height: cutHeight,
      ...(read.closure === undefined ? {} : { closure: read.closure }),
      ...cutFigures(cuts, "back"),
    },
  };
};

/**
 * Cut lengths, angles and tilts of risers from tape readings, carried from the distance measured to the height of the piece, from the top
 * down.
 */
export const riserFits = (readings: readonly RiserReading[], piece: RiserPiece): readonly (RiserFit | FailedRiserFit)[] =>
  fittedRows(
    readings,
    (reading) => one(reading, piece),
    piece.closure,
    doubtfulNotes("riser", readings.map(riserPiece), piece.unit, piece.closure.division),
  );
