import { type Case, type Limit, type Options, type Refutation, stripWidths } from "./refutation";
import type { Option } from "./view";
import type { Way, Yard } from "./yard";

/**
 * How a clear stretch is divided: into strips so wide in marks, the widest first; strips each as wide as its widest piece; one strip as
 * wide as the board.
 */
export interface Division {
  readonly first: Way;
  readonly into: readonly number[] | "led" | "whole";
}

/** A clear stretch of a board, counted from the end chalked 0, or one of its strips, counted from the widest; -1 for the whole stretch. */
export interface ProofPlace {
  readonly board: number;
  readonly stretch: number;
  readonly strip: number;
}

/** Worths in whole numbers of one piece of each kind, and of each limit of the case: 0 or more for over, 0 or less for up to. */
export interface ProofWorths {
  readonly by: "worth";
  readonly worth: readonly number[];
  readonly limitWorth: readonly number[];
  /** The most worth that each board holds in this case, what its limits take or add counted in. */
  readonly holds: readonly number[];
}

/**
 * Why boards do not hold all pieces: together they hold less worth than all pieces have; or one stretch divided by these and by those; or
 * a place holding up to so many of some kinds and over; or, of pieces that find no room together in a place, fewer of each kind in turn.
 */
export type SetProof =
  | ProofWorths
  | {
      readonly by: "division";
      readonly place: ProofPlace;
      readonly parts: readonly { readonly divisions: readonly Division[]; readonly proof: SetProof }[];
    }
  | {
      readonly by: "count";
      readonly place: ProofPlace;
      readonly kinds: readonly number[];
      readonly atMost: number;
      readonly upTo: SetProof;
      readonly over: SetProof;
    }
  | {
      readonly by: "packing";
      readonly place: ProofPlace;
      readonly fewer: readonly { readonly kind: number; readonly than: number; readonly proof: SetProof }[];
    };

/** The proof that no choice of boards costs less: each that does is too small by one of the refutations. */
export interface BoardProof {
  /** For each kind its rows of the pieces table. */
  readonly pieceRows: readonly (readonly number[])[];
  /** For each board and each of its clear stretches: every layout is one of these, or one with more room. */
  readonly divisions: readonly (readonly (readonly Division[])[])[];
  readonly refutations: readonly SetProof[];
}

/** Cases of all refutations up to which a proof is short enough to be repeated. */
const MOST_CASES = 400;

const divisionOf = (yard: Yard, option: Option): Division => {
  const { view: { way, across }, into } = option;
  if (typeof into === "string") return { first: way, into };
  const sizes = new Map(yard.kinds.map(({ length, width }, kind) => [across[kind]!, way === "rip" ? width : length]));
  return { first: way, into: stripWidths(option).map((width) => sizes.get(width)!) };
};

const placeOf = ({ boards, stretches }: Yard, stretch: number, strip: number): ProofPlace => {
  const { board } = stretches[stretch]!;
  return { board, stretch: boards[board]!.stretches.indexOf(stretch), strip };
};

const worthsOf = ({ worth, limitWorth, holds }: Case): ProofWorths => ({ by: "worth", worth, limitWorth, holds: [...holds] });

const lastLimit = ({ limits }: { readonly limits: readonly Limit[] }): Limit => limits[limits.length - 1]!;

/** Puts the cases of a refutation back into what they were split from. */
const setProof = (yard: Yard, cases: Refutation, depth: number): SetProof => {
  const split = cases[0]!.terms.path[depth]?.split;
  if (split === undefined) return worthsOf(cases[0]!);
  const below = split.parts.map((_, part) => setProof(yard, cases.filter(({ terms }) => terms.path[depth]!.part === part), depth + 1));
  const [first] = split.parts;
  if (split.by === "division") {
    const chosen = split.parts.map(({ choices }) => choices[choices.length - 1]!);
    return {
      by: "division",
      place: placeOf(yard, chosen[0]!.stretch, -1),
      parts: chosen.map(({ options }, part) => ({ divisions: options.map((each) => divisionOf(yard, each)), proof: below[part]! })),
    };
  }
  const { stretch, strip, kinds, count } = lastLimit(first!);
  const place = placeOf(yard, stretch, strip);
  if (split.by === "count") return { by: "count", place, kinds, atMost: count - 1, upTo: below[1]!, over: below[0]! };
  const fewer = split.parts.map((part, at) => ({ kind: lastLimit(part).kinds[0]!, than: lastLimit(part).count + 1, proof: below[at]! }));
  return { by: "packing", place, fewer };
};

/** The refutations of a search in the terms of the job's rows; undefined where they are too long to be repeated. */
export const boardProof = (
  yard: Yard, pieceRows: BoardProof["pieceRows"], options: Options, refutations: readonly Refutation[],
): BoardProof | undefined => {
  if (refutations.reduce((sum, cases) => sum + cases.length, 0) > MOST_CASES) return undefined;
  return {
    pieceRows,
    divisions: yard.boards.map(({ stretches }) => stretches.map((at) => options[at]!.map((each) => divisionOf(yard, each)))),
    refutations: refutations.map((cases) => setProof(yard, cases, 0)),
  };
};
