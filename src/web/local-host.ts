import type { Block, CellHost, HeldCell, MendingHost, Place, PutBlock, SheetsHost } from "../pane/host";
import { cellAddress, cellPlace } from "../sheets/cell-address";
import type { SheetPage } from "../workbook/page/sheet-page";
import type { CellPut, SpilledBlock } from "../workbook/workbook";
import type { WorkbookData } from "../workbook/workbook-data";
import { nextCell, type Trial } from "./next-cell";
import { shownAnswers } from "./shown-answers";

const isWithin = ({ row, column }: Place, block: SpilledBlock): boolean =>
  row >= block.row && row < block.row + block.rows && column >= block.column && column < block.column + block.columns;

const doMeet = (one: SpilledBlock, other: SpilledBlock): boolean =>
  one.row < other.row + other.rows &&
  other.row < one.row + one.rows &&
  one.column < other.column + other.columns &&
  other.column < one.column + one.columns;

const places = (block: Block): Place[][] =>
  Array.from({ length: block.rows }, (_, down) =>
    Array.from({ length: block.columns }, (__, right) => ({ sheet: block.sheet, row: block.row + down, column: block.column + right })),
  );

/** The smallest block with every cell in which something stands. */
const usedOn = (sheet: string, addresses: readonly string[]): Block | undefined => {
  if (addresses.length === 0) return undefined;
  const found = addresses.map(cellPlace);
  const [row, column] = [Math.min(...found.map((one) => one.row)), Math.min(...found.map((one) => one.column))];
  return {
    sheet,
    row,
    column,
    rows: Math.max(...found.map((one) => one.row)) - row + 1,
    columns: Math.max(...found.map((one) => one.column)) - column + 1,
  };
};

/** After the last edit, in milliseconds: what to do next need not follow each key. */
const REST = 400;

/** Calls once there is a pause. */
const afterRest = (act: () => void): (() => void) => {
  let waiting: ReturnType<typeof setTimeout> | undefined;
  return () => {
    clearTimeout(waiting);
    waiting = setTimeout(act, REST);
  };
};

/** What is stored, read once for all who ask until something of it may have changed. */
const readOnce = (book: SheetPage): (() => WorkbookData) => {
  let held: WorkbookData | undefined;
  const forget = (): void => void (held = undefined);
  book.onChange(forget);
  book.onLoad(forget);
  return () => (held ??= book.data());
};

const holdsJob = (sheets: WorkbookData["sheets"], job: string): boolean =>
  sheets.some(({ cells }) => Object.values(cells).some(({ value }) => value === job));

const localSheets = (
  book: SheetPage, data: () => WorkbookData, trial: Trial, write: (blocks: readonly PutBlock[]) => void,
): SheetsHost => ({
  names: async () => book.sheetNames(),
  show: (name, address = "A1") => book.select(name, address),
  toDo: async () => {
    const { sheets } = data();
    return nextCell(sheets, (sheet, address) => book.value(sheet, address), holdsJob(sheets, trial.job) ? trial : undefined);
  },
  answers: async () => shownAnswers({ ...book, data }),
  onChange: (tell) => {
    const soon = afterRest(tell);
    book.onChange(soon);
    book.onSelection(soon);
  },
  onOther: (tell) => book.onLoad(tell),
  add: async (sheets, blocks = []) => {
    book.addSheets(sheets);
    write(blocks);
    await book.settled();
    const [first] = sheets;
    if (first !== undefined) await book.select(first.name, "A1");
  },
});

interface LocalHost {
  readonly cells: CellHost;
  readonly sheets: SheetsHost;
  readonly mending: MendingHost;
}

/** What the pane asks of a workbook, answered by the local sheet; `trial` is what there is to try in the demo. */
export const localHost = (book: SheetPage, trial: Trial): LocalHost => {
  const held = (place: Place): HeldCell => {
    const address = cellAddress(place);
    const value = book.value(place.sheet, address);
    const says = book.errorMessage(place.sheet, address);
    return {
      formula: book.formula(place.sheet, address),
      value: typeof value === "object" && value !== null && says !== undefined ? { ...value, says } : value,
      format: book.format(place.sheet, address),
    };
  };
  const selected = (): Place | undefined => {
    const cell = book.selected();
    return cell === undefined ? undefined : { sheet: cell.sheet, ...cellPlace(book.heldAt(cell.sheet, cell.address)) };
  };
  const write = (blocks: readonly PutBlock[]): void => {
    for (const { at, cells, widths = [], heights = [] } of blocks) {
      book.setColumnWidths(at.sheet, at.column, widths);
      book.setRowHeights(at.sheet, at.row, heights);
      const put: Record<string, CellPut> = {};
      for (const [down, row] of cells.entries()) {
        for (const [right, cell] of row.entries())
          if (cell !== undefined) put[cellAddress({ row: at.row + down, column: at.column + right })] = cell;
      }
      book.put(at.sheet, put);
    }
  };
  return {
    cells: {
      selected: async () => selected(),
      onSelection: async (tell) => void book.onSelection(() => tell()),
      read: async (blocks) => blocks.map((block) => places(block).map((row) => row.map(held))),
      write: async (blocks) => {
        write(blocks);
        await book.settled();
      },
      widths: async ({ sheet, column, columns }) => book.columnWidths(sheet, column, columns),
      heights: async ({ sheet, row, rows }) => book.rowHeights(sheet, row, rows),
      wraps: async (asked) => asked.map((place) => book.look(place.sheet, cellAddress(place)).wrap === true),
      spills: async (asked) => asked.map((place) => {
        const block = book.spills(place.sheet).find((one) => isWithin(place, one));
        return block === undefined ? undefined : { sheet: place.sheet, ...block };
      }),
      touchesSpill: async (block) => book.spills(block.sheet).some((one) => doMeet(block, one)),
    },
    sheets: localSheets(book, readOnce(book), trial, write),
    mending: {
      uses: async () => book.data().sheets.map(({ name, cells }) => ({ name, isProtected: false, used: usedOn(name, Object.keys(cells)) })),
      recalculate: async () => {
        book.recalculate();
        await book.settled();
      },
    },
  };
};
