import type { PackageParts, Relation } from "./package-parts";
import { childOf, childrenOf, isSet, type XmlElement } from "./xml-tree";

/** Something of a file that a live sheet does not show and a saved copy keeps. */
export interface NotShown {
  /** The sheet it is on; missing where it belongs to the whole workbook. */
  readonly sheet?: string;
  readonly what: string;
}

const counted = (count: number, one: string, more = `${one}s`): readonly string[] =>
  count === 0 ? [] : [count === 1 ? `1 ${one}` : `${count} ${more}`];

/** What parts that a sheet leads to are in a person's words. */
const OF_SHEETS: readonly (readonly [type: RegExp, one: string, more?: string])[] = [
  [/^comments$/, "set of comments", "sets of comments"],
  [/^pivotTable$/, "pivot table"],
  [/^table$/, "table, of which only the cells are shown", "tables, of which only the cells are shown"],
  [/^(?:oleObject|package)$/, "embedded object"],
  [/^(?:slicer|timeline)$/, "slicer"],
  [/^ctrlProp$/, "control"],
  [/^hyperlink$/, "link on a cell", "links on cells"],
  [/^queryTable$/, "query"],
  [/^image$/, "background picture"],
];

const OF_BOOKS: readonly (readonly [type: RegExp, what: string])[] = [
  [/^vbaProject$/, "macros"],
  [/^externalLink$/, "links to other workbooks"],
  [/^connections$/, "data connections"],
  [/^(?:chartsheet|dialogsheet|xlMacrosheet|xlIntlMacrosheet)$/, "sheets that are a chart, a dialog or macros"],
];

const ofType = (relations: readonly Relation[], type: RegExp): readonly Relation[] => relations.filter((one) => type.test(one.type));

/** Charts, pictures and shapes of a sheet. */
const drawn = (parts: PackageParts, relations: readonly Relation[]): readonly string[] => {
  const drawings = ofType(relations, /^drawing$/).filter(({ target }) => parts.has(target));
  const within = drawings.flatMap(({ target }) => parts.relations(target));
  const charts = ofType(within, /^chart(?:Ex)?$/).length;
  const pictures = ofType(within, /^image$/).length;
  const others = charts + pictures === 0 ? drawings.length : 0;
  return [...counted(charts, "chart"), ...counted(pictures, "picture"), ...counted(others, "drawing")];
};

const EXTENSIONS: Readonly<Record<string, string>> = {
  sparklineGroups: "small charts within cells", conditionalFormattings: "conditional formats of a newer kind",
};

const inSheet = (sheet: XmlElement): readonly string[] => {
  const rows = childrenOf(childOf(sheet, "sheetData"), "row");
  const columns = childrenOf(childOf(sheet, "cols"), "col");
  const isGrouped = [...rows, ...columns].some(({ attributes }) => Number(attributes["outlineLevel"] ?? 0) > 0);
  const added = childrenOf(childOf(sheet, "extLst"), "ext").flatMap(({ children }) => children);
  const extensions = added.flatMap(({ name }) => (Object.hasOwn(EXTENSIONS, name) ? (EXTENSIONS[name] ?? []) : []));
  return [
    ...(childOf(sheet, "autoFilter") === undefined ? [] : ["the buttons of a filter"]),
    ...(isSet(childOf(sheet, "sheetProtection")?.attributes["sheet"]) ? ["its protection"] : []),
    ...(isGrouped ? ["groups of rows or columns"] : []),
    ...new Set(extensions),
  ];
};

/** What of a sheet is not shown besides what reading its cells, rules and lists has found. */
export const notShownOfSheet = (parts: PackageParts, part: string, sheet: XmlElement): readonly string[] => {
  const relations = parts.relations(part);
  return [
    ...drawn(parts, relations),
    ...OF_SHEETS.flatMap(([type, one, more]) => counted(ofType(relations, type).length, one, more)),
    ...inSheet(sheet),
  ];
};

export const notShownOfBook = (relations: readonly Relation[]): readonly string[] =>
  OF_BOOKS.flatMap(([type, what]) => (ofType(relations, type).length === 0 ? [] : [what]));

/** So many of a kind that reading has counted. */
export const countedNotShown = (count: number, one: string, more?: string): readonly string[] => counted(count, one, more);
