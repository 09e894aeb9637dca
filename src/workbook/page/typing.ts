import { CellValueType, type Injector, type IStyleData, type Nullable } from "@univerjs/core";
import { AFTER_CELL_EDIT, BEFORE_CELL_EDIT, SheetInterceptorService } from "@univerjs/preset-sheets-core";
import { valueCell } from "../engine-snapshot";
import { isFractionFormat, isGeneral, isPercentFormat } from "../../sheets/cell-format";
import { typedCell } from "../typed-cell";

// Before the sheet's own reading of what was typed.
const FIRST = 1000;

const HUNDRED = 100;
/** Digits a number holds for certain. */
const DIGITS = 15;

/** What is typed is read by our rules, not by the sheet's own, which take 1/2 for a date. */
export const readTyping = (injector: Injector): void => {
  injector.get(SheetInterceptorService).writeCellInterceptor.intercept(AFTER_CELL_EDIT, {
    priority: FIRST,
    handler: (cell, where, next) => {
      const rich = cell?.p?.body;
      if (!cell || cell.f || rich?.textRuns?.length || rich?.customRanges?.length) return next(cell);
      const text = rich ? rich.dataStream.replace(/\r\n$/, "") : cell.v;
      if (typeof text !== "string" || text.startsWith("=")) return next(cell);
      const before = where.worksheet.getCellRaw(where.row, where.col);
      // Text that was only looked at, and text after an apostrophe, is no new number.
      const isText = before?.t === CellValueType.STRING || before?.t === CellValueType.FORCE_STRING;
      if (isText && !before.f && before.v === text) return { ...cell, p: null, v: text, t: before.t };
      if (cell.t === CellValueType.FORCE_STRING && !rich) return next(cell);
      const style = where.workbook.getStyles().getStyleByCell(before) as Nullable<IStyleData>;
      const typed = typedCell(text, style?.n?.pattern);
      if (typed.kind !== "value") return next(cell);
      return {
        ...cell,
        p: null,
        ...valueCell(typed.value, style?.n?.pattern),
        ...(typed.format === undefined ? {} : { s: { n: { pattern: typed.format } } }),
      };
    },
  });
};

/**
 * A cell in sixteenths shows 7.96 as 7 15/16, a plain one as much of a number as fits; edited so, it would come out of a mere look as
 * 7.9375. What is edited is the number itself; of a percentage the number with its sign, without which 1.5 would be taken for 1.5 %.
 */
export const editSizes = (injector: Injector): void => {
  injector.get(SheetInterceptorService).writeCellInterceptor.intercept(BEFORE_CELL_EDIT, {
    priority: FIRST,
    handler: (cell, where, next) => {
      const stored = where.worksheet.getCellRaw(where.row, where.col);
      const style = where.workbook.getStyles().getStyleByCell(stored) as Nullable<IStyleData>;
      if (stored?.t === CellValueType.NUMBER && !stored.f && isPercentFormat(style?.n?.pattern ?? undefined))
        return { ...stored, v: `${Number((Number(stored.v) * HUNDRED).toPrecision(DIGITS))}%` };
      const isRounded = isFractionFormat(style?.n?.pattern) || isGeneral(style?.n?.pattern ?? undefined);
      if (stored?.t !== CellValueType.NUMBER || stored.f || !isRounded) return next(cell);
      const shown = typedCell(String(where.worksheet.getCell(where.row, where.col)?.v ?? "").trim(), style?.n?.pattern);
      return shown.kind === "value" && shown.value === stored.v ? next(cell) : { ...stored, v: String(stored.v) };
    },
  });
};
