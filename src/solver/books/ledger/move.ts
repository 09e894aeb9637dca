import type { BadRow } from "../../bad-row";
import { cents } from "../../bid/cents";
import type { Exact } from "../../length/exact";
import type { GivenDay } from "../day";

/** What a row of the ledger can be, in the order a shop meets them. */
export const MOVE_KINDS = [
  "opening", "purchase", "freight", "tax", "credit", "invoice total", "return", "issue", "transfer", "offcut", "scrap", "count",
] as const;
export type MoveKind = (typeof MOVE_KINDS)[number];

export type Name = string | number;

/** A row of the ledger as it was read: a move of goods, or of money for goods. */
export interface Move {
  readonly row: number;
  readonly date: GivenDay;
  readonly kind: MoveKind;
  readonly job?: Name;
  readonly item?: Name;
  /** Absent where the cell is 0 or empty; 0 where it says `none`. */
  readonly quantity?: number;
  readonly unit: string;
  readonly cost?: Exact;
  readonly to?: Name;
  readonly invoice?: Name;
  readonly of?: Name;
  readonly share?: number;
}

export type MoveRow<Bad> = Move | BadRow<Bad>;

/** A row that may be unreadable in part: `unread` says why, and what could be read stands. Its cost is in cents from here on. */
export interface MaybeMove<Bad> extends Partial<Omit<Move, "row" | "unit">> {
  readonly row: number;
  readonly unit: string;
  readonly day: number;
  readonly unread?: Bad;
}

/** Kinds whose rows are goods; the others are money for goods. */
export const isOfGoods = (kind: MoveKind | undefined): boolean =>
  kind !== undefined && kind !== "freight" && kind !== "tax" && kind !== "credit" && kind !== "invoice total";

/** A purchase of less than nothing is a return. */
export const isReturned = ({ kind, quantity }: MaybeMove<unknown>): boolean =>
  kind === "return" || (kind === "purchase" && quantity !== undefined && quantity < 0);

/** A credit for what one job sold: scrap to a dealer. */
export const isScrapSold = ({ kind, job, item, invoice }: MaybeMove<unknown>): boolean =>
  kind === "credit" && job !== undefined && item !== undefined && invoice === undefined;

export const isCharge = (move: MaybeMove<unknown>): boolean =>
  move.kind === "freight" || move.kind === "tax" || (move.kind === "credit" && !isScrapSold(move));

const readable = <Bad>(row: MoveRow<Bad>): MaybeMove<Bad> => {
  const read: Partial<Move> = "bad" in row ? (row.read ?? {}) : row;
  const inCents = read.cost === undefined ? {} : { cost: cents(read.cost) };
  const move = { unit: "", ...read, ...inCents, day: read.date?.day ?? 0, row: row.row ?? 0 };
  return "bad" in row ? { ...move, unread: row.bad } : move;
};

/** The place of a kind within its day: openings, purchases with their charges, all else as it stands, counts. */
const rank = (move: MaybeMove<unknown>): number => {
  if (move.kind === "opening") return 0;
  if (move.kind === "purchase" && !isReturned(move)) return 1;
  if (isCharge(move) || move.kind === "invoice total") return 2;
  return move.kind === "count" ? 4 : 3;
};

/** The rows in the order they are reckoned in: by day, then by rank, then as they stand. A row without a day is before all. */
export const inOrder = <Bad>(rows: readonly MoveRow<Bad>[]): readonly MaybeMove<Bad>[] =>
  rows
    .map(readable)
    .map((move) => ({ move, at: rank(move) }))
    .sort((one, other) => one.move.day - other.move.day || one.at - other.at || one.move.row - other.move.row)
    .map(({ move }) => move);
