import { type Length, lengthOf } from "../length/length";
import { isProblem, type Problem, problem } from "../problem";

/** Height of a riser over a tread: the rise less the tread, plus what laps. */
export const riserHeight = (
  rise: Length, treadThickness: Length, lap: Length,
): Length | Problem<"tread-thicker-than-rise" | "lap-over-tread"> => {
  if (lap.gt(treadThickness)) return problem("lap-over-tread", { lap, thickness: treadThickness });
  const bare = rise.minus(treadThickness);
  return bare.lte(0) ? problem("tread-thicker-than-rise", { thickness: treadThickness, rise }) : bare.plus(lap);
};

export type RiserHeightProblem = "tread-thicker-than-rise" | "riser-over-stock" | "lap-over-tread" | "which-riser";

/** Riser 1 stands on the floor. */
const NO_LAP = lengthOf(0, "in");

/**
 * Ripped heights of risers, upwards: the rise less the tread, plus what laps; riser 1 rises from the floor and laps nothing. `first` is the
 * number of the riser whose rise stands first; a column begins at riser 1 unless it says otherwise, a rise alone may be any riser's.
 */
export const riserHeights = (
  rises: readonly (Length | undefined)[], treadThickness: Length, lap: Length, stock: Length | undefined, first: number | undefined,
): readonly (Length | Problem<RiserHeightProblem> | undefined)[] | Problem<RiserHeightProblem> => {
  if (lap.gt(treadThickness)) return problem("lap-over-tread", { lap, thickness: treadThickness });
  if (first === undefined && rises.length === 1 && rises[0] !== undefined && lap.gt(0)) return problem("which-riser", { lap });
  return rises.map((rise, index) => {
    if (rise === undefined) return undefined;
    const isFirst = index + (first ?? 1) === 1;
    const height = riserHeight(rise, treadThickness, isFirst ? NO_LAP : lap);
    if (isProblem(height) || stock === undefined || height.lte(stock)) return height;
    const bare = isFirst ? height : height.minus(lap);
    return bare.gt(stock)
      ? problem("riser-over-stock", { height, stock, most: "none" })
      : problem("riser-over-stock", { height, stock, most: stock.minus(bare) });
  });
};
