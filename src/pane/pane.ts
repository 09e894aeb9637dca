import { aboutPart } from "./about-part";
import { drawingsTab } from "./drawings-part";
import { element } from "./element";
import { functionGroups, type FunctionGroups } from "./function-groups";
import type { Solve } from "./answer";
import type { CellHost, MendingHost, PaneHost, SheetsHost } from "./host";
import { inserting, undoButton } from "./inserting";
import { jobDialog } from "./job-dialog";
import type { JobPlace } from "./job-form";
import { jobPart } from "./job-part";
import { jobStarted, takesStairs } from "./job-started";
import { mended } from "./mend";
import { type MendActs, mendPart } from "./mend-part";
import { messageOf } from "./message-of";
import { question } from "./question";
import { readySheetAdded } from "./ready-sheet";
import { report, type Report } from "./report";
import { sheetsPart } from "./sheets-part";
import type { ShownCatalogue } from "./shown-functions";
import { tabs } from "./tabs";
import { whyPart } from "./why-part";
import { workbooksPart } from "./workbooks-part";

const examplesSay = ({ examples, differences }: FunctionGroups): string =>
  differences === 0
    ? `All ${examples} examples give the expected answer.`
    : `${differences} of ${examples} examples ${differences === 1 ? "does" : "do"} not give the expected answer.`;

/**
 * The functions under the steps of the job, to be found by a word of the trade; above them, where some examples do not come out, how many.
 */
const functionsPart = (page: Document, groups: FunctionGroups): readonly HTMLElement[] => {
  const worked = groups.differences === 0 ? [] : [element(page, "p", examplesSay(groups), "count differs")];
  const field = element(page, "input");
  field.type = "search";
  field.placeholder = "riser, kerf, margin …";
  field.addEventListener("input", () => groups.find(field.value));
  return [
    element(page, "h2", "Functions", "unseen"),
    element(page, "label", ["Find a function by a trade word ", field], "find"),
    ...worked,
    groups.nothing,
    ...groups.parts,
  ];
};

/** Asks for a job of one's own, whose sheets go after those of the workbook, or as one more stair of its job. */
const startedJobs = async (
  page: Document, cells: CellHost, sheets: SheetsHost, solve: Solve, say: (text: string) => void,
): Promise<void> => {
  try {
    const places: readonly JobPlace[] = (await takesStairs(cells, sheets)) ? ["one more stair", "this workbook"] : ["this workbook"];
    jobDialog(page, places, solve, (asked, where) => jobStarted(asked, where === "one more stair", cells, sheets), say);
  } catch (error) {
    say(messageOf(error));
  }
};

/** Version and caution, once, at the foot. */
const footPart = (page: Document, { version, caution }: ShownCatalogue, { place }: PaneHost): HTMLElement =>
  element(page, "footer", [
    element(page, "p", `Version ${version} · ${place}`, "quiet"),
    element(page, "p", caution, "caution"),
  ], "foot");

const madeOnce = <Made>(make: () => Made): (() => Made) => {
  let made: Made | undefined;
  return () => (made ??= make());
};

const showTheme = (page: Document, isDark: boolean | undefined): void => {
  if (isDark === undefined) delete page.documentElement.dataset["theme"];
  else page.documentElement.dataset["theme"] = isDark ? "dark" : "light";
};

/** What the buttons of mending do; what came of it goes into a list. */
const mendActs = (page: Document, cells: CellHost, mending: MendingHost, heard: Report, says: HTMLElement): MendActs => {
  let isStopped = false;
  return {
    mend: () =>
      heard.act(async () => {
        isStopped = false;
        const lines = await mended(cells, mending, { isStopped: () => isStopped, say: heard.say });
        says.replaceChildren(...lines.map((line) => element(page, "li", line)));
        return lines[0] ?? "";
      }),
    // No act of its own: it is for the one under way.
    stop: () => void (isStopped = true),
    recalculate: () =>
      heard.act(async () => {
        await mending.recalculate();
        return "Every formula is recalculated.";
      }),
  };
};

/** What a pane can be asked from beside it. */
export interface Pane {
  /** Shows what the cell selected is. */
  readonly explain: () => void;
}

/**
 * Puts the pane's content into a place on the page: the job, functions, ready sheets, mending and about, as far as the host has what they
 * need.
 */
export const pane = (page: Document, into: HTMLElement, shown: ShownCatalogue, host: PaneHost): Pane => {
  showTheme(page, host.isDark);
  const { cells, sheets, mending, solve, workbooks: ready } = host;
  const ask = (text: string, yes: string, no: string): Promise<boolean> => question(page, text, yes, no);

  const undo = undoButton(page);
  const heard = report(page, undo);
  const inserts = cells && inserting(undo, heard, cells, ask);
  sheets?.onOther?.(() => {
    // Both speak of cells of the workbook before.
    inserts?.forget();
    heard.clear();
  });

  const mendSays = element(page, "ul", [], "mended");
  const mend = cells && mending && mendActs(page, cells, mending, heard, mendSays);
  const add = cells && sheets && ((name: string): void =>
    heard.act(async () => {
      const says = await readySheetAdded(name, cells, sheets);
      job.draw();
      return says;
    }));
  const start = cells && sheets && solve && host.hasStart !== true
    ? { start: (): void => void startedJobs(page, cells, sheets, solve, (says) => {
        heard.say(says);
        job.draw();
      }) }
    : {};
  const job = jobPart(page, sheets && add && { sheets, add, act: heard.act, ...start });
  sheets?.onChange?.(job.draw);

  const groups = madeOnce(() => functionGroups(page, shown.functions, {
    open: "first",
    ...(solve === undefined ? {} : { solve }),
    ...(inserts === undefined ? {} : { insert: inserts.insert }),
  }));

  const why = whyPart(page, cells, solve);
  const { parts, show } = tabs(page, "Parts of the pane", [
    { name: "Job", content: [...job.parts, ...why.parts], shown: job.draw },
    { name: "Functions", content: () => functionsPart(page, groups()) },
    drawingsTab(page, host, heard.say),
    { name: "Sheets", content: [...(ready === undefined ? [] : workbooksPart(page, ready, heard.act)), ...sheetsPart(page, add)] },
    { name: "Mend", content: mendPart(page, mend, mendSays) },
    { name: "About", content: () => aboutPart(page, shown, host.place, solve === undefined ? undefined : examplesSay(groups())) },
  ]);
  into.replaceChildren(
    ...(host.hasTitle === true ? [] : [element(page, "h1", "Treadsheet")]),
    ...host.lacks.map((lack) => element(page, "p", lack, "lack")),
    ...parts,
    footPart(page, shown, host),
    heard.part,
  );
  return {
    explain: () => {
      show("Job");
      why.explain();
    },
  };
};
