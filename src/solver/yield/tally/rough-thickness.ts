import { type Length, lengthOf } from "../../length/length";

/** Hardwood as it is called in quarters of an inch, rough, and what it dresses to on both faces. */
export interface RoughThickness {
  readonly name: string;
  readonly rough: Length;
  readonly dressed: Length;
}

const rough = (quarters: number, dressed: number): RoughThickness => ({
  name: `${quarters}/4`,
  rough: lengthOf(quarters, "in").div(4),
  dressed: lengthOf(dressed, "in"),
});

/** 4/4, 5/4 and 8/4: hardwood thickness table of a state extension service; the others from memory. */
export const ROUGH_THICKNESSES: readonly RoughThickness[] = [
  rough(4, 0.8125),
  rough(5, 1.0625),
  rough(6, 1.3125),
  rough(8, 1.75),
  rough(10, 2.25),
  rough(12, 2.75),
];

/** The least rough thickness that dresses to so much; undefined where none does. */
export const roughFor = (finished: Length): RoughThickness | undefined =>
  ROUGH_THICKNESSES.find(({ dressed }) => dressed.gte(finished));
