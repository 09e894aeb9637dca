import type { OwnLook } from "../sheets/own-look";
import type { SheetData } from "../sheets/sheet-data";
import { METADATA_PART, metadataXml } from "./dynamic-arrays";
import { fileFormula } from "./formula/file-formula";
import type { DefinedName } from "./formula/names-in-place";
import { sheetPrefix } from "./formula/sheet-prefix";
import { writtenStyles } from "./look/written-styles";
import { MAIN, MICROSOFT, OFFICE } from "./namespaces";
import { EXTRAS_PROPERTIES_XML, extrasOf, extrasPart } from "./own-extras";
import { readWorkbookFile } from "./read-workbook-file";
import type { Calculated } from "./sheet/calculated";
import { CHOICES_SHEET, type LongLists, longLists } from "./sheet/written-lists";
import type { CellWriting } from "./sheet/written-cells";
import { type Printing, type WrittenSheet, writtenSheet } from "./sheet/written-sheet";
import { writtenStrings } from "./sheet/written-strings";
import { type AddIn, EXTENSION_PART, extensionXml, PANES_PART, panesXml } from "./web-extension";
import { CONTENT, type WrittenPart, writtenPackage } from "./written-package";
import { attributeText, escapedText } from "./xml-text";
import { columnName } from "../sheets/cell-address";

export interface WritingOptions {
  readonly calculated: Calculated;
  /** Names of the workbook; each stands for what a formula could say. */
  readonly names?: readonly DefinedName[];
  /** The add-in that the workbook is tied to; without one Excel asks for it only when a person opens its pane. */
  readonly addIn?: AddIn;
  readonly printing?: Printing;
}

export interface ValuesOptions {
  readonly calculated: Calculated;
  /** The look a cell has, by itself and by the rules over it. Without it the rules go along, and with it they are not needed. */
  readonly look?: (sheet: string, address: string) => OwnLook;
  readonly printing?: Printing;
}

const WORKBOOK_PART = "xl/workbook.xml";
const EXTRAS_PART = "customXml/item1.xml";
const EXTRAS_PROPERTIES = "customXml/itemProps1.xml";
/** The version of the program whose file form this is; with a lower one everything is worked out again on opening (from memory). */
const CALCULATION = 191_029;

const definedName = (name: string, refers: string, place?: number): string =>
  `<definedName name="${attributeText(name)}"${place === undefined ? "" : ` localSheetId="${place}"`}>${escapedText(refers)}</definedName>`;

/** Rows that are repeated on every page, and what is printed at all; of sheets that stand behind so many others. */
export const printNames = (
  sheets: readonly SheetData[], written: readonly WrittenSheet[], { columns: most }: Printing, before = 0,
): readonly string[] =>
  sheets.flatMap(({ name, frozenRows = 0 }, at) => {
    const place = before + at;
    const { rows, columns } = written[at]?.printed ?? { rows: 1, columns: 1 };
    const on = sheetPrefix(name);
    const area = most === undefined ? [] : [definedName("_xlnm.Print_Area", `${on}$A$1:$${columnName(columns - 1)}$${rows}`, place)];
    return [...area, ...(frozenRows === 0 ? [] : [definedName("_xlnm.Print_Titles", `${on}$1:$${frozenRows}`, place)])];
  });

const ownNames = (names: readonly DefinedName[], sheets: readonly SheetData[]): readonly string[] =>
  names.map(({ name, refers, sheet }) => {
    const place = sheet === undefined ? undefined : sheets.findIndex((one) => one.name === sheet);
    return definedName(name, fileFormula(refers).formula, place);
  });

const workbookXml = (sheets: readonly SheetData[], names: readonly string[]): string => {
  const first = Math.max(sheets.findIndex(({ isHidden }) => !isHidden), 0);
  const listed = sheets.map(({ name, isHidden }, index) =>
    `<sheet name="${attributeText(name)}" sheetId="${index + 1}"${isHidden ? ' state="hidden"' : ""} r:id="rId${index + 1}"/>`);
  const defined = names.length === 0 ? "" : `<definedNames>${names.join("")}</definedNames>`;
  return `<workbook xmlns="${MAIN}" xmlns:r="${OFFICE}"><workbookPr/>` +
    `<bookViews><workbookView activeTab="${first}" firstSheet="${first}"/></bookViews>` +
    `<sheets>${listed.join("")}</sheets>${defined}<calcPr calcId="${CALCULATION}"/></workbook>`;
};

interface Book {
  readonly sheets: readonly SheetData[];
  readonly writing: Omit<CellWriting, "styles" | "strings" | "added" | "dynamic">;
  readonly names: readonly DefinedName[];
  readonly addIn: AddIn | undefined;
  readonly printing: Printing;
  readonly extras: string | undefined;
}

/** A name for the sheet of long lists that none of these has. */
export const freeChoicesName = (sheets: readonly { readonly name: string }[]): string => {
  const taken = new Set(sheets.map(({ name }) => name.toLowerCase()));
  let name = CHOICES_SHEET;
  for (let count = 2; taken.has(name.toLowerCase()); count += 1) name = `${CHOICES_SHEET} ${count}`;
  return name;
};

