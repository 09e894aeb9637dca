import { call } from "../functions/call";
import { folded, isFailed } from "../functions/cells";
import type { Columns } from "../functions/columns";
import type { Declaration, ExampleCell, Parameter, ResultKind } from "../functions/declare";
import { resultHeadings } from "../functions/describe";
import { NAMESPACE } from "../functions/formula";
import { isLengthKind } from "../functions/kinds";
import { cellAddress, type CellPlace } from "../sheets/cell-address";
import { resultFormat } from "../sheets/result-looks";
import { TYPED_LENGTH } from "../sheets/sheet-builder";
import type { PlainValue } from "../sheets/sheet-data";
import { isReadOtherwise } from "../sheets/text-cell";
import type { PutCell } from "./host";

/** A call with its arguments laid out: cells from the selected one on, and where among them the formula stands. */
export interface LaidOut {
  readonly cells: readonly (readonly (PutCell | undefined)[])[];
  readonly formula: CellPlace;
}

type Rows = readonly (readonly (PlainValue | null)[])[];

const GENERAL = "General";

const rowsOf = (value: ExampleCell): Rows => (typeof value === "object" && value !== null ? value : [[value]]);

/** What stands for an argument on the sheet: the example's own value, else its default where one is to be seen. */
const valueOf = (parameter: Parameter, given: ExampleCell | undefined): Rows | undefined => {
  if (given !== undefined && given !== null) return rowsOf(given);
  const { default: value } = parameter;
  return value === undefined || value === "" ? undefined : [[value]];
};

/** Which columns of an argument take lengths, so that 1/2 typed there stays a length. */
const lengthColumns = (parameter: Parameter, [headings = []]: Rows): readonly boolean[] => {
  if (parameter.kind === "stair") return [false, true];
  if (parameter.kind !== "table") return headings.map(() => isLengthKind(parameter.kind));
  const columns: Columns = parameter.table.columns;
  return headings.map((heading) =>
    isLengthKind(Object.entries(columns).find(([key]) => folded(key) === folded(String(heading ?? "")))?.[1].kind),
  );
};

const argumentCell = (value: PlainValue | null, isTyped: boolean): PutCell => {
  if (value === null || value === "") return { value: null, format: isTyped ? TYPED_LENGTH : GENERAL };
  if (isTyped && typeof value === "number") return { value: String(value), format: TYPED_LENGTH };
  return { value, format: isTyped || (typeof value === "string" && isReadOtherwise(value)) ? TYPED_LENGTH : GENERAL };
};

const argumentCells = (parameter: Parameter, rows: Rows): PutCell[][] => {
  const isTyped = lengthColumns(parameter, rows);
  return rows.map((row) => row.map((value, column) => argumentCell(value, isTyped[column] === true)));
};

const unitOf = (parameters: readonly (readonly [Parameter, Rows])[]): string => {
  for (const [parameter, rows] of parameters) {
    if (parameter.kind === "unit") return String(rows[0]?.[0]);
    const row = parameter.kind === "stair" ? rows.find(([label]) => folded(String(label ?? "")) === "unit") : undefined;
    if (row !== undefined) return String(row[1]);
  }
  return "in";
};

/** The kind of each column of a result, undefined where all cells are of one. */
const kindsOf = ({ result }: Declaration): readonly ResultKind[] | ResultKind => {
  if (result.kind === "table" || result.kind === "row") return Object.values(result.columns).map(({ kind }) => kind);
  if (result.kind === "lengths") return "length";
  return result.kind === "cell" ? "value" : result.kind;
};

const resultCells = (declaration: Declaration, args: readonly (Rows | undefined)[], unit: string): PutCell[][] => {
  const answer = call(declaration, args.map((rows) => (rows?.length === 1 && rows[0]?.length === 1 ? rows[0][0] : rows)));
  const rows = Array.isArray(answer) ? answer : [[answer]];
  const kinds = kindsOf(declaration);
  const [first] = rows;
  const hasHeadings =
    declaration.result.kind === "table" && resultHeadings(declaration).every((heading, column) => first?.[column] === heading);
  return rows.map((row, line) =>
    row.map((cell, column): PutCell => {
      const kind = typeof kinds === "string" ? kinds : (kinds[column] ?? "text");
      const isNumber = typeof cell === "number" || isFailed(cell) || typeof kinds !== "string";
      return { format: hasHeadings && line === 0 || !isNumber ? GENERAL : (resultFormat(kind, unit) ?? GENERAL) };
    }),
  );
};

/**
 * The first example of a function that answers, as it is inserted at a place: each argument under its name with the example's value or its
 * default, the formula under them reading those cells, and number formats for all it spills.
 */
export const laidOut = (declaration: Declaration, at: CellPlace): LaidOut => {
  const example = declaration.examples.find((one) => !("fails" in one)) ?? declaration.examples[0];
  const shown = Object.entries(declaration.parameters).map(([name, parameter]) => ({
    name, parameter, rows: valueOf(parameter, (example.given as Readonly<Record<string, ExampleCell | undefined>>)[name]),
  }));
  const cells: (PutCell | undefined)[][] = [];
  const references = shown.map(({ name, parameter, rows }) => {
    if (rows === undefined) return "";
    const label: PutCell = { value: name, format: GENERAL };
    const values = argumentCells(parameter, rows);
    const isOneCell = values.length === 1 && values[0]?.length === 1;
    const row = at.row + cells.length + (isOneCell ? 0 : 1);
    const column = at.column + (isOneCell ? 1 : 0);
    cells.push(...(isOneCell ? [[label, ...(values[0] ?? [])]] : [[label], ...values]));
    const last = { row: row + values.length - 1, column: column + (values[0]?.length ?? 1) - 1 };
    return isOneCell ? cellAddress({ row, column }) : `${cellAddress({ row, column })}:${cellAddress(last)}`;
  });
  while (references[references.length - 1] === "") references.pop();
  const args = shown.map(({ rows }) => rows);
  const results = resultCells(
    declaration,
    args,
    unitOf(shown.flatMap(({ parameter, rows }) => (rows === undefined ? [] : [[parameter, rows] as const]))),
  );
  const anchor: PutCell = { ...results[0]?.[0], formula: `=${NAMESPACE}.${declaration.id}(${references.join(",")})` };
  // What spills needs the rows below free of labels, so it stands under its own name; one value stands beside it.
  const isBeside = cells.length > 0 && results.length === 1 && results[0]?.length === 1;
  const label: PutCell = { value: declaration.id, format: GENERAL };
  const formula = { row: at.row + cells.length + (isBeside || cells.length === 0 ? 0 : 1), column: at.column + (isBeside ? 1 : 0) };
  const [, ...below] = results;
  const block = [[anchor, ...(results[0]?.slice(1) ?? [])], ...below];
  if (cells.length === 0) cells.push(...block);
  else if (isBeside) cells.push([label, anchor]);
  else cells.push([label], ...block);
  return { cells, formula };
};
