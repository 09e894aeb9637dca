import { isProblem, type Problem, problem } from "../problem";
import { isOpen, type OpenEnd } from "../layout/stair-facts";
import { type ClosureLimits, closureNotes } from "./closure-notes";
import { type CornerProblem, corners } from "./corner-reading";
import { endCuts } from "./end-cuts";
import { type MitredReturn, mitredReturn } from "./mitred-return";

/** Readings of one tread, at the level of the sub-tread, in one unit; angles in degrees. */
export interface TreadReading {
  readonly step?: string | number;
  readonly run?: number;
  readonly back: number;
  readonly front: number;
  readonly diagonal?: number;
  readonly secondDiagonal?: number;
  readonly leftOffset?: number;
  readonly leftAngle?: number;
  readonly leftLean: number;
  readonly rightLean: number;
  readonly depth?: number;
}

/** What all treads of a flight share. */
export interface TreadPiece {
  readonly nosing: number;
  readonly openEnd: OpenEnd;
  readonly overhang: number;
  readonly returnWidth: number;
  readonly thickness: number;
  readonly closure: ClosureLimits;
}

export type FitProblem = CornerProblem | "edges-cross" | "no-distance" | "nothing-left";

export interface TreadFit {
  readonly step: string | number | undefined;
  readonly length: number;
  readonly longPoint: number;
  readonly shortPoint: number;
  readonly back: number;
  readonly front: number;
  readonly leftAngle: number;
  readonly rightAngle: number;
  readonly leftTilt: number;
  readonly rightTilt: number;
  readonly depth: number;
  readonly heel?: number;
  readonly toe?: number;
  readonly mitre?: number;
  readonly returnLength?: number;
  readonly closure?: number;
  readonly leftHeel?: number;
  readonly leftToe?: number;
  readonly leftMitre?: number;
  readonly leftReturnLength?: number;
  readonly note: string;
}

export interface FailedFit {
  readonly step: string | number | undefined;
  readonly bad: Problem<FitProblem>;
}

interface Fitted {
  readonly fit: Omit<TreadFit, "note">;
  readonly closure: number | undefined;
  readonly unused: readonly string[];
}

const mirrored = (place: number): number => -place;

const one = (reading: TreadReading, piece: TreadPiece): Fitted | Problem<FitProblem> => {
  const { step, run, back, front } = reading;
  const distance = run ?? reading.depth;
  if (distance === undefined) return problem("no-distance");
  const depth = reading.depth ?? distance + piece.nosing;
  const read = corners({ ...reading, distance, near: back, far: front });
  if (isProblem(read)) return read;
  const [leftOpen, rightOpen] = [isOpen("left", piece.openEnd), isOpen("right", piece.openEnd)];
  const leans = { leftLean: leftOpen ? 0 : reading.leftLean, rightLean: rightOpen ? 0 : reading.rightLean };
  const cuts = endCuts(read, depth, piece.thickness, { ...leans, leftPast: 0, rightPast: 0 });
  if (isProblem(cuts)) return cuts;
  const side = { depth, overhang: piece.overhang, returnWidth: piece.returnWidth };
  const right = rightOpen ? mitredReturn({ ...side, angle: cuts.rightAngle, skirtAtBack: back }) : undefined;
  // Seen in a mirror the left skirt line starts at the near left corner, which is 0.
  const left = leftOpen ? mitredReturn({ ...side, angle: cuts.leftAngle, skirtAtBack: 0 }) : undefined;
  const leftEnd = left ? Math.min(0, mirrored(left.toe)) : Math.min(0, cuts.farLeft) - Math.max(0, cuts.leftGain);
  const rightEnd = right ? Math.max(back, right.toe) : Math.max(back, cuts.farRight) + Math.max(0, cuts.rightGain);
  const length = rightEnd - leftEnd;
  if (length <= 0) return problem("nothing-left");
  const fromLeft = (found: MitredReturn) => ({ heel: found.heel - leftEnd, toe: found.toe - leftEnd, mitre: found.mitre, returnLength: found.length });
  const fromRight = (found: MitredReturn) => ({ heel: rightEnd - mirrored(found.heel), toe: rightEnd - mirrored(found.toe), mitre: found.mitre, returnLength: found.length });
  const main = right ? fromLeft(right) : left ? fromRight(left) : {};
  const second = right && left ? fromRight(left) : undefined;
  return {
    closure: read.closure,
    unused: read.unused,
    fit: {
      step,
      length,
      longPoint: cuts.longPoint,
      shortPoint: cuts.shortPoint,
      back: cuts.near,
      front: cuts.far,
      leftAngle: cuts.leftAngle,
      rightAngle: cuts.rightAngle,
      leftTilt: cuts.leftTilt,
      rightTilt: cuts.rightTilt,
      depth,
      ...main,
      ...(read.closure === undefined ? {} : { closure: read.closure }),
      ...(second === undefined
        ? {}
        : { leftHeel: second.heel, leftToe: second.toe, leftMitre: second.mitre, leftReturnLength: second.returnLength }),
    },
  };
};

/**
 * Cut lengths, angles, tilts and mitres of treads from tape readings, each tread carried from the distance measured to its own depth. The
 * construction places the four corners in the plane of the sub-tread; a lean moves an end on the face by thickness x tan(lean).
 */
export const treadFits = (readings: readonly TreadReading[], piece: TreadPiece): readonly (TreadFit | FailedFit)[] => {
  const fitted = readings.map((reading) => one(reading, piece));
  const notes = closureNotes(fitted.map((found) => (isProblem(found) ? undefined : found)), piece.closure);
  return fitted.map((found, row) =>
    isProblem(found) ? { step: readings[row]?.step, bad: found } : { ...found.fit, note: notes[row] ?? "" },
  );
};
