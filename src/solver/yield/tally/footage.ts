import { Exact } from "../../length/exact";
import { INCHES_PER_FOOT, type Length, lengthIn, lengthOf } from "../../length/length";

/**
 * How board feet are counted:
 * surface measure: whole feet, downwards; width x feet / 12 to the nearest whole, exactly a half up, then down, then up; times thickness
 * (NHLA Rules, Measurement & Tally, paragraphs 16 and 18, as its Chief Inspector quotes them, 2015 and 2022; the halves: the answer of a
 * professor of wood science, not read in the Rules).
 * end tally: whole feet, downwards; width to the nearest inch, exactly a half up and down in turn (American Hardwood Export Council,
 * Measurement).
 * exact: as measured (US Navy Engineering Aid basic manual, lumber).
 */
export const FOOTAGE_RULES = ["surface measure", "end tally", "exact"] as const;
export type FootageRule = (typeof FOOTAGE_RULES)[number];

/** So many like boards. */
export interface Boards {
  readonly length: Length;
  readonly width: Length;
  readonly thickness: Length;
  readonly quantity: number;
}

/** What the rule reads of the boards of one row, all of them together but for the feet. */
export interface Footage {
  readonly feet: Exact;
  /** Square feet as the rule counts them. */
  readonly surface: Exact;
  readonly boardFeet: Exact;
}

const FOOT = lengthOf(INCHES_PER_FOOT, "in");
const INCH = lengthOf(1, "in");
const SQUARE_INCHES_PER_FOOT = 144;

/** Quotients of whole parts to the nearest whole, so many alike at a time; exactly a half goes up, the next half down, and so on. */
const inTurn = (): ((of: Exact, each: Exact, quantity: number) => Exact) => {
  let isUpNext = true;
  return (of, each, quantity) => {
    const floor = of.divToInt(each);
    const side = of.minus(floor.times(each)).times(2).cmp(each);
    if (side !== 0) return floor.plus(side > 0 ? 1 : 0).times(quantity);
    const up = isUpNext ? Math.ceil(quantity / 2) : Math.floor(quantity / 2);
    if (quantity % 2 === 1) isUpNext = !isUpNext;
    return floor.times(quantity).plus(up);
  };
};

/** Square feet of each row in turn. */
const surfaces: Readonly<Record<FootageRule, () => (boards: Boards, feet: Exact) => Exact>> = {
  "surface measure": () => {
    const nearest = inTurn();
    return ({ width, quantity }, feet) => nearest(width.times(feet), FOOT, quantity);
  },
  "end tally": () => {
    const nearest = inTurn();
    return ({ width, quantity }, feet) => nearest(width, INCH, quantity).times(feet).div(INCHES_PER_FOOT);
  },
  exact: () => ({ width, length, quantity }) =>
    lengthIn(width, "in").times(lengthIn(length, "in")).times(quantity).div(SQUARE_INCHES_PER_FOOT),
};

/** Board feet of each row as the rule counts them, in the order of rows; stock under 1 in thick counts as 1 in. */
export const footage = (rule: FootageRule, rows: readonly Boards[]): readonly Footage[] => {
  const surfaceOf = surfaces[rule]();
  return rows.map((boards) => {
    const feet = rule === "exact" ? boards.length.div(FOOT) : boards.length.divToInt(FOOT);
    const surface = surfaceOf(boards, feet);
    return { feet, surface, boardFeet: surface.times(Exact.max(1, lengthIn(boards.thickness, "in"))) };
  });
};

/** Decimals that outlast a division and its dust. */
const SETTLED = 20;
export const settled = (boardFeet: Exact): Exact => boardFeet.toDecimalPlaces(SETTLED);

/** Board feet of several rows as a total: to the nearest whole, a half up; exact they stay as they are. */
export const footageTotal = (rule: FootageRule, boardFeet: Exact): Exact =>
  rule === "exact" ? settled(boardFeet) : settled(boardFeet).toDecimalPlaces(0, Exact.ROUND_HALF_UP);
