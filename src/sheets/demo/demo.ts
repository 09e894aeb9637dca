import { jobSheets } from "../job/job-sheets";
import type { SheetData } from "../sheet-data";
import { inventedJob } from "./invented-job";

/** The demo job, sheet after sheet in the order of the work. Names, readings and prices are invented. */
export const demo: readonly SheetData[] = jobSheets(inventedJob);
