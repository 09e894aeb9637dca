import { cents } from "../bid/cents";
import { sizeText } from "../code/size-text";
import { Exact } from "../length/exact";
import { type Length, lengthOf, type Unit } from "../length/length";
import { isProblem } from "../problem";
import { sticksByRow } from "../yield/buy-list";
import type { CuttingJob, Stock } from "../yield/cutting-job";
import { cuttingPlan } from "../yield/cutting-plan";
import { marksDown, marksUp } from "../yield/mark";
import { IN_A_CELL } from "../yield/shelf/engine";
import type { Blank } from "./blank-list";
import type { Candidate } from "./blank-stock";

/** What is ordered of each board for one kind of piece, what it costs, and the boards wide and thick enough for it, long or short. */
export interface OrderedBoards {
  readonly blank: Blank;
  readonly taken: ReadonlyMap<Candidate, number>;
  readonly paid: Exact;
  readonly suiting: readonly Candidate[];
}

/** Boards that would give a kind of piece for less, where some are cut into several: not ordered, listed beside the goods. */
export interface SavingRow {
  readonly item: "saving";
  readonly quantity: 0;
  readonly cost: Exact;
  readonly note: string;
}

/** What is used of each board for a kind of piece, and what that costs, with the row that tells so where it is less than the blanks. */
export interface Bought {
  readonly used: ReadonlyMap<Candidate, number>;
  readonly cost: Exact;
  readonly row?: SavingRow;
}

/** What the blade takes between two pieces of one board: the kerf CUTS takes where none is given. */
export const KERF = lengthOf(0.125, "in");
export const KERF_TEXT: Readonly<Record<Unit, string>> = {
  in: `${sizeText(KERF, "in")} (${sizeText(KERF, "mm")})`,
  mm: `${sizeText(KERF, "mm")} (${sizeText(KERF, "in")})`,
};

/** Steps for the plan of one kind of piece, which has one length: a few thousand are enough for it. */
const ENGINE = { ...IN_A_CELL, effort: 20_000_000 };

interface Board {
  readonly candidate: Candidate;
  readonly available: number;
  /** Pieces it gives on the marks of a cutting plan: none where a size between two marks is rounded. */
  readonly gives: number;
}

/** Of the boards that give equally many only the cheapest, as many as it takes for all: no plan needs another. */
const needed = (boards: readonly Board[], wanted: number): Board[] => {
  const given = new Map<number, number>();
  return [...boards]
    .sort((one, other) => one.candidate.price.cmp(other.candidate.price))
    .filter(({ gives, available }) => {
      const before = given.get(gives) ?? 0;
      given.set(gives, before + gives * available);
      return before < wanted;
    });
};

/** A board as a note calls it. */
export const named = ({ stock: { label = "", length, owned } }: Candidate, unit: Unit): string =>
  `${label === "" ? `the board of ${sizeText(length, unit)}` : label}${owned ? " (on hand)" : ""}`;

export const inSeries = (parts: readonly string[]): string =>
  parts.length < 2 ? parts.join("") : `${parts.slice(0, -1).join(", ")} and ${parts[parts.length - 1]!}`;

const stockOf = ({ candidate: { stock, price }, available }: Board): Stock => ({
  label: "",
  length: stock.length,
  price,
  available,
  owned: stock.owned,
  grade: "",
});

/** The pieces ordered here as a cutting job: `left` is what the order leaves of each board, and what it takes for them is free again. */
const jobOf = (length: Length, wanted: number, boards: readonly Board[], unit: Unit): CuttingJob => ({
  pieces: [{ label: "", length, quantity: wanted, grade: "" }], stock: boards.map(stockOf), kerf: KERF, trim: new Exact(0), unit,
});

/**
 * The boards that give the pieces ordered here for least, cut as a cutting plan cuts them, where that is less than they cost as blanks.
 * Takes what it would use off what is left, so that no two savings count on the same board.
 */
export const savingRow = (
  { blank, taken, paid, suiting }: OrderedBoards,
  left: Map<Candidate, number>,
  unit: Unit,
): Bought => {
  const asBlanks = { used: taken, cost: paid };
  const wanted = [...taken.values()].reduce((count, each) => count + each, 0);
  const free = (candidate: Candidate): number => (left.get(candidate) ?? 0) + (taken.get(candidate) ?? 0);
  const kerf = marksUp(KERF, unit);
  const boards = suiting.flatMap((candidate): Board[] => {
    const gives = Math.min(wanted, Math.floor((marksDown(candidate.stock.length, unit) + kerf) / (marksUp(blank.length, unit) + kerf)));
    const available = Math.min(wanted, free(candidate));
    return gives === 0 || available <= 0 ? [] : [{ candidate, available, gives }];
  });
  if (paid.isZero()) return asBlanks;
  const rows = needed(boards, wanted);
  const job = jobOf(blank.length, wanted, rows, unit);
  const plan = cuttingPlan(job, ENGINE);
  if (isProblem(plan)) return asBlanks;
  const used = sticksByRow(job, plan).flatMap((sticks, row) => (sticks.length === 0 ? [] : [{ ...rows[row]!, count: sticks.length }]));
  const cost = used.reduce((all, { candidate, count }) => all.plus(cents(candidate.price.times(count))), new Exact(0));
  if (cost.gte(paid)) return asBlanks;
  for (const [candidate, count] of taken) left.set(candidate, (left.get(candidate) ?? 0) + count);
  for (const { candidate, count } of used) left.set(candidate, (left.get(candidate) ?? 0) - count);
  const bought = [...used]
    .sort((one, other) => other.gives - one.gives)
    .map(({ candidate, count }) => `${count} of ${named(candidate, unit)}`);
  const isLeast = plan.bound.eq(plan.cost) && suiting.every((one) => !taken.has(one) || boards.some(({ candidate }) => candidate === one));
  const least = isLeast ? ", the least there is" : "";
  const note =
    `${wanted} x ${blank.item} from ${inSeries(bought)}: ${cost.toFixed(2)}, ${paid.minus(cost).toFixed(2)} less${least}; CUTS ` +
    `plans them; a cut takes ${KERF_TEXT[unit]}`;
  const row: SavingRow = { item: "saving", quantity: 0, cost: new Exact(0), note };
  return { used: new Map(used.map(({ candidate, count }) => [candidate, count])), cost, row };
};
