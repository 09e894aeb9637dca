import { ICommandService, type IMutationInfo, type Injector, type IRange, IUndoRedoService, type Worksheet } from "@univerjs/core";
import { LexerTreeBuilder } from "@univerjs/engine-formula";
import { SetRangeValuesMutation } from "@univerjs/sheets";
import { type CarriedBlock, type Reworded, rulesSorted } from "./carried-rules";
import type { Steps } from "./moved-rules";
import { formulaIn, type SortedCells, sortedCells } from "./sorted-cells";
import type { Workbook } from "./workbook";

/** Looks by rule and lists go with their rows; a rule of one row alone goes on reading what it reads, as a formula does. */
const rulesWith = (injector: Injector, sheet: Worksheet, range: IRange, { moves }: SortedCells): Steps => {
  const rowOf = (row: number): IRange => ({ ...range, startRow: row, endRow: row });
  const blocks = moves.map(({ from, to }): CarriedBlock => ({ from: rowOf(from), down: to - from, right: 0 }));
  const reworded: Reworded = ({ ranges, rule: { value } }) => {
    const [first] = ranges;
    const move = moves.find(({ from }) => ranges.every(({ startRow, endRow }) => startRow === from && endRow === from));
    if (first === undefined || move === undefined) return undefined;
    return formulaIn(injector.get(LexerTreeBuilder), value, sheet.getName(), range, move.from, move.to);
  };
  return rulesSorted(injector, { unitId: sheet.getUnitId(), subUnitId: sheet.getSheetId() }, blocks, reworded);
};

/** Sorts the rows of a table as one step that undo takes back; answers the sentence of what would be torn, and then moves nothing. */
export const sortRows = (
  injector: Injector, workbook: Workbook, sheet: Worksheet, range: IRange, column: number, isUp: boolean,
): string | undefined => {
  const sorted = sortedCells(workbook, injector.get(LexerTreeBuilder), sheet, range, column, isUp);
  if (typeof sorted === "string") return sorted;
  if (sorted.moves.length === 0) return undefined;
  const { before, after, emptied } = sorted;
  const where = { unitId: sheet.getUnitId(), subUnitId: sheet.getSheetId() };
  const rules = rulesWith(injector, sheet, range, sorted);
  // Emptied first: the engine would mix the looks of old and new.
  const steps = (cells: SortedCells["after"]): IMutationInfo[] =>
    [emptied, cells].map((cellValue) => ({ id: SetRangeValuesMutation.id, params: { ...where, cellValue } }));
  const redoMutations = [...steps(after), ...rules.redos];
  const undoMutations = [...rules.undos, ...steps(before)];
  for (const { id, params } of redoMutations) injector.get(ICommandService).syncExecuteCommand(id, params);
  injector.get(IUndoRedoService).pushUndoRedo({ unitID: where.unitId, redoMutations, undoMutations });
  return undefined;
};
