import { catalogue } from "../../functions/catalogue";
import { isMatrix } from "../../functions/describe";
import { NAMESPACE } from "../../functions/formula";
import { type ErrorCell, isErrorCell, type Solve } from "../answer";
import { messageOf } from "../message-of";
import { compared } from "./compared";
import type { FormulaTree } from "./formula-tree";

/** A cell of a value worked out: an error with the sentence known for it, empty where none is. */
export type WorkedCell = string | number | boolean | null | ErrorCell;
export type WorkedRows = readonly (readonly WorkedCell[])[];

/** What only the spreadsheet can work out, by its text in the formula. */
export interface NotKnown {
  readonly notKnown: string;
}

export type Worked = WorkedRows | NotKnown;

/** The cells a part of a formula names, undefined where they could not be had. */
export type CellsOf = (part: FormulaTree) => WorkedRows | undefined;

export const isKnown = (worked: Worked): worked is WorkedRows => Array.isArray(worked);

const OURS = new RegExp(`^${NAMESPACE}\\.`, "i");

/** The function of ours that a name in a formula calls. */
export const ourFunction = (name: string) =>
  OURS.test(name) ? catalogue.find(({ id }) => id === name.replace(OURS, "").toUpperCase()) : undefined;

const failure = (error: unknown): ErrorCell =>
  isErrorCell(error) ? error : { code: "#VALUE!", message: messageOf(error) };

const rowsOf = (answer: unknown): WorkedRows => (Array.isArray(answer) ? (answer as WorkedCell[][]) : [[answer as WorkedCell]]);

const solvedOnce = (solve: Solve, id: string, args: readonly unknown[]): WorkedRows => {
  try {
    return rowsOf(solve(id, args));
  } catch (error) {
    return [[failure(error)]];
  }
};

const isOne = (rows: WorkedRows): boolean => rows.length === 1 && rows[0]?.length === 1;

/** The cell at a place, of a single row or column the one that runs along. */
const cellAt = (rows: WorkedRows, row: number, column: number): WorkedCell | undefined =>
  rows[rows.length === 1 ? 0 : row]?.[rows[0]?.length === 1 ? 0 : column];

/** Does for each place of the ranges given; a range where one value is asked for answers value by value. */
const placeByPlace = (ranges: readonly WorkedRows[], answer: (at: (rows: WorkedRows) => WorkedCell) => WorkedCell): WorkedRows => {
  const height = Math.max(1, ...ranges.map((rows) => rows.length));
  const width = Math.max(1, ...ranges.map((rows) => rows[0]?.length ?? 0));
  return Array.from({ length: height }, (_, row) =>
    Array.from({ length: width }, (__, column) =>
      answer((rows) => {
        // An empty cell is one of the range, what lies beyond it is not.
        const cell = cellAt(rows, row, column);
        return cell === undefined ? { code: "#N/A", message: "" } : cell;
      }),
    ),
  );
};

const called = (solve: Solve, id: string, given: readonly (WorkedRows | undefined)[]): WorkedRows => {
  const parameters = Object.values(ourFunction(`${NAMESPACE}.${id}`)?.parameters ?? {});
  const takesRange = parameters.map(isMatrix);
  const spread = given.filter((rows, place): rows is WorkedRows => rows !== undefined && takesRange[place] !== true && !isOne(rows));
  const args = (at: (rows: WorkedRows) => WorkedCell): unknown[] =>
    given.map((rows, place) => {
      if (rows === undefined) return null;
      if (takesRange[place] === true) return isOne(rows) && rows[0]?.[0] === null ? null : rows;
      return at(rows);
    });
  if (spread.length === 0) return solvedOnce(solve, id, args((rows) => rows[0]?.[0] ?? null));
  return placeByPlace(spread, (at) => solvedOnce(solve, id, args(at))[0]?.[0] ?? null);
};