const extensionParts = (addIn: AddIn | undefined, added: ReadonlySet<string>): readonly WrittenPart[] =>
  addIn === undefined || added.size === 0 ? [] : [
    { name: PANES_PART, content: CONTENT.panes, xml: panesXml(), leadsTo: [[`${MICROSOFT}/webextension`, "webextension1.xml"]] },
    { name: EXTENSION_PART, content: CONTENT.extension, xml: extensionXml(addIn, [...added].sort()) },
  ];

const extrasParts = (extras: string | undefined): readonly WrittenPart[] =>
  extras === undefined ? [] : [
    { name: EXTRAS_PART, content: CONTENT.plain, xml: extras, leadsTo: [[`${OFFICE}/customXmlProps`, "itemProps1.xml"]] },
    { name: EXTRAS_PROPERTIES, content: CONTENT.properties, xml: EXTRAS_PROPERTIES_XML },
  ];

const helperSheets = (long: LongLists): readonly SheetData[] => {
  const sheet = long.sheet();
  return sheet === undefined ? [] : [sheet];
};

const packageOf = (book: Book, isPacked = true): Uint8Array => {
  const [styles, strings, added] = [writtenStyles(), writtenStrings(), new Set<string>()];
  const writing: CellWriting = { ...book.writing, styles, strings, added, dynamic: () => 1 };
  const long = longLists(freeChoicesName(book.sheets));
  const first = book.sheets.findIndex(({ isHidden }) => !isHidden);
  const own = book.sheets.map((sheet, index) => writtenSheet(sheet, index === first, writing, long, book.printing));
  const helpers = helperSheets(long);
  const sheets = [...book.sheets, ...helpers];
  const written = [...own, ...helpers.map((sheet) => writtenSheet(sheet, false, { ...writing, shownLook: undefined }, long, {}))];
  const names = [...printNames(book.sheets, own, book.printing), ...ownNames(book.names, sheets)];
  const extensions = extensionParts(book.addIn, added);
  const leadsTo = [
    ...sheets.map((_, index) => [`${OFFICE}/worksheet`, `worksheets/sheet${index + 1}.xml`] as const),
    [`${OFFICE}/styles`, "styles.xml"] as const,
    [`${OFFICE}/sharedStrings`, "sharedStrings.xml"] as const,
    ...(book.writing.hasFormulas ? [[`${OFFICE}/sheetMetadata`, "metadata.xml"] as const] : []),
    ...(book.extras === undefined ? [] : [[`${OFFICE}/customXml`, `../${EXTRAS_PART}`] as const]),
  ];
  const parts: readonly WrittenPart[] = [
    { name: WORKBOOK_PART, content: CONTENT.workbook, xml: workbookXml(sheets, names), leadsTo },
    ...written.map(({ xml }, index): WrittenPart => ({ name: `xl/worksheets/sheet${index + 1}.xml`, content: CONTENT.worksheet, xml })),
    { name: "xl/styles.xml", content: CONTENT.styles, xml: styles.xml() },
    { name: "xl/sharedStrings.xml", content: CONTENT.strings, xml: strings.xml() },
    ...(book.writing.hasFormulas ? [{ name: METADATA_PART, content: CONTENT.metadata, xml: metadataXml() }] : []),
    ...extrasParts(book.extras),
    ...extensions,
  ];
  const top = [[`${OFFICE}/officeDocument`, WORKBOOK_PART] as const];
  const panes = extensions.length === 0 ? [] : [[`${MICROSOFT}/webextensiontaskpanes`, PANES_PART] as const];
  return writtenPackage(parts, [...top, ...panes], isPacked);
};

/**
 * A new workbook file of these sheets with their formulas alive: in the form that Excel binds to the add-in, and beside each what it comes
 * to. Reading it again gives the same sheets.
 */
export const workbookFile = (sheets: readonly SheetData[], options: WritingOptions): Uint8Array => {
  const { calculated, names = [], addIn, printing = {} } = options;
  const book: Book = { sheets, writing: { calculated, hasFormulas: true }, names, addIn, printing, extras: undefined };
  const { sheets: read } = readWorkbookFile(packageOf(book, false));
  const own = new Set(sheets.map(({ name }) => name));
  const extras = extrasOf(read, sheets, read.map(({ name }) => name).filter((name) => !own.has(name)));
  const isBare = Object.keys(extras.sheets).length + extras.helpers.length === 0;
  return packageOf(isBare ? book : { ...book, extras: extrasPart(extras) });
};

/** A new workbook file that shows what these sheets come to and has no formula in any cell: for anyone, whatever they open it with. */
export const valuesFile = (sheets: readonly SheetData[], { calculated, look, printing = {} }: ValuesOptions): Uint8Array => {
  const writing = { calculated, hasFormulas: false, shownLook: look };
  return packageOf({ sheets, writing, names: [], addIn: undefined, printing, extras: undefined });
};
