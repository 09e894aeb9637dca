import type { SheetData } from "../sheets/sheet-data";
import { EditedBook } from "./edited-book";
import { EditedPackage } from "./edited-package";
import { fileFaultOf } from "./file-fault";
import { addedSplices, knownStyles } from "./look/added-styles";
import { type WrittenStyles, writtenStyles } from "./look/written-styles";
import { hasMovedLines } from "./moved-rows";
import { OFFICE } from "./namespaces";
import { EXTRAS_PROPERTIES_XML, extrasOf, extrasPart, type OwnExtras, ownPart } from "./own-extras";
import { packageParts } from "./package-parts";
import { type KeptFile, type ReadingOptions, readWorkbookFile } from "./read-workbook-file";
import { type SavedOver, savedOver } from "./saved-over";
import type { Calculated } from "./sheet/calculated";
import { editedCells, type EditWriting } from "./sheet/edited-cells";
import { editedSettings } from "./sheet/edited-settings";
import { tableHeadings } from "./sheet/table-headings";
import { longLists } from "./sheet/written-lists";
import { type Printing, writtenSheet } from "./sheet/written-sheet";
import { type WrittenStrings, writtenStrings } from "./sheet/written-strings";
import { freeChoicesName, printNames } from "./write-workbook-file";
import { CONTENT } from "./written-package";
import { appended, grown, inOrderOf, prefixed, prefixOf, spliced, unprefixed } from "./xml-splices";
import { childOf, childrenOf, countOf, noWork, xmlTree } from "./xml-tree";
import { attributeText } from "./xml-text";

export interface SavingOptions extends Pick<ReadingOptions, "refuses" | "isSound"> {
  readonly calculated: Calculated;
  /**
   * The sheets as they were when nobody had typed anything yet, where whoever shows them has them in words of its own; as the file has them
   * without this.
   */
  readonly opened?: readonly SheetData[] | undefined;
  readonly printing?: Printing;
}

export interface SavedInto extends SavedOver {
  /** What a person has made of the workbook that the file does not show elsewhere, as words; opened here it is all there again. */
  readonly notCarried: readonly string[];
}

/** An opened file on the way to another. */
class Editing extends EditedBook {
  readonly styles: WrittenStyles;
  readonly strings: WrittenStrings;
  readonly writing: EditWriting;

  constructor(file: KeptFile, calculated: Calculated) {
    super(file);
    const { styles, strings } = { styles: this.part("styles"), strings: this.part("sharedStrings") };
    const root = styles === undefined ? undefined : file.parts.tree(styles);
    this.styles = writtenStyles(root && knownStyles(root, { theme: [] }));
    this.strings = writtenStrings(strings === undefined ? 0 : file.strings.length);
    const records = childrenOf(childOf(root, "cellXfs"), "xf");
    const text = styles === undefined ? "" : file.parts.text(styles);
    this.writing = {
      styles: this.styles, strings: this.strings, calculated, hasFormulas: true, added: new Set(), countsFrom1904: file.countsFrom1904,
      record: (style) => {
        const found = records[style];
        return found === undefined ? PLAIN_RECORD : unprefixed(text.slice(found.from, found.to));
      },
      dynamic: () => this.dynamic(),
    };
  }

  #finishStyles(): void {
    const [part, added] = [this.part("styles"), this.styles.added()];
    if (part === undefined) this.add(this.edited.freeName("xl/styles", ".xml"), CONTENT.styles, "styles", this.styles.xml());
    else this.edited.splice(part, addedSplices(this.file.parts.text(part), this.file.parts.tree(part), added));
  }

  #finishStrings(): void {
    const [part, { items, count }] = [this.part("sharedStrings"), this.strings.added()];
    if (count === 0) return;
    if (part === undefined) {
      this.add(this.edited.freeName("xl/sharedStrings", ".xml"), CONTENT.strings, "sharedStrings", this.strings.xml());
      return;
    }
    const [text, root] = [this.file.parts.text(part), this.file.parts.tree(part)];
    const uses = (countOf(root.attributes["count"]) ?? this.file.strings.length) + count;
    const counts = { count: String(uses), uniqueCount: String(this.file.strings.length + items.length) };
    this.edited.splice(part, grown(text, root, counts, prefixed(items.join(""), prefixOf(text, root))));
  }

  finish(): Uint8Array {
    this.#finishStyles();
    this.#finishStrings();
    return this.bytes();
  }
}

