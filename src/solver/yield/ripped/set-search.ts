import { type Effort, isSpent } from "../shelf/effort";
import { emptyFilling, fillStretches, layoutOf, layPattern } from "./filled-layout";
import { type Column, linearProgram, type Row } from "./linear-program";
import { packedStrips } from "./packed-strips";
import {
  allowedOptions, type Case, caseOf, type Limit, NO_TERMS, type Options, type Place, placesOf, placeWorth, type Refutation, type Split,
  type Terms,
} from "./refutation";
import type { StretchWorth } from "./stretch-worth";
import { isWhole, type Option } from "./view";
import type { Layout, Pattern, Yard } from "./yard";

/** A pattern known of a place. */
export interface Known extends Place {
  readonly option: Option;
  readonly pattern: Pattern;
  readonly counts: Int32Array;
}

/** The patterns known of each stretch, for the linear programs of all sets. */
export type Patterns = readonly Map<string, Known>[];

export const noPatterns = (yard: Yard): Patterns => yard.stretches.map(() => new Map<string, Known>());

/** The pattern where it is new. */
export const addPattern = (patterns: Patterns, { stretch, strip }: Place, { option, counts, pattern }: StretchWorth): Known | undefined => {
  if (option === undefined) return undefined;
  const known = { stretch, strip, option, pattern: pattern(), counts: counts() };
  const { way } = option.view;
  const key = `${way}${typeof option.into === "string" ? option.into : option.into.counts.join()}/${strip}/${known.counts.join()}`;
  if (patterns[stretch]!.has(key)) return undefined;
  patterns[stretch]!.set(key, known);
  return known;
};

export interface SetAnswer {
  readonly layout?: Layout;
  readonly refutation?: Refutation;
}

/** Shortages cost the area of the piece, so scaled; worths are whole numbers so many times finer. */
const LARGEST_SHORTAGE = 1_000;
const WORTH_STEPS = 1_000;
/** Shortage that is floating-point dust. */
const SHORT_DUST = 1e-3;
const WHOLE_DUST = 1e-6;
const MOST_ROUNDS = 60;

/** A set of boards looked into. */
interface Looked {
  readonly yard: Yard;
  readonly options: Options;
  readonly stretches: readonly number[];
  readonly wanted: readonly number[];
  readonly shortage: readonly number[];
  readonly patterns: Patterns;
  readonly effort: Effort;
}

/** How often each known pattern stands in the linear plan of a case. */
interface Use {
  readonly known: Known;
  readonly times: number;
}

type Relaxed = { readonly refuted: Case } | { readonly uses: readonly Use[]; readonly worth: ArrayLike<number> };

export const shortages = (yard: Yard): number[] => {
  const widest = Math.max(1, ...yard.kinds.map(({ width }) => width));
  const areas = yard.kinds.map(({ length, width }) => length * (width === 0 ? widest : width));
  const largest = Math.max(...areas);
  return areas.map((area) => (LARGEST_SHORTAGE * area) / largest);
};

const rowsOf = ({ wanted, shortage }: Looked, places: readonly Place[], { limits }: Terms): Row[] => [
  ...wanted.map((right, kind): Row => ({ isLeast: true, right, shortage: shortage[kind]! })),
  ...places.map((): Row => ({ isLeast: false, right: 1, shortage: 0 })),
  ...limits.map(({ isLeast, count }): Row => ({ isLeast, right: count, shortage: LARGEST_SHORTAGE })),
];

const columnOf = ({ wanted }: Looked, places: readonly Place[], { limits }: Terms, { stretch, strip, counts }: Known): Column => {
  const rows: number[] = [];
  const values: number[] = [];
  counts.forEach((count, kind) => {
    if (count === 0) return;
    rows.push(kind);
    values.push(count);
  });
  rows.push(wanted.length + places.findIndex((place) => place.stretch === stretch && place.strip === strip));
  values.push(1);
  limits.forEach((limit, place) => {
    if (limit.stretch !== stretch || limit.strip !== strip) return;
    const count = limit.kinds.reduce((sum, kind) => sum + counts[kind]!, 0);
    if (count === 0) return;
    rows.push(wanted.length + places.length + place);
    values.push(count);
  });
  return { cost: 0, rows, values };
};

