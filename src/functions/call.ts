import { isBadRow } from "../solver/bad-row";
import { measure, type Length, type Unit } from "../solver/length/length";
import { isProblem, type Problem } from "../solver/problem";
import {
  type Answer, type AnswerCells, type Failed, failed, type Given, type GivenCells, givenCells, givenFor, isEmpty, isEmptyOrZero, isFailed, isInvocation,
} from "./cells";
import {
  type Declaration, isRange, type Measured, MOST_CELLS, mostRows, type Parameter, type ResultCell, type ResultColumns, type ResultKind, type ResultRow,
} from "./declare";
import { headingPlaces } from "./headings";
import { ownHeadings } from "./own-headings";
import { readStair } from "./read-stair";
import { readTable } from "./read-table";
import { readAngle, readChoice, readCount, readFlag, readLength, readMoney, readNumber, readRate, readReading, readText } from "./read-value";
import { say, sentence } from "./say";
import { unitOfLengths } from "./unit-of-lengths";
import { words } from "../solver/words";

/** What a call works in: the unit of its bare numbers; undefined where a function has none and its numbers, in inches, say none. */
interface Context {
  readonly declaration: Declaration;
  readonly unit: Unit | undefined;
}

type Arguments = ReadonlyMap<string, GivenCells>;

const isZeroPossible = (parameter: Parameter): boolean =>
  ("sign" in parameter && parameter.sign !== "positive") || ["rate", "angle", "flag", "text", "choice", "unit"].includes(parameter.kind);

const readOne = (name: string, cell: Given, parameter: Parameter, unit: Unit | undefined): unknown => {
  switch (parameter.kind) {
    case "length":
      return readLength(name, cell, unit, parameter);
    case "reading":
      return readReading(name, cell, unit, parameter);
    case "count":
      return readCount(name, cell, parameter);
    case "number":
      return readNumber(name, cell, parameter);
    case "rate":
      return readRate(name, cell, parameter.of);
    case "money":
      return readMoney(name, cell, parameter.sign);
    case "angle":
      return readAngle(name, cell);
    case "choice":
      return readChoice(name, cell, parameter.options);
    case "unit":
      return readChoice(name, cell, ["in", "mm"]);
    case "flag":
      return readFlag(name, cell);
    case "text":
      return readText(name, cell);
    default:
      return undefined;
  }
};

/** A default is written as a user would type it, in inches where it is a bare number. */
const defaultOf = (name: string, parameter: Parameter, unit: Unit | undefined): unknown => {
  const { default: value } = parameter;
  if (value === undefined) return undefined;
  const length = parameter.kind === "length" || parameter.kind === "reading";
  if (!length) return readOne(name, value, parameter, unit);
  const inches = readLength(name, value, "in", { sign: "any" });
  if (isFailed(inches) || parameter.kind === "length") return inches;
  return measure(inches, unit ?? "in");
};

/** The value of an argument that takes one cell; undefined means it was left out and nothing stands in for it. */
const argument = (name: string, cells: GivenCells | undefined, parameter: Parameter, unit: Unit | undefined): unknown => {
  const rows = cells?.length ?? 0;
  const columns = cells?.[0]?.length ?? 0;
  if (rows * columns > 1) return failed(say.oneValue(name, rows, columns));
  const cell = cells?.[0]?.[0] ?? null;
  if (!isEmpty(cell)) return readOne(name, cell, parameter, unit);
  if (parameter.default !== undefined) return defaultOf(name, parameter, unit);
  if (parameter.optional === true || parameter.defaultsTo !== undefined) return undefined;
  return failed(say.missing(name, parameter.says));
};

const isLeftOut = (cells: GivenCells | undefined): boolean => cells === undefined || (cells.length === 1 && cells[0]?.length === 1 && isEmpty(cells[0][0] ?? null));

/** Rows up to the last that has something in it; whole columns of a sheet end in empty ones. */
const rowsInUse = (cells: GivenCells): number => {
  let count = cells.length;
  while (count > 0 && cells[count - 1]?.every(isEmptyOrZero) === true) count -= 1;
  return count;
};

/** Whether the first row that has something in it says the columns of a table: it is none of its rows. */
const isHeaded = (id: string, name: string, cells: GivenCells, parameter: Parameter): boolean => {
  const first = parameter.kind === "table" ? cells.find((row) => !row.every(isEmptyOrZero)) : undefined;
  return parameter.kind === "table" && first !== undefined && headingPlaces(name, first, parameter.table, ownHeadings(id)) !== undefined;
};

/** What is wrong with the size of a range; where the answer has the shape of the range, every cell of it counts. */
const tooLarge = (id: string, name: string, cells: GivenCells, parameter: Parameter): Failed | undefined => {
  const [rows, columns] = size(cells);
  if (takesEach(parameter)) return rows * columns > MOST_CELLS ? failed(say.tooMany(name, rows * columns, "cells", MOST_CELLS)) : undefined;
  if (!isRange(parameter)) return undefined;
  const most = mostRows(parameter);
  if (parameter.kind === "lengths" && columns > 1) return rows * columns > most ? failed(say.tooMany(name, rows * columns, "cells", most)) : undefined;
  const count = parameter.kind === "lengths" || rows <= most ? rows : rowsInUse(cells) - (isHeaded(id, name, cells, parameter) ? 1 : 0);
  return count > most ? failed(say.tooMany(name, count, "rows", most)) : undefined;
};

