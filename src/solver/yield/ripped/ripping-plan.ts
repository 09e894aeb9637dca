import { Exact } from "../../length/exact";
import type { Length } from "../../length/length";
import { isProblem, type Problem, problem } from "../../problem";
import { called } from "../cutting-job";
import { isOnMark, MARK_NAME, marksUp } from "../mark";
import { boardName } from "../tally/tally-board";
import { isPriced, type TallyFault, tallyFault } from "../tally/tally-fault";
import { type BoardProof, boardProof } from "./board-proof";
import { type CheapestBoards, cheapestBoards } from "./cheapest-boards";
import { type LaidBoard, laidBoards } from "./laid-boards";
import { type Keeping, withLargestEnd } from "./largest-end";
import { leastKept } from "./least-kept";
import { type RippingFault, rippingFault } from "./ripping-fault";
import type { RippingJob } from "./ripping-job";
import { lotPrices, type SingleBoard, singleBoards } from "./single-boards";
import { isOfItsGrade } from "./taken-grades";
import type { Yard } from "./yard";
import { type JobYard, yardOfJob } from "./yard-of-job";

export interface RippingPlan {
  readonly single: readonly SingleBoard[];
  readonly boards: readonly LaidBoard[];
  readonly cost: Exact;
  /** No choice of boards costs less. */
  readonly bound: Exact;
  /** (cost - bound) / cost. */
  readonly gap: Exact;
  /** `best possible (proven)`, `best possible (searched, not certified)`, or the gap in words. */
  readonly verdict: string;
  /** That no choice of boards costs less than the bound; undefined where the proof is too long to be repeated. */
  readonly proof: BoardProof | undefined;
  /** Area of the pieces over that of the boards that are cut. */
  readonly yield: Exact;
  /** Pieces cut from another grade than their own. */
  readonly fromOtherGrade: number;
  readonly notes: readonly string[];
}

export type ImpossibleRipping = TallyFault | RippingFault;

/** Counted work of a search one way round: three of them stay within two seconds in a cell. */
const EFFORT = 60e6;
/** Pieces times boards up to which all of it is spent; more of them take work that is not counted. */
const FULL_SIZE = 800;

const effortFor = ({ kinds, boards }: Yard): number => {
  const size = kinds.reduce((sum, { wanted }) => sum + wanted, 0) * boards.length;
  return size <= FULL_SIZE ? EFFORT : EFFORT * Math.sqrt(FULL_SIZE / size);
};

/** What is paid: each board by itself, each lot once. */
const paid = ({ boards }: RippingJob, single: readonly SingleBoard[], used: readonly LaidBoard[]): Exact => {
  const prices = lotPrices(boards);
  const lots = new Set(used.flatMap(({ board }) => single[board]!.lot ?? []));
  const own = used.reduce((sum, { board }) => sum.plus(single[board]!.price), new Exact(0));
  return [...lots].reduce((sum, lot) => sum.plus(prices.get(lot) ?? 0), own);
};

const noPlan = (
  job: RippingJob, count: number, { pieceRows }: JobYard, { isImpossible, unplaced }: CheapestBoards,
): Problem<RippingFault> => {
  const row = pieceRows[unplaced]![0]!;
  const { label, length, width } = job.pieces[row]!;
  const details = { count, piece: called(label, row), length };
  return width === undefined
    ? problem(isImpossible ? "boards-too-few-across" : "no-plan-across", details)
    : problem(isImpossible ? "boards-too-few" : "no-plan-of-boards", { ...details, width });
};

const markNotes = ({ pieces, boards, kerf, trim, unit }: RippingJob): string[] => {
  const off = (length: Length | undefined): boolean => length !== undefined && !isOnMark(length, unit);
  const mark = MARK_NAME[unit];
  return [
    ...(pieces.some(({ length, width }) => off(length) || off(width)) ? [`pieces finer than ${mark} are planned rounded up to it`] : []),
    ...(boards.some(({ length, width }) => off(length) || off(width)) ? [`boards finer than ${mark} are planned rounded down to it`] : []),
    ...(off(kerf) ? [`the kerf is planned rounded up to ${mark}`] : []),
    ...(off(trim) ? [`the trim is planned rounded up to ${mark}`] : []),
  ];
};

