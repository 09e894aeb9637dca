import { type Shelf } from "./shelf";

/**
 * A whole-number worth for each kind of piece, and the most worth each kind of stick can hold. Whatever the worths are, sticks that
 * hold every piece hold the worth of every piece: so each weighing proves a least cost (dual feasible functions, Lueker 1983, from memory).
 */
export interface Weighing {
  readonly worth: readonly number[];
  readonly holds: readonly number[];
}

/** Cells of the table of reachable widths; beyond it a stick counts as if it could be filled to the end. */
const MOST_WIDTH_CELLS = 8_000_000;

/** Widths as worths: a stick holds the largest sum of wanted widths within it. */
const widthWeighing = (shelf: Shelf): Weighing => {
  const worth = shelf.kinds.map((kind) => kind.width);
  const longest = Math.max(...shelf.sticks.map((stick) => stick.holds));
  const holds = shelf.sticks.map((stick) => stick.holds);
  if (longest * shelf.kinds.length > MOST_WIDTH_CELLS) return { worth, holds };
  const reached = new Uint8Array(longest + 1);
  reached[0] = 1;
  const copies = new Int32Array(longest + 1);
  for (const { width, wanted } of shelf.kinds) {
    copies.fill(0);
    for (let sum = width; sum <= longest; sum += 1) {
      if (reached[sum] === 1 || reached[sum - width] === 0 || copies[sum - width]! >= wanted) continue;
      reached[sum] = 1;
      copies[sum] = copies[sum - width]! + 1;
    }
  }
  for (const [index, most] of holds.entries()) {
    let fill = most;
    while (reached[fill] === 0) fill -= 1;
    holds[index] = fill;
  }
  return { worth, holds };
};

/** Worths adding to more than this in one stick are not tried: the table is by worth. */
const MOST_WORTH = 400;

/** The most worth in each stick kind, from the least width that comes to each worth. */
const weighed = (shelf: Shelf, worth: readonly number[]): Weighing | undefined => {
  const longest = Math.max(...shelf.sticks.map((stick) => stick.holds));
  const fits = (kind: number): number =>
    Math.min(shelf.kinds[kind]!.wanted, Math.floor(longest / shelf.kinds[kind]!.width));
  const densest = Math.max(...worth.map((each, kind) => each / shelf.kinds[kind]!.width));
  const total = worth.reduce((sum, each, kind) => sum + each * fits(kind), 0);
  const most = Math.min(total, Math.ceil(densest * longest));
  if (total === 0 || most > MOST_WORTH) return undefined;
  const narrowest = new Float64Array(most + 1).fill(Infinity);
  narrowest[0] = 0;
  for (const [kind, each] of worth.entries()) {
    if (each === 0) continue;
    for (let copy = 0; copy < fits(kind); copy += 1) {
      let changed = false;
      for (let sum = most; sum >= each; sum -= 1) {
        const width = narrowest[sum - each]! + shelf.kinds[kind]!.width;
        if (width >= narrowest[sum]!) continue;
        narrowest[sum] = width;
        changed = true;
      }
      if (!changed) break;
    }
  }
  const holds = shelf.sticks.map((stick) => {
    let sum = most;
    while (narrowest[sum]! > stick.holds) sum -= 1;
    return sum;
  });
  return { worth, holds };
};

/** Parts into which sticks are divided when pieces are weighed by parts of a stick. */
const MOST_PARTS = 8;

/** Kinds beyond which worths by parts are left out. */
const MOST_KINDS = 150;

/** Weighings by width, by count of the longer pieces, and by parts of each stick; the one by width comes first. */
export const weighings = (shelf: Shelf): Weighing[] => {
  const found = [widthWeighing(shelf)];
  if (shelf.kinds.length > MOST_KINDS) return found;
  const seen = new Set<string>();
  const add = (worth: readonly number[]): void => {
    const key = worth.join(",");
    if (seen.has(key)) return;
    seen.add(key);
    const weighing = weighed(shelf, worth);
    if (weighing !== undefined) found.push(weighing);
  };
  for (const [place] of shelf.kinds.entries()) add(shelf.kinds.map((_, kind) => (kind <= place ? 1 : 0)));
  for (const holds of new Set(shelf.sticks.map((stick) => stick.holds))) {
    for (let parts = 2; parts <= MOST_PARTS; parts += 1) {
      const share = (width: number): number => (width * parts) / holds;
      add(shelf.kinds.map(({ width }) => Math.floor(share(width))));
      add(shelf.kinds.map(({ width }) => Math.ceil(share(width)) - 1));
      // twice the whole parts, one more where a part is begun: rounds between the two
      add(shelf.kinds.map(({ width }) => Math.floor(share(width)) + Math.ceil(share(width))));
    }
  }
  return found;
};

/** The dearest stick's price in worths, so that what is cut off in rounding is a millionth of it. */
const WORTH_STEPS = 1_000_000;
const MOST_PRICE_CELLS = 40_000_000;

/** The weighing by what a piece costs, from worths in any unit: exact again, whatever they are. */
export const priceWeighing = (shelf: Shelf, costs: readonly number[]): Weighing | undefined => {
  const dearest = Math.max(...shelf.sticks.map((stick) => stick.price));
  const worth = costs.map((cost) => Math.floor((cost / dearest) * WORTH_STEPS));
  const longest = Math.max(...shelf.sticks.map((stick) => stick.holds));
  const fits = shelf.kinds.map(({ width, wanted }) => Math.min(wanted, Math.floor(longest / width)));
  const copies = fits.reduce((sum, count) => sum + count, 0);
  if (copies * longest > MOST_PRICE_CELLS || worth.every((each) => each === 0)) return undefined;
  const held = new Float64Array(longest + 1);
  for (const [kind, count] of fits.entries()) {
    const { width } = shelf.kinds[kind]!;
    const each = worth[kind]!;
    for (let copy = 0; copy < count; copy += 1) {
      let changed = false;
      for (let room = longest; room >= width; room -= 1) {
        const now = held[room - width]! + each;
        if (now <= held[room]!) continue;
        held[room] = now;
        changed = true;
      }
      if (!changed) break;
    }
  }
  return { worth, holds: shelf.sticks.map((stick) => held[stick.holds]!) };
};
