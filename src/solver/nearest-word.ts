import { distance } from "fastest-levenshtein";
import { wordKey } from "./word-key";

/** Letters of a word that are compared: no label, heading or name of ours is half as long, and a cell holds 32,767. */
const LETTERS = 64;

const spelt = (word: string): string => wordKey(word).slice(0, LETTERS);

/** Letters to add, drop or change to make one word of the other, each as `wordKey` has it. */
export const lettersApart = (one: string, other: string): number => distance(spelt(one), spelt(other));

/**
 * The known word spelt most like the given one; of equals, the first. Figures that changed places are two letters: 2012 is no nearer to
 * 2021 than to 2018.
 */
export const nearestWord = (given: string, known: readonly string[]): string | undefined => {
  const letters = spelt(given);
  let near: { readonly word: string; readonly far: number } | undefined;
  for (const word of known) {
    const other = spelt(word);
    if (near !== undefined && Math.abs(other.length - letters.length) >= near.far) continue;
    const far = distance(letters, other);
    if (near === undefined || far < near.far) near = { word, far };
  }
  return near?.word;
};
