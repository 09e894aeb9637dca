import { element } from "../pane/element";
import { isWritten, type MergedReading, type MergedStep, pieceName } from "../readings/merged-readings";
import { counted } from "../readings/said-of-merge";

const HEADS = ["take in", "reading", "in the sheet", "on the telephone", "difference"];

/** What differs is a line by itself; what is new, or stays for one reason, is a line together. */
const linesOf = ({ readings }: MergedStep): readonly (readonly MergedReading[])[] => {
  const lines: MergedReading[][] = [];
  for (const one of readings.filter(({ becomes }) => becomes !== "same")) {
    const alike = one.becomes === "differs"
      ? undefined
      : lines.find(([first]) => first?.becomes === one.becomes && first.says === one.says && first.was === one.was);
    if (alike === undefined) lines.push([one]);
    else alike.push(one);
  }
  return lines;
};

/** A fraction stays on the line of its inches. */
const unbroken = (text: string): string => text.replace(/(\d) (?=\d+\/)/g, "$1\u00a0");

const cellsOf = (line: readonly MergedReading[]): readonly HTMLElement[] => {
  const [first] = line;
  if (first === undefined) return [];
  const isOne = line.length === 1;
  const now = isOne ? first.now : line.map((one) => `${one.name} ${one.now}`).join(", ");
  return [isOne ? first.name : counted(line.length, "reading"), first.was === "" ? "–" : first.was, now, first.says]
    .map((text) => element(document, "td", unbroken(text)));
};

const rowClass = (line: readonly MergedReading[]): string =>
  [line[0]?.becomes === "differs" ? "changed" : "", line[0]?.becomes === "stays" ? "staying" : "", line.length > 1 ? "together" : ""]
    .filter((name) => name !== "").join(" ");

/** The table of what a set would change, with a box for each step; and the steps whose box is ticked. */
export interface DifferencesTable {
  readonly table: HTMLElement;
  readonly chosen: () => readonly MergedStep[];
}

export const differencesTable = (
  steps: readonly MergedStep[], unit: string, onChoice: () => void,
): DifferencesTable => {
  const boxes = new Map<MergedStep, HTMLInputElement>();
  const bodies = steps.flatMap((step) => {
    const lines = linesOf(step);
    if (lines.length === 0) return [];
    const box = element(document, "input");
    box.type = "checkbox";
    box.checked = step.readings.some(isWritten);
    box.disabled = !box.checked;
    box.addEventListener("change", onChoice);
    boxes.set(step, box);
    const kept = step.kept ? [element(document, "small", "did not close, kept as read")] : [];
    const name = element(document, "th", [element(document, "label", [box, ` ${pieceName(step)}`]), ...kept]);
    name.scope = "rowgroup";
    name.rowSpan = lines.length;
    const rows = lines.map((line, place) =>
      element(document, "tr", [...(place === 0 ? [name] : []), ...cellsOf(line)], rowClass(line)));
    return [element(document, "tbody", rows)];
  });
  const heads = HEADS.map((head) => {
    const made = element(document, "th", head);
    made.scope = "col";
    return made;
  });
  const table = element(document, "table", [
    element(document, "caption", `Lengths in ${unit}`),
    element(document, "thead", [element(document, "tr", heads)]),
    ...bodies,
  ]);
  return {
    table,
    // A step that is not listed has nothing to write, and one that cannot be written is told.
    chosen: () => steps.filter((step) => boxes.get(step)?.checked !== false || boxes.get(step)?.disabled === true),
  };
};
