import {
  CellValueType,
  type IStyleData,
  ICommandService,
  Injector,
  IUniverInstanceService,
  LocaleType,
  LogLevel,
  type Nullable,
  Univer,
  UniverInstanceType,
  type Workbook as EngineWorkbook,
} from "@univerjs/core";
import {
  AFTER_CELL_EDIT,
  BEFORE_CELL_EDIT,
  CalculationMode,
  CellAlertManagerService,
  FormulaDataModel,
  FunctionType,
  IDescriptionService,
  type IFunctionInfo,
  IEditorBridgeService,
  ILayoutService,
  SelectRangeCommand,
  SetFormulaCalculationResultMutation,
  SetWorksheetActivateCommand,
  SheetInterceptorService,
  SheetsSelectionsService,
  UniverSheetsCorePreset,
} from "@univerjs/preset-sheets-core";
import words from "@univerjs/preset-sheets-core/locales/en-US";
import { cellAddress, cellPlace } from "../../sheets/cell-address";
import { valueCell } from "../engine-snapshot";
import { errorSentence } from "../error-sentence";
import { type FunctionMetadata, type FunctionsJson, worksheetName } from "../function-metadata";
import { liveWorkbook } from "../live-workbook";
import type { StandIn } from "../stand-in";
import { teachEngine } from "../taught-engine";
import { isFractionFormat, typedCell } from "../typed-cell";
import type { CellValue, Workbook } from "../workbook";
import { shortcutsInTime } from "./shortcuts-in-time";
import { spilledCopies } from "./spilled-copies";
import { tabChain } from "./tab-chain";

/** The cell a user stands on. */
export interface SelectedCell {
  readonly sheet: string;
  readonly address: string;
  readonly value: CellValue;
  readonly formula: string | undefined;
  readonly error: string | undefined;
}

/** The workbook in the page, with what only a page has. */
export interface SheetPage extends Workbook {
  /** Calls at once, when another cell is selected, and when the cell selected has another value. Answers how to stop. */
  readonly onSelection: (tell: (cell: SelectedCell | undefined) => void) => () => void;
  /** Shows a sheet and stands on one of its cells. */
  readonly select: (sheet: string, address: string) => Promise<void>;
}

const NO_WAIT = 0;
// Before the sheet's own reading of what was typed, which takes 1/2 for a date.
const FIRST = 1000;

const help = (metadata: FunctionMetadata): IFunctionInfo => ({
  functionName: worksheetName(metadata),
  functionType: FunctionType.User,
  description: metadata.description ?? "",
  abstract: metadata.description ?? "",
  functionParameter: metadata.parameters.map(({ name, description = "", dimensionality, optional }) => ({
    name,
    detail: description,
    example: dimensionality === "matrix" ? "A1:B9" : "A1",
    require: optional ? 0 : 1,
    repeat: 0,
  })),
});

