import { type Filling } from "./bundles";
import { type Limits } from "./master";
import { piecesWanted, type Shelf } from "./shelf";

/**
 * The proof that no plan of a shelf costs less. Under "worth" each kind of piece has a whole-number worth, in steps of money: a plan
 * costs at least the worth of all pieces; less v - c for every stick that may be used where the stick holds more worth v than its price
 * c; plus c - v for every stick that must be used where it holds less (weak duality; whole worths as in Held, Cook and Sewell 2012, from
 * memory). Under "branch" a plan uses at most so many sticks of a kind, or more. Under "counts" there are several worths, in steps of any
 * size, the first in those of money: by each of them the sticks of a plan together hold at least the worth of all pieces, and no whole
 * numbers of sticks that do cost less. Where `isSearched` every cheaper plan was looked for besides, which leaves nothing to check by.
 */
export type Proof =
  | { readonly by: "worth"; readonly worth: readonly number[]; readonly isSearched: boolean }
  | { readonly by: "counts"; readonly worths: readonly (readonly number[])[]; readonly isSearched: boolean }
  | { readonly by: "branch"; readonly stick: number; readonly atMost: number; readonly upTo: Proof; readonly over: Proof };

/** Steps of money in all that a plan can cost: fine enough for the last cent, and small enough for sums in whole numbers below 2^53. */
const MOST_STEPS = 2 ** 40;

/** Steps of worth to a unit of money. */
export const worthSteps = (shelf: Shelf): number => {
  const dearest = Math.max(...shelf.sticks.map((stick) => stick.price));
  return Math.max(1, Math.floor(MOST_STEPS / Math.max(1, dearest * piecesWanted(shelf))));
};

/** The least whole number of units of money that is not less than so many steps. */
export const wholeUnits = (scaled: number, steps: number): number => {
  let units = Math.max(0, Math.floor(scaled / steps));
  while (units * steps < scaled) units += 1;
  while (units > 0 && (units - 1) * steps >= scaled) units -= 1;
  return units;
};

/** What one stick more adds to the least cost, in steps: its price less the most worth it can hold. */
export const chargeOf = (price: number, steps: number, holds: number): number => price * steps - holds;

/** The least cost, in steps, that worths prove; `fillings` hold the most worth of each stick kind, or more. Exact. */
export const provenLeast = (
  shelf: Shelf,
  limits: Limits,
  steps: number,
  worth: ArrayLike<number>,
  fillings: readonly Pick<Filling, "worth">[],
): number => {
  let least = 0n;
  for (const [kind, { wanted }] of shelf.kinds.entries()) least += BigInt(wanted) * BigInt(worth[kind]!);
  for (const [stick, { price }] of shelf.sticks.entries()) {
    const charge = chargeOf(price, steps, fillings[stick]!.worth);
    least += BigInt(charge) * BigInt(charge < 0 ? limits.most[stick]! : limits.least[stick]!);
  }
  return Math.max(0, Number(least));
};
