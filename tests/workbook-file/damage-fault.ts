import type { CellData, SheetData } from "../../src/sheets/sheet-data";
import { FAULTS, isFileFault } from "../../src/workbook-file/file-fault";
import { mendedFile } from "../../src/workbook-file/mended-file";
import { type ReadWorkbook, readWorkbookFile } from "../../src/workbook-file/read-workbook-file";
import { savedInto } from "../../src/workbook-file/saved-into";
import { savedOver } from "../../src/workbook-file/saved-over";
import { MOST_ELEMENTS, noWork } from "../../src/workbook-file/xml-tree";
import { formulaFault } from "../../src/workbook/formula-limits";
import { isSoundSheet, workbookData } from "../../src/workbook/workbook-data";

const SENTENCES: readonly string[] = Object.values(FAULTS);

/** What a file came to: it was read, or refused with one of the sentences. */
export type Outcome = "read" | keyof typeof FAULTS;

/** The name of the sentence that refused a file; anything else thrown is a fault of ours. */
const refusal = (error: unknown): Outcome => {
  if (!isFileFault(error)) throw error;
  const said = error.message.replace(/ \(Part: [^)]*\.\)$/, "");
  const [name] = (Object.entries(FAULTS).find(([, sentence]) => sentence === said) ?? []) as [Outcome?];
  if (name === undefined || !SENTENCES.includes(said)) throw new Error(`not one of the sentences: ${error.message}`);
  return name;
};

const open = (bytes: Uint8Array): ReadWorkbook => {
  const work = noWork();
  try {
    return readWorkbookFile(bytes, { refuses: formulaFault, isSound: isSoundSheet, work });
  } finally {
    // One element more than may be is what stops the reading.
    if (work.elements > 2 * MOST_ELEMENTS) throw new Error(`reading took ${work.elements} steps`);
  }
};

const NUMBERS = { value: () => 7, spill: () => [[7, 8], [9, 10]] } as const;

/** Every third cell of a sheet is another now in one way or another, and there is one cell more. */
const typedInto = ({ cells, ...sheet }: SheetData): SheetData => {
  const kinds: readonly ((cell: CellData) => CellData)[] = [
    (cell) => ({ ...cell, look: { ...cell.look, bold: true } }), (cell) => ({ ...cell, format: "0.000" }),
    () => ({ value: "typed" }), () => ({ formula: "=STAIR.RISERS(A1)" }), () => ({}),
  ];
  const now = Object.entries(cells).map(([address, cell], at) =>
    [address, at % 3 === 0 ? (kinds[(at / 3) % kinds.length]?.(cell) ?? {}) : cell] as const);
  return { ...sheet, cells: { ...Object.fromEntries(now), XFD1048576: { value: 1 } }, columnWidths: { ...sheet.columnWidths, B: 123 } };
};

/** What something comes to, or nothing where it is refused in a sentence. */
const orRefused = <Value>(act: () => Value): Value | undefined => {
  try {
    return act();
  } catch (error) {
    if (isFileFault(error)) return undefined;
    throw error;
  }
};

/** What stands in a file that was damaged may be refused; what was saved holds what was typed. */
const saveTyped = (bytes: Uint8Array, sheets: readonly SheetData[]): void => {
  const now = [...sheets.map(typedInto), { name: "One more sheet", cells: { A1: { value: "more" }, A2: { formula: "=SUM(1,2)" } } }];
  const saved = orRefused(() => savedInto(bytes, now, { calculated: NUMBERS, refuses: formulaFault, isSound: isSoundSheet }).bytes);
  if (saved === undefined) return;
  const again = open(saved).sheets;
  for (const { name, cells } of now) {
    const last = again.find((sheet) => sheet.name === name)?.cells;
    const isTyped = cells.XFD1048576 === undefined || last?.["XFD1048576"]?.value === 1;
    if (last === undefined || !isTyped) throw new Error(`${name} is not as typed`);
  }
};

/**
 * Reads a file, saves into it and mends it, whatever it is. Throws where anything but a sentence comes of it, where what is read is not
 * what a live sheet takes, or where what was saved cannot be read again.
 */
export const outcomeOf = (bytes: Uint8Array): Outcome => {
  const before = bytes.slice();
  try {
    const read = open(bytes);
    workbookData({ version: 1, sheets: read.sheets });
    const over = savedOver(read.file, NUMBERS);
    open(over.bytes);
    saveTyped(bytes, read.sheets);
    for (const isWithoutSpills of [false, true]) {
      const mended = orRefused(() => mendedFile(bytes, { isOurs: () => true, isWithoutSpills }).bytes);
      if (mended !== undefined) open(mended);
    }
    return "read";
  } catch (error) {
    return refusal(error);
  } finally {
    if (Buffer.compare(before, bytes) !== 0) throw new Error("the file that was given is another now");
  }
};
