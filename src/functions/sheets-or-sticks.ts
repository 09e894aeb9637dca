import { type SheetJob } from "../solver/yield/sheets/sheet-job";
import { sideBySide } from "../solver/yield/sheets/side-by-side";
import { cuttingJobOf, type GivenCutting } from "./cutting";
import { type GivenSheets, sheetJobOf } from "./sheets";

export type GivenPlanned = Omit<GivenSheets, "first"> & { readonly first: SheetJob["first"] | undefined };

/** The job as one of sticks; of a size that is kept, and of what is trimmed, the length counts. */
export const sticksIn = ({ keep, trim, first: _, ...given }: GivenPlanned): GivenCutting =>
  ({ ...given, trim: trim.length, keep: keep?.length });

/** The job as one of sheets where its plan is that of SHEETCUTS; undefined where it is that of CUTS. */
export const sheetsIn = (given: GivenPlanned): SheetJob | undefined => {
  const { first, pieces, stock } = given;
  const job = cuttingJobOf(sticksIn(given));
  const turns = pieces.some(({ grain }) => grain === "free") && stock.some(({ width }) => width !== undefined);
  return first !== undefined || turns || sideBySide(job) !== undefined ? sheetJobOf({ ...given, first: first ?? "either" }) : undefined;
};
