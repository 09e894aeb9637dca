import type { CutPiece } from "../../../src/functions/cut-pieces";
import { cutPieces } from "../../../src/functions/cut-pieces";

/** A generator of numbers from 0 to 1 (mulberry32, public domain, from memory): the same jobs on every run. */
const seeded = (seed: number): (() => number) => {
  let state = seed;
  return () => {
    state = (state + 0x6d2b79f5) | 0;
    let mixed = Math.imul(state ^ (state >>> 15), 1 | state);
    mixed = (mixed + Math.imul(mixed ^ (mixed >>> 7), 61 | mixed)) ^ mixed;
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 4294967296;
  };
};

export const FACTS = { job: "Invented job", date: "2026-01-02", card: 1, cards: 1, caution: "Test cut in scrap." };

type Given = readonly unknown[];

/** An opening by its corners, its left side `left` out of square over the depth, told as it is taped. */
export interface Opening {
  readonly depth: number;
  readonly back: number;
  readonly left: number;
  readonly right: number;
  readonly leftLean: number;
  readonly rightLean: number;
}

export const mirrored = ({ depth, back, left, right, leftLean, rightLean }: Opening): Opening => ({
  depth, back, left: right, right: left, leftLean: rightLean, rightLean: leftLean,
});

/** Both diagonals and both edges of an opening: corners at (0, 0), (back, 0), (-left, depth), (back + right, depth). */
const taped = ({ depth, back, left, right, leftLean, rightLean }: Opening): readonly number[] => [
  depth, back, back + left + right, Math.hypot(back + right, depth), Math.hypot(back + left, depth), leftLean, rightLean,
];

/**
 * `openEnd` is "none", "left", "right" or "both". Diagonal is from the back left corner, the second one from the back right.
 */
export const treadOf = (opening: Opening, openEnd: string, more: Given = []): CutPiece => {
  const headings = ["step", "run", "back", "front", "diagonal", "second diagonal", "left lean", "right lean"];
  return only(cutPieces("tread", [[headings, [3, ...taped(opening)]], null, openEnd, ...more]));
};

/** The same opening in millimetres: the unit stands after thickness, riser on, its thickness, both gaps, undercut and tape. */
export const metricOf = (opening: Opening, openEnd: string): CutPiece => {
  const { depth, back, left, right } = opening;
  const metric = { ...opening, depth: depth * 25.4, back: back * 25.4, left: left * 25.4, right: right * 25.4 };
  return treadOf(metric, openEnd, [...Array<null>(9).fill(null), "mm"]);
};

export const riserOf = (opening: Opening, openEnd: string, bevel: number): CutPiece => {
  const headings = ["step", "height", "top", "bottom", "diagonal", "second diagonal", "left flare", "right flare"];
  return only(cutPieces("riser", [[headings, [4, ...taped(opening)]], openEnd, 0.25, null, null, null, 0.75, 0.25, 0, bevel]));
};

/** Runs of their own at both sides, so that the tread is deeper at one end. */
export const taperedOf = (leftRun: number, rightRun: number, back: number, front: number, openEnd: string): CutPiece =>
  only(cutPieces("tread", [
    [["step", "left run", "right run", "back", "front", "left offset"], [9, leftRun, rightRun, back, front, "square"]], null, openEnd,
  ]));

export const only = (found: readonly CutPiece[] | string): CutPiece => {
  if (typeof found === "string") throw new Error(found);
  const [piece] = found;
  if (piece === undefined) throw new Error("no piece");
  return piece;
};

/** So many pieces of every kind: 20 to 56 in long, 9 to 12 1/2 deep, ends up to 5 degrees off, leans to 3 degrees. */
export const randomPieces = (count: number, seed: number): readonly CutPiece[] => {
  const draw = seeded(seed);
  const between = (least: number, most: number): number => Math.round((least + draw() * (most - least)) * 32) / 32;
  const anyOf = <Item>(items: readonly Item[]): Item => items[Math.floor(draw() * items.length)] as Item;
  const ends = ["none", "left", "right", "both"] as const;
  return Array.from({ length: count }, (_, place) => {
    const lean = (): number => (draw() < 0.4 ? 0 : between(-3, 3));
    const opening = (depth: number): Opening => ({
      depth, back: between(20, 56), left: between(-1, 1), right: between(-1, 1), leftLean: lean(), rightLean: lean(),
    });
    const openEnd = anyOf(ends);
    if (place % 4 === 0) return riserOf(opening(between(6, 8)), openEnd, anyOf([0, 0, 4, 10]));
    if (place % 4 === 1) {
      const run = between(9, 11);
      const more = anyOf([0.125, 0.5, -0.25, 0.75]);
      const back = between(24, 50);
      return taperedOf(run, run + more, back, back + between(0.125, 1) + Math.abs(more), openEnd);
    }
    return place % 8 === 2 ? metricOf(opening(between(9, 11.25)), openEnd) : treadOf(opening(between(9, 11.25)), openEnd);
  });
};
