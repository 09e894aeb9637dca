import { Exact } from "../length/exact";
import { plainMarks } from "./plain-marks";

/** A unit that goods are counted in. Amounts of two units that measure the same convert by their sizes, exactly. */
export interface GoodsUnit {
  readonly name: string;
  readonly measures: string;
  readonly size: Exact;
}

const known = (
  name: string,
  measures: string,
  size: number | string,
  ...also: readonly string[]
): readonly [GoodsUnit, readonly string[]] => [{ name, measures, size: new Exact(size) }, [name.replace(" ", ""), ...also]];

const COUNTED = known("each", "count", 1, "ea", "pc", "piece", "no");

/** Lengths in millimetres, areas in their squares, time in minutes; an inch is 25.4 mm (international yard and pound agreement, 1959). */
const KNOWN = [
  COUNTED,
  known("dozen", "count", 12, "doz", "dz"),
  known("in", "length", "25.4", "inch", "inches", '"', "''"),
  known(
    "ft",
    "length",
    "304.8",
    "foot",
    "feet",
    "'",
    "lf",
    "linft",
    "linfoot",
    "linfeet",
    "linealft",
    "linealfoot",
    "linealfeet",
    "linearft",
    "linearfoot",
    "linearfeet",
  ),
  known("yd", "length", "914.4", "yard"),
  known("m", "length", 1000, "metre", "meter", "lm", "linm", "linealmetre", "linearmetre", "linearmeter"),
  known("cm", "length", 10, "centimetre", "centimeter"),
  known("mm", "length", 1, "millimetre", "millimeter"),
  known("bf", "board feet", 1, "bdft", "boardft", "boardfoot", "boardfeet", "fbm", "bm"),
  known("mbf", "board feet", 1000),
  known("sq ft", "area", "92903.04", "sf", "ft2", "squareft", "squarefoot", "squarefeet"),
  known("sq m", "area", 1000000, "m2", "squaremetre", "squaremeter"),
  known("sheet", "sheets", 1, "sht"),
  known("hour", "time", 60, "hr", "h"),
  known("minute", "time", 1, "min"),
];

const UNITS: ReadonlyMap<string, GoodsUnit> = new Map(
  KNOWN.flatMap(([unit, spellings]) => spellings.map((spelling) => [spelling, unit] as const)),
);

/** What a quantity counts where its table gives no unit at all: pieces. */
export const [EACH] = COUNTED;

/** The unit a text names, without regard to case, full stops, spaces and plural. A word that is not in the list is itself alone. */
export const goodsUnit = (text: string): GoodsUnit => {
  const spelling = plainMarks(text).replace(/[.\s]/g, "").replace(/²/g, "2");
  const one = spelling.replace(/(ch|sh|ss|x)es$|([^s])s$/, "$1$2");
  return UNITS.get(spelling) ?? UNITS.get(one) ?? { name: text.trim(), measures: `only ${one}`, size: new Exact(1) };
};

export const isConvertible = (one: GoodsUnit, other: GoodsUnit): boolean => one.measures === other.measures;

/** Whether two units are one and the same. */
export const isSameUnit = (one: GoodsUnit, other: GoodsUnit): boolean => isConvertible(one, other) && one.size.eq(other.size);

/** So many of one unit in another that measures the same; for a figure per unit the two change places. */
export const converted = (amount: Exact, from: GoodsUnit, to: GoodsUnit): Exact => amount.times(from.size).div(to.size);

/** Whether a unit measures time, so that what it costs may be labour. */
export const isTime = (unit: GoodsUnit): boolean => unit.measures === "time";

/** Whether a unit counts board feet. */
export const isBoardFeet = (unit: GoodsUnit): boolean => unit.measures === "board feet";
