import {
  AbsoluteRefType, type ICommandInfo, type IMutationInfo, type Injector, type IRange, IUniverInstanceService, type Nullable,
  UniverInstanceType, type Workbook as EngineWorkbook,
} from "@univerjs/core";
import { DataValidationModel, UpdateDataValidationMutation, UpdateRuleType } from "@univerjs/data-validation";
import { ErrorType, LexerTreeBuilder, serializeRange, serializeRangeWithSheet } from "@univerjs/engine-formula";
import {
  EffectRefRangId, getSheetCommandTarget, handleDefaultRangeChangeWithEffectRefCommands, type ISetWorksheetNameCommandParams,
  type ISheetCommandSharedParams, RemoveColCommand, RemoveRowCommand, SetWorksheetNameCommand, SheetInterceptorService,
} from "@univerjs/sheets";
import {
  ConditionalFormattingRuleModel, DeleteConditionalRuleMutation, DeleteConditionalRuleMutationUndoFactory, SetConditionalRuleMutation,
  setConditionalRuleMutationUndoFactory,
} from "@univerjs/sheets-conditional-formatting";
import { inReadingOrder, isLookRule, type LookRule } from "./engine-rules";
import { type Rewrite, rewritten } from "./rewritten-formula";
import { overWhatCame } from "./rules-that-meet";

/** Steps of the engine, and those that take them back. */
export interface Steps {
  readonly redos: IMutationInfo[];
  readonly undos: IMutationInfo[];
}

/** What becomes of a range of the sheet whose cells move. */
type Moved = (range: IRange) => Nullable<IRange>;

const MOVES: ReadonlySet<string> = new Set(Object.values(EffectRefRangId));

/** Row and column of a corner by its distance from the top left. */
interface Step {
  readonly down: number;
  readonly right: number;
}

const written = (range: IRange, sheetName: string): string =>
  sheetName === "" ? serializeRange(range) : serializeRangeWithSheet(sheetName, range);

const isFixed = (type: AbsoluteRefType | undefined, way: AbsoluteRefType): boolean => ((type ?? AbsoluteRefType.NONE) & way) !== 0;

/**
 * A reference of a rule once cells have moved. What is fixed ($A$1) moves as in any formula. What is not is read anew for each cell of the
 * rule, so it keeps its distance from them, unless they are all in one row or one column, where it moves as in the formula of any of them.
 */
const movedReference = (range: IRange, from: Pick<LookRule, "ranges">, step: Step, moved: Moved, taken: string): string | IRange => {
  const goes = moved(range);
  // Where its row is gone a cell still has its column, and where its column is gone its row.
  const goesByRow = goes ?? (taken === RemoveColCommand.id ? range : undefined);
  const goesByColumn = goes ?? (taken === RemoveRowCommand.id ? range : undefined);
  const isOneRow = from.ranges.length === 1 && from.ranges[0]?.startRow === from.ranges[0]?.endRow;
  const isOneColumn = from.ranges.length === 1 && from.ranges[0]?.startColumn === from.ranges[0]?.endColumn;
  const place = (
    type: AbsoluteRefType | undefined, way: AbsoluteRefType, isOne: boolean, was: number, is: number | undefined, by: number,
  ) => (isFixed(type, way) || isOne ? is : was + by);
  const { startAbsoluteRefType: start, endAbsoluteRefType: end } = range;
  const { ROW, COLUMN } = AbsoluteRefType;
  const corners = {
    startRow: place(start, ROW, isOneRow, range.startRow, goesByRow?.startRow, step.down),
    startColumn: place(start, COLUMN, isOneColumn, range.startColumn, goesByColumn?.startColumn, step.right),
    endRow: place(end, ROW, isOneRow, range.endRow, goesByRow?.endRow, step.down),
    endColumn: place(end, COLUMN, isOneColumn, range.endColumn, goesByColumn?.endColumn, step.right),
  };
  const places = Object.values(corners);
  if (places.some((at) => at === undefined || at < 0)) return ErrorType.REF;
  return { ...range, ...corners } as IRange;
};

/** A look by rule over other cells, by another formula; none where it is over no cells. */
export const changedRule = (
  injector: Injector, unitId: string, subUnitId: string, rule: LookRule, ranges: readonly IRange[], value: string,
): Steps => {
  if (ranges.length === 0) {
    const params = { unitId, subUnitId, cfId: rule.cfId };
    return {
      redos: [{ id: DeleteConditionalRuleMutation.id, params }], undos: DeleteConditionalRuleMutationUndoFactory(injector, params),
    };
  }
  if (value === rule.rule.value && JSON.stringify(ranges) === JSON.stringify(rule.ranges)) return { redos: [], undos: [] };
  const params = { unitId, subUnitId, cfId: rule.cfId, rule: { ...rule, ranges: [...ranges], rule: { ...rule.rule, value } } };
  return { redos: [{ id: SetConditionalRuleMutation.id, params }], undos: setConditionalRuleMutationUndoFactory(injector, params) };
};

