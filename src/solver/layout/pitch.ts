import { DEGREES_PER_RADIAN } from "../degrees";

/** Angle of the nosing line in degrees; rise and run in one unit. */
export const pitch = (rise: number, run: number): number => Math.atan2(rise, run) * DEGREES_PER_RADIAN;
