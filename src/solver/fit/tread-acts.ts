import { RADIANS_PER_DEGREE } from "../degrees";
import type { OpenEnd } from "../layout/stair-facts";
import { inchesIn } from "../length/marked-length";
import type { Unit } from "../length/length";
import type { Problem } from "../problem";
import { type Act, type ActsOfAStep, type Edge, type Hook, type Mark, otherEnd, type Side, standsOff, type Swing } from "./acts";
import { saysDisagreeing } from "./closure-notes";
import { type FitProblem, type TreadFit, treadFits, type TreadPiece, type TreadReading } from "./tread-fit";

/** Waste at the squared end of a blank that all marks are hooked on, so that the saw has wood on both sides. */
const WASTE_INCHES = 0.5;
/** A return's far end is sawn square while that leaves it off by no more than a tape shows. */
const SQUARE_ENOUGH_INCHES = 1 / 32;

const slope = (angle: number): number => Math.tan(angle * RADIANS_PER_DEGREE);

interface EndOfFit {
  readonly end: Side;
  readonly angle: number;
  readonly tilt: number;
}

const endOf = (fit: TreadFit, end: Side): EndOfFit =>
  end === "left" ? { end, angle: fit.leftAngle, tilt: fit.leftTilt } : { end, angle: fit.rightAngle, tilt: fit.rightTilt };

const markAt = (end: Side, place: Mark["place"]): Mark => ({ end, place });

interface Flight {
  readonly openEnd: OpenEnd;
  readonly overhang: number;
  readonly returnWidth: number;
  readonly unit: Unit;
}

const rip = (fit: TreadFit, more: number): Act => ({
  kind: "rip", distance: fit.depth, piece: "tread", blank: fit.length + more, note: fit.note,
});

const across = (fit: TreadFit, angle: number): Swing => ({ angle, over: fit.depth, far: "back", near: "nose" });

const firstEnd = (fit: TreadFit, { end, angle, tilt }: EndOfFit): Act => ({
  kind: "saw end", end, piece: "tread", swing: across(fit, angle), tilt,
});

interface Marked {
  readonly mark: Mark;
  /** From the finished first end, on its own line. */
  readonly distance: number;
}

/** Marks and both diagonals from the first end's corners, before the second end is sawn. */
const marksFrom = (
  fit: TreadFit, first: EndOfFit, onNose: Marked, onBack: Marked, onTheLine?: Marked,
): { readonly marks: readonly Act[]; readonly diagonals: readonly Act[] } => {
  const isBurnt = standsOff(first.tilt);
  const hook = (along: Edge): Hook => ({ end: first.end, along, isSquared: false });
  const mark = (along: Edge, { mark: made, distance }: Marked): Act => ({
    kind: "mark", mark: made, hook: hook(along), distance, isBurnt,
  });
  const check = (corner: Edge, to: Mark, along: number): Act => ({
    kind: "check", from: { end: first.end, corner }, to, distance: Math.hypot(along, fit.depth), isBurnt,
  });
  const backCorner = fit.depth * slope(first.angle);
  return {
    marks: [
      mark("nose", onNose),
      ...(onTheLine === undefined ? [] : [mark("gauged line", onTheLine)]),
      mark("back", onBack),
    ],
    diagonals: [
      check("nose", onBack.mark, backCorner + onBack.distance),
      check("back", onNose.mark, onNose.distance - backCorner),
    ],
  };
};

/** Between two skirts. */
const closedActs = (fit: TreadFit): readonly Act[] => {
  const [first, second] = [endOf(fit, "left"), endOf(fit, "right")];
  const [nose, back] = [markAt("right", "nose"), markAt("right", "back")];
  const { marks, diagonals } = marksFrom(fit, first, { mark: nose, distance: fit.front }, { mark: back, distance: fit.back });
  return [
    rip(fit, 0),
    firstEnd(fit, first),
    ...marks,
    ...diagonals,
    { kind: "saw end", end: "right", piece: "tread", swing: across(fit, second.angle), tilt: second.tilt, on: [nose, back] },
  ];
};

/** What is marked and sawn at an open end, once its marks are made: the proofs of its own marks, the cuts, the return. */
const openEnd = (fit: TreadFit, end: Side, mitre: number, mitreLine: number, outerEdge: number, flight: Flight) => {
  const { returnWidth, unit } = flight;
  const { angle } = endOf(fit, end);
  const [toe, heel, back] = [markAt(end, "toe"), markAt(end, "heel"), markAt(end, "back")];
  const toePastHeel = returnWidth / slope(mitre);
  const innerLonger = returnWidth * slope(angle);
  const behind = fit.depth - returnWidth;
  const proofs: readonly Act[] = [
    { kind: "check", from: toe, to: heel, distance: mitreLine, isBurnt: false },
    { kind: "check", from: heel, to: back, distance: behind * Math.hypot(1, slope(angle)), isBurnt: false },
  ];
  const isSquare = Math.abs(innerLonger) <= inchesIn(SQUARE_ENOUGH_INCHES, unit);
  const cuts: readonly Act[] = [
    { kind: "saw to the heel", end, swing: { angle, over: behind, far: "back", near: "heel" } },
    { kind: "mitre", end, fromNose: mitre, toePastHeel },
  ];
  const returned: readonly Act[] = [
    { kind: "mitre the return", end, fromNose: mitre, toePastHeel, width: returnWidth },
    { kind: "end the return", end, distance: outerEdge, angle: isSquare ? 0 : angle, innerLonger: isSquare ? 0 : innerLonger },
  ];
  return { toe, heel, back, proofs, cuts, returned };
};

