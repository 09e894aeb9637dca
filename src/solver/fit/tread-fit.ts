import { RADIANS_PER_DEGREE } from "../degrees";
import { sizeText } from "../code/size-text";
import { lengthOf, type Unit } from "../length/length";
import { isProblem, type Problem, problem } from "../problem";
import { isOpen, type OpenEnd } from "../layout/stair-facts";
import { adjusted, type ClosureLimits } from "./closure-notes";
import { type CornerProblem, type Corners, corners, type Distances } from "./corner-reading";
import { doubtfulNotes } from "./doubtful-notes";
import { type EndCuts, endCuts, reach } from "./end-cuts";
import { cutFigures, endsOf, type Fitted, fittedRows } from "./fitted-rows";
import { isAhead, pieceFrame } from "./piece-frame";
import { bothReturnMarks, type ReturnMarks, returnMarks } from "./return-marks";
import { type RiserOn, treadSpan } from "./riser-on";
import type { TreadReading } from "./tread-reading";
import { treadPiece } from "./skirt-surface/piece-readings";
import { type EndReadings, unusedAtOpenEnds } from "./unused-at-open-ends";

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
  /** Of all lengths here. */
  readonly unit: Unit;
}

export type FitProblem =
  | CornerProblem
  | "edges-cross"
  | "no-distance"
  | "nothing-left"
  | "one-run-missing"
  | "runs-disagree"
  | "runs-too-different"
  | "depth-of-a-tapered-step"
  | "no-depth-left"
  | "return-too-wide";

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

/** The runs of a step at both sides, undefined where none is given. */
const runsOf = ({ run, leftRun, rightRun }: TreadReading): Distances | undefined | Problem<FitProblem> => {
  if (leftRun === undefined && rightRun === undefined) return run === undefined ? undefined : { leftDistance: run, rightDistance: run };
  if (leftRun === undefined || rightRun === undefined) {
    return problem("one-run-missing", leftRun === undefined ? { given: "right", missing: "left" } : { given: "left", missing: "right" });
  }
  if (run !== undefined && (run < Math.min(leftRun, rightRun) || run > Math.max(leftRun, rightRun))) {
    return problem("runs-disagree", { run, left: leftRun, right: rightRun });
  }
  return { leftDistance: leftRun, rightDistance: rightRun };
};

/** The two lines of a reading; without a run they are the piece's own back and nose. */
const linesOf = (reading: TreadReading): Distances | Problem<FitProblem> => {
  const { depth, front } = reading;
  const runs = runsOf(reading) ?? (depth === undefined ? problem("no-distance") : { leftDistance: depth, rightDistance: depth });
  if (isProblem(runs)) return runs;
  const { leftDistance: left, rightDistance: right } = runs;
  if (left === right) return runs;
  if (depth !== undefined) return problem("depth-of-a-tapered-step", { depth });
  return front !== undefined && front <= Math.abs(right - left) ? problem("runs-too-different", { left, right }) : runs;
};

/** What to do about a step that is deeper at one end, and how to be rid of it. */
const taperNote = ({ leftDistance, rightDistance }: Distances, unit: Unit): string => {
  const more = rightDistance - leftDistance;
  if (more === 0) return "";
  return (
    "tapered: rip to the larger depth, scribe the back from left depth to right depth; " +
    "or instead of the taper: pack between the stringers and the riser behind, " +
    `${sizeText(lengthOf(Math.abs(more), unit), unit)} at its ${more > 0 ? "right" : "left"} end to nothing at the other, ` +
    "and read this step anew"
  );
};

interface Marked {
  readonly right: ReturnMarks | undefined;
  readonly left: ReturnMarks | undefined;
}

const marked = (cuts: EndCuts, piece: TreadPiece, backGap: number): Marked => {
  const edges = { back: cuts.near, front: cuts.far };
  const shared = { overhang: piece.overhang, returnWidth: piece.returnWidth, backGap };
  const ofLeft = { ...shared, depth: cuts.leftDepth, taper: -cuts.taper };
  const ofRight = { ...shared, depth: cuts.rightDepth, taper: cuts.taper };
  const [left, right] = [isOpen("left", piece.openEnd), isOpen("right", piece.openEnd)];
  if (left && right) return bothReturnMarks(cuts.leftAngle, cuts.rightAngle, edges, ofLeft, ofRight);
  return {
    left: left ? returnMarks(cuts.leftAngle, cuts.rightAngle, edges, ofLeft) : undefined,
    right: right ? returnMarks(cuts.rightAngle, cuts.leftAngle, edges, ofRight) : undefined,
  };
};

