import { RADIANS_PER_DEGREE } from "../degrees";
import { isOpen } from "../layout/stair-facts";
import { type Length, lengthOf, measure, type Unit } from "../length/length";
import type { Problem } from "../problem";
import { type Act, type ActsOfAStep, type Mark, otherEnd, type Side, standsOff, type Swing } from "./acts";
import { relief } from "./back-bevel";
import { notch } from "./notch";
import { type RiserFit, type RiserFitProblem, riserFits, type RiserPiece } from "./riser-fit";
import { riserOutline } from "./riser-outline";
import type { RiserReading } from "./riser-reading";
import { unlessDisagreeing } from "./unless-disagreeing";

/** What is cut into a riser once both its ends are sawn. */
export interface RiserMarking extends RiserPiece {
  /** Thickness of the open skirt. */
  readonly skirtThickness: Length;
  /** What the riser laps of the tread below it. */
  readonly lap: Length;
  readonly clearance: Length;
  /** Degrees the back of the top edge is bevelled by. */
  readonly bevel: number;
  readonly unit: Unit;
}

/** Riser 1 stands on the floor: it laps no tread. */
const FIRST = "1";

const slope = (angle: number): number => Math.tan(angle * RADIANS_PER_DEGREE);

/** Both ends, the second on marks that are proved before it is sawn. */
const endActs = (fit: RiserFit, first: Side): readonly Act[] => {
  const [left, right] = [
    { angle: fit.leftAngle, tilt: fit.leftTilt },
    { angle: fit.rightAngle, tilt: fit.rightTilt },
  ];
  const [one, other] = first === "left" ? [left, right] : [right, left];
  const second = otherEnd(first);
  const isBurnt = standsOff(one.tilt);
  const [top, bottom]: readonly [Mark, Mark] = [{ end: second, place: "top" }, { end: second, place: "bottom" }];
  const swing = (angle: number): Swing => ({ angle, over: fit.height, far: "top", near: "bottom" });
  const topCorner = fit.height * slope(one.angle);
  return [
    { kind: "saw end", end: first, piece: "riser", swing: swing(one.angle), tilt: one.tilt },
    { kind: "mark", mark: top, hook: { end: first, along: "top", isSquared: false }, distance: fit.top, isBurnt },
    { kind: "mark", mark: bottom, hook: { end: first, along: "bottom", isSquared: false }, distance: fit.bottom, isBurnt },
    {
      kind: "check", from: { end: first, corner: "top" }, to: bottom, distance: Math.hypot(fit.bottom - topCorner, fit.height), isBurnt,
    },
    { kind: "check", from: { end: first, corner: "bottom" }, to: top, distance: Math.hypot(fit.top + topCorner, fit.height), isBurnt },
    { kind: "saw end", end: second, piece: "riser", swing: swing(other.angle), tilt: other.tilt, on: [top, bottom] },
  ];
};

const openEnds = ({ openEnd }: RiserPiece): readonly Side[] => (["left", "right"] as const).filter((side) => isOpen(side, openEnd));

const runPastOf = ({ runPast, unit }: RiserMarking): Length => lengthOf(runPast, unit);

const notchActs = (fit: RiserFit, piece: RiserMarking): readonly Act[] => {
  if (!piece.lap.gt(0) || String(fit.step ?? "") === FIRST) return [];
  const { width, height } = notch(piece.skirtThickness, runPastOf(piece), piece.lap, piece.clearance);
  if (width.isZero()) return [];
  return openEnds(piece).flatMap((end): readonly Act[] => [
    { kind: "mark the notch", end, way: "along", distance: measure(width, piece.unit) },
    { kind: "mark the notch", end, way: "up", distance: measure(height, piece.unit) },
    { kind: "saw the notch", end },
  ]);
};

/** What shows past an open skirt stays square: run past, skirt and room, as wide as the notch. */
const bevelActs = (piece: RiserMarking): readonly Act[] => {
  if (piece.bevel === 0) return [];
  const { width } = notch(piece.skirtThickness, runPastOf(piece), piece.lap, piece.clearance);
  return [
    ...openEnds(piece).map((end): Act => ({ kind: "end the bevel", end, distance: measure(width, piece.unit) })),
    { kind: "bevel", degrees: piece.bevel, relief: relief(piece.thickness, piece.bevel) },
  ];
};

const actsOf = (fit: RiserFit, piece: RiserMarking): readonly Act[] => {
  // A tape is hooked on the end at the skirt, or on the left one.
  const first = piece.openEnd === "left" ? "right" : "left";
  return [
    { kind: "rip", distance: fit.height, piece: "riser", blank: fit.length, note: fit.note },
    ...endActs(fit, first),
    ...notchActs(fit, piece),
    ...bevelActs(piece),
  ];
};

/** What is done at the bench and the saw to make each riser, in that order. */
export const riserActs = (readings: readonly RiserReading[], piece: RiserMarking): readonly ActsOfAStep<Problem<RiserFitProblem>>[] =>
  riserFits(readings, piece).map((fit) =>
    "bad" in fit
      ? { step: fit.step, acts: [], bad: fit.bad }
      : { step: fit.step, ...unlessDisagreeing(fit, actsOf(fit, piece)), outline: riserOutline(fit, piece) },
  );
