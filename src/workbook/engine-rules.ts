import {
  DataValidationErrorStyle, DataValidationRenderMode, DataValidationType, type Injector, type IRange, type IResources,
  type ISheetDataValidationRule, type IStyleBase,
} from "@univerjs/core";
import { DataValidationModel } from "@univerjs/data-validation";
import { LexerTreeBuilder } from "@univerjs/engine-formula";
import { deserializeListOptions, serializeListOptions } from "@univerjs/sheets";
import {
  CFRuleType, CFSubRuleType, ConditionalFormattingRuleModel, type IConditionFormattingRule, type IFormulaHighlightCell,
  SHEET_CONDITIONAL_FORMATTING_PLUGIN,
} from "@univerjs/sheets-conditional-formatting";
import { DATA_VALIDATION_PLUGIN_NAME } from "@univerjs/sheets-data-validation";
import { blockOfRange, rangeOf } from "./cell-range";
import { choiceSentence } from "./choice-sentence";
import { lookStyle, wholeLook } from "./engine-look";
import type { ChoiceList, RuleLook, SheetData } from "./workbook-data";

/** A look by a formula as the engine keeps it; it has other kinds, which are neither stored nor offered. */
export type LookRule = IConditionFormattingRule<IFormulaHighlightCell>;

let made = 0;

/** A name for a rule that no other has, with its place among all that were made. */
export const newRuleId = (): string => {
  made += 1;
  return `rule-${made}`;
};

export const ruleAge = (id: string): number => Number(id.replace(/^rule-/, ""));

export const isLookRule = (rule: IConditionFormattingRule): rule is LookRule =>
  rule.rule.type === CFRuleType.highlightCell && rule.rule.subType === CFSubRuleType.formula;

export const lookRule = ({ cells, when, look }: RuleLook): LookRule => ({
  cfId: newRuleId(),
  ranges: [rangeOf(cells)],
  stopIfTrue: true,
  rule: { type: CFRuleType.highlightCell, subType: CFSubRuleType.formula, value: when, style: lookStyle(look) as IStyleBase },
});

export const listRule = ({ cells, options }: ChoiceList): ISheetDataValidationRule => ({
  uid: newRuleId(),
  ranges: [rangeOf(cells)],
  type: DataValidationType.LIST,
  formula1: serializeListOptions([...options]),
  allowBlank: true,
  renderMode: DataValidationRenderMode.ARROW,
  showErrorMessage: true,
  error: choiceSentence(options),
  errorStyle: DataValidationErrorStyle.STOP,
});

/** The rules of a workbook as the engine loads them beside its sheets, which go by these names. */
export const ruleResources = (sheets: readonly SheetData[], idOf: (index: number) => string): IResources => {
  const bySheet = <Rule>(rulesOf: (sheet: SheetData) => readonly Rule[]): string =>
    JSON.stringify(Object.fromEntries(sheets.map((sheet, index) => [idOf(index), rulesOf(sheet)])));
  return [
    { name: SHEET_CONDITIONAL_FORMATTING_PLUGIN, data: bySheet(({ rules = [] }) => rules.map(lookRule)) },
    { name: DATA_VALIDATION_PLUGIN_NAME, data: bySheet(({ lists = [] }) => lists.map(listRule)) },
  ];
};

/** The block at the top left comes first: it is the one that the formula of a rule is written for. */
export const inReadingOrder = (ranges: readonly IRange[]): readonly IRange[] =>
  [...ranges].sort((one, other) => one.startRow - other.startRow || one.startColumn - other.startColumn);

const storedLookRules = (lexer: LexerTreeBuilder, { ranges, rule: { value, style } }: LookRule): readonly RuleLook[] => {
  const blocks = inReadingOrder(ranges);
  return blocks.map((range) => ({
    cells: blockOfRange(range),
    when:
      range === blocks[0]
        ? value
        : lexer.moveFormulaRefOffset(
            value, range.startColumn - (blocks[0]?.startColumn ?? 0), range.startRow - (blocks[0]?.startRow ?? 0),
          ),
    look: wholeLook(style),
  }));
};

/** The rules and lists of a sheet as they are stored, from the engine's own. */
export const storedRules = (injector: Injector, unit: string, sheet: string): Pick<SheetData, "rules" | "lists"> => {
  const lexer = injector.get(LexerTreeBuilder);
  const rules = (injector.get(ConditionalFormattingRuleModel).getSubunitRules(unit, sheet) ?? [])
    .filter(isLookRule)
    .flatMap((rule) => storedLookRules(lexer, rule));
  const lists = injector
    .get(DataValidationModel)
    .getRules(unit, sheet)
    .filter(({ type }) => type === DataValidationType.LIST)
    .flatMap(({ ranges, formula1 = "" }) =>
      (ranges as readonly IRange[]).map((range) => ({ cells: blockOfRange(range), options: deserializeListOptions(formula1) })));
  return { ...(rules.length === 0 ? {} : { rules }), ...(lists.length === 0 ? {} : { lists }) };
};