/** What a fit says of returns; a fit of an open end says all of it. */
const saidOf = (value: number | undefined): number => {
  if (value === undefined) throw new Error("an open end has marks");
  return value;
};

/** One end at a skirt, the other open with a mitred return. */
const returnActs = (fit: TreadFit, open: Side, flight: Flight): readonly Act[] => {
  const first = endOf(fit, otherEnd(open));
  const end = openEnd(fit, open, saidOf(fit.mitre), saidOf(fit.mitreLine), saidOf(fit.returnLength), flight);
  const { marks, diagonals } = marksFrom(
    fit,
    first,
    { mark: end.toe, distance: saidOf(fit.toe) },
    { mark: end.back, distance: saidOf(fit.returnLine) },
    { mark: end.heel, distance: saidOf(fit.heelAtTheHook) },
  );
  return [
    rip(fit, 0),
    firstEnd(fit, first),
    { kind: "gauge", distance: flight.returnWidth },
    ...marks,
    ...end.proofs,
    ...diagonals,
    ...end.cuts,
    ...end.returned,
  ];
};

/** Both ends open: there is no finished end to hook a tape on, so all marks are from the blank's left end, squared for that. */
const bothActs = (fit: TreadFit, flight: Flight): readonly Act[] => {
  const left = openEnd(fit, "left", saidOf(fit.leftMitre), saidOf(fit.leftMitreLine), saidOf(fit.leftReturnLength), flight);
  const right = openEnd(fit, "right", saidOf(fit.mitre), saidOf(fit.mitreLine), saidOf(fit.returnLength), flight);
  const heelAt = saidOf(fit.toe) - saidOf(fit.leftHeel);
  const backAt = heelAt + (fit.depth - flight.returnWidth) * slope(fit.leftAngle);
  // The toe is the foremost point of the left end, or its back corner where the nose is much the shorter.
  const waste = inchesIn(WASTE_INCHES, flight.unit) - Math.min(0, backAt);
  const places: readonly (readonly [Mark, Edge, number])[] = [
    [left.toe, "nose", 0],
    [right.toe, "nose", saidOf(fit.toe)],
    [left.heel, "gauged line", heelAt],
    [right.heel, "gauged line", saidOf(fit.heel)],
    [left.back, "back", backAt],
    [right.back, "back", backAt + saidOf(fit.returnLine)],
  ];
  const diagonal = (from: Mark, to: Mark, along: number): Act => ({
    kind: "check", from, to, distance: Math.hypot(along, fit.depth), isBurnt: false,
  });
  return [
    rip(fit, inchesIn(WASTE_INCHES, flight.unit)),
    { kind: "square the blank", end: "left" },
    { kind: "gauge", distance: flight.returnWidth },
    ...places.map(([mark, along, at]): Act => ({
      kind: "mark", mark, hook: { end: "left", along, isSquared: true }, distance: waste + at, isBurnt: false,
    })),
    ...left.proofs,
    ...right.proofs,
    diagonal(left.toe, right.back, backAt + saidOf(fit.returnLine)),
    diagonal(left.back, right.toe, saidOf(fit.toe) - backAt),
    ...left.cuts,
    ...right.cuts,
    ...left.returned,
    ...right.returned,
  ];
};

const actsOf = (fit: TreadFit, flight: Flight): readonly Act[] => {
  // Whatever is doubtful may be any of the readings: nothing is marked, so that nothing is sawn.
  if (saysDisagreeing(fit.note)) return [{ kind: "read again", note: fit.note }];
  if (flight.openEnd === "none") return closedActs(fit);
  return flight.openEnd === "both" ? bothActs(fit, flight) : returnActs(fit, flight.openEnd, flight);
};

/** What is done at the bench and the saw to make each tread, in that order. */
export const treadActs = (
  readings: readonly TreadReading[], piece: TreadPiece, unit: Unit,
): readonly ActsOfAStep<Problem<FitProblem>>[] =>
  treadFits(readings, piece).map((fit) =>
    "bad" in fit ? { step: fit.step, acts: [], bad: fit.bad } : { step: fit.step, acts: actsOf(fit, { ...piece, unit }) },
  );
