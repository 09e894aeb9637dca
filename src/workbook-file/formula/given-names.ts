import { NAMING } from "./file-formula";
import { isCall, isCell, isSign, type Token } from "./formula-tokens";

/** How the names that LET and LAMBDA give are kept, and those that a caller may leave out (from memory: no document names the second). */
const KEPT = /^_xl[po][mp]\./i;
/** What may stand before a function; _xlpm. and its like make a word a name. */
export const BEFORE_CALL = /^(?:_xlfn\.|_xlws\.)+/i;
const OPTIONAL = /^\[([\p{L}_][\p{L}\p{N}_]*)\]$/u;
const NAME = /^[\p{L}_\\][\p{L}\p{M}\p{N}_.\\?]*$/u;

type Stretch = readonly [from: number, to: number];

/** Where names are given, and where each of them counts. */
export interface GivenNames {
  /** The places at which a name is given, with the name where it is one that may be left out. */
  readonly places: ReadonlyMap<number, string | undefined>;
  /** Whether a word at a place is such a name. */
  readonly isGiven: (word: string, at: number) => boolean;
}

const argumentsOf = (tokens: readonly Token[], open: number, partners: ReadonlyMap<number, number>): readonly Stretch[] => {
  const found: Stretch[] = [];
  const close = partners.get(open) ?? tokens.length;
  let from = open + 1;
  for (let at = from; at < close; at += 1) {
    const inner = partners.get(at);
    if (inner !== undefined) at = inner;
    else if (isSign(tokens[at], ",")) {
      found.push([from, at]);
      from = at + 1;
    }
  }
  return [...found, [from, close]];
};

/** The one part that an argument is made of, with spaces around it. */
const aloneIn = (tokens: readonly Token[], [from, to]: Stretch): number | undefined => {
  let found: number | undefined;
  for (let at = from; at < to; at += 1) {
    if (tokens[at]?.kind === "space") continue;
    if (found !== undefined) return undefined;
    found = at;
  }
  return found;
};

/**
 * The names that LET and LAMBDA give in a formula. One of LAMBDA counts to the end of its call; one of LET does so behind the value it is
 * given, which does not know it yet (Microsoft, "LET function" and "LAMBDA function").
 */
export const givenNamesIn = (tokens: readonly Token[], partners: ReadonlyMap<number, number>): GivenNames => {
  const places = new Map<number, string | undefined>();
  const stretches = new Map<string, Stretch[]>();
  const give = (name: string, stretch: Stretch): void => {
    const key = name.toLowerCase();
    stretches.set(key, [...(stretches.get(key) ?? []), stretch]);
  };
  for (const [at, { text }] of tokens.entries()) {
    const caller = text.replace(BEFORE_CALL, "").toUpperCase();
    const isNaming = isCall(tokens, at) ? NAMING[caller] : undefined;
    if (isNaming === undefined) continue;
    const all = argumentsOf(tokens, at + 1, partners);
    for (const [index, stretch] of all.slice(0, -1).entries()) {
      const place = isNaming(index) ? aloneIn(tokens, stretch) : undefined;
      const token = tokens[place ?? -1];
      if (place === undefined || token === undefined) continue;
      const optional = caller === "LAMBDA" && token.kind === "bracket" ? OPTIONAL.exec(token.text)?.[1] : undefined;
      const name = optional ?? token.text.replace(KEPT, "");
      if (!NAME.test(name) || isCell(name)) continue;
      places.set(place, optional);
      const [, from] = all[caller === "LET" ? index + 1 : index] ?? stretch;
      give(name, [from, partners.get(at + 1) ?? tokens.length]);
    }
  }
  return { places, isGiven: (word, at) => (stretches.get(word.toLowerCase()) ?? []).some(([from, to]) => at >= from && at < to) };
};
