import { Exact } from "../solver/length/exact";
import { type Length, lengthOf, measure, type Unit } from "../solver/length/length";
import { parseLength } from "../solver/length/parse-length";
import { isProblem } from "../solver/problem";
import type { Given } from "./cells";
import type { RateOf, Sign } from "./columns";
import {
  type LengthRule,
  type NumberRule,
  readAngle,
  readChoice,
  readCount,
  readDate,
  readFlag,
  readLabel,
  readLength,
  readMoney,
  readNumber,
  readRate,
  readReading,
  readText,
} from "./read-value";

interface Rules {
  readonly length: LengthRule;
  readonly reading: LengthRule;
  readonly count: NumberRule;
  readonly number: NumberRule;
  readonly rate: { readonly of: RateOf };
  readonly money: { readonly sign: Sign };
  readonly angle: object;
  readonly date: object;
  readonly choice: { readonly options: readonly string[] };
  readonly unit: object;
  readonly flag: object;
  readonly text: object;
  readonly label: object;
}

type CellKind = keyof Rules;

/** What is declared of one cell, an argument of one value or a column of a table, as far as reading it goes. */
export type CellRule = { readonly [K in CellKind]: Rules[K] & { readonly kind: K; readonly default?: unknown } }[CellKind];

interface Kind<K extends CellKind> {
  /** What kind of value it is, in words. */
  readonly says: string;
  /** Whether 0 is a value of it, whatever its sign. */
  readonly hasZero?: true;
  readonly read: (name: string, cell: Given, rule: Rules[K], unit: Unit | undefined) => unknown;
}

/** All that differs from one kind of cell to another. */
export const KINDS: { readonly [K in CellKind]: Kind<K> } = {
  length: { says: "length", read: (name, cell, rule, unit) => readLength(name, cell, unit, rule) },
  reading: { says: "length", read: (name, cell, rule, unit) => readReading(name, cell, unit, rule) },
  count: { says: "whole number", read: readCount },
  number: { says: "number", read: readNumber },
  rate: { says: "rate", hasZero: true, read: (name, cell, { of }) => readRate(name, cell, of) },
  money: { says: "money", read: (name, cell, { sign }) => readMoney(name, cell, sign) },
  angle: { says: "degrees", hasZero: true, read: readAngle },
  date: { says: "date", read: readDate },
  choice: { says: "one of", hasZero: true, read: (name, cell, { options }) => readChoice(name, cell, options) },
  unit: { says: "in or mm", hasZero: true, read: (name, cell) => readChoice(name, cell, ["in", "mm"]) },
  flag: { says: "TRUE or FALSE", hasZero: true, read: readFlag },
  text: { says: "text", hasZero: true, read: readText },
  label: { says: "text or number", hasZero: true, read: readLabel },
};

/** The value of a cell that holds something, as its kind is read. */
export const readCell = (name: string, cell: Given, rule: CellRule, unit: Unit | undefined): unknown =>
  (KINDS[rule.kind] as Kind<CellKind>).read(name, cell, rule as never, unit);

/** Whether a kind holds lengths, one or many. */
export const isLengthKind = (kind: string | undefined): boolean => kind === "length" || kind === "reading" || kind === "lengths";

const lengths = new Map<string | number, Length>();

/** A default length is written as a user would type it, in inches where it is a bare number, and read once. */
const defaultLength = (written: string | number): Length => {
  const known = lengths.get(written);
  if (known !== undefined) return known;
  const read = typeof written === "number" ? lengthOf(written, "in") : parseLength(written, "in");
  if (isProblem(read)) throw new Error(`the default ${written} is no length`);
  lengths.set(written, read);
  return read;
};

/** What stands in where nothing is given, undefined where nothing does. */
export const defaultOf = (rule: CellRule, unit: Unit | undefined): unknown => {
  const { default: written } = rule;
  if (written === undefined) return undefined;
  if (rule.kind === "rate" || rule.kind === "money") return new Exact(written as number);
  if (!isLengthKind(rule.kind)) return written;
  const length = defaultLength(written as string | number);
  return rule.kind === "length" ? length : measure(length, unit ?? "in");
};
