import { isStoredError, type StoredValue } from "../workbook-file/sheet/cell-value";
import { isFileFault } from "../workbook-file/file-fault";
import { type ReadWorkbook, readWorkbookFile } from "../workbook-file/read-workbook-file";
import { savedOver } from "../workbook-file/saved-over";
import { valuesFile } from "../workbook-file/write-workbook-file";
import { formulaFault } from "../workbook/formula-limits";
import type { HeadlessWorkbook } from "../workbook/headless-workbook";
import type { CellValue } from "../workbook/workbook";
import { DATA_VERSION, workbookData } from "../workbook/workbook-data";
import { calledIn } from "./calling";
import type { RecalcAsked } from "./command-line";
import { type CellOfBook, dependants, type FormulaOfBook } from "./dependants";
import { EXIT } from "./exit-codes";
import { refusal } from "./refusal";
import { bytesOf, writeOver, writeWhole } from "./written-file";

/** A formula in error, with the sentence that says why. */
export interface InError extends CellOfBook {
  readonly formula: string;
  readonly error: string;
  readonly says: string;
}

/** A formula that kept the value it had, and why. */
export interface Kept extends CellOfBook {
  readonly formula: string;
  readonly why: string;
}

/** A cell that has another value now. */
export interface Changed extends CellOfBook {
  readonly was: StoredValue | null;
  readonly is: StoredValue | null;
}

/** What came of a recalculation. */
export interface Recalculated {
  readonly file: string;
  readonly formulas: number;
  readonly changed: readonly Changed[];
  readonly inError: readonly InError[];
  readonly kept: readonly Kept[];
  /** What rests on a value that was kept. */
  readonly restsOnKept: readonly CellOfBook[];
  readonly written: readonly string[];
}

/** Functions that answer by the clock, and those that answer by chance. */
const BY_CLOCK: readonly string[] = ["TODAY", "NOW"];
const BY_CHANCE: readonly string[] = ["RAND", "RANDBETWEEN", "RANDARRAY"];

/** Why a formula is left as it is; undefined for one that is worked out. */
const refusing = (book: Pick<HeadlessWorkbook, "knows">, isClockSet: boolean) => (formula: string): string | undefined => {
  const called = calledIn(formula);
  const unknown = called.find((name) => !book.knows(name));
  if (unknown !== undefined) return `calls ${unknown}, which cannot be worked out here`;
  const chance = called.find((name) => BY_CHANCE.includes(name));
  if (chance !== undefined) return `calls ${chance}, which answers differently each time`;
  const clock = called.find((name) => BY_CLOCK.includes(name));
  if (clock !== undefined && !isClockSet) return `calls ${clock}; say which day with --at`;
  return formulaFault(formula);
};

const opened = (bytes: Uint8Array, file: string, refuses: (formula: string) => string | undefined): ReadWorkbook => {
  try {
    return readWorkbookFile(bytes, { refuses });
  } catch (error) {
    throw isFileFault(error) ? refusal(`${file}: ${error.message}`) : error;
  }
};

const MILLISECONDS = 1000;

const calculated = async (book: HeadlessWorkbook, read: ReadWorkbook, limit: number): Promise<void> => {
  book.load(workbookData({ version: DATA_VERSION, sheets: read.sheets }));
  let ends: NodeJS.Timeout | undefined;
  const late = new Promise<never>((_, reject) => {
    const end = refusal(`It took longer than ${limit} s; nothing was written. Give it more with --limit.`, EXIT.tooLong);
    ends = setTimeout(() => reject(end), limit * MILLISECONDS);
  });
  try {
    await Promise.race([book.settled(), late]);
  } finally {
    clearTimeout(ends);
  }
};

const formulasOf = (book: HeadlessWorkbook, { sheets }: ReadWorkbook): readonly FormulaOfBook[] =>
  sheets.flatMap(({ name, cells }) => Object.entries(cells).flatMap(([address, { formula }]) => {
    if (formula === undefined) return [];
    const block = book.spill(name, address);
    return [{ sheet: name, address, formula, rows: Math.max(block.length, 1), columns: Math.max(block[0]?.length ?? 1, 1) }];
  }));

const plain = (value: CellValue): StoredValue | null => value;

const errorsAmong = (book: HeadlessWorkbook, formulas: readonly FormulaOfBook[]): readonly InError[] =>
  formulas.flatMap(({ sheet, address, formula }) => {
    const value = plain(book.value(sheet, address));
    if (value === null || !isStoredError(value)) return [];
    return [{ sheet, address, formula, error: value.error, says: book.errorMessage(sheet, address) ?? "" }];
  });

/** Works a workbook out anew and writes it where that was asked; answers what came of it. */
export const recalc = async (asked: RecalcAsked, book: HeadlessWorkbook, progress: (step: string) => void): Promise<Recalculated> => {
  const { file, sheet: only } = asked;
  progress(`reading ${file}`);
  // The engine has its functions together once it has a workbook.
  book.load({ version: DATA_VERSION, sheets: [{ name: "Sheet1", cells: {} }] });
  await book.settled();
  const before = bytesOf(file);
  const read = opened(before, file, refusing(book, asked.at !== undefined));
  if (only !== undefined && !read.sheets.some(({ name }) => name === only)) {
    throw refusal(`--sheet: ${file} has no sheet "${only}"; it has ${read.sheets.map(({ name }) => name).join(", ")}`);
  }
  progress("working it out");
  await calculated(book, read, asked.limit);
  const formulas = formulasOf(book, read);
  const saved = savedOver(read.file, book);
  const kept = [
    ...Object.entries(read.keptFormulas).flatMap(([sheet, list]) => list.map((one) => ({ sheet, ...one }))),
    ...saved.unsaved.map((one) => ({ formula: book.formula(one.sheet, one.address) ?? "", ...one })),
  ];
  const isShown = ({ sheet }: CellOfBook): boolean => only === undefined || sheet === only;
  const changed = Object.entries(saved.changed).flatMap(([sheet, addresses]) =>
    addresses.map((address) => ({
      sheet, address, was: read.stored[sheet]?.[address] ?? null, is: plain(book.value(sheet, address)),
    })));
  const written: string[] = [];
  if (asked.out !== undefined) {
    progress(`writing ${asked.out}`);
    writeWhole(asked.out, asked.isValues ? valuesFile(read.sheets, { calculated: book, look: book.look }) : saved.bytes);
    written.push(asked.out);
  }
  if (asked.isInPlace && changed.length > 0) {
    progress(`writing ${file}`);
    const backup = writeOver(file, before, saved.bytes);
    written.push(file, backup);
  }
  return {
    file, formulas: formulas.length, changed: changed.filter(isShown), inError: errorsAmong(book, formulas).filter(isShown),
    kept: kept.filter(isShown), restsOnKept: dependants(kept, formulas).filter(isShown), written,
  };
};

/** How the command ends. */
export const exitOf = ({ isCheck }: RecalcAsked, { changed, kept }: Recalculated): number => {
  if (isCheck && changed.length > 0) return EXIT.differs;
  return kept.length > 0 ? EXIT.kept : EXIT.done;
};