/** Solves the linear program of a case until it holds all pieces, or worths show that no plan does. */
const relaxed = (looked: Looked, terms: Terms): Relaxed | undefined => {
  const { yard, options, stretches, wanted, patterns, effort } = looked;
  const { limits } = terms;
  const places = stretches.flatMap((stretch) => placesOf(allowedOptions(options, terms, stretch), stretch));
  const known = places.flatMap(({ stretch, strip }) => {
    const allowed = allowedOptions(options, terms, stretch);
    return [...patterns[stretch]!.values()].filter((each) => each.strip === strip && allowed.includes(each.option));
  });
  const columns = known.map((each) => columnOf(looked, places, terms, each));
  const program = linearProgram(rowsOf(looked, places, terms), columns);
  for (let round = 0; round < MOST_ROUNDS && !isSpent(effort); round += 1) {
    const { cost, worth, times } = program.solve(effort);
    const uses = (): Use[] => known.flatMap((each, id) => (times[id]! > WHOLE_DUST ? [{ known: each, times: times[id]! }] : []));
    if (cost < SHORT_DUST) return { uses: uses(), worth };
    const whole = wanted.map((_, kind) => Math.max(0, Math.round(worth[kind]! * WORTH_STEPS)));
    const limitWorth = limits.map(({ isLeast }, place) => {
      const each = Math.round(worth[wanted.length + places.length + place]! * WORTH_STEPS);
      return isLeast ? Math.max(0, each) : Math.min(0, each);
    });
    const held = places.map((place) => placeWorth(yard, options, { worth: whole, wanted }, terms, limitWorth, place, effort));
    const needed = whole.reduce((sum, each, kind) => sum + each * wanted[kind]!, 0);
    const sum = held.reduce((all, each) => all + each.held.value - each.taken, 0);
    if (sum < needed) return { refuted: caseOf(yard, options, whole, terms, limitWorth, effort) };
    let isNew = false;
    for (const [place, where] of places.entries()) {
      if (held[place]!.held.value <= -worth[wanted.length + place]! * WORTH_STEPS + 1) continue;
      const added = addPattern(patterns, where, held[place]!.held);
      if (added === undefined) continue;
      known.push(added);
      columns.push(columnOf(looked, places, terms, added));
      isNew = true;
    }
    if (!isNew) return { uses: uses(), worth };
  }
  return undefined;
};

/** Patterns most in the linear plan first, then what is left where there is room. */
const rounded = ({ yard, options, stretches, shortage, effort }: Looked, uses: readonly Use[]): Layout | undefined => {
  const filling = emptyFilling(yard);
  const laid = new Set<string>();
  const divided = new Map<number, Pattern>();
  for (const { known } of [...uses].sort((one, other) => other.times - one.times)) {
    const { stretch, strip, pattern } = known;
    if (laid.has(`${stretch}/${strip}`)) continue;
    laid.add(`${stretch}/${strip}`);
    const before = divided.get(stretch);
    divided.set(stretch, before === undefined ? pattern : { ...before, strips: [...before.strips, ...pattern.strips] });
  }
  for (const [stretch, pattern] of divided) layPattern(yard, options, filling, stretch, pattern, shortage);
  fillStretches(yard, options, filling, stretches.filter((stretch) => !filling.layout.has(stretch)), shortage, effort);
  return layoutOf(filling);
};

/** A stretch is divided by this option, or by one of the others. */
const byDivision = (terms: Terms, stretch: number, option: Option, others: readonly Option[]): Split => ({
  by: "division",
  parts: [[option], others].map((options) => ({ ...terms, choices: [...terms.choices, { stretch, options }] })),
});

