import { type SheetJob } from "./sheet-job";
import { type SheetAnswer, sheetPlan } from "./sheet-plan";

/** A sheet of the workbook asks for the cut list, the goods and the summary of a few jobs at a time. */
const MOST_REMEMBERED = 6;

const remembered = new Map<string, SheetAnswer>();

/** The plan of a job, as `sheetPlan` gives it; the last few are remembered, so that several functions tell of one at the price of one. */
export const sharedSheets = (job: SheetJob): SheetAnswer => {
  const key = JSON.stringify({ ...job, stock: job.stock.map((stock) => ({ ...stock, available: String(stock.available) })) });
  const plan = remembered.get(key) ?? sheetPlan(job);
  remembered.delete(key);
  remembered.set(key, plan);
  const [oldest] = remembered.keys();
  if (remembered.size > MOST_REMEMBERED && oldest !== undefined) remembered.delete(oldest);
  return plan;
};
