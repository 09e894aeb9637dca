import { cents } from "../bid/cents";
import { Exact } from "../length/exact";
import { type Length, lengthOf } from "../length/length";
import { type Problem, problem } from "../problem";
import { boardFeet } from "../yield/board-feet";
import type { Blank } from "./blank-list";

/** A size of blank that can be bought, or is on hand. */
export interface BlankStock {
  readonly label?: string | number;
  readonly length: Length;
  readonly width?: Length;
  readonly thickness?: Length;
  readonly price?: Exact;
  readonly available: number;
  readonly owned: boolean;
}

export type OrderProblem = "no-blank-covers" | "blank-without-price" | "blank-without-width";

export interface OrderRow {
  readonly item: string;
  readonly length: Length;
  readonly width: Length;
  readonly quantity: number;
  readonly price: Exact;
  /** Price x quantity in whole cents, and the part of it that is ripped off. */
  readonly cost: Exact;
  readonly rippedOff: Length;
  readonly cutOff: Length;
  readonly ripCost: Exact;
  readonly net: Exact;
  readonly gross: Exact;
  readonly note: string;
}

/** A longer board that would give several of a piece for less: not ordered, told beside the goods. */
export interface SavingRow {
  readonly item: "saving";
  readonly quantity: 0;
  readonly cost: Exact;
  readonly note: string;
}

/** What the rows above come to, and what among them has no price; nothing where one of them has failed. */
export interface TotalRow {
  readonly item: "total";
  readonly cost?: Exact;
  readonly ripCost?: Exact;
  readonly net?: Exact;
  readonly gross?: Exact;
  readonly note: string;
  readonly bad?: Problem<OrderProblem>;
}

/** A kind of piece no blank covers, or that is cut from sticks. */
export interface UnfilledRow {
  readonly item: string;
  readonly quantity: number;
  readonly note?: string;
  readonly bad?: Problem<OrderProblem>;
}

/** Thicknesses this close are the same board. */
const SAME_BOARD = lengthOf(0.015625, "in");

interface Candidate {
  readonly stock: BlankStock;
  readonly width: Length;
  readonly price: Exact;
}

const spareThickness = (stock: BlankStock, blank: Blank): Length => (stock.thickness ?? blank.thickness).minus(blank.thickness);

/** Pieces worth planing a thicker blank for; risers and returns come from boards of their own thickness. */
const PLANED: readonly Blank["item"][] = ["tread", "landing nosing"];

const isRightThickness = (stock: BlankStock, blank: Blank): boolean => {
  const spare = spareThickness(stock, blank);
  return spare.gte(SAME_BOARD.neg()) && (spare.lte(SAME_BOARD) || PLANED.includes(blank.item));
};

/** Planed down, a blank loses the nosing it came with. */
const isPlaned = (stock: BlankStock, blank: Blank): boolean => spareThickness(stock, blank).gt(SAME_BOARD);

/** A stick that holds two or more belongs to the cut plan, not to an order of blanks. */
const isStick = (stock: BlankStock, blank: Blank): boolean => stock.length.gte(blank.length.times(2));

/** What the blade takes between two pieces of one board, where an order says what cutting would save. */
const KERF = lengthOf(0.125, "in");

const sum = (amounts: readonly Exact[]): Exact => amounts.reduce((all, each) => all.plus(each), new Exact(0));

/** The board that gives the pieces for least, several from one, where that is less than they cost as blanks. */
const saving = (blank: Blank, bought: readonly OrderRow[], candidates: readonly Candidate[], left: ReadonlyMap<Candidate, number>): SavingRow[] => {
  const priced = bought.filter(({ cost }) => cost.gt(0));
  const wanted = priced.reduce((count, { quantity }) => count + quantity, 0);
  const paid = sum(priced.map(({ cost }) => cost));
  const boards = candidates.flatMap((candidate) => {
    const { stock, width, price } = candidate;
    const each = stock.length.plus(KERF).div(blank.length.plus(KERF)).floor().toNumber();
    if (wanted === 0 || each < 2 || stock.owned || width.lt(blank.width) || !isRightThickness(stock, blank) || isPlaned(stock, blank)) return [];
    const count = Math.ceil(wanted / each);
    return count > (left.get(candidate) ?? 0) ? [] : [{ stock, each, count, cost: cents(price.times(count)) }];
  });
  const [best] = boards.sort((one, other) => one.cost.cmp(other.cost) || one.count - other.count);
  if (best === undefined || best.cost.gte(paid)) return [];
  const { stock, each, count, cost } = best;
  const board = `${stock.label ?? "longer board"}`;
  const note = `${paid.minus(cost).toFixed(2)} less: ${count} of ${board} at ${cost.toFixed(2)} in all, cut to ${each} or fewer each, give the ${blank.item} ordered here for ${paid.toFixed(2)}; a cut takes 1/8 in (3.175 mm), and CUTS plans them`;
  return [{ item: "saving", quantity: 0, cost: new Exact(0), note }];
};

