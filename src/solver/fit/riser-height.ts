import type { Length } from "../length/length";
import { type Problem, problem } from "../problem";

export type RiserHeightProblem = "tread-thicker-than-rise" | "riser-over-stock" | "lap-over-tread" | "which-riser";

/**
 * Ripped heights of risers, upwards: the rise less the tread, plus what laps; riser 1 rises from the floor and laps nothing. `first` is the
 * number of the riser whose rise stands first; a column begins at riser 1 unless it says otherwise, a rise alone may be any riser's.
 */
export const riserHeights = (
  rises: readonly (Length | undefined)[], treadThickness: Length, lap: Length, stock: Length | undefined, first: number | undefined,
): readonly (Length | Problem<RiserHeightProblem> | undefined)[] | Problem<RiserHeightProblem> => {
  if (lap.gt(treadThickness)) return problem("lap-over-tread", { lap, thickness: treadThickness });
  if (first === undefined && rises.length === 1 && lap.gt(0)) return problem("which-riser", { lap });
  return rises.map((rise, index) => {
    if (rise === undefined) return undefined;
    const bare = rise.minus(treadThickness);
    if (bare.lte(0)) return problem("tread-thicker-than-rise", { thickness: treadThickness, rise });
    const height = index + (first ?? 1) === 1 ? bare : bare.plus(lap);
    if (stock === undefined || height.lte(stock)) return height;
    return bare.gt(stock)
      ? problem("riser-over-stock", { height, stock, most: "none" })
      : problem("riser-over-stock", { height, stock, most: stock.minus(bare) });
  });
};
