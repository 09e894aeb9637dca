import { isFileFault } from "../workbook-file/file-fault";
import { readWorkbookFile } from "../workbook-file/read-workbook-file";
import { formulaFault } from "../workbook/formula-limits";
import { DATA_VERSION, isSoundSheet, workbookData } from "../workbook/workbook-data";
import { textTable } from "./text-table";
import { nameOfFile, type NamedWorkbook, workbooksIn } from "./workbook-files";

/** What a file holds, and what of it a sheet here does not show, as sentences. */
export interface FileWorkbooks {
  readonly workbooks: readonly NamedWorkbook[];
  readonly notShown: readonly string[];
  /** What could be read in two ways, and how it was. */
  readonly says: readonly string[];
  /** Whether it is a workbook of a spreadsheet, into which what is typed can be saved. */
  readonly isWorkbookFile: boolean;
}

/** What files of our own begin with, after spaces. */
const OWN = /^\s*\{/;
/** Endings of workbooks that are no text. */
const WORKBOOK = /\.(?:xl\w*|ods)$/i;
/** A zip archive, and the compound file of older and of locked workbooks. */
const PACKED = [[0x50, 0x4b], [0xd0, 0xcf, 0x11, 0xe0]] as const;
/** Formulas that are named one by one. */
const MOST_NAMED = 5;
const BEGINNING = 64;

const packedWorkbook = (bytes: Uint8Array, file: string): FileWorkbooks => {
  const read = readWorkbookFile(bytes, { refuses: formulaFault, isSound: isSoundSheet });
  const kept = Object.entries(read.keptFormulas).flatMap(([sheet, formulas]) =>
    formulas.map(({ address, why }) => `${sheet} ${address} ${why}`));
  const formulas = kept.length === 0 ? [] : [
    `${kept.length} ${kept.length === 1 ? "formula shows its" : "formulas show their"} last value only: ` +
      `${kept.slice(0, MOST_NAMED).join("; ")}${kept.length > MOST_NAMED ? `; and ${kept.length - MOST_NAMED} more` : ""}`,
  ];
  return {
    workbooks: [{ name: nameOfFile(file), data: workbookData({ version: DATA_VERSION, sheets: read.sheets }) }],
    says: [],
    isWorkbookFile: true,
    notShown: [...read.notShown.map(({ sheet, what }) => (sheet === undefined ? what : `${sheet}: ${what}`)), ...formulas],
  };
};

/** The workbooks in a file: an Excel workbook, a table as text, or what was saved here. Refuses it as a whole where it is none of them. */
export const fileWorkbooks = (bytes: Uint8Array, file: string, isDayFirstHere: boolean): FileWorkbooks => {
  if (bytes.length === 0) throw new Error("it is empty");
  if (WORKBOOK.test(file) || PACKED.some((mark) => mark.every((byte, place) => bytes[place] === byte))) return packedWorkbook(bytes, file);
  const beginning = new TextDecoder().decode(bytes.subarray(0, BEGINNING));
  if (OWN.test(beginning))
    return { workbooks: workbooksIn(new TextDecoder().decode(bytes), file), notShown: [], says: [], isWorkbookFile: false };
  const name = nameOfFile(file);
  const { sheet, says } = textTable(bytes, "Sheet1", isDayFirstHere);
  return { workbooks: [{ name, data: { version: DATA_VERSION, sheets: [sheet] } }], notShown: [], says, isWorkbookFile: false };
};

/** Why a file was not opened, as a sentence: one that says itself what would do, or one that says what can be opened. */
export const notOpened = (file: string, error: unknown, message: string): string =>
  isFileFault(error)
    ? `${file} was not opened. ${message}`
    : `${file} cannot be opened: ${message}. Choose an Excel workbook (.xlsx), a table as text (.csv) or a file that was saved here.`;