const total = (rows: readonly (OrderRow | UnfilledRow | SavingRow)[]): TotalRow => {
  const goods = rows.filter((row): row is OrderRow => "price" in row);
  const without = rows.flatMap((row) => ("price" in row || "cost" in row ? [] : [`${row.quantity} x ${row.item}`]));
  const note = without.length === 0 ? "" : `without a price here, and not in this cost: ${without.join(", ")}`;
  const failed = rows.flatMap((row) => ("bad" in row && row.bad !== undefined ? [row.bad] : []));
  if (failed[0] !== undefined) return { item: "total", note, bad: failed[0] };
  return {
    item: "total",
    cost: sum(goods.map(({ cost }) => cost)),
    ripCost: sum(goods.map(({ ripCost }) => ripCost)),
    net: sum(goods.map(({ net }) => net)),
    gross: sum(goods.map(({ gross }) => gross)),
    note,
  };
};

const covers = ({ stock, width }: Candidate, blank: Blank): boolean =>
  stock.length.gte(blank.length) && width.gte(blank.width) && isRightThickness(stock, blank) && !isStick(stock, blank);

/** Blanks of the right thickness before thicker ones, then by price, then the smaller. */
const better = (blank: Blank) => (one: Candidate, other: Candidate): number =>
  Number(isPlaned(one.stock, blank)) - Number(isPlaned(other.stock, blank)) ||
  one.price.cmp(other.price) || one.width.times(one.stock.length).cmp(other.width.times(other.stock.length));

const shareText = (share: Exact): string => `${share.times(100).toDecimalPlaces(1).toString()} %`;

const filled = (blank: Blank, { stock, width, price }: Candidate, quantity: number): OrderRow => {
  const rippedOff = width.minus(blank.width);
  const thickness = stock.thickness ?? blank.thickness;
  const cost = cents(price.times(quantity));
  const notes = [
    `for ${blank.quantity === 1 ? "the" : "each"} ${blank.item}`,
    ...(isPlaned(stock, blank) ? ["thicker than the piece: planed down, its nosing is to be re-made"] : []),
    ...(rippedOff.isZero() ? [] : [`${shareText(rippedOff.div(width))} of the width is ripped off`]),
    blank.note,
  ];
  return {
    item: String(stock.label ?? `${blank.item} blank`),
    length: stock.length,
    width,
    quantity,
    price,
    cost,
    rippedOff,
    cutOff: stock.length.minus(blank.length),
    ripCost: cents(cost.times(rippedOff).div(width)),
    net: boardFeet(thickness, blank.width, blank.length, quantity),
    gross: boardFeet(thickness, width, stock.length, quantity),
    note: notes.join("; "),
  };
};

const unfilled = (blank: Blank, wanted: number, candidates: readonly Candidate[]): UnfilledRow => {
  if (blank.item !== "tread") {
    return { item: blank.item, quantity: wanted, note: "no blank in the stock is of this size: cut it from sticks with CUTS" };
  }
  const widest = candidates.reduce((most, { stock, width }) => (stock.length.gte(blank.length) && width.gt(most) ? width : most), new Exact(0));
  return { item: blank.item, quantity: wanted, bad: problem("no-blank-covers", { missing: wanted, length: blank.length, width: blank.width, widest }) };
};

/**
 * The blanks to buy: for each kind of piece the cheapest stock that covers it, on-hand pieces first, then the next dearer where the first
 * runs out; what is ripped off and cut off each, and what the rip costs. A row tells where a longer board cut into several would cost less,
 * and the last what all comes to and what has no price.
 */
export const blankOrder = (
  blanks: readonly Blank[], stock: readonly BlankStock[],
): readonly (OrderRow | UnfilledRow | SavingRow | TotalRow)[] | Problem<OrderProblem> => {
  const candidates: Candidate[] = [];
  for (const one of stock) {
    const name = String(one.label ?? "");
    if (one.width === undefined) return problem("blank-without-width", { label: name, length: one.length });
    if (one.price === undefined && !one.owned) return problem("blank-without-price", { label: name, length: one.length });
    candidates.push({ stock: one, width: one.width, price: one.price ?? new Exact(0) });
  }
  const left = new Map(candidates.map((candidate) => [candidate, candidate.stock.available]));
  const ordered = blanks.flatMap((blank) => {
    const rows: OrderRow[] = [];
    let wanted = blank.quantity;
    for (const candidate of candidates.filter((one) => covers(one, blank)).sort(better(blank))) {
      const quantity = Math.min(wanted, left.get(candidate) ?? 0);
      if (quantity <= 0) continue;
      left.set(candidate, (left.get(candidate) ?? 0) - quantity);
      rows.push(filled(blank, candidate, quantity));
      wanted -= quantity;
    }
    const cheaper = saving(blank, rows, candidates, left);
    return wanted > 0 ? [...rows, unfilled(blank, wanted, candidates), ...cheaper] : [...rows, ...cheaper];
  });
  return [...ordered, total(ordered)];
};
