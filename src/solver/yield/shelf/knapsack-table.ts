import { type Bundle, type Filling, fillingOf, type Section } from "./bundles";
import { type Effort } from "./effort";
import { type Shelf } from "./shelf";

/** What every room can hold at most, by widths, and for each bundle the rooms it was put in. */
export interface KnapsackTable {
  readonly most: Float64Array;
  readonly taken: Uint8Array;
}

/**
 * One table over the widths of the longest stick answers for every stick kind of a section (Gilmore and Gomory 1961, from memory). Exact:
 * worths are whole and their sums stay below 2^53. Bundles widest first.
 */
export const tableFillings = (
  shelf: Shelf, section: Section, widestFirst: readonly Bundle[], worth: ArrayLike<number>, { most, taken }: KnapsackTable, effort: Effort,
): Filling[] => {
  const { longest } = section;
  const row = longest + 1;
  // narrowest first: as long as all pieces so far are narrower than the longest stick, wider rooms hold no more than all of them
  const bundles = [...widestFirst].reverse();
  const reach = new Int32Array(bundles.length + 1);
  taken.fill(0, 0, bundles.length * row);
  most[0] = 0;
  for (let place = 0; place < bundles.length; place += 1) {
    const { kind, copies, width } = bundles[place]!;
    const gain = worth[kind]! * copies;
    const from = place * row;
    const full = Math.min(longest, reach[place]! + width);
    most.fill(most[reach[place]!]!, reach[place]! + 1, full + 1);
    reach[place + 1] = full;
    for (let room = full; room >= width; room -= 1) {
      const now = most[room - width]! + gain;
      if (now <= most[room]!) continue;
      most[room] = now;
      taken[from + room] = 1;
    }
    effort.left -= Math.max(0, full - width);
  }
  return section.sticks.map((stick) => {
    const chosen: Bundle[] = [];
    let room = Math.min(shelf.sticks[stick]!.holds, reach[bundles.length]!);
    const held = most[room]!;
    for (let place = bundles.length - 1; place >= 0; place -= 1) {
      room = Math.min(room, reach[place + 1]!);
      if (taken[place * row + room] === 0) continue;
      chosen.push(bundles[place]!);
      room -= bundles[place]!.width;
    }
    return fillingOf(held, chosen);
  });
};
