import { ceilingOfQuotient } from "../length/exact";
import type { Length } from "../length/length";

/** Fewest equal risers none of which is taller than `maxRise`; a rise equal to the greatest passes. */
export const riserCount = (totalRise: Length, maxRise: Length): number => ceilingOfQuotient(totalRise, maxRise);
