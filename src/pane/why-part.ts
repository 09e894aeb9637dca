import type { Solve } from "./answer";
import { button } from "./button";
import { element } from "./element";
import { explained, type Explained } from "./explained";
import type { ExplainedLine } from "./explained-call";
import type { CellHost, Place } from "./host";
import { messageOf } from "./message-of";
import { placeText } from "./place-text";
import { why } from "./why";

const NOTHING_WRONG = "Select a cell with an error to see what is wrong.";

export interface WhyPart {
  readonly parts: readonly HTMLElement[];
  /** Says what the cell selected is, until another is selected. */
  readonly explain: () => void;
}

/** Names with what is said of them; several of one name stand together. */
const linesShown = (page: Document, lines: readonly ExplainedLine[]): readonly HTMLElement[] =>
  lines.flatMap(({ name, says }, place) => [
    ...(lines[place - 1]?.name === name ? [] : [element(page, "dt", name)]),
    element(page, "dd", says),
  ]);

/** The sentence of the error cell selected, worked out again, following the selection; on demand what any cell is. */
export const whyPart = (page: Document, cells: CellHost | undefined, solve: Solve | undefined): WhyPart => {
  if (cells === undefined || solve === undefined) return { parts: [], explain: () => undefined };
  const sentence = element(page, "p", NOTHING_WRONG, "quiet");
  sentence.setAttribute("role", "status");
  const behind = element(page, "dl", [], "explained");
  behind.hidden = true;
  const show = (text: string, isSaid: boolean): void => {
    // Announced only when it changes, so that moving about is not talked over.
    if (sentence.textContent === text) return;
    sentence.textContent = text;
    sentence.className = isSaid ? "sentence" : "quiet";
  };
  const showBehind = (lines: readonly ExplainedLine[]): void => {
    behind.replaceChildren(...linesShown(page, lines));
    behind.hidden = lines.length === 0;
  };
  /** The cell that is explained, for as long as it is selected. */
  let of: string | undefined;
  let isWanted = false;
  let asked = 0;
  const told = async (place: Place | undefined): Promise<Explained | undefined> => {
    if (place === undefined) return undefined;
    if (of === placeText(place)) return explained(place, cells, solve);
    const says = await why(place, cells, solve);
    return says === undefined ? undefined : { says, lines: [] };
  };
  const follow = async (): Promise<void> => {
    asked += 1;
    const mine = asked;
    const place = await cells.selected();
    if (mine !== asked) return;
    const isAsked = isWanted;
    isWanted = false;
    if (isAsked) of = place === undefined ? undefined : placeText(place);
    else if (place === undefined || of !== placeText(place)) of = undefined;
    const found = await told(place);
    // An answer that comes after another cell was selected is of no use.
    if (mine !== asked) return;
    const none = isAsked ? "No cell is selected: select one, then explain it." : NOTHING_WRONG;
    show(found?.says ?? none, found !== undefined);
    showBehind(found?.lines ?? []);
    // Asked for from a menu or further down, the answer may be out of view; the focus stays where it is.
    if (isAsked) sentence.scrollIntoView({ block: "nearest" });
  };
  const refused = (error: unknown): void => {
    show(messageOf(error), false);
    showBehind([]);
  };
  const ask = (): void => void follow().catch(refused);
  const explain = (): void => {
    isWanted = true;
    ask();
  };
  cells.onSelection(ask).then(ask, refused);
  const parts = [element(page, "h2", "Why?"), sentence, behind, button(page, "Explain this cell", explain)];
  return { parts: [element(page, "section", parts, "why")], explain };
};
