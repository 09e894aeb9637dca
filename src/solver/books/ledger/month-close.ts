import type { Exact } from "../../length/exact";
import { type Problem, problem } from "../../problem";
import { monthText } from "../day";
import type { Ledger } from "./ledger";
import { isLess, type Posted } from "./ledger-line";
import type { Name } from "./move";
import { type Place, type PlaceKind, RACK } from "./place";
import { ZERO } from "./stock";

export interface MonthCloseRow extends Readonly<Record<Exclude<Posted, "opening">, Exact>> {
  readonly month: string;
  readonly where: Name;
  readonly opening: Exact;
  readonly closing: Exact;
  readonly cost: Exact;
}

export type MonthCloseProblem = "too-many-months";

/** Rows that a sheet still works with. */
const MOST_ROWS = 50_000;

const ORDER: readonly PlaceKind[] = ["rack", "job", "shop", "waste", "shrinkage", "price differences"];
const FLOWS = ["bought", "freight", "tax", "credited", "returned", "in", "out"] as const;
type Flows = Record<(typeof FLOWS)[number], Exact>;

const noFlows = (): Flows => ({ bought: ZERO, freight: ZERO, tax: ZERO, credited: ZERO, returned: ZERO, in: ZERO, out: ZERO });

/** A place in the month that is open, with what it began with. */
interface Open {
  readonly place: Place;
  opening: Exact;
  flows: Flows;
}

const closingOf = ({ opening, flows }: Open): Exact =>
  FLOWS.reduce((sum, column) => (isLess(column) ? sum.minus(flows[column]) : sum.plus(flows[column])), opening);

const rowOf = (month: string, where: Name, open: Pick<Open, "opening" | "flows">, closing: Exact): MonthCloseRow => ({
  month, where, opening: open.opening, ...open.flows, closing, cost: closing.minus(open.opening),
});

const closed = (month: string, places: readonly Open[]): readonly MonthCloseRow[] => {
  const ordered = ORDER.flatMap((kind) => places.filter(({ place }) => place.kind === kind));
  const rows = ordered.map((open) => rowOf(month, open.place.name, open, closingOf(open)));
  const sum = (amount: (row: MonthCloseRow) => Exact): Exact => rows.reduce((total, row) => total.plus(amount(row)), ZERO);
  const flows = Object.fromEntries(FLOWS.map((column) => [column, sum((row) => row[column])])) as Flows;
  const total = rowOf(month, "total", { opening: sum(({ opening }) => opening), flows }, sum(({ closing }) => closing));
  return [...rows, total];
};

/**
 * Where the money of each month went: what each place began with, what came and went, and what it ends with. A month has rows for every
 * place that there was up to its end, and the total. Openings are what the next month with other moves begins with.
 */
export const monthClose = <Bad>({ lines }: Ledger<Bad>): readonly MonthCloseRow[] | Problem<MonthCloseProblem> => {
  const open = new Map<string, Open>([[RACK.key, { place: RACK, opening: ZERO, flows: noFlows() }]]);
  const rows: MonthCloseRow[] = [];
  let month = "";
  const close = (): boolean => {
    rows.push(...closed(month, [...open.values()]));
    for (const place of open.values()) {
      place.opening = closingOf(place);
      place.flows = noFlows();
    }
    return rows.length <= MOST_ROWS;
  };
  let lastDay = 0;
  for (const { move, kind, postings } of lines) {
    const ofMove = monthText(move.day);
    if (month !== "" && ofMove !== month) {
      if (!close()) return problem("too-many-months", { most: MOST_ROWS });
      month = "";
    }
    if (kind !== "opening") month = ofMove;
    lastDay = move.day;
    for (const { place, column, value } of postings) {
      const there = open.get(place.key) ?? { place, opening: ZERO, flows: noFlows() };
      open.set(place.key, there);
      if (column === "opening") there.opening = there.opening.plus(value);
      else there.flows[column] = there.flows[column].plus(value);
    }
  }
  if (month === "") month = monthText(lastDay);
  close();
  return rows;
};
