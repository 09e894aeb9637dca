import { catalogue } from "../functions/catalogue";
import { element } from "./element";
import type { CellHost } from "./host";
import { type Ask, inserted, type Insertion, takenBack } from "./insertion";
import type { Report } from "./report";

/** The button that takes back the last insert, hidden while there is none. */
export const undoButton = (page: Document): HTMLButtonElement => {
  const undo = element(page, "button", "Undo insert");
  undo.type = "button";
  undo.hidden = true;
  return undo;
};

export interface Inserting {
  /** Inserts the function of an id as the report's work. */
  readonly insert: (id: string) => void;
  /** Leaves nothing to undo. */
  readonly forget: () => void;
}

/** Inserts functions, and makes the button take back one insert after the other. */
export const inserting = (undo: HTMLButtonElement, heard: Report, cells: CellHost, ask: Ask): Inserting => {
  const insertions: Insertion[] = [];
  const showUndo = (): void => {
    const last = insertions[insertions.length - 1];
    undo.hidden = last === undefined;
    undo.textContent = last === undefined ? "Undo insert" : `Undo insert of ${last.id}`;
  };
  undo.addEventListener("click", () =>
    heard.act(async () => {
      const last = insertions.pop();
      try {
        if (last === undefined) return "There is no insert to undo.";
        const { says, left } = await takenBack(last, cells, ask);
        if (left !== undefined) insertions.push(left);
        return says;
      } finally {
        showUndo();
      }
    }),
  );
  return {
    insert: (id) =>
      heard.act(async () => {
        const declaration = catalogue.find((one) => one.id === id);
        if (declaration === undefined) throw new Error(`There is no function ${id}.`);
        const { says, left } = await inserted(declaration, cells, ask);
        if (left !== undefined) insertions.push(left);
        showUndo();
        return says;
      }),
    forget: () => {
      insertions.length = 0;
      showUndo();
    },
  };
};
