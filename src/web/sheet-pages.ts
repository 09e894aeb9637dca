import { element } from "../pane/element";
import type { OwnLook } from "../sheets/own-look";
import type { SheetData } from "../sheets/sheet-data";
import type { Workbook } from "../workbook/workbook";
import { printedCells, type SheetCell } from "./printed-cells";
import { printedRegions, type Region } from "./printed-regions";

type Cells = ReadonlyMap<number, ReadonlyMap<number, SheetCell>>;

/** What a letter takes up on paper, the room around a cell's text, and what one text may claim before it is broken: in pixels, letters. */
const LETTER = 6.3;
const AROUND = 14;
const MOST_LETTERS = 34;
/** A line to write on is as wide as so many letters. */
const BY_HAND = 14;
/** Between parts that stand beside one another, as in the style sheet. */
const GAP = 20;
/** What fits between the margins of an upright page and of one that lies, the narrower of Letter and A4, in pixels: 96 to the inch. */
const UPRIGHT = 690;
const LYING = 950;

/** A table of no more rows than these goes whole to the next page where it does not fit this one. */
const SHORT = 16;

const lookOn = (made: HTMLElement, look: OwnLook | undefined): void => {
  if (look === undefined) return;
  if (look.bold) made.style.fontWeight = "600";
  if (look.italic) made.style.fontStyle = "italic";
  if (look.ink !== undefined) made.style.color = look.ink;
  if (look.fill !== undefined) made.style.backgroundColor = look.fill;
  if (look.across !== undefined) made.style.textAlign = look.across;
};

/** Letters that stay on their line, though the widest of them are wider than what is reckoned for a letter. */
const UNBROKEN = 30;
/** Notes and other long texts are broken, everything else stays on its line. */
const isLong = (text: string): boolean => text.length > UNBROKEN;

const widthOf = (cells: Cells, rows: readonly number[], column: number): number => {
  const lengths = rows.map((row) => {
    const cell = cells.get(row)?.get(column);
    if (cell === undefined || cell.covers > 1) return 1;
    const letters = Math.min(MOST_LETTERS, cell.text.length);
    return cell.stored?.style === "byHand" ? Math.max(BY_HAND, letters) : letters;
  });
  return Math.max(...lengths) * LETTER + AROUND;
};

const sum = (numbers: readonly number[]): number => numbers.reduce((total, number) => total + number, 0);

/** Columns of a table in parts that fit a page, the first column at the left of each. */
const inParts = (cells: Cells, rows: readonly number[], columns: readonly number[]): readonly (readonly number[])[] => {
  const [first, ...others] = columns;
  if (first === undefined) return [];
  const own = widthOf(cells, rows, first);
  const parts: number[][] = [[first]];
  let room = LYING - own;
  for (const column of others) {
    const width = widthOf(cells, rows, column);
    if (width > room && (parts.at(-1)?.length ?? 0) > 1) {
      parts.push([first]);
      room = LYING - own;
    }
    parts.at(-1)?.push(column);
    room -= width;
  }
  return parts;
};

type Table = Extract<Region, { readonly kind: "table" }>;

interface LaidTable {
  readonly parts: readonly (readonly number[])[];
  /** The column of notes that are printed each under its row. */
  readonly under?: number;
}

/** A table that is wider than a page has its notes, a last column of long texts, under their rows rather than in a part of their own. */
const laidTable = (cells: Cells, { rows, columns, headings }: Table): LaidTable => {
  const parts = inParts(cells, rows, columns);
  const last = columns.at(-1) ?? 0;
  const hasNotes = rows.slice(headings).some((row) => isLong(cells.get(row)?.get(last)?.text ?? ""));
  return parts.length > 1 && hasNotes ? { parts: inParts(cells, rows, columns.slice(0, -1)), under: last } : { parts };
};

const widthNeeded = (cells: Cells, region: Region): number => {
  if (region.kind === "line") return 0;
  if (region.kind === "table") {
    const { parts } = laidTable(cells, region);
    return Math.max(...parts.map((part) => sum(part.map((column) => widthOf(cells, region.rows, column)))));
  }
  const widths = region.parts.map((part) => widthNeeded(cells, part));
  return region.kind === "under" ? Math.max(...widths) : sum(widths) + GAP * (widths.length - 1);
};

