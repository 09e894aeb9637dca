import { dayOf } from "../pane/day-of";
import { element } from "../pane/element";
import { messageOf } from "../pane/message-of";
import { MOST_NAME } from "./free-name";
import { place } from "./place";
import type { BookRecord } from "./records";

/** What the list of workbooks can do. */
export interface ListedWorkbooks {
  readonly list: () => Promise<{ readonly kept: readonly BookRecord[]; readonly deleted: readonly BookRecord[] }>;
  /** The workbook that is shown. */
  readonly shown: () => string;
  readonly show: (id: string) => Promise<void>;
  readonly create: () => Promise<void>;
  readonly rename: (id: string, name: string) => Promise<string>;
  readonly duplicate: (id: string) => Promise<string>;
  readonly remove: (id: string) => Promise<void>;
  readonly putBack: (id: string) => Promise<void>;
  /** Saves them all as one file; answers its name. */
  readonly saveAll: () => Promise<string>;
}

type Act = () => Promise<string | undefined>;

const button = (words: string, act: () => void, of?: string): HTMLButtonElement => {
  const made = element(document, "button", words);
  made.type = "button";
  if (of !== undefined) made.setAttribute("aria-label", `${words} ${of}`);
  made.addEventListener("click", act);
  return made;
};

/** The name of a workbook as a field; answers the new one, or nothing where it was left. */
const nameField = (name: string, done: (name: string | undefined) => void): HTMLFormElement => {
  const field = element(document, "input");
  field.value = name;
  field.maxLength = MOST_NAME;
  field.setAttribute("aria-label", `New name of ${name}`);
  const save = element(document, "button", "Save name");
  const form = element(document, "form", [field, save, button("Cancel", () => done(undefined))]);
  form.addEventListener("submit", (event) => {
    event.preventDefault();
    done(field.value);
  });
  form.addEventListener("keydown", (event) => {
    if (event.key !== "Escape") return;
    event.preventDefault();
    done(undefined);
  });
  return form;
};

/** What a row of the list does: `run` shows what came of it and draws the list anew. */
interface Acting {
  readonly workbooks: ListedWorkbooks;
  readonly run: (act: Act) => void;
  readonly close: () => void;
}

const keptRow = ({ id, name, changed }: BookRecord, { workbooks, run, close }: Acting): HTMLLIElement => {
  const isShown = id === workbooks.shown();
  const open = button(name, () => run(async () => {
    await workbooks.show(id);
    close();
    return undefined;
  }));
  open.className = "name";
  if (isShown) open.setAttribute("aria-current", "true");
  const rename = (): void => {
    const form = nameField(name, (to) => run(async () =>
      to === undefined || to.trim() === "" ? undefined : `Renamed to “${await workbooks.rename(id, to)}”.`,
    ));
    line.replaceChildren(form);
    form.querySelector("input")?.select();
  };
  const line = element(document, "li", [
    open,
    element(document, "span", `${isShown ? "shown now, " : ""}changed ${dayOf(new Date(changed))}`, "quiet"),
    button("Rename", rename, name),
    button("Duplicate", () => run(async () => `Duplicated as “${await workbooks.duplicate(id)}”.`), name),
    button("Delete", () => run(async () => {
      await workbooks.remove(id);
      return `Deleted “${name}”. It can be put back for 30 days.`;
    }), name),
  ]);
  return line;
};

const deletedRow = ({ id, name }: BookRecord, { workbooks, run }: Acting): HTMLLIElement =>
  element(document, "li", [
    element(document, "span", name, "name"),
    button("Put back", () => run(async () => {
      await workbooks.putBack(id);
      return `“${name}” is back.`;
    }), name),
  ]);

/** The dialog with every workbook of this browser. */
const workbookDialog = (workbooks: ListedWorkbooks): void => {
  const title = element(document, "h2", "Workbooks");
  title.id = "workbooks-title";
  title.tabIndex = -1;
  const [kept, deleted] = [element(document, "ul"), element(document, "ul")];
  const deletedPart = element(document, "section", [element(document, "h3", "Deleted in the last 30 days"), deleted]);
  const outcome = element(document, "p", "", "quiet");
  outcome.setAttribute("role", "status");
  const dialog = element(document, "dialog", [], "workbooks");
  dialog.setAttribute("aria-labelledby", title.id);

  const draw = async (): Promise<void> => {
    const found = await workbooks.list();
    kept.replaceChildren(...found.kept.map((book) => keptRow(book, acting)));
    deleted.replaceChildren(...found.deleted.map((book) => deletedRow(book, acting)));
    deletedPart.hidden = found.deleted.length === 0;
  };
  const run = (act: Act): void => {
    void act()
      .catch((error: unknown) => `That did not work: ${messageOf(error)}.`)
      .then(async (text) => {
        if (!dialog.open) return;
        await draw();
        outcome.textContent = text ?? "";
        // What was pressed may be gone.
        if (!dialog.contains(document.activeElement) || document.activeElement === dialog) title.focus();
      });
  };
  const close = (): void => dialog.close();
  const acting: Acting = { workbooks, run, close };
  const create: Act = async () => {
    await workbooks.create();
    close();
    return undefined;
  };
  const answers = element(document, "div", [
    button("New workbook", () => run(create)),
    button("Save all as one file", () => run(async () => `Saved as ${await workbooks.saveAll()}. “Open file” brings them back.`)),
    button("Close", close),
  ], "answers");
  dialog.append(title, kept, deletedPart, outcome, answers);
  dialog.addEventListener("close", () => dialog.remove());
  void draw().then(() => {
    document.body.append(dialog);
    dialog.showModal();
  });
};

/** The button that shows the workbooks. */
export const workbookList = (workbooks: ListedWorkbooks): void =>
  place("workbooks").addEventListener("click", () => workbookDialog(workbooks));
