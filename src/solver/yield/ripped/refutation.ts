import type { Effort } from "../shelf/effort";
import { type Offered, type StretchWorth, stretchWorth, stripWorth } from "./stretch-worth";
import type { Option } from "./view";
import type { Yard } from "./yard";

/** A stretch, or where it is known how it is divided one of its strips. */
export interface Place {
  readonly stretch: number;
  /** Counted from the widest; -1 for the whole stretch. */
  readonly strip: number;
}

/** A place holds at least, or at most, so many of some kinds. */
export interface Limit extends Place {
  readonly kinds: readonly number[];
  readonly isLeast: boolean;
  readonly count: number;
}

/** A stretch is divided by one of these options. */
export interface Choice {
  readonly stretch: number;
  readonly options: readonly Option[];
}

/** One part of what a case was split into. */
export interface Step {
  readonly split: Split;
  readonly part: number;
}

/** What holds in a case. */
export interface Terms {
  readonly limits: readonly Limit[];
  /** Of several for one stretch the last holds. */
  readonly choices: readonly Choice[];
  /** How the case came about. */
  readonly path: readonly Step[];
}

/**
 * Cases of which each plan keeps one. By division: a stretch is divided by some options, or by others. By count: a place holds more, or no
 * more. By packing: what a place would hold finds no room there, so of one of its kinds it holds fewer.
 */
export interface Split {
  readonly by: "division" | "count" | "packing";
  readonly parts: readonly Terms[];
}

export const NO_TERMS: Terms = { limits: [], choices: [], path: [] };

export type Options = readonly (readonly Option[])[];

export const allowedOptions = (options: Options, { choices }: Terms, stretch: number): readonly Option[] => {
  let allowed = options[stretch]!;
  for (const choice of choices) if (choice.stretch === stretch) allowed = choice.options;
  return allowed;
};

/**
 * One case of a refutation: worths in whole numbers for the pieces, and for each limit of the case. Whatever plan keeps to the limits, its
 * boards hold together no more worth than `holds` says, and the pieces are worth `needed`.
 */
export interface Case {
  readonly terms: Terms;
  readonly worth: readonly number[];
  /** Of each limit: 0 or more for at least, 0 or less for at most. */
  readonly limitWorth: readonly number[];
  readonly needed: number;
  /** By board, what its limits take or add counted in. */
  readonly holds: Float64Array;
  /** Boards that must be there for the case to arise. */
  readonly without: readonly number[];
}

/** Cases that leave out no plan: a set of boards that is too small in each of them holds no plan. */
export type Refutation = readonly Case[];

export const stripWidths = ({ into }: Option): readonly number[] =>
  typeof into === "string" ? [] : into.widths.flatMap((width, at) => Array.from({ length: into.counts[at]! }, () => width));

/** The places of a stretch: its strips where only one way to divide it is left, else itself. */
export const placesOf = (allowed: readonly Option[], stretch: number): readonly Place[] => {
  const [only] = allowed;
  return allowed.length === 1 && only !== undefined && typeof only.into !== "string"
    ? stripWidths(only).map((_, strip) => ({ stretch, strip }))
    : [{ stretch, strip: -1 }];
};

/** What a place may hold at these worths and those of its limits, and what the limits themselves take. */
export const placeWorth = (
  yard: Yard, options: Options, offered: Offered, terms: Terms, limitWorth: readonly number[], { stretch, strip }: Place, effort: Effort,
): { readonly held: StretchWorth; readonly taken: number } => {
  let worth: Float64Array | undefined;
  let taken = 0;
  for (const [place, limit] of terms.limits.entries()) {
    if (limit.stretch !== stretch || limit.strip !== strip || limitWorth[place] === 0) continue;
    worth ??= Float64Array.from(offered.worth);
    for (const kind of limit.kinds) worth[kind]! += limitWorth[place]!;
    taken += limitWorth[place]! * limit.count;
  }
  const allowed = allowedOptions(options, terms, stretch);
  const all = worth === undefined ? offered : { ...offered, worth };
  const [only] = allowed;
  const held = strip < 0 || only === undefined
    ? stretchWorth(yard, allowed, all, stretch, effort)
    : stripWorth(yard, only, all, stretch, stripWidths(only)[strip]!, effort);
  return { held, taken };
};

/** The case for every board of the yard, so that it speaks of other sets too. */
export const caseOf = (
  yard: Yard, options: Options, worth: readonly number[], terms: Terms, limitWorth: readonly number[], effort: Effort,
): Case => {
  const wanted = yard.kinds.map((kind) => kind.wanted);
  const holds = Float64Array.from(yard.boards, ({ stretches }) =>
    stretches
      .flatMap((stretch) => placesOf(allowedOptions(options, terms, stretch), stretch))
      .reduce((sum, place) => {
        const { held, taken } = placeWorth(yard, options, { worth, wanted }, terms, limitWorth, place, effort);
        return sum + held.value - taken;
      }, 0),
  );
  const needed = worth.reduce((sum, each, kind) => sum + each * wanted[kind]!, 0);
  const without = terms.limits.filter(({ isLeast, count }) => isLeast && count > 0).map(({ stretch }) => yard.stretches[stretch]!.board);
  return { terms, worth, limitWorth, needed, holds, without: [...new Set(without)] };
};

/** Whether a set of boards is too small in each case. */
export const isRefutedBy = (refutation: Refutation, has: readonly boolean[], set: readonly number[]): boolean =>
  refutation.every(({ without, needed, holds }) => {
    if (without.some((board) => !has[board]!)) return true;
    let sum = 0;
    for (const board of set) sum += holds[board]!;
    return sum < needed;
  });
