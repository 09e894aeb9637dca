import { element } from "../pane/element";
import { messageOf } from "../pane/message-of";
import { isWritten, type MergedStep, mergedReadings } from "../readings/merged-readings";
import { readReadings } from "../readings/read-readings";
import type { ReadingSet } from "../readings/reading-set";
import { isSameJob } from "../readings/same-job";
import { counted, saidOfAll, saidOfKept, saidOfSet, saidOfTaking } from "../readings/said-of-merge";
import type { Selection } from "../workbook/page/selection";
import type { Workbook } from "../workbook/workbook";
import { type DifferencesTable, differencesTable } from "./differences-table";
import { type Stair, stairsIn } from "./fit-readings";
import { place } from "./place";
import { textOf } from "./text-table";
import { windowFiles } from "./window-files";

export type ReadingsBook =
  & Pick<Workbook, "data" | "value" | "format" | "put" | "settled">
  & Pick<Selection, "select">;

const NO_STAIR = "This workbook has no sheet Fit to take readings into. Open the job's workbook, or begin it with Start my job.";
const UNIT_WORDS = { in: "inches", mm: "millimetres" } as const;

/** Lines of a text that stay in sight above the one at fault. */
const LINES_ABOVE = 3;

const button = (words: string, act: () => void): HTMLButtonElement => {
  const made = element(document, "button", words);
  made.type = "button";
  made.addEventListener("click", act);
  return made;
};

/** The stair the readings are of, where the workbook leaves no doubt: the only one, or the only one of that job. */
const stairOf = (stairs: readonly Stair[], { job }: ReadingSet): Stair | undefined => {
  const ofJob = stairs.filter((stair) => stair.job !== undefined && isSameJob(stair.job, job));
  const [only, another] = ofJob.length > 0 ? ofJob : stairs;
  return another === undefined ? only : undefined;
};

const otherJob = (stair: Stair, { job }: ReadingSet): string =>
  job === "" || stair.job === undefined || stair.job === "" || isSameJob(stair.job, job)
    ? ""
    : `The readings are of “${job}”, and this stair is of “${stair.job}”.`;

const stairChoice = (stairs: readonly Stair[], chosen: Stair | undefined, choose: (stair: Stair) => void): HTMLElement => {
  const select = element(document, "select");
  const options = stairs.map(({ sheet, job }) => element(document, "option", job === undefined || job === "" ? sheet : `${sheet}, ${job}`));
  if (chosen === undefined) select.append(element(document, "option", "Choose the stair"));
  select.append(...options);
  select.selectedIndex = chosen === undefined ? 0 : stairs.indexOf(chosen);
  select.addEventListener("change", () => {
    const stair = stairs[select.selectedIndex - (chosen === undefined ? 1 : 0)];
    if (stair !== undefined) choose(stair);
  });
  return element(document, "label", ["Stair ", select], "stair");
};

const paragraphs = (...texts: readonly (readonly [text: string, className: string])[]): readonly HTMLElement[] =>
  texts.flatMap(([text, className]) => (text === "" ? [] : [element(document, "p", text, className)]));

/** What of a set is shown for a stair, and what its `Take in` would write. */
interface Shown {
  readonly stair: Stair;
  readonly steps: readonly MergedStep[];
  readonly table: DifferencesTable;
}

const writtenOf = ({ table }: Shown): number =>
  table.chosen().reduce((sum, { readings }) => sum + readings.filter(isWritten).length, 0);

/** Writes what is ticked, in one step of the sheet's own undo, and leaves; answers what was written. */
const taken = async (book: ReadingsBook, { stair, steps, table }: Shown, leave: () => void): Promise<string> => {
  const chosen = table.chosen();
  const puts = stair.puts(chosen);
  book.put(stair.sheet, puts);
  await book.settled();
  // A dialog that closes gives the keys back to whoever had them: the sheet takes them after that.
  leave();
  const [first = "A1"] = Object.keys(puts);
  await book.select(stair.sheet, first);
  return saidOfTaking(stair.sheet, chosen, steps.filter((step) => !chosen.includes(step)));
};

interface TextPart {
  readonly part: HTMLElement;
  readonly area: HTMLTextAreaElement;
  readonly fold: () => void;
  /** Selects a line, counted from 1, and brings it into sight. */
  readonly mark: (line: number) => void;
  /** Puts a text of elsewhere in. */
  readonly take: (text: string) => void;
}

/** Where the text of a set is pasted, with the button that takes it from a file. */
const textPart = (changed: (isWhole: boolean) => void): TextPart => {
  const area = element(document, "textarea");
  area.rows = 7;
  area.spellcheck = false;
  area.wrap = "off";
  area.setAttribute("aria-label", "Readings as text");
  area.addEventListener("input", (event) => changed(event instanceof InputEvent && event.inputType === "insertFromPaste"));
  const take = (text: string): void => {
    area.value = text;
    changed(true);
  };
  const file = element(document, "input");
  file.type = "file";
  file.accept = ".txt,text/plain";
  file.hidden = true;
  file.setAttribute("aria-label", "Readings as a file");
  file.addEventListener("change", () => {
    const [chosen] = file.files ?? [];
    file.value = "";
    void chosen?.arrayBuffer().then((bytes) => take(textOf(new Uint8Array(bytes))));
  });
  const part = element(document, "details", [
    element(document, "summary", "Text of the readings"), area, button("Choose file", () => file.click()), file,
  ]);
  part.open = true;
  const mark = (line: number): void => {
    const lines = area.value.split("\n");
    const from = lines.slice(0, line - 1).reduce((sum, one) => sum + one.length + 1, 0);
    area.setSelectionRange(from, from + (lines[line - 1]?.length ?? 0));
    area.scrollTop = (area.scrollHeight / lines.length) * Math.max(0, line - LINES_ABOVE);
  };
  return { part, area, fold: () => void (part.open = false), mark, take };
};

