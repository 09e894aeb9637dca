import { DEGREES_PER_RADIAN } from "../degrees";

/** Degrees a surface leans, from how far it is off plumb over a height; positive leans away from the piece going up. */
export const lean = (offset: number, height: number): number => Math.atan2(offset, height) * DEGREES_PER_RADIAN;
