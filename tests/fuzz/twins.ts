import { folded } from "../../src/functions/cells";
import type { Column, Table } from "../../src/functions/columns";
import { type Declaration, isRange, type Parameter } from "../../src/functions/declare";
import { isMatrix } from "../../src/functions/describe";
import { SPREADSHEET_DIGITS } from "../../src/solver/length/exact";
import { words } from "../../src/solver/words";
import type { Outcome } from "./faults";
import type { Arguments } from "./random-calls";

/** The same call said in another way: whoever says it so means the same, so the answer has to be the same. */
export interface Twin {
  readonly how: string;
  readonly given: Arguments;
  /** The rows of the answer may come in another order. */
  readonly isInAnyOrder?: boolean;
}

type Rows = readonly (readonly unknown[])[];
type TableParameter = Extract<Parameter, { readonly kind: "table" }>;

/** Functions whose result has the columns of its table as they came. */
const SHOWS_COLUMNS: readonly string[] = ["TALLY"];

/**
 * Functions whose tables are heaps: in which order their rows stand says nothing. Elsewhere a row may stand for what is above it (flights
 * from the bottom up, a rail's newels, moves of one day), or a tie is broken by the order, as the reference says of each.
 */
const HEAPS: readonly string[] = [
  "CUTS", "SHEETCUTS", "BUY", "PLAN", "OFFCUTS", "TREADFIT", "MARKS", "RISERMARKS", "TAKEOFF", "QUOTE", "PROGRESSBILLING", "BIDVARIANCE",
];

const isRows = (given: unknown): given is Rows =>
  Array.isArray(given) && given.length > 0 && given.every((row) => Array.isArray(row) && row.length === (given[0] as unknown[]).length);

/** A number other than 0, which a host sends for an empty cell, of no more digits than a sheet keeps, written without an exponent. */
const isPlain = (cell: unknown): cell is number =>
  typeof cell === "number" && cell !== 0 && /^-?\d+(\.\d+)?$/.test(String(cell)) && Number(cell.toPrecision(SPREADSHEET_DIGITS)) === cell;

const NUMBERS: readonly string[] = ["length", "reading", "count", "number", "money", "angle"];
const LENGTHS: readonly string[] = ["length", "reading"];
/** A larger number is taken for a date where a length is read; a text is none. */
const LONGEST = 20_000;

const isLikeDate = (kind: string, cell: number): boolean => LENGTHS.includes(kind) && Math.abs(cell) > LONGEST;

const parametersOf = ({ parameters }: Declaration): readonly Parameter[] => Object.values(parameters);

const changedIn = (declaration: Declaration, given: Arguments, change: (parameter: Parameter, cell: unknown) => unknown): Arguments =>
  given.map((cell, place) => {
    const parameter = parametersOf(declaration)[place];
    return parameter === undefined ? cell : change(parameter, cell);
  });

/** The columns of a table by their place, where its first row is headings of its own alone; undefined where it is not. */
const columnsOf = ({ columns }: Table, rows: Rows): readonly Column[] | undefined => {
  const known = new Map(Object.entries(columns).map(([key, column]) => [folded(words(key)), column as Column]));
  const headings = rows[0]!.map((cell) => (typeof cell === "string" ? folded(cell) : ""));
  if (new Set(headings).size < headings.length || headings.some((heading) => !known.has(heading))) return undefined;
  return headings.map((heading) => known.get(heading)!);
};

/** Whether the headings of the call's tables are read as headings. */
const readsHeadings = (declaration: Declaration, given: Arguments): boolean => {
  const place = Object.keys(declaration.parameters).indexOf("headings");
  return place < 0 || given[place] === undefined || given[place] === null || given[place] === true;
};

/** The unit of bare lengths; undefined where a stair table or a cell that is no unit decides. */
const unitOf = (declaration: Declaration, given: Arguments): string | undefined => {
  if (parametersOf(declaration).some(({ kind }) => kind === "stair")) return undefined;
  const place = Object.keys(declaration.parameters).indexOf("unit");
  const cell = place < 0 ? undefined : given[place];
  if (cell === undefined || cell === null || cell === "") return "in";
  return cell === "in" || cell === "mm" ? cell : undefined;
};

