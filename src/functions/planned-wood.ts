import { isProblem, type Problem } from "../solver/problem";
import type { CuttingJob } from "../solver/yield/cutting-job";
import type { CuttingPlan, ImpossibleCutting } from "../solver/yield/cutting-plan";
import type { RippingJob } from "../solver/yield/ripped/ripping-job";
import { type ImpossibleRipping, type RippingPlan, sharedRipping } from "../solver/yield/ripped/ripping-plan";
import { sharedPlan } from "../solver/yield/shared-plan";
import { sharedSheets } from "../solver/yield/sheets/shared-sheets";
import type { SheetJob } from "../solver/yield/sheets/sheet-job";
import { type Failed, failed, isFailed } from "./cells";
import { cuttingJobOf } from "./cutting";
import { type GivenRipping, RIPPING_PROBLEMS, rippingJobOf, TALLY_HEADINGS } from "./ripping";
import { PLANNED, SHEET_PROBLEMS } from "./sheets";
import { type GivenPlanned, sheetsIn, sticksIn } from "./sheets-or-sticks";
import { rippedPieces, tally } from "./tables";

const asTally = { argument: "stock", headings: TALLY_HEADINGS } as const;

/** The arguments of what tells of a plan, of which `stock` may be a tally of measured boards: its headings say so. */
export const WOOD = {
  ...PLANNED,
  pieces: {
    ...PLANNED.pieces,
    says: `${PLANNED.pieces.says} Beside a tally the pieces of TALLYCUTS.`,
    instead: { ...asTally, table: rippedPieces },
  },
  stock: {
    ...PLANNED.stock,
    says: `${PLANNED.stock.says} With a heading ${TALLY_HEADINGS.join(", ")} it is the tally of TALLYCUTS.`,
    instead: { ...asTally, table: tally },
  },
} as const;

type Wording = Readonly<Record<string, { readonly cell: "#VALUE!" | "#N/A"; readonly says: string }>>;

/** Here the tally is the argument `stock`. */
const asStock = <W extends Wording>(wording: W): W =>
  Object.fromEntries(
    Object.entries(wording).map(([code, { cell, says }]) => [code, { cell, says: says.replace(/^tally: /, "stock: ") }]),
  ) as W;

export const WOOD_PROBLEMS = { ...SHEET_PROBLEMS, ...asStock(RIPPING_PROBLEMS) };

type SheetPlan = Exclude<ReturnType<typeof sharedSheets>, Problem<string>>;

/** A plan with its job: of sticks, of sheets, or of measured boards. */
export type PlannedWood =
  | { readonly of: "sticks"; readonly job: CuttingJob; readonly plan: CuttingPlan }
  | { readonly of: "sheets"; readonly job: SheetJob; readonly plan: SheetPlan }
  | { readonly of: "boards"; readonly job: RippingJob; readonly plan: RippingPlan };

type Given = Omit<GivenPlanned, "pieces" | "stock"> & {
  readonly pieces: GivenPlanned["pieces"] | GivenRipping["pieces"];
  readonly stock: GivenPlanned["stock"] | GivenRipping["tally"];
};

/** Whether the stock was read as a tally. */
export const isTally = (stock: Given["stock"]): stock is GivenRipping["tally"] => stock.some((row) => "surfaced" in row);

type Impossible = ImpossibleCutting | ImpossibleRipping | Extract<ReturnType<typeof sharedSheets>, Problem<string>>["problem"];

const boardsOf = ({ pieces, stock, keep, trim, first, ...rest }: Given): PlannedWood | Failed | Problem<ImpossibleRipping> => {
  if (trim.width?.isZero() === false)
    return failed("trim: of a tally only the ends are trimmed; write one length, and the edges under edge");
  const job = rippingJobOf({
    ...rest, pieces: pieces as GivenRipping["pieces"], tally: stock as GivenRipping["tally"], keep, trim: trim.length,
    first: first ?? "either",
  });
  if (isFailed(job)) return job;
  const plan = sharedRipping(job);
  return isProblem(plan) ? plan : { of: "boards", job, plan };
};

/** The plan of whatever the stock is. */
export const plannedWood = (given: Given): PlannedWood | Failed | Problem<Impossible> => {
  if (isTally(given.stock)) return boardsOf(given);
  const planned = given as GivenPlanned;
  const sheets = sheetsIn(planned);
  if (sheets !== undefined) {
    const plan = sharedSheets(sheets);
    return isProblem(plan) ? plan : { of: "sheets", job: sheets, plan };
  }
  const job = cuttingJobOf(sticksIn(planned));
  const plan = sharedPlan(job);
  return isProblem(plan) ? plan : { of: "sticks", job, plan };
};
