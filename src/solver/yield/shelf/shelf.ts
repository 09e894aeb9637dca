/**
 * A cutting job in whole numbers, of one grade and of stock that could take each other's pieces. A piece is as wide as its length and one
 * kerf; a stick holds its usable length and one kerf, because the last piece needs no cut when it ends the stick. So pieces fit when
 * their widths add to at most `holds`.
 */
export interface Shelf {
  /** Longest first. */
  readonly kinds: readonly PieceKind[];
  readonly sticks: readonly StickKind[];
  /** For each section of stick whether it is wide and thick enough for each kind of piece; every kind has one that is. */
  readonly takes: readonly (readonly boolean[])[];
  /** Marks to a unit of width. */
  readonly marks: number;
  /** An end of at least so many marks is worth keeping. */
  readonly keep: number;
}

export interface PieceKind {
  readonly width: number;
  readonly wanted: number;
}

export interface StickKind {
  /** Row of `takes`. */
  readonly section: number;
  readonly holds: number;
  /** Marks between the trims. */
  readonly usable: number;
  /** In whole units of money, rounded down where prices are finer than whole-number arithmetic can add exactly. */
  readonly price: number;
  /** Length that has to be bought: 0 for an owned stick. */
  readonly newLength: number;
  readonly available: number;
}

/** One stick and the kinds of the pieces cut from it, longest first. */
export interface Cut {
  readonly stick: number;
  readonly kinds: readonly number[];
}

/** What a plan is judged by, in this order. */
export interface Outlay {
  readonly cash: number;
  readonly newLength: number;
  readonly sticks: number;
}

export const isBetter = (one: Outlay, other: Outlay): boolean =>
  one.cash !== other.cash
    ? one.cash < other.cash
    : one.newLength !== other.newLength
      ? one.newLength < other.newLength
      : one.sticks < other.sticks;

export const outlay = (shelf: Shelf, cuts: readonly Cut[]): Outlay => {
  let cash = 0;
  let newLength = 0;
  for (const cut of cuts) {
    const stick = shelf.sticks[cut.stick]!;
    cash += stick.price;
    newLength += stick.newLength;
  }
  return { cash, newLength, sticks: cuts.length };
};

export const takesKind = (shelf: Shelf, stick: number, kind: number): boolean => shelf.takes[shelf.sticks[stick]!.section]![kind]!;

/** Whether a stick of this kind can be cut as one of another is. */
export const takesCut = (shelf: Shelf, stick: number, { kinds }: Cut): boolean => {
  const takes = shelf.takes[shelf.sticks[stick]!.section]!;
  return kinds.every((kind) => takes[kind]!);
};

export const piecesWanted = (shelf: Shelf): number => shelf.kinds.reduce((sum, kind) => sum + kind.wanted, 0);

export const usedWidth = (shelf: Shelf, cut: Cut): number =>
  cut.kinds.reduce((sum, kind) => sum + shelf.kinds[kind]!.width, 0);

/** Marks left over at the end of a stick. */
export const endOf = (shelf: Shelf, cut: Cut): number => Math.max(0, shelf.sticks[cut.stick]!.usable - usedWidth(shelf, cut) * shelf.marks);

/** The shelf when some pieces are cut and some sticks are used. */
export const remaining = (shelf: Shelf, left: readonly number[], available: readonly number[]): Shelf => ({
  ...shelf,
  kinds: shelf.kinds.map((kind, index) => ({ ...kind, wanted: left[index]! })),
  sticks: shelf.sticks.map((stick, index) => ({ ...stick, available: available[index]! })),
});

/** The better of two plans; the first where they are alike. */
export const betterOf = (shelf: Shelf, one: readonly Cut[] | undefined, other: readonly Cut[] | undefined) =>
  one === undefined || (other !== undefined && isBetter(outlay(shelf, other), outlay(shelf, one))) ? other : one;