const readTyping = (injector: Injector): void => {
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

// A cell in sixteenths shows 7.96 as 7 15/16; edited so, it would come out of a mere look as 7.9375. What is edited is the size itself.
const editSizes = (injector: Injector): void => {
  injector.get(SheetInterceptorService).writeCellInterceptor.intercept(BEFORE_CELL_EDIT, {
    priority: FIRST,
    handler: (cell, where, next) => {
      const stored = where.worksheet.getCellRaw(where.row, where.col);
      const style = where.workbook.getStyles().getStyleByCell(stored) as Nullable<IStyleData>;
      if (stored?.t !== CellValueType.NUMBER || stored.f || !isFractionFormat(style?.n?.pattern)) return next(cell);
      const shown = typedCell(String(where.worksheet.getCell(where.row, where.col)?.v ?? "").trim(), style?.n?.pattern);
      return shown.kind === "value" && shown.value === stored.v ? next(cell) : { ...stored, v: String(stored.v) };
    },
  });
};

const showSentences = (injector: Injector): void => {
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

/** Until the sheet is drawn no cell can be typed into; from then on one is always made ready for it. */
const takesKeys = (injector: Injector): Promise<void> =>
  new Promise((resolve) => {
    const { currentEditCellState$: ready } = injector.get(IEditorBridgeService);
    const ended = ready.subscribe((cell) => {
      if (!cell) return;
      resolve();
      // Not yet assigned where a cell is ready at once.
      setTimeout(() => ended.unsubscribe(), NO_WAIT);
    });
  });

/** Mounts the sheet in an element of the page that has a height. */
export const sheetPage = (element: HTMLElement, metadata: FunctionsJson, built: StandIn): SheetPage => {
  const univer = new Univer({ locale: LocaleType.EN_US, locales: { [LocaleType.EN_US]: words }, logLevel: LogLevel.WARN });
  const { plugins } = UniverSheetsCorePreset({ container: element, formula: { initialFormulaComputing: CalculationMode.FORCED } });
  for (const plugin of plugins) {
    if (Array.isArray(plugin)) univer.registerPlugin(plugin[0], plugin[1]);
    else univer.registerPlugin(plugin);
  }
  const injector = univer.__getInjector();
  teachEngine(injector, metadata, built);
  const workbook = liveWorkbook(univer);
  const commands = injector.get(ICommandService);
  const instances = injector.get(IUniverInstanceService);
  const listeners = new Set<(cell: SelectedCell | undefined) => void>();
  let isSetUp = false;
  let isLoading = false;

  const book = () => instances.getCurrentUnitOfType<EngineWorkbook>(UniverInstanceType.UNIVER_SHEET);

  const selected = (): SelectedCell | undefined => {
    const sheet = book()?.getActiveSheet().getName();
    const place = injector.get(SheetsSelectionsService).getCurrentLastSelection()?.primary;
    if (sheet === undefined || !place) return undefined;
    const address = cellAddress({ row: place.actualRow, column: place.actualColumn });
    return {
      sheet,
      address,
      value: workbook.value(sheet, address),
      formula: workbook.formula(sheet, address),
      error: workbook.errorMessage(sheet, address),
    };
  };

  // While a workbook takes the place of another, the sheet selects cells of one that is not there yet.
  const tell = (): void => {
    if (isLoading) return;
    const cell = selected();
    for (const listener of listeners) listener(cell);
  };

  const spilledText = (): string | undefined => {
    const sheet = book()?.getActiveSheet();
    const range = injector.get(SheetsSelectionsService).getCurrentLastSelection()?.range;
    if (!sheet || !range) return undefined;
    const spilled = injector.get(FormulaDataModel).getArrayFormulaCellData()[sheet.getUnitId()]?.[sheet.getSheetId()];
    const isSpilled = Object.entries(spilled ?? {}).some(
      ([row, cells]) =>
        Number(row) >= range.startRow &&
        Number(row) <= range.endRow &&
        Object.keys(cells ?? {}).some((column) => Number(column) >= range.startColumn && Number(column) <= range.endColumn),
    );
    if (!isSpilled) return undefined;
    return workbook.copied(
      sheet.getName(),
      cellAddress({ row: range.startRow, column: range.startColumn }),
      cellAddress({ row: range.endRow, column: range.endColumn }),
    );
  };

  // These parts of the engine are there once the first workbook is.
  const setUp = (): void => {
    if (isSetUp) return;
    isSetUp = true;
    injector.get(IDescriptionService).registerDescriptions(metadata.functions.map(help));
    readTyping(injector);
    editSizes(injector);
    showSentences(injector);
    shortcutsInTime(injector);
    spilledCopies(injector, spilledText);
    tabChain(injector);
    injector.get(SheetsSelectionsService).selectionMoveEnd$.subscribe(tell);
    commands.onCommandExecuted(({ id }) => {
      if (id === SetFormulaCalculationResultMutation.id) setTimeout(tell, NO_WAIT);
    });
  };

  return {
    ...workbook,
    // A page is at rest once it is also drawn and a key would go to the selected cell.
    settled: async () => {
      await workbook.settled();
      await takesKeys(injector);
    },
    load: (data) => {
      isLoading = true;
      try {
        workbook.load(data);
      } finally {
        isLoading = false;
      }
      setUp();
      tell();
    },
    select: async (name, address) => {
      const workbookShown = book();
      const sheet = workbookShown?.getSheetBySheetName(name);
      if (!workbookShown || !sheet) throw new Error(`sheet: there is no sheet named "${name}"`);
      const { row, column } = cellPlace(address);
      const [unitId, subUnitId] = [workbookShown.getUnitId(), sheet.getSheetId()];
      await commands.executeCommand(SetWorksheetActivateCommand.id, { unitId, subUnitId });
      await commands.executeCommand(SelectRangeCommand.id, {
        unitId,
        subUnit: subUnitId,
        range: { startRow: row, endRow: row, startColumn: column, endColumn: column },
      });
      injector.get(ILayoutService).focus();
      tell();
    },
    onSelection: (listener) => {
      listeners.add(listener);
      listener(selected());
      return () => void listeners.delete(listener);
    },
  };
};
