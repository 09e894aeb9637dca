import { type Problem, problem } from "../problem";

/** Headroom under the far edge of an opening of level length `opening`, measured as `opening` in opening.ts is. One unit. */
export const headroom = (
  rise: number, run: number, opening: number, floorThickness: number, nosing: number,
): number | Problem<"no-headroom"> => {
  const found = ((opening - nosing) * rise) / run - floorThickness;
  return found > 0 ? found : problem("no-headroom", { opening, floorThickness });
};
