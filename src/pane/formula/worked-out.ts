import { catalogue } from "../../functions/catalogue";
import { isMatrix } from "../../functions/describe";
import { NAMESPACE } from "../../functions/formula";
import { type ErrorCell, isErrorCell, type Solve } from "../answer";
import { messageOf } from "../message-of";
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

const keyOf = (cell: WorkedCell | undefined): string =>
  typeof cell === "number" ? String(cell) : `text ${textOf(cell ?? null).toUpperCase()}`;

/** Whether two cells differ, as a spreadsheet compares them: letters of either case are alike, and an empty cell is an empty text. */
const differ = (one: WorkedCell, other: WorkedCell | undefined): boolean => keyOf(one) !== keyOf(other);

/** What an operation answers; undefined where only the spreadsheet knows its own rules for these cells. */
const operated = (
  operator: string, one: WorkedCell, other: WorkedCell | undefined, isSheet: boolean,
): WorkedCell | undefined => {
  if (isErrorCell(one)) return one;
  if (isErrorCell(other)) return other;
  if (isSheet && operator === "<>") return differ(one, other);
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

/** Functions of the spreadsheet by their names, as far as they are known here; undefined where one does not take what it is given. */
export type SheetFunctions = Readonly<Record<string, (given: readonly WorkedRows[]) => WorkedRows | undefined>>;

/** Works a part of a formula out with our own functions, with those of the spreadsheet that are given, and with cells as they stand. */
export const workedOut = (tree: FormulaTree, cellsOf: CellsOf, solve: Solve, sheet?: SheetFunctions): Worked => {
  switch (tree.kind) {
    case "value":
      return [[tree.value]];
    case "error":
      return [[{ code: tree.code, message: "" }]];
    case "rows":
      return tree.rows;
    case "cells":
      return cellsOf(tree) ?? { notKnown: tree.text };
    case "call": {
      const ours = ourFunction(tree.name);
      const given = tree.arguments.map((argument) => (argument === undefined ? undefined : workedOut(argument, cellsOf, solve, sheet)));
      const missing = given.find((rows): rows is NotKnown => rows !== undefined && !isKnown(rows));
      if (ours === undefined) {
        const rows = given.flatMap((one) => (one !== undefined && isKnown(one) ? [one] : []));
        return (missing === undefined ? sheet?.[tree.name.toUpperCase()]?.(rows) : undefined) ?? { notKnown: tree.text };
      }
      return missing ?? called(solve, ours.id, given as readonly (WorkedRows | undefined)[]);
    }
    case "operation": {
      const given = tree.operands.map((operand) => workedOut(operand, cellsOf, solve, sheet));
      const missing = given.find((rows) => !isKnown(rows));
      if (missing !== undefined) return missing;
      const [one = [], other] = given as readonly WorkedRows[];
      let isOdd = false;
      const rows = placeByPlace(other === undefined ? [one] : [one, other], (at) => {
        const answer = operated(tree.operator, at(one), other === undefined ? undefined : at(other), sheet !== undefined);
        isOdd ||= answer === undefined;
        return answer ?? null;
      });
      return isOdd ? { notKnown: tree.text } : rows;
    }
    default:
      return { notKnown: tree.text };
  }
};