const cellElement = (page: Document, cell: SheetCell | undefined, isHeading: boolean, spans: number): HTMLElement => {
  const made = element(page, isHeading ? "th" : "td", cell?.text ?? "");
  if (cell === undefined) return made;
  if (spans > 1) made.colSpan = spans;
  const classes = {
    number: cell.isNumber,
    long: isLong(cell.text),
    wideLine: cell.stored?.style === "byHand" && cell.covers > 1,
    fails: cell.text.startsWith("✗"),
  };
  made.className = [cell.stored?.style ?? "", ...Object.entries(classes).flatMap(([name, is]) => (is ? name : []))].join(" ").trim();
  lookOn(made, cell.stored?.look);
  return made;
};

const rowElement = (page: Document, cells: Cells, row: number, columns: readonly number[], isHeading: boolean): HTMLElement => {
  const made = element(page, "tr");
  let covered = -1;
  for (const column of columns) {
    const cell = cells.get(row)?.get(column);
    if (cell === undefined && column <= covered) continue;
    const spans = cell === undefined ? 1 : columns.filter((one) => one >= column && one < column + cell.covers).length;
    if (cell !== undefined) covered = column + cell.covers - 1;
    made.append(cellElement(page, cell, isHeading, spans));
  }
  return made;
};

/** What belongs to a row and has no room in it, under it from its second column on. */
const underElement = (page: Document, cell: SheetCell, columns: number, isHeading: boolean): HTMLElement => {
  const text = cellElement(page, cell, isHeading, columns - 1);
  return element(page, "tr", [element(page, isHeading ? "th" : "td", ""), text], "under-row");
};

const tableElements = (page: Document, cells: Cells, table: Table): readonly HTMLElement[] => {
  const { rows, headings } = table;
  const { parts, under } = laidTable(cells, table);
  return parts.map((part, place) => {
    const rowsOf = (isHeading: boolean) => (row: number): readonly HTMLElement[] => {
      const note = under === undefined || place > 0 ? undefined : cells.get(row)?.get(under);
      const made = rowElement(page, cells, row, part, isHeading);
      if (note === undefined) return [made];
      made.classList.add("over-row");
      return [made, underElement(page, note, part.length, isHeading)];
    };
    const made = element(page, "table", [
      element(page, "thead", rows.slice(0, headings).flatMap(rowsOf(true))),
      element(page, "tbody", rows.slice(headings).flatMap(rowsOf(false))),
    ]);
    if (rows.length <= SHORT) made.className = "short";
    return made;
  });
};

const regionElement = (page: Document, cells: Cells, region: Region): HTMLElement => {
  if (region.kind === "line") {
    const cell = cells.get(region.row)?.get(region.column);
    return element(page, cell?.stored?.style === "title" ? "h2" : "p", cell?.text ?? "", cell?.stored?.style ?? "");
  }
  if (region.kind === "table") return element(page, "div", tableElements(page, cells, region), "part");
  return element(page, "div", region.parts.map((part) => regionElement(page, cells, part)), region.kind);
};

/** A sheet for the printer: its tables as they stand under and beside one another, without what is empty. Undefined for an empty sheet. */
export const sheetPages = (
  page: Document, book: Pick<Workbook, "shown" | "value" | "spills">, sheet: SheetData,
): HTMLElement | undefined => {
  const cells = printedCells(book, sheet);
  const rows = [...cells.keys()].sort((one, other) => one - other);
  const columns = [...cells.values()].flatMap((row) => [...row.keys()]);
  const region = printedRegions(cells, rows, { from: 0, to: Math.max(0, ...columns) });
  if (region === undefined) return undefined;
  const made = element(page, "section", [regionElement(page, cells, region)], "sheet-page");
  if (widthNeeded(cells, region) > UPRIGHT) made.classList.add("wide");
  return made;
};