/** What is shown of a set beside a stair; a sentence where the one does not go into the other. */
const compared = (
  set: ReadingSet, stair: Stair, onChoice: () => void,
): { readonly parts: readonly HTMLElement[]; readonly shown: Shown } | string => {
  const steps = mergedReadings(stair.readings, set);
  if ("says" in steps) return steps.says;
  const table = differencesTable(steps, UNIT_WORDS[set.unit], onChoice);
  const isListed = steps.some(({ readings }) => readings.some(({ becomes }) => becomes !== "same"));
  return {
    shown: { stair, steps, table },
    parts: [
      ...paragraphs([otherJob(stair, set), "warning"], [saidOfKept(steps), "warning"], [saidOfAll(steps), "counts"]),
      ...(isListed ? [element(document, "div", [table.table], "differences")] : []),
    ],
  };
};

/** The set in the text, read anew with every change, and what of it is shown. */
interface Comparing {
  readonly found: HTMLElement;
  readonly fault: HTMLElement;
  readonly stairs: readonly Stair[];
  /** Told what there is to write whenever that changes. */
  readonly changed: (shown: Shown | undefined) => void;
}

/** Whether a text is a set of readings; else the line at fault, where it is one. */
type Found = "set" | number | undefined;

/** Shows what a text would change. */
const comparison = ({ found, fault, stairs, changed }: Comparing): ((text: string) => Found) => {
  let asked: Stair | undefined;
  const show = (text: string): Found => {
    let shown: Shown | undefined;
    fault.textContent = "";
    found.replaceChildren();
    const set = text.trim() === "" ? undefined : readReadings(text);
    if (set !== undefined && !("says" in set)) {
      const stair = asked ?? stairOf(stairs, set);
      const choose = (one: Stair): void => {
        asked = one;
        show(text);
      };
      found.append(element(document, "p", saidOfSet(set), "set"), ...(stairs.length > 1 ? [stairChoice(stairs, stair, choose)] : []));
      const beside = stair === undefined ? undefined : compared(set, stair, () => changed(shown));
      if (typeof beside === "string") fault.textContent = beside;
      else if (beside !== undefined) {
        shown = beside.shown;
        found.append(...beside.parts);
      }
    } else if (set !== undefined) fault.textContent = set.says;
    changed(shown);
    if (set === undefined) return undefined;
    return "says" in set ? set.line : "set";
  };
  return show;
};

const HINT = "Paste the text that the telephone gave, choose its file or drop it here. Nothing is written before Take in.";

/** The dialog in which a set of readings is pasted, compared with the sheet and taken in. */
const takeInDialog = (book: ReadingsBook, stairs: readonly Stair[], say: (text: string) => void, given: string): void => {
  let shown: Shown | undefined;
  const title = element(document, "h2", "Take in readings");
  title.id = "take-in-title";
  const dialog = element(document, "dialog", [], "taking-in");
  dialog.setAttribute("aria-labelledby", title.id);
  const fault = element(document, "p", "", "fault");
  fault.setAttribute("role", "alert");
  const found = element(document, "div");
  const takeIn = button("Take in", () => {
    if (shown === undefined) return;
    takeIn.disabled = true;
    taken(book, shown, () => dialog.close()).then(
      say, (error: unknown) => void (fault.textContent = `Nothing was taken in: ${messageOf(error)}.`),
    );
  });
  const changed = (now: Shown | undefined): void => {
    shown = now;
    const written = now === undefined ? 0 : writtenOf(now);
    takeIn.disabled = written === 0;
    takeIn.textContent = written === 0 ? "Take in" : `Take in ${counted(written, "reading")}`;
  };
  const show = comparison({ found, fault, stairs, changed });
  const text = textPart((isWhole) => {
    const is = show(text.area.value);
    if (isWhole && is === "set") text.fold();
    if (isWhole && typeof is === "number") text.mark(is);
  });
  const stop = windowFiles(([file]) => void file?.arrayBuffer().then((bytes) => text.take(textOf(new Uint8Array(bytes)))));
  dialog.addEventListener("close", () => {
    stop();
    dialog.remove();
  });
  takeIn.classList.add("first");
  changed(undefined);
  dialog.append(
    title, element(document, "p", HINT, "quiet"), element(document, "div", [text.part, fault, found], "scrolled"),
    element(document, "div", [button("Cancel", () => dialog.close()), takeIn], "answers"),
  );
  document.body.append(dialog);
  dialog.showModal();
  if (given !== "") text.take(given);
};

/** Shows a set of readings beside the workbook's, or asks for one where none is given; answers what to say of it. */
export const takeInReadings = (book: ReadingsBook, say: (text: string) => void, given = ""): string => {
  const stairs = stairsIn(book);
  if (stairs.length === 0) return NO_STAIR;
  takeInDialog(book, stairs, say, given);
  return "";
};

/** The button that asks for readings, once all that the sheet owes is worked out. */
export const takeInButton = (book: ReadingsBook, say: (text: string) => void): void =>
  place("take-in").addEventListener("click", () => {
    book.settled().then(() => say(takeInReadings(book, say))).catch((error: unknown) => say(messageOf(error)));
  });
