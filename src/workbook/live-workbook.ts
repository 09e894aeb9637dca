import {
  type ICellData,
  ICommandService,
  IUndoRedoService,
  type IRange,
  IUniverInstanceService,
  type IWorkbookData,
  type Nullable,
  UndoCommand,
  type Univer,
  UniverInstanceType,
  type Workbook as EngineWorkbook,
  type Worksheet,
} from "@univerjs/core";
import { FormulaDataModel, SetTriggerFormulaCalculationStartMutation } from "@univerjs/engine-formula";
import { InsertSheetCommand, RemoveSheetCommand, SetRangeValuesCommand, SetWorksheetNameCommand } from "@univerjs/sheets";
import { cellAddress, type CellPlace, cellPlace } from "../sheets/cell-address";
import { engineSnapshot, plainValue, sheetSnapshot, storedCell, storedSettings, styleOf, valueCell } from "./engine-snapshot";
import { errorCode, errorSentence } from "./error-sentence";
import { refuseFormulas } from "./refused-formulas";
import { settling } from "./settle-rule";
import { touchedCells } from "./touched-cells";
import { typedCell } from "./typed-cell";
import type { CellPut, CellValue, SpilledBlock, Workbook } from "./workbook";
import { type CellData, DATA_VERSION, workbookData } from "./workbook-data";

const EMPTY: ICellData = { v: null, f: null, si: null, p: null };

const valueOf = (cell: Nullable<ICellData>): CellValue => {
  const error = errorCode(cell);
  if (error !== undefined) return { error };
  return (cell ? plainValue(cell) : undefined) ?? null;
};

const GENERAL = "General";

const putCell = ({ formula, value, format }: CellPut): ICellData => ({
  ...(formula === undefined
    ? value === undefined
      ? {}
      : value === null
        ? EMPTY
        : { ...EMPTY, ...valueCell(value, format) }
    : { ...EMPTY, f: formula }),
  ...(format === undefined ? {} : { s: { n: format === GENERAL ? null : { pattern: format } } }),
});

// The engine keeps the formulas it has read, with the functions in them, by workbook: no two in a process may go by one name.
let loads = 0;
// Nor may two sheets of a workbook, those taken away again among them.
let added = 0;

