import { RADIANS_PER_DEGREE } from "../degrees";
import { inchesIn } from "../length/marked-length";
import type { Problem } from "../problem";
import { type Act, type ActsOfAStep, type CheckedFrom, type Edge, type Mark, otherEnd, type Side, standsOff, type Swing } from "./acts";
import { openEndOf, type OpenEndOfTread, ripDepth, scribed } from "./tread-lines";
import { treadOutline } from "./tread-outline";
import { type FitProblem, type TreadFit, treadFits, type TreadPiece } from "./tread-fit";
import type { TreadReading } from "./tread-reading";
import { unlessDisagreeing } from "./unless-disagreeing";

/** Waste at the squared end of a blank that all marks are hooked on, so that the saw has wood on both sides: common practice, no source. */
const WASTE_INCHES = 0.5;
/** A return's far end is sawn square while that leaves it off by no more than a tape shows. */
const SQUARE_ENOUGH_INCHES = 1 / 32;

const slope = (angle: number): number => Math.tan(angle * RADIANS_PER_DEGREE);

/** A fit seen from one of its ends, with the depth it is ripped to. */
interface EndOfFit {
  readonly end: Side;
  readonly angle: number;
  readonly tilt: number;
  readonly depth: number;
}

const endOf = (fit: TreadFit, end: Side, depth: number): EndOfFit =>
  end === "left"
    ? { end, angle: fit.leftAngle, tilt: fit.leftTilt, depth }
    : { end, angle: fit.rightAngle, tilt: fit.rightTilt, depth };

const markAt = (end: Side, place: Mark["place"]): Mark => ({ end, place });

const rip = (fit: TreadFit, distance: number, more: number): Act => ({
  kind: "rip", distance, piece: "tread", blank: fit.length + more, note: fit.note,
});

const across = ({ angle, depth }: EndOfFit): Swing => ({ angle, over: depth, far: "back", near: "nose" });

const sawn = (at: EndOfFit, on?: readonly [Mark, Mark]): Act => ({
  kind: "saw end", end: at.end, piece: "tread", swing: across(at), tilt: at.tilt, ...(on === undefined ? {} : { on }),
});

interface Marked {
  readonly mark: Mark;
  readonly along: Edge;
  /** From the finished first end, on its own line. */
  readonly distance: number;
}

const check = (from: CheckedFrom, to: Mark, along: number, depth: number, isBurnt: boolean): Act => ({
  kind: "check", from, to, distance: Math.hypot(along, depth), isBurnt,
});

/** Marks from the first end's corners, and both diagonals from there, before the second end is sawn. */
const marksFrom = (first: EndOfFit, onNose: Marked, onBack: Marked, onTheLine?: Marked) => {
  const { end, depth } = first;
  const isBurnt = standsOff(first.tilt);
  const backCorner = depth * slope(first.angle);
  return {
    marks: [onNose, ...(onTheLine === undefined ? [] : [onTheLine]), onBack].map(
      ({ mark, along, distance }): Act => ({ kind: "mark", mark, hook: { end, along, isSquared: false }, distance, isBurnt }),
    ),
    diagonals: [
      check({ end, corner: "nose" }, onBack.mark, backCorner + onBack.distance, depth, isBurnt),
      check({ end, corner: "back" }, onNose.mark, onNose.distance - backCorner, depth, isBurnt),
    ],
  };
};

/** Of a tapered tread, which is ripped to its larger depth: where the back comes at each end, and the line between. */
const backActs = (fit: TreadFit, piece: TreadPiece): readonly Act[] => {
  const marks = scribed(fit, piece);
  return marks.length === 0
    ? []
    : [
        ...marks.map(({ end, isOpen, distance }): Act => ({ kind: "mark the depth", end, isOpen, distance })),
        { kind: "scribe", marked: marks.map(({ end }) => end) },
      ];
};

/** Between two skirts. */
const closedActs = (fit: TreadFit, piece: TreadPiece): readonly Act[] => {
  const depth = ripDepth(fit, piece);
  const [first, second] = [endOf(fit, "left", depth), endOf(fit, "right", depth)];
  const [nose, back] = [markAt("right", "nose"), markAt("right", "back")];
  // Along the ripped edge, which is the piece's own back edge where nothing tapers.
  const onRippedEdge = fit.front - depth * (slope(first.angle) + slope(second.angle));
  const { marks, diagonals } = marksFrom(
    first,
    { mark: nose, along: "nose", distance: fit.front },
    { mark: back, along: "back", distance: onRippedEdge },
  );
  return [rip(fit, depth, 0), sawn(first), ...marks, ...diagonals, sawn(second, [nose, back]), ...backActs(fit, piece)];
};

