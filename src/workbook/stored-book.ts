import type { ICellData, Nullable, Worksheet } from "@univerjs/core";
import { FormulaDataModel } from "@univerjs/engine-formula";
import { cellAddress, type CellPlace, cellPlace } from "../sheets/cell-address";
import { storedSettings } from "./engine-settings";
import { storedRules } from "./engine-rules";
import { storedFilter } from "./engine-filter";
import { storedCell } from "./engine-snapshot";
import type { OpenBook } from "./open-book";
import type { Workbook } from "./workbook";
import { type CellData, DATA_VERSION, type SheetData } from "./workbook-data";

/** A workbook as it is stored: what was put into it, and nothing it worked out. */
export const storedBook = ({ injector, current, sheetNamed, styleOf }: OpenBook): Pick<Workbook, "stored" | "data"> => {
  const model = injector.get(FormulaDataModel);

  const storedAt = (sheet: Worksheet, { row, column }: CellPlace, cell: Nullable<ICellData>): CellData | undefined => {
    if (!cell) return undefined;
    const formula = model.getFormulaStringByCell(row, column, sheet.getSheetId(), current().getUnitId()) ?? undefined;
    return storedCell(cell, formula, styleOf(cell));
  };
  const filterOf = (sheet: Worksheet): Pick<SheetData, "filter"> => {
    const filter = storedFilter(injector, current().getUnitId(), sheet.getSheetId());
    return filter === undefined ? {} : { filter };
  };
  const cellsOf = (sheet: Worksheet): Record<string, CellData> => {
    const cells: Record<string, CellData> = {};
    sheet.getCellMatrix().forValue((row, column, cell) => {
      const data = storedAt(sheet, { row, column }, cell);
      if (data !== undefined) cells[cellAddress({ row, column })] = data;
    });
    return cells;
  };

  return {
    stored: (name, address) => {
      const sheet = sheetNamed(name);
      const place = cellPlace(address);
      return storedAt(sheet, place, sheet.getCellRaw(place.row, place.column));
    },
    data: () => ({
      version: DATA_VERSION,
      sheets: current()
        .getSheets()
        .map((sheet) => ({
          name: sheet.getName(),
          cells: cellsOf(sheet),
          ...storedSettings(sheet.getConfig()),
          ...storedRules(injector, current().getUnitId(), sheet.getSheetId()),
          ...filterOf(sheet),
        })),
    }),
  };
};
