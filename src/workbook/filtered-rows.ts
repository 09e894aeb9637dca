import type { Worksheet } from "@univerjs/core";
import { expandToContinuousRange } from "@univerjs/sheets";
import { cellAddress, columnPlace } from "../sheets/cell-address";
import { blockOfRange, rangeOf } from "./cell-range";
import { storedFilter } from "./engine-filter";
import type { OpenBook } from "./open-book";
import { filterNow, setFilter } from "./set-filter";
import type { FilteredTable, Workbook } from "./workbook";
import type { RowFilter } from "./workbook-data";

type Filters = Pick<Workbook, "filter" | "filterAgain" | "showAll" | "filtered">;

/** Rows that are hidden by one filter and not by the other. */
const different = ({ hides: one }: RowFilter, { hides: other }: RowFilter): number => {
  const [ones, others] = [new Set(one), new Set(other)];
  return one.filter((row) => !others.has(row)).length + other.filter((row) => !ones.has(row)).length;
};

/** The table of a filter, with the rows that came below. */
const grown = (sheet: Worksheet, { cells }: RowFilter): string =>
  blockOfRange(expandToContinuousRange(rangeOf(cells), { down: true }, sheet));

const tableOf = (sheet: Worksheet, filter: RowFilter, shown: Workbook["shown"]): FilteredTable => {
  const range = rangeOf(grown(sheet, filter));
  const rows = Array.from({ length: range.endRow - range.startRow }, (_, down) => range.startRow + 1 + down);
  const heading = (column: string): string => {
    const text = shown(sheet.getName(), cellAddress({ row: range.startRow, column: columnPlace(column) })).trim();
    return text === "" ? `column ${column}` : text;
  };
  return {
    cells: filter.cells,
    rows: rows.length,
    shown: rows.filter((row) => sheet.getRowVisible(row)).length,
    by: Object.entries(filter.keeps).map(([column, keeps]) => ({ heading: heading(column), keeps })),
    changed: different(filter, filterNow(sheet, grown(sheet, filter), filter.keeps)),
    hides: filter.hides,
  };
};

/** Rows hidden by what stands in a column, until all are shown again. */
export const filteredRows = (
  { injector, current, sheetNamed }: OpenBook, { shown }: Pick<Workbook, "shown">,
): Filters => {
  const filterOf = (sheet: Worksheet): RowFilter | undefined => storedFilter(injector, current().getUnitId(), sheet.getSheetId());
  const set = (sheet: Worksheet, filter: RowFilter | undefined): void =>
    setFilter(injector, current().getUnitId(), sheet.getSheetId(), filter);
  return {
    filter: (name, cells, keeps) => {
      const sheet = sheetNamed(name);
      set(sheet, filterNow(sheet, cells, keeps));
    },
    filterAgain: (name) => {
      const sheet = sheetNamed(name);
      const filter = filterOf(sheet);
      if (filter !== undefined) set(sheet, filterNow(sheet, grown(sheet, filter), filter.keeps));
    },
    showAll: (name) => {
      const sheet = sheetNamed(name);
      if (filterOf(sheet) !== undefined) set(sheet, undefined);
    },
    filtered: (name) => {
      const sheet = sheetNamed(name);
      const filter = filterOf(sheet);
      return filter === undefined || Object.keys(filter.keeps).length === 0 ? undefined : tableOf(sheet, filter, shown);
    },
  };
};
