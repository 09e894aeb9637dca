import {
  type IAccessor, type ICommandInfo, ICommandService, type IMutationInfo, Injector, type IRange, IUndoRedoService, IUniverInstanceService,
} from "@univerjs/core";
import {
  CopySheetCommand, EffectRefRangId, getSheetCommandTarget, getVisibleRanges, handleDefaultRangeChangeWithEffectRefCommands,
  type IInsertRowMutationParams, InsertRowMutation, type IRemoveRowByRangeCommandParams, type ISheetCommandSharedParams,
  RemoveRowByRangeCommand, RemoveSheetCommand, SheetInterceptorService,
} from "@univerjs/sheets";
import {
  ClearSheetsFilterCriteriaCommand, FILTER_MUTATIONS, type ISetSheetsFilterCriteriaCommandParams, ReCalcSheetsFilterCommand,
  RemoveSheetFilterCommand, SetSheetsFilterCriteriaCommand, SheetsFilterSyncController,
} from "@univerjs/sheets-filter";
import { columnName } from "../sheets/cell-address";
import { storedFilter } from "./engine-filter";
import { movedFilter } from "./moved-filter";
import { filterNow, filterStep, setFilter, SetFilterMutation, workedOutAgain } from "./set-filter";

interface Steps {
  readonly redos: IMutationInfo[];
  readonly undos: IMutationInfo[];
}

const NONE: Steps = { redos: [], undos: [] };

const { InsertRowCommandId, RemoveRowCommandId, MoveRowsCommandId, InsertColCommandId, RemoveColCommandId, MoveColsCommandId } =
  EffectRefRangId;
const WHOLE_LINES: ReadonlySet<string> = new Set([
  InsertRowCommandId, RemoveRowCommandId, MoveRowsCommandId, InsertColCommandId, RemoveColCommandId, MoveColsCommandId,
]);
const MOVES: ReadonlySet<string> = new Set(Object.values(EffectRefRangId));

const targetOf = (accessor: IAccessor, params: unknown) =>
  getSheetCommandTarget(accessor.get(IUniverInstanceService), params as Partial<ISheetCommandSharedParams> | undefined);

/** The engine's commands on filters, each as one step to what is then stored. */
const toldInFull = (): void => {
  const change = (params: unknown, accessor: IAccessor, next: (injector: Injector, unit: string, sheet: string) => void): boolean => {
    const target = targetOf(accessor, params);
    if (target) next(accessor.get(Injector), target.unitId, target.subUnitId);
    return Boolean(target);
  };
  const showAll = (accessor: IAccessor, params: unknown): boolean =>
    change(params, accessor, (injector, unit, sheet) => setFilter(injector, unit, sheet, undefined));
  RemoveSheetFilterCommand.handler = showAll;
  ClearSheetsFilterCriteriaCommand.handler = showAll;
  const again = (accessor: IAccessor, params: unknown, changed?: Partial<ISetSheetsFilterCriteriaCommandParams>): boolean =>
    change(params, accessor, (injector, unit, sheet) => {
      const worksheet = targetOf(accessor, params)?.worksheet;
      const before = storedFilter(injector, unit, sheet);
      if (!worksheet || before === undefined) return;
      const { [columnName(changed?.col ?? 0)]: own, ...others } = before.keeps;
      const { filters } = changed?.criteria ?? {};
      const texts = [...(filters?.filters ?? []), ...(filters?.blank ? [""] : [])];
      const kept = changed === undefined ? own : texts.length === 0 ? undefined : texts;
      const keeps = kept === undefined ? others : { ...others, [columnName(changed?.col ?? 0)]: kept };
      setFilter(injector, unit, sheet, filterNow(worksheet, before.cells, keeps));
    });
  ReCalcSheetsFilterCommand.handler = (accessor, params) => again(accessor, params);
  SetSheetsFilterCriteriaCommand.handler = (accessor, params) => again(accessor, params, params);
};

