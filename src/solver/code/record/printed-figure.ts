import { Exact } from "../../length/exact";
import { parseLength } from "../../length/parse-length";
import { isProblem } from "../../problem";
import { type Figure, type PublishedUnit, UNIT_SIZE } from "../profile";

/** A number as codes print it: `36`, `24.6`, `3/8`, `7 3/4`, `6 ft 8 in`, `12 ft`. */
const NUMBER = String.raw`\d+ ft(?: \d+(?: \d+/\d+)? in)?|\d+ \d+/\d+|\d+/\d+|\d+(?:\.\d+)?`;
const NUMBERS = new RegExp(NUMBER, "g");
/** A number with the unit behind it; where there is none, what it counts stands there. */
const FIGURE = new RegExp(String.raw`^(${NUMBER})(?: (in|mm|cm|m|sq in|degrees)\b)?`);
const UNITS: Readonly<Record<string, PublishedUnit>> = { in: "in", mm: "mm", cm: "cm", m: "mm", "sq in": "sq in", degrees: "deg" };
const LENGTHS: readonly string[] = ["in", "mm", "cm", "m"];

const unreadable = (text: string): never => {
  throw new Error(`No figure can be read in "${text}".`);
};

/** The figure of a number printed in `word`, which is a unit of codes or metres. */
const read = (number: string, word: string): Figure => {
  const unit = UNITS[word] ?? (word as PublishedUnit);
  if (!LENGTHS.includes(word)) return { value: new Exact(number), unit, printed: number };
  const text = word === unit ? number : `${number} ${word}`;
  const size = parseLength(number.includes("ft") ? number : `${number} ${word}`, "in");
  return isProblem(size) ? unreadable(number) : { value: size.div(UNIT_SIZE[unit]), unit, printed: text };
};

/** Every figure of a text in its order, all in one unit: of `34 to 38`, `more than 30`, `4 or more risers`. */
export const figuresIn = (text: string, unit: PublishedUnit): readonly Figure[] =>
  (text.match(NUMBERS) ?? []).map((number) => read(number, unit));

/** One figure printed with its unit, or with what it counts: `printed("4 3/8 in")`, `printed("3 risers")`. */
export const printed = (text: string): Figure => {
  const [, number, word] = FIGURE.exec(text) ?? unreadable(text);
  return read(number ?? "", word ?? (text.includes(" ft") ? "in" : "count"));
};

/** Two figures printed with one unit: `span("34 to 38 in")`. */
export const span = (text: string): { readonly min: Figure; readonly max: Figure } => {
  const [low, high] = text.split(" to ");
  if (low === undefined || high === undefined) return unreadable(text);
  const max = printed(high);
  return { min: read(low, max.unit), max };
};

/** A slope, rise over run: `slope("1:20")`. */
export const slope = (text: string): { readonly rise: number; readonly run: number; readonly printed: string } => {
  const [, rise, run] = /^(\d+):(\d+)$/.exec(text) ?? unreadable(text);
  return { rise: Number(rise), run: Number(run), printed: text };
};
