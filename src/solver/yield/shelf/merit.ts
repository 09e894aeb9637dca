import { commonDivisor } from "../common-divisor";
import { type Cut, endOf, outlay, piecesWanted, type Shelf, usedWidth } from "./shelf";

/** What plans of equal cost are judged by, in this order: less, less, fewer, more, more. */
export interface Merit {
  readonly cash: number;
  readonly newLength: number;
  readonly sticks: number;
  readonly patterns: number;
  readonly largestEnd: number;
  readonly ends: number;
}

const keyOf = ({ stick, kinds }: Cut): string => `${stick}:${kinds.join(",")}`;

export const meritOf = (shelf: Shelf, cuts: readonly Cut[]): Merit => {
  const kept = cuts.map((cut) => endOf(shelf, cut)).filter((end) => end > 0 && end >= shelf.keep);
  return {
    ...outlay(shelf, cuts),
    patterns: new Set(cuts.map(keyOf)).size,
    largestEnd: kept.reduce((most, end) => Math.max(most, end), 0),
    ends: kept.reduce((sum, end) => sum + end, 0),
  };
};

/** Below 0 where the first is better, 0 where none of the figures differs. */
export const compareMerit = (one: Merit, other: Merit): number =>
  one.cash - other.cash ||
  one.newLength - other.newLength ||
  one.sticks - other.sticks ||
  one.patterns - other.patterns ||
  other.largestEnd - one.largestEnd ||
  other.ends - one.ends;

/** Sticks in cutting order: those with most in pieces first, equal ones together. */
export const compareCuts = (shelf: Shelf, one: Cut, other: Cut): number => {
  const difference = usedWidth(shelf, other) - usedWidth(shelf, one) || one.stick - other.stick || one.kinds.length - other.kinds.length;
  if (difference !== 0) return difference;
  const place = one.kinds.findIndex((kind, index) => kind !== other.kinds[index]);
  return place < 0 ? 0 : one.kinds[place]! - other.kinds[place]!;
};

export const inCuttingOrder = (shelf: Shelf, cuts: readonly Cut[]): Cut[] => [...cuts].sort((one, other) => compareCuts(shelf, one, other));

/** The better plan by merit, then the one whose cut list comes first; both in cutting order. */
export const isPreferred = (
  shelf: Shelf,
  one: readonly Cut[],
  other: readonly Cut[],
  ofOne = meritOf(shelf, one),
  ofOther = meritOf(shelf, other),
): boolean => {
  const difference = compareMerit(ofOne, ofOther);
  if (difference !== 0) return difference < 0;
  for (const [place, cut] of one.entries()) {
    const order = compareCuts(shelf, cut, other[place]!);
    if (order !== 0) return order < 0;
  }
  return false;
};

/**
 * What a stick of each kind comes to where the least new length wins, then the fewest sticks. New lengths in their common measure, so that
 * the unit they come in says nothing.
 */
export const lengthPrices = (shelf: Shelf): number[] => {
  const measure = shelf.sticks.reduce((divisor, stick) => commonDivisor(divisor, stick.newLength), 0) || 1;
  return shelf.sticks.map((stick) => (stick.newLength / measure) * (piecesWanted(shelf) + 1) + 1);
};
