import { type Injector, IUniverInstanceService, UniverInstanceType, type Workbook as EngineWorkbook } from "@univerjs/core";
import { CellAlertManagerService, FormulaDataModel } from "@univerjs/preset-sheets-core";
import { errorSentence } from "../error-sentence";

/** The alert over a cell in error says the sentence of the error, where it has one. */
export const showSentences = (injector: Injector): void => {
  const alerts = injector.get(CellAlertManagerService);
  const show = alerts.showAlert.bind(alerts);
  alerts.showAlert = (alert) => {
    const { unitId, subUnitId, row, col } = alert.location;
    const sheet = injector
      .get(IUniverInstanceService)
      .getUnit<EngineWorkbook>(unitId, UniverInstanceType.UNIVER_SHEET)
      ?.getSheetBySheetId(subUnitId);
    const spilled = injector.get(FormulaDataModel).getArrayFormulaCellData()[unitId]?.[subUnitId]?.[row]?.[col];
    const sentence = errorSentence(sheet?.getCellRaw(row, col)) ?? errorSentence(spilled);
    show(sentence === undefined ? alert : { ...alert, message: sentence });
  };
};
