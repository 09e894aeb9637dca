import { LocaleType, LogLevel, Univer } from "@univerjs/core";
import { IFunctionService, UniverFormulaEnginePlugin } from "@univerjs/engine-formula";
import { UniverDataValidationPlugin } from "@univerjs/data-validation";
import { UniverSheetsPlugin } from "@univerjs/sheets";
import { UniverSheetsConditionalFormattingPlugin } from "@univerjs/sheets-conditional-formatting";
import { UniverSheetsDataValidationPlugin } from "@univerjs/sheets-data-validation";
import { UniverSheetsFilterPlugin } from "@univerjs/sheets-filter";
import { CalculationMode, UniverSheetsFormulaPlugin } from "@univerjs/sheets-formula";
import { UniverSheetsNumfmtPlugin } from "@univerjs/sheets-numfmt";
import type { FunctionsJson } from "./function-metadata";
import { liveWorkbook } from "./live-workbook";
import type { StandIn } from "./stand-in";
import { teachEngine } from "./taught-engine";
import type { Workbook } from "./workbook";

/** A workbook without a page; it says which functions it knows, by their names in capitals. */
export interface HeadlessWorkbook extends Workbook {
  readonly knows: (functionName: string) => boolean;
}

/** A workbook without a page. */
export const headlessWorkbook = (metadata: FunctionsJson, built: StandIn): HeadlessWorkbook => {
  const univer = new Univer({ locale: LocaleType.EN_US, locales: { [LocaleType.EN_US]: {} }, logLevel: LogLevel.SILENT });
  univer.registerPlugin(UniverFormulaEnginePlugin);
  univer.registerPlugin(UniverSheetsPlugin);
  // What spills is not stored, so a loaded workbook is always worked out as a whole.
  univer.registerPlugin(UniverSheetsFormulaPlugin, { initialFormulaComputing: CalculationMode.FORCED });
  univer.registerPlugin(UniverSheetsNumfmtPlugin);
  univer.registerPlugin(UniverSheetsConditionalFormattingPlugin);
  univer.registerPlugin(UniverDataValidationPlugin);
  univer.registerPlugin(UniverSheetsDataValidationPlugin);
  univer.registerPlugin(UniverSheetsFilterPlugin);
  const injector = univer.__getInjector();
  teachEngine(injector, metadata, built);
  const functions = injector.get(IFunctionService);
  return { ...liveWorkbook(univer), knows: (functionName) => functions.hasExecutor(functionName) };
};
