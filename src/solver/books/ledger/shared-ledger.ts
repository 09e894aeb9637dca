import { type Ledger, ledger } from "./ledger";
import type { MoveRow } from "./move";

/** A workbook has a few ledgers at most: this year's, last year's, and the one being typed. */
const MOST_REMEMBERED = 4;
/** Rows of all of them, so that they stay small beside the workbook itself: two of the largest. */
const MOST_ROWS = 45_000;

const remembered = new Map<string, Ledger<unknown>>();
/** The same rows, by themselves: they need not be compared. */
const ofRows = new WeakMap<readonly MoveRow<unknown>[], Ledger<unknown>>();

/**
 * The books of some moves, as `ledger` has them; the last few are remembered by what they hold, so that the four functions of one table
 * reckon it once. Books depend on nothing but the moves, so remembering never shows in a result.
 */
export const sharedLedger = <Bad>(moves: readonly MoveRow<Bad>[]): Ledger<Bad> => {
  const same = ofRows.get(moves) as Ledger<Bad> | undefined;
  if (same !== undefined) return same;
  const key = JSON.stringify(moves);
  const books = (remembered.get(key) as Ledger<Bad> | undefined) ?? ledger(moves);
  remembered.delete(key);
  remembered.set(key, books);
  ofRows.set(moves, books);
  let rows = [...remembered.values()].reduce((sum, { lines }) => sum + lines.length, 0);
  for (const [oldest, { lines }] of remembered) {
    if (remembered.size === 1 || (remembered.size <= MOST_REMEMBERED && rows <= MOST_ROWS)) break;
    remembered.delete(oldest);
    rows -= lines.length;
  }
  return books;
};
