import { distance } from "fastest-levenshtein";

const exchanged = (word: string, at: number): string => `${word.slice(0, at)}${word[at + 1] ?? ""}${word[at] ?? ""}${word.slice(at + 2)}`;

const isReachedFrom = (one: string, other: string, slips: number): boolean => {
  const far = distance(one, other);
  if (far <= slips) return true;
  // Each exchange takes away two at most.
  if (far > 2 * slips) return false;
  for (let at = 0; at + 1 < one.length; at += 1) {
    if (one[at] !== one[at + 1] && isReachedFrom(exchanged(one, at), other, slips - 1)) return true;
  }
  return false;
};

/**
 * Whether so few slips of the hand, up to two, part two words: a letter more, less or another, or two neighbours that changed places. To
 * the package those are two letters, so each exchange is tried first, from both words.
 */
export const isWithinSlips = (one: string, other: string, slips: number): boolean =>
  isReachedFrom(one, other, slips) || (slips > 1 && isReachedFrom(other, one, slips));
