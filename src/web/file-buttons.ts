import { messageOf } from "../pane/message-of";
import type { Workbook } from "../workbook/workbook";
import type { OpenWorkbook } from "./open-workbook";
import { place } from "./place";
import { savedFile } from "./saved-file";
import { backupName, backupText, fileName, workbooksIn } from "./workbook-files";
import type { WorkbookShelf } from "./workbook-shelf";

const saveAs = (name: string, text: string): void => savedFile(name, text, "application/json");

/** Saves every workbook of this browser as one file; answers its name. */
export const saveAll = async (open: OpenWorkbook, shelf: WorkbookShelf): Promise<string> => {
  await open.keep();
  const name = backupName(new Date());
  saveAs(name, backupText(await shelf.all()));
  return name;
};

const openFile = async (file: File, book: Pick<Workbook, "settled">, open: OpenWorkbook, shelf: WorkbookShelf): Promise<string> => {
  const added: { readonly id: string; readonly name: string }[] = [];
  for (const { name, data } of workbooksIn(await file.text(), file.name)) added.push({ id: await shelf.add(name, data), name });
  const [first] = added;
  if (first === undefined) return "";
  await open.show(first.id);
  await book.settled();
  return added.length === 1
    ? `Opened ${file.name} as “${open.name()}”.`
    : `Opened ${added.length} workbooks from ${file.name}. They are in the list of workbooks.`;
};

/** The buttons that save and open files, and the one that opens the demo: each as a workbook of its own, so that nothing is replaced. */
export const fileButtons = (
  book: Pick<Workbook, "data" | "settled">, open: OpenWorkbook, shelf: WorkbookShelf, demoName: string, say: (text: string) => void,
): void => {
  place("save").addEventListener("click", () => {
    const name = fileName(open.name(), new Date());
    saveAs(name, JSON.stringify(book.data(), null, 1));
    say(`Saved as ${name}.`);
  });
  const file = place<HTMLInputElement>("file");
  place("open").addEventListener("click", () => file.click());
  file.addEventListener("change", () => {
    const [chosen] = file.files ?? [];
    file.value = "";
    if (chosen === undefined) return;
    openFile(chosen, book, open, shelf).then(say, (error: unknown) =>
      say(`${chosen.name} cannot be opened: ${messageOf(error)}. Choose a file that was saved here.`),
    );
  });
  place("demo").addEventListener("click", () => {
    shelf.addDemo(demoName).then(open.show).catch((error: unknown) => say(`The demo cannot be opened: ${messageOf(error)}.`));
  });
};
