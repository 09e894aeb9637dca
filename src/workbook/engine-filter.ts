import type { Injector, IResources } from "@univerjs/core";
import { type FilterModel, type IAutoFilter, SheetsFilterService } from "@univerjs/sheets-filter";
import { columnName, columnPlace } from "../sheets/cell-address";
import { blockOfRange, rangeOf } from "./cell-range";
import type { RowFilter, SheetData } from "./workbook-data";

/** The engine's own name for what it loads of filters. */
const FILTER_PLUGIN_NAME = "SHEET_FILTER_PLUGIN";

/** The condition of a column as the engine keeps it. */
type Criteria = NonNullable<IAutoFilter["filterColumns"]>[number];

/** The condition that a column holds one of these texts; an empty one for an empty cell. */
export const keptTexts = (column: number, texts: readonly string[]): Criteria => {
  const filled = texts.filter((text) => text !== "");
  return { colId: column, filters: { ...(filled.length < texts.length ? { blank: true as const } : {}), filters: filled } };
};

export const engineFilter = ({ cells, keeps, hides }: RowFilter): IAutoFilter => ({
  ref: rangeOf(cells),
  filterColumns: Object.entries(keeps).map(([column, texts]) => keptTexts(columnPlace(column), texts)),
  cachedFilteredOut: hides.map((row) => row - 1),
});

/** The filters of a workbook as the engine loads them beside its sheets, which go by these names. */
export const filterResources = (sheets: readonly SheetData[], idOf: (index: number) => string): IResources => {
  const filters = sheets.flatMap(({ filter }, index) => (filter === undefined ? [] : [[idOf(index), engineFilter(filter)] as const]));
  return [{ name: FILTER_PLUGIN_NAME, data: JSON.stringify(Object.fromEntries(filters)) }];
};

const inOrder = (numbers: Iterable<number>): readonly number[] => [...numbers].sort((one, other) => one - other);

export const filterModelOf = (injector: Injector, unit: string, sheet: string): FilterModel | undefined =>
  injector.get(SheetsFilterService).getFilterModel(unit, sheet) ?? undefined;

const rowFilterOf = (model: FilterModel): RowFilter => {
  const columns = [...model.getAllFilterColumns()].sort(([one], [other]) => one - other);
  const keeps = columns.flatMap(([column, condition]) => {
    const { filters } = condition.getColumnData();
    return filters === undefined ? [] : [[columnName(column), [...(filters.filters ?? []), ...(filters.blank ? [""] : [])]] as const];
  });
  return {
    cells: blockOfRange(model.getRange()), keeps: Object.fromEntries(keeps), hides: inOrder(model.filteredOutRows).map((row) => row + 1),
  };
};

/** The filter of a sheet as it is stored, from the engine's own. */
export const storedFilter = (injector: Injector, unit: string, sheet: string): RowFilter | undefined => {
  const model = filterModelOf(injector, unit, sheet);
  return model === undefined ? undefined : rowFilterOf(model);
};
