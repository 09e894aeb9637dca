import { Exact } from "../length/exact";
import { isProblem, type Problem, problem } from "../problem";
import { cuttingGroups, type ImpossibleSection, isWideEnough } from "./cutting-groups";
import { called, type CuttingJob } from "./cutting-job";
import { type GroupShelf, groupShelf, type ImpossibleShelf } from "./group-shelf";
import { lengthOfMarks, marksDown, marksUp } from "./mark";
import { planNotes } from "./plan-notes";
import { type PlannedStick, plannedSticks } from "./planned-sticks";
import { type Proof, worthSteps } from "./shelf/certificate";
import { type Effort, withShare } from "./shelf/effort";
import { type Engine, IN_A_CELL } from "./shelf/engine";
import { longestUnplaced } from "./shelf/hand-plan";
import { outlay } from "./shelf/shelf";
import { shelfPlan } from "./shelf/shelf-plan";

/** What the bound of one group of pieces and stock stands on, in terms of the job, so that it can be checked without the solver. */
export interface GroupProof {
  readonly grade: string;
  /** For each kind of piece, longest first, its rows of the pieces table; for each kind of stick its rows of the stock table. */
  readonly pieceRows: readonly (readonly number[])[];
  readonly stockRows: readonly (readonly number[])[];
  /** One unit of money in which all prices are whole, or rounded down, and the steps of worth to it. */
  readonly unit: Exact;
  readonly steps: number;
  /** What the worths alone prove, and the worths. */
  readonly certified: Exact;
  readonly proof: Proof;
}

export interface CuttingPlan {
  readonly sticks: readonly PlannedStick[];
  readonly cost: Exact;
  /** No plan costs less: proven. */
  readonly bound: Exact;
  /** The share of the cost that a better plan could save at most: (cost - bound) / cost. */
  readonly gap: Exact;
  readonly sticksUsed: number;
  /** Net length in pieces over gross length of the sticks used. */
  readonly yield: Exact;
  /** `best possible (proven)`, `best possible (searched, not certified)`, or the gap in words. */
  readonly verdict: string;
  /** One for each part of the job that is planned by itself. */
  readonly proofs: readonly GroupProof[];
  readonly notes: readonly string[];
}

export type ImpossibleJob = "stock-without-price" | "owned-without-limit" | "too-many-pieces" | "too-much-stock";

export type ImpossibleCutting =
  | ImpossibleJob | "too-many-parts" | ImpossibleSection
  | ImpossibleShelf | "stock-runs-out" | "no-plan-found";

/** Each piece is a row of the cut list: more than this belongs into several jobs. */
const MOST_PIECES = 5_000;
/** Rows of stock, and parts planned by themselves, up to which a plan stays well within two seconds. */
const MOST_STOCK = 1_000;
const MOST_PARTS = 200;

/**
 * Rows of both tables up to which all of the effort is spent, and the least share that more of them leave; parts up to which it is. Rows
 * are read and laid out besides, and each part is begun anew, which the steps of the search do not count.
 */
const ROWS_AT_FULL_EFFORT = 80;
const LEAST_SHARE = 0.2;
const PARTS_AT_FULL_EFFORT = 50;

/** What the rows take is no more where the search is longer than in a cell. */
const effortFor = ({ pieces, stock }: CuttingJob, parts: number, { effort }: Engine): Effort => {
  const share =
    Math.max(LEAST_SHARE, Math.min(1, ROWS_AT_FULL_EFFORT / (pieces.length + stock.length))) * Math.min(1, PARTS_AT_FULL_EFFORT / parts);
  return { left: Math.max(effort * share, effort - IN_A_CELL.effort * (1 - share)) };
};

/** What makes a job no job, although each of its arguments is one. */
export const impossible = (
  { pieces, stock }: Pick<CuttingJob, "pieces" | "stock">, mostPieces = MOST_PIECES, mostStock = MOST_STOCK,
): Problem<ImpossibleJob> | undefined => {
  if (stock.length > mostStock) return problem("too-much-stock", { count: stock.length, most: mostStock });
  // What is on hand costs nothing, as much of it as there is; what is bought without a price would be cut first, as if it were on hand.
  const at = stock.findIndex(({ price, available, owned }) => price.isZero() && (owned ? available === Infinity : available > 0));
  const free = stock[at];
  if (free !== undefined)
    return problem(free.owned ? "owned-without-limit" : "stock-without-price", { stock: called(free.label, at), length: free.length });
  const count = pieces.reduce((sum, piece) => sum + piece.quantity, 0);
  return count > mostPieces ? problem("too-many-pieces", { count, most: mostPieces }) : undefined;
};

