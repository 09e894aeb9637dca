import { type Branched } from "./branching";
import { worthSteps } from "./certificate";
import { type Generated } from "./column-generation";
import { cheaper } from "./dive";
import { type Effort, withShare } from "./effort";
import { type Engine } from "./engine";
import { type Knapsack } from "./knapsack";
import { wholeShelf } from "./master";
import { nearPatterns, weighedBy } from "./near-patterns";
import { type Shelf } from "./shelf";

const KNOWN_SHARE = 0.2;
/** A plan of many pieces is looked for near the proven cost first, where few patterns are, then farther off, up to the best one known. */
const NEAR_PARTS = [0.1, 0.35, 1];

/** A plan of many pieces, searched among the patterns of the linear plan first, then among all near the proven cost. */
export const searchedAtRoot = (
  shelf: Shelf,
  knapsack: Knapsack,
  { masterOf, searchWhole, mostPatterns }: Engine,
  effort: Effort,
  root: Generated,
  start: Branched,
): Branched => {
  if (start.best === undefined || mostPatterns === 0) return start;
  const limits = wholeShelf(shelf);
  const steps = worthSteps(shelf);
  const fillings = knapsack.fill(
    root.worth,
    shelf.kinds.map((kind) => kind.wanted),
    effort,
  );
  const weighed = weighedBy(shelf, limits, steps, root.worth, fillings);
  const known = [...root.patterns, ...start.best.uses.map(({ pattern }) => pattern)].map((pattern) => ({ pattern, lack: 0 }));
  const target = start.best.cost - 1;
  const improved = withShare(effort, effort.left * KNOWN_SHARE, (share) =>
    searchWhole(shelf, limits, weighed, known, target, masterOf, share),
  );
  let best = cheaper(start.best, improved.best) ?? start.best;
  let { proven } = start;
  for (const [place, part] of NEAR_PARTS.entries()) {
    if (best.cost <= proven) break;
    const aim = start.proven + Math.floor((best.cost - 1 - start.proven) * part);
    const near = nearPatterns(shelf, limits, weighed, aim * steps - root.least, true, mostPatterns, effort);
    if (near === undefined) break;
    const search = withShare(effort, effort.left / (NEAR_PARTS.length - place), (share) =>
      searchWhole(shelf, limits, weighed, near, aim, masterOf, share),
    );
    best = cheaper(best, search.best) ?? best;
    if (search.isClosed) proven = Math.min(best.cost, Math.max(proven, aim + 1));
  }
  return {
    best,
    certified: Math.min(start.certified, best.cost),
    proven: Math.min(proven, best.cost),
    proof: { by: "worth", worth: root.worth, isSearched: proven > start.proven },
  };
};
