import { type Draw, draws } from "../draws";
import { type Candidate } from "./dive";
import { type Effort, isSpent } from "./effort";
import { type Limits } from "./master";
import { type NearPattern, nearPatterns, type Weighed } from "./near-patterns";
import { cutsOf, type Pattern, patternOf, patternWorth } from "./pattern";
import { type Shelf, takesKind } from "./shelf";

// The figures of this file were chosen on the twenty estimator jobs of bench:yield; other jobs may do better with others.

/** Sticks that are planned anew at a time, and the share of them that lack most. */
const LEAST_TAKEN = 4;
const MOST_TAKEN = 10;
const LACKING_SHARE = 0.5;
/**
 * Patterns of which new plans are made, at most, and how often they are looked for with half the slack; where there are more, as where
 * prices go by the length, so many of those pieces alone that are taken apart.
 */
const MOST_PATTERNS = 3_000;
const HALVINGS = 6;
const MOST_OF_TRY = 400;
const HALVINGS_OF_TRY = 3;
/** Looks of a try. */
const LOOKS = 100;
/** Tries without gain after which the best plan so far is made dearer, by what it is over the least cost at most. */
const STALLED = 60;
/** Patterns may lack this share of what the plan is dearer by; what is left for the last stick may lack all of it. */
const PART = 0.25;
/** How much more a step of looking for patterns takes than the others. */
const PATTERN_WEIGHT = 10;
/** Steps of a try, of a look, and of a pattern in it. */
const TRY_STEPS = 8_000;
const LOOK_STEPS = 350;
const HOLD_STEPS = 5;
const SEED = 8;

/** Patterns with the same longest piece, those that lack least first. */
interface Giving {
  readonly patterns: readonly NearPattern[];
  /** Two words for each pattern with a bit for each of its kinds, of which several may share one: a look at few numbers rules most out. */
  readonly bits: Int32Array;
}

/** What is the same in every try. */
interface Ground {
  readonly shelf: Shelf;
  readonly weighed: Weighed;
  /** What one stick of each kind has to hold to lack nothing. */
  readonly needed: readonly number[];
  readonly longest: number;
  /** For each kind the patterns whose longest piece it is; nothing where there are too many. */
  readonly giving: readonly Giving[] | undefined;
  readonly draw: Draw;
  readonly effort: Effort;
}

/** Some sticks of a plan, taken apart. */
interface Try {
  readonly ground: Ground;
  giving: readonly Giving[];
  /** Kinds of its pieces, longest first. */
  readonly kinds: readonly number[];
  readonly left: Int32Array;
  readonly available: Int32Array;
  readonly chosen: NearPattern[];
  /** Of what is left. */
  pieces: number;
  width: number;
  worth: number;
  /** What the sticks that save would save if all that are left were used. */
  saving: number;
  looks: number;
}

/** Bits of a word; a shift by a kind is one by its place in the word. */
const BITS = 32;

const bitsOf = (kinds: readonly number[]): [number, number] => {
  const words: [number, number] = [0, 0];
  for (const kind of kinds) words[(kind & BITS) === 0 ? 0 : 1] |= 1 << kind;
  return words;
};

const givingOf = ({ kinds }: Shelf, near: readonly NearPattern[]): Giving[] => {
  const given = kinds.map((): NearPattern[] => []);
  for (const each of [...near].sort((a, b) => a.lack - b.lack)) given[each.pattern.kinds[0]!]!.push(each);
  return given.map((patterns) => ({ patterns, bits: Int32Array.from(patterns.flatMap(({ pattern }) => bitsOf(pattern.kinds))) }));
};

/** Puts a pattern on so many more sticks. */
const put = (now: Try, { stick, kinds, counts }: Pattern, times: 1 | -1): void => {
  const { ground: { shelf, weighed }, left, available } = now;
  available[stick]! -= times;
  now.saving += times * Math.min(0, weighed.charges[stick]!);
  for (let place = 0; place < kinds.length; place += 1) {
    const kind = kinds[place]!;
    const count = times * counts[place]!;
    left[kind]! -= count;
    now.pieces -= count;
    now.width -= count * shelf.kinds[kind]!.width;
    now.worth -= count * weighed.worth[kind]!;
  }
};

