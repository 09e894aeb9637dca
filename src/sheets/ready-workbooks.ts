import type { Filling } from "./job/filling";
import { blankJob } from "./job/own-job";
import { jobSheets } from "./job/job-sheets";
import { turnedJob } from "./job/turned-job";
import { inventedJob } from "./demo/invented-job";
import { inventedMetricJob } from "./demo/invented-metric-job";
import { inventedTurnedJob } from "./demo/invented-turned-job";
import type { SheetData } from "./sheet-data";

/** A whole workbook to begin with in a spreadsheet of one's own. */
export interface ReadyWorkbook {
  /** Its name as a file, without what it ends with. */
  readonly file: string;
  readonly title: string;
  readonly says: string;
  /** The job that stands at the top of its printed pages; none while it has no name. */
  readonly job?: string;
  readonly sheets: () => readonly SheetData[];
}

const filled = ({ job }: Filling): string => `${job}: filled in. The job, people and prices are invented.`;

/** The workbooks, those to type into first. */
export const readyWorkbooks: readonly ReadyWorkbook[] = [
  {
    file: "blank-stair-job-inches",
    title: "Blank job in inches",
    says: "Fourteen linked sheets from the tape to the books, nothing typed: every figure follows from what is typed in the yellow cells.",
    sheets: () => blankJob("in"),
  },
  {
    file: "blank-stair-job-millimetres",
    title: "Blank job in millimetres",
    says: "The same fourteen sheets, with every length in millimetres.",
    sheets: () => blankJob("mm"),
  },
  {
    file: "demo-stair-job-inches",
    title: "Demo job in inches",
    says: filled(inventedJob),
    job: inventedJob.job,
    sheets: () => jobSheets(inventedJob),
  },
  {
    file: "demo-stair-job-millimetres",
    title: "Demo job in millimetres",
    says: filled(inventedMetricJob),
    job: inventedMetricJob.job,
    sheets: () => jobSheets(inventedMetricJob),
  },
  {
    file: "demo-l-shaped-stair-millimetres",
    title: "Demo L-shaped stair in millimetres",
    says:
      `${inventedTurnedJob.whole.job}: two flights with a landing, the lower one between walls, the upper one open. The whole stair on ` +
      "one sheet, the linked sheets of each flight, one bid. The job, people and prices are invented.",
    job: inventedTurnedJob.whole.job,
    sheets: () => turnedJob(inventedTurnedJob),
  },
];

/** A workbook as a file: with its formulas alive, which asks for the add-in, or as what they come to, for anyone. */
export type FileForm = "formulas" | "values";

/** The name of the file. */
export const readyFileName = ({ file }: ReadyWorkbook, form: FileForm): string => `${file}${form === "values" ? "-values" : ""}.xlsx`;

/** Columns of the sheets of a job that are printed: what stands behind them is read by other sheets alone. */
export const PRINTED_COLUMNS = 26;