/**
 * Lists once rows are deleted. One whose first rows are deleted together with rows over them the engine leaves too low, by as many as those
 * rows were.
 */
const listsMoved = (injector: Injector, unitId: string, subUnitId: string, moved: Moved): Steps => {
  const steps: Steps = { redos: [], undos: [] };
  for (const { uid, ranges } of injector.get(DataValidationModel).getRules(unitId, subUnitId)) {
    const next = (ranges as readonly IRange[]).flatMap((range) => moved(range) ?? []);
    if (next.length === 0) continue;
    const step = (payload: readonly unknown[]): IMutationInfo => ({
      id: UpdateDataValidationMutation.id, params: { unitId, subUnitId, ruleId: uid, payload: { type: UpdateRuleType.RANGE, payload } },
    });
    steps.redos.push(step(next));
    steps.undos.push(step(ranges));
  }
  return steps;
};

/** Keeps rules over the cells that they were made for, and their formulas on the cells they read, when rows, columns and cells move. */
export const moveRules = (injector: Injector, rules: ConditionalFormattingRuleModel): void => {
  const instances = injector.get(IUniverInstanceService);
  const lexer = injector.get(LexerTreeBuilder);

  /** Every rule of a workbook as it is to be. */
  const each = (unit: string, change: (rule: LookRule, sheet: string) => readonly [readonly IRange[], string]): Steps => {
    const steps: Steps = { redos: [], undos: [] };
    for (const [sheet, list] of rules.getUnitRules(unit) ?? [])
      for (const rule of list.filter(isLookRule)) {
        const { redos, undos } = changedRule(injector, unit, sheet, rule, ...change(rule, sheet));
        steps.redos.push(...redos);
        steps.undos.unshift(...undos);
      }
    return steps;
  };

  const afterMove = (unit: string, movedSheet: string, movedName: string, moved: Moved, command: ICommandInfo): Steps => {
    const there = (rules.getSubunitRules(unit, movedSheet) ?? []).filter(isLookRule);
    return each(unit, (rule, sheet) => {
      const isThere = sheet === movedSheet;
      const ranges = isThere
        ? overWhatCame(lexer, command, rule, there, rule.ranges.flatMap((range) => moved(range) ?? []))
        : rule.ranges;
      const [was, is] = [inReadingOrder(rule.ranges)[0], inReadingOrder(ranges)[0]];
      const step = { down: (is?.startRow ?? 0) - (was?.startRow ?? 0), right: (is?.startColumn ?? 0) - (was?.startColumn ?? 0) };
      const value = rewritten(lexer, rule.rule.value, (range, name) => {
        const next = (name === "" ? isThere : name === movedName) ? movedReference(range, rule, step, moved, command.id) : range;
        return typeof next === "string" ? next : written(next, name);
      });
      return [ranges, value];
    });
  };

  const afterRename = (unit: string, sheet: string, to: string): Steps => {
    const from = instances.getUnit<EngineWorkbook>(unit, UniverInstanceType.UNIVER_SHEET)?.getSheetBySheetId(sheet)?.getName();
    const inFormula: Rewrite = (range, name) => (name !== "" && name === from ? written(range, to) : undefined);
    return each(unit, (rule) => [rule.ranges, rewritten(lexer, rule.rule.value, inFormula)]);
  };

  injector.get(SheetInterceptorService).interceptCommand({
    getMutations: (command: ICommandInfo) => {
      const target = getSheetCommandTarget(instances, command.params as Partial<ISheetCommandSharedParams> | undefined);
      if (!target) return { redos: [], undos: [] };
      const { unitId, subUnitId, worksheet } = target;
      if (MOVES.has(command.id)) {
        const { fromSubUnitId, toSubUnitId } = (command.params ?? {}) as Readonly<Record<string, unknown>>;
        if (fromSubUnitId !== toSubUnitId) return { redos: [], undos: [] };
        const moved: Moved = (range) => handleDefaultRangeChangeWithEffectRefCommands(range, command);
        const looks = afterMove(unitId, subUnitId, worksheet.getName(), moved, command);
        const lists = command.id === RemoveRowCommand.id ? listsMoved(injector, unitId, subUnitId, moved) : { redos: [], undos: [] };
        return { redos: [...looks.redos, ...lists.redos], undos: [...looks.undos, ...lists.undos] };
      }
      if (command.id === SetWorksheetNameCommand.id)
        return afterRename(unitId, subUnitId, (command.params as ISetWorksheetNameCommandParams).name);
      return { redos: [], undos: [] };
    },
  });
};
