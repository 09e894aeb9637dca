import { type Effort } from "../shelf/effort";
import { type Way } from "./sheet-shelf";
import { stackCells, stripCells, type StripTables } from "./strip-tables";

export interface BestFilling {
  /** Undefined where no filling is worth more than was asked. */
  readonly strips: readonly (readonly number[])[] | undefined;
  /** No filling is worth more. */
  readonly most: number;
  readonly worth: number;
}

// By names of their own: where the functions run in a context of its own, each look for a global takes longer than the rest of a step.
const { floor: whole, max, min } = Math;
const NO_END = Infinity;

/** Steps of one look at a shape in a strip, and of one as what opens the next: by the time each takes. */
const LOOK = 6;
const OPENER = 2;

/**
 * The filling of one sheet that is worth most, above `floor`, with no more pieces than are left: strip by strip, widest first, each opened
 * by its widest piece; what the tables show to be worth too little is passed over. Where the effort is spent `most` is the tables' bound.
 */
export const bestFilling = (
  way: Way, { strips: inStrip, stacks }: StripTables, worth: ArrayLike<number>, wanted: ArrayLike<number>,
  floor: number, effort: Effort,
): BestFilling => {
  const { shapes, room, depth, cell } = way;
  const left = Int32Array.from(wanted);
  const long = stripCells(way);
  const wide = stackCells(way);
  const inDepth = (opener: number, deep: number): number => stacks[opener * wide + whole(deep / cell.across)]!;
  let best = floor;
  let found: number[][] | undefined;
  const open: number[][] = [];
  const stack = (from: number, deep: number, value: number, opener: number, before: number): void => {
    if (value > best) {
      best = value;
      found = open.map((strip) => [...strip]);
    }
    for (let place = from; place >= 0 && effort.left > 0; place -= 1) {
      effort.left -= OPENER;
      if (value + inDepth(place, deep) <= best) return;
      const { kind, along, across } = shapes[place]!;
      if (left[kind] === 0 || across > deep || worth[kind] === 0) continue;
      left[kind]! -= 1;
      open.push([place]);
      fill(place, place, room - along, worth[kind]!, deep - across, value, place === opener ? before : NO_END);
      open.pop();
      left[kind]! += 1;
    }
  };
  const fill = (opener: number, place: number, free: number, inside: number, deep: number, value: number, most: number): void => {
    effort.left -= LOOK;
    const more = place < 0 ? 0 : inStrip[place * long + whole(free / cell.along)]!;
    if (effort.left <= 0 || value + inside + more + inDepth(opener, deep) <= best) return;
    if (more === 0) {
      if (inside <= most) stack(opener, deep, value + inside, opener, inside);
      return;
    }
    const { kind, along } = shapes[place]!;
    const each = worth[kind]!;
    const strip = open[open.length - 1]!;
    const count = each === 0 ? 0 : min(left[kind]!, whole(free / along));
    left[kind]! -= count;
    for (let time = 0; time < count; time += 1) strip.push(place);
    for (let taken = count; ; taken -= 1) {
      fill(opener, place - 1, free - taken * along, inside + taken * each, deep, value, most);
      if (taken === 0) break;
      strip.pop();
      left[kind]! += 1;
    }
  };
  const last = shapes.length - 1;
  stack(last, depth, 0, -1, NO_END);
  const bound = inDepth(last, depth);
  return { strips: found, worth: best, most: effort.left > 0 ? best : max(best, bound) };
};