/** Our workbook on an engine that has been taught our functions. */
export const liveWorkbook = (univer: Univer): Workbook => {
  const injector = univer.__getInjector();
  const instances = injector.get(IUniverInstanceService);
  const model = injector.get(FormulaDataModel);
  const rule = settling(injector);
  refuseFormulas(injector);
  let book: EngineWorkbook | undefined;

  const current = (): EngineWorkbook => {
    if (book === undefined) throw new Error("The workbook is empty: load one first.");
    return book;
  };

  const sheetNamed = (name: string): Worksheet => {
    const sheet = current().getSheetBySheetName(name);
    if (!sheet) throw new Error(`sheet: there is no "${name}"; there are ${current().getSheets().map((one) => one.getName()).join(", ")}`);
    return sheet;
  };

  // Spilled cells are not in the sheet itself. A cell that was typed into hides what would spill there.
  const cellAt = (sheet: Worksheet, { row, column }: CellPlace): Nullable<ICellData> => {
    const own = sheet.getCellRaw(row, column);
    if (own?.v !== undefined && own.v !== null) return own;
    return model.getArrayFormulaCellData()[current().getUnitId()]?.[sheet.getSheetId()]?.[row]?.[column] ?? own;
  };

  const formulaAt = (sheet: Worksheet, { row, column }: CellPlace): string | undefined =>
    model.getFormulaStringByCell(row, column, sheet.getSheetId(), current().getUnitId()) ?? undefined;

  const styleAt = (cell: Nullable<ICellData>) => (cell ? current().getStyles().getStyleByCell(cell) : undefined);

  const shownAt = (sheet: Worksheet, { row, column }: CellPlace): string => {
    const cell = sheet.getCell(row, column);
    const plain = cell ? plainValue(cell) : undefined;
    return plain === undefined ? "" : typeof plain === "boolean" ? String(plain).toUpperCase() : String(plain);
  };

  const storedAt = (sheet: Worksheet, place: CellPlace, cell: Nullable<ICellData>): CellData | undefined =>
    cell ? storedCell(cell, formulaAt(sheet, place), styleAt(cell)) : undefined;

  const stored = (sheet: Worksheet): Record<string, CellData> => {
    const cells: Record<string, CellData> = {};
    sheet.getCellMatrix().forValue((row, column, cell) => {
      const place = { row, column };
      const data = storedAt(sheet, place, cell);
      if (data !== undefined) cells[cellAddress(place)] = data;
    });
    return cells;
  };

  const onSheet = (command: string, name: string, params: object): void => {
    const where = { unitId: current().getUnitId(), subUnitId: sheetNamed(name).getSheetId() };
    if (!injector.get(ICommandService).syncExecuteCommand(command, { ...where, ...params }))
      throw new Error(`${name}: the sheet does not take this`);
  };

  const spillsOn = (sheet: Worksheet): readonly SpilledBlock[] => {
    const anchors = model.getArrayFormulaRange()[current().getUnitId()]?.[sheet.getSheetId()] ?? {};
    return Object.values(anchors).flatMap((columns) =>
      Object.values<Nullable<IRange>>(columns ?? {}).flatMap((range) =>
        !range
          ? []
          : [
              {
                row: range.startRow,
                column: range.startColumn,
                rows: range.endRow - range.startRow + 1,
                columns: range.endColumn - range.startColumn + 1,
              },
            ],
      ),
    );
  };

  return {
    load: (data) => {
      const checked = workbookData(data);
      if (book !== undefined) instances.disposeUnit(book.getUnitId());
      loads += 1;
      book = univer.createUnit<IWorkbookData, EngineWorkbook>(
        UniverInstanceType.UNIVER_SHEET,
        engineSnapshot(`workbook-${loads}`, checked),
      );
      rule.begin();
    },
    setCell: (name, address, input) => {
      const sheet = sheetNamed(name);
      const place = cellPlace(address);
      const typed =
        typeof input === "string"
          ? typedCell(input, styleAt(sheet.getCellRaw(place.row, place.column))?.n?.pattern)
          : ({ kind: "value", value: input, format: undefined } as const);
      const cell: ICellData =
        typed.kind === "nothing"
          ? EMPTY
          : typed.kind === "formula"
            ? { ...EMPTY, f: typed.formula }
            : { ...EMPTY, ...valueCell(typed.value), ...(typed.format === undefined ? {} : { s: { n: { pattern: typed.format } } }) };
      const range = { startRow: place.row, endRow: place.row, startColumn: place.column, endColumn: place.column };
      const done = injector
        .get(ICommandService)
        .syncExecuteCommand(SetRangeValuesCommand.id, { unitId: current().getUnitId(), subUnitId: sheet.getSheetId(), range, value: cell });
      if (!done) throw new Error(`${name}!${address}: the sheet does not take "${String(input)}"`);
    },
    put: (name, cells) => {
      const sheet = sheetNamed(name);
      const value: Record<number, Record<number, ICellData>> = {};
      for (const [address, put] of Object.entries(cells)) {
        const { row, column } = cellPlace(address);
        (value[row] ??= {})[column] = putCell(put);
      }
      const [first] = Object.keys(cells);
      if (first === undefined) return;
      const { row, column } = cellPlace(first);
      // The command goes by the cells of the value; it only wants to be told some range.
      const range = { startRow: row, endRow: row, startColumn: column, endColumn: column };
      const done = injector
        .get(ICommandService)
        .syncExecuteCommand(SetRangeValuesCommand.id, { unitId: current().getUnitId(), subUnitId: sheet.getSheetId(), range, value });
      if (!done) throw new Error(`${name}: the sheet does not take what is put into ${Object.keys(cells).join(", ")}`);
    },
    sheetNames: () =>
      current()
        .getSheets()
        .map((sheet) => sheet.getName()),
    addSheets: (sheets) => {
      const { sheets: checked } = workbookData({ version: DATA_VERSION, sheets });
      const unitId = current().getUnitId();
      const index = current().getSheets().length;
      // The last one first: a formula finds the sheets after its own when it comes.
      for (const sheet of [...checked].reverse()) {
        added += 1;
        const snapshot = sheetSnapshot(`added-${loads}-${added}`, sheet, (cell) =>
          cell.style === undefined && cell.format === undefined ? undefined : styleOf(cell),
        );
        injector.get(ICommandService).syncExecuteCommand(InsertSheetCommand.id, { unitId, index, sheet: snapshot });
      }
    },
    renameSheet: (name, to) => onSheet(SetWorksheetNameCommand.id, name, { name: to }),
    removeSheet: (name) => onSheet(RemoveSheetCommand.id, name, {}),
    undo: () => {
      // Without a page nothing else says which workbook is meant, nor asks for what can be undone before there is something.
      injector.get(IUndoRedoService);
      instances.focusUnit(current().getUnitId());
      injector.get(ICommandService).syncExecuteCommand(UndoCommand.id);
    },
    recalculate: () =>
      void injector
        .get(ICommandService)
        .executeCommand(SetTriggerFormulaCalculationStartMutation.id, { commands: [], forceCalculation: true }, { onlyLocal: true }),
    settled: async () => {
      current();
      await rule.settled();
    },
    value: (name, address) => valueOf(cellAt(sheetNamed(name), cellPlace(address))),
    shown: (name, address) => shownAt(sheetNamed(name), cellPlace(address)),
    spill: (name, address) => {
      const sheet = sheetNamed(name);
      const place = cellPlace(address);
      const anchor = valueOf(cellAt(sheet, place));
      const block = model.getArrayFormulaRange()[current().getUnitId()]?.[sheet.getSheetId()]?.[place.row]?.[place.column];
      if (block === undefined || (typeof anchor === "object" && anchor?.error === "#SPILL!")) return [[anchor]];
      return Array.from({ length: block.endRow - block.startRow + 1 }, (_, row) =>
        Array.from({ length: block.endColumn - block.startColumn + 1 }, (__, column) =>
          valueOf(cellAt(sheet, { row: block.startRow + row, column: block.startColumn + column })),
        ),
      );
    },
    spills: (name) => spillsOn(sheetNamed(name)),
    format: (name, address) => {
      const { row, column } = cellPlace(address);
      return styleAt(sheetNamed(name).getCellRaw(row, column))?.n?.pattern ?? GENERAL;
    },
    errorMessage: (name, address) => errorSentence(cellAt(sheetNamed(name), cellPlace(address))),
    formula: (name, address) => formulaAt(sheetNamed(name), cellPlace(address)),
    copied: (name, from, to) => {
      const sheet = sheetNamed(name);
      const [first, last] = [cellPlace(from), cellPlace(to)];
      const lines: string[] = [];
      for (let row = first.row; row <= last.row; row += 1) {
        const texts: string[] = [];
        for (let column = first.column; column <= last.column; column += 1) texts.push(shownAt(sheet, { row, column }));
        lines.push(texts.join("\t"));
      }
      return lines.join("\n");
    },
    stored: (name, address) => {
      const sheet = sheetNamed(name);
      const place = cellPlace(address);
      return storedAt(sheet, place, sheet.getCellRaw(place.row, place.column));
    },
    onChange: (tell) =>
      void injector.get(ICommandService).onCommandExecuted((command, options) => {
        const touched = touchedCells(command, options, (id) => book?.getSheetBySheetId(id)?.getName());
        if (touched !== undefined) tell(touched);
      }),
    data: () => ({
      version: DATA_VERSION,
      sheets: current()
        .getSheets()
        .map((sheet) => ({
          name: sheet.getName(),
          cells: stored(sheet),
          ...storedSettings(sheet.getConfig().columnData, sheet.getFreeze().ySplit),
        })),
    }),
    dispose: () => {
      rule.dispose();
      univer.dispose();
    },
  };
};
