import type { Solve } from "../pane/answer";
import type { CellHost, SheetsHost } from "../pane/host";
import { jobDialog } from "../pane/job-dialog";
import type { JobPlace } from "../pane/job-form";
import { jobStarted, takesStairs } from "../pane/job-started";
import { messageOf } from "../pane/message-of";
import type { AskedJob } from "../sheets/job/own-job";
import { startedJob } from "../sheets/job/started-job";
import { DATA_VERSION } from "../workbook/workbook-data";
import type { OpenWorkbook } from "./open-workbook";
import { place } from "./place";
import type { WorkbookShelf } from "./workbook-shelf";

interface Sheets {
  readonly cells: CellHost;
  readonly sheets: SheetsHost;
  readonly settled: () => Promise<void>;
}

/** The job in a workbook of its own, which is shown; nothing of the one before is touched. */
const ownWorkbook = async (asked: AskedJob, { settled }: Sheets, open: OpenWorkbook, shelf: WorkbookShelf): Promise<string> => {
  const { sheets } = startedJob(asked, [], false);
  await open.show(await shelf.add(asked.job, { version: DATA_VERSION, sheets }));
  await settled();
  return `“${open.name()}” is a workbook of its own. Type what is known in the yellow cells.`;
};

/** The button that asks what a job of one's own needs, and begins it: in a workbook of its own, or as one more stair of the one shown. */
export const startJob = (
  host: Sheets, open: OpenWorkbook, shelf: WorkbookShelf, solve: Solve, isDemo: () => boolean, say: (text: string) => void,
): void => {
  const ask = async (): Promise<void> => {
    const places: JobPlace[] = ["own workbook"];
    if (!isDemo() && (await takesStairs(host.cells, host.sheets))) places.push("one more stair");
    jobDialog(document, places, solve, (asked, where) =>
      where === "one more stair" ? jobStarted(asked, true, host.cells, host.sheets) : ownWorkbook(asked, host, open, shelf), say);
  };
  place("start").addEventListener("click", () => void ask().catch((error: unknown) => say(messageOf(error))));
};
