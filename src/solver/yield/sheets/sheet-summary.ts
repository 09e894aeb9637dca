import { Exact } from "../../length/exact";
import { type SummaryRow } from "../plan-summary";
import { ownedSheets, sheetGoods } from "./sheet-goods";
import { type SheetJob } from "./sheet-job";
import { keptOf } from "./sheet-offcuts";
import { type SheetPlan } from "./sheet-plan";

/** What a plan of sheets costs, how much of their area it uses, and how good it is proven to be; with `keep`, how much goes to the rack. */
export const sheetSummary = (job: SheetJob, plan: SheetPlan): SummaryRow[] => {
  const { keep } = job;
  const owned = ownedSheets(job, plan);
  const bought = sheetGoods(job, plan).reduce((all, { cost }) => all.plus(cost), new Exact(0));
  const kept = keep === undefined ? 0 : plan.sheets.reduce((sum, sheet) => sum + keptOf(sheet, keep).length, 0);
  const notes = [...(owned.isZero() ? [] : [`${owned.toFixed(2)} of the cost is owned stock, which BUY leaves out`]), ...plan.notes];
  return [
    { label: "cost", kind: "money", value: bought.plus(owned) },
    { label: "sheets", kind: "count", value: plan.sheets.length },
    { label: "yield", kind: "rate", value: plan.yield },
    { label: "lowest possible cost", kind: "money", value: plan.bound },
    { label: "most still to save", kind: "rate", value: plan.gap },
    { label: "verdict", kind: "text", value: plan.verdict },
    ...(keep === undefined ? [] : [{ label: "offcuts kept", kind: "count", value: kept } as const]),
    ...(notes.length === 0 ? [] : [{ label: "note", kind: "text", value: notes.join("; ") } as const]),
  ];
};
