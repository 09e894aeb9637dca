import { element } from "../pane/element";
import type { Ticket } from "../sheets/tickets";

const SETTING =
  "Left set and right set, in degrees: piece face up, nose (a riser: bottom) toward you; the near end of the blade's path swings " +
  "left or right. Face longer: the blade leans away from the piece. Underside or back longer: it leans over the piece.";
const MARKS =
  "Toe: along the nose, from the finished nose corner at the wall. Heel at the hook: on a line the return's width behind the " +
  "nose, from the finished wall end. Both ends open: toe to toe, heel to heel.";

/** Shop tickets for the printer, one page each: a step a column, so that what is set at the saw stands together. */
export const ticketPages = (page: Document, tickets: readonly Ticket[], cautions: readonly string[]): readonly HTMLElement[] =>
  tickets.map(({ title, measure, headings, rows, notes }) => {
    const lines = headings.map((heading, line) => {
      const name = element(page, "th", heading);
      name.scope = "row";
      return element(page, "tr", [name, ...rows.map((row) => element(page, "td", row[line] ?? ""))]);
    });
    return element(page, "section", [
      element(page, "h2", title),
      ...cautions.map((caution) => element(page, "p", caution)),
      element(page, "p", measure),
      element(page, "table", [element(page, "tbody", lines)]),
      ...notes.map((note) => element(page, "p", note)),
      element(page, "p", SETTING),
      ...(headings.includes("toe") ? [element(page, "p", MARKS)] : []),
    ], "ticket");
  });
