import type { Length } from "../length/length";
import { type Problem, problem } from "../problem";

export type RiserHeightProblem = "tread-thicker-than-rise" | "riser-over-stock" | "lap-over-tread";

/** Ripped heights of risers, bottom first: the rise less the tread, plus what laps; the first rises from the floor and laps nothing. */
export const riserHeights = (
  rises: readonly (Length | undefined)[], treadThickness: Length, lap: Length, stock: Length | undefined,
): readonly (Length | Problem<RiserHeightProblem> | undefined)[] | Problem<RiserHeightProblem> => {
  if (lap.gt(treadThickness)) return problem("lap-over-tread", { lap, thickness: treadThickness });
  return rises.map((rise, step) => {
    if (rise === undefined) return undefined;
    const bare = rise.minus(treadThickness);
    if (bare.lte(0)) return problem("tread-thicker-than-rise", { thickness: treadThickness, rise });
    const height = step === 0 ? bare : bare.plus(lap);
    if (stock === undefined || height.lte(stock)) return height;
    return bare.gt(stock)
      ? problem("riser-over-stock", { height, stock, most: "not even a lap of 0 fits" })
      : problem("riser-over-stock", { height, stock, most: stock.minus(bare) });
  });
};
