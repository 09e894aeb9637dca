import { goodsKey, isOwnKey } from "./goods-key";

/** A name of goods, and where it stands. */
export interface GoodsName {
  readonly item: string | number;
  readonly row: number;
  /** The table, where a call has several. */
  readonly table?: string;
}

/** Finds a name that may mean the same goods and is not the same name; `isWanted` says which will do. */
export type NearName = (item: string | number, isWanted?: (name: GoodsName) => boolean) => GoodsName | undefined;

/** Letters from which two slips may be one word. */
const TWO_SLIPS_FROM = 9;
/** Fewer letters than this are not compared: in MDF and HDF one letter is the whole difference. */
const FEWEST_LETTERS = 3;
/** Beyond these lengths one slip alone, and none, are looked for. */
const MOST_LETTERS_FOR_TWO = 32;
const MOST_LETTERS = 64;
/** Names looked at for one shared rest, and compared for one name: the work is bounded, whatever the names. */
const MOST_SHARING = 16;
const MOST_COMPARED = 48;

interface Spelling {
  readonly name: GoodsName;
  readonly key: string;
  /** Letters and digits alone. */
  readonly bare: string;
  readonly letters: readonly number[];
  readonly numbers: string;
}

const spellingOf = (name: GoodsName): Spelling => {
  const key = goodsKey(name.item);
  const letters = Array.from(key.replace(/[^\p{L}\p{M}]/gu, ""), (letter) => letter.codePointAt(0) ?? 0);
  return { name, key, bare: key.replace(/[^\p{L}\p{M}\p{N}]/gu, ""), letters, numbers: (key.match(/\p{Nd}+/gu) ?? []).join(" ") };
};

const slipsAllowed = (letters: number): number => {
  if (letters < FEWEST_LETTERS || letters > MOST_LETTERS) return 0;
  return letters >= TWO_SLIPS_FROM && letters <= MOST_LETTERS_FOR_TWO ? 2 : 1;
};

/** Letters to add, drop, change or exchange with their neighbour to make one word of the other. */
const slipsBetween = (one: readonly number[], other: readonly number[]): number => {
  let before: number[] = [];
  let row = Array.from({ length: other.length + 1 }, (_, index) => index);
  for (const [i, letter] of one.entries()) {
    const next = [i + 1];
    for (const [j, against] of other.entries()) {
      const isExchanged = i > 0 && j > 0 && letter === other[j - 1] && one[i - 1] === against;
      next.push(
        Math.min(
          (row[j] ?? 0) + (letter === against ? 0 : 1), (row[j + 1] ?? 0) + 1, (next[j] ?? 0) + 1,
          isExchanged ? (before[j - 1] ?? 0) + 1 : Infinity,
        ),
      );
    }
    [before, row] = [row, next];
  }
  return row[other.length] ?? 0;
};

const isSlip = (one: Spelling, other: Spelling): boolean => {
  if (one.numbers !== other.numbers) return false;
  const allowed = Math.min(slipsAllowed(one.letters.length), slipsAllowed(other.letters.length));
  return allowed > 0 && Math.abs(one.letters.length - other.letters.length) <= allowed && slipsBetween(one.letters, other.letters) <= allowed;
};

/** An odd number whose powers spread letters over 32 bits. */
const SPREAD = 0x9e3779b1;

const hashOf = (codes: Iterable<number>): number => {
  let hash = 1;
  for (const code of codes) hash = Math.imul(hash, SPREAD) + code;
  return hash | 0;
};

const POWERS = [1];
for (let letters = 0; letters < MOST_LETTERS; letters += 1) POWERS.push(Math.imul(POWERS[letters] ?? 1, SPREAD));

/**
 * Hashes of what is left of a word when up to as many letters as slips are allowed are taken out, fewest first: two words that are slips of
 * one another leave the same rest (the deletion neighbourhood; T. Bocek, E. Hunt, B. Stiller, Fast Similarity Search in Large
 * Dictionaries, 2007, from memory).
 */
