import type { TouchedCells } from "../workbook/touched-cells";
import type { Workbook } from "../workbook/workbook";
import type { CellData, WorkbookData } from "../workbook/workbook-data";
import { cellsBetween, changeBetween, type WorkbookChange } from "./workbook-change";

/** Finds what changed in a workbook since it was last asked. */
export interface ChangeRecorder {
  /** Notes what may have changed. */
  readonly touch: (touched: TouchedCells | "anything") => void;
  /** What changed since the last time; undefined where all is as it was. */
  readonly take: () => WorkbookChange | undefined;
}

/** Cells that were typed into are looked at alone; after anything else, the workbook as a whole. */
export const changeRecorder = (book: Pick<Workbook, "data" | "stored">): ChangeRecorder => {
  let known: WorkbookData = book.data();
  let touchedCells = new Map<string, Set<string>>();
  let isAnything = false;

  const cellsAlone = (): WorkbookChange | undefined => {
    const sheets = known.sheets.flatMap(({ name, cells: before }) => {
      const addresses = touchedCells.get(name) ?? [];
      const after: Record<string, CellData | undefined> = {};
      for (const address of addresses) after[address] = book.stored(name, address);
      const cells = cellsBetween(before, after, addresses);
      // Known cells are this recorder's own, so they are changed in place: a copy of a large sheet for every cell typed would be felt.
      for (const [address, cell] of Object.entries(cells)) {
        if (cell === null) delete (before as Record<string, CellData>)[address];
        else (before as Record<string, CellData>)[address] = cell;
      }
      return Object.keys(cells).length === 0 ? [] : [{ name, cells }];
    });
    return sheets.length === 0 ? undefined : { sheets };
  };

  return {
    touch: (touched) => {
      if (touched === "anything") {
        isAnything = true;
        return;
      }
      const cells = touchedCells.get(touched.sheet) ?? new Set();
      for (const address of touched.addresses) cells.add(address);
      touchedCells.set(touched.sheet, cells);
    },
    take: () => {
      const before = known;
      const change = isAnything ? changeBetween(before, (known = book.data())) : cellsAlone();
      touchedCells = new Map();
      isAnything = false;
      return change;
    },
  };
};