/** The value of an argument that takes a range. */
const range = (name: string, cells: GivenCells | undefined, parameter: Parameter, { declaration, unit }: Context): unknown => {
  if (isLeftOut(cells) || cells === undefined) {
    return parameter.optional === true ? undefined : failed(say.missing(name, parameter.says));
  }
  const [only] = cells;
  if (cells.length === 1 && only?.length === 1 && only[0] !== undefined && isFailed(only[0])) return givenFor(name, only[0]);
  if (parameter.kind === "stair") return readStair(name, cells);
  if (parameter.kind === "table") {
    const rows = readTable(name, parameter.table, cells, unit, ownHeadings(declaration.id));
    if (isFailed(rows)) return rows;
    return (parameter.badRows === "refuse" ? rows.find(isBadRow)?.bad : undefined) ?? rows;
  }
  if (parameter.kind === "lengths") return lengthsOf(name, cells, parameter, unit);
  return cells;
};

interface Lengths {
  readonly rows: readonly (readonly (Length | Failed | undefined)[])[];
}

const lengthsOf = (name: string, cells: GivenCells, parameter: Extract<Parameter, { kind: "lengths" }>, unit: Unit | undefined): Lengths | Failed => {
  const rows = cells.map((row, line) =>
    row.map((cell) =>
      isEmptyOrZero(cell) && parameter.sign === "positive" ? undefined : readLength(`${name}, row ${line + 1}`, isEmpty(cell) ? 0 : cell, unit, parameter),
    ),
  );
  const bad = parameter.badCells === "refuse" ? rows.flat().find(isFailed) : undefined;
  return bad ?? (rows.flat().every((cell) => cell === undefined) ? failed(say.emptyOrZero(name)) : { rows });
};

const takesEach = (parameter: Parameter): boolean => "each" in parameter && parameter.each === true;

/** The sentence of a problem, worded by the declaration. */
const worded = (found: Problem, { declaration, unit }: Context): Failed => {
  const wording = declaration.problems[found.problem];
  if (wording === undefined) throw new Error(`${declaration.id} does not word the problem "${found.problem}"`);
  return failed(sentence(wording.says, found.details, unit ?? "in"), wording.cell);
};

const isMeasured = (value: unknown): value is Measured =>
  typeof value === "object" && value !== null && "kind" in value && "value" in value;

const finite = (value: number, context: Context): Answer => {
  if (!Number.isFinite(value)) return failed(`${context.declaration.id}: the numbers given lead to no finite answer`);
  return value === 0 ? 0 : value;
};

const answerCell = (value: ResultCell | boolean, kind: ResultKind, context: Context): Answer => {
  if (value === undefined) return "";
  if (typeof value === "string" || typeof value === "boolean") return value;
  if (typeof value === "number") return finite(value, context);
  if (isFailed(value)) return value;
  if (isProblem(value)) return worded(value, context);
  if (isMeasured(value)) return answerCell(value.value, value.kind, context);
  return finite(kind === "length" ? measure(value, context.unit ?? "in") : value.toNumber(), context);
};

/** What stands in the unit column beside a value. */
const unitText = (value: ResultCell, unit: Unit | undefined): string | undefined => {
  if (!isMeasured(value)) return undefined;
  if (value.kind === "length" || value.kind === "reading") return unit ?? "in";
  return value.kind === "angle" ? "deg" : "";
};

const TEXTUAL: readonly ResultKind[] = ["text", "label"];

const answerRow = (row: ResultRow, columns: ResultColumns, context: Context): Answer[] => {
  const bad = row.bad === undefined ? undefined : isProblem(row.bad) ? worded(row.bad, context) : row.bad;
  return Object.entries(columns).map(([key, column]) => {
    if (column.kind === "unit") return context.unit ?? "in";
    const value = key === "unit" ? (row[key] ?? unitText(row["value"], context.unit)) : row[key];
    if (value !== undefined || bad === undefined) return answerCell(value, column.kind, context);
    if (key === "note") return bad.says;
    return TEXTUAL.includes(column.kind) ? "" : bad;
  });
};

const headingsOf = (columns: ResultColumns): Answer[] => Object.keys(columns).map(words);