/** A gap in words is rounded up, to a hundredth of a percent: never better than it is. */
export const gapInWords = (gap: Exact): string =>
  `not proven: at most ${gap.times(100).toDecimalPlaces(2, Exact.ROUND_UP).toString()} % of the cost could still be saved`;

/** Says which piece no stick was left for, the longest of them. */
const unplaced = <Code extends ImpossibleCutting>(
  code: Code, job: CuttingJob, { shelf, pieceRows, stockRows }: GroupShelf,
): Problem<Code> => {
  const row = pieceRows[longestUnplaced(shelf)]![0]!;
  const { label, length, grade } = job.pieces[row]!;
  const taking = stockRows.flat().filter((each) => isWideEnough(job.stock[each]!, job.pieces[row]!));
  const longest = taking.reduce((most, each) => Math.max(most, marksDown(job.stock[each]!.length, job.unit)), 0);
  return problem(code, {
    piece: called(label, row), length, grade, longest: lengthOfMarks(longest - 2 * marksUp(job.trim, job.unit), job.unit),
  });
};

/**
 * A plan that cuts all pieces from the stock at least cash cost, with a proven bound. Among plans of that cost, as far as the budget goes:
 * least new length, fewest sticks, fewest different patterns, largest end worth keeping, most of them in all, first in cutting order.
 * A stick S with kerf k and trim e at each end (kerf inside it) holds pieces l when the sum of (l + k) is at most S - 2e + k: an exact
 * fit fits. A piece goes on stock of its grade, at least as wide and as thick as it is, one piece across. Same job, same plan: the search
 * is counted in steps (Gilmore and Gomory 1961 state the problem; the year from memory).
 */
export const cuttingPlan = (job: CuttingJob, engine: Engine = IN_A_CELL): CuttingPlan | Problem<ImpossibleCutting> => {
  const fault = impossible(job);
  if (fault !== undefined) return fault;
  const groups = cuttingGroups(job);
  if (isProblem(groups)) return groups;
  if (groups.length > MOST_PARTS) return problem("too-many-parts", { count: groups.length, most: MOST_PARTS });
  const effort = effortFor(job, groups.length, engine);
  const sticks: PlannedStick[] = [];
  const proofs: GroupProof[] = [];
  let bound = new Exact(0);
  let isCertified = true;
  let isOptimal = true;
  for (const [place, group] of groups.entries()) {
    const shelfOf = groupShelf(job, group);
    if (isProblem(shelfOf)) return shelfOf;
    const { shelf, moneyUnit, pieceRows, stockRows } = shelfOf;
    const { cuts, certified, proven, proof } = withShare(effort, effort.left / (groups.length - place), (share) =>
      shelfPlan(shelf, engine, share),
    );
    if (cuts === undefined) return unplaced(proven === Infinity ? "stock-runs-out" : "no-plan-found", job, shelfOf);
    const planned = plannedSticks(job, shelfOf, cuts);
    const paid = planned.reduce((sum, stick) => sum.plus(job.stock[stick.stock]!.price), new Exact(0));
    // prices are rounded down to units only where they are finer than whole-number arithmetic; then no plan is proven the cheapest
    const isWhole = moneyUnit.times(outlay(shelf, cuts).cash).eq(paid);
    isCertified = isCertified && isWhole && certified === outlay(shelf, cuts).cash;
    isOptimal = isOptimal && isWhole && proven === outlay(shelf, cuts).cash;
    bound = bound.plus(moneyUnit.times(proven));
    sticks.push(...planned);
    proofs.push({
      grade: group.grade,
      pieceRows,
      stockRows,
      unit: moneyUnit,
      steps: worthSteps(shelf),
      certified: moneyUnit.times(certified),
      proof,
    });
  }
  const cost = sticks.reduce((sum, stick) => sum.plus(job.stock[stick.stock]!.price), new Exact(0));
  const gross = sticks.reduce((sum, stick) => sum.plus(job.stock[stick.stock]!.length), new Exact(0));
  const net = job.pieces.reduce((sum, piece) => sum.plus(piece.length.times(piece.quantity)), new Exact(0));
  const gap = cost.isZero() ? new Exact(0) : cost.minus(bound).div(cost);
  return {
    sticks,
    cost,
    bound,
    gap,
    sticksUsed: sticks.length,
    yield: net.div(gross),
    verdict: isCertified ? "best possible (proven)" : isOptimal ? "best possible (searched, not certified)" : gapInWords(gap),
    proofs,
    notes: planNotes(job, sticks),
  };
};
