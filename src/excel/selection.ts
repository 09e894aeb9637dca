import type { CellHost } from "../pane/host";
import { run } from "./run";

const ASKED = { asked: "to say which cell is selected", sheets: [] };

/** Milliseconds in which one word is enough: a recalculation ends sheet by sheet, and a held arrow key selects cell by cell. */
const TOGETHER = 150;

/** Whether somebody sees the pane, and word of every change of it. */
export interface PaneVisibility {
  readonly isVisible: () => boolean;
  readonly onChange: (tell: () => void) => void;
}

type Handlers = readonly [
  OfficeExtension.EventHandlerResult<Excel.SelectionChangedEventArgs>,
  OfficeExtension.EventHandlerResult<Excel.WorksheetCalculatedEventArgs>,
];

const listened = (changed: () => Promise<void>): Promise<Handlers> =>
  run(ASKED, async (context) => {
    const handlers: Handlers = [
      context.workbook.onSelectionChanged.add(changed),
      // The value of the cell selected may change while the selection stays.
      context.workbook.worksheets.onCalculated.add(changed),
    ];
    await context.sync();
    return handlers;
  });

/** In the context they were added with (Work with Events using the Excel JavaScript API, Remove an event handler). */
const removed = ([selection, calculation]: Handlers): Promise<void> =>
  Excel.run(selection.context, async (context) => {
    selection.remove();
    calculation.remove();
    await context.sync();
  });

/** Word of changes while the pane is seen, several at once as one; `later` calls back after a while. */
const following = (visibility: PaneVisibility, later: (go: () => void) => void): CellHost["onSelection"] => {
  const told: (() => void)[] = [];
  let handlers: Handlers | undefined;
  let isDue = false;
  const changed = async (): Promise<void> => {
    if (isDue) return;
    isDue = true;
    later(() => {
      isDue = false;
      if (visibility.isVisible()) for (const tell of told) tell();
    });
  };
  let before: Promise<void> = Promise.resolve();
  const follow = async (): Promise<void> => {
    if (visibility.isVisible() && handlers === undefined) handlers = await listened(changed);
    else if (!visibility.isVisible() && handlers !== undefined) {
      const old = handlers;
      handlers = undefined;
      await removed(old);
    }
  };
  /** One after the other, so that nothing is added twice. */
  const next = (): Promise<void> => (before = before.catch(() => undefined).then(follow));
  visibility.onChange(() => void next().then(changed).catch(() => undefined));
  return (tell) => {
    told.push(tell);
    return next();
  };
};

/** The cell selected in Excel, and word of every change of it. */
export const excelSelection = (
  visibility: PaneVisibility, later: (go: () => void) => void = (go) => void setTimeout(go, TOGETHER),
): Pick<CellHost, "selected" | "onSelection"> => ({
  selected: () =>
    run(ASKED, async (context) => {
      const cell = context.workbook.getActiveCell();
      cell.load("rowIndex,columnIndex");
      cell.worksheet.load("name");
      await context.sync();
      return { sheet: cell.worksheet.name, row: cell.rowIndex, column: cell.columnIndex };
    }),
  onSelection: following(visibility, later),
});
