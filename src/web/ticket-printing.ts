import type { Solve } from "../pane/answer";
import { ticketTape } from "../sheets/ticket-tape";
import { tickets } from "../sheets/tickets";
import type { Workbook } from "../workbook/workbook";
import { fitCall } from "./fit-call";
import { measuredIn } from "./measured-in";
import { place } from "./place";
import { ticketPages } from "./ticket-pages";

/** Prints a ticket of every fit in the workbook, or says why there is none. */
export const ticketPrinting = (book: Workbook, solve: Solve, cautions: readonly string[], say: (text: string) => void): void => {
  const tapeText = (inches: number, divisions: number): string => {
    const answer = solve("TAPE", [inches, divisions]);
    return String(Array.isArray(answer) ? (answer as unknown[][])[0]?.[0] : answer);
  };
  const fitsOf = () =>
    book.data().sheets.flatMap(({ name, cells }) =>
      Object.entries(cells).flatMap(([address, { formula = "" }]) => {
        const call = fitCall(formula);
        // One row is a sentence of what is still to be typed.
        if (call === undefined || book.spill(name, address).length < 2) return [];
        return [{ name, address, pieces: call.pieces, measuring: measuredIn(book, name, call.formula, solve) }];
      }),
    );
  place("print").addEventListener("click", () => {
    const fits = fitsOf();
    const unclear = fits.find(({ measuring }) => measuring === undefined);
    if (unclear !== undefined) {
      say(
        `${unclear.name} ${unclear.address}: the unit or the tape of the fit cannot be read from its formula; write it there, as ` +
          `in "mm", or name a cell that holds it.`,
      );
      return;
    }
    const found = fits.flatMap(({ name, address, pieces, measuring }) =>
      measuring === undefined ? [] : tickets(`${name}: ${pieces}`, book.spill(name, address), ticketTape(measuring, tapeText)),
    );
    if (found.length === 0) {
      say("No sheet has a TREADFIT or RISERFIT to print a ticket of.");
      return;
    }
    place("tickets").replaceChildren(...ticketPages(document, found, cautions));
    window.print();
  });
};
