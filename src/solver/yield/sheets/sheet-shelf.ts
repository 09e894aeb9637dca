/** What is done first on a sheet: rips along its length, or crosscuts. */
export type Cutting = "rip" | "crosscut";

/**
 * A job of sheets in whole numbers. A piece is as long and as wide as it is and one kerf, a sheet holds its usable size and one kerf,
 * because the last piece of a row needs no cut where it ends the sheet.
 */
export interface SheetShelf {
  /** Largest first. */
  readonly kinds: readonly PanelKind[];
  readonly sheets: readonly SheetKind[];
  /** For each kind of sheet whether it is thick enough for each kind of piece. */
  readonly takes: readonly (readonly boolean[])[];
  /** The ways round that may be cut. */
  readonly firsts: readonly Cutting[];
  readonly kerf: number;
  /** What is left is worth keeping from this size on. */
  readonly keep?: { readonly length: number; readonly width: number };
}

export interface PanelKind {
  readonly length: number;
  readonly width: number;
  readonly wanted: number;
  /** May lie across the grain. */
  readonly turns: boolean;
}

export interface SheetKind {
  readonly length: number;
  readonly width: number;
  /** Money first, then area: what plans are compared by, in one whole number. */
  readonly cost: number;
  readonly available: number;
}

/** A kind of piece as it lies: along the strip and across it. */
export interface Shape {
  readonly kind: number;
  readonly along: number;
  readonly across: number;
  readonly turned: boolean;
}

/** One kind of sheet cut one way round: strips of length `room`, side by side over `depth`. */
export interface Way {
  readonly sheet: number;
  readonly first: Cutting;
  readonly room: number;
  readonly depth: number;
  /** Narrowest first. */
  readonly shapes: readonly Shape[];
  /** A cell of the tables that bound what it holds, along and across. */
  readonly cell: { readonly along: number; readonly across: number };
}

/** A sheet with its strips, each by the places of its shapes in the way, widest first. */
export interface Filling {
  readonly way: number;
  readonly strips: readonly (readonly number[])[];
}

export const panelArea = ({ length, width }: PanelKind): number => length * width;
