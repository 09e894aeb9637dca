import { type Injector, IUniverInstanceService, UniverInstanceType, type Workbook as EngineWorkbook } from "@univerjs/core";
import { CellAlertManagerService } from "@univerjs/preset-sheets-core";
import { cellAddress } from "../../sheets/cell-address";
import type { Workbook } from "../workbook";

/** The alert over a cell in error says the sentence of the error, where it has one. */
export const showSentences = (injector: Injector, workbook: Workbook): void => {
  const alerts = injector.get(CellAlertManagerService);
  const show = alerts.showAlert.bind(alerts);
  alerts.showAlert = (alert) => {
    const { unitId, subUnitId, row, col } = alert.location;
    const sheet = injector
      .get(IUniverInstanceService)
      .getUnit<EngineWorkbook>(unitId, UniverInstanceType.UNIVER_SHEET)
      ?.getSheetBySheetId(subUnitId);
    const sentence = sheet ? workbook.errorMessage(sheet.getName(), cellAddress({ row, column: col })) : undefined;
    show(sentence === undefined ? alert : { ...alert, message: sentence });
  };
};
