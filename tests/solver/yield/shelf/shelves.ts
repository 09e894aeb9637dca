import type { Shelf } from "../../../../src/solver/yield/shelf/shelf";
import { seeded } from "../job";

/** Small shelves of one to three kinds of stick in two sections, the second of which takes only some kinds of pieces. */
export const seededShelves = (seed: number, count: number): Shelf[] => {
  const draw = seeded(seed);
  return Array.from({ length: count }, (): Shelf => {
    const widths = new Set(Array.from({ length: 3 + draw(3) }, () => 3 + draw(20)));
    const kinds = [...widths].sort((a, b) => b - a).map((width) => ({ width, wanted: 1 + draw(4) }));
    const sticks = Array.from({ length: 1 + draw(3) }, (_, place) => {
      const holds = 23 + draw(40);
      const price = draw(5) === 0 ? 0 : 5 + draw(30);
      return { section: place % 2, holds, usable: holds, price, newLength: holds, available: 1 + draw(5) };
    });
    return { kinds, sticks, takes: [kinds.map(() => true), kinds.map(() => draw(2) === 0)], marks: 1, keep: 0 };
  });
};
