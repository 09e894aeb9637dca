import type { Length } from "../length/length";

export interface Notch {
  readonly width: Length;
  readonly height: Length;
}

/** Notch in a riser's lower corner at the open end: over the skirt and the reveal, as high as the riser laps the tread. */
export const notch = (skirtThickness: Length, runPast: Length, lap: Length, clearance: Length): Notch => ({
  width: skirtThickness.plus(runPast).plus(clearance),
  height: lap.plus(clearance),
});
