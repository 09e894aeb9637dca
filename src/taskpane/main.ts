import { excelHost } from "../excel/excel-host";
import { isDarkInExcel, isSetSupported, whenInExcel } from "../excel/start";
import type { Solve } from "../pane/answer";
import type { PaneHost } from "../pane/host";
import { pane } from "../pane/pane";
import { shownFunctions } from "../pane/shown-functions";

const outsideExcel: PaneHost = { place: "outside Excel: the list below is complete, but there is no sheet to write in", lacks: [] };

const show = (host: PaneHost): void => {
  const into = document.querySelector<HTMLElement>("#pane");
  if (into !== null) pane(document, into, shownFunctions(), host);
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
whenInExcel(() => {
  const isDark = isDarkInExcel();
  const workbooks = { folder: "workbooks/" };
  show({ place: "in Excel", solve, workbooks, ...excelHost(isSetSupported), ...(isDark === undefined ? {} : { isDark }) });
});
