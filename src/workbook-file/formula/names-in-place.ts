import type { CellPlace } from "../../sheets/cell-address";
import { isCell } from "./formula-tokens";
import { type Named, sheetFormula } from "./sheet-formula";
import { shiftedFormula } from "./shifted-formula";
import { type Table, tableCells } from "./table-cells";

/** A name of a workbook: what it stands for, and the one sheet on which it counts where it does not count on all. */
export interface DefinedName {
  readonly name: string;
  /** As the file writes it, without an = sign. */
  readonly refers: string;
  readonly sheet?: string;
}

export interface BookNames {
  readonly names: readonly DefinedName[];
  readonly tables: readonly Table[];
}

/** The cell a formula stands in. */
export interface Standing extends CellPlace {
  readonly sheet: string;
}

/** Names that stand for names, and so on: one within the other so often that they must go round in a circle. */
const MOST_DEPTH = 16;
/** What a formula grows to through its names, at the most; the parts it is made of are counted in characters. */
const MOST_CHARACTERS = 50_000;
const ALONE = /^(?:(?:'(?:[^']|'')*'|[\w.]+)!)?\$?[A-Z]{1,3}\$?\d+(?::\$?[A-Z]{1,3}\$?\d+)?$|^[\d.]+$|^"(?:[^"]|"")*"$|^LAMBDA\(/i;

type ByName<Item> = ReadonlyMap<string, Item>;

const key = (name: string, sheet?: string): string => (sheet === undefined ? name : `${sheet}!${name}`).toLowerCase();

/** Puts in the place of names and tables what they stand for: a live sheet has cells alone. */
export const namesInPlace = ({ names, tables }: BookNames): ((standing: Standing) => Named) => {
  const defined: ByName<DefinedName> = new Map(names.map((one) => [key(one.name, one.sheet), one]));
  const tabled: ByName<Table> = new Map(tables.map((one) => [key(one.name), one]));
  const find = (name: string, sheet: string): DefinedName | undefined => defined.get(key(name, sheet)) ?? defined.get(key(name));
  return (standing) => {
    const table: Named["table"] = (name, asked) => {
      const found = tabled.get(key(name));
      return found && tableCells(found, asked, standing.sheet, standing.row);
    };
    let grown = 0;
    const within = (depth: number): Named => ({
      table,
      name: (name, sheet) => {
        if (isCell(name)) return undefined;
        const found = find(name, sheet ?? standing.sheet);
        if (found === undefined) return tabled.has(key(name)) && sheet === undefined ? table(name, "[]") : undefined;
        grown += found.refers.length;
        if (depth > MOST_DEPTH || grown > MOST_CHARACTERS) return { unshown: "has names that stand for one another too often" };
        const text = sheetFormula(shiftedFormula(found.refers, standing.row, standing.column), within(depth + 1));
        if (typeof text !== "string") return text;
        return ALONE.test(text) ? text : `(${text})`;
      },
    });
    return within(0);
  };
};
