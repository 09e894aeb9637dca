import { type Proof } from "./certificate";
import { type Cut } from "./shelf";

/** The plan of a shelf, with the least any plan can cost and its proof. */
export interface ShelfPlan {
  /** Nothing where no plan was found. */
  readonly cuts: readonly Cut[] | undefined;
  /** No plan costs less: by worths alone, which anyone can check, and with what was searched. Infinity where there is no plan. */
  readonly certified: number;
  readonly proven: number;
  readonly proof: Proof;
}
