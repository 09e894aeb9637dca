/** A flat place on a board: along it from the end called 0, and across it from the edge measured from, in the unit of the drawing. */
export interface Area {
  readonly along: number;
  readonly across: number;
  readonly length: number;
  readonly width: number;
}

export interface DrawnPiece {
  readonly area: Area;
  /** What it is; nothing where it has no name. */
  readonly label: string;
  readonly size: string;
  /** Where it begins. */
  readonly place: string;
}

/** What is left of a board, with its size in words. */
export interface DrawnRest {
  readonly area: Area;
  readonly size: string;
  readonly isKept: boolean;
}

/** What of a board cannot be used, over its whole width, with what it is in words. */
export interface Spoilt {
  readonly from: number;
  readonly to: number;
  readonly text: string;
}

/** From one place of a board to another. */
export interface CutLine {
  readonly from: readonly [along: number, across: number];
  readonly to: readonly [along: number, across: number];
}

/** A board or sheet as it is cut, or a panel as it is glued. */
export interface CutBoard {
  /** What it is called among its like. */
  readonly name: string;
  /** What else is said of it: its size, its grade, what is done first. */
  readonly facts: string;
  readonly length: number;
  readonly width: number;
  readonly pieces: readonly DrawnPiece[];
  readonly rests: readonly DrawnRest[];
  readonly spoilt: readonly Spoilt[];
  /** Trims and edges. */
  readonly lost: readonly Area[];
  readonly firstCuts: readonly CutLine[];
}

export const isArea = ({ length, width }: Area, hair = 1e-6): boolean => length > hair && width > hair;
