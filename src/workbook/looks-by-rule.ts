import { type Injector, InterceptorEffectEnum } from "@univerjs/core";
import { INTERCEPTOR_POINT, SheetInterceptorService } from "@univerjs/sheets";
import { type ConditionalFormattingRuleModel, ConditionalFormattingService } from "@univerjs/sheets-conditional-formatting";

// The engine's own.
const PRIORITY = 10;

/** Cells look as the first rule over them says that is true. */
export const looksByRule = (injector: Injector, rules: ConditionalFormattingRuleModel): void => {
  const looks = injector.get(ConditionalFormattingService);
  injector.get(SheetInterceptorService).intercept(INTERCEPTOR_POINT.CELL_CONTENT, {
    effect: InterceptorEffectEnum.Style,
    priority: PRIORITY,
    handler: (cell, { unitId, subUnitId, row, col, workbook }, next) => {
      if (!rules.getSubunitRules(unitId, subUnitId)?.length) return next(cell);
      const style = looks.composeStyle(unitId, subUnitId, row, col)?.style;
      return next(style ? { ...cell, s: { ...workbook.getStyles().getStyleByCell(cell), ...style } } : cell);
    },
  });
};
