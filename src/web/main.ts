import type { Solve } from "../pane/answer";
import type { SheetsHost } from "../pane/host";
import { messageOf } from "../pane/message-of";
import { pane } from "../pane/pane";
import { shownFunctions } from "../pane/shown-functions";
import { demo } from "../sheets/demo/demo";
import { inventedJob } from "../sheets/demo/invented-job";
import type { FunctionsJson } from "../workbook/function-metadata";
import { type SheetPage, sheetPage } from "../workbook/page/sheet-page";
import type { StandIn } from "../workbook/stand-in";
import { DATA_VERSION, type WorkbookData } from "../workbook/workbook-data";
import { cellLine } from "./cell-line";
import { drawer } from "./drawer";
import { fileButtons } from "./file-buttons";
import { filterLine } from "./filter-line";
import { isInvented } from "./is-invented";
import { keptWorkbooks } from "./kept-workbooks";
import { drawingsHost } from "./drawings-host";
import { localHost } from "./local-host";
import { menus } from "./menus";
import type { OpenWorkbook } from "./open-workbook";
import { openedShelf } from "./opened-shelf";
import { place } from "./place";
import { printing } from "./printing";
import { readyWorkbooksDialog } from "./ready-workbooks-dialog";
import { readyWorkbooksHost } from "./ready-workbooks-host";
import { startJob } from "./start-job";
import { takeInButton, takeInReadings } from "./take-in-readings";
import type { WorkbookShelf } from "./workbook-shelf";

const DEMO: WorkbookData = { version: DATA_VERSION, sheets: demo };
const DEMO_NAME = "Demo";

/** IRC 2021 R311.7.5.2 asks for 10 of run; the same 14 blanks are bought, and the hours and goods of smaller boards are fewer. */
const TRIAL = {
  job: inventedJob.job,
  name: "run",
  type: "9",
  says:
    "One limit of the code fails as designed and two as framed, the blanks still cost 721.50, of which 84.66 is ripped off instead of " +
    "23.62, and the price goes from 3,649.24 to 3,608.78. Ctrl+Z takes it back.",
};

const { treadsheetBuilt: built } = globalThis as unknown as { readonly treadsheetBuilt: StandIn };

const solve: Solve = (id, args) => {
  const solver = built.functions.get(id);
  if (solver === undefined) throw built.error("#NAME?", `${id}: functions.js has no such function`);
  return solver(...args);
};

const say = (text: string): void => void (place("status").textContent = text);

type Opened = ReturnType<typeof openedShelf>;

const workbooks = async (
  book: SheetPage, opened: Opened,
): Promise<{ readonly open: OpenWorkbook; readonly host: ReturnType<typeof localHost>; readonly shelf: WorkbookShelf }> => {
  const { shelf, fault } = await opened;
  const open = await keptWorkbooks(book, shelf, fault, DEMO_NAME, say);
  const takeIn = (text: string): string => takeInReadings(book, say, text);
  fileButtons({ book, open, shelf, demoName: DEMO_NAME, takeIn, say });
  takeInButton(book, say);
  // What the pane asks of the workbook can be asked once there is one.
  const host = localHost(book, TRIAL);
  startJob({ ...host, settled: book.settled }, open, shelf, solve, () => isInvented(book.data()), say);
  return { open, host, shelf };
};

const start = async (): Promise<void> => {
  // The store answers while the sheet is set up.
  const opened = openedShelf(() => indexedDB, DEMO);
  const shown = shownFunctions();
  // A host names the file by its content.
  const metadata = (await (await fetch(document.documentElement.dataset["functions"] ?? "functions.json")).json()) as FunctionsJson;
  const book = sheetPage(place("sheet"), metadata, built);
  const { open, host, shelf } = await workbooks(book, opened);
  printing({ book, solve, name: open.name, sawCaution: shown.sawCaution, caution: shown.caution, say });
  cellLine(book);
  filterLine(book);
  menus();
  const { open: openDrawer, close: closeDrawer } = drawer();
  const sheets: SheetsHost = {
    ...host.sheets,
    show: async (name, address) => {
      await host.sheets.show(name, address);
      // On a small screen what is shown lies under the drawer.
      closeDrawer();
    },
  };
  const ready = readyWorkbooksHost(metadata, built, book.settled, open, shelf);
  const about = { place: "beside this sheet", hasTitle: true, hasStart: true, lacks: [] } as const;
  const drawings = drawingsHost(open.name, book);
  const { explain } = pane(document, place("pane"), shown, { ...about, solve, ...host, sheets, workbooks: ready, drawings });
  book.onExplain(() => {
    openDrawer();
    explain();
  });
  readyWorkbooksDialog(ready, say);
  await book.settled();
  document.documentElement.dataset["ready"] = "yes";
  Object.assign(globalThis, { treadsheetBook: book });
};

void start().catch((error: unknown) => say(`The sheet did not start: ${messageOf(error)}`));
