import { goodsKey, isOwnKey } from "./goods-key";
import { isWithinSlips } from "./within-slips";

/** A name of goods, and where it stands. */
export interface GoodsName {
  readonly item: string | number;
  readonly row: number;
  /** The table, where a call has several. */
  readonly table?: string;
}

/** Finds a name that may mean the same goods and is not the same name. */
export type NearName = (item: string | number) => GoodsName | undefined;

/** Letters from which two slips may be one word. */
const TWO_SLIPS_FROM = 9;
/** Fewer letters than this are not compared: in MD and HD one letter is half the difference. */
const FEWEST_LETTERS = 3;
/** In longer names only marks are looked for. */
const MOST_LETTERS = 64;
/**
 * Rests of all names together: of more than some 1,500 names, for which two slips would give more, the longest are looked at for one slip.
 */
const MOST_RESTS = 250_000;
/** Names looked at for one shared rest, and compared for one name: the work is bounded, whatever the names. */
const MOST_SHARING = 16;
const MOST_COMPARED = 48;

interface Spelling {
  readonly name: GoodsName;
  readonly key: string;
  /** Letters and digits alone. */
  readonly bare: string;
  readonly letters: readonly number[];
  readonly word: string;
  readonly numbers: string;
}

const spellingOf = (key: string, name: GoodsName): Spelling => {
  const letters: number[] = [];
  const word = key.replace(/[^\p{L}\p{M}]/gu, "");
  for (const letter of word) letters.push(letter.codePointAt(0) ?? 0);
  return { name, key, bare: key.replace(/[^\p{L}\p{M}\p{N}]/gu, ""), letters, word, numbers: (key.match(/\p{Nd}+/gu) ?? []).join(" ") };
};

/** Slips that names of so many letters are looked at for. */
type SlipsAllowed = (letters: number) => number;

const restsOf = (letters: number, slips: number): number => 1 + (slips > 0 ? letters : 0) + (slips > 1 ? (letters * (letters - 1)) / 2 : 0);

/** One slip, two from nine letters on, up to as many letters as keep the work within its limit. */
const slipsAllowedFor = (spellings: readonly Spelling[]): SlipsAllowed => {
  const upTo = (longest: number): SlipsAllowed => (letters) => {
    if (letters < FEWEST_LETTERS || letters > MOST_LETTERS) return 0;
    return letters >= TWO_SLIPS_FROM && letters <= longest ? 2 : 1;
  };
  for (let longest = MOST_LETTERS; longest >= TWO_SLIPS_FROM; longest -= 1) {
    const allowed = upTo(longest);
    const total = spellings.reduce((sum, { letters: { length } }) => sum + restsOf(length, allowed(length)), 0);
    if (total <= MOST_RESTS) return allowed;
  }
  return upTo(0);
};

