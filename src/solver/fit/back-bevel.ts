import { DEGREES_PER_RADIAN, RADIANS_PER_DEGREE } from "../degrees";

/** Opening a back bevel leaves at the back of a piece, in the unit of its thickness. */
export const relief = (thickness: number, bevel: number): number => thickness * Math.tan(bevel * RADIANS_PER_DEGREE);

/** Back bevel in degrees that leaves an opening at the back of a piece. */
export const bevel = (thickness: number, opening: number): number => Math.atan2(opening, thickness) * DEGREES_PER_RADIAN;