/** What is left on one stick that lacks no more than the slack, with what unused sticks would have saved. */
const lastOf = (now: Try, slack: number): NearPattern | undefined => {
  const { ground: { shelf, weighed, needed, longest }, left, available, width, worth, saving } = now;
  if (width > longest) return undefined;
  for (let stick = 0; stick < needed.length; stick += 1) {
    const lack = needed[stick]! - worth;
    const unused = saving + Math.min(0, weighed.charges[stick]!);
    if (lack + unused > slack || available[stick]! <= 0 || shelf.sticks[stick]!.holds < width) continue;
    const kinds = now.kinds.filter((kind) => left[kind]! > 0);
    if (!kinds.every((kind) => takesKind(shelf, stick, kind))) continue;
    return { lack, pattern: { stick, kinds, counts: kinds.map((kind) => left[kind]!) } };
  }
  return undefined;
};

const fits = (left: Int32Array, { kinds, counts }: Pattern): boolean => {
  let place = 0;
  while (place < kinds.length && counts[place]! <= left[kinds[place]!]!) place += 1;
  return place === kinds.length;
};

/** How many of the patterns lack no more than the slack. */
const countWithin = ({ patterns }: Giving, slack: number): number => {
  let low = 0;
  let high = patterns.length;
  while (low < high) {
    const middle = (low + high) >> 1;
    if (patterns[middle]!.lack <= slack) low = middle + 1;
    else high = middle;
  }
  return low;
};

/** Whether what is left goes on sticks that lack no more than the slack, with what unused sticks would have saved. */
const isPlanned = (now: Try, from: number, slack: number): boolean => {
  const { ground: { draw, effort }, giving, kinds, left, available, chosen } = now;
  if (now.pieces === 0) return now.saving <= slack;
  now.looks -= 1;
  if (now.looks < 0) return false;
  const last = lastOf(now, slack);
  if (last !== undefined) return chosen.push(last) > 0;
  let next = from;
  while (left[kinds[next]!] === 0) next += 1;
  const here = giving[kinds[next]!]!;
  const { patterns, bits } = here;
  const count = countWithin(here, slack);
  effort.left -= LOOK_STEPS + HOLD_STEPS * count;
  let low = 0;
  let high = 0;
  for (let place = next; place < kinds.length; place += 1) {
    const kind = kinds[place]!;
    if (left[kind] === 0) continue;
    if ((kind & BITS) === 0) low |= 1 << kind;
    else high |= 1 << kind;
  }
  const drawn = draw();
  // a square by hand: powers may differ from one engine to another
  const start = Math.floor(drawn * drawn * count);
  for (let turn = 0; turn < count; turn += 1) {
    const at = turn + start < count ? turn + start : turn + start - count;
    if ((bits[2 * at]! & ~low) !== 0 || (bits[2 * at + 1]! & ~high) !== 0) continue;
    const near = patterns[at]!;
    const { pattern, lack } = near;
    if (available[pattern.stick]! <= 0 || !fits(left, pattern)) continue;
    put(now, pattern, 1);
    chosen.push(near);
    if (isPlanned(now, next, slack - lack)) return true;
    chosen.pop();
    put(now, pattern, -1);
  }
  return false;
};

/** Patterns that lack a part of the slack, or less where there are more than `most`; nothing where there still are. */
const patternsWithin = (
  shelf: Shelf, limits: Limits, weighed: Weighed, slack: number, most: number, halvings: number, effort: Effort,
): NearPattern[] | undefined => {
  const granted = effort.left / PATTERN_WEIGHT;
  const share = { left: granted };
  let near: NearPattern[] | undefined;
  for (let turn = 0; turn <= halvings && near === undefined && !isSpent(share); turn += 1) {
    near = nearPatterns(shelf, limits, weighed, (slack * PART) / 2 ** turn, true, most, share);
  }
  effort.left -= PATTERN_WEIGHT * (granted - share.left);
  return near;
};

/** Patterns of the pieces that are taken apart. */
const patternsOfTry = ({ ground: { shelf, weighed, effort }, kinds, left, available }: Try, slack: number): NearPattern[] => {
  const few: Shelf = {
    ...shelf,
    kinds: kinds.map((kind) => ({ width: shelf.kinds[kind]!.width, wanted: left[kind]! })),
    takes: shelf.takes.map((each) => kinds.map((kind) => each[kind]!)),
  };
  const limits: Limits = { least: shelf.sticks.map(() => 0), most: [...available] };
  const worth = kinds.map((kind) => weighed.worth[kind]!);
  const near = patternsWithin(few, limits, { ...weighed, worth }, slack, MOST_OF_TRY, HALVINGS_OF_TRY, effort) ?? [];
  return near.map(({ pattern, lack }) => ({ lack, pattern: { ...pattern, kinds: pattern.kinds.map((kind) => kinds[kind]!) } }));
};

