import type { AskedCell, ToDo } from "../pane/host";
import { cellAddress, cellPlace } from "../sheets/cell-address";
import { ASKS_IN } from "../sheets/sheet-builder";
import type { CellData, SheetData } from "../sheets/sheet-data";
import type { CellValue } from "../workbook/workbook";

/** What there is to try while the demo is shown: a cell, known by the name beside it, what to type there, and what comes of it. */
export interface Trial {
  /** The job that it is for, by its name. */
  readonly job: string;
  readonly name: string;
  readonly type: string;
  readonly says: string;
}

const isInput = ({ style }: CellData): boolean => style?.startsWith("input") === true;
const isEmpty = ({ value, formula }: CellData): boolean => (value === undefined || value === "") && formula === undefined;
const textOf = (cell: CellData | undefined): string => (typeof cell?.value === "string" ? cell.value.trim() : "");

interface Placed {
  readonly row: number;
  readonly column: number;
  readonly cell: CellData;
}

/** The cells of a sheet in reading order, row by row. */
const inOrder = ({ cells }: SheetData): readonly Placed[] =>
  Object.entries(cells)
    .map(([address, cell]) => ({ ...cellPlace(address), cell }))
    .sort((one, other) => one.row - other.row || one.column - other.column);

/** What a yellow cell is for: the name at the left of it, or the table it stands in with its heading and the row's number. */
const nameOf = ({ cells }: SheetData, row: number, column: number): string => {
  const at = (down: number, right: number): CellData | undefined => cells[cellAddress({ row: down, column: right })];
  const leftOf = (down: number): CellData | undefined =>
    Array.from({ length: column }, (_, step) => at(down, column - 1 - step)).find((cell) => cell?.value !== undefined);
  const above = Array.from({ length: row }, (_, step) => row - 1 - step);
  const under = (style: string): number | undefined => above.find((down) => at(down, column)?.style?.startsWith(style));
  const left = leftOf(row);
  if (typeof left?.value === "string" && !isInput(left)) return textOf(left);
  const [part, heading] = [under("part"), under("heading")];
  const table = part === undefined ? "" : (textOf(at(part, column)) || textOf(leftOf(part))).split(/[;,]/)[0] ?? "";
  const over = heading === undefined ? "" : textOf(at(heading, column));
  if (left === undefined && table !== "") return table;
  const beside = typeof left?.value === "number" ? `row ${left.value}` : textOf(left);
  const named = [over, beside].filter(Boolean).join(", ");
  return table === "" || typeof left?.value !== "number" ? named : `${table}: ${named}`;
};

/** What a cell shows that waits for another: its sheet, where it is not its own, its address, and at times what belongs there. */
const REQUEST = new RegExp(`^${ASKS_IN}(?:(.+) )?([A-Z]{1,3}\\d+)(?:: (.+))?$`);
/** A request up to its row, which a formula may work out: other cells pass the request on, its own has these words in its formula. */
const OWN = new RegExp(`^${ASKS_IN}(?:.+ )?[A-Z]{1,3}(?=\\d)`);

/** The cells that sheets wait for, each named once, and whether any sheet is of the kind that asks. */
const askedCells = (
  sheets: readonly SheetData[], shown: (sheet: string, address: string) => CellValue,
): { readonly asks: readonly AskedCell[]; readonly canAsk: boolean } => {
  const found = new Map<string, AskedCell>();
  let canAsk = false;
  for (const { name, cells } of sheets) {
    for (const [address, { formula }] of Object.entries(cells)) {
      if (formula?.includes(`"${ASKS_IN}`) !== true) continue;
      canAsk = true;
      const value = shown(name, address);
      const [own] = typeof value === "string" ? OWN.exec(value) ?? [] : [];
      if (typeof value !== "string" || own === undefined || !formula.includes(`"${own}`)) continue;
      const [, sheetAsked = name, cellAsked, what] = REQUEST.exec(value) ?? [];
      if (cellAsked === undefined) continue;
      const asked = sheets.find((one) => one.name === sheetAsked);
      // A sheet that goes by another name now is not found: its request stands where it is shown.
      if (asked === undefined) {
        found.set(`${name}!${address}`, { at: { sheet: name, address }, says: value.slice(ASKS_IN.length) });
        continue;
      }
      const { row, column } = cellPlace(cellAsked);
      const at = { sheet: asked.name, address: cellAsked };
      found.set(`${at.sheet}!${at.address}`, { at, says: what ?? nameOf(asked, row, column) });
    }
  }
  const places = ({ at }: AskedCell): readonly number[] => {
    const { row, column } = cellPlace(at.address);
    return [sheets.findIndex(({ name }) => name === at.sheet), row, column];
  };
  const inReadingOrder = (one: AskedCell, other: AskedCell): number => {
    const [ones, others] = [places(one), places(other)];
    return ones.map((place, level) => place - (others[level] ?? 0)).find((apart) => apart !== 0) ?? 0;
  };
  return { asks: [...found.values()].sort(inReadingOrder), canAsk };
};

const trialAt = (sheets: readonly SheetData[], name: string): { readonly sheet: string; readonly address: string } | undefined => {
  for (const sheet of sheets) {
    const found = inOrder(sheet).find(({ row, column, cell }) =>
      isInput(cell) && column > 0 && textOf(sheet.cells[cellAddress({ row, column: column - 1 })]).split(",")[0] === name);
    if (found !== undefined) return { sheet: sheet.name, address: cellAddress(found) };
  }
  return undefined;
};

const WAITING =
  "Sheets wait for what is to be typed in these cells. A bid needs no Survey, Fit or Books: those wait for the tape at the stair and " +
  "for the invoices.";

const NOTHING_WAITS =
  "No sheet waits for anything. What else is yellow and empty is optional: notes say what is assumed in its place. Read the answers in " +
  "the first rows of each sheet, then print what the shop needs.";

/**
 * What to do next in a workbook: in the demo the trial; where sheets say what they wait for, those cells; in any other the first yellow
 * cell without an entry. `shown` is what a cell shows.
 */
export const nextCell = (
  sheets: readonly SheetData[], shown: (sheet: string, address: string) => CellValue, trial: Trial | undefined,
): ToDo => {
  if (trial !== undefined) {
    const at = trialAt(sheets, trial.name);
    if (at !== undefined) return { says: `Try it: type ${trial.type} in ${at.sheet} ${at.address}, ${trial.name}. ${trial.says}`, at };
  }
  if (sheets.every(({ cells }) => Object.keys(cells).length === 0)) {
    return {
      says:
        "This workbook is empty. Add the sheet of a step below: the sheets that it reads come with it. Or select a cell and insert a " +
        "function, under Functions.",
    };
  }
  const { asks, canAsk } = askedCells(sheets, shown);
  if (canAsk) return asks.length === 0 ? { says: NOTHING_WAITS } : { says: WAITING, asks };
  let inputs = 0;
  for (const sheet of sheets) {
    for (const { row, column, cell } of inOrder(sheet)) {
      if (!isInput(cell)) continue;
      inputs += 1;
      if (!isEmpty(cell)) continue;
      const address = cellAddress({ row, column });
      const name = nameOf(sheet, row, column);
      const says = `Next yellow cell without an entry: ${sheet.name} ${address}${name === "" ? "" : ` (${name})`}.`;
      return { says, at: { sheet: sheet.name, address } };
    }
  }
  return {
    says: inputs > 0
      ? "Every yellow cell has an entry. Read the answers in the first rows of each sheet, then print what the shop needs."
      : "Add the sheet of a step below, or select a cell and insert a function, under Functions.",
  };
};
