import { dayOf } from "../pane/day-of";
import { messageOf } from "../pane/message-of";
import { question } from "../pane/question";
import { holdsReadings } from "../readings/read-readings";
import { readySheets } from "../sheets/ready-sheets";
import { PRINTED_COLUMNS } from "../sheets/ready-workbooks";
import type { SheetData } from "../sheets/sheet-data";
import type { Printing } from "../workbook-file/sheet/written-sheet";
import { savedInto } from "../workbook-file/saved-into";
import { valuesFile, workbookFile } from "../workbook-file/write-workbook-file";
import { formulaFault } from "../workbook/formula-limits";
import type { Workbook } from "../workbook/workbook";
import { isSoundSheet } from "../workbook/workbook-data";
import { droppedFiles } from "./dropped-files";
import { fileWorkbooks, notOpened } from "./file-workbooks";
import type { OpenWorkbook } from "./open-workbook";
import { place } from "./place";
import { EXCEL, savedFile } from "./saved-file";
import { textOf } from "./text-table";
import { backupName, backupText, fileName } from "./workbook-files";
import type { WorkbookShelf } from "./workbook-shelf";

const saveAs = (name: string, text: string): void => savedFile(name, text, "application/json");

/** Saves every workbook of this browser as one file; answers its name. */
export const saveAll = async (open: OpenWorkbook, shelf: WorkbookShelf): Promise<string> => {
  await open.keep();
  const name = backupName(new Date());
  saveAs(name, backupText(await shelf.all()));
  return name;
};

/** What the buttons work with. */
export interface Filing {
  readonly book: Pick<Workbook, "data" | "settled" | "value" | "spill" | "look">;
  readonly open: OpenWorkbook;
  readonly shelf: WorkbookShelf;
  readonly demoName: string;
  /** Shows a set of readings beside the workbook's; answers what to say of it. */
  readonly takeIn: (text: string) => string;
  readonly say: (text: string) => void;
}

const asked = (file: string, notShown: readonly string[]): Promise<boolean> =>
  question(
    document,
    `${file} has what a sheet here does not show: ${notShown.join("; ")}. It is not lost: save with Save ▾, Back into ${file}, ` +
      "and the file that you get has it, with what you type here.",
    "Open it", "Leave it",
  );

/** Whether dates are written day before month where this browser is used. */
const isDayFirst = (): boolean => {
  // Without a name: the one that a browser gives for its language may be none that it takes itself.
  const parts = new Intl.DateTimeFormat().formatToParts().map(({ type }) => type);
  return parts.indexOf("day") < parts.indexOf("month");
};

const TEXT_FILE = /\.txt$/i;

const openFile = async (file: File, { book, open, shelf, takeIn }: Filing): Promise<string> => {
  const bytes = new Uint8Array(await file.arrayBuffer());
  const text = TEXT_FILE.test(file.name) ? textOf(bytes) : "";
  if (holdsReadings(text)) {
    await book.settled();
    return takeIn(text);
  }
  const { workbooks, notShown, says, isWorkbookFile } = fileWorkbooks(bytes, file.name, isDayFirst());
  if (notShown.length > 0 && !(await asked(file.name, notShown))) return `${file.name} was not opened.`;
  const added: string[] = [];
  for (const { name, data } of workbooks) added.push(await shelf.add(name, data, isWorkbookFile ? { name: file.name, bytes } : undefined));
  const [first] = added;
  if (first === undefined) return "";
  await open.show(first);
  if (isWorkbookFile) await shelf.noteOpened(first, book.data().sheets);
  await book.settled();
  return added.length === 1
    ? [`Opened ${file.name} as “${open.name()}”.`, ...says].join(" ")
    : `Opened ${added.length} workbooks from ${file.name}. They are in the list of workbooks.`;
};

/** A ready sheet, or that of a further stair. */
const isReady = ({ name }: SheetData): boolean => readySheets.some((ready) => name.replace(/ \d+$/, "") === ready.name);

const printedAs = (name: string, sheets: readonly SheetData[]): Printing => ({
  job: name, date: dayOf(new Date()), ...(sheets.every(isReady) ? { columns: PRINTED_COLUMNS } : {}),
});