/** What is worth keeping; any end where nothing is said. */
const keepingOf = (job: RippingJob): Keeping => {
  const least = leastKept(job);
  return least === undefined ? { length: 0, width: 0 } : { length: marksUp(least.length, job.unit), width: marksUp(least.width, job.unit) };
};

const CENTS = 100;
const PERCENT = 100;

const verdictOf = (isBest: boolean, proof: BoardProof | undefined, gap: Exact): string => {
  if (isBest) return proof === undefined ? "best possible (searched, not certified)" : "best possible (proven)";
  return `not proven: at most ${gap.times(PERCENT).toDecimalPlaces(2, Exact.ROUND_UP).toString()} % could still be saved`;
};

const proofNote = (refuted: number): string =>
  refuted === 0
    ? "no choice of boards costs less"
    : `no choice of boards costs less: ${refuted} cheaper ${refuted === 1 ? "choice was" : "choices were each"} shown too small`;

/**
 * The cheapest boards of a tally that give all pieces, each clear stretch of them cut in two stages, and where each piece lies. Cost is
 * money, then board feet newly cut, then boards; the work is counted, so the same job has the same plan everywhere.
 */
export const rippingPlan = (job: RippingJob): RippingPlan | Problem<ImpossibleRipping> => {
  const fault = tallyFault(job.boards);
  if (fault !== undefined) return fault;
  const unpriced = job.boards.find((board) => !board.owned && !job.boards.some(isPriced));
  if (unpriced !== undefined) return problem("no-price", { board: boardName(unpriced) });
  const single = singleBoards(job.boards, job.kerf);
  const impossible = rippingFault(job, single);
  if (impossible !== undefined) return impossible;
  const ofJob = yardOfJob(job, single);
  const found = cheapestBoards(ofJob.yard, effortFor(ofJob.yard));
  if (found.layout === undefined) return noPlan(job, single.length, ofJob, found);
  const layout = withLargestEnd(ofJob.yard, found.layout, keepingOf(job), { left: EFFORT });
  const boards = laidBoards(job, single, ofJob, layout);
  const cost = paid(job, single, boards);
  const bound = Exact.min(cost, new Exact(Math.floor(found.bound / found.moneyStep)).div(CENTS));
  const gap = cost.isZero() ? new Exact(0) : cost.minus(bound).div(cost);
  const isBest = bound.eq(cost);
  const proof = boardProof(ofJob.yard, ofJob.pieceRows, found.options, found.refutations);
  const laid = boards.flatMap(({ pieces }) => pieces);
  const gross = boards.reduce((sum, { board }) => sum.plus(single[board]!.row.length.times(single[board]!.row.width)), new Exact(0));
  return {
    single, boards, cost, bound, gap, proof,
    verdict: verdictOf(isBest, proof, gap),
    yield: laid.reduce((sum, { length, width }) => sum.plus(length.times(width)), new Exact(0)).div(gross),
    fromOtherGrade: boards.reduce(
      (sum, { board, pieces }) => sum + pieces.filter(({ piece }) => !isOfItsGrade(job.pieces[piece]!, single[board]!)).length, 0,
    ),
    notes: [...(isBest ? [proofNote(found.refuted)] : []), ...markNotes(job)],
  };
};

export type RippingAnswer = RippingPlan | Problem<ImpossibleRipping>;

/** A sheet asks for the cuts, the goods and the summary of a few jobs at a time. */
const MOST_REMEMBERED = 6;
const remembered = new Map<string, RippingAnswer>();

/** The plan of a job; the last few are remembered, which never shows in a result. */
export const sharedRipping = (job: RippingJob): RippingAnswer => {
  const key = JSON.stringify(job);
  const plan = remembered.get(key) ?? rippingPlan(job);
  remembered.delete(key);
  remembered.set(key, plan);
  const [oldest] = remembered.keys();
  if (remembered.size > MOST_REMEMBERED && oldest !== undefined) remembered.delete(oldest);
  return plan;
};

export const hasPlan = (answer: RippingAnswer): answer is RippingPlan => !isProblem(answer);