/** Tables of a call, each changed by its own columns; the call itself where none is under headings of its own alone. */
const tablesChanged = (
  declaration: Declaration, given: Arguments, change: (rows: Rows, columns: readonly Column[], parameter: TableParameter) => Rows,
): Arguments =>
  changedIn(declaration, given, (parameter, cell) => {
    if (parameter.kind !== "table" || parameter.instead !== undefined || !isRows(cell)) return cell;
    const columns = columnsOf(parameter.table, cell);
    return columns === undefined ? cell : change(cell, columns, parameter);
  });

/** Every table of a call from its last row to its first, under the same headings. */
const turnedOver = (declaration: Declaration, given: Arguments): Arguments =>
  tablesChanged(declaration, given, ([headings = [], ...rows]) => [headings, ...rows.reverse()]);

const rotated = <Item>(items: readonly Item[]): readonly Item[] => [...items.slice(1), ...items.slice(0, 1)];

/** All ways to say a call once more. */
export const twinsOf = (declaration: Declaration, given: Arguments): readonly Twin[] => {
  const last = given[given.length - 1];
  const isWithHost = typeof last === "object" && last !== null && !Array.isArray(last);
  if (isWithHost || given.length > parametersOf(declaration).length) return [];
  const unit = unitOf(declaration, given);
  const headed = readsHeadings(declaration, given);
  const says = (cell: unknown): unknown => (isPlain(cell) && cell > 0 && cell <= LONGEST ? `${cell} ${unit ?? ""}` : cell);
  const twins: readonly Twin[] = [
    { how: "with the host's own last argument", given: [...given, { address: "A1" }] },
    {
      how: "one value as a range of one cell",
      given: changedIn(declaration, given, (parameter, cell) =>
        isMatrix(parameter) && !Array.isArray(cell) && cell !== undefined && cell !== null ? [[cell]] : cell),
    },
    {
      how: "numbers as text",
      given: changedIn(declaration, given, ({ kind }, cell) =>
        NUMBERS.includes(kind) && isPlain(cell) && !isLikeDate(kind, cell) ? String(cell) : cell),
    },
    {
      how: "an empty row under each table",
      given: changedIn(declaration, given, (parameter, cell) =>
        isRange(parameter) && parameter.kind === "table" && isRows(cell) && cell.length > 1 ? [...cell, cell[0]!.map(() => null)] : cell),
    },
    ...(!headed || SHOWS_COLUMNS.includes(declaration.id) ? [] : [{
      how: "columns in another order", given: tablesChanged(declaration, given, (rows) => rows.map(rotated)),
    }]),
    ...(!headed || !HEAPS.includes(declaration.id) ? [] : [{
      how: "rows in another order", given: turnedOver(declaration, given), isInAnyOrder: true,
    }]),
    ...(unit === undefined ? [] : [{
      how: "lengths with their unit",
      given: changedIn(declaration, given, (parameter, cell) => (LENGTHS.includes(parameter.kind) ? says(cell) : cell)),
    }]),
    ...(unit === undefined || !headed ? [] : [{
      how: "lengths of tables with their unit",
      given: tablesChanged(declaration, given, (rows, columns) =>
        rows.map((row, at) => (at === 0 ? row : row.map((cell, place) => (LENGTHS.includes(columns[place]!.kind) ? says(cell) : cell))))),
    }]),
  ];
  return twins.filter((twin) => twin.given.some((cell, place) => cell !== given[place]));
};

const isError = (cell: unknown): cell is { readonly code: string; readonly message: string } =>
  typeof cell === "object" && cell !== null && "code" in cell;

/**
 * What has to be the same: every value, and where an error stands. The sentence of an error may name another cell first, or repeat a cell
 * as it was written, and stands in a note too.
 */
const meant = ({ thrown, answer }: Outcome, isInAnyOrder: boolean): string => {
  if (thrown) return "refused";
  const sentences = new Set<unknown>();
  JSON.stringify(answer, (_, value: unknown) => {
    if (isError(value)) sentences.add(value.message);
    return value;
  });
  const text = (part: unknown): string =>
    JSON.stringify(part, (_, value: unknown) => (isError(value) || sentences.has(value) ? "an error" : value));
  return isInAnyOrder && Array.isArray(answer) ? answer.map(text).sort().join("\n") : text(answer);
};

export const isSameMeaning = (one: Outcome, other: Outcome, { isInAnyOrder = false }: Pick<Twin, "isInAnyOrder"> = {}): boolean =>
  meant(one, isInAnyOrder) === meant(other, isInAnyOrder);
