import { allocation } from "../../bid/allocation";
import { cents } from "../../bid/cents";
import { goodsKey } from "../../goods/goods-key";
import { Exact, exact } from "../../length/exact";
import type { Length } from "../../length/length";
import { isProblem, type Problem } from "../../problem";
import { clearStretches, longestClear } from "./clear-stretches";
import { type Footage, footage, type FootageRule, footageTotal, settled } from "./footage";
import type { TallyBoard } from "./tally-board";
import { isPriced, type TallyFault, tallyFault } from "./tally-fault";

/** A board of the tally, counted and priced. */
interface CountedBoard extends Footage {
  readonly board: TallyBoard;
  /** Undefined where the tally has no prices. */
  readonly cost: Exact | undefined;
  readonly longestClear: Length;
  readonly note: string;
}

/** What the boards of one thickness, grade, species and price come to. */
interface TallyTotal {
  readonly first: TallyBoard;
  readonly boards: number;
  readonly surface: Exact;
  readonly boardFeet: Exact;
  readonly cost: Exact | undefined;
  readonly note: string;
}

export interface TallyList {
  readonly boards: readonly CountedBoard[];
  readonly totals: readonly TallyTotal[];
}

const ZERO = new Exact(0);
const DECIMALS = 3;
const PERCENT = 100;

const sum = (amounts: readonly Exact[]): Exact => amounts.reduce((all, amount) => all.plus(amount), ZERO);
const shown = (amount: Exact): string => amount.toDecimalPlaces(DECIMALS).toString();

/** A counted row before money: what the rule gives, and what is billed. */
interface Billed extends Footage {
  readonly board: TallyBoard;
  /** By the rule; the paper may say otherwise. */
  readonly net: Exact;
}

const isOnPaper = ({ board }: Billed): boolean => board.paperFeet !== undefined;

const billed = (boards: readonly TallyBoard[], rule: FootageRule, shrinkage: Exact): readonly Billed[] => {
  const kept = new Exact(1).minus(shrinkage);
  const counts = footage(rule, boards);
  return boards.map((board, place) => {
    const { feet, surface, boardFeet } = counts[place]!;
    const onPaper = board.paperFeet === undefined ? undefined : exact(board.paperFeet);
    return { board, feet, surface, net: boardFeet, boardFeet: onPaper ?? (shrinkage.isZero() ? boardFeet : boardFeet.div(kept)) };
  });
};

/** Board feet billed: the total of the rule, and what a supplier who sells gross adds for shrinkage to what is counted here. */
const billedTotal = (rows: readonly Billed[], rule: FootageRule, shrinkage: Exact): Exact => {
  const counted = sum(rows.filter((row) => !isOnPaper(row)).map(({ net }) => net));
  const onPaper = sum(rows.filter(isOnPaper).map(({ boardFeet }) => boardFeet));
  const added = footageTotal(rule, counted).times(shrinkage).div(new Exact(1).minus(shrinkage));
  return footageTotal(rule, counted.plus(onPaper)).plus(settled(added));
};

/** An amount over rows by their board feet, to the cent; where they have none, by their boards. */
const shared = (amount: Exact, rows: readonly Billed[]): readonly Exact[] => {
  const feet = rows.map(({ boardFeet }) => boardFeet);
  return allocation(amount, feet.every((each) => each.isZero()) ? rows.map(({ board }) => new Exact(board.quantity)) : feet);
};

const together = <Row>(rows: readonly Row[], keyOf: (row: Row) => string): readonly (readonly Row[])[] => {
  const found = new Map<string, Row[]>();
  for (const row of rows) {
    const key = keyOf(row);
    const others = found.get(key);
    if (others === undefined) found.set(key, [row]);
    else others.push(row);
  }
  return [...found.values()];
};

/** The lots that are bought as such, by name. */
const lotPrices = (boards: readonly TallyBoard[]): ReadonlyMap<string, Exact> =>
  new Map(boards.flatMap(({ lot, lotPrice }) => (lot === undefined || lotPrice === undefined ? [] : [[goodsKey(lot), lotPrice] as const])));

type Lots = ReadonlyMap<string, Exact>;

const lotOf = ({ lot, owned }: TallyBoard, lots: Lots): string | undefined => {
  const key = lot === undefined || owned ? undefined : goodsKey(lot);
  return key !== undefined && lots.has(key) ? key : undefined;
};

