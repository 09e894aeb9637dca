import {
  CellValueType, type ICellData, type Injector, IUniverInstanceService, ObjectMatrix, UniverInstanceType, type Workbook,
} from "@univerjs/core";
import { ISheetClipboardService, PREDEFINED_HOOK_NAME_PASTE } from "@univerjs/preset-sheets-core";
import { type ISetRangeValuesMutationParams, SetRangeValuesMutation, SetRangeValuesUndoMutationFactory } from "@univerjs/sheets";
import { typedLength } from "../../sheets/typed-length";

type Hook = ReturnType<ISheetClipboardService["getClipboardHooks"]>[number];
type Target = Parameters<NonNullable<Hook["onPasteCells"]>>[1];

/** The cell that a pasted text makes where it is typed as a length, at a place of the target; undefined for every other text. */
const lengthCells = (injector: Injector, { unitId, subUnitId }: Target) => {
  const workbook = injector.get(IUniverInstanceService).getUnit<Workbook>(unitId, UniverInstanceType.UNIVER_SHEET);
  const sheet = workbook?.getSheetBySheetId(subUnitId);
  return (text: unknown, row: number, column: number): ICellData | undefined => {
    if (typeof text !== "string") return undefined;
    const format = workbook?.getStyles().getStyleByCell(sheet?.getCellRaw(row, column))?.n?.pattern;
    const length = typedLength(text, format);
    if (length === undefined) return undefined;
    return { v: length.size, t: CellValueType.NUMBER, ...(length.format === undefined ? {} : { s: { n: { pattern: length.format } } }) };
  };
};

/** A table of texts, cell by cell. What was copied on the page itself comes as the cells it is. */
const tableTaught = (injector: Injector, paste: NonNullable<Hook["onPasteCells"]>): NonNullable<Hook["onPasteCells"]> =>
  (from, to, cells, payload) => {
    if (from !== null) return paste(from, to, cells, payload);
    const lengthCell = lengthCells(injector, to);
    const read = new ObjectMatrix<ReturnType<typeof cells.getValue>>();
    cells.forValue((row, column, cell) => {
      const length = cell.p ? undefined : lengthCell(cell.v, to.range.rows[row] ?? row, to.range.cols[column] ?? column);
      const look = typeof cell.s === "object" ? cell.s : {};
      read.setValue(row, column, length === undefined ? cell : { ...cell, ...length, s: { ...look, ...(length.s as object) } });
    });
    return paste(from, to, read as typeof cells, payload);
  };

/** The text of one cell. */
const textTaught = (injector: Injector, paste: NonNullable<Hook["onPastePlainText"]>): NonNullable<Hook["onPastePlainText"]> =>
  (to, text, payload) => {
    const [row, column] = [to.range.rows[0] ?? 0, to.range.cols[0] ?? 0];
    const length = lengthCells(injector, to)(text.trim(), row, column);
    if (length === undefined) return paste(to, text, payload);
    const { unitId, subUnitId } = to;
    const cellValue = { [row]: { [column]: { ...length, p: null, f: null } } };
    const params: ISetRangeValuesMutationParams = { unitId, subUnitId, cellValue };
    return {
      redos: [{ id: SetRangeValuesMutation.id, params }],
      undos: [{ id: SetRangeValuesMutation.id, params: SetRangeValuesUndoMutationFactory(injector, params) }],
    };
  };

/** Lengths that are pasted as texts are the numbers that they are when they are typed. The hooks come after the first workbook. */
export const pastedLengths = (injector: Injector): (() => void) => {
  const taught = new WeakSet<Hook>();
  return () => {
    const hook = injector.get(ISheetClipboardService).getClipboardHooks().find(({ id }) => id === PREDEFINED_HOOK_NAME_PASTE.DEFAULT_PASTE);
    if (hook === undefined || taught.has(hook)) return;
    taught.add(hook);
    if (hook.onPasteCells) hook.onPasteCells = tableTaught(injector, hook.onPasteCells.bind(hook));
    if (hook.onPastePlainText) hook.onPastePlainText = textTaught(injector, hook.onPastePlainText.bind(hook));
  };
};
