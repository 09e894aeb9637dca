import type { Column, Table } from "./columns";
import { type Declaration, isRange, MOST_CELLS, mostRows, type Parameter, type RangeParameter, takesEach } from "./declare";
import { isLengthKind, KINDS } from "./kinds";
import { parseLength } from "../solver/length/parse-length";
import { isProblem } from "../solver/problem";
import { grouped, inBothUnits } from "./say";
import { STAIR_LABELS, type StairLabel } from "../solver/stair-labels";
import { words } from "../solver/words";
import { stair } from "./tables";

/** A default length, which is inches whatever the unit of the call; 0 is 0 in any unit. */
const defaultInches = ({ kind, default: value }: Parameter): string | undefined =>
  isLengthKind(kind) && value !== undefined && value !== 0 ? String(value) : undefined;

/** An argument's default as a user would type it; empty where there is none. */
export const defaultText = (parameter: Parameter): string => {
  if (parameter.defaultsTo !== undefined) return parameter.defaultsTo;
  const inches = defaultInches(parameter);
  if (inches !== undefined) return `${inches}"`;
  const { default: value } = parameter;
  if (value === undefined) return "";
  if (typeof value === "boolean") return value ? "TRUE" : "FALSE";
  return parameter.kind === "choice" || parameter.kind === "unit" ? `"${value}"` : String(value);
};

/** An argument's default in words, a length in both units: 1 1/4 in (31.75 mm). */
export const defaultSaid = (parameter: Parameter): string => {
  const inches = defaultInches(parameter);
  const length = inches === undefined ? undefined : parseLength(inches, "in");
  return length === undefined || isProblem(length) ? defaultText(parameter) : inBothUnits(length);
};

export const isOmissible = (parameter: Parameter): boolean =>
  parameter.default !== undefined || parameter.optional === true || parameter.defaultsTo !== undefined;

/** Arguments as the help shows them: `RISERS(totalRise, [maxRise = 7 3/4"], [unit = "in"])`. */
export const signature = (declaration: Declaration): string => {
  const parts = Object.entries(declaration.parameters).map(([name, parameter]) => {
    const value = defaultText(parameter);
    return isOmissible(parameter) ? `[${name}${value === "" ? "" : ` = ${value}`}]` : name;
  });
  return `${declaration.id}(${parts.join(", ")})`;
};

const RANGES: Readonly<Record<RangeParameter["kind"], string>> = {
  table: "table",
  stair: "stair table",
  lengths: "column of lengths",
  numbers: "range of numbers",
  cells: "table",
};

/** What kind of value an argument takes, in words. */
export const kindText = (parameter: Parameter): string => {
  if (isRange(parameter))
    return parameter.kind === "stair" ? RANGES.stair : `${RANGES[parameter.kind]}, up to ${grouped(mostRows(parameter))} rows`;
  if (parameter.kind === "rate") return `rate of ${parameter.of}`;
  const inWords = parameter.kind === "length" && parameter.words !== undefined ? `, or ${Object.keys(parameter.words).join(", ")}` : "";
  const crossed = parameter.kind === "length" && parameter.crossed === true ? ", or length x width" : "";
  const kind = parameter.kind === "choice" ? `one of ${parameter.options.join(", ")}` : `${KINDS[parameter.kind].says}${inWords}${crossed}`;
  return takesEach(parameter) ? `${kind}, or a range of up to ${grouped(MOST_CELLS)}` : kind;
};

const columnKind = (column: Column): string => {
  if (column.kind === "choice") return `one of ${column.options.join(", ")}`;
  return column.kind === "flag" ? "yes or no" : KINDS[column.kind].says;
};

export const columnKindText = (column: Column): string =>
  column.words === undefined ? columnKind(column) : `${columnKind(column)}, or ${Object.keys(column.words).map(words).join(", ")}`;

/** The tables a function reads, the stair table among them. */
export const tablesOf = (declaration: Declaration): readonly Table[] =>
  Object.values(declaration.parameters).flatMap((parameter) =>
    parameter.kind === "table" ? [parameter.table] : parameter.kind === "stair" ? [stair] : [],
  );

/** Labels of the stair table that a function reads. */
export const labelsRead = (declaration: Declaration): readonly string[] =>
  Object.entries<StairLabel>(STAIR_LABELS).flatMap(([name, { readBy }]) =>
    readBy.some((reader) => reader === declaration.id) ? [words(name)] : [],
  );

/** Headings of a table result, empty for other results. */
export const resultHeadings = (declaration: Declaration): readonly string[] =>
  declaration.result.kind === "table" || declaration.result.kind === "row" ? Object.keys(declaration.result.columns).map(words) : [];

/** Whether an argument is a rectangle of cells to the host. */
export const isMatrix = (parameter: Parameter): boolean => isRange(parameter) || takesEach(parameter);

/** Whether the result is a rectangle of cells to the host, be it of one cell. */
export const spills = (declaration: Declaration): boolean =>
  ["table", "row", "lengths", "amounts"].includes(declaration.result.kind) || Object.values(declaration.parameters).some(takesEach);