const rests = ({ letters, numbers }: Spelling): readonly number[] => {
  const { length } = letters;
  const slips = slipsAllowed(length);
  if (slips === 0) return [];
  const power = (index: number): number => POWERS[index] ?? 0;
  const begun = [hashOf(Array.from(numbers, (digit) => digit.charCodeAt(0)))];
  for (const letter of letters) begun.push((Math.imul(begun[begun.length - 1] ?? 0, SPREAD) + letter) | 0);
  const upTo = (index: number): number => begun[index] ?? 0;
  /** A hash that ends before letter `from`, carried on to letter `to`. */
  const onwards = (hash: number, from: number, to: number): number => (Math.imul(hash, power(to - from)) + upTo(to) - Math.imul(upTo(from), power(to - from))) | 0;
  const hashes = [upTo(length)];
  for (let out = 0; out < length; out += 1) hashes.push(onwards(upTo(out), out + 1, length));
  if (slips === 1) return hashes;
  for (let first = 0; first < length; first += 1) {
    for (let second = first + 1; second < length; second += 1) {
      hashes.push(onwards(onwards(upTo(first), first + 1, second), second + 1, length));
    }
  }
  return hashes;
};

/** Numbers by hash, several under one: chains in two flat lists, because there may be millions. */
const chains = (all: readonly (readonly number[])[]): ((hash: number) => Iterable<number>) => {
  const total = all.reduce((sum, hashes) => sum + hashes.length, 0);
  let size = 1;
  while (size < 2 * total) size *= 2;
  const heads = new Int32Array(size);
  const [next, hashAt, owners] = [new Int32Array(total + 1), new Int32Array(total + 1), new Int32Array(total + 1)];
  let entry = total;
  // From the last to the first, so that a chain begins with the name that stands first.
  for (let owner = all.length - 1; owner >= 0; owner -= 1) {
    for (const hash of all[owner] ?? []) {
      const head = hash & (size - 1);
      [next[entry], hashAt[entry], owners[entry]] = [heads[head] ?? 0, hash, owner];
      heads[head] = entry;
      entry -= 1;
    }
  }
  return function* sharing(hash) {
    let found = 0;
    for (let at = heads[hash & (size - 1)] ?? 0; at !== 0 && found < MOST_SHARING; at = next[at] ?? 0) {
      if (hashAt[at] !== hash) continue;
      found += 1;
      yield owners[at] ?? 0;
    }
  };
};

/**
 * Which names of a call may mean the same goods: alike in letters and digits, or alike in their numbers and one slip of the hand apart, two
 * from nine letters on. Nothing is merged: who typed them decides. The work grows with the names, not with their pairs.
 */
export const nearNames = (names: readonly GoodsName[]): NearName => {
  const first = new Map<string, GoodsName>();
  for (const name of names) if (!first.has(goodsKey(name.item))) first.set(goodsKey(name.item), name);
  const spellings = [...first.values()].map(spellingOf);
  const sharing = chains(spellings.map(rests));
  const alike = new Map<string, Spelling[]>();
  for (const spelling of spellings) alike.set(spelling.bare, [...(alike.get(spelling.bare) ?? []).slice(0, MOST_SHARING), spelling]);
  return (item, isWanted = () => true) => {
    const own = spellingOf({ item, row: 0 });
    const isOther = ({ key, name }: Spelling): boolean => key !== own.key && !(isOwnKey(key) && isOwnKey(own.key)) && isWanted(name);
    const bare = own.bare === "" ? undefined : alike.get(own.bare)?.find(isOther);
    if (bare !== undefined) return bare.name;
    const compared = new Set<number>();
    for (const rest of rests(own)) {
      for (const index of sharing(rest)) {
        const other = spellings[index];
        if (other === undefined || compared.has(index) || !isOther(other)) continue;
        if (isSlip(own, other)) return other.name;
        compared.add(index);
        if (compared.size >= MOST_COMPARED) return undefined;
      }
    }
    return undefined;
  };
};

/** What the note of a row says of a near name. */
export const suspectNote = (near: GoodsName | undefined): string =>
  near === undefined ? "" : `like "${near.item}" in row ${near.row}${near.table === undefined ? "" : ` of ${near.table}`}: same goods?`;
