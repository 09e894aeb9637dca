import { element } from "./element";
import { functionGroups } from "./function-groups";
import type { PaneHost } from "./host";
import type { ShownCatalogue } from "./shown-functions";

const NOTHING_WRONG = "Select a cell that shows an error, and its sentence stands here.";

/** The sentence of the error cell selected, following the selection. */
const why = (page: Document, host: PaneHost): HTMLElement[] => {
  if (host.onSelection === undefined) return [];
  const sentence = element(page, "p", NOTHING_WRONG, "quiet");
  sentence.setAttribute("role", "status");
  host.onSelection((cell) => {
    const text = cell?.error === undefined ? NOTHING_WRONG : `${cell.sheet}, ${cell.address}: ${cell.error}`;
    // Said only when it changes, so that moving about is not talked over.
    if (sentence.textContent === text) return;
    sentence.textContent = text;
    sentence.className = cell?.error === undefined ? "quiet" : "sentence";
  });
  return [element(page, "section", [element(page, "h2", "Why?"), sentence], "why")];
};

/** Puts the pane's content into a place on the page: title, caution, why, and every function under its step of the job, to be found and inserted. */
export const pane = (page: Document, into: HTMLElement, { version, caution, functions }: ShownCatalogue, host: PaneHost): void => {
  const settings = host.solve === undefined ? {} : { solve: host.solve };
  const heard = element(page, "p", "", "quiet");
  heard.setAttribute("role", "status");
  const { insert } = host;
  const groups = functionGroups(page, functions, {
    open: "first",
    ...settings,
    ...(insert === undefined ? {} : { insert: (formula: string): void => void (heard.textContent = insert(formula)) }),
  });
  const worked = host.solve === undefined ? [] : [
    element(
      page, "p",
      `${groups.examples} examples, ${groups.differences === 0 ? "all as stated" : `${groups.differences} ${groups.differences === 1 ? "differs" : "differ"} from what is stated`}.`,
      groups.differences === 0 ? "count" : "count differs",
    ),
  ];
  const field = element(page, "input");
  field.type = "search";
  field.placeholder = "riser, kerf, margin …";
  const label = element(page, "label", ["Find a function by a trade word ", field], "find");
  field.addEventListener("input", () => groups.find(field.value));
  into.replaceChildren(
    element(page, "h1", "Treadsheet"),
    element(page, "p", `Version ${version} · ${host.place}`, "quiet"),
    element(page, "p", caution, "caution"),
    ...why(page, host),
    element(page, "section", [element(page, "h2", "Functions"), label, heard, ...worked, groups.nothing, ...groups.parts], "functions"),
  );
};
