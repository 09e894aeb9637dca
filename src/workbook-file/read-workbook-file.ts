import { cellAddress } from "../sheets/cell-address";
import type { CellBlock } from "../sheets/cell-blocks";
import type { SheetData } from "../sheets/sheet-data";
import { fileFault } from "./file-fault";
import { type BookNames, type DefinedName, namesInPlace } from "./formula/names-in-place";
import { type Table, tableOf } from "./formula/table-cells";
import { sheetFormula } from "./formula/sheet-formula";
import type { Colours } from "./look/colours";
import { fileStyles, type FileStyles, themeColours } from "./look/read-styles";
import { countedNotShown, type NotShown, notShownOfBook, notShownOfSheet } from "./not-shown";
import { ownExtras, withExtras } from "./own-extras";
import { type PackageParts, packageParts, type Relation } from "./package-parts";
import { isStoredError, type StoredValue } from "./sheet/cell-value";
import { fileBlock } from "./sheet/file-block";
import { type CellReading, type KeptFormula, type ReadCells, readCells, type Refusing } from "./sheet/read-cells";
import { readLists, type TextsOf } from "./sheet/read-lists";
import { readRules } from "./sheet/read-rules";
import { readSettings } from "./sheet/read-settings";
import { type SharedText, sharedTexts } from "./sheet/shared-strings";
import { childOf, childrenOf, countOf, isSet, noWork, relationOf, type Work, type XmlElement } from "./xml-tree";
import { plainText } from "./xml-text";

/** A sheet of an opened file by its part. */
export interface SheetPart {
  readonly name: string;
  readonly part: string;
  /** What the part holds. */
  readonly root: XmlElement;
}

/** An opened file as it was, for saving into it again. */
export interface KeptFile {
  readonly parts: PackageParts;
  /** The part that lists the sheets. */
  readonly book: string;
  readonly sheets: readonly SheetPart[];
  readonly styles: FileStyles;
  readonly strings: readonly SharedText[];
  readonly countsFrom1904: boolean;
  /** What the names of the workbook stand for. */
  readonly names: BookNames;
  /** Whether a formula stays as it was saved, since a live sheet cannot take it. */
  readonly isKept: (sheet: string, address: string) => boolean;
}

export interface ReadWorkbook {
  readonly sheets: readonly SheetData[];
  /** Names of the workbook, in sheet formulas; formulas of cells have what they stand for in their place. */
  readonly names: readonly DefinedName[];
  readonly notShown: readonly NotShown[];
  /** What formulas came to when the file was saved, by sheet and address. */
  readonly stored: Readonly<Record<string, Readonly<Record<string, StoredValue>>>>;
  /** Formulas that stay in the file and show their stored value, by sheet. */
  readonly keptFormulas: Readonly<Record<string, readonly KeptFormula[]>>;
  readonly file: KeptFile;
}

export interface ReadingOptions {
  readonly refuses?: Refusing;
  /** Whether a live sheet can show a sheet; asked of those to which the file adds what its format has no place for. */
  readonly isSound?: (sheet: SheetData) => boolean;
  /** Leaves out what files of our own say besides, which their format has no place for. */
  readonly isBare?: boolean;
  /** Counts what reading takes, for who wants to know. */
  readonly work?: Work;
}

interface OpenSheet extends SheetPart {
  readonly isHidden: boolean;
}

interface OpenBook {
  readonly parts: PackageParts;
  readonly part: string;
  readonly relations: readonly Relation[];
  readonly root: XmlElement;
  readonly sheets: readonly OpenSheet[];
}

const MOST_SHEETS = 1000;
const NAME_LENGTH = 31;
const NOT_IN_NAME = /[\\/?*[\]:]/;

const partOf = (relations: readonly Relation[], type: string): string | undefined =>
  relations.find((one) => one.type === type && !one.isOutside)?.target;

const openSheets = (parts: PackageParts, root: XmlElement, relations: readonly Relation[]): readonly OpenSheet[] => {
  const listed = childrenOf(childOf(root, "sheets"), "sheet");
  if (listed.length > MOST_SHEETS) throw fileFault("too-large");
  const byId = new Map(relations.map((relation) => [relation.id, relation]));
  const sheets = listed.flatMap((sheet) => {
    const relation = byId.get(relationOf(sheet) ?? "");
    if (relation === undefined || relation.isOutside || !parts.has(relation.target)) throw fileFault("broken");
    if (relation.type !== "worksheet") return [];
    const name = sheet.attributes["name"] ?? "";
    if (name.trim() === "" || name.length > NAME_LENGTH || NOT_IN_NAME.test(name)) throw fileFault("broken");
    const isHidden = (sheet.attributes["state"] ?? "visible") !== "visible";
    return [{ name, part: relation.target, isHidden }];
  });
  const names = new Set(sheets.map(({ name }) => name.toLowerCase()));
  const places = new Set(sheets.map(({ part }) => part.toLowerCase()));
  if (sheets.length === 0 || names.size < sheets.length || places.size < sheets.length) throw fileFault("broken");
  return sheets.map((sheet) => ({ ...sheet, root: parts.tree(sheet.part) }));
};

