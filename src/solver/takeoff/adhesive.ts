import { Exact, wholeUp } from "../length/exact";
import { type Length, lengthOf } from "../length/length";
import { type Problem, problem } from "../problem";

/** To the 60 digits of the exact arithmetic. */
const PI = Exact.acos(-1);

/** Nozzles are cut to 1/2 in at most (common practice, no source): a wider bead is a number of millimetres without its unit. */
const WIDEST_BEAD = lengthOf(2, "in");

/**
 * Cartridges to open for a round bead: its volume, pi/4 x diameter squared x length, with a share of waste added, over the volume of one
 * cartridge in cubic millimetres, rounded up.
 */
export const adhesive = (beadLength: Length, beadDiameter: Length, volume: Exact, waste: Exact): number | Problem<"wide-bead"> => {
  if (beadDiameter.gt(WIDEST_BEAD)) return problem("wide-bead", { diameter: beadDiameter, widest: WIDEST_BEAD });
  return wholeUp(PI.times(beadDiameter.div(2).pow(2)).times(beadLength).times(waste.plus(1)).div(volume)).toNumber();
};
