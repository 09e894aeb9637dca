import { isProblem, type Problem } from "../solver/problem";
import type { CuttingJob } from "../solver/yield/cutting-job";
import type { CuttingPlan, ImpossibleCutting } from "../solver/yield/cutting-plan";
import type { RippingJob } from "../solver/yield/ripped/ripping-job";
import { type ImpossibleRipping, type RippingPlan, sharedRipping } from "../solver/yield/ripped/ripping-plan";
import { sharedPlan } from "../solver/yield/shared-plan";
import { type Failed, isFailed } from "./cells";
import { CUTTING, CUTTING_PROBLEMS, cuttingJobOf, type GivenCutting } from "./cutting";
import { type GivenRipping, RIPPING_PROBLEMS, rippingJobOf, TALLY_HEADINGS } from "./ripping";
import { rippedPieces, tally } from "./tables";

const asTally = { argument: "stock", headings: TALLY_HEADINGS } as const;

/** The arguments of CUTS, of which `stock` may be a tally of measured boards: its headings say so. */
export const WOOD = {
  ...CUTTING,
  pieces: {
    ...CUTTING.pieces,
    says: `${CUTTING.pieces.says} Beside a tally the pieces of TALLYCUTS.`,
    instead: { ...asTally, table: rippedPieces },
  },
  stock: {
    ...CUTTING.stock,
    says: `${CUTTING.stock.says} With a heading ${TALLY_HEADINGS.join(", ")} it is the tally of TALLYCUTS, cut whichever way is cheaper.`,
    instead: { ...asTally, table: tally },
  },
} as const;

export const WOOD_PROBLEMS = { ...CUTTING_PROBLEMS, ...RIPPING_PROBLEMS } as const;

/** A plan with its job: of sticks, or of measured boards. */
export type PlannedWood =
  | { readonly of: "sticks"; readonly job: CuttingJob; readonly plan: CuttingPlan }
  | { readonly of: "boards"; readonly job: RippingJob; readonly plan: RippingPlan };

type Given = Omit<GivenCutting, "pieces" | "stock"> & {
  readonly pieces: GivenCutting["pieces"] | GivenRipping["pieces"];
  readonly stock: GivenCutting["stock"] | GivenRipping["tally"];
};

/** Whether the stock was read as a tally. */
export const isTally = (stock: Given["stock"]): stock is GivenRipping["tally"] => stock.some((row) => "surfaced" in row);

/** The plan of whatever the stock is. */
export const plannedWood = ({ pieces, stock, ...rest }: Given): PlannedWood | Failed | Problem<ImpossibleCutting | ImpossibleRipping> => {
  if (isTally(stock)) {
    const job = rippingJobOf({ ...rest, pieces: pieces as GivenRipping["pieces"], tally: stock, first: "either" });
    if (isFailed(job)) return job;
    const plan = sharedRipping(job);
    return isProblem(plan) ? plan : { of: "boards", job, plan };
  }
  const job = cuttingJobOf({ ...rest, pieces, stock });
  const plan = sharedPlan(job);
  return isProblem(plan) ? plan : { of: "sticks", job, plan };
};
