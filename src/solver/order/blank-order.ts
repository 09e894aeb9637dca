import { cents } from "../bid/cents";
import { goodsKey } from "../goods/goods-key";
import { Exact } from "../length/exact";
import { type Length, lengthOf, type Unit } from "../length/length";
import { isProblem, type Problem, problem } from "../problem";
import { boardFeet } from "../yield/board-feet";
import { called } from "../yield/cutting-job";
import type { NoGluePlan } from "../yield/glue-up/glue-plan";
import { isPriced, tallyFault } from "../yield/tally/tally-fault";
import type { Blank } from "./blank-list";
import type { BlankStock, Candidate } from "./blank-stock";
import { type GluedRow, gluedRows, type Gluing, type Missing } from "./glued-blanks";
import { type OrderedBoards, type SavingRow, savingRow } from "./saving";
import { togetherRows } from "./together";

export type OrderProblem =
  | "no-blank-long-enough"
  | "no-blank-covers"
  | "no-blank-thick-enough"
  | "no-blank-but-sticks"
  | "blanks-run-out"
  | "blank-without-price"
  | "blank-without-width"
  | "boards-without-price"
  | NoGluePlan;

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

const spareThickness = (stock: BlankStock, blank: Blank): Length => (stock.thickness ?? blank.thickness).minus(blank.thickness);

/** Pieces worth planing a thicker blank for; risers and returns come from boards of their own thickness. */
const PLANED: readonly Blank["item"][] = ["tread", "landing nosing", "landing tread"];

const isRightThickness = (stock: BlankStock, blank: Blank): boolean => {
  const spare = spareThickness(stock, blank);
  return spare.gte(SAME_BOARD.neg()) && (spare.lte(SAME_BOARD) || PLANED.includes(blank.item));
};

/** Planed down, a blank loses the nosing it came with. */
const isPlaned = (stock: BlankStock, blank: Blank): boolean => spareThickness(stock, blank).gt(SAME_BOARD);

/** A stick that holds two or more belongs to the cut plan, not to an order of blanks. */
const isStick = (stock: BlankStock, blank: Blank): boolean => stock.length.gte(blank.length.times(2));

const sum = (amounts: readonly Exact[]): Exact => amounts.reduce((all, each) => all.plus(each), new Exact(0));

