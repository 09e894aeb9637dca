import { cellAddress } from "../../sheets/cell-address";
import type { SheetData } from "../../sheets/sheet-data";
import { fileFaultOf } from "../file-fault";
import { isClosed, type Splice, startOf, unclosed, withAttribute } from "../xml-splices";
import { childOf, childrenOf, countOf, type XmlElement } from "../xml-tree";
import { attributeText } from "../xml-text";
import { fileBlock } from "./file-block";

/** A table of a file as its part says it, and the sheet it is on, as it was and as it is. */
export interface EditedTable {
  readonly text: string;
  readonly root: XmlElement;
  readonly before: SheetData;
  readonly now: SheetData;
}

/** A heading as the name of a column; line ends are written as their code (ECMA-376-1, 22.9.2.19). */
const nameText = (heading: string): string => attributeText(heading.replaceAll(/\r?\n/g, "_x000a_"));

/**
 * The columns of a table named as the headings in its cells, where those are others now: a file in which the two differ is a damaged one to
 * Excel (from memory). Throws where a heading is gone or there twice.
 */
export const tableHeadings = ({ text, root, before, now }: EditedTable): readonly Splice[] => {
  const block = fileBlock(root.attributes["ref"] ?? "");
  if (block === undefined || countOf(root.attributes["headerRowCount"]) === 0) return [];
  const columns = childrenOf(childOf(root, "tableColumns"), "tableColumn").slice(0, block.columns);
  const addressOf = (at: number): string => cellAddress({ row: block.row, column: block.column + at });
  const headings = columns.map(({ attributes }, at) => {
    const [was, is] = [before.cells[addressOf(at)], now.cells[addressOf(at)]];
    return was?.value === is?.value && was?.formula === is?.formula ? attributes["name"] : is?.value;
  });
  if (headings.every((heading, at) => heading === columns[at]?.attributes["name"])) return [];
  const known = new Set<string>();
  for (const [at, heading] of headings.entries()) {
    const isFit = typeof heading === "string" && heading.trim() !== "" && !known.has(heading.toLowerCase());
    if (!isFit) {
      throw fileFaultOf(
        `${now.name} ${addressOf(at)} is a heading of the table “${root.attributes["displayName"] ?? ""}” of the file: ` +
        "it must be a text that no other heading of the table has.",
      );
    }
    known.add(heading.toLowerCase());
  }
  return columns.flatMap((column, at): readonly Splice[] => {
    const heading = headings[at];
    if (typeof heading !== "string" || heading === column.attributes["name"]) return [];
    const tag = withAttribute(unclosed(startOf(text, column)), "name", nameText(heading));
    return [{ from: column.from, to: column.opened, text: tag + (isClosed(column) ? "/>" : ">") }];
  });
};
