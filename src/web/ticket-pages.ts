import { element } from "../pane/element";
import type { Ticket } from "../sheets/tickets";

/** Shop tickets for the printer, one page each: a step a column, so that what is set at the saw stands together. */
export const ticketPages = (page: Document, tickets: readonly Ticket[], caution: string): readonly HTMLElement[] =>
  tickets.map(({ title, measure, headings, rows, notes }) => {
    const lines = headings.map((heading, line) => {
      const name = element(page, "th", heading);
      name.scope = "row";
      return element(page, "tr", [name, ...rows.map((row) => element(page, "td", row[line] ?? ""))]);
    });
    return element(page, "section", [
      element(page, "h2", title),
      element(page, "p", measure),
      element(page, "table", [element(page, "tbody", lines)]),
      ...notes.map((note) => element(page, "p", note)),
      element(page, "p", "Angles from square, positive where the front or bottom is longer; a negative tilt undercuts. Heel and toe along the nose from the far end."),
      element(page, "p", caution),
    ], "ticket");
  });
