import { type Injector, type IRange, IUniverInstanceService, UniverInstanceType, type Workbook as EngineWorkbook } from "@univerjs/core";
import { FormulaDataModel, IClipboardInterfaceService, IEditorBridgeService, SheetsSelectionsService } from "@univerjs/preset-sheets-core";
import { cellAddress } from "../../sheets/cell-address";
import type { Workbook } from "../workbook";

type Spilled = Readonly<Record<number, Readonly<Record<number, unknown>> | null | undefined>>;

const hasSpilled = (spilled: Spilled, { startRow, startColumn, endRow, endColumn }: IRange): boolean =>
  Object.entries(spilled).some(
    ([row, cells]) =>
      Number(row) >= startRow &&
      Number(row) <= endRow &&
      Object.keys(cells ?? {}).some((column) => Number(column) >= startColumn && Number(column) <= endColumn),
  );

/** The text of the cells selected, as they are shown, where spilled ones are among them. */
const spilledText = (injector: Injector, workbook: Workbook): string | undefined => {
  const sheet = injector
    .get(IUniverInstanceService)
    .getCurrentUnitOfType<EngineWorkbook>(UniverInstanceType.UNIVER_SHEET)
    ?.getActiveSheet();
  const range = injector.get(SheetsSelectionsService).getCurrentLastSelection()?.range;
  if (!sheet || !range) return undefined;
  const spilled = injector.get(FormulaDataModel).getArrayFormulaCellData()[sheet.getUnitId()]?.[sheet.getSheetId()];
  if (!spilled || !hasSpilled(spilled, range)) return undefined;
  return workbook.copied(
    sheet.getName(),
    cellAddress({ row: range.startRow, column: range.startColumn }),
    cellAddress({ row: range.endRow, column: range.endColumn }),
  );
};

/** Copies spilled cells as they are shown, which the engine leaves empty. */
export const spilledCopies = (injector: Injector, workbook: Workbook): void => {
  const clipboard = injector.get(IClipboardInterfaceService);
  const bridge = injector.get(IEditorBridgeService);
  const write = clipboard.write.bind(clipboard);
  clipboard.write = (text, html, ...more) => {
    const shown = bridge.isVisible().visible ? undefined : spilledText(injector, workbook);
    return shown === undefined ? write(text, html, ...more) : clipboard.writeText(shown);
  };
};
