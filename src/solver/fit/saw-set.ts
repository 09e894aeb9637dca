/** What the side away from the face is called. */
export type OtherSide = "underside" | "back";

/** Digits of a degree a setting is printed with: finer than any saw, so that it can be checked against the column of numbers. */
const DIGITS = 2;

const rounded = (degrees: number): string => Math.abs(degrees).toFixed(DIGITS);
const degreesText = (degrees: number): string => `${rounded(degrees)}°`;
const isNothing = (degrees: number): boolean => Number(rounded(degrees)) === 0;

/**
 * A saw setting in words, with no number below 0. The piece lies face up, nose (a riser's bottom) toward the operator: the near end of the
 * blade's path swings left or right, and the tilt leaves the face or the other side the longer.
 */
export const sawSet = (end: "left" | "right", angle: number, tilt: number, otherSide: OtherSide): string => {
  const outward = end;
  const inward = end === "left" ? "right" : "left";
  const swing = isNothing(angle) ? "square" : `${angle > 0 ? outward : inward} ${degreesText(angle)}`;
  if (isNothing(tilt)) return isNothing(angle) ? swing : `${swing}, upright`;
  return `${swing}, ${tilt > 0 ? "face" : otherSide} longer ${degreesText(tilt)}`;
};
