import { type Effort } from "./effort";
import { type Pattern, type Use } from "./pattern";
import { type Shelf } from "./shelf";

/** How many sticks of each kind a plan may use. */
export interface Limits {
  readonly least: readonly number[];
  readonly most: readonly number[];
}

export const wholeShelf = (shelf: Shelf): Limits => ({
  least: shelf.sticks.map(() => 0),
  most: shelf.sticks.map((stick) => stick.available),
});

/** A piece without room costs so many times the dearest stick, so that no real plan is dearer. */
const SHORTAGE_TIMES = 20;

export const shortagePrice = (shelf: Shelf): number => SHORTAGE_TIMES * Math.max(1, ...shelf.sticks.map((stick) => stick.price));

/** The linear plan of the patterns known so far. */
export interface LinearAnswer {
  readonly cost: number;
  /** What one piece more of each kind would cost. */
  readonly worth: ArrayLike<number>;
  /** What one stick more of each kind would save or cost, where its number is limited. */
  readonly stickWorth: ArrayLike<number>;
  readonly uses: readonly Use[];
  /** Pieces for which the patterns and limits leave no room. */
  readonly shortage: number;
}

/** The linear program that patterns are added to: at least the pieces wanted, within the limits, at least cost. */
export interface Master {
  readonly add: (pattern: Pattern) => void;
  readonly solve: (effort: Effort) => LinearAnswer;
  readonly close: () => void;
}

export type MasterMaker = (shelf: Shelf, limits: Limits) => Master;