const openBook = (bytes: Uint8Array, work: Work): OpenBook => {
  const parts = packageParts(bytes, work);
  const part = partOf(parts.relations(""), "officeDocument");
  if (part === undefined) throw fileFault("no-workbook");
  if (part.endsWith(".bin")) throw fileFault("binary-workbook");
  const root = parts.tree(part);
  if (root.name !== "workbook") throw fileFault("no-workbook");
  const relations = parts.relations(part);
  return { parts, part, relations, root, sheets: openSheets(parts, root, relations) };
};

const definedNames = ({ root }: OpenBook): readonly DefinedName[] => {
  const all = childrenOf(childOf(root, "sheets"), "sheet").map(({ attributes }) => attributes["name"] ?? "");
  return childrenOf(childOf(root, "definedNames"), "definedName").flatMap(({ attributes: given, text }) => {
    const name = given["name"] ?? "";
    if (name === "" || name.startsWith("_xlnm.") || isSet(given["function"]) || isSet(given["vbProcedure"])) return [];
    const place = countOf(given["localSheetId"]);
    const sheet = place === undefined ? undefined : all[place];
    return [{ name, refers: plainText(text), ...(sheet === undefined ? {} : { sheet }) }];
  });
};

const tablesOf = ({ parts, sheets }: OpenBook): readonly Table[] =>
  sheets.flatMap(({ name, part }) =>
    parts.relations(part).filter(({ type, target }) => type === "table" && parts.has(target)).flatMap(({ target }) => {
      const { attributes: given, ...table } = parts.tree(target);
      const cells = given["ref"] ?? "";
      if (fileBlock(cells) === undefined) return [];
      const columns = childrenOf(childOf({ ...table, attributes: given }, "tableColumns"), "tableColumn");
      const headings = countOf(given["headerRowCount"]) ?? 1;
      const titles = columns.map(({ attributes }) => plainText(attributes["name"] ?? ""));
      return [tableOf(name, given["displayName"] ?? given["name"] ?? "", cells, titles, headings, countOf(given["totalsRowCount"]) ?? 0)];
    }),
  );

interface SheetReading {
  readonly open: OpenSheet;
  readonly reading: CellReading;
  readonly cells: ReadCells;
}

const shownText = (value: StoredValue | undefined): string => (value === undefined || isStoredError(value) ? "" : String(value));

/** The texts of blocks of cells, which lists of choices stand in. */
const textsIn = (read: readonly SheetReading[]): TextsOf => (sheet, block: CellBlock) => {
  const found = read.find(({ open }) => open.name.toLowerCase() === sheet.toLowerCase());
  const texts: string[] = [];
  for (let row = block.row; row < block.row + block.rows; row += 1)
    for (let column = block.column; column < block.column + block.columns; column += 1) {
      const address = cellAddress({ row, column });
      const text = shownText(found?.cells.cells[address]?.value ?? found?.cells.stored[address]);
      if (text !== "") texts.push(text);
    }
  return texts;
};

/** Each is worked out with every calculation. */
const MOST_RULED = 200_000;

/** As many rules or lists as a sheet takes. */
const fitting = <Item extends { readonly cells: string }>(items: readonly Item[]): readonly Item[] => {
  let count = 0;
  return items.filter(({ cells }) => {
    const block = fileBlock(cells);
    count += (block?.rows ?? 1) * (block?.columns ?? 1);
    return count <= MOST_RULED;
  });
};

/** Rows and columns behind the last cell for which a rule may wait for what is typed there. */
const ROOM = 200;

interface ReadSheet {
  readonly sheet: SheetData;
  readonly notShown: readonly NotShown[];
}

/** What all sheets are put together with; what stands on hidden sheets nobody types over, so a list from there stays as it is. */
interface Together {
  readonly parts: PackageParts;
  readonly textsOf: TextsOf;
  readonly colours: Colours;
  readonly hidden: readonly string[];
}

