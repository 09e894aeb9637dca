import type { Solve } from "./answer";
import { element } from "./element";
import type { CellHost } from "./host";
import { messageOf } from "./message-of";
import { why } from "./why";

const NOTHING_WRONG = "Select a cell with an error to see what is wrong.";

/** The sentence of the error cell selected, worked out again, following the selection. */
export const whyPart = (page: Document, cells: CellHost | undefined, solve: Solve | undefined): readonly HTMLElement[] => {
  if (cells === undefined || solve === undefined) return [];
  const sentence = element(page, "p", NOTHING_WRONG, "quiet");
  sentence.setAttribute("role", "status");
  const show = (text: string, isError: boolean): void => {
    // Announced only when it changes, so that moving about is not talked over.
    if (sentence.textContent === text) return;
    sentence.textContent = text;
    sentence.className = isError ? "sentence" : "quiet";
  };
  let asked = 0;
  const follow = async (): Promise<void> => {
    asked += 1;
    const mine = asked;
    const place = await cells.selected();
    const found = place === undefined ? undefined : await why(place, cells, solve);
    // An answer that comes after another cell was selected is of no use.
    if (mine === asked) show(found ?? NOTHING_WRONG, found !== undefined);
  };
  const refused = (error: unknown): void => show(messageOf(error), false);
  const ask = (): void => void follow().catch(refused);
  cells.onSelection(ask).then(ask, refused);
  return [element(page, "section", [element(page, "h2", "Why?"), sentence], "why")];
};