/** Which sticks are taken apart: those that lack most, which come first, and any others. */
const drawnSticks = (sticks: readonly NearPattern[], draw: Draw): Set<number> => {
  const count = Math.min(sticks.length, LEAST_TAKEN + Math.floor(draw() * (MOST_TAKEN - LEAST_TAKEN + 1)));
  const found = new Set<number>();
  for (let place = 0; place < count * LACKING_SHARE && sticks[place]!.lack > 0; place += 1) found.add(place);
  while (found.size < count) found.add(Math.floor(draw() * sticks.length));
  return found;
};

/** The sticks with some of them planned anew, by so much dearer at most; as they were where that is not found within the looks. */
const plannedAnew = (ground: Ground, sticks: readonly NearPattern[], unused: Int32Array, dearer: number): readonly NearPattern[] => {
  const { shelf, weighed: { steps, charges }, draw, effort } = ground;
  const apart = drawnSticks(sticks, draw);
  effort.left -= TRY_STEPS;
  const now: Try = {
    ground, giving: ground.giving ?? [], left: new Int32Array(shelf.kinds.length), available: Int32Array.from(unused), chosen: [],
    kinds: [...new Set([...apart].flatMap((at) => sticks[at]!.pattern.kinds))].sort((a, b) => a - b),
    pieces: 0, width: 0, worth: 0, saving: 0, looks: LOOKS,
  };
  for (let stick = 0; stick < unused.length; stick += 1) now.saving -= unused[stick]! * Math.min(0, charges[stick]!);
  let price = 0;
  for (const at of apart) {
    const { pattern } = sticks[at]!;
    put(now, pattern, -1);
    price += shelf.sticks[pattern.stick]!.price;
  }
  const slack = (price + dearer) * steps - now.worth + now.saving;
  if (ground.giving === undefined) now.giving = givingOf(shelf, patternsOfTry(now, slack));
  if (!isPlanned(now, 0, slack)) return sticks;
  for (const at of apart) unused[sticks[at]!.pattern.stick]! += 1;
  for (const { pattern } of now.chosen) unused[pattern.stick]! -= 1;
  return [...sticks.filter((_, at) => !apart.has(at)), ...now.chosen].sort((a, b) => b.lack - a.lack);
};

/**
 * A cheaper plan. By the worths that prove the least cost nearly all sticks of a large plan lack nothing, and what it is dearer by is in
 * the few that do. These are taken apart with some others and planned anew, in many small tries.
 */
export const repaired = (
  shelf: Shelf, limits: Limits, weighed: Weighed, least: number, start: Candidate, effort: Effort,
): Candidate => {
  const slack = (start.cost - least) * weighed.steps;
  const near = patternsWithin(shelf, limits, weighed, slack, MOST_PATTERNS, HALVINGS, effort);
  const { worth, steps, charges } = weighed;
  const needed = shelf.sticks.map(({ price }, stick) => price * steps - charges[stick]!);
  const ground: Ground = {
    shelf, weighed, needed, effort,
    longest: Math.max(...shelf.sticks.map(({ holds }) => holds)),
    giving: near && givingOf(shelf, near),
    draw: draws(SEED),
  };
  let sticks: readonly NearPattern[] = cutsOf(shelf, start.uses)
    .map(patternOf)
    .map((pattern) => ({ pattern, lack: needed[pattern.stick]! - patternWorth(pattern, worth) }))
    .sort((a, b) => b.lack - a.lack);
  const unused = Int32Array.from(shelf.sticks, ({ available }) => available);
  for (const { pattern } of sticks) unused[pattern.stick]! -= 1;
  const costOf = (): number => sticks.reduce((sum, { pattern }) => sum + shelf.sticks[pattern.stick]!.price, 0);
  let best = { cost: costOf(), sticks, unused: Int32Array.from(unused) };
  for (let stalled = 0; best.cost > least && !isSpent(effort); stalled += 1) {
    const isStalled = stalled === STALLED;
    if (isStalled) {
      stalled = 0;
      sticks = best.sticks;
      unused.set(best.unused);
    }
    const before = sticks;
    sticks = plannedAnew(ground, sticks, unused, isStalled ? best.cost - least : -1);
    const cost = sticks === before ? best.cost : costOf();
    if (cost >= best.cost) continue;
    best = { cost, sticks, unused: Int32Array.from(unused) };
    stalled = 0;
  }
  return { cost: best.cost, uses: best.sticks.map(({ pattern }) => ({ pattern, times: 1 })) };
};
