import { cents } from "../bid/cents";
import { sizeText } from "../code/size-text";
import { Exact } from "../length/exact";
import { lengthOf, type Unit } from "../length/length";
import { isProblem } from "../problem";
import { sticksByRow } from "../yield/buy-list";
import type { SheetJob } from "../yield/sheets/sheet-job";
import { sheetPlan } from "../yield/sheets/sheet-plan";
import type { Candidate } from "./blank-stock";
import { type Bought, inSeries, KERF, KERF_TEXT, named, type OrderedBoards, type SavingRow } from "./saving";

/** A kind of piece as it is ordered, and the cheaper of its blanks and of boards cut into it alone. */
export interface OrderedKind {
  readonly order: OrderedBoards;
  readonly bought: Bought;
}

/** Steps for the plan of all kinds of one thickness: a part of what a cutting plan in a cell may take. */
const EFFORT = 30_000_000;

const ZERO = new Exact(0);
const sum = (amounts: readonly Exact[]): Exact => amounts.reduce((all, each) => all.plus(each), ZERO);
const countOf = ({ taken }: OrderedBoards): number => [...taken.values()].reduce((all, each) => all + each, 0);

/** Kinds of one thickness, each from boards of that thickness, that are paid for. */
const groupsOf = (kinds: readonly OrderedKind[]): readonly (readonly OrderedKind[])[] => {
  const groups = new Map<string, OrderedKind[]>();
  for (const kind of kinds) {
    const { blank, taken, suiting } = kind.order;
    if (taken.size === 0 || [...taken.keys()].some((one) => !suiting.includes(one))) continue;
    const key = blank.thickness.toString();
    groups.set(key, [...(groups.get(key) ?? []), kind]);
  }
  return [...groups.values()].filter((group) => group.length > 1 && group.some(({ bought }) => bought.cost.gt(0)));
};

const jobOf = (group: readonly OrderedKind[], boards: readonly Candidate[], free: (board: Candidate) => number, unit: Unit): SheetJob => ({
  pieces: group.map(({ order }) => ({
    label: order.blank.item, length: order.blank.length, width: order.blank.width, quantity: countOf(order), grade: "", turns: false,
  })),
  stock: boards.map((board) => ({
    label: "", length: board.stock.length, width: board.width, price: board.price, available: free(board), owned: board.stock.owned,
    grade: "",
  })),
  kerf: KERF, trim: lengthOf(0, unit), first: "either", unit,
});

const called = (board: Candidate, unit: Unit): string =>
  (board.stock.label ?? "") === "" ? `${named(board, unit)} x ${sizeText(board.width, unit)}` : named(board, unit);

/** The kinds of one thickness cut together, ripped and crosscut, where that is less than each by itself. */
const togetherOf = (group: readonly OrderedKind[], left: ReadonlyMap<Candidate, number>, unit: Unit): SavingRow | undefined => {
  const boards = [...new Set(group.flatMap(({ order }) => order.suiting))];
  const free = (board: Candidate): number =>
    group.reduce((all, { bought }) => all + (bought.used.get(board) ?? 0), left.get(board) ?? 0);
  const there = boards.filter((board) => free(board) > 0);
  const job = jobOf(group, there, free, unit);
  const plan = sheetPlan(job, EFFORT);
  if (isProblem(plan)) return undefined;
  const used = sticksByRow(job, { sticks: plan.sheets })
    .flatMap((sheets, row) => (sheets.length === 0 ? [] : [{ board: there[row]!, count: sheets.length }]));
  const cost = sum(used.map(({ board, count }) => cents(board.price.times(count))));
  const alone = sum(group.map(({ bought }) => bought.cost));
  if (cost.gte(alone)) return undefined;
  const pieces = inSeries(group.map(({ order }) => `${countOf(order)} x ${order.blank.item}`));
  const from = inSeries(used.map(({ board, count }) => `${count} of ${called(board, unit)}`));
  const withSavings = group.some(({ bought }) => bought.row !== undefined) ? "with the savings above" : "as ordered above";
  const least = plan.bound.eq(plan.cost) ? ", the least there is" : "";
  const note =
    `${pieces} together from ${from}: ${cost.toFixed(2)}, ${alone.minus(cost).toFixed(2)} less than ${withSavings}${least}; SHEETCUTS ` +
    `plans them; a cut takes ${KERF_TEXT[unit]}`;
  return { item: "saving", quantity: 0, cost: ZERO, note };
};

/** Rows that tell where kinds of one thickness cost less cut together than each by itself. */
export const togetherRows = (kinds: readonly OrderedKind[], left: ReadonlyMap<Candidate, number>, unit: Unit): readonly SavingRow[] =>
  groupsOf(kinds).flatMap((group) => togetherOf(group, left, unit) ?? []);
