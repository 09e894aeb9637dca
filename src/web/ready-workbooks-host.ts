import type { WorkbooksHost } from "../pane/host";
import { readyFile } from "../ready-files/ready-file";
import { readyFileName } from "../sheets/ready-workbooks";
import type { FunctionsJson } from "../workbook/function-metadata";
import { headlessWorkbook } from "../workbook/headless-workbook";
import type { StandIn } from "../workbook/stand-in";
import { DATA_VERSION } from "../workbook/workbook-data";
import type { OpenWorkbook } from "./open-workbook";
import { EXCEL, savedFile } from "./saved-file";
import type { WorkbookShelf } from "./workbook-shelf";

/** The ready workbooks as this page has them: shown as workbooks of their own, or worked out beside the one shown, and saved. */
export const readyWorkbooksHost = (
  metadata: FunctionsJson, built: StandIn, settled: () => Promise<void>, open: OpenWorkbook, shelf: WorkbookShelf,
): WorkbooksHost => ({
  open: async (ready) => {
    await open.show(await shelf.add(ready.title, { version: DATA_VERSION, sheets: ready.sheets() }));
    await settled();
    return `“${open.name()}” is a workbook of its own. Type what is known in the yellow cells.`;
  },
  save: async (ready, form) => {
    const book = headlessWorkbook(metadata, built);
    try {
      const name = readyFileName(ready, form);
      savedFile(name, (await readyFile(ready, book))(form), EXCEL);
      return `Saved as ${name}${form === "formulas" ? ". Its formulas work where the add-in is installed." : ", without formulas."}`;
    } finally {
      book.dispose();
    }
  },
});