/** The stretch that is divided in several ways at once: by the one most used, or by the others. */
const optionSplit = ({ yard, options, stretches }: Looked, terms: Terms, uses: readonly Use[]): Split | undefined => {
  let best: { stretch: number; option: Option } | undefined;
  let most = 0;
  for (const stretch of stretches) {
    const shares = new Map<Option, number>();
    for (const { known, times } of uses) {
      if (known.stretch === stretch) shares.set(known.option, (shares.get(known.option) ?? 0) + times);
    }
    if (shares.size < 2) continue;
    const [option, share] = [...shares].reduce((one, other) => (other[1] > one[1] ? other : one));
    const rest = [...shares.values()].reduce((sum, each) => sum + each, 0) - share;
    const { length, width } = yard.stretches[stretch]!;
    if (rest < WHOLE_DUST || rest * length * width <= most) continue;
    most = rest * length * width;
    best = { stretch, option };
  }
  if (best === undefined) return undefined;
  const { stretch, option } = best;
  return byDivision(terms, stretch, option, allowedOptions(options, terms, stretch).filter((each) => each !== option));
};

/** A stretch of which it is not settled how it is divided: as the linear plan has it, or otherwise. */
const settlingSplit = ({ yard, options, stretches }: Looked, terms: Terms, uses: readonly Use[]): Split | undefined => {
  let best: { stretch: number; option: Option; others: readonly Option[] } | undefined;
  let most = 0;
  for (const stretch of stretches) {
    const allowed = allowedOptions(options, terms, stretch);
    const used = uses.find(({ known }) => known.stretch === stretch);
    const { length, width } = yard.stretches[stretch]!;
    if (allowed.length < 2 || used === undefined || length * width <= most) continue;
    most = length * width;
    best = { stretch, option: used.known.option, others: allowed.filter((each) => each !== used.known.option) };
  }
  if (best === undefined) return undefined;
  return byDivision(terms, best.stretch, best.option, best.others);
};

/** What the linear plan splits most: pieces of a sort on a stretch, else one kind. */
const countSplit = ({ yard, shortage }: Looked, terms: Terms, uses: readonly Use[]): Split | undefined => {
  const groups = new Map<number, number[]>();
  yard.kinds.forEach(({ sort }, kind) => groups.set(sort, [...(groups.get(sort) ?? []), kind]));
  for (const sets of [[...groups.values()], yard.kinds.map((_, kind) => [kind])]) {
    let best: Limit | undefined;
    let most = 0;
    const places = new Map(uses.map(({ known: { stretch, strip } }) => [`${stretch}/${strip}`, { stretch, strip }] as const));
    for (const { stretch, strip } of places.values()) {
      const here = uses.filter(({ known }) => known.stretch === stretch && known.strip === strip);
      for (const kinds of sets) {
        const count = here.reduce((sum, { known, times }) => sum + times * kinds.reduce((all, kind) => all + known.counts[kind]!, 0), 0);
        const part = count - Math.floor(count + WHOLE_DUST);
        if (part < WHOLE_DUST) continue;
        const weight = Math.min(part, 1 - part) * shortage[kinds[0]!]!;
        if (weight <= most) continue;
        most = weight;
        best = { stretch, strip, kinds, isLeast: false, count: Math.floor(count + WHOLE_DUST) };
      }
    }
    if (best === undefined) continue;
    const more = { ...best, isLeast: true, count: best.count + 1 };
    return { by: "count", parts: [more, best].map((limit) => ({ ...terms, limits: [...terms.limits, limit] })) };
  }
  return undefined;
};

/** What each place holds where the linear plan splits no piece. */
const countsAt = ({ yard }: Looked, uses: readonly Use[], { stretch, strip }: Place): number[] =>
  yard.kinds.map((_, kind) =>
    Math.round(uses.reduce((sum, { known, times }) =>
      known.stretch === stretch && known.strip === strip ? sum + times * known.counts[kind]! : sum, 0)));

