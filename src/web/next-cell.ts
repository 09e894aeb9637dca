import type { ToDo } from "../pane/host";
import { cellAddress, cellPlace } from "../sheets/cell-address";
import type { CellData, SheetData } from "../sheets/sheet-data";

/** What there is to try while the demo is shown: a cell, known by the name beside it, what to type there, and what comes of it. */
export interface Trial {
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

/** What a yellow cell is for: the name at the left of it, and the heading over it. */
const nameOf = ({ cells }: SheetData, row: number, column: number): string => {
  const at = (down: number, right: number): CellData | undefined => cells[cellAddress({ row: down, column: right })];
  const left = Array.from({ length: column }, (_, step) => at(row, column - 1 - step)).find((cell) => cell?.value !== undefined);
  const over = Array.from({ length: row }, (_, step) => at(row - 1 - step, column)).find((cell) => cell?.style?.startsWith("heading"));
  const beside = typeof left?.value === "number" ? `row ${left.value}` : textOf(left);
  return [textOf(over), beside].filter(Boolean).join(", ");
};

const trialAt = (sheets: readonly SheetData[], name: string): { readonly sheet: string; readonly address: string } | undefined => {
  for (const sheet of sheets) {
    const found = inOrder(sheet).find(({ row, column, cell }) =>
      isInput(cell) && column > 0 && textOf(sheet.cells[cellAddress({ row, column: column - 1 })]).split(",")[0] === name);
    if (found !== undefined) return { sheet: sheet.name, address: cellAddress(found) };
  }
  return undefined;
};

/** What to do next in a workbook: in the demo the trial, in a job of one's own the first yellow cell without an entry. */
export const nextCell = (sheets: readonly SheetData[], trial: Trial | undefined): ToDo => {
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
