import { Exact } from "../length/exact";
import type { Length } from "../length/length";

/**
 * Packing that brings points up to one line: heights over any level, or gaps under a straightedge. Every point but the first and the last
 * is left `setback` lower, as a middle stringer is, so that it never holds a riser proud. None is negative.
 */
export const packing = (readings: readonly Length[], kind: "gap" | "height", setback: Length): readonly Length[] => {
  const heights = readings.map((reading) => (kind === "gap" ? reading.neg() : reading));
  const lowered = heights.map((height, point) => (point === 0 || point === heights.length - 1 ? height : height.plus(setback)));
  const line = Exact.max(...lowered);
  return lowered.map((height) => line.minus(height));
};
