import type { Point } from "../figure";
import { type DraftMark, outside, type Side } from "./draft";

/** A dimension beside the drawing that has no row yet. */
export interface Unplaced {
  readonly side: Side;
  readonly from: Point;
  readonly to: Point;
  readonly value: number;
  readonly name: string;
}

const spanOf = ({ side, from, to }: Unplaced): readonly [number, number] => {
  const axis = side === "above" || side === "below" ? 0 : 1;
  return [Math.min(from[axis], to[axis]), Math.max(from[axis], to[axis])];
};

/** Two spans may touch end to end. */
const HAIR = 1e-9;

/** Gives each dimension the nearest row of its side in which it meets no other; one of nothing is left out. */
export const inRows = (dimensions: readonly Unplaced[]): DraftMark[] => {
  const rows = new Map<Side, (readonly [number, number])[][]>();
  return dimensions.flatMap((one): DraftMark[] => {
    const [from, to] = spanOf(one);
    if (to - from < HAIR) return [];
    const there = rows.get(one.side) ?? [];
    rows.set(one.side, there);
    const free = there.findIndex((spans) => spans.every(([a, b]) => b <= from + HAIR || a >= to - HAIR));
    const row = free < 0 ? there.length : free;
    (there[row] ??= []).push([from, to]);
    return [outside(one.side, row, one.from, one.to, one.value, one.name)];
  });
};
