import { ICommandService, type IMutationInfo, type Injector, IUndoRedoService } from "@univerjs/core";
import { AddDataValidationMutation, RemoveDataValidationMutation } from "@univerjs/data-validation";
import {
  AddConditionalRuleMutation, ConditionalFormattingRuleModel, DeleteConditionalRuleMutation,
} from "@univerjs/sheets-conditional-formatting";
import { listRule, lookRule, newRuleId, ruleAge } from "./engine-rules";
import { looksByRule } from "./looks-by-rule";
import { moveRules } from "./moved-rules";
import type { SheetData } from "./workbook-data";

/**
 * Rules stay in the order in which they were given. The engine puts each on top of those there, so that a copied sheet has them upside
 * down, and finds the old place of one that comes back by undo only while those beside it stand.
 */
const inOrder = (rules: ConditionalFormattingRuleModel): void => {
  const add = rules.addRule.bind(rules);
  rules.createCfId = newRuleId;
  rules.moveRulePriority = () => undefined;
  rules.addRule = (unit, sheet, rule) => {
    add(unit, sheet, rule);
    rules.getSubunitRules(unit, sheet)?.sort((one, other) => ruleAge(one.cfId) - ruleAge(other.cfId));
  };
};

/** Has looks by rule shown and kept where they belong, once the first workbook is there. */
export const rulesKept = (injector: Injector): void => {
  const rules = injector.get(ConditionalFormattingRuleModel);
  inOrder(rules);
  looksByRule(injector, rules);
  moveRules(injector, rules);
};

/** Adds the rules and lists of a sheet that is there, as a step that undo takes back. */
export const addRules = (injector: Injector, unitId: string, subUnitId: string, { rules = [], lists = [] }: SheetData): void => {
  const where = { unitId, subUnitId };
  const looks = rules.map(lookRule);
  const choices = lists.map(listRule);
  const redoMutations: IMutationInfo[] = [
    ...looks.map((rule) => ({ id: AddConditionalRuleMutation.id, params: { ...where, rule } })),
    ...choices.map((rule) => ({ id: AddDataValidationMutation.id, params: { ...where, rule } })),
  ];
  if (redoMutations.length === 0) return;
  const undoMutations: IMutationInfo[] = [
    ...looks.map(({ cfId }) => ({ id: DeleteConditionalRuleMutation.id, params: { ...where, cfId } })),
    ...choices.map(({ uid }) => ({ id: RemoveDataValidationMutation.id, params: { ...where, ruleId: uid } })),
  ];
  for (const { id, params } of redoMutations) injector.get(ICommandService).syncExecuteCommand(id, params);
  injector.get(IUndoRedoService).pushUndoRedo({ unitID: unitId, redoMutations, undoMutations });
};

/** Has the engine work out no more rules of a workbook that is taken away. */
export const forgetRules = (injector: Injector, unit: string): void => {
  const rules = injector.get(ConditionalFormattingRuleModel);
  for (const [sheet, list] of rules.getUnitRules(unit) ?? []) for (const { cfId } of [...list]) rules.deleteRule(unit, sheet, cfId);
};
