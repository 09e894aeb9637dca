import { element } from "../pane/element";
import type { Ticket } from "../sheets/tickets";

/** What a batch is printed as: a page of it, or a card for each piece of it. */
export type TicketForm = "pages" | "cards";

/** What is done with the batches chosen. */
export interface Choosing<Chosen> {
  readonly print: (chosen: readonly Chosen[], form: TicketForm) => void;
  readonly save: (chosen: readonly Chosen[], form: TicketForm) => void;
}

const FORMS: readonly (readonly [TicketForm, string])[] = [
  ["pages", "Batch pages, one for each batch"],
  ["cards", "Cut cards, two to a page"],
];

/** The forms to choose from, the first of them chosen. */
const formChoice = (): { readonly line: HTMLElement; readonly chosen: () => TicketForm } => {
  const choices = FORMS.map(([form, words], place) => {
    const choice = element(document, "input");
    choice.type = "radio";
    choice.name = "ticket-form";
    choice.checked = place === 0;
    return { form, choice, line: element(document, "label", [choice, ` ${words}`]) };
  });
  const line = element(document, "div", choices.map((each) => each.line), "forms");
  line.setAttribute("role", "radiogroup");
  line.setAttribute("aria-label", "Print as");
  return { line, chosen: () => choices.find(({ choice }) => choice.checked)?.form ?? "pages" };
};

/** Asks which batches go to the saw: all of them unless some are unticked. */
export const chosenTickets = <Chosen extends { readonly ticket: Ticket }>(
  found: readonly Chosen[], { print, save }: Choosing<Chosen>,
): void => {
  const title = element(document, "h2", "Shop tickets");
  title.id = "tickets-title";
  const form = formChoice();
  const boxes = found.map((each) => {
    const box = element(document, "input");
    box.type = "checkbox";
    box.checked = true;
    return { each, box, line: element(document, "label", [box, ` ${each.ticket.title}`]) };
  });
  const dialog = element(document, "dialog", [], "choosing");
  dialog.setAttribute("aria-labelledby", title.id);
  const button = (words: string, act: () => void): HTMLButtonElement => {
    const made = element(document, "button", words);
    made.type = "button";
    made.addEventListener("click", act);
    return made;
  };
  const chosen = (): readonly Chosen[] => boxes.filter(({ box }) => box.checked).map(({ each }) => each);
  const act = (use: Choosing<Chosen>["print"]) => (): void => {
    const [batches, as] = [chosen(), form.chosen()];
    dialog.close();
    use(batches, as);
  };
  const acting = [button("Print", act(print)), button("Save as a page", act(save))];
  dialog.addEventListener("change", () => {
    for (const each of acting) each.disabled = chosen().length === 0;
  });
  dialog.addEventListener("close", () => dialog.remove());
  dialog.append(
    title,
    form.line,
    ...boxes.map(({ line }) => line),
    element(document, "div", [button("Cancel", () => dialog.close()), ...acting.reverse()], "answers"),
  );
  document.body.append(dialog);
  dialog.showModal();
};
