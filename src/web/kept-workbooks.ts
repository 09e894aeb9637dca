import { messageOf } from "../pane/message-of";
import type { SheetPage } from "../workbook/page/sheet-page";
import { DATA_VERSION, type WorkbookData } from "../workbook/workbook-data";
import { saveAll } from "./file-buttons";
import { isInvented } from "./is-invented";
import { notice } from "./notice";
import { type OpenWorkbook, openWorkbook, type WorkbookNews } from "./open-workbook";
import { place } from "./place";
import { workbookList } from "./workbook-list";
import type { WorkbookShelf } from "./workbook-shelf";

/** Where a tab remembers which workbook it shows, over a reload. */
const OF_TAB = "treadsheet-workbook";
const PAGE_TITLE = "Treadsheet";
const NEW_NAME = "Workbook";
const NEW: WorkbookData = { version: DATA_VERSION, sheets: [{ name: "Sheet1", cells: {} }] };

/** What the page says of the workbook that it shows. */
const newsOf = (
  shelf: WorkbookShelf, isKept: boolean, say: (text: string) => void, open: () => OpenWorkbook, copyOf: () => WorkbookData,
): WorkbookNews => {
  const name = place("name");
  let unchanged: (() => void) | undefined;
  const named = (text: string): void => {
    name.textContent = text;
    document.title = `${text} – ${PAGE_TITLE}`;
  };
  return {
    opened: (book) => {
      unchanged?.();
      named(book.name);
      place("invented").hidden = !isInvented(book.data);
      place("save-into").hidden = book.file === undefined;
      place("save-into").textContent = `Back into ${book.file ?? ""}`;
      sessionStorage.setItem(OF_TAB, book.known.book);
      if (!isKept) return;
      say(book.isDemo ? "The demo. What you change is kept in this browser." : "Your sheets, as you left them in this browser.");
    },
    kept: () => {
      if (isKept) say("Kept in this browser.");
    },
    notKept: (error) => say(`Not kept in this browser: ${messageOf(error)}. Save the workbook as a file.`),
    overtaken: (book, copy) => {
      unchanged?.();
      if (copy === undefined) {
        unchanged = notice(`Another tab has changed “${book.name}”. This tab shows it as it was before.`, {
          "Show the other tab's version": () => open().show(book.id),
          "Keep the earlier one as a copy": async () => open().show(await shelf.add(book.name, copyOf())),
        });
        return;
      }
      named(copy.name);
      sessionStorage.setItem(OF_TAB, copy.id);
      notice(`Another tab has changed “${book.name}”. What was typed in this tab is kept as “${copy.name}”; nothing of either is lost.`, {
        "Take the other tab's version": async () => {
          await open().show(book.id);
          await shelf.remove(copy.id);
        },
        "Keep mine as a copy": async () => undefined,
      });
    },
  };
};

const listed = (open: OpenWorkbook, shelf: WorkbookShelf, demoName: string, isNamed: (name: string) => void): void => {
  workbookList({
    list: async () => {
      await open.keep();
      return shelf.list();
    },
    shown: open.id,
    show: open.show,
    create: async () => open.show(await shelf.add(NEW_NAME, NEW)),
    rename: async (id, to) => {
      const name = await shelf.rename(id, to);
      if (id === open.id()) isNamed(name);
      return name;
    },
    duplicate: async (id) => {
      const copy = await shelf.duplicate(id);
      return (await shelf.list()).kept.find((one) => one.id === copy)?.name ?? "";
    },
    remove: async (id) => {
      await open.keep();
      await shelf.remove(id);
      if (id !== open.id()) return;
      const [next] = (await shelf.list()).kept;
      await open.show(next?.id ?? (await shelf.addDemo(demoName)));
    },
    putBack: shelf.putBack,
    saveAll: () => saveAll(open, shelf),
  });
};

/** The workbook of this tab at first: the one it showed, else the one opened last, else the demo. */
const showFirst = async (open: OpenWorkbook, shelf: WorkbookShelf, demoName: string): Promise<void> => {
  const { kept } = await shelf.list();
  const first = kept.find(({ id }) => id === sessionStorage.getItem(OF_TAB)) ?? kept[0];
  if (first !== undefined) {
    try {
      return await open.show(first.id);
    } catch (error) {
      notice(`“${first.name}” cannot be opened, and stays in this browser: ${messageOf(error)}. This is the demo.`, {
        "Close": async () => undefined,
      });
    }
  }
  await open.show(await shelf.addDemo(demoName));
};

/** Shows the workbooks of this browser and keeps them. */
export const keptWorkbooks = async (
  book: SheetPage, shelf: WorkbookShelf, fault: string | undefined, demoName: string, say: (text: string) => void,
): Promise<OpenWorkbook> => {
  if (fault !== undefined) {
    notice(
      `This browser's store cannot be used: ${fault}. The page works, but what you type is gone when it is closed or reloaded: save it ` +
        "as a file.",
    );
    say("Not kept in this browser.");
  }
  const open: OpenWorkbook = openWorkbook(book, shelf, newsOf(shelf, fault === undefined, say, () => open, () => book.data()));
  await showFirst(open, shelf, demoName);
  listed(open, shelf, demoName, (name) => {
    open.isNamed(name);
    place("name").textContent = name;
    document.title = `${name} – ${PAGE_TITLE}`;
  });
  const check = (): void => {
    if (document.visibilityState === "visible") void open.check();
  };
  document.addEventListener("visibilitychange", check);
  window.addEventListener("focus", check);
  return open;
};
