import { call } from "../functions/call";
import { folded, isFailed } from "../functions/cells";
import type { Columns } from "../functions/columns";
import type { Declaration, ExampleCell, Parameter, ResultKind } from "../functions/declare";
import { resultHeadings } from "../functions/describe";
import { NAMESPACE } from "../functions/formula";
import { isLengthKind } from "../functions/kinds";
import { cellAddress, type CellPlace } from "../sheets/cell-address";
import { TEXT_FORMAT } from "../sheets/cell-format";
import { resultFormat } from "../sheets/result-looks";
import { DECIMALS, MILLIMETRES, MIXED, SIXTEENTHS } from "../sheets/sheet-builder";
import type { PlainValue } from "../sheets/sheet-data";
import { isReadOtherwise } from "../sheets/text-cell";
import { typedLength } from "../sheets/typed-length";
import { drawnLines, drawnWidth, widestShown } from "./drawn-width";
import type { PutCell } from "./host";

/** A call with its arguments laid out: cells from the selected one on, and where among them the formula stands. */
export interface LaidOut {
  readonly cells: readonly (readonly (PutCell | undefined)[])[];
  readonly formula: CellPlace;
  /** How wide each column must be at least, in pixels, so that its names and numbers are read whole. */
  readonly widths: readonly number[];
  /** How high each row must be at least, in pixels, so that wrapped texts are read whole; undefined where it has one line. */
  readonly heights: readonly (number | undefined)[];
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

/** The format of a cell in which a length is typed: its own length is seen as it is, and 1/2 typed over it stays a half. */
const lengthFormat = (size: number, unit: string): string =>
  unit === "mm" ? MILLIMETRES : (typedLength(`${size}"`, undefined)?.format ?? MIXED);

const lengthCell = (value: PlainValue | null, unit: string): PutCell => {
  const typed = unit === "in" && typeof value === "string" ? typedLength(value, undefined)?.size : undefined;
  const held = typed ?? (value === "" ? null : value);
  return { value: held, format: typeof held === "number" ? lengthFormat(held, unit) : unit === "mm" ? MILLIMETRES : SIXTEENTHS };
};

const argumentCell = (value: PlainValue | null): PutCell => {
  // The divisions of a tape are declared as the words 2 to 64.
  if (typeof value === "string" && /^\d+$/.test(value)) return { value: Number(value), format: GENERAL };
  return { value: value === "" ? null : value, format: typeof value === "string" && isReadOtherwise(value) ? TEXT_FORMAT : GENERAL };
};

const argumentCells = (parameter: Parameter, rows: Rows, unit: string): PutCell[][] => {
  const isLength = lengthColumns(parameter, rows);
  const isHeading = (row: number): boolean => parameter.kind === "table" && row === 0;
  return rows.map((cells, row) =>
    cells.map((value, column) => (isLength[column] === true && !isHeading(row) ? lengthCell(value, unit) : argumentCell(value))),
  );
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
  if (result.kind === "amounts") return "money";
  return result.kind === "cell" ? "value" : result.kind;
};

/** The format of a cell of a result: of its kind, and a plain number where there is nothing behind the point to show. */
const formatOf = (kind: ResultKind, cell: unknown, unit: string, isWhole: boolean): string => {
  if (kind === "number") return isWhole ? GENERAL : DECIMALS;
  if (kind === "value" && Number.isInteger(cell)) return GENERAL;
  return resultFormat(kind, unit) ?? GENERAL;
};

/** A sentence runs on over free cells beside it, or in further lines; no column is made wider than this for one, in pixels. */
const WIDEST = 280;
/** A column of notes is at least this wide, in pixels: what is noted for other numbers may be longer than in the example. */
const READABLE = 200;
/** Of a line of the usual size, in pixels: 15 points, a row's usual height in Excel (Excel specifications: standard height). */
const LINE = 20;
const NOTE = "note";

/** Which columns of a result hold sentences: notes, and words that are too long for one line. */
const wrappingColumns = ({ result }: Declaration, rows: readonly (readonly unknown[])[]): readonly boolean[] => {
  if (result.kind !== "table") return [];
  return Object.keys(result.columns).map(
    (key, column) => key === NOTE || rows.some((row) => typeof row[column] === "string" && drawnWidth(row[column]) > WIDEST),
  );
};

interface ResultCell {
  readonly put: PutCell;
  readonly value: unknown;
}

const resultCells = (declaration: Declaration, args: readonly (Rows | undefined)[], unit: string): ResultCell[][] => {
  const answer = call(declaration, args.map((rows) => (rows?.length === 1 && rows[0]?.length === 1 ? rows[0][0] : rows)));
  const rows = Array.isArray(answer) ? answer : [[answer]];
  const kinds = kindsOf(declaration);
  const [first] = rows;
  const hasHeadings =
    declaration.result.kind === "table" && resultHeadings(declaration).every((heading, column) => first?.[column] === heading);
  const wraps = wrappingColumns(declaration, rows);
  return rows.map((row, line) =>
    row.map((cell, column): ResultCell => {
      const kind = typeof kinds === "string" ? kinds : (kinds[column] ?? "text");
      const isNumber = typeof cell === "number" || isFailed(cell) || typeof kinds !== "string";
      const isWhole = rows.every((other) => typeof other[column] !== "number" || Number.isInteger(other[column]));
      const isHeading = hasHeadings && line === 0;
      const format = isHeading || !isNumber ? GENERAL : formatOf(kind, cell, unit, isWhole);
      return { put: wraps[column] === true && !isHeading ? { format, wraps: true } : { format }, value: cell };
    }),
  );
};


const isShown = (value: unknown): value is PlainValue =>
  (typeof value === "string" && value !== "") || typeof value === "number" || typeof value === "boolean";

interface ShownCell {
  readonly value: unknown;
  readonly format?: string | undefined;
  readonly wraps?: boolean | undefined;
}

const sentence = ({ value }: ShownCell): string => (typeof value === "string" ? value : "");

/** What one row asks of each of its columns: all of a text that something stands beside, and would cut off. */
const rowWidths = (row: readonly (ShownCell | undefined)[]): readonly number[] => {
  const isCut = (column: number): boolean => row.slice(column + 1).some((cell) => isShown(cell?.value));
  return Array.from(row, (cell, column) => {
    if (cell?.wraps === true) return Math.max(READABLE, Math.min(WIDEST, drawnWidth(sentence(cell))));
    if (!isShown(cell?.value)) return 0;
    const whole = drawnWidth(widestShown(cell.value, cell.format ?? GENERAL));
    return isCut(column) ? whole : Math.min(WIDEST, whole);
  });
};

/** How high a row is in which a text takes more lines than one. */
const rowHeight = (row: readonly ShownCell[], widths: readonly number[]): number | undefined => {
  const lines = row.map((cell, column) => (cell.wraps === true ? drawnLines(sentence(cell), widths[column] ?? WIDEST) : 1));
  const most = Math.max(1, ...lines);
  return most === 1 ? undefined : most * LINE;
};

type Sizes = Pick<LaidOut, "widths" | "heights">;

const sizesOf = (cells: LaidOut["cells"], formula: CellPlace, results: readonly (readonly ResultCell[])[]): Sizes => {
  const rows = cells.map((row, down) =>
    Array.from(row, (put, column): ShownCell => {
      const result = results[down - formula.row]?.[column - formula.column];
      return result === undefined ? { value: put?.value, format: put?.format } : { ...result.put, value: result.value };
    }),
  );
  const wanted = rows.map(rowWidths);
  const widths = Array.from({ length: Math.max(...cells.map((row) => row.length)) }, (_, column) =>
    Math.max(...wanted.map((row) => row[column] ?? 0)),
  );
  return { widths, heights: rows.map((row) => rowHeight(row, widths)) };
};

/**
 * The first example of a function that answers, as it is inserted at a place: each argument under its name with the example's value or its
 * default, the formula under them reading those cells, number formats for all it spills, and its sentences in as many lines as they take.
 */
export const laidOut = (declaration: Declaration, at: CellPlace): LaidOut => {
  const example = declaration.examples.find((one) => !("fails" in one)) ?? declaration.examples[0];
  const shown = Object.entries(declaration.parameters).map(([name, parameter]) => ({
    name, parameter, rows: valueOf(parameter, (example.given as Readonly<Record<string, ExampleCell | undefined>>)[name]),
  }));
  const cells: (PutCell | undefined)[][] = [];
  const unit = unitOf(shown.flatMap(({ parameter, rows }) => (rows === undefined ? [] : [[parameter, rows] as const])));
  const references = shown.map(({ name, parameter, rows }) => {
    if (rows === undefined) return "";
    const label: PutCell = { value: name, format: GENERAL };
    const values = argumentCells(parameter, rows, unit);
    const isOneCell = values.length === 1 && values[0]?.length === 1;
    const row = at.row + cells.length + (isOneCell ? 0 : 1);
    const column = at.column + (isOneCell ? 1 : 0);
    cells.push(...(isOneCell ? [[label, ...(values[0] ?? [])]] : [[label], ...values]));
    const last = { row: row + values.length - 1, column: column + (values[0]?.length ?? 1) - 1 };
    return isOneCell ? cellAddress({ row, column }) : `${cellAddress({ row, column })}:${cellAddress(last)}`;
  });
  while (references[references.length - 1] === "") references.pop();
  const results = resultCells(declaration, shown.map(({ rows }) => rows), unit);
  const puts = results.map((row) => row.map(({ put }) => put));
  const anchor: PutCell = { ...puts[0]?.[0], formula: `=${NAMESPACE}.${declaration.id}(${references.join(",")})` };
  // What spills needs the rows below free of labels, so it stands under its own name; one value stands beside it.
  const isBeside = cells.length > 0 && results.length === 1 && results[0]?.length === 1;
  const label: PutCell = { value: declaration.id, format: GENERAL };
  const formula = { row: at.row + cells.length + (isBeside || cells.length === 0 ? 0 : 1), column: at.column + (isBeside ? 1 : 0) };
  const [, ...below] = puts;
  const block = [[anchor, ...(puts[0]?.slice(1) ?? [])], ...below];
  if (cells.length === 0) cells.push(...block);
  else if (isBeside) cells.push([label, anchor]);
  else cells.push([label], ...block);
  const inBlock = { row: formula.row - at.row, column: formula.column - at.column };
  return { cells, formula, ...sizesOf(cells, inBlock, results) };
};
