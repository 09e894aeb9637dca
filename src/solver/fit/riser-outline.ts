import { RADIANS_PER_DEGREE } from "../degrees";
import { isOpen } from "../layout/stair-facts";
import type { Side } from "./acts";
import type { Outline, OutlineEnd } from "./outline";
import type { RiserFit, RiserPiece } from "./riser-fit";

const slope = (angle: number): number => Math.tan(angle * RADIANS_PER_DEGREE);

const endOf = (fit: RiserFit, end: Side, piece: RiserPiece): OutlineEnd => {
  const [angle, tilt, along, inward] =
    end === "left" ? [fit.leftAngle, fit.leftTilt, 0, 1] : [fit.rightAngle, fit.rightTilt, fit.bottom, -1];
  const far = { along: along + inward * fit.height * slope(angle), behind: fit.height };
  return {
    isOpen: isOpen(end, piece.openEnd),
    near: { along, behind: 0 },
    ripped: far,
    far,
    otherSide: -piece.thickness * slope(tilt) * Math.hypot(1, slope(angle)),
  };
};

/** The face of a riser, its bottom toward the operator, before it is notched. */
export const riserOutline = (fit: RiserFit, piece: RiserPiece): Outline => ({
  thickness: piece.thickness,
  depth: fit.height,
  ends: { left: endOf(fit, "left", piece), right: endOf(fit, "right", piece) },
});
