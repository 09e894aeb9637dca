import { type Problem, problem } from "../problem";
import type { Corners } from "./corner-reading";

/** How the two ends of a piece stand: lean of the surface it meets in degrees (0 at an open end), and what is added past an open end. */
export interface Ends {
  readonly leftLean: number;
  readonly rightLean: number;
  readonly leftPast: number;
  readonly rightPast: number;
}

/** A piece carried to its own depth and thickness, seen on its face; places are along the near line from the near left corner as read. */
export interface EndCuts {
  readonly leftAngle: number;
  readonly rightAngle: number;
  readonly leftTilt: number;
  readonly rightTilt: number;
  /** Lengths on the face: along the near line, along the piece's own far edge, over all, and where both edges overlap. */
  readonly near: number;
  readonly far: number;
  readonly longPoint: number;
  readonly shortPoint: number;
  /** The edges on the underside at the far edge of the piece. */
  readonly farLeft: number;
  readonly farRight: number;
  /** What a lean adds to the face on each side, negative for an undercut. */
  readonly leftGain: number;
  readonly rightGain: number;
}

const DEGREES = Math.PI / 180;

/** Cut angles, lengths and tilts of a piece `depth` deep and `thickness` thick between the corners read. */
export const endCuts = (read: Corners, depth: number, thickness: number, ends: Ends): EndCuts | Problem<"edges-cross"> => {
  const { distance, near } = read;
  const carried = depth / distance;
  const farLeft = read.farLeft * carried - ends.leftPast;
  const farRight = near + (read.farRight - near) * carried + ends.rightPast;
  const nearLeft = -ends.leftPast;
  const nearRight = near + ends.rightPast;
  const leftGain = thickness * Math.tan(ends.leftLean * DEGREES);
  const rightGain = thickness * Math.tan(ends.rightLean * DEGREES);
  const gain = leftGain + rightGain;
  const shortPoint = Math.min(nearRight, farRight) - Math.max(nearLeft, farLeft) + gain;
  if (farRight - farLeft + gain <= 0 || nearRight - nearLeft + gain <= 0 || shortPoint <= 0) return problem("edges-cross", { depth });
  return {
    leftAngle: Math.atan(-read.farLeft / distance) / DEGREES,
    rightAngle: Math.atan((read.farRight - near) / distance) / DEGREES,
    leftTilt: ends.leftLean,
    rightTilt: ends.rightLean,
    near: nearRight - nearLeft + gain,
    far: farRight - farLeft + gain,
    longPoint: Math.max(nearRight, farRight) - Math.min(nearLeft, farLeft) + gain,
    shortPoint,
    farLeft,
    farRight,
    leftGain,
    rightGain,
  };
};
