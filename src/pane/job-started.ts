import { cellPlace } from "../sheets/cell-address";
import type { AskedJob } from "../sheets/job/own-job";
import { canGather, gathering, GATHERING_CELLS, startedJob } from "../sheets/job/started-job";
import type { CellHost, SheetsHost } from "./host";

const formulasAt = async (cells: CellHost, places: readonly { readonly sheet: string; readonly address: string }[]) =>
  (await cells.read(places.map(({ sheet, address }) => ({ sheet, ...cellPlace(address), rows: 1, columns: 1 })))).map(
    (held) => held[0]?.[0]?.formula,
  );

/** Whether a workbook has a Bid and Books that gather stairs, so that one more can be added. */
export const takesStairs = async (cells: CellHost, sheets: SheetsHost): Promise<boolean> => {
  const names = await sheets.names();
  if (!GATHERING_CELLS.every(({ sheet }) => names.includes(sheet))) return false;
  return (await formulasAt(cells, GATHERING_CELLS)).every(canGather);
};

/**
 * Adds the sheets of a job of one's own to the open workbook, after those there; as one more stair of the job they read its Bid, and Bid
 * and Books gather them too. Nothing else is touched.
 */
export const jobStarted = async (asked: AskedJob, isFurther: boolean, cells: CellHost, sheets: SheetsHost): Promise<string> => {
  if (isFurther && !(await takesStairs(cells, sheets)))
    throw new Error("This workbook has no Bid and Books that gather stairs; start the job in a workbook of its own.");
  const { sheets: added, gatherings } = startedJob(asked, await sheets.names(), isFurther);
  const formulas = await formulasAt(cells, gatherings);
  // With the sheets, so that one undo takes both away.
  await sheets.add(
    added,
    gatherings.flatMap(({ sheet, address, adds }, place) => {
      const formula = formulas[place];
      return canGather(formula) ? [{ at: { sheet, ...cellPlace(address) }, cells: [[{ formula: gathering(formula, adds) }]] }] : [];
    }),
  );
  const names = added.map(({ name }) => name);
  const says = `Added ${names.slice(0, -1).join(", ")} and ${names[names.length - 1] ?? ""}.`;
  return isFurther ? `${says} Bid and Books gather this stair too.` : `${says} Type what is known in the yellow cells.`;
};