/** Several steps as one, taken back from the last to the first; the engine's own batch begins with the first. */
const asOneStep = (accessor: IAccessor, unitId: string, steps: readonly (() => unknown)[]): boolean => {
  const undoRedo = accessor.get(IUndoRedoService);
  // What was done last is asked for by the workbook that has the focus.
  accessor.get(IUniverInstanceService).focusUnit(unitId);
  const batch = undoRedo.__tempBatchingUndoRedo(unitId);
  const areDone = steps.map((step, index) => {
    const known = index === 0 ? 0 : (undoRedo.pitchTopUndoElement()?.undoMutations.length ?? 0);
    const isDone = step();
    const undos = undoRedo.pitchTopUndoElement()?.undoMutations;
    undos?.unshift(...undos.splice(known));
    return isDone;
  });
  batch.dispose();
  return areDone.every(Boolean);
};

const removeRows = RemoveRowByRangeCommand.handler;

/**
 * Hidden rows stay when rows around them are removed, so these are several removals. The engine takes them for one, and formulas then read
 * as many rows too far up as are hidden.
 */
const removedBlockByBlock = (): void => {
  RemoveRowByRangeCommand.handler = (accessor: IAccessor, params?: IRemoveRowByRangeCommandParams) => {
    const target = params ? targetOf(accessor, params) : undefined;
    if (!params || !target) return false;
    const { unitId, subUnitId } = target;
    const blocks = getVisibleRanges([params.range], accessor, unitId, subUnitId).sort((one, other) => other.startRow - one.startRow);
    const removed = (block: IRange): unknown =>
      removeRows(accessor, { ...params, unitId, subUnitId, range: { ...params.range, ...block } });
    return asOneStep(accessor, unitId, blocks.map((block) => () => removed(block)));
  };
};

const movedWithCells = (injector: Injector) => (command: ICommandInfo): Steps => {
  const target = targetOf(injector, command.params);
  if (!target) return NONE;
  const { unitId, subUnitId } = target;
  const before = storedFilter(injector, unitId, subUnitId);
  if (before === undefined) return NONE;
  const steps = (sheet: string, filter: typeof before | undefined): IMutationInfo[] => [filterStep(unitId, sheet, filter)];
  if (command.id === CopySheetCommand.id) {
    const { targetSubUnitId } = command.params as { readonly targetSubUnitId?: string };
    return targetSubUnitId === undefined ? NONE : { redos: steps(targetSubUnitId, before), undos: [] };
  }
  if (command.id === RemoveSheetCommand.id) return { redos: [], undos: steps(subUnitId, before) };
  if (!MOVES.has(command.id)) return NONE;
  const moved = WHOLE_LINES.has(command.id)
    ? steps(subUnitId, movedFilter(before, (range) => handleDefaultRangeChangeWithEffectRefCommands(range, command)))
    : [];
  return { redos: moved, undos: steps(subUnitId, before) };
};

/** The engine has a filter grow with a row typed under it, which undo does not take back; ours grows when it is applied again. */
const asItWasSet = (injector: Injector): void => {
  const { _sheetsFilterController: controller } = injector.get(SheetsFilterSyncController) as unknown as {
    readonly _sheetsFilterController?: { _getExtendRegion?: () => unknown };
  };
  if (controller?._getExtendRegion === undefined) throw new Error("The sheet engine no longer extends filters: see filter-kept.ts.");
  controller._getExtendRegion = () => null;
};

/** A new row takes after one beside it, but not by being as low as a hidden one. */
const shownWhenNew = (injector: Injector): void =>
  void injector.get(ICommandService).beforeCommandExecuted(({ id, params }) => {
    if (id !== InsertRowMutation.id) return;
    const given = params as IInsertRowMutationParams;
    if (Object.values(given.rowInfo ?? {}).some((row) => (row as { readonly h?: number } | undefined)?.h === 0)) delete given.rowInfo;
  });

/** Before the first workbook: what the engine tells of filters is told of ours. */
export const filtersTold = (injector: Injector): void => {
  FILTER_MUTATIONS.add(SetFilterMutation.id);
  injector.get(ICommandService).registerCommand(SetFilterMutation);
  toldInFull();
  removedBlockByBlock();
  shownWhenNew(injector);
};

/** Keeps filters where they belong, once the first workbook is there. */
export const filtersKept = (injector: Injector): void => {
  asItWasSet(injector);
  workedOutAgain(injector);
  injector.get(SheetInterceptorService).interceptCommand({ getMutations: movedWithCells(injector) });
};