const PLAIN_RECORD = '<xf numFmtId="0" fontId="0" fillId="0" borderId="0" xfId="0"/>';

const isSame = (one: unknown, other: unknown): boolean => JSON.stringify(one) === JSON.stringify(other);

const quoted = (names: readonly string[]): string => names.map((name) => `“${name}”`).join(", ");

/** Refuses what cannot be saved into a file without wrong figures in it. */
const check = (file: KeptFile, read: readonly SheetData[], now: readonly SheetData[]): void => {
  const kept = new Set(file.sheets.map(({ name }) => name.toLowerCase()));
  for (const { name } of read) kept.delete(name.toLowerCase());
  const twice = now.filter(({ name }) => kept.has(name.toLowerCase())).map(({ name }) => name);
  if (twice.length > 0)
    throw fileFaultOf(`The file has a sheet ${quoted(twice)} of its own, which is not shown here. Give the sheet here another name.`);
  const names = new Set(now.map(({ name }) => name));
  const gone = read.filter(({ name }) => !names.has(name)).map(({ name }) => name);
  const instead = "Save it as a new Excel workbook instead.";
  if (gone.length > 0)
    throw fileFaultOf(`Sheet ${quoted(gone)} of the file is gone or has another name here, and other parts may read it. ${instead}`);
  const moved = read.filter((sheet) => now.some((one) => one.name === sheet.name && hasMovedLines(sheet, one))).map(({ name }) => name);
  if (moved.length > 0) {
    throw fileFaultOf(
      `Rows or columns of ${quoted(moved)} were put in, taken out or moved. The file's charts, names and tables would point at ` +
      `the wrong cells. ${instead}`,
    );
  }
};

/** Children of the workbook in the order of CT_Workbook (ECMA-376-1, A.2, sml.xsd), as far as they matter here. */
const BOOK_ORDER = ["sheets", "functionGroups", "externalReferences", "definedNames", "calcPr", "oleSize", "customWorkbookViews",
  "pivotCaches", "smartTagPr", "smartTagTypes", "webPublishing", "fileRecoveryPr", "webPublishObjects", "extLst"];

/** Sheets that the file has not yet, behind its own. */
const addSheets = (
  added: readonly SheetData[], editing: Editing, taken: readonly { readonly name: string }[], printing: Printing,
): void => {
  const { file, edited, writing } = editing;
  const long = longLists(freeChoicesName(taken));
  const own = added.map((sheet) => writtenSheet(sheet, false, writing, long, printing));
  const helper = long.sheet();
  const helpers = helper === undefined ? [] : [helper];
  const written = [...own, ...helpers.map((sheet) => writtenSheet(sheet, false, writing, long, {}))];
  const [text, root] = [file.parts.text(file.book), file.parts.tree(file.book)];
  const sheets = childOf(root, "sheets");
  if (sheets === undefined || written.length === 0) return;
  const prefix = prefixOf(text, root);
  const idName = Object.keys(sheets.children[0]?.attributes ?? {}).find((name) => name.endsWith(":id")) ?? "r:id";
  const most = sheets.children.reduce((highest, one) => Math.max(highest, countOf(one.attributes["sheetId"]) ?? 0), 0);
  const listed = [...added, ...helpers].map(({ name, isHidden }, at) => {
    const part = edited.freeName("xl/worksheets/sheet", ".xml");
    const id = editing.add(part, CONTENT.worksheet, "worksheet", written[at]?.xml ?? "");
    const hidden = isHidden ? ' state="hidden"' : "";
    return `<${prefix}sheet name="${attributeText(name)}" sheetId="${most + at + 1}"${hidden} ${idName}="${id}"/>`;
  });
  const titles = printNames(added, own, printing, sheets.children.length);
  const names = prefixed(titles.join(""), prefix);
  const there = childOf(root, "definedNames");
  edited.splice(file.book, [
    ...appended(text, sheets, listed.join("")),
    ...(names === "" ? [] : there === undefined
      ? inOrderOf(text, root, BOOK_ORDER, "definedNames", `<${prefix}definedNames>${names}</${prefix}definedNames>`)
      : appended(text, there, names)),
  ]);
};

