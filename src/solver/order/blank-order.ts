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
 * runs out; what is ripped off and cut off each, and what the rip costs.
 */
export const blankOrder = (
  blanks: readonly Blank[], stock: readonly BlankStock[],
): readonly (OrderRow | UnfilledRow)[] | Problem<OrderProblem> => {
  const candidates: Candidate[] = [];
  for (const one of stock) {
    const name = String(one.label ?? "");
    if (one.width === undefined) return problem("blank-without-width", { label: name, length: one.length });
    if (one.price === undefined && !one.owned) return problem("blank-without-price", { label: name, length: one.length });
    candidates.push({ stock: one, width: one.width, price: one.price ?? new Exact(0) });
  }
  const left = new Map(candidates.map((candidate) => [candidate, candidate.stock.available]));
  return blanks.flatMap((blank) => {
    const rows: (OrderRow | UnfilledRow)[] = [];
    let wanted = blank.quantity;
    for (const candidate of candidates.filter((one) => covers(one, blank)).sort(better(blank))) {
      const quantity = Math.min(wanted, left.get(candidate) ?? 0);
      if (quantity <= 0) continue;
      left.set(candidate, (left.get(candidate) ?? 0) - quantity);
      rows.push(filled(blank, candidate, quantity));
      wanted -= quantity;
    }
    return wanted > 0 ? [...rows, unfilled(blank, wanted, candidates)] : rows;
  });
};
