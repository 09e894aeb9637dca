import { Exact } from "../../length/exact";
import type { Length } from "../../length/length";
import { type Problem, problem } from "../../problem";
import { boardFeet } from "../board-feet";
import type { SummaryRow } from "../plan-summary";
import type { LaidBoard, Remnant } from "./laid-boards";
import { leastKept } from "./least-kept";
import type { RippingJob } from "./ripping-job";
import type { RippingPlan } from "./ripping-plan";
import { lotPrices, type SingleBoard } from "./single-boards";

/** A board to buy, or a lot with all its boards. */
export interface BoughtBoards {
  /** Place of the board among the single boards; undefined for a lot. */
  readonly board: number | undefined;
  readonly item: string | number | undefined;
  readonly length?: Length;
  readonly price: Exact;
  /** Board feet in the pieces cut from it, and of all that is bought. */
  readonly net: Exact;
  readonly gross: Exact;
}

const sum = (amounts: readonly Exact[]): Exact => amounts.reduce((all, each) => all.plus(each), new Exact(0));

const netOf = ({ single }: RippingPlan, { board, pieces }: LaidBoard, job: RippingJob): Exact =>
  sum(pieces.map(({ piece, length, width }) => boardFeet(job.pieces[piece]!.thickness ?? single[board]!.row.thickness, width, length, 1)));

/** The boards to be bought in the order of the tally; a lot is one row where its first board is cut. What is owned is not in it. */
export const boughtBoards = (job: RippingJob, plan: RippingPlan): readonly BoughtBoards[] => {
  const prices = lotPrices(job.boards);
  const paid = new Set<string>();
  return plan.boards.flatMap((laid): BoughtBoards[] => {
    const { row, lot, price, feet } = plan.single[laid.board]!;
    if (row.owned) return [];
    if (lot === undefined)
      return [{ board: laid.board, item: row.label, length: row.length, price, net: netOf(plan, laid, job), gross: feet }];
    if (paid.has(lot)) return [];
    paid.add(lot);
    const ofLot = plan.boards.filter(({ board }) => plan.single[board]!.lot === lot);
    return [{
      board: undefined, item: row.lot,
      price: prices.get(lot) ?? new Exact(0),
      net: sum(ofLot.map((each) => netOf(plan, each, job))),
      gross: sum(plan.single.filter((each) => each.lot === lot).map((each) => each.feet)),
    }];
  });
};

/** What of a board is worth keeping, the largest first. */
export const keptOf = (job: RippingJob, { remnants }: LaidBoard): readonly Remnant[] => {
  const least = leastKept(job);
  if (least === undefined) return [];
  return remnants
    .filter(({ length, width }) => length.gte(least.length) && width.gte(least.width))
    .sort((one, other) => other.length.times(other.width).cmp(one.length.times(one.width)));
};

export interface KeptEnd extends Remnant {
  readonly from: SingleBoard;
  readonly board: number;
  /** Its share of the board's price by board feet, in cents; of a lot its share of the lot's. */
  readonly value: Exact;
}

const valueOf = (job: RippingJob, plan: RippingPlan, { lot, price, feet }: SingleBoard, part: Exact): Exact => {
  if (lot === undefined) return price.times(part).div(feet);
  const all = sum(plan.single.filter((each) => each.lot === lot).map((each) => each.feet));
  return (lotPrices(job.boards).get(lot) ?? new Exact(0)).times(part).div(all);
};

/** The ends worth keeping, board after board. */
export const keptEnds = (job: RippingJob, plan: RippingPlan): readonly KeptEnd[] | Problem<"keep-missing"> => {
  if (job.keep === undefined) return problem("keep-missing");
  return plan.boards.flatMap((laid) => {
    const from = plan.single[laid.board]!;
    return keptOf(job, laid).map((end): KeptEnd => ({
      ...end, from, board: laid.board,
      value: valueOf(job, plan, from, boardFeet(from.row.thickness, end.width, end.length, 1)).toDecimalPlaces(2, Exact.ROUND_HALF_UP),
    }));
  });
};

/** What a plan on measured boards costs, how much of the wood it uses, and how far it is proven. */
export const rippingSummary = (job: RippingJob, plan: RippingPlan): readonly SummaryRow[] => {
  const kept = plan.boards.flatMap((laid) => keptOf(job, laid));
  const cut = plan.boards.map(({ board }) => plan.single[board]!);
  return [
    { label: "cost", kind: "money", value: plan.cost },
    { label: "boards", kind: "count", value: plan.boards.length },
    { label: "yield", kind: "rate", value: plan.yield },
    { label: "lowest possible cost", kind: "money", value: plan.bound },
    { label: "most still to save", kind: "rate", value: plan.gap },
    { label: "verdict", kind: "text", value: plan.verdict },
    { label: "board feet", kind: "number", value: sum(cut.map(({ feet }) => feet)) },
    { label: "from a better grade", kind: "count", value: plan.fromOtherGrade },
    { label: "boards left", kind: "count", value: plan.single.length - plan.boards.length },
    ...(job.keep === undefined
      ? []
      : [
          { label: "offcuts kept", kind: "count", value: kept.length } as const,
          { label: "offcut length", kind: "length", value: sum(kept.map(({ length }) => length)) } as const,
        ]),
    ...(plan.notes.length === 0 ? [] : [{ label: "note", kind: "text", value: plan.notes.join("; ") } as const]),
  ];
};
