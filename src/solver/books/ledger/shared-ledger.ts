import { type Ledger, ledger } from "./ledger";
import type { MoveRow } from "./move";

/** A workbook has a few ledgers at most: this year's, last year's, and the one being typed. */
const MOST_REMEMBERED = 3;

const remembered = new Map<string, Ledger<unknown>>();

/**
 * The books of some moves, as `ledger` has them; the last few are remembered by what they hold, so that the four functions of one table
 * reckon it once. Books depend on nothing but the moves, so remembering never shows in a result.
 */
export const sharedLedger = <Bad>(moves: readonly MoveRow<Bad>[]): Ledger<Bad> => {
  const key = JSON.stringify(moves);
  const books = (remembered.get(key) as Ledger<Bad> | undefined) ?? ledger(moves);
  remembered.delete(key);
  remembered.set(key, books);
  const [oldest] = remembered.keys();
  if (remembered.size > MOST_REMEMBERED && oldest !== undefined) remembered.delete(oldest);
  return books;
};