/** The blank: from end to end of the face and the underside, with what the returns stand out. */
const blankLength = (cuts: EndCuts, { openEnd, overhang }: TreadPiece): number => {
  const { places, leftAngle, rightAngle } = cuts;
  const past = (angle: number): number => overhang * Math.hypot(1, Math.tan(angle * RADIANS_PER_DEGREE));
  const closed = reach(cuts);
  const left = isOpen("left", openEnd) ? Math.min(places.nearLeft, places.farLeft - past(leftAngle)) : closed.left;
  const right = isOpen("right", openEnd) ? Math.max(places.nearRight, places.farRight + past(rightAngle)) : closed.right;
  return right - left;
};

interface CutPiece {
  readonly lines: Distances;
  readonly read: Corners;
  readonly cuts: EndCuts;
  readonly backGap: number;
  readonly ends: EndReadings;
}

const cutPiece = (reading: TreadReading, piece: TreadPiece): CutPiece | Problem<FitProblem> => {
  const { back, front } = reading;
  const lines = linesOf(reading);
  if (isProblem(lines)) return lines;
  const found = corners({ ...reading, ...lines, near: back, ...(front === undefined ? {} : { far: front }) });
  if (isProblem(found)) return found;
  const read = adjusted(found, piece.closure);
  const frame = pieceFrame(read);
  if (!isAhead(frame)) return problem("runs-too-different", { left: lines.leftDistance, right: lines.rightDistance });
  const backGap = reading.backGap ?? piece.backGap;
  const isAtOwnEdges = reading.run === undefined && reading.leftRun === undefined;
  const span = isAtOwnEdges
    ? { from: 0, depth: frame.distance }
    : treadSpan(frame.distance, piece.riserOn, piece.riserThickness, piece.nosing);
  const [from, to] = [(span.from + backGap) / frame.nearCosine, span.from + (reading.depth ?? span.depth)];
  if (to <= from) return problem("no-depth-left", { backGap });
  const ends = { left: { lean: reading.leftLean, gap: reading.leftGap }, right: { lean: reading.rightLean, gap: reading.rightGap } };
  const cuts = endCuts(frame, { from, to }, piece.thickness, endsOf(ends, piece, 0), piece.undercut);
  return isProblem(cuts) ? cuts : { lines, read, cuts, backGap, ends };
};

const markFigures = ({ left, right }: Marked) => {
  const main = right ?? left;
  const second = right && left ? left : undefined;
  return {
    ...(main === undefined
      ? {}
      : {
          heel: main.heel, toe: main.toe, mitre: main.mitre, returnLength: main.outerEdge,
          heelAtTheHook: main.heelAtTheHook, mitreLine: main.mitreLine, returnLine: main.returnLine,
        }),
    ...(second === undefined
      ? {}
      : {
          leftHeel: second.heel, leftToe: second.toe, leftMitre: second.mitre, leftReturnLength: second.outerEdge,
          leftMitreLine: second.mitreLine,
        }),
  };
};

const one = (reading: TreadReading, piece: TreadPiece): Fitted<Omit<TreadFit, "note">> | Problem<FitProblem> => {
  const cut = cutPiece(reading, piece);
  if (isProblem(cut)) return cut;
  const { cuts, read, backGap, ends, lines } = cut;
  const { leftDepth, rightDepth } = cuts;
  const least = Math.min(leftDepth, rightDepth);
  if (least <= 0) return problem("no-depth-left", { backGap });
  if (piece.openEnd !== "none" && least <= piece.returnWidth) {
    return problem("return-too-wide", { returnWidth: piece.returnWidth, depth: least });
  }
  const length = blankLength(cuts, piece);
  if (length <= 0) return problem("nothing-left");
  return {
    read,
    unused: [taperNote(lines, piece.unit), unusedAtOpenEnds(piece.openEnd, ends, "lean")].filter(Boolean).join("; "),
    fit: {
      step: reading.step,
      length,
      ...cutFigures(cuts, "underside"),
      back: cuts.near,
      front: cuts.far,
      depth: Math.max(leftDepth, rightDepth),
      ...(read.closure === undefined ? {} : { closure: read.closure }),
      leftDepth,
      rightDepth,
      ...markFigures(marked(cuts, piece, backGap)),
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
    doubtfulNotes("tread", readings.map(treadPiece), piece.unit, piece.closure.division),
  );
