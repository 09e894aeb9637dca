import { element } from "../pane/element";
import type { WorkbooksHost } from "../pane/host";
import { messageOf } from "../pane/message-of";
import { workbooksPart } from "../pane/workbooks-part";
import { place } from "./place";

/** The dialog in which a ready workbook is chosen. */
const chooseReady = (host: WorkbooksHost, say: (text: string) => void): void => {
  const dialog = element(document, "dialog", [], "ready-workbooks");
  const outcome = element(document, "p", "", "quiet");
  outcome.setAttribute("role", "status");
  const act = (work: () => Promise<string>): void => {
    outcome.textContent = "Working the sheets out …";
    void work().then(
      (says) => {
        dialog.close();
        say(says);
      },
      (error: unknown) => void (outcome.textContent = `That did not work: ${messageOf(error)}.`),
    );
  };
  const close = element(document, "button", "Close");
  close.type = "button";
  close.addEventListener("click", () => dialog.close());
  const [title, ...parts] = workbooksPart(document, host, act);
  if (title !== undefined) {
    title.id = "ready-workbooks-title";
    dialog.append(title);
  }
  dialog.setAttribute("aria-labelledby", "ready-workbooks-title");
  dialog.append(...parts, outcome, element(document, "div", [close], "answers"));
  dialog.addEventListener("close", () => dialog.remove());
  document.body.append(dialog);
  dialog.showModal();
};

/** The button that shows the ready workbooks. */
export const readyWorkbooksDialog = (host: WorkbooksHost, say: (text: string) => void): void =>
  place("ready-workbooks").addEventListener("click", () => chooseReady(host, say));