const NOT_SHOWN_BY_FILE: Readonly<Record<string, string>> = {
  rules: "looks by rule", lists: "lists of choices", filter: "its filter", frozenRows: "frozen rows", frozenColumns: "frozen columns",
  hidesGridLines: "grid lines", isHidden: "whether it is hidden", tabColour: "the colour of its tab", columnWidths: "widths of columns",
  rowHeights: "heights of rows", hiddenRows: "hidden rows", hiddenColumns: "hidden columns", merged: "merged cells",
};

type Bag = Readonly<Record<string, unknown>>;

/** Settings that are others now and that the file, read without what it says for us alone, does not have. */
const notCarried = (read: readonly SheetData[], now: readonly SheetData[], written: readonly SheetData[]): readonly string[] => {
  const of = (sheets: readonly SheetData[], name: string): Bag => ({ ...sheets.find((one) => one.name === name) });
  const settings = now.flatMap(({ name }) => {
    const [was, is, has] = [of(read, name), of(now, name), of(written, name)];
    const lost = Object.entries(NOT_SHOWN_BY_FILE).filter(([key]) => !isSame(was[key], is[key]) && !isSame(has[key], is[key]));
    return lost.length === 0 ? [] : [`${name}: ${lost.map(([, what]) => what).join(", ")}`];
  });
  const names = new Set(written.map((sheet) => sheet.name));
  const order = now.map(({ name }) => name).filter((name) => names.has(name));
  const shown = written.map(({ name }) => name).filter((name) => order.includes(name));
  return [...settings, ...(isSame(order, shown) ? [] : ["the order of its sheets"])];
};

const withExtrasPart = (bytes: Uint8Array, book: string, extras: OwnExtras): Uint8Array => {
  const parts = packageParts(bytes, noWork());
  const edited = new EditedPackage(parts);
  const part = ownPart(parts, parts.relations(book));
  const isBare = Object.keys(extras.sheets).length + extras.helpers.length === 0;
  if (part !== undefined) edited.replace(part, extrasXml(parts.text(part), extras));
  else if (!isBare) {
    const name = edited.freeName("customXml/item", ".xml");
    const properties = edited.freeName("customXml/itemProps", ".xml");
    edited.add(name, CONTENT.plain, extrasPart(extras));
    edited.add(properties, CONTENT.properties, EXTRAS_PROPERTIES_XML);
    edited.lead(book, `${OFFICE}/customXml`, `/${name}`);
    edited.lead(name, `${OFFICE}/customXmlProps`, `/${properties}`);
  } else return bytes;
  return edited.bytes();
};

/** Extras in the place of those before, under the same first line. */
const extrasXml = (before: string, extras: OwnExtras): string => {
  const [declaration = ""] = /^\uFEFF?\s*<\?xml[^>]*\?>\s*/.exec(before) ?? [];
  return declaration + extrasPart(extras);
};

const sheetNamed = (sheets: readonly SheetData[], name: string): SheetData | undefined => sheets.find((one) => one.name === name);

