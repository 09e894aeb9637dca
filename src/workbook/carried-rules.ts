import { DataValidationType, type IMutationInfo, type Injector, type IRange, Rectangle } from "@univerjs/core";
import {
  AddDataValidationMutation, DataValidationModel, RemoveDataValidationMutation, UpdateDataValidationMutation, UpdateRuleType,
} from "@univerjs/data-validation";
import { LexerTreeBuilder } from "@univerjs/engine-formula";
import { AddConditionalRuleMutation, ConditionalFormattingRuleModel, DeleteConditionalRuleMutation } from "@univerjs/sheets-conditional-formatting";
import { inReadingOrder, isLookRule, type LookRule, newRuleId } from "./engine-rules";
import { changedRule, type Steps } from "./moved-rules";

/** Cells whose looks by rule and lists go to others, so many rows and columns away. */
export interface CarriedBlock {
  readonly from: IRange;
  readonly down: number;
  readonly right: number;
}

/** A sheet by the engine's names. */
export interface SheetId {
  readonly unitId: string;
  readonly subUnitId: string;
}

const plain = ({ startRow, endRow, startColumn, endColumn }: IRange): IRange => ({ startRow, endRow, startColumn, endColumn });

const carriedTo = (ranges: readonly IRange[], blocks: readonly CarriedBlock[]): readonly IRange[] =>
  ranges.flatMap((range) =>
    blocks.flatMap(({ from, down, right }) => {
      const met = Rectangle.getIntersects(range, from);
      if (!met) return [];
      const { startRow, endRow, startColumn, endColumn } = met;
      return [{ startRow: startRow + down, endRow: endRow + down, startColumn: startColumn + right, endColumn: endColumn + right }];
    }));

const areSame = (one: readonly IRange[], other: readonly IRange[]): boolean =>
  Rectangle.subtractMulti([...one], [...other]).length === 0 && Rectangle.subtractMulti([...other], [...one]).length === 0;

/** Ranges once others' cells have come in the place of theirs; as they were where that comes to the same cells. */
const rangesAfter = (ranges: readonly IRange[], blocks: readonly CarriedBlock[], replaced: readonly IRange[]): readonly IRange[] => {
  const next = [...Rectangle.subtractMulti([...ranges], [...replaced]), ...carriedTo(ranges, blocks)];
  return areSame(ranges, next) ? ranges : inReadingOrder(Rectangle.mergeRanges(next).map(plain));
};

/** The formula of a rule, written for the first of its cells, once another is the first. */
const writtenFor = (lexer: LexerTreeBuilder, value: string, was: readonly IRange[], is: readonly IRange[]): string => {
  const [from, to] = [inReadingOrder(was)[0], inReadingOrder(is)[0]];
  if (!from || !to) return value;
  return lexer.moveFormulaRefOffset(value, to.startColumn - from.startColumn, to.startRow - from.startRow);
};

const listsAfter = (
  injector: Injector, { unitId, subUnitId }: SheetId, blocks: readonly CarriedBlock[], replaced: readonly IRange[],
): Steps => {
  const steps: Steps = { redos: [], undos: [] };
  for (const [index, rule] of injector.get(DataValidationModel).getRules(unitId, subUnitId).entries()) {
    const before = rule.ranges as readonly IRange[];
    const ranges = rangesAfter(before, blocks, replaced);
    if (rule.type !== DataValidationType.LIST || ranges === before) continue;
    const where = { unitId, subUnitId, ruleId: rule.uid };
    const update = (payload: readonly IRange[]): IMutationInfo => ({
      id: UpdateDataValidationMutation.id, params: { ...where, payload: { type: UpdateRuleType.RANGE, payload } },
    });
    const isGone = ranges.length === 0;
    steps.redos.push(isGone ? { id: RemoveDataValidationMutation.id, params: where } : update(ranges));
    steps.undos.unshift(
      isGone ? { id: AddDataValidationMutation.id, params: { unitId, subUnitId, rule: { ...rule }, index } } : update(before),
    );
  }
  return steps;
};

/** What a rule over rows that change places says afterwards, where it is to say more than its distance from them. */
export type Reworded = (rule: LookRule) => string | undefined;

const looksAfter = (
  injector: Injector, { unitId, subUnitId }: SheetId, blocks: readonly CarriedBlock[], replaced: readonly IRange[], reworded?: Reworded,
): Steps => {
  const lexer = injector.get(LexerTreeBuilder);
  const steps: Steps = { redos: [], undos: [] };
  for (const rule of (injector.get(ConditionalFormattingRuleModel).getSubunitRules(unitId, subUnitId) ?? []).filter(isLookRule)) {
    const ranges = rangesAfter(rule.ranges, blocks, replaced);
    if (ranges === rule.ranges) continue;
    const value = reworded?.(rule) ?? writtenFor(lexer, rule.rule.value, rule.ranges, ranges);
    const { redos, undos } = changedRule(injector, unitId, subUnitId, rule, ranges, value);
    steps.redos.push(...redos);
    steps.undos.unshift(...undos);
  }
  return steps;
};

const together = (...all: readonly Steps[]): Steps => ({
  redos: all.flatMap(({ redos }) => redos), undos: [...all].reverse().flatMap(({ undos }) => undos),
});

/** Looks by rule and lists of rows that change places. */
export const rulesSorted = (injector: Injector, sheet: SheetId, blocks: readonly CarriedBlock[], reworded: Reworded): Steps => {
  const replaced = blocks.map(({ from }) => from);
  return together(looksAfter(injector, sheet, blocks, replaced, reworded), listsAfter(injector, sheet, blocks, replaced));
};

const looksTaken = (injector: Injector, from: SheetId, to: SheetId, blocks: readonly CarriedBlock[]): Steps => {
  const lexer = injector.get(LexerTreeBuilder);
  const steps: Steps = { redos: [], undos: [] };
  for (const rule of (injector.get(ConditionalFormattingRuleModel).getSubunitRules(from.unitId, from.subUnitId) ?? []).filter(isLookRule)) {
    const ranges = inReadingOrder(carriedTo(rule.ranges, blocks));
    if (ranges.length === 0) continue;
    const value = writtenFor(lexer, rule.rule.value, rule.ranges, ranges);
    const taken = { ...rule, cfId: newRuleId(), ranges: [...ranges], rule: { ...rule.rule, value } };
    steps.redos.push({ id: AddConditionalRuleMutation.id, params: { ...to, rule: taken } });
    steps.undos.unshift({ id: DeleteConditionalRuleMutation.id, params: { ...to, cfId: taken.cfId } });
  }
  return steps;
};

const targetOf = ({ from, down, right }: CarriedBlock): IRange => ({
  startRow: from.startRow + down, endRow: from.endRow + down, startColumn: from.startColumn + right, endColumn: from.endColumn + right,
});

/** Looks by rule of cells that are pasted elsewhere, in the place of those that were there; the engine does as much for lists. */
export const looksPasted = (injector: Injector, from: SheetId, to: SheetId, blocks: readonly CarriedBlock[], isCut: boolean): Steps => {
  const replaced = blocks.map(targetOf);
  if (from.unitId === to.unitId && from.subUnitId === to.subUnitId) return looksAfter(injector, to, blocks, replaced);
  const left = isCut ? looksAfter(injector, from, [], blocks.map((block) => block.from)) : { redos: [], undos: [] };
  return together(looksTaken(injector, from, to, blocks), looksAfter(injector, to, [], replaced), left);
};
