import { slipsBetween } from "../slips-between";
import { labelKey } from "./label-key";

/** Letters of a label that are compared: no label of ours is half as long, and a cell holds 32,767. */
const LETTERS = 64;

/**
 * The known label spelt most like the given one; of equals, the first. Figures that changed places are two: 2012 is no nearer to 2021 than
 * to 2018.
 */
export const nearestLabel = (given: string, known: readonly string[]): string => {
  const spelt = [...labelKey(given).slice(0, LETTERS)];
  const ranked = known.map((label) => ({ label, far: slipsBetween(spelt, [...labelKey(label)], 2) }));
  return ranked.reduce((best, next) => (next.far < best.far ? next : best), ranked[0] ?? { label: "", far: 0 }).label;
};
