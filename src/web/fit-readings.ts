import type { MergedStep, SheetCell, SheetReadings, SheetRow } from "../readings/merged-readings";
import { isWritten } from "../readings/merged-readings";
import { PART_NAMES, type Part, PARTS, STEP } from "../readings/text-form";
import { cellAddress } from "../sheets/cell-address";
import { JOB } from "../sheets/job/job";
import { columnUnder, type TapedTable, tapedTables } from "../sheets/job/taped-tables";
import { sheetsReadBy } from "../sheets/renamed-sheets";
import type { SheetData } from "../sheets/sheet-data";
import { typedCell } from "../workbook/typed-cell";
import type { CellPut, Workbook } from "../workbook/workbook";

type Book = Pick<Workbook, "data" | "value" | "format">;

/** A stair of the workbook: its sheet of readings, and the job it reads. */
export interface Stair {
  readonly sheet: string;
  /** Undefined where the sheet reads no Job. */
  readonly job: string | undefined;
  readonly readings: SheetReadings;
  /** The cells that take what is written of these steps. */
  readonly puts: (steps: readonly MergedStep[]) => Readonly<Record<string, CellPut>>;
}

const [, JOB_CELL = ""] = JOB.job.split("!");
/** The label beside the job's name. */
const JOB_LABEL_CELL = JOB_CELL.replace("B", "A");

const jobOf = (sheet: SheetData, sheets: readonly SheetData[], { value }: Book): string | undefined => {
  const read = sheetsReadBy(sheet);
  const job = sheets.find(({ name, cells }) => read.has(name) && cells[JOB_LABEL_CELL]?.value === "job");
  const name = job === undefined ? undefined : value(job.name, JOB_CELL);
  return typeof name === "string" || typeof name === "number" ? String(name) : undefined;
};

const cellAt = (sheet: SheetData, address: string, { value }: Book): SheetCell => {
  const [stored, held] = [sheet.cells[address], value(sheet.name, address)];
  return {
    value: typeof held === "object" && held !== null ? held.error : held,
    // What spilled over the cell is worked out too.
    isFormula: stored?.formula !== undefined || (stored?.value === undefined && held !== null && held !== ""),
  };
};

const addressIn = (table: TapedTable, row: number, heading: string): string | undefined => {
  const column = columnUnder(table, heading);
  return column === undefined ? undefined : cellAddress({ row: table.firstRow + row, column });
};

const rowsOf = (sheet: SheetData, part: Part, table: TapedTable, book: Book): readonly SheetRow[] =>
  Array.from({ length: table.lastRow - table.firstRow + 1 }, (_, row): SheetRow => {
    const step = addressIn(table, row, STEP);
    const held = step === undefined ? null : cellAt(sheet, step, book).value;
    const cells = PARTS[part].flatMap((heading) => {
      const address = addressIn(table, row, heading);
      return address === undefined ? [] : [[heading, cellAt(sheet, address, book)] as const];
    });
    return { step: typeof held === "boolean" ? String(held) : held, cells: Object.fromEntries(cells) };
  });

/** As if typed: by the rules of the page, so that formulas read a number and the cell shows the mark. */
const asTyped = (book: Book, sheet: string, address: string, text: string): CellPut => {
  const typed = typedCell(text, book.format(sheet, address));
  if (typed.kind !== "value") throw new Error(`${sheet} ${address}: does not take "${text}"`);
  return { value: typed.value, ...(typed.format === undefined ? {} : { format: typed.format }) };
};

const putsOf = (book: Book, sheet: string, table: TapedTable, { row, step, isAppended, readings }: MergedStep) => {
  if (row === undefined) return [];
  const texts = readings.filter(isWritten).map(({ heading, now }) => [heading, now] as const);
  const begins = isAppended && texts.length > 0 ? [[STEP, String(step)] as const] : [];
  return [...begins, ...texts].flatMap(([heading, text]) => {
    const address = addressIn(table, row, heading);
    return address === undefined ? [] : [[address, asTyped(book, sheet, address, text)] as const];
  });
};

/** The stairs of a workbook, by their sheets of readings. */
export const stairsIn = (book: Book): readonly Stair[] => {
  const { sheets } = book.data();
  return sheets.flatMap((sheet) => {
    const found = tapedTables(sheet);
    if (found === undefined) return [];
    const { unit, tables } = found;
    const parts = PART_NAMES.flatMap((part) => {
      const table = tables[part];
      return table === undefined ? [] : [[part, rowsOf(sheet, part, table, book)] as const];
    });
    return [{
      sheet: sheet.name,
      job: jobOf(sheet, sheets, book),
      readings: { name: sheet.name, unit, parts: Object.fromEntries(parts) },
      puts: (steps) =>
        Object.fromEntries(steps.flatMap((step) => {
          const table = tables[step.part];
          return table === undefined ? [] : putsOf(book, sheet.name, table, step);
        })),
    }];
  });
};
