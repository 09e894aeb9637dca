import { RADIANS_PER_DEGREE } from "../degrees";

export interface Gap {
  readonly back: number;
  readonly front: number;
}

/** Gaps at back and front of one end cut short by `lengthError` and off by `angleError` degrees; negative is too tight. One unit. */
export const gap = (lengthError: number, angleError: number, depth: number): Gap => ({
  back: lengthError,
  front: lengthError - depth * Math.tan(angleError * RADIANS_PER_DEGREE),
});