const isSlip = (one: Spelling, other: Spelling, slipsAllowed: SlipsAllowed): boolean => {
  if (one.numbers !== other.numbers) return false;
  const allowed = Math.min(slipsAllowed(one.letters.length), slipsAllowed(other.letters.length));
  return allowed > 0 && Math.abs(one.letters.length - other.letters.length) <= allowed && isWithinSlips(one.word, other.word, allowed);
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
const rests = ({ letters, numbers }: Spelling, slipsAllowed: SlipsAllowed): readonly number[] => {
  const { length } = letters;
  const slips = slipsAllowed(length);
  if (slips === 0) return [];
  const power = (index: number): number => POWERS[index] ?? 0;
  const begun = [hashOf(Array.from(numbers, (digit) => digit.charCodeAt(0)))];
  for (const letter of letters) begun.push((Math.imul(begun[begun.length - 1] ?? 0, SPREAD) + letter) | 0);
  const upTo = (index: number): number => begun[index] ?? 0;
  /** A hash that ends before letter `from`, carried on to letter `to`. */
  const onwards = (hash: number, from: number, to: number): number =>
    (Math.imul(hash, power(to - from)) + upTo(to) - Math.imul(upTo(from), power(to - from))) | 0;
  const hashes = [upTo(length)];
  // Of like letters in a row the first alone is taken out: the rest is the same.
  const isLikeLast = (index: number): boolean => letters[index] === letters[index - 1];
  for (let out = 0; out < length; out += 1) if (!isLikeLast(out)) hashes.push(onwards(upTo(out), out + 1, length));
  if (slips === 1) return hashes;
  for (let first = 0; first < length; first += 1) {
    if (isLikeLast(first)) continue;
    for (let second = first + 1; second < length; second += 1) {
      if (second > first + 1 && isLikeLast(second)) continue;
      hashes.push(onwards(onwards(upTo(first), first + 1, second), second + 1, length));
    }
  }
  return hashes;
};

/** The place of a hash in a list whose length is a power of two: all its bits count. */
const slotOf = (hash: number, size: number): number => {
  const mixed = Math.imul(hash ^ (hash >>> 16), SPREAD);
  return (mixed ^ (mixed >>> 15)) & (size - 1);
};

/**
 * Numbers by hash, several under one: chains in flat lists, because there may be millions. The answer is by place, 0 where a chain ends.
 */
interface Chains {
  readonly first: (hash: number) => number;
  readonly after: (place: number) => number;
  readonly owner: (place: number) => number;
}

const chains = (all: readonly (readonly number[])[]): Chains => {
  const total = all.reduce((sum, hashes) => sum + hashes.length, 0);
  let size = 2;
  while (size < 2 * total) size *= 2;
  const heads = new Int32Array(size);
  const [next, hashAt, owners] = [new Int32Array(total + 1), new Int32Array(total + 1), new Int32Array(total + 1)];
  let place = total;
  // From the last to the first, so that a chain begins with the name that stands first.
  for (let owner = all.length - 1; owner >= 0; owner -= 1) {
    for (const hash of all[owner] ?? []) {
      const slot = slotOf(hash, size);
      next[place] = heads[slot] ?? 0;
      hashAt[place] = hash;
      owners[place] = owner;
      heads[slot] = place;
      place -= 1;
    }
  }
  const alike = (hash: number, from: number): number => {
    let at = from;
    while (at !== 0 && hashAt[at] !== hash) at = next[at] ?? 0;
    return at;
  };
  return {
    first: (hash) => alike(hash, heads[slotOf(hash, size)] ?? 0),
    after: (at) => alike(hashAt[at] ?? 0, next[at] ?? 0),
    owner: (at) => owners[at] ?? 0,
  };
};

interface Index {
  readonly spellings: readonly Spelling[];
  /** The rests of each of them, and the place of each in both by its key. */
  readonly restsOfAll: readonly (readonly number[])[];
  readonly placeOf: ReadonlyMap<string, number>;
  readonly slipsAllowed: SlipsAllowed;
  readonly sharing: Chains;
  /** By letters and digits alone. */
  readonly alike: ReadonlyMap<string, readonly Spelling[]>;
}

const indexOf = (names: readonly GoodsName[]): Index => {
  const byKey = new Map<string, GoodsName>();
  for (const name of names) {
    const key = goodsKey(name.item);
    if (!byKey.has(key)) byKey.set(key, name);
  }
  const spellings = [...byKey].map(([key, name]) => spellingOf(key, name));
  const slipsAllowed = slipsAllowedFor(spellings);
  const alike = new Map<string, Spelling[]>();
  for (const spelling of spellings) {
    const others = alike.get(spelling.bare);
    if (others === undefined) alike.set(spelling.bare, [spelling]);
    else if (others.length < MOST_SHARING) others.push(spelling);
  }
  const restsOfAll = spellings.map((spelling) => rests(spelling, slipsAllowed));
  const placeOf = new Map(spellings.map(({ key }, place) => [key, place]));
  return { spellings, restsOfAll, placeOf, slipsAllowed, sharing: chains(restsOfAll), alike };
};

const nearIn = ({ spellings, restsOfAll, placeOf, slipsAllowed, sharing, alike }: Index, item: string | number): GoodsName | undefined => {
  const key = goodsKey(item);
  const place = placeOf.get(key) ?? -1;
  const own = spellings[place] ?? spellingOf(key, { item, row: 0 });
  const isOther = (other: Spelling): boolean => other.key !== key && !(isOwnKey(other.key) && isOwnKey(key));
  const bare = own.bare === "" ? undefined : alike.get(own.bare)?.find(isOther);
  if (bare !== undefined) return bare.name;
  const compared = new Set<number>();
  for (const rest of restsOfAll[place] ?? rests(own, slipsAllowed)) {
    let looked = 0;
    for (let at = sharing.first(rest); at !== 0 && looked < MOST_SHARING; at = sharing.after(at)) {
      looked += 1;
      const index = sharing.owner(at);
      const other = spellings[index];
      if (other === undefined || compared.has(index) || !isOther(other)) continue;
      if (isSlip(own, other, slipsAllowed)) return other.name;
      compared.add(index);
      if (compared.size >= MOST_COMPARED) return undefined;
    }
  }
  return undefined;
};

/**
 * Which of some names may mean the same goods as another: alike in letters and digits, or alike in their numbers and one slip of the hand
 * apart, two from nine letters on. Nothing is merged: who typed them decides. The work grows with the names, not with their pairs, and
 * begins with the first question.
 */
export const nearNames = (names: readonly GoodsName[]): NearName => {
  let index: Index | undefined;
  return (item) => nearIn((index ??= indexOf(names)), item);
};

/** Notes of one row, those that are empty left out. */
export const joinedNotes = (...notes: readonly string[]): string => notes.filter((note) => note !== "").join("; ");

/** What the note of a row says of a near name. */
export const suspectNote = (near: GoodsName | undefined): string =>
  near === undefined ? "" : `like "${near.item}" in row ${near.row}${near.table === undefined ? "" : ` of ${near.table}`}: same goods?`;
