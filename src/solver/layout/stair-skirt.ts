import { type Length, measure, type Unit } from "../length/length";
import { type Problem, problem } from "../problem";
import type { Stair } from "./resolved-stair";
import { type Skirt, skirt } from "./skirt";

export type FlightProblem = "no-total-rise" | "no-run" | "single-rise";

/** Rise, run and count of a stair of two rises or more, as plain numbers. */
export const flight = (
  stair: Stair,
  unit: Unit,
): { readonly rise: number; readonly run: number; readonly risers: number } | Problem<FlightProblem> => {
  const { unitRise, run, risers } = stair;
  if (unitRise === undefined || risers === undefined) return problem("no-total-rise");
  if (run === undefined) return problem("no-run");
  if (risers < 2) return problem("single-rise", { risers });
  return { rise: measure(unitRise, unit), run: measure(run, unit), risers };
};

/** Skirt boards of a stair, in its unit. */
export const stairSkirt = (stair: Stair, unit: Unit): Skirt | Problem<FlightProblem> => {
  const found = flight(stair, unit);
  if ("problem" in found) return found;
  const size = (length: Length): number => measure(length, unit);
  return skirt({
    ...found,
    nosing: size(stair.nosing),
    treadThickness: size(stair.treadThickness),
    lowerBuildUp: size(stair.lowerBuildUp),
    boardWidth: size(stair.stringerBoard),
    shows: size(stair.skirtShows),
    foot: size(stair.skirtFoot),
    head: size(stair.skirtHead),
  });
};