const whole = ({ open, reading, cells }: SheetReading, { parts, textsOf, colours, hidden }: Together): ReadSheet => {
  const [rows, columns] = [cells.rows + ROOM, cells.columns + ROOM];
  const rules = readRules(open.root, cells.cells, rows, columns, reading);
  const lists = readLists(open.root, rows, columns, reading, textsOf);
  const [kept, chosen] = [fitting(rules.rules), fitting(lists.lists)];
  const sheet: SheetData = {
    name: open.name,
    cells: cells.cells,
    ...readSettings(open.root, colours, cells.columns),
    ...(Object.keys(cells.rowHeights).length === 0 ? {} : { rowHeights: cells.rowHeights }),
    ...(cells.hiddenRows.length === 0 ? {} : { hiddenRows: cells.hiddenRows }),
    ...(kept.length === 0 ? {} : { rules: kept }),
    ...(chosen.length === 0 ? {} : { lists: chosen }),
    ...(open.isHidden ? { isHidden: true } : {}),
  };
  const notShown = [
    ...notShownOfSheet(parts, open.part, open.root),
    ...countedNotShown(rules.notShown + (rules.rules.length - kept.length), "conditional format"),
    ...countedNotShown(lists.notShown + (lists.lists.length - chosen.length), "check of what is typed", "checks of what is typed"),
    ...countedNotShown(
      lists.takenFrom.filter((name) => !hidden.includes(name)).length,
      "list of choices from cells, which has what stood in them", "lists of choices from cells, which have what stood in them",
    ),
    ...(cells.hasLooksInTexts ? ["several looks within one text"] : []),
  ];
  return { sheet, notShown: notShown.map((what): NotShown => ({ sheet: open.name, what })) };
};

/** A workbook shows one sheet at least; in a file it may be one that is no sheet of cells. */
const withOneShown = (sheets: readonly SheetData[]): readonly SheetData[] =>
  sheets.some(({ isHidden }) => !isHidden)
    ? sheets
    : sheets.map(({ isHidden, ...sheet }, index) => (index === 0 || !isHidden ? sheet : { ...sheet, isHidden }));

/** Names as formulas of a sheet say them; one that a sheet cannot say is left out. */
const shownNames = (names: readonly DefinedName[], book: BookNames): readonly DefinedName[] =>
  names.flatMap((one) => {
    const text = sheetFormula(one.refers, namesInPlace(book)({ row: 0, column: 0, sheet: one.sheet ?? "" }));
    return typeof text === "string" ? [{ ...one, refers: text }] : [];
  });

const bySheet = <Item>(read: readonly SheetReading[], of: (cells: ReadCells) => Item): Readonly<Record<string, Item>> =>
  Object.fromEntries(read.map(({ open, cells }) => [open.name, of(cells)]));

/**
 * A workbook file as plain data of a live sheet, with what of it is not shown, and the file itself for saving into it again. Throws an
 * error whose message says in a sentence why a file cannot be opened.
 */
export const readWorkbookFile = (bytes: Uint8Array, options: ReadingOptions = {}): ReadWorkbook => {
  const { refuses = () => undefined, isSound = () => true, isBare = false, work = noWork() } = options;
  const book = openBook(bytes, work);
  const { parts, relations, root } = book;
  const optional = (type: string): XmlElement | undefined => {
    const part = partOf(relations, type);
    return part !== undefined && parts.has(part) ? parts.tree(part) : undefined;
  };
  const theme = themeColours(optional("theme"));
  const styles = fileStyles(optional("styles"), theme);
  const strings: readonly SharedText[] = sharedTexts(optional("sharedStrings"));
  const countsFrom1904 = isSet(childOf(root, "workbookPr")?.attributes["date1904"]);
  const names: BookNames = { names: definedNames(book), tables: tablesOf(book) };
  const named = namesInPlace(names);
  const read = book.sheets.map((open): SheetReading => {
    const reading: CellReading = { sheet: open.name, strings, styles, named, countsFrom1904, refuses, work };
    return { open, reading, cells: readCells(childOf(open.root, "sheetData"), reading) };
  });
  const extras = ownExtras(parts, relations);
  const hidden = book.sheets.filter(({ isHidden }) => isHidden).map(({ name }) => name);
  const together: Together = { parts, textsOf: textsIn(read), colours: { theme }, hidden };
  const wholes = read.map((one) => whole(one, together));
  const sheets = withOneShown(wholes.map(({ sheet }) => sheet));
  const kept = new Set(read.flatMap(({ open, cells }) => cells.kept.map(({ address }) => `${open.name}!${address}`)));
  const namesNotShown = countedNotShown(
    names.names.length, "name, for which formulas have what it stands for", "names, for which formulas have what they stand for",
  );
  const ofBook = [...notShownOfBook(relations), ...namesNotShown].map((what): NotShown => ({ what }));
  return {
    sheets: withExtras(sheets, isBare ? undefined : extras, isSound),
    names: shownNames(names.names, names),
    notShown: [...ofBook, ...wholes.flatMap((one) => one.notShown)],
    stored: bySheet(read, ({ stored }) => stored),
    keptFormulas: bySheet(read, ({ kept }) => kept),
    file: {
      parts, book: book.part, styles, strings, countsFrom1904, names,
      sheets: book.sheets.map(({ name, part, root: sheet }) => ({ name, part, root: sheet })),
      isKept: (sheet, address) => kept.has(`${sheet}!${address}`),
    },
  };
};