/** Puts what is other than before into the sheets of the file; answers whether formulas came or went. */
const editSheets = (before: readonly SheetData[], now: readonly SheetData[], { file, edited, writing }: Editing): boolean => {
  let hasOtherFormulas = false;
  for (const { name, part } of file.sheets) {
    const [was, is] = [sheetNamed(before, name), sheetNamed(now, name)];
    if (was === undefined || is === undefined) continue;
    const sheet = { text: file.parts.text(part), root: file.parts.tree(part), before: was, now: is };
    const cells = editedCells(sheet, writing);
    hasOtherFormulas ||= cells.hasOtherFormulas;
    const text = spliced(sheet.text, cells.splices);
    const root = text === sheet.text ? sheet.root : xmlTree(text, part, noWork());
    edited.replace(part, spliced(text, editedSettings({ text, root, before: was, now: is })));
    for (const { type, target } of file.parts.relations(part)) {
      if (type !== "table" || !file.parts.has(target)) continue;
      edited.splice(target, tableHeadings({ text: file.parts.text(target), root: file.parts.tree(target), before: was, now: is }));
    }
  }
  return hasOtherFormulas;
};

/** A sheet as it is, with what nobody has changed as it was read: that is what the file says already. */
const unchangedAsRead = (now: SheetData, before: SheetData | undefined, read: SheetData | undefined): SheetData => {
  if (before === undefined || read === undefined) return now;
  const merged = (is: Bag, was: Bag, said: Bag): Bag => {
    const all = new Set([...Object.keys(is), ...Object.keys(said)]);
    return Object.fromEntries([...all].flatMap((name) => {
      const one = isSame(is[name], was[name]) ? said[name] : is[name];
      return one === undefined ? [] : [[name, one]];
    }));
  };
  const { cells, ...settings } = now;
  const { cells: cellsBefore, ...settingsBefore } = before;
  const { cells: cellsRead, ...settingsRead } = read;
  return {
    ...merged({ ...settings }, { ...settingsBefore }, { ...settingsRead }), name: now.name,
    cells: merged(cells, cellsBefore, cellsRead) as SheetData["cells"],
  };
};

/**
 * An opened file with what a person has typed into its sheets, the sheets put in since, and what all formulas come to now. What the file
 * has besides stays in it: parts in which nothing changed byte for byte. Throws where what stays would point at the wrong cells.
 */
export const savedInto = (bytes: Uint8Array, now: readonly SheetData[], options: SavingOptions): SavedInto => {
  const { calculated, printing = {}, opened, ...reading } = options;
  const read = readWorkbookFile(bytes, reading);
  const before = opened ?? read.sheets;
  check(read.file, before, now);
  const { file } = read;
  const editing = new Editing(file, calculated);
  const hasOtherFormulas = editSheets(before, now, editing);
  const known = new Set(file.sheets.map(({ name }) => name.toLowerCase()));
  const added = now.filter(({ name }) => !known.has(name.toLowerCase()));
  addSheets(added, editing, [...file.sheets, ...now], printing);
  const chain = editing.part("calcChain");
  // An order of calculation that lists cells without formulas is a fault to Excel (from memory); it makes another one where there is none.
  if (chain !== undefined && (hasOtherFormulas || added.length > 0)) editing.edited.remove(file.book, chain);
  const written = readWorkbookFile(editing.finish(), { ...reading, isBare: true });
  const over = savedOver(written.file, calculated);
  const own = new Set([...now, ...read.sheets].map(({ name }) => name));
  const helpers = written.sheets.map(({ name }) => name).filter((name) => !own.has(name));
  const meant = now.map((sheet) => unchangedAsRead(sheet, sheetNamed(before, sheet.name), sheetNamed(read.sheets, sheet.name)));
  return {
    ...over,
    bytes: withExtrasPart(over.bytes, file.book, extrasOf(written.sheets, meant, helpers)),
    notCarried: notCarried(before, now, written.sheets),
  };
};
