import type { KeptFile, SheetPart } from "./read-workbook-file";
import { childOf, childrenOf, isSet, type XmlElement } from "./xml-tree";
import { plainText } from "./xml-text";

/** A formula of a file that stands in no cell. */
export interface FileText {
  readonly part: string;
  readonly element: XmlElement;
  readonly text: string;
  readonly sheet?: string;
  /** Which name, cells of a rule or a list, or column of a table it is of. */
  readonly of: string;
  /** Whether it is of a rule or a list. */
  readonly isRule: boolean;
}

/** The elements of a part that hold one formula each, whose names say what they are of (ECMA-376-1, 18.3.1.43, 18.3.1.33, 18.5.1). */
const OF_RULES = ["formula", "formula1", "formula2"];

const within = (element: XmlElement | undefined, ...names: readonly string[]): readonly XmlElement[] =>
  names.reduce<readonly XmlElement[]>((all, name) => all.flatMap((one) => childrenOf(one, name)), element === undefined ? [] : [element]);

const textOf = (element: XmlElement): string => plainText(element.text).replace(/^=/, "");

/** Rules and checks of what is typed: those of the sheet itself, and in its extension those that look at other sheets ([MS-XLSX] 2.6). */
const ofRules = ({ name, part, root }: SheetPart): readonly FileText[] => {
  const own = [
    ...within(root, "conditionalFormatting").map((block) => ({ cells: block.attributes["sqref"], formulas: within(block, "cfRule") })),
    ...within(root, "dataValidations", "dataValidation").map((one) => ({ cells: one.attributes["sqref"], formulas: [one] })),
  ];
  const extended = within(root, "extLst", "ext").flatMap((one) => [
    ...within(one, "conditionalFormattings", "conditionalFormatting").map((block) =>
      ({ cells: childOf(block, "sqref")?.text, formulas: within(block, "cfRule") })),
    ...within(one, "dataValidations", "dataValidation").map((list) =>
      ({ cells: childOf(list, "sqref")?.text, formulas: within(list, "formula1").concat(within(list, "formula2")) })),
  ]);
  const found = [
    ...own.flatMap(({ cells, formulas }) => formulas.flatMap((one) => one.children.filter((child) => OF_RULES.includes(child.name)))
      .map((element) => ({ cells, element }))),
    ...extended.flatMap(({ cells, formulas }) => formulas.flatMap((one) => childrenOf(one, "f")).map((element) => ({ cells, element }))),
  ];
  return found.map(({ cells = "", element }) => ({ part, element, text: textOf(element), sheet: name, of: cells, isRule: true }));
};

const ofNames = ({ parts, book }: KeptFile): readonly FileText[] =>
  within(parts.tree(book), "definedNames", "definedName").filter(({ attributes }) => !isSet(attributes["vbProcedure"]))
    .map((element) => ({ part: book, element, text: textOf(element), of: element.attributes["name"] ?? "", isRule: false }));

/** What a column of a table puts into each new row, and below its last (18.5.1.1 and 18.5.1.6). */
const ofTables = ({ parts, sheets }: KeptFile): readonly FileText[] => {
  // A damaged file may lead to one table from two sheets.
  const seen = new Set<string>();
  const isNew = (part: string): boolean => !seen.has(part.toLowerCase()) && seen.add(part.toLowerCase()).size > 0;
  return sheets.flatMap(({ name, part: from }) =>
    parts.relations(from).filter(({ type, target, isOutside }) => type === "table" && !isOutside && parts.has(target) && isNew(target))
      .flatMap(({ target: part }) => {
        const table = parts.tree(part);
        return within(table, "tableColumns", "tableColumn").flatMap((column) =>
          column.children.filter((one) => one.name === "calculatedColumnFormula" || one.name === "totalsRowFormula").map((element) => ({
            part, element, text: textOf(element), sheet: name, isRule: false,
            of: `${table.attributes["displayName"] ?? ""}[${plainText(column.attributes["name"] ?? "")}]`,
          })));
      }));
};

/** The formulas of a file that stand in no cell: of names, tables, rules and lists. */
export const fileTexts = (file: KeptFile): readonly FileText[] =>
  [...ofNames(file), ...ofTables(file), ...file.sheets.flatMap(ofRules)].filter(({ text }) => text !== "");
