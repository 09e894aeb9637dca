import { CellValueType, ICommandService, type Injector, ObjectMatrix } from "@univerjs/core";
import { type ISetRangeValuesMutationParams, SetRangeValuesMutation } from "@univerjs/sheets";
import { formulaFault } from "./formula-limits";

/** A formula typed or pasted that would stop the page, now and whenever it is opened, stays text, where it can be seen and mended. */
export const refuseFormulas = (injector: Injector): void =>
  void injector.get(ICommandService).beforeCommandExecuted(({ id, params }, options) => {
    if (id !== SetRangeValuesMutation.id || options?.["applyFormulaCalculationResult"] === true) return;
    new ObjectMatrix((params as ISetRangeValuesMutationParams).cellValue ?? {}).forValue((_row, _column, cell) => {
      if (typeof cell?.f !== "string" || formulaFault(cell.f) === undefined) return;
      Object.assign(cell, { v: cell.f, t: CellValueType.FORCE_STRING, f: null, si: null, p: null });
    });
  });
