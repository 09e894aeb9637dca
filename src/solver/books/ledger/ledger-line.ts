import type { Exact } from "../../length/exact";
import type { Article } from "./article";
import type { MaybeMove } from "./move";
import type { Fault } from "./own-fault";
import type { Place } from "./place";

/** The columns of the month's close that a posting can be in; those of `LESS` take away. */
export type Posted = "opening" | "bought" | "freight" | "tax" | "credited" | "returned" | "in" | "out";
const LESS: readonly Posted[] = ["credited", "returned", "out"];

export const isLess = (column: Posted): boolean => LESS.includes(column);

/** What one row does at one place: every figure of the books is a sum of these. */
export interface Posting {
  readonly place: Place;
  /** None for price differences and the like, which are money alone. */
  readonly article?: Article;
  readonly column: Posted;
  /** In the article's measure; taken away where the column takes away, as the value is. */
  readonly quantity: Exact;
  readonly value: Exact;
  /** What it changes the charges by, up or down. */
  readonly charges: Exact;
  /** Short at a count, so no issue. */
  readonly isShort?: true;
}

/** What was spoiled at a job and stays in its cost. */
export interface Scrapped {
  readonly place: Place;
  readonly article: Article;
  readonly quantity: Exact;
  readonly value: Exact;
}

/** A row as it was reckoned, or what is wrong with it. */
export interface LedgerLine<Bad> {
  readonly move: MaybeMove<Bad>;
  /** As the books have it: a purchase of less than nothing is a return. */
  readonly kind: string;
  readonly article?: Article;
  readonly from?: Place;
  readonly to?: Place;
  /** In the article's measure. */
  readonly quantity?: Exact;
  readonly cost?: Exact;
  readonly charges?: Exact;
  readonly value?: Exact;
  /** What the rack holds of the article afterwards, where it ever held any, and what that is worth. */
  readonly onTheRack?: Exact;
  readonly rackValue?: Exact;
  readonly note: string;
  readonly postings: readonly Posting[];
  readonly scrapped?: Scrapped;
  readonly bad?: Bad | Fault;
}