const solved = (filled: ReadonlyMap<string, unknown>, context: Context, shape: Lengths | undefined): Answer | AnswerCells => {
  const { declaration } = context;
  const given: Record<string, unknown> = Object.fromEntries(filled);
  for (const [name, parameter] of Object.entries(declaration.parameters)) {
    if (given[name] === undefined && parameter.defaultsTo !== undefined) given[name] = given[parameter.defaultsTo];
  }
  const answer = declaration.solve(given as never);
  if (isProblem(answer)) return worded(answer, context);
  const { result } = declaration;
  if (result.kind === "table") {
    const rows = (answer as readonly ResultRow[]).map((row) => answerRow(row, result.columns, context));
    return given["headings"] === false ? rows : [headingsOf(result.columns), ...rows];
  }
  if (result.kind === "row") {
    const row = answer as ResultRow;
    const columns = Object.fromEntries(Object.entries(result.columns).filter(([key, { mayLack }]) => mayLack !== true || row[key] !== undefined));
    return [answerRow(row, columns, context)];
  }
  if (result.kind === "lengths") {
    const lengths = (answer as readonly (Length | Problem | undefined)[]).values();
    return (shape?.rows ?? []).map((row) =>
      row.map((cell) => {
        if (cell === undefined) return "";
        const length = lengths.next().value;
        return isFailed(cell) ? cell : answerCell(length, "length", context);
      }),
    );
  }
  return answerCell(answer as ResultCell, result.kind === "cell" ? "value" : result.kind, context);
};

const once = (given: Arguments, context: Context): Answer | AnswerCells => {
  const filled = new Map<string, unknown>();
  let shape: Lengths | undefined;
  for (const [name, parameter] of Object.entries(context.declaration.parameters)) {
    const cells = given.get(name);
    const value = isRange(parameter) ? range(name, cells, parameter, context) : argument(name, cells, parameter, context.unit);
    if (isFailed(value)) return value;
    if (parameter.kind === "lengths") {
      shape = value as Lengths;
      filled.set(name, shape.rows.flat().filter((cell) => cell !== undefined).map((cell) => (isFailed(cell) ? undefined : cell)));
    } else filled.set(name, value);
  }
  return solved(filled, context, shape);
};

const size = (cells: GivenCells): readonly [number, number] => [cells.length, cells[0]?.length ?? 0];

/** Answers cell by cell where a range stands for one value; undefined where none does. */
const lifted = (given: Arguments, context: Context): AnswerCells | Failed | undefined => {
  const ranges = Object.entries(context.declaration.parameters).flatMap(([name, parameter]) => {
    const cells = given.get(name);
    return takesEach(parameter) && cells !== undefined && cells.flat().length > 1 ? [{ name, parameter, cells }] : [];
  });
  const [first] = ranges;
  if (first === undefined) return undefined;
  const [rows, columns] = size(first.cells);
  for (const { name, cells } of ranges) {
    const [r, c] = size(cells);
    if (r !== rows || c !== columns) return failed(say.shapes(name, r, c, first.name, rows, columns));
  }
  return Array.from({ length: rows }, (_, row) =>
    Array.from({ length: columns }, (__, column): Answer => {
      const here = new Map(given);
      for (const { name, parameter, cells } of ranges) {
        const cell = cells[row]?.[column] ?? null;
        if (typeof cell === "string" && isEmpty(cell)) return "";
        if (isEmptyOrZero(cell) && !isZeroPossible(parameter)) return "";
        here.set(name, [[cell === null ? 0 : cell]]);
      }
      const answer = once(here, context);
      return Array.isArray(answer) ? failed(say.oneValue(first.name, rows, columns)) : answer;
    }),
  );
};

/** The unit of bare numbers: the `unit` argument, the unit row of the stair table, or, with neither, what the lengths given say. */
const unitOf = (declaration: Declaration, given: Arguments): Unit | undefined | Failed => {
  for (const [name, parameter] of Object.entries(declaration.parameters)) {
    if (parameter.kind === "unit") return argument(name, given.get(name), parameter, undefined) as Unit | Failed;
    if (parameter.kind === "stair") {
      const cells = given.get(name);
      const read = cells === undefined || isLeftOut(cells) ? undefined : readStair(name, cells);
      return read === undefined || isFailed(read) ? undefined : read.unit;
    }
  }
  return declaration.convertsNotation === true ? undefined : unitOfLengths(declaration, given);
};

/**
 * Calls a worksheet function with cells as a host passes them. A value, a table of values and errors, or the error of the whole call.
 * The host's own object, which comes last, is dropped first: while it still keeps the metadata of an earlier version, that is where an
 * argument of this one stands. Arguments beyond the declared ones are passed over.
 */
export const call = (declaration: Declaration, passed: readonly unknown[]): Answer | AnswerCells => {
  const raw = isInvocation(passed[passed.length - 1]) ? passed.slice(0, -1) : passed;
  const given = new Map<string, GivenCells>();
  for (const [index, [name, parameter]] of Object.entries(declaration.parameters).entries()) {
    if (raw[index] === undefined || raw[index] === null) continue;
    const cells = givenCells(raw[index]);
    const large = tooLarge(declaration.id, name, cells, parameter);
    if (large !== undefined) return large;
    given.set(name, cells);
  }
  const unit = unitOf(declaration, given);
  if (isFailed(unit)) return unit;
  const context: Context = { declaration, unit };
  return lifted(given, context) ?? once(given, context);
};
