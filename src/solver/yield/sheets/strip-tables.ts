import { type Effort } from "../shelf/effort";
import { type Way } from "./sheet-shelf";

/** Cells of a row of each table: pieces and what they are put in are rounded down to cells, so that a table only bounds. */
export const stripCells = ({ room, cell }: Way): number => Math.floor(room / cell.along) + 1;
export const stackCells = ({ depth, cell }: Way): number => Math.floor(depth / cell.across) + 1;

/**
 * The most worth there could be, a bound where the same piece may be counted in two strips: `strips` for shapes up to each in each length
 * of a strip, `stacks` for strips opened by shapes up to each in each depth (Gilmore and Gomory 1965, from memory).
 */
export interface StripTables {
  readonly strips: Float64Array;
  readonly stacks: Float64Array;
}

export const tableSize = (way: Way): number => way.shapes.length * (stripCells(way) + stackCells(way));

export const emptyTables = (way: Way): StripTables => ({
  strips: new Float64Array(way.shapes.length * stripCells(way)),
  stacks: new Float64Array(way.shapes.length * stackCells(way)),
});

/** Adds up to `count` of one shape to a row of the table, in powers of two, so many of which are rounded down to cells together. */
const addShape = (row: Float64Array, along: number, cell: number, worth: number, count: number): number => {
  let steps = 0;
  for (let rest = count, take = 1; rest > 0; rest -= take, take *= 2) {
    take = Math.min(take, rest);
    const length = Math.floor((along * take) / cell);
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
  way: Way, { strips, stacks }: StripTables, worth: ArrayLike<number>, left: ArrayLike<number>, effort: Effort,
): void => {
  const { shapes, room, cell } = way;
  const long = stripCells(way);
  const wide = stackCells(way);
  for (const [place, { kind, along, across }] of shapes.entries()) {
    const row = strips.subarray(place * long, (place + 1) * long);
    if (place === 0) row.fill(0);
    else row.set(strips.subarray((place - 1) * long, place * long));
    if (worth[kind]! > 0) effort.left -= addShape(row, along, cell.along, worth[kind]!, Math.min(left[kind]!, Math.floor(room / along)));
    const whole = row[long - 1]!;
    const down = Math.floor(across / cell.across);
    const stack = stacks.subarray(place * wide, (place + 1) * wide);
    if (place === 0) stack.fill(0);
    else stack.set(stacks.subarray((place - 1) * wide, place * wide));
    // what is thinner than a cell could stand in it any number of times: as often as there are pieces to open strips
    if (down === 0) for (let at = 0; at < wide; at += 1) stack[at]! += whole * left[kind]!;
    for (let at = down; at < wide && down > 0; at += 1) {
      const other = stack[at - down]! + whole;
      if (other > stack[at]!) stack[at] = other;
    }
    effort.left -= long + wide;
  }
};
