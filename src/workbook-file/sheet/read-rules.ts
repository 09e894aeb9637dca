import { cellAddress } from "../../sheets/cell-address";
import { blockAddress, type CellBlock } from "../../sheets/cell-blocks";
import type { RuleLook, SheetData } from "../../sheets/sheet-data";
import { tapeRules } from "../../sheets/tape-rules";
import { formulaTokens } from "../formula/formula-tokens";
import { LONGEST_STORED, sheetFormula } from "../formula/sheet-formula";
import { shiftedFormula } from "../formula/shifted-formula";
import { childrenOf, countOf, numberOf, spend, type XmlElement } from "../xml-tree";
import { plainText } from "../xml-text";
import { fileBlocks, within } from "./file-block";
import { type CellReading, FORMULA_WORK } from "./read-cells";

export interface ReadRules {
  readonly rules: readonly RuleLook[];
  /** How many the live sheet cannot show. */
  readonly notShown: number;
}

const OPERATORS: Readonly<Record<string, string>> = {
  lessThan: "<", lessThanOrEqual: "<=", equal: "=", notEqual: "<>", greaterThanOrEqual: ">=", greaterThan: ">",
};

/** Kinds that carry the formula they are tested by (ECMA-376-1, 18.3.1.10, and 18.18.12 for the kinds). */
const WITH_FORMULA = [
  "expression", "containsText", "notContainsText", "beginsWith", "endsWith", "containsBlanks", "notContainsBlanks", "containsErrors",
  "notContainsErrors", "timePeriod",
];

/** What a rule compares with, so that a comparison of its own stays by itself. */
const operand = (formula: string): string => (formulaTokens(formula).length === 1 ? formula : `(${formula})`);

/** When a rule holds, as a formula for the first cell; undefined where no formula says it. */
const whenOf = ({ attributes: given, ...rule }: XmlElement, blocks: readonly CellBlock[], first: string): string | undefined => {
  const [said, more] = rule.children.filter(({ name }) => name === "formula").map(({ text }) => plainText(text));
  const { type: kind = "", operator = "" } = given;
  if (WITH_FORMULA.includes(kind)) return said;
  if (kind === "cellIs" && said !== undefined) {
    // What is too long is refused by its length, without being read.
    const [one, other] = [said, more].map((text) => (text === undefined || text.length > LONGEST_STORED ? text : operand(text)));
    if (operator === "between") return other && `AND(${first}>=${one},${first}<=${other})`;
    if (operator === "notBetween") return other && `OR(${first}<${one},${first}>${other})`;
    const sign = OPERATORS[operator];
    return sign && `${first}${sign}${one}`;
  }
  const [block] = blocks;
  if (block === undefined || blocks.length > 1 || (kind !== "duplicateValues" && kind !== "uniqueValues")) return undefined;
  const all = blockAddress(block).replaceAll(/[A-Z]+|\d+/g, (part) => `$${part}`);
  return `COUNTIF(${all},${first})${kind === "uniqueValues" ? "=" : ">"}1`;
};

/** Whether a rule only shows a length in the marks of a tape, as our own formats do by themselves. */
const isTapeRule = (when: string, first: string, format: string | undefined): boolean =>
  format !== undefined && tapeRules(format).some(({ formula }) => formula.slice(1).replaceAll(/\bRC\b/g, first) === when);

interface Ranked extends RuleLook {
  readonly rank: number;
}

/** Rules of a sheet that formulas can say, the first to count first. */
export const readRules = (sheet: XmlElement, cells: SheetData["cells"], rows: number, columns: number, reading: CellReading): ReadRules => {
  const rules: Ranked[] = [];
  let notShown = 0;
  for (const formatting of childrenOf(sheet, "conditionalFormatting")) {
    const blocks = fileBlocks(formatting.attributes["sqref"] ?? "");
    const [block] = blocks;
    for (const rule of block === undefined ? [] : childrenOf(formatting, "cfRule")) {
      const first = cellAddress(block ?? { row: 0, column: 0 });
      const said = whenOf(rule, blocks, first);
      const when = said !== undefined && said.length <= LONGEST_STORED ? said : undefined;
      spend(reading.work, blocks.length, FORMULA_WORK * blocks.length * (when?.length ?? 0));
      const { look, hasFormat } = reading.styles.rule(countOf(rule.attributes["dxfId"]));
      if (when !== undefined && Object.keys(look).length === 0 && hasFormat && isTapeRule(when, first, cells[first]?.format)) continue;
      const rank = numberOf(rule.attributes["priority"]) ?? 0;
      const read = when === undefined || Object.keys(look).length === 0 ? [] : blocks.flatMap((one) => {
        const part = within(one, rows, columns);
        const text = shiftedFormula(when, one.row - (block?.row ?? 0), one.column - (block?.column ?? 0));
        const formula = part && sheetFormula(text, reading.named({ ...part, sheet: reading.sheet }));
        if (part === undefined || typeof formula !== "string" || reading.refuses(`=${formula}`) !== undefined) return [];
        return [{ cells: blockAddress(part), when: `=${formula}`, look, rank }];
      });
      if (read.length === 0) notShown += 1;
      rules.push(...read);
    }
  }
  const inOrder = rules.sort((one, other) => one.rank - other.rank);
  return { rules: inOrder.map(({ cells: block, when, look }) => ({ cells: block, when, look })), notShown };
};
