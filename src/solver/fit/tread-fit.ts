import { RADIANS_PER_DEGREE } from "../degrees";
import { isProblem, type Problem, problem } from "../problem";
import { isOpen, type OpenEnd } from "../layout/stair-facts";
import type { Unit } from "../length/length";
import { adjusted, type ClosureLimits } from "./closure-notes";
import { type CornerProblem, corners } from "./corner-reading";
import { doubtfulNotes } from "./doubtful-notes";
import { type EndCuts, endCuts } from "./end-cuts";
import { cutFigures, endsOf, type Fitted, fittedRows } from "./fitted-rows";
import { bothReturnMarks, type ReturnMarks, returnMarks } from "./return-marks";
import { type RiserOn, treadSpan } from "./riser-on";
import { treadPiece } from "./skirt-surface/piece-readings";
import { unusedAtOpenEnds } from "./unused-at-open-ends";

/** Readings of one tread, at the level of the sub-tread, in one unit; angles in degrees. */
export interface TreadReading {
  readonly step?: string | number;
  readonly run?: number;
  readonly back: number;
  readonly front?: number;
  readonly diagonal?: number;
  readonly secondDiagonal?: number;
  readonly leftOffset?: number;
  readonly leftAngle?: number;
  readonly rightAngle?: number;
  readonly at?: number;
  readonly leftLean: number;
  readonly rightLean: number;
  readonly depth?: number;
  readonly leftRun?: number;
  readonly rightRun?: number;
  /** Each of these stands in for the flight's own where it is given. */
  readonly leftGap?: number;
  readonly rightGap?: number;
  readonly backGap?: number;
}

/** What all treads of a flight share. */
export interface TreadPiece {
  readonly nosing: number;
  readonly openEnd: OpenEnd;
  readonly overhang: number;
  readonly returnWidth: number;
  readonly thickness: number;
  readonly riserOn: RiserOn;
  readonly riserThickness: number;
  /** Clearance to the skirt at each closed end, square to it. */
  readonly gap: number;
  /** Clearance between the back edge and the riser. */
  readonly backGap: number;
  /** Degrees every closed end is undercut by on purpose. */
  readonly undercut: number;
  readonly closure: ClosureLimits;
  /** What the readings are in; given, the readings of a flight that the skirts name as doubtful are said in the notes. */
  readonly unit?: Unit;
}

export type FitProblem =
  CornerProblem | "edges-cross" | "no-distance" | "nothing-left" | "tapered" | "runs-disagree" | "no-depth-left" | "return-too-wide";

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
  readonly leftSet: string;
  readonly rightSet: string;
  readonly leftDepth: number;
  readonly rightDepth: number;
  readonly heelAtTheHook?: number;
  readonly mitreLine?: number;
  readonly returnLine?: number;
  readonly leftMitreLine?: number;
  readonly note: string;
}

export interface FailedFit {
  readonly step: string | number | undefined;
  readonly bad: Problem<FitProblem>;
}

/** The run of a step, undefined where none is given. A step that is deeper at one end has no single one. */
const runOf = ({ run, leftRun, rightRun }: TreadReading): number | undefined | Problem<FitProblem> => {
  const [left, right] = [leftRun ?? run, rightRun ?? run];
  if (left === undefined && right === undefined) return undefined;
  if (left === undefined || right === undefined) return problem("no-distance");
  if (left === right) return run === undefined || run === left ? left : problem("runs-disagree", { run, both: left });
  return problem("tapered", { left, right, more: Math.abs(right - left), end: right > left ? "right" : "left" });
};

interface Marked {
  readonly right: ReturnMarks | undefined;
  readonly left: ReturnMarks | undefined;
}

const marked = (cuts: EndCuts, piece: TreadPiece, depth: number, backGap: number): Marked => {
  const edges = { back: cuts.near, front: cuts.far };
  const returns = { depth, overhang: piece.overhang, returnWidth: piece.returnWidth, backGap };
  const [left, right] = [isOpen("left", piece.openEnd), isOpen("right", piece.openEnd)];
  if (left && right) return bothReturnMarks(cuts.leftAngle, cuts.rightAngle, edges, returns);
  return {
    left: left ? returnMarks(cuts.leftAngle, cuts.rightAngle, edges, returns) : undefined,
    right: right ? returnMarks(cuts.rightAngle, cuts.leftAngle, edges, returns) : undefined,
  };
};

