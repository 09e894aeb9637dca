import { RADIANS_PER_DEGREE } from "../degrees";
import { isOpen } from "../layout/stair-facts";
import type { Side } from "./acts";
import type { Outline, OutlineEnd } from "./outline";
import { depthAt, openEndOf, ripDepth } from "./tread-lines";
import type { TreadFit, TreadPiece } from "./tread-fit";

const slope = (angle: number): number => Math.tan(angle * RADIANS_PER_DEGREE);

/** Places run to the right from the left nose corner, or the left toe; where only the left end is open, from the right nose corner. */
const toeAt = (end: Side, { openEnd }: TreadPiece, toe: number): number =>
  openEnd === "both" ? (end === "left" ? 0 : toe) : end === "left" ? -toe : toe;

const cornerAt = (fit: TreadFit, end: Side, { openEnd }: TreadPiece): number => (end === "right" && openEnd === "none" ? fit.front : 0);

const endOf = (fit: TreadFit, end: Side, piece: TreadPiece): OutlineEnd => {
  const [angle, tilt] = end === "left" ? [fit.leftAngle, fit.leftTilt] : [fit.rightAngle, fit.rightTilt];
  const inward = end === "left" ? 1 : -1;
  const here = depthAt(fit, end, piece);
  const otherSide = -piece.thickness * slope(tilt) * Math.hypot(1, slope(angle));
  const line = (from: { readonly along: number; readonly behind: number }) => (behind: number) => ({
    along: from.along + inward * (behind - from.behind) * slope(angle), behind,
  });
  const common = { otherSide, isOpen: isOpen(end, piece.openEnd) };
  if (!common.isOpen) {
    const near = { along: cornerAt(fit, end, piece), behind: 0 };
    return { ...common, near, ripped: line(near)(ripDepth(fit, piece)), far: line(near)(here) };
  }
  const { toe, toePastHeel } = openEndOf(fit, end, piece);
  const near = { along: toeAt(end, piece, toe), behind: 0 };
  const heel = { along: near.along + inward * toePastHeel, behind: piece.returnWidth };
  return { ...common, near, heel, ripped: line(heel)(ripDepth(fit, piece)), far: line(heel)(here) };
};

/** The face of a tread as its marks make it. */
export const treadOutline = (fit: TreadFit, piece: TreadPiece): Outline => ({
  thickness: piece.thickness,
  depth: ripDepth(fit, piece),
  ends: { left: endOf(fit, "left", piece), right: endOf(fit, "right", piece) },
});
