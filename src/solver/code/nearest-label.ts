import { slipsBetween } from "../slips-between";
import { labelKey } from "./label-key";

/** Letters of a label that are compared: no label of ours is half as long, and a cell holds 32,767. */
const LETTERS = 64;

/** The known label spelt most like the given one; of equals, the first. */
export const nearestLabel = (given: string, known: readonly string[]): string => {
  const spelt = [...labelKey(given).slice(0, LETTERS)];
  const ranked = known.map((label) => ({ label, far: slipsBetween(spelt, [...labelKey(label)]) }));
  return ranked.reduce((best, next) => (next.far < best.far ? next : best), ranked[0] ?? { label: "", far: 0 }).label;
};
