import { element } from "../pane/element";
import type { Ticket } from "../sheets/tickets";

/** What is done with the batches chosen. */
export interface Choosing {
  readonly print: (chosen: readonly Ticket[]) => void;
  readonly save: (chosen: readonly Ticket[]) => void;
}

/** Asks which batches go to the saw: all of them unless some are unticked. */
export const chosenTickets = (found: readonly Ticket[], { print, save }: Choosing): void => {
  const title = element(document, "h2", "Shop tickets");
  title.id = "tickets-title";
  const boxes = found.map((ticket) => {
    const box = element(document, "input");
    box.type = "checkbox";
    box.checked = true;
    return { ticket, box, line: element(document, "label", [box, ` ${ticket.title}`]) };
  });
  const dialog = element(document, "dialog", [], "choosing");
  dialog.setAttribute("aria-labelledby", title.id);
  const button = (words: string, act: () => void): HTMLButtonElement => {
    const made = element(document, "button", words);
    made.type = "button";
    made.addEventListener("click", act);
    return made;
  };
  const chosen = (): readonly Ticket[] => boxes.filter(({ box }) => box.checked).map(({ ticket }) => ticket);
  const act = (use: (tickets: readonly Ticket[]) => void) => (): void => {
    const tickets = chosen();
    dialog.close();
    use(tickets);
  };
  const acting = [button("Print", act(print)), button("Save as a page", act(save))];
  dialog.addEventListener("change", () => {
    for (const each of acting) each.disabled = chosen().length === 0;
  });
  dialog.addEventListener("close", () => dialog.remove());
  dialog.append(
    title,
    element(document, "p", "One page for each batch.", "quiet"),
    ...boxes.map(({ line }) => line),
    element(document, "div", [button("Cancel", () => dialog.close()), ...acting.reverse()], "answers"),
  );
  document.body.append(dialog);
  dialog.showModal();
};
