import type { Unit } from "../solver/length/length";
import { words } from "../solver/words";
import type { Declaration, ResultColumn, ResultKind } from "./declare";
import { stair } from "./tables";
import { toldCell } from "./told-value";

/** A cell as a sheet shows it; null for an empty one. */
type Shown = string | number | boolean | null;

/** One cell of an answer: what it shows, what it is, and the figures that stand with it. */
export interface ToldAnswer {
  /** In words with its unit; empty where nothing stands there. */
  readonly value: string;
  /** What it is, the end of a sentence: riser 3, height. Empty where the answer is one value. */
  readonly is: string;
  /** What that means: names and meanings from the declaration. */
  readonly means: readonly { readonly name: string; readonly says: string }[];
  /** What the declaration's method calls it; undefined where the answer is one value, empty for a heading. */
  readonly name: string | undefined;
  /** Values of the same row, empty where there is none, or of the other labels, by their names. */
  readonly figures: ReadonlyMap<string, string>;
  /** The cells of its row in words, by heading: clause, note and the like. */
  readonly texts: ReadonlyMap<string, string>;
  /** Whether its value is a number whose unit stands in no cell beside it. */
  readonly isBare: boolean;
}

/** The cells of an answer on the sheet, and which of them is asked about. */
export interface AskedCell {
  readonly rows: readonly (readonly Shown[])[];
  readonly row: number;
  readonly column: number;
}

type Named = readonly (readonly [string, ResultColumn])[];

const FIGURES: readonly ResultKind[] = ["length", "reading", "count", "number", "rate", "money", "angle", "value"];

/** Columns as they stand: where a row leaves cells off, those that may be left off are not there. */
const columnsOf = ({ result }: Declaration, width: number): Named => {
  if (result.kind !== "table" && result.kind !== "row") return [];
  const all = Object.entries(result.columns);
  return all.length === width ? all : all.filter(([, { mayLack }]) => mayLack !== true);
};

const toldOf = (cell: Shown | undefined, kind: ResultKind, unit: Unit | undefined, beside: string): string =>
  cell === null || cell === undefined ? "" : toldCell(cell, kind, unit, beside);

const rowText = (row: readonly Shown[], columns: Named, unit: Unit | undefined): ReadonlyMap<string, string> => {
  const at = columns.findIndex(([key]) => key === "unit");
  const beside = String(row[at] ?? "");
  const own = beside === "in" || beside === "mm" ? beside : unit;
  return new Map(columns.map(([key, { kind }], place) => [words(key), toldOf(row[place], kind, own, beside)]));
};

/** Whether the rows of a result are values by their labels. */
const isByLabel = ([first]: Named): boolean => first?.[0] === "label";

/** The first number column of such a table, by its place. */
const valuePlace = (columns: Named): number => columns.findIndex(([, { kind }]) => FIGURES.includes(kind));

const labelSays = (label: string): string | undefined => Object.entries(stair.columns).find(([key]) => words(key) === label)?.[1].says;

const labelFigures = ({ rows }: AskedCell, columns: Named, unit: Unit | undefined): ReadonlyMap<string, string> => {
  const heading = words(columns[valuePlace(columns)]?.[0] ?? "");
  const found = new Map<string, string>();
  const twice = new Set<string>();
  for (const row of rows) {
    const [label] = row;
    const value = typeof row[valuePlace(columns)] === "number" ? rowText(row, columns, unit).get(heading) : undefined;
    if (typeof label !== "string" || value === undefined) continue;
    if (found.has(label)) twice.add(label);
    found.set(label, value);
  }
  for (const label of twice) found.delete(label);
  return found;
};

const oneValue = ({ result }: Declaration, cell: Shown | undefined, unit: Unit | undefined): ToldAnswer => {
  const kind = result.kind === "lengths" ? "length" : result.kind === "amounts" ? "money" : result.kind;
  const told = kind === "cell" || kind === "row" || kind === "table" ? "value" : kind;
  return {
    value: toldOf(cell, told, unit, ""), is: "", means: [{ name: "Answer", says: result.says }], name: undefined,
    figures: new Map(), texts: new Map(), isBare: false,
  };
};

/** A cell of what a function answered, as the sheet shows it. */
export const toldAnswer = (declaration: Declaration, asked: AskedCell, unit: Unit | undefined): ToldAnswer => {
  const row = asked.rows[asked.row] ?? [];
  const columns = columnsOf(declaration, row.length);
  const [key, column] = columns[asked.column] ?? [];
  if (key === undefined || column === undefined) return oneValue(declaration, row[asked.column], unit);
  const heading = words(key);
  const means = [{ name: `Column "${heading}"`, says: column.says }];
  if (declaration.result.kind === "table" && asked.row === 0 && row[asked.column] === heading) {
    const is = "the heading of its column";
    return { value: heading, is, means, name: "", figures: new Map(), texts: new Map(), isBare: false };
  }
  const texts = rowText(row, columns, unit);
  const [[firstKey, firstColumn] = ["", undefined]] = columns;
  const first = texts.get(words(firstKey)) ?? "";
  const isNamed = firstColumn?.kind === "label" && ["label", "item"].includes(firstKey);
  const rowName = declaration.result.kind === "row" ? "" : isNamed ? first : `${words(firstKey)} ${first}`;
  const isNameOfRow = asked.column === 0 && declaration.result.kind === "table";
  const isByLabels = isByLabel(columns);
  const label = isByLabels ? labelSays(first) : undefined;
  const isFigure = (place: number): boolean => FIGURES.includes(columns[place]?.[1].kind ?? "text");
  const figures = isByLabels ? labelFigures(asked, columns, unit) : new Map([...texts].filter((_, place) => isFigure(place)));
  return {
    value: texts.get(heading) ?? "",
    is: isNameOfRow ? `${heading}, the name of its row` : [rowName, heading].filter(Boolean).join(", "),
    means: [...(label === undefined ? [] : [{ name: `Label "${first}"`, says: label }]), ...means],
    name: isByLabels && asked.column === valuePlace(columns) ? first : heading,
    figures,
    texts,
    isBare: column.kind === "value" && typeof row[asked.column] === "number" && !texts.has("unit"),
  };
};
