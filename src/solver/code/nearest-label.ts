import { labelKey } from "./label-key";

/** Letters to insert, drop or change to make one word of the other. */
const distance = (one: string, other: string): number => {
  let row = Array.from({ length: other.length + 1 }, (_, index) => index);
  for (let i = 0; i < one.length; i += 1) {
    const next = [i + 1];
    for (let j = 0; j < other.length; j += 1) {
      const changed = (row[j] ?? 0) + (one[i] === other[j] ? 0 : 1);
      next.push(Math.min(changed, (row[j + 1] ?? 0) + 1, (next[j] ?? 0) + 1));
    }
    row = next;
  }
  return row[other.length] ?? 0;
};

/** Letters of a label that are compared: no label of ours is half as long, and a cell holds 32,767. */
const LETTERS = 64;

/** The known label spelt most like the given one; of equals, the first. */
export const nearestLabel = (given: string, known: readonly string[]): string => {
  const spelt = labelKey(given).slice(0, LETTERS);
  const ranked = known.map((label) => ({ label, far: distance(spelt, labelKey(label)) }));
  return ranked.reduce((best, next) => (next.far < best.far ? next : best), ranked[0] ?? { label: "", far: 0 }).label;
};