const numberOf = (cell: WorkedCell): number | undefined => {
  if (cell === null) return 0;
  if (typeof cell === "number") return cell;
  if (typeof cell === "boolean") return cell ? 1 : 0;
  return typeof cell === "string" && cell.trim() !== "" && Number.isFinite(Number(cell)) ? Number(cell) : undefined;
};

const textOf = (cell: WorkedCell): string => (cell === null ? "" : typeof cell === "boolean" ? String(cell).toUpperCase() : String(cell));

const HUNDRED = 100;

const arithmetic: Readonly<Record<string, (one: number, other: number) => number>> = {
  "+": (one, other) => one + other,
  "-": (one, other) => one - other,
  "*": (one, other) => one * other,
  "/": (one, other) => one / other,
  "^": (one, other) => one ** other,
};

const comparisons: Readonly<Record<string, (order: number) => boolean>> = {
  "=": (order) => order === 0,
  "<>": (order) => order !== 0,
  "<": (order) => order < 0,
  "<=": (order) => order <= 0,
  ">": (order) => order > 0,
  ">=": (order) => order >= 0,
};

/** What an operation answers; undefined where only the spreadsheet knows its own rules for these cells. */
const operated = (
  operator: string, one: WorkedCell, other: WorkedCell | undefined, isSheet: boolean,
): WorkedCell | undefined => {
  if (isErrorCell(one)) return one;
  if (isErrorCell(other)) return other;
  const isSo = isSheet ? comparisons[operator] : undefined;
  if (isSo !== undefined) return isSo(compared(one, other ?? null));
  if (operator === "&") return textOf(one) + textOf(other ?? null);
  const first = numberOf(one);
  if (other === undefined) {
    if (first === undefined) return undefined;
    if (operator === "%") return first / HUNDRED;
    return operator === "-" ? -first : first;
  }
  const work = arithmetic[operator];
  const second = numberOf(other);
  if (work === undefined || first === undefined || second === undefined) return undefined;
  if (operator === "/" && second === 0) return { code: "#DIV/0!", message: "" };
  const result = work(first, second);
  return Number.isFinite(result) ? result : { code: "#NUM!", message: "" };
};

/**
 * Functions of the spreadsheet by their names, as far as they are known here; undefined where one does not take what it is given. An
 * argument that is left empty between commas is undefined.
 */
export type SheetFunctions = Readonly<Record<string, (given: readonly (WorkedRows | undefined)[]) => WorkedRows | undefined>>;

/** What a formula is worked out with, and the names that LET has given so far. */
interface Work {
  readonly cellsOf: CellsOf;
  readonly solve: Solve;
  readonly sheet: SheetFunctions | undefined;
  readonly names: ReadonlyMap<string, WorkedRows>;
}

type Call = Extract<FormulaTree, { readonly kind: "call" }>;

/** Whether a cell holds, as IF takes it; an error where it is a text. */
const truthOf = (cell: WorkedCell): boolean | ErrorCell => {
  if (isErrorCell(cell)) return cell;
  const number = typeof cell === "string" ? undefined : numberOf(cell);
  return number === undefined ? { code: "#VALUE!", message: "" } : number !== 0;
};

const nothing: WorkedRows = [[null]];

/** Works out only what the test asks for; of a range of tests, cell by cell. */
const chosen = ({ arguments: [test, yes, no], text }: Call, work: Work): Worked => {
  const tested = test === undefined ? nothing : worked(test, work);
  if (!isKnown(tested)) return tested;
  const branch = (part: FormulaTree | undefined, missing: WorkedCell): Worked => (part === undefined ? [[missing]] : worked(part, work));
  if (isOne(tested)) {
    const truth = truthOf(tested[0]?.[0] ?? null);
    return typeof truth === "object" ? [[truth]] : truth ? branch(yes, null) : branch(no, false);
  }
  const [one, other] = [branch(yes, null), branch(no, false)];
  if (!isKnown(one) || !isKnown(other)) return { notKnown: text };
  return placeByPlace([tested, one, other], (at) => {
    const truth = truthOf(at(tested));
    return typeof truth === "object" ? truth : at(truth ? one : other);
  });
};

