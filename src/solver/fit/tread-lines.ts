import { DEGREES_PER_RADIAN, RADIANS_PER_DEGREE } from "../degrees";
import { isOpen } from "../layout/stair-facts";
import { isUnderTheRule } from "../length/marked-length";
import type { Side } from "./acts";
import type { TreadFit, TreadPiece } from "./tread-fit";

/** What a fit says of an open end. */
export interface OpenEndOfTread {
  readonly end: Side;
  readonly angle: number;
  /** Along the nose from the finished nose corner at the wall, or from the other toe. */
  readonly toe: number;
  readonly mitre: number;
  /** Along the nose. */
  readonly toePastHeel: number;
  readonly outerEdge: number;
  /** How far the free end of the return is off square, positive where its inner edge is the longer: it lies along the riser behind. */
  readonly freeEnd: number;
}

const slope = (angle: number): number => Math.tan(angle * RADIANS_PER_DEGREE);

/** A fit of an open end says all of it. */
const said = (value: number | undefined): number => {
  if (value === undefined) throw new Error("an open end has marks");
  return value;
};

/** The back edge seen from the nose: how deep it lies at the left nose corner, were it carried there, and what it gains per unit. */
const backLine = ({ front, leftAngle, rightAngle, leftDepth, rightDepth }: TreadFit) => {
  const [left, right] = [leftDepth * slope(leftAngle), front - rightDepth * slope(rightAngle)];
  const gain = (rightDepth - leftDepth) / (right - left);
  return { gain, at: leftDepth - gain * left };
};

export const openEndOf = (fit: TreadFit, end: Side, piece: TreadPiece): OpenEndOfTread => {
  const isSecond = end === "left" && piece.openEnd === "both";
  const angle = end === "left" ? fit.leftAngle : fit.rightAngle;
  const mitre = said(isSecond ? fit.leftMitre : fit.mitre);
  const turned = Math.atan(backLine(fit).gain) * DEGREES_PER_RADIAN;
  return {
    end,
    angle,
    toe: said(isSecond ? fit.leftToe : fit.toe),
    mitre,
    toePastHeel: piece.returnWidth / slope(mitre),
    outerEdge: said(isSecond ? fit.leftReturnLength : fit.returnLength),
    freeEnd: angle - (end === "right" ? turned : -turned),
  };
};

/** How deep the back edge lies where an end's sawn line meets it, square to the nose. */
export const depthAt = (fit: TreadFit, end: Side, piece: TreadPiece): number => {
  if (!isOpen(end, piece.openEnd)) return end === "left" ? fit.leftDepth : fit.rightDepth;
  const { angle, toePastHeel } = openEndOf(fit, end, piece);
  const { gain, at } = backLine(fit);
  const outward = end === "right" ? 1 : -1;
  const skirt = end === "right" ? fit.front : 0;
  // The sawn line runs parallel to the skirt through the heel.
  const heel = skirt + outward * (piece.overhang * Math.hypot(1, slope(angle)) - toePastHeel);
  const atNose = heel + outward * piece.returnWidth * slope(angle);
  return (at + gain * atNose) / (1 + gain * outward * slope(angle));
};

/** What a tread is ripped to: its depth, or a hair more where a return's line meets a tapered back edge further out than the skirt. */
export const ripDepth = (fit: TreadFit, piece: TreadPiece): number =>
  fit.leftDepth === fit.rightDepth ? fit.depth : Math.max(fit.depth, depthAt(fit, "left", piece), depthAt(fit, "right", piece));

export interface DepthMark {
  readonly end: Side;
  readonly isOpen: boolean;
  /** Along the sawn end, from the nose corner at a skirt, from the heel at an open end. */
  readonly distance: number;
}

/** Where the back comes at each end of a tapered tread that is not as deep there as it was ripped. */
export const scribed = (fit: TreadFit, piece: TreadPiece): readonly DepthMark[] => {
  if (isUnderTheRule(fit.rightDepth - fit.leftDepth, piece.unit)) return [];
  const depth = ripDepth(fit, piece);
  return (["left", "right"] as const).flatMap((end): readonly DepthMark[] => {
    const here = depthAt(fit, end, piece);
    if (here === depth) return [];
    const open = isOpen(end, piece.openEnd);
    const along = Math.hypot(1, slope(end === "left" ? fit.leftAngle : fit.rightAngle));
    return [{ end, isOpen: open, distance: (here - (open ? piece.returnWidth : 0)) * along }];
  });
};
