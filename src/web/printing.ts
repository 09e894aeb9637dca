import { dayOf } from "../pane/day-of";
import { element } from "../pane/element";
import { cardsByPage, type CutPiece } from "../drawing/cards/pieces";
import type { Solve } from "../pane/answer";
import { type Ticket, tickets } from "../sheets/tickets";
import { filterSentence } from "../workbook/filter-sentence";
import type { SheetPage } from "../workbook/page/sheet-page";
import { cardPages } from "./card-pages";
import { chosenTickets, type ChosenSteps, type TicketForm } from "./chosen-tickets";
import { cutPiecesAt } from "./cut-pieces";
import { formulasIn } from "./formulas-in";
import { isInvented } from "./is-invented";
import { lineOver } from "./line-over";
import { marksCall } from "../pane/formula/marks-call";
import { pageMarks } from "./page-marks";
import { place } from "./place";
import { printedPage } from "./printed-page";
import { sheetPages } from "./sheet-pages";
import { ticketPages } from "./ticket-pages";
import { withWood } from "./wood-of-pieces";

const INVENTED = "The demo's job, people and prices are invented.";

/** What the page prints from, and where it says what came of it. */
export interface Printed {
  readonly book: SheetPage;
  /** The name of the workbook. */
  readonly name: () => string;
  /** Of the saw, and of every verdict. */
  readonly sawCaution: string;
  readonly caution: string;
  /** Calls a function of ours, to work out what a call of MARKS is given. */
  readonly solve: Solve;
  readonly say: (text: string) => void;
}

/** A batch of the marks in the workbook, some steps of it, and its pieces. */
interface Batch {
  readonly ticket: Ticket;
  readonly only: (steps: ReadonlySet<string>) => readonly Ticket[];
  readonly pieces: () => readonly CutPiece[] | string;
}

/** The batches of the marks in the workbook, or why there are none. */
const ticketsOf = ({ book, solve }: Printed): readonly Batch[] | string => {
  const { sheets } = book.data();
  const formulas = formulasIn({ sheets });
  const found = sheets.flatMap(({ name, cells }) =>
    Object.entries(cells).flatMap(([address, { formula = "" }]) => {
      const call = marksCall(formula);
      const marks = book.spill(name, address);
      // One row is a sentence of what is still to be typed.
      if (call === undefined || marks.length < 2) return [];
      let made: readonly CutPiece[] | string | undefined;
      const over = lineOver(book, name, call.formula);
      return tickets(name, call.pieces, marks, over).map((ticket): Batch => ({
        ticket,
        only: (steps) => tickets(name, call.pieces, marks, over, steps),
        pieces: () => {
          made ??= cutPiecesAt(book, name, address, call, solve);
          if (typeof made === "string") return made;
          const chosen = made.filter(({ step }) => ticket.steps.includes(step));
          return withWood(book, formulas, { sheet: name, address, formula }, chosen);
        },
      }));
    }),
  );
  return found.length === 0
    ? "No sheet has a MARKS or RISERMARKS with readings to print a ticket of: type readings on Fit, or enter one over readings of your own."
    : found;
};

/** Each page says whose it is and of which day; the demo's, that it is invented. */
const withJob = (section: HTMLElement, { name, book }: Printed): HTMLElement => {
  section.prepend(element(document, "p", `${name()} · ${dayOf(new Date())}`, "job"));
  if (isInvented(book.data())) section.append(element(document, "p", INVENTED, "demo"));
  return section;
};

/** A page of each batch, or the cards of all of them; a sentence where a call cannot be worked out. */
const ticketSections = (
  printed: Printed, chosen: readonly ChosenSteps<Batch>[], form: TicketForm,
): readonly HTMLElement[] | string => {
  const { name, book, sawCaution, caution } = printed;
  if (form === "pages") {
    const pages = chosen.flatMap(({ batch, steps }) => (steps.size === batch.ticket.steps.length ? [batch.ticket] : batch.only(steps)));
    return ticketPages(document, pages, [sawCaution, caution]).map((section) => withJob(section, printed));
  }
  const found = chosen.map(({ batch, steps }) => {
    const all = batch.pieces();
    return typeof all === "string" ? all : all.filter(({ step }) => steps.has(step));
  });
  const why = found.find((one): one is string => typeof one === "string");
  if (why !== undefined) return why;
  const job = isInvented(book.data()) ? `${name()}, invented` : name();
  const facts = { job, date: dayOf(new Date()), caution: sawCaution };
  return cardPages(document, cardsByPage((found as readonly (readonly CutPiece[])[]).flat(), facts));
};

const sheetSections = (printed: Printed, names: readonly string[]): readonly HTMLElement[] =>
  printed.book.data().sheets.filter(({ name, isHidden }) => names.includes(name) && isHidden !== true).flatMap((sheet) => {
    const section = sheetPages(document, printed.book, sheet);
    if (section === undefined) return [];
    const filtered = printed.book.filtered(sheet.name);
    if (filtered !== undefined) section.prepend(element(document, "p", filterSentence(filtered), "filtered"));
    section.append(element(document, "p", printed.caution, "caution"));
    return [withJob(section, printed)];
  });

/** The menu under Print: tickets by chosen batch, this sheet or all of them; as a page where nothing can be printed. */
export const printing = (printed: Printed): void => {
  const { book, say, name } = printed;
  const title = (): string => `${name()} ${dayOf(new Date())}`;
  const marks = element(document, "style");
  document.head.append(marks);
  const save = (sections: readonly HTMLElement[]): void => say(`Saved as ${printedPage(title(), sections)}. Open it to print it.`);
  const print = (sections: readonly HTMLElement[]): void => {
    if (typeof window.print !== "function") return save(sections);
    marks.textContent = pageMarks(title());
    place("tickets").replaceChildren(...sections);
    window.print();
  };
  const sheets = (names: () => readonly string[], act: (sections: readonly HTMLElement[]) => void) => (): void => {
    const sections = sheetSections(printed, names());
    if (sections.length === 0) say("There is nothing on it to print.");
    else act(sections);
  };
  const shown = (): readonly string[] => [book.selected()?.sheet ?? ""];

  place("print").addEventListener("click", () => {
    const found = ticketsOf(printed);
    if (typeof found === "string") return say(found);
    const use = (act: (sections: readonly HTMLElement[]) => void) => (chosen: readonly ChosenSteps<Batch>[], form: TicketForm): void => {
      const sections = ticketSections(printed, chosen, form);
      if (typeof sections === "string") say(sections);
      else act(sections);
    };
    chosenTickets(found, { print: use(print), save: use(save) });
  });
  place("print-sheet").addEventListener("click", sheets(shown, print));
  place("print-all").addEventListener("click", sheets(book.sheetNames, print));
  place("page-sheet").addEventListener("click", sheets(shown, save));
  place("page-all").addEventListener("click", sheets(book.sheetNames, save));
};