const insteadOfErrors = ({ arguments: [value, instead], text }: Call, work: Work): Worked => {
  const found = value === undefined ? nothing : worked(value, work);
  if (!isKnown(found) || !found.some((row) => row.some(isErrorCell))) return found;
  const other = instead === undefined ? nothing : worked(instead, work);
  if (!isKnown(other)) return { notKnown: text };
  return placeByPlace([found, other], (at) => {
    const cell = at(found);
    return isErrorCell(cell) ? at(other) : cell;
  });
};

const nameKey = (name: string): string => name.toLowerCase();

/** LET: names and what they stand for by turns, then what is asked for. */
const named = ({ arguments: given, text }: Call, work: Work): Worked => {
  let names = work.names;
  for (let place = 0; place + 2 < given.length; place += 2) {
    const [name, value] = [given[place], given[place + 1]];
    if (name?.kind !== "other" || value === undefined) return { notKnown: text };
    const found = worked(value, { ...work, names });
    if (!isKnown(found)) return found;
    names = new Map([...names, [nameKey(name.text), found]]);
  }
  const last = given[given.length - 1];
  return last === undefined || given.length % 2 === 0 ? { notKnown: text } : worked(last, { ...work, names });
};

/** Functions of the spreadsheet that do not work out everything they are given, or know what others do not. */
const PARTLY: Readonly<Record<string, (call: Call, work: Work) => Worked>> = { IF: chosen, IFERROR: insteadOfErrors, LET: named };

const calledHere = (tree: Call, work: Work): Worked => {
  const ours = ourFunction(tree.name);
  const name = tree.name.toUpperCase();
  const partly = work.sheet === undefined || ours !== undefined ? undefined : PARTLY[name];
  if (partly !== undefined) return partly(tree, work);
  const given = tree.arguments.map((argument) => (argument === undefined ? undefined : worked(argument, work)));
  const missing = given.find((rows): rows is NotKnown => rows !== undefined && !isKnown(rows));
  const rows = given as readonly (WorkedRows | undefined)[];
  if (ours !== undefined) return missing ?? called(work.solve, ours.id, rows);
  return (missing === undefined ? work.sheet?.[name]?.(rows) : undefined) ?? { notKnown: tree.text };
};

const operatedHere = (tree: Extract<FormulaTree, { readonly kind: "operation" }>, work: Work): Worked => {
  const given = tree.operands.map((operand) => worked(operand, work));
  const missing = given.find((rows) => !isKnown(rows));
  if (missing !== undefined) return missing;
  const [one = [], other] = given as readonly WorkedRows[];
  let isOdd = false;
  const rows = placeByPlace(other === undefined ? [one] : [one, other], (at) => {
    const answer = operated(tree.operator, at(one), other === undefined ? undefined : at(other), work.sheet !== undefined);
    isOdd ||= answer === undefined;
    return answer ?? null;
  });
  return isOdd ? { notKnown: tree.text } : rows;
};

const worked = (tree: FormulaTree, work: Work): Worked => {
  switch (tree.kind) {
    case "value":
      return [[tree.value]];
    case "error":
      return [[{ code: tree.code, message: "" }]];
    case "rows":
      return tree.rows;
    case "cells":
      return work.cellsOf(tree) ?? { notKnown: tree.text };
    case "call":
      return calledHere(tree, work);
    case "operation":
      return operatedHere(tree, work);
    case "other":
      return work.names.get(nameKey(tree.text)) ?? { notKnown: tree.text };
  }
};

/** Works a part of a formula out with our own functions, with those of the spreadsheet that are given, and with cells as they stand. */
export const workedOut = (tree: FormulaTree, cellsOf: CellsOf, solve: Solve, sheet?: SheetFunctions): Worked =>
  worked(tree, { cellsOf, solve, sheet, names: new Map() });
