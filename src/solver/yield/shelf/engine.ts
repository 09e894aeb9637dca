import { type MasterMaker } from "./master";
import { patternBranched, type WholeSearch } from "./pattern-branching";
import { simplexMaster } from "./simplex-master";

/**
 * Search method and work limit. Efforts, shares and the sizes up to which each stage is tried, here and in the files beside this one, were
 * chosen by `npm run bench:yield`: they change how soon a plan is found and proven, never what is proven.
 */
export interface Engine {
  readonly masterOf: MasterMaker;
  readonly searchWhole: WholeSearch;
  /** Steps in all. */
  readonly effort: number;
  /** Patterns up to which a plan of many pieces is searched as a whole; 0 for not at all. */
  readonly mostPatterns: number;
}

/** What a worksheet function spends: under two seconds where it is all used. */
export const IN_A_CELL: Engine = { masterOf: simplexMaster, searchWhole: patternBranched, effort: 600_000_000, mostPatterns: 0 };
