import { distance } from "fastest-levenshtein";
import { wordKey } from "./word-key";

/** Letters of a word that are compared: no label, heading or name of ours is half as long, and a cell holds 32,767. */
const LETTERS = 64;

const spelt = (word: string): string => wordKey(word).slice(0, LETTERS);

/** Letters to add, drop or change to make one word of the other, each as `wordKey` has it. */
export const lettersApart = (one: string, other: string): number => distance(spelt(one), spelt(other));

/**
 * Letters that may differ where one word is still meant by the other, by how long the longer is; none of a word of two: common practice,
 * no source.
 */
const farthest = (letters: number): number => {
  if (letters < 3) return 0;
  if (letters === 3) return 1;
  return letters < 9 ? 2 : 3;
};

/** Letters from which a word that stands whole in another may be meant for it: riser for max riser. */
const FEWEST_WHOLE = 3;

const isPartOf = (part: string, whole: string): boolean => part.length >= FEWEST_WHOLE && /\p{L}/u.test(part) && whole.includes(part);

/**
 * The known word that the given one may be meant for: the one spelt most like it, of equals the first, as long as only a few letters
 * differ; else the shortest of which it is a part. Undefined where none is near: a far-fetched word helps nobody. Figures that changed
 * places are two letters: 2012 is no nearer to 2021 than to 2018.
 */
export const nearestWord = (given: string, known: readonly string[]): string | undefined => {
  const letters = spelt(given);
  let near: { readonly word: string; readonly far: number } | undefined;
  let whole: { readonly word: string; readonly length: number } | undefined;
  for (const word of known) {
    const other = spelt(word);
    if (isPartOf(letters, other) && (whole === undefined || other.length < whole.length)) whole = { word, length: other.length };
    if (near !== undefined && Math.abs(other.length - letters.length) >= near.far) continue;
    const far = distance(letters, other);
    if (far <= farthest(Math.max(letters.length, other.length)) && (near === undefined || far < near.far)) near = { word, far };
  }
  return near?.word ?? whole?.word;
};

/** Characters of a name out of a cell that a sentence repeats, and names listed where none is near. */
const SAID = 80;
const MOST_NAMES = 8;

const inQuotes = (name: string): string => `"${name.length <= SAID ? name : `${name.slice(0, SAID)}…`}"`;

/** The end of a sentence about a word that is not known: `; nearest is "cost"`, nothing where none is near. */
export const nearestSaid = (given: string, known: readonly string[]): string => {
  const near = nearestWord(given, known);
  return near === undefined ? "" : `; nearest is ${inQuotes(near)}`;
};

/** The same, and where none is near the names that there are: `; there are "item", "price"`. */
export const nearestOrAll = (given: string, known: readonly string[]): string => {
  const near = nearestSaid(given, known);
  if (near !== "" || known.length === 0) return near;
  const names = known.slice(0, MOST_NAMES).map(inQuotes).join(", ");
  if (known.length === 1) return `; there is only ${names}`;
  return `; there are ${names}${known.length > MOST_NAMES ? ` and ${known.length - MOST_NAMES} more` : ""}`;
};