/** What is proved, sawn and put on at an open end, once its marks are made. */
const openActs = ({ end, angle, mitre, toePastHeel, outerEdge, freeEnd }: OpenEndOfTread, depth: number, piece: TreadPiece) => {
  const { returnWidth, unit } = piece;
  const [toe, heel, back] = [markAt(end, "toe"), markAt(end, "heel"), markAt(end, "back")];
  const behind = depth - returnWidth;
  const innerLonger = returnWidth * slope(freeEnd);
  const isSquare = Math.abs(innerLonger) <= inchesIn(SQUARE_ENOUGH_INCHES, unit);
  const proofs = [
    check(toe, heel, toePastHeel, returnWidth, false),
    check(heel, back, behind * slope(angle), behind, false),
  ];
  const cuts: readonly Act[] = [
    { kind: "saw to the heel", end, swing: { angle, over: behind, far: "back", near: "heel" } },
    { kind: "mitre", end, fromNose: mitre, toePastHeel },
  ];
  const returned: readonly Act[] = [
    { kind: "mitre the return", end, fromNose: mitre, toePastHeel, width: returnWidth },
    { kind: "end the return", end, distance: outerEdge, angle: isSquare ? 0 : freeEnd, innerLonger: isSquare ? 0 : innerLonger },
  ];
  return { toe, heel, back, proofs, cuts, returned };
};

/** One end at a skirt, the other open with a mitred return. */
const returnActs = (fit: TreadFit, open: Side, piece: TreadPiece): readonly Act[] => {
  const depth = ripDepth(fit, piece);
  const first = endOf(fit, otherEnd(open), depth);
  const end = openEndOf(fit, open, piece);
  const { toe, heel, back, proofs, cuts, returned } = openActs(end, depth, piece);
  const { returnWidth } = piece;
  const heelAlongNose = end.toe - end.toePastHeel;
  const backAlongNose = heelAlongNose - (depth - returnWidth) * slope(end.angle);
  const { marks, diagonals } = marksFrom(
    first,
    { mark: toe, along: "nose", distance: end.toe },
    { mark: back, along: "back", distance: backAlongNose - depth * slope(first.angle) },
    { mark: heel, along: "gauged line", distance: heelAlongNose - returnWidth * slope(first.angle) },
  );
  return [
    rip(fit, depth, 0),
    sawn(first),
    { kind: "gauge", distance: returnWidth },
    ...marks,
    ...proofs,
    ...diagonals,
    ...cuts,
    ...backActs(fit, piece),
    ...returned,
  ];
};

/** Both ends open: there is no finished end to hook a tape on, so all marks are from the blank's left end, squared for that. */
const bothActs = (fit: TreadFit, piece: TreadPiece): readonly Act[] => {
  const depth = ripDepth(fit, piece);
  const { returnWidth, unit } = piece;
  const [leftEnd, rightEnd] = [openEndOf(fit, "left", piece), openEndOf(fit, "right", piece)];
  const [left, right] = [openActs(leftEnd, depth, piece), openActs(rightEnd, depth, piece)];
  const behind = depth - returnWidth;
  const leftBack = leftEnd.toePastHeel + behind * slope(leftEnd.angle);
  const rightHeel = rightEnd.toe - rightEnd.toePastHeel;
  const rightBack = rightHeel - behind * slope(rightEnd.angle);
  const wasteAtLeast = inchesIn(WASTE_INCHES, unit);
  // The toe is the foremost point of the left end, or its back corner where the nose is much the shorter.
  const waste = wasteAtLeast - Math.min(0, leftBack);
  const places: readonly (readonly [Mark, Edge, number])[] = [
    [left.toe, "nose", 0],
    [right.toe, "nose", rightEnd.toe],
    [left.heel, "gauged line", leftEnd.toePastHeel],
    [right.heel, "gauged line", rightHeel],
    [left.back, "back", leftBack],
    [right.back, "back", rightBack],
  ];
  return [
    rip(fit, depth, wasteAtLeast),
    { kind: "square the blank", end: "left" },
    { kind: "gauge", distance: returnWidth },
    ...places.map(([mark, along, at]): Act => ({
      kind: "mark", mark, hook: { end: "left", along, isSquared: true }, distance: waste + at, isBurnt: false,
    })),
    ...left.proofs,
    ...right.proofs,
    check(left.toe, right.back, rightBack, depth, false),
    check(left.back, right.toe, rightEnd.toe - leftBack, depth, false),
    ...left.cuts,
    ...right.cuts,
    ...backActs(fit, piece),
    ...left.returned,
    ...right.returned,
  ];
};

const actsOf = (fit: TreadFit, piece: TreadPiece): readonly Act[] => {
  if (piece.openEnd === "none") return closedActs(fit, piece);
  return piece.openEnd === "both" ? bothActs(fit, piece) : returnActs(fit, piece.openEnd, piece);
};

/** What is done at the bench and the saw to make each tread, in that order. */
export const treadActs = (readings: readonly TreadReading[], piece: TreadPiece): readonly ActsOfAStep<Problem<FitProblem>>[] =>
  treadFits(readings, piece).map((fit) =>
    "bad" in fit
      ? { step: fit.step, acts: [], bad: fit.bad }
      : { step: fit.step, ...unlessDisagreeing(fit, actsOf(fit, piece)), outline: treadOutline(fit, piece) },
  );
