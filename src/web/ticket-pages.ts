import { element } from "../pane/element";
import type { Ticket, TicketAct } from "../sheets/tickets";

/** What is ticked and written by hand under each step, once it is cut and once it is in place. */
const BY_HAND = "☐ cut  ☐ fits";

const lines = (page: Document, first: HTMLElement, others: readonly string[]): readonly (Node | string)[] => [
  first,
  ...others.flatMap((words) => [element(page, "br", ""), words]),
];

const rowName = (page: Document, content: readonly (Node | string)[]): HTMLElement => {
  const name = element(page, "th", content);
  name.scope = "row";
  return name;
};

const actLine = (page: Document, { number, act, says, cells }: TicketAct): HTMLElement =>
  element(page, "tr", [
    rowName(page, lines(page, element(page, "b", `${number} ${act}`), says.length === 0 ? [] : [says.join("; ")])),
    ...cells.map(({ figure, under }) => element(page, "td", lines(page, element(page, "b", figure), under))),
  ]);

/** Shop tickets for the printer, one page each: an act a line in cutting order, a step a column. */
export const ticketPages = (page: Document, tickets: readonly Ticket[], cautions: readonly string[]): readonly HTMLElement[] =>
  tickets.map(({ title, measure, steps, acts, always, over, lies, doubts }) => {
    const heads = ["act", ...steps.map((step) => `STEP ${step}`)].map((head) => {
      const made = element(page, "th", head);
      made.scope = "col";
      return made;
    });
    const done = element(page, "tr", [
      rowName(page, ["done; the gap found: how wide, where"]), ...steps.map(() => element(page, "td", BY_HAND)),
    ], "by-hand");
    return element(page, "section", [
      element(page, "h2", title),
      element(page, "p", cautions.join(" ")),
      element(page, "p", [...(over === "" ? [] : [`${over}.`]), lies, ...always.map((said) => `${said}.`), measure].join(" ")),
      ...doubts.map((doubt) => element(page, "p", doubt, "doubt")),
      element(page, "table", [
        element(page, "thead", [element(page, "tr", heads)]),
        element(page, "tbody", [...acts.map((act) => actLine(page, act)), done]),
      ]),
    ], "ticket");
  });
