import { excelHost } from "../excel/excel-host";
import { onExplain } from "../excel/explain-command";
import { isDarkInExcel, isSetSupported, paneVisibility, savesFiles, whenInExcel } from "../excel/start";
import type { Solve } from "../pane/answer";
import type { DrawingsHost, PaneHost } from "../pane/host";
import { type Pane, pane } from "../pane/pane";
import { savedDrawings } from "../pane/saved-drawings";
import { shownFunctions } from "../pane/shown-functions";

const outsideExcel: PaneHost = { place: "outside Excel: the list below is complete, but there is no sheet to write in", lacks: [] };

const show = (host: PaneHost): Pane | undefined => {
  const into = document.querySelector<HTMLElement>("#pane");
  return into === null ? undefined : pane(document, into, shownFunctions(), host);
};

/** Calls a function of functions.js, which this page loads and the sheet uses. */
const solve: Solve = (id, args) => {
  const { treadsheetFunctions } = globalThis as unknown as {
    readonly treadsheetFunctions?: ReadonlyMap<string, (...cells: readonly unknown[]) => unknown>;
  };
  const found = treadsheetFunctions?.get(id);
  if (found === undefined) throw new Error(`${id} is not there: functions.js did not load. Close the pane and open it again.`);
  return found(...args);
};

show(outsideExcel);
/** Where a file cannot be saved a picture in a sheet is what prints, and an Excel that takes none has neither. */
const withoutFiles = (host: DrawingsHost | undefined): DrawingsHost => ({
  cards: { lacks: "Cut cards are saved from Excel on Windows and on the web: open the workbook there." },
  lacks: host?.place === undefined
    ? "This Excel's pane saves no files, prints nothing and places no pictures: open the workbook in a newer Excel."
    : "This Excel's pane saves no files and does not print: place the drawing as a picture, then print the sheet.",
});

whenInExcel(() => {
  const isDark = isDarkInExcel();
  const workbooks = { folder: "workbooks/" };
  const host = excelHost(isSetSupported, paneVisibility());
  const drawings: DrawingsHost = { ...host.drawings, ...(savesFiles() ? savedDrawings : withoutFiles(host.drawings)) };
  const shown = show({ place: "in Excel", solve, workbooks, ...host, drawings, ...(isDark === undefined ? {} : { isDark }) });
  onExplain(() => shown?.explain());
});
