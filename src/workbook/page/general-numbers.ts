import { CellValueType, InterceptorEffectEnum, type Injector, isDefaultFormat } from "@univerjs/core";
import { INTERCEPTOR_POINT, SheetInterceptorService } from "@univerjs/sheets";
import { shownGeneral } from "../shown-general";

/** After the engine's own reading of plain numbers, whose priority is 11, and before what else looks at a cell. */
const AFTER_PLAIN = 10.5;
/** The size of type of a cell that names none, in points. */
const USUAL_SIZE = 11;

/** A plain cell shows as much of a number as fits into its column, as in Excel; the engine draws all of it and cuts it off. */
export const generalNumbers = (injector: Injector): void => {
  injector.get(SheetInterceptorService).intercept(INTERCEPTOR_POINT.CELL_CONTENT, {
    priority: AFTER_PLAIN,
    effect: InterceptorEffectEnum.Value,
    handler: (cell, where, next) => {
      if (cell?.t !== CellValueType.NUMBER || typeof cell.v !== "number" || Number.isInteger(cell.v)) return next(cell);
      const style = where.workbook.getStyles().getStyleByCell(cell);
      if (!isDefaultFormat(style?.n?.pattern)) return next(cell);
      const v = shownGeneral(cell.v, where.worksheet.getColumnWidth(where.col), style?.fs ?? USUAL_SIZE);
      return next(v === cell.v ? cell : { ...cell, v });
    },
  });
};