/** How a board is paid for; boards of one total are paid for alike. */
const paidBy = (board: TallyBoard, lots: Lots): string => {
  if (board.owned) return "owned";
  const lot = lotOf(board, lots);
  if (lot !== undefined) return `lot ${lot}`;
  return board.boardFootPrice === undefined ? "board" : `foot ${board.boardFootPrice.toString()}`;
};

const totalKey = ({ board }: Billed, lots: Lots): string =>
  JSON.stringify([board.thickness.toString(), goodsKey(board.grade), goodsKey(board.species), paidBy(board, lots)]);

/** What each board costs: owned nothing, its own price, its share of its lot, its share of its total by the board foot. */
const costs = (
  rows: readonly Billed[], groups: readonly (readonly Billed[])[], lots: Lots, rule: FootageRule, shrinkage: Exact,
): ReadonlyMap<Billed, Exact> => {
  const found = new Map<Billed, Exact>();
  const give = (of: readonly Billed[], shares: readonly Exact[]): void => of.forEach((row, place) => found.set(row, shares[place] ?? ZERO));
  for (const group of groups) {
    const { owned, boardFootPrice } = group[0]!.board;
    if (owned) give(group, group.map(() => ZERO));
    else if (lotOf(group[0]!.board, lots) !== undefined) continue;
    else if (boardFootPrice !== undefined) give(group, shared(cents(billedTotal(group, rule, shrinkage).times(boardFootPrice)), group));
    else give(group, group.map(({ board }) => cents((board.price ?? ZERO).times(board.quantity))));
  }
  const inLots = rows.filter(({ board }) => lotOf(board, lots) !== undefined);
  for (const lot of together(inLots, ({ board }) => lotOf(board, lots) ?? "")) {
    give(lot, shared(cents(lots.get(lotOf(lot[0]!.board, lots) ?? "") ?? ZERO), lot));
  }
  return found;
};

const boardNote = ({ board, net }: Billed, rule: FootageRule): string =>
  [
    board.paperFeet === undefined || settled(net).eq(board.paperFeet) ? "" : `as on the paper; ${rule} gives ${shown(net)}`,
    board.surfaced ? "counted at its finished thickness; the paper may count the rough one" : "",
  ].filter((part) => part !== "").join("; ");

const totalNote = (rows: readonly Billed[], rule: FootageRule, shrinkage: Exact): string => {
  const counted = rows.filter((row) => !isOnPaper(row));
  if (shrinkage.isZero() || counted.length === 0) return "";
  const net = footageTotal(rule, sum(counted.map((row) => row.net)));
  return `${shown(net)} net; ${shrinkage.times(PERCENT).toString()} % for shrinkage is billed on top`;
};

/** Every board counted by the rule and priced, and what those of one thickness, grade, species and price come to. */
export const tallyList = (
  boards: readonly TallyBoard[],
  rule: FootageRule,
  shrinkage: Exact,
): TallyList | Problem<TallyFault> => {
  const fault = tallyFault(boards);
  if (isProblem(fault)) return fault;
  const rows = billed(boards, rule, shrinkage);
  const lots = lotPrices(boards);
  const groups = together(rows, (row) => totalKey(row, lots));
  const hasPrices = boards.some(isPriced) || boards.every(({ owned }) => owned);
  const cost = hasPrices ? costs(rows, groups, lots, rule, shrinkage) : new Map<Billed, Exact>();
  const counted = rows.map((row): CountedBoard => {
    const { board, net: _net, ...counts } = row;
    const stretches = clearStretches(board.length, board.defects, board.clear);
    return { board, ...counts, cost: cost.get(row), longestClear: longestClear(stretches), note: boardNote(row, rule) };
  });
  const totals = groups.map((group): TallyTotal => ({
    first: group[0]!.board,
    boards: group.reduce((all, { board }) => all + board.quantity, 0),
    surface: sum(group.map(({ surface }) => surface)),
    boardFeet: billedTotal(group, rule, shrinkage),
    cost: hasPrices ? sum(group.map((row) => cost.get(row) ?? ZERO)) : undefined,
    note: totalNote(group, rule, shrinkage),
  }));
  return { boards: counted, totals };
};
