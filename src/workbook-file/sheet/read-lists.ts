import { blockAddress, type CellBlock } from "../../sheets/cell-blocks";
import type { ChoiceList } from "../../sheets/sheet-data";
import { LONGEST_STORED, sheetFormula } from "../formula/sheet-formula";
import { childOf, childrenOf, spend, type XmlElement } from "../xml-tree";
import { plainText } from "../xml-text";
import { fileBlock, fileBlocks, within } from "./file-block";
import type { CellReading } from "./read-cells";

export interface ReadLists {
  readonly lists: readonly ChoiceList[];
  /** The sheet of each list that is taken from cells: a live sheet has the texts that stood there when it was opened. */
  readonly takenFrom: readonly string[];
  /** How many checks of what is typed the live sheet does not have. */
  readonly notShown: number;
}

/** Texts of the cells of a block on a sheet, row by row. */
export type TextsOf = (sheet: string, block: CellBlock) => readonly string[];

/** Choices of one list that a person can look through. */
const MOST_CHOICES = 5000;
const REFERENCE = /^(?:('(?:[^']|'')*'|[^'!]+)!)?([$A-Z\d:]+)$/i;

/** Choices written where they are used; spaces around one are none of it. */
const inlineChoices = (text: string): readonly string[] =>
  text.slice(1, -1).replaceAll('""', '"').split(",").map((choice) => choice.trim()).filter((choice) => choice !== "");

interface Choices {
  readonly options: readonly string[];
  readonly takenFrom?: string;
}

const choicesOf = (formula: string, block: CellBlock, reading: CellReading, textsOf: TextsOf): Choices | undefined => {
  if (formula.length > LONGEST_STORED) return undefined;
  const text = /^"(?:[^"]|"")*"$/.test(formula) ? formula : sheetFormula(formula, reading.named({ ...block, sheet: reading.sheet }));
  if (typeof text !== "string") return undefined;
  if (text.startsWith('"')) return { options: inlineChoices(text) };
  const [, prefix = reading.sheet, cells = ""] = REFERENCE.exec(text) ?? [];
  const found = fileBlock(cells);
  if (found === undefined || found.rows * found.columns > MOST_CHOICES) return undefined;
  spend(reading.work, found.rows * found.columns);
  const sheet = prefix.replace(/^'|'$/g, "").replaceAll("''", "'");
  return { options: textsOf(sheet, found), takenFrom: sheet };
};

interface Validation {
  readonly kind: string;
  readonly formula: string;
  readonly cells: string;
}

/** Validations in the first form, and in the later one for lists that stand on another sheet ([MS-XLSX] 2.6.42). */
const validations = (sheet: XmlElement): readonly Validation[] => {
  const first = childrenOf(childOf(sheet, "dataValidations"), "dataValidation").map((one) => ({
    kind: one.attributes["type"] ?? "none", formula: plainText(childOf(one, "formula1")?.text ?? ""), cells: one.attributes["sqref"] ?? "",
  }));
  const later = childrenOf(childOf(sheet, "extLst"), "ext").flatMap((ext) => childrenOf(childOf(ext, "dataValidations"), "dataValidation"));
  return [...first, ...later.map((one) => ({
    kind: one.attributes["type"] ?? "none",
    formula: plainText(childOf(childOf(one, "formula1"), "f")?.text ?? ""),
    cells: childOf(one, "sqref")?.text ?? "",
  }))];
};

/** Lists of choices of a sheet. */
export const readLists = (sheet: XmlElement, rows: number, columns: number, reading: CellReading, textsOf: TextsOf): ReadLists => {
  const [lists, takenFrom]: [ChoiceList[], string[]] = [[], []];
  let notShown = 0;
  for (const { kind, formula, cells } of validations(sheet)) {
    const blocks = fileBlocks(cells);
    const [first] = blocks;
    const choices = kind === "list" && first !== undefined ? choicesOf(formula, first, reading, textsOf) : undefined;
    const options = choices?.options;
    // An empty or a torn list would refuse whatever is typed.
    const isSound = options !== undefined && options.length > 0 && options.every((option) => option !== "" && !option.includes(","));
    if (!isSound) notShown += kind === "none" ? 0 : 1;
    else {
      if (choices?.takenFrom !== undefined) takenFrom.push(choices.takenFrom);
      lists.push(...blocks.flatMap((one) => {
        const part = within(one, rows, columns);
        return part === undefined ? [] : [{ cells: blockAddress(part), options }];
      }));
    }
  }
  return { lists, takenFrom, notShown };
};
