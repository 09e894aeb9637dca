import { formulaFault } from "../workbook/formula-limits";
import type { CellData, WorkbookData } from "../workbook/workbook-data";
import type { EditRecord } from "./records";
import { changed } from "./workbook-change";

/** A formula that would stop the page when it is opened stays as the text of it. */
const openable = (cell: CellData | null): CellData | null => {
  if (cell?.formula === undefined || formulaFault(cell.formula) === undefined) return cell;
  const { formula, ...rest } = cell;
  return { ...rest, value: formula };
};

/** Sheets kept whole with the edits that came after. */
export const replayed = (data: WorkbookData, edits: readonly Pick<EditRecord, "change">[]): WorkbookData =>
  edits.reduce(
    (before, { change }) =>
      changed(before, {
        ...change,
        sheets: change.sheets.map(({ cells, ...sheet }) =>
          cells === undefined
            ? sheet
            : { ...sheet, cells: Object.fromEntries(Object.entries(cells).map(([address, cell]) => [address, openable(cell)])) },
        ),
      }),
    data,
  );