const total = (rows: readonly (OrderRow | UnfilledRow | SavingRow | GluedRow)[]): TotalRow => {
  const goods = rows.filter((row): row is OrderRow | GluedRow => "price" in row);
  const without = rows.flatMap((row) => ("price" in row || "cost" in row ? [] : [`${row.quantity} x ${row.item}`]));
  const note = without.length === 0 ? "" : `without a price here, and not in this cost: ${without.join(", ")}`;
  const failed = rows.flatMap((row) => ("bad" in row && row.bad !== undefined ? [row.bad] : []));
  if (failed[0] !== undefined) return { item: "total", note, bad: failed[0] };
  return {
    item: "total",
    cost: sum(goods.map(({ cost }) => cost)),
    ripCost: sum(goods.flatMap((row) => ("ripCost" in row ? [row.ripCost] : []))),
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

const largest = (candidates: readonly Candidate[], size: (candidate: Candidate) => Length): Length =>
  candidates.reduce<Length>((most, one) => (size(one).gt(most) ? size(one) : most), new Exact(0));

/** Why no blank is left for so many treads: the first size that none has, or that what has them all is a stick, or used up. */
const uncovered = (blank: Blank, missing: number, candidates: readonly Candidate[]): Problem<OrderProblem> => {
  const { length, width, thickness } = blank;
  const facts = { missing, length, width, thickness };
  const longEnough = candidates.filter(({ stock }) => stock.length.gte(length));
  if (longEnough.length === 0)
    return problem("no-blank-long-enough", { ...facts, longest: largest(candidates, ({ stock }) => stock.length) });
  const wideEnough = longEnough.filter((one) => one.width.gte(width));
  if (wideEnough.length === 0) return problem("no-blank-covers", { ...facts, widest: largest(longEnough, (one) => one.width) });
  const thickEnough = wideEnough.filter(({ stock }) => isRightThickness(stock, blank));
  if (thickEnough.length === 0)
    return problem("no-blank-thick-enough", { ...facts, thickest: largest(wideEnough, ({ stock }) => stock.thickness ?? thickness) });
  const isForCuts = thickEnough.every(({ stock }) => isStick(stock, blank)) && thickEnough.some(({ stock }) => stock.available > 0);
  return problem(isForCuts ? "no-blank-but-sticks" : "blanks-run-out", facts);
};

const unfilled = (blank: Blank, wanted: number, candidates: readonly Candidate[]): UnfilledRow => {
  if (blank.item !== "tread") {
    return { item: blank.item, quantity: wanted, note: "no blank in the stock is of this size: cut it from sticks with CUTS" };
  }
  return { item: blank.item, quantity: wanted, bad: uncovered(blank, wanted, candidates) };
};

/** What is ordered for one kind of piece, and how many it leaves without a blank. */
interface Ordered extends OrderedBoards {
  readonly rows: readonly OrderRow[];
  readonly missing: number;
}

/** Whether the boards can be counted in money, which the order is in. */
const boardsFault = ({ boards }: Gluing): Problem<OrderProblem> | undefined =>
  tallyFault(boards) ?? (boards.every(({ owned }) => owned) || boards.some(isPriced) ? undefined : problem("boards-without-price"));

/** Pieces that are glued up where there are boards: treads, but for those that are cut from a stick in stock, and nosings. */
const isGlued = ({ blank, missing }: Ordered, candidates: readonly Candidate[]): boolean =>
  PLANED.includes(blank.item) && (blank.item !== "tread" || uncovered(blank, missing, candidates).problem !== "no-blank-but-sticks");

/** The boards for pieces, or why they cannot be had; a fault of the boards themselves comes first. */
const gluedFrom = (
  orders: readonly Ordered[], candidates: readonly Candidate[], gluing: Gluing, unit: Unit,
): readonly GluedRow[] | Problem<OrderProblem> => {
  const taken = new Set(candidates.map(({ stock }) => goodsKey(stock.label ?? "")));
  const missing = orders.map((order): Missing => ({ blank: order.blank, quantity: order.missing }));
  return boardsFault(gluing) ?? gluedRows(missing, gluing, unit, taken);
};

/**
 * What no blank covers, kind by kind: glued up from measured boards where there are any, and what is glued rows of its own at the end.
 * Where not all of it can be had, the treads alone are; what is left is as without boards, but for treads, of which it is said why.
 */
const withoutBlank = (
  orders: readonly Ordered[], candidates: readonly Candidate[], gluing: Gluing | undefined, unit: Unit,
): { readonly rows: ReadonlyMap<Ordered, UnfilledRow>; readonly glued: readonly GluedRow[] } => {
  const missing = orders.filter((order) => order.missing > 0);
  const all = gluing === undefined ? [] : missing.filter((order) => isGlued(order, candidates));
  const treads = all.filter(({ blank }) => blank.item === "tread");
  let toGlue = all;
  let found = gluing === undefined || all.length === 0 ? [] : gluedFrom(all, candidates, gluing, unit);
  if (isProblem(found) && gluing !== undefined && treads.length > 0 && treads.length < all.length) {
    toGlue = treads;
    found = gluedFrom(treads, candidates, gluing, unit);
  }
  const rows = missing.flatMap((order): (readonly [Ordered, UnfilledRow])[] => {
    const { blank, missing: quantity } = order;
    if (!toGlue.includes(order)) return [[order, unfilled(blank, quantity, candidates)]];
    if (!isProblem(found)) return [];
    return [[order, blank.item === "tread" ? { item: blank.item, quantity, bad: found } : unfilled(blank, quantity, candidates)]];
  });
  return { rows: new Map(rows), glued: isProblem(found) ? [] : found };
};

/**
 * The blanks to buy: for each kind of piece the cheapest stock that covers it, on-hand pieces first, then the next dearer where the first
 * runs out; what is ripped off and cut off each, and what the rip costs. A row tells where boards cut into several would cost less, one
 * more where kinds of one thickness would cut together, and the last what all comes to and what has no price. Treads and nosings that no
 * blank covers are glued up from measured boards, where there are any. Plans of what is cut are made on marks of the unit.
 */
export const blankOrder = (
  blanks: readonly Blank[], stock: readonly BlankStock[], unit: Unit, gluing?: Gluing,
): readonly (OrderRow | UnfilledRow | SavingRow | GluedRow | TotalRow)[] | Problem<OrderProblem> => {
  const candidates: Candidate[] = [];
  for (const [row, one] of stock.entries()) {
    const name = called(one.label ?? "", row);
    if (one.width === undefined) return problem("blank-without-width", { label: name, length: one.length });
    const price = one.price ?? new Exact(0);
    if (price.isZero() && !one.owned) return problem("blank-without-price", { label: name, length: one.length });
    candidates.push({ stock: one, width: one.width, price });
  }
  const left = new Map(candidates.map((candidate) => [candidate, candidate.stock.available]));
  const orders = blanks.map((blank): Ordered => {
    const rows: OrderRow[] = [];
    const taken = new Map<Candidate, number>();
    let wanted = blank.quantity;
    for (const candidate of candidates.filter((one) => covers(one, blank)).sort(better(blank))) {
      const quantity = Math.min(wanted, left.get(candidate) ?? 0);
      if (quantity <= 0) continue;
      left.set(candidate, (left.get(candidate) ?? 0) - quantity);
      taken.set(candidate, quantity);
      rows.push(filled(blank, candidate, quantity));
      wanted -= quantity;
    }
    const suiting = candidates.filter(
      (one) => taken.has(one) || (one.width.gte(blank.width) && isRightThickness(one.stock, blank) && !isPlaned(one.stock, blank)),
    );
    const paid = sum(rows.map(({ cost }) => cost));
    return { blank, taken, suiting, paid, rows, missing: wanted };
  });
  const without = withoutBlank(orders, candidates, gluing, unit);
  const kinds = orders.map((order) => ({ order, bought: savingRow(order, left, unit) }));
  const ordered = orders.flatMap((order, place) => {
    const last = [without.rows.get(order), kinds[place]!.bought.row].filter((row) => row !== undefined);
    return [...order.rows, ...last];
  });
  const goods = [...ordered, ...without.glued];
  return [...goods, ...togetherRows(kinds, left, unit), total(goods)];
};