/** Saves the workbook for a spreadsheet: with its formulas alive, which asks for the add-in, or as what they come to, for anyone. */
const saveWorkbook = async ({ book, open, say }: Filing, hasFormulas: boolean): Promise<void> => {
  await book.settled();
  const { sheets } = book.data();
  const options = { calculated: book, printing: printedAs(open.name(), sheets) };
  const bytes = hasFormulas ? workbookFile(sheets, options) : valuesFile(sheets, { ...options, look: book.look });
  const name = fileName(open.name(), new Date(), hasFormulas ? ".xlsx" : " values.xlsx");
  savedFile(name, bytes, EXCEL);
  say(hasFormulas ? `Saved as ${name}. Its formulas work where the add-in is installed.` : `Saved as ${name}, without formulas.`);
};

/** What is named one by one. */
const MOST_NAMED = 5;

/** A message as a sentence of its own. */
const sentence = (message: string): string => message.charAt(0).toUpperCase() + message.slice(1) + (/[.!?)]$/.test(message) ? "" : ".");

const list = (parts: readonly string[]): string =>
  parts.slice(0, MOST_NAMED).join("; ") + (parts.length > MOST_NAMED ? `; and ${parts.length - MOST_NAMED} more` : "");

/** Saves the workbook into the file that it was opened from, with all that is in that file besides. */
const saveInto = async ({ book, open, shelf, say }: Filing): Promise<void> => {
  await book.settled();
  const file = await shelf.file(open.id());
  if (file === undefined) throw new Error("the file it was opened from is not in this browser any more");
  const { sheets } = book.data();
  const { bytes, unsaved, notCarried } = savedInto(file.bytes, sheets, {
    calculated: book, opened: file.opened, refuses: formulaFault, isSound: isSoundSheet, printing: printedAs(open.name(), sheets),
  });
  savedFile(file.name, bytes, EXCEL);
  const kept = unsaved.map(({ sheet, address, why }) => `${sheet} ${address} ${why}`);
  say([
    `Saved as ${file.name}, with all that was in it.`,
    ...(kept.length === 0 ? [] : [`Some formulas keep the value they had: ${list(kept)}.`]),
    ...(notCarried.length === 0 ? [] : [`A spreadsheet does not show what you changed of ${list(notCarried)}.`]),
  ].join(" "));
};

/** The buttons that save and open files, and the one that opens the demo: each as a workbook of its own, so that nothing is replaced. */
export const fileButtons = (filing: Filing): void => {
  const { book, open, shelf, demoName, say } = filing;
  const opened = async (file: File): Promise<string> => {
    say(`Opening ${file.name} …`);
    return openFile(file, filing).catch((error: unknown) => notOpened(file.name, error, messageOf(error)));
  };
  // One after the other: each is shown, and the last one stays.
  const take = async (files: readonly File[]): Promise<void> => {
    const said: string[] = [];
    for (const file of files) said.push(await opened(file));
    say(said.join(" "));
  };
  place("save").addEventListener("click", () => {
    const name = fileName(open.name(), new Date());
    saveAs(name, JSON.stringify(book.data(), null, 1));
    say(`Saved as ${name}.`);
  });
  for (const [id, hasFormulas] of [["save-excel", true], ["save-values", false]] as const) {
    place(id).addEventListener("click", () => {
      saveWorkbook(filing, hasFormulas).catch((error: unknown) => say(`The workbook was not saved: ${messageOf(error)}.`));
    });
  }
  place("save-into").addEventListener("click", () => {
    saveInto(filing).catch((error: unknown) => say(`The workbook was not saved. ${sentence(messageOf(error))}`));
  });
  const file = place<HTMLInputElement>("file");
  place("open").addEventListener("click", () => file.click());
  file.addEventListener("change", () => {
    const chosen = [...(file.files ?? [])];
    file.value = "";
    void take(chosen);
  });
  droppedFiles((files) => void take(files));
  place("demo").addEventListener("click", () => {
    shelf.addDemo(demoName).then(open.show).catch((error: unknown) => say(`The demo cannot be opened: ${messageOf(error)}.`));
  });
};
