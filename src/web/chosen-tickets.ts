import { element } from "../pane/element";
import type { Ticket } from "../sheets/tickets";

/** What a batch is printed as: a page of it, or a card for each piece of it. */
export type TicketForm = "pages" | "cards";

/** A batch, and which of its steps. */
export interface ChosenSteps<Batch> {
  readonly batch: Batch;
  readonly steps: ReadonlySet<string>;
}

/** What is done with what was chosen. */
export interface Choosing<Batch> {
  readonly print: (chosen: readonly ChosenSteps<Batch>[], form: TicketForm) => void;
  readonly save: (chosen: readonly ChosenSteps<Batch>[], form: TicketForm) => void;
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

const ticked = (): HTMLInputElement => {
  const box = element(document, "input");
  box.type = "checkbox";
  box.checked = true;
  return box;
};

/** A batch with a box, and under it one for each of its steps: the batch's own ticks or unticks them all. */
const batchChoice = <Batch extends { readonly ticket: Ticket }>(batch: Batch) => {
  const { title, steps } = batch.ticket;
  const whole = ticked();
  const [of = ""] = title.split(", step");
  const each = steps.length < 2 ? [] : steps.map((step) => {
    const box = ticked();
    box.setAttribute("aria-label", `${of}: ${step}`);
    box.addEventListener("change", () => {
      const on = each.filter((one) => one.box.checked).length;
      whole.checked = on > 0;
      whole.indeterminate = on > 0 && on < each.length;
    });
    return { step, box, line: element(document, "label", [box, ` ${step}`]) };
  });
  whole.addEventListener("change", () => {
    for (const { box } of each) box.checked = whole.checked;
  });
  const chosen = (): ChosenSteps<Batch> => ({
    batch,
    steps: new Set(!whole.checked ? [] : each.length === 0 ? steps : each.filter(({ box }) => box.checked).map(({ step }) => step)),
  });
  const lines = [
    element(document, "label", [whole, ` ${title}`]),
    ...(each.length === 0 ? [] : [element(document, "div", each.map(({ line }) => line), "steps")]),
  ];
  return { lines, chosen };
};

/** Asks which batches, and which steps of them, go to the saw: all of them unless some are unticked. */
export const chosenTickets = <Batch extends { readonly ticket: Ticket }>(
  found: readonly Batch[], { print, save }: Choosing<Batch>,
): void => {
  const title = element(document, "h2", "Shop tickets");
  title.id = "tickets-title";
  const form = formChoice();
  const batches = found.map(batchChoice);
  const dialog = element(document, "dialog", [], "choosing");
  dialog.setAttribute("aria-labelledby", title.id);
  const button = (words: string, act: () => void): HTMLButtonElement => {
    const made = element(document, "button", words);
    made.type = "button";
    made.addEventListener("click", act);
    return made;
  };
  const chosen = (): readonly ChosenSteps<Batch>[] => batches.map((one) => one.chosen()).filter(({ steps }) => steps.size > 0);
  const act = (use: Choosing<Batch>["print"]) => (): void => {
    const [steps, as] = [chosen(), form.chosen()];
    dialog.close();
    use(steps, as);
  };
  const acting = [button("Print", act(print)), button("Save as a web page", act(save))];
  dialog.addEventListener("change", () => {
    for (const each of acting) each.disabled = chosen().length === 0;
  });
  dialog.addEventListener("close", () => dialog.remove());
  dialog.append(
    title,
    form.line,
    ...batches.flatMap(({ lines }) => lines),
    element(document, "div", [button("Cancel", () => dialog.close()), ...acting.reverse()], "answers"),
  );
  document.body.append(dialog);
  dialog.showModal();
};