/** The blank: from end to end of the face and the underside, with what the returns stand out. */
const blankLength = ({ places, leftUnder, rightUnder, leftAngle, rightAngle }: EndCuts, piece: TreadPiece): number => {
  const past = (angle: number): number => piece.overhang * Math.hypot(1, Math.tan(angle * RADIANS_PER_DEGREE));
  const left = isOpen("left", piece.openEnd)
    ? Math.min(places.nearLeft, places.farLeft - past(leftAngle))
    : Math.min(places.nearLeft, places.farLeft) - leftUnder;
  const right = isOpen("right", piece.openEnd)
    ? Math.max(places.nearRight, places.farRight + past(rightAngle))
    : Math.max(places.nearRight, places.farRight) + rightUnder;
  return right - left;
};

const one = (reading: TreadReading, piece: TreadPiece): Fitted<Omit<TreadFit, "note">> | Problem<FitProblem> => {
  const { step, back, front } = reading;
  const run = runOf(reading);
  if (isProblem(run)) return run;
  const distance = run ?? reading.depth;
  if (distance === undefined) return problem("no-distance");
  const backGap = reading.backGap ?? piece.backGap;
  // Without a run the lines read are the piece's own back and nose.
  const span = run === undefined ? { from: 0, depth: distance } : treadSpan(run, piece.riserOn, piece.riserThickness, piece.nosing);
  const depth = (reading.depth ?? span.depth) - backGap;
  if (depth <= 0) return problem("no-depth-left", { backGap });
  if (piece.openEnd !== "none" && depth <= piece.returnWidth) return problem("return-too-wide", { returnWidth: piece.returnWidth, depth });
  const found = corners({ ...reading, distance, near: back, ...(front === undefined ? {} : { far: front }) });
  if (isProblem(found)) return found;
  const read = adjusted(found, piece.closure);
  const ends = { left: { lean: reading.leftLean, gap: reading.leftGap }, right: { lean: reading.rightLean, gap: reading.rightGap } };
  const cuts = endCuts(read, { from: span.from + backGap, depth }, piece.thickness, endsOf(ends, piece, 0), piece.undercut);
  if (isProblem(cuts)) return cuts;
  const length = blankLength(cuts, piece);
  if (length <= 0) return problem("nothing-left");
  const { left, right } = marked(cuts, piece, depth, backGap);
  const main = right ?? left;
  const second = right && left ? left : undefined;
  return {
    read,
    unused: unusedAtOpenEnds(piece.openEnd, ends, "lean"),
    fit: {
      step,
      length,
      ...cutFigures(cuts, "underside"),
      back: cuts.near,
      front: cuts.far,
      depth,
      ...(main === undefined ? {} : { heel: main.heel, toe: main.toe, mitre: main.mitre, returnLength: main.outerEdge }),
      ...(read.closure === undefined ? {} : { closure: read.closure }),
      ...(second === undefined
        ? {}
        : { leftHeel: second.heel, leftToe: second.toe, leftMitre: second.mitre, leftReturnLength: second.outerEdge }),
      leftDepth: depth,
      rightDepth: depth,
      ...(main === undefined ? {} : { heelAtTheHook: main.heelAtTheHook, mitreLine: main.mitreLine, returnLine: main.returnLine }),
      ...(second === undefined ? {} : { leftMitreLine: second.mitreLine }),
    },
  };
};

/**
 * Cut lengths, angles, tilts and mitres of treads from tape readings, each tread carried from the lines measured to its own back and nose.
 * The construction places the four corners in the plane of the sub-tread; a lean moves an end on the face by thickness x tan(lean).
 */
export const treadFits = (readings: readonly TreadReading[], piece: TreadPiece): readonly (TreadFit | FailedFit)[] =>
  fittedRows(
    readings,
    (reading) => one(reading, piece),
    piece.closure,
    piece.unit === undefined ? [] : doubtfulNotes("tread", readings.map(treadPiece), piece.unit, piece.closure.division),
  );
