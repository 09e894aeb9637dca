import { type Effort } from "../shelf/effort";
import { type Way } from "./sheet-shelf";

/**
 * The most worth there could be, a bound where the same piece may be counted in two strips: `strips` for shapes up to each in each length
 * of a strip, `stacks` for strips opened by shapes up to each in each depth (Gilmore and Gomory 1965, from memory).
 */
export interface StripTables {
  readonly strips: Float64Array;
  readonly stacks: Float64Array;
}

export const tableSize = ({ shapes, room, depth }: Way): number => shapes.length * (room + depth + 2);

export const emptyTables = ({ shapes, room, depth }: Way): StripTables => ({
  strips: new Float64Array(shapes.length * (room + 1)),
  stacks: new Float64Array(shapes.length * (depth + 1)),
});

/** Adds up to `count` of one shape to a row of the table, in powers of two. */
const addShape = (row: Float64Array, along: number, worth: number, count: number): number => {
  let steps = 0;
  for (let rest = count, take = 1; rest > 0; rest -= take, take *= 2) {
    take = Math.min(take, rest);
    const length = along * take;
    const value = worth * take;
    for (let at = row.length - 1; at >= length; at -= 1) {
      const other = row[at - length]! + value;
      if (other > row[at]!) row[at] = other;
    }
    steps += row.length;
  }
  return steps;
};

/** Fills the tables for these worths of the kinds and as many of them as are left. */
export const fillTables = (
  { shapes, room, depth }: Way, { strips, stacks }: StripTables, worth: ArrayLike<number>, left: ArrayLike<number>, effort: Effort,
): void => {
  const long = room + 1;
  const wide = depth + 1;
  for (const [place, { kind, along, across }] of shapes.entries()) {
    const row = strips.subarray(place * long, (place + 1) * long);
    if (place === 0) row.fill(0);
    else row.set(strips.subarray((place - 1) * long, place * long));
    if (worth[kind]! > 0) effort.left -= addShape(row, along, worth[kind]!, Math.min(left[kind]!, Math.floor(room / along)));
    const whole = row[room]!;
    const stack = stacks.subarray(place * wide, (place + 1) * wide);
    if (place === 0) stack.fill(0);
    else stack.set(stacks.subarray((place - 1) * wide, place * wide));
    for (let at = across; at < wide; at += 1) {
      const other = stack[at - across]! + whole;
      if (other > stack[at]!) stack[at] = other;
    }
    effort.left -= long + wide;
  }
};