/**
 * The linear plan splits no piece. A strip holds what it holds on average, for lengths add up. A stretch whose strips are not listed is
 * packed; where that cannot be, one of the kinds on it must be fewer. Neither where the packing was given up.
 */
const unsplit = (looked: Looked, terms: Terms, uses: readonly Use[]): { readonly layout?: Layout; readonly split?: Split } => {
  const { yard, options } = looked;
  const filling = emptyFilling(yard);
  const divided = new Map<number, Pattern>();
  const places = new Map(uses.map(({ known: { stretch, strip } }) => [`${stretch}/${strip}`, { stretch, strip }] as const));
  for (const place of places.values()) {
    const { stretch, strip } = place;
    const { view, into } = uses.find(({ known }) => known.stretch === stretch && known.strip === strip)!.known.option;
    const counts = countsAt(looked, uses, place);
    const held = counts.flatMap((count, kind) => Array.from({ length: count }, () => kind));
    const isPlain = strip >= 0 || into === "whole";
    // what takes the whole width fills it, however narrow the board
    const room = Math.max(1, view.roomAlong[stretch]!);
    const along = view.along.map((size, kind) => (isWhole(yard, kind) ? room : size));
    const strips = isPlain ? [held] : packedStrips({ ...view, along }, held, room, view.roomAcross[stretch]!);
    if (strips === undefined) return {};
    if (strips === "none") {
      const kinds = [...new Set(held)];
      const limit = (kind: number, isLeast: boolean, count: number): Limit => ({ ...place, kinds: [kind], isLeast, count });
      const parts = kinds.map((kind, at) => ({
        ...terms,
        limits: [
          ...terms.limits,
          ...kinds.slice(0, at).map((before) => limit(before, true, counts[before]!)),
          limit(kind, false, counts[kind]! - 1),
        ],
      }));
      return { split: { by: "packing", parts } };
    }
    const before = divided.get(stretch);
    divided.set(stretch, { way: view.way, strips: [...(before?.strips ?? []), ...strips] });
  }
  for (const [stretch, pattern] of divided) layPattern(yard, options, filling, stretch, pattern, looked.shortage);
  const layout = layoutOf(filling);
  return layout === undefined ? {} : { layout };
};

/** Cases beyond which a set is left open for now. */
export interface Depth {
  readonly cases: number;
}

/**
 * Whether a set of boards holds all pieces: a layout, or a refutation in cases, or neither where the work granted does not tell. A piece
 * that lies twice in one stretch counts twice there, which makes the linear program weaker, never wrong.
 */
export const setSearch = (
  yard: Yard, options: Options, set: readonly number[], patterns: Patterns, depth: Depth, effort: Effort,
): SetAnswer => {
  const looked: Looked = {
    yard, options, patterns, effort,
    stretches: set.flatMap((board) => yard.boards[board]!.stretches),
    wanted: yard.kinds.map(({ wanted }) => wanted),
    shortage: shortages(yard),
  };
  const open: Terms[] = [NO_TERMS];
  const cases: Case[] = [];
  let isOpen = false;
  for (let visited = 0; open.length > 0; visited += 1) {
    if (visited >= depth.cases || isSpent(effort)) return {};
    const terms = open.pop()!;
    const found = relaxed(looked, terms);
    if (found === undefined) return {};
    if ("refuted" in found) {
      cases.push(found.refuted);
      continue;
    }
    const layout = rounded(looked, found.uses);
    if (layout !== undefined) return { layout };
    const { uses } = found;
    const whole = optionSplit(looked, terms, uses) ?? settlingSplit(looked, terms, uses) ?? countSplit(looked, terms, uses);
    const { layout: exact, split = whole } = whole === undefined ? unsplit(looked, terms, found.uses) : {};
    if (exact !== undefined) return { layout: exact };
    if (split === undefined) {
      isOpen = true;
      continue;
    }
    open.push(...split.parts.map((each, part) => ({ ...each, path: [...terms.path, { split, part }] })).reverse());
  }
  return isOpen ? {} : { refutation: cases };
};
