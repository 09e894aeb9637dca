import { type Problem, problem } from "../problem";
import { type SpeciesProblem, speciesNamed } from "./species";

export type MovementProblem = SpeciesProblem | "moisture-outside" | "no-movement-value";

/** Moisture contents between which the coefficients hold, in percent: Wood Handbook, chapter 13. */
const DRIEST = 6;
const WETTEST = 14;

/**
 * Change of a width across the grain, in its unit, between two moisture contents in percent; positive swells. Wood Handbook equation 13-2.
 */
export const movement = (
  width: number,
  species: string,
  fromMoisture: number,
  toMoisture: number,
  cut: "flat" | "quarter",
): number | Problem<MovementProblem> => {
  for (const [name, moisture] of [
    ["fromMC", fromMoisture],
    ["toMC", toMoisture],
  ] as const) {
    if (moisture < DRIEST || moisture > WETTEST) return problem("moisture-outside", { name, moisture });
  }
  const wood = speciesNamed(species);
  if ("problem" in wood) return wood;
  if (wood.movement === undefined) return problem("no-movement-value", { species: wood.name });
  return width * (cut === "flat" ? wood.movement.tangential : wood.movement.radial) * (toMoisture - fromMoisture);
};
