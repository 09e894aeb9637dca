/** Which cut is made first on a stretch: strips along the grain, or sections across it. */
export const WAYS = ["rip", "crosscut"] as const;
export type Way = (typeof WAYS)[number];

/** Pieces alike in everything the search knows of. Sizes in marks. */
export interface Kind {
  readonly length: number;
  /** 0: the whole width of its board. */
  readonly width: number;
  readonly wanted: number;
  /** Kinds of one sort differ in length alone. */
  readonly sort: number;
}

/** A clear range of a board, less the trim at its ends and the edges. */
export interface Clear {
  readonly board: number;
  readonly length: number;
  readonly width: number;
  /** Row of `takes`. */
  readonly class: number;
}

export interface Board {
  /** By their place in `stretches`. */
  readonly stretches: readonly number[];
  /** Whole units of money; 0 where owned or in a lot. */
  readonly money: number;
  /** Whole units of board feet. */
  readonly feet: number;
  /** -1: sold by itself. */
  readonly lot: number;
}

/** What is to be cut from which boards, in whole numbers. */
export interface Yard {
  readonly kinds: readonly Kind[];
  readonly boards: readonly Board[];
  readonly stretches: readonly Clear[];
  /** For each class of stretch, which kinds may be cut from it: grade, species, thickness. */
  readonly takes: readonly (readonly boolean[])[];
  /** Price of each lot, paid once if any of its boards is cut. */
  readonly lots: readonly number[];
  readonly kerf: number;
  readonly ways: readonly Way[];
}

/** Strips of a stretch cut rip first, or its sections cut crosscut first: the kinds in each. */
export interface Pattern {
  readonly way: Way;
  readonly strips: readonly (readonly number[])[];
}

/** A pattern for each stretch that is cut. */
export type Layout = ReadonlyMap<number, Pattern>;
