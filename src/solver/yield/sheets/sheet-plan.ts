import { Exact } from "../../length/exact";
import { type Length } from "../../length/length";
import { isProblem, type Problem, problem } from "../../problem";
import { called } from "../cutting-job";
import { gapInWords, impossible, type ImpossibleJob } from "../cutting-plan";
import { isOnMark, MARK_NAME } from "../mark";
import { type Effort, withShare } from "../shelf/effort";
import { cutsCost } from "./greedy-sheets";
import { type LaidSheet, laidSheets } from "./laid-sheets";
import { partShelf, type PartShelf } from "./part-shelf";
import { plannedEitherWay } from "./either-way";
import { edgeTrimOf, type SheetJob } from "./sheet-job";
import { type ImpossibleSheet, sheetParts } from "./sheet-parts";
import { type SheetPartProof, sheetPartProof } from "./sheet-proof";

export interface SheetPlan {
  readonly sheets: readonly LaidSheet[];
  readonly cost: Exact;
  /** No plan costs less: proven. */
  readonly bound: Exact;
  readonly gap: Exact;
  /** Area in pieces over area of the sheets used. */
  readonly yield: Exact;
  /** `best possible (proven)`, `best possible (searched, not certified)`, or the gap in words. */
  readonly verdict: string;
  readonly notes: readonly string[];
  /** Why nothing costs less than the bound, part by part; undefined where it was not put together. */
  readonly proof: readonly SheetPartProof[] | undefined;
}

export type ImpossibleSheetPlan =
  | ImpossibleJob | ImpossibleSheet | "too-many-sizes" | "too-many-sheets" | "sheets-run-out" | "no-sheets-found";

export type SheetAnswer = SheetPlan | Problem<ImpossibleSheetPlan>;

const MOST_PIECES = 1_000;
const MOST_STOCK = 100;
/** Different sizes of pieces, and of sheets, in one part. */
const MOST_SIZES = 100;
const MOST_SHEETS = 20;
/** Steps of all searches in a cell: under two seconds where they are all used. */
export const SHEET_EFFORT = 250_000_000;

const BEST = { proven: "best possible (proven)", searched: "best possible (searched, not certified)" } as const;

const ZERO = new Exact(0);
const area = ({ length, width }: { readonly length: Length; readonly width?: Length }): Exact => length.times(width!);
const sum = (amounts: readonly Exact[]): Exact => amounts.reduce((all, each) => all.plus(each), ZERO);

const notesOf = (job: SheetJob, sheets: readonly LaidSheet[]): string[] => {
  const mark = MARK_NAME[job.unit];
  const isFine = (length: Length | undefined): boolean => length !== undefined && !isOnMark(length, job.unit);
  const isThicker = (stock: number, piece: number): boolean => {
    const { thickness } = job.pieces[piece]!;
    return thickness !== undefined && job.stock[stock]!.thickness!.gt(thickness);
  };
  const planed = sheets.flatMap(({ stock, strips }) =>
    strips.flatMap(({ pieces }) => pieces.filter(({ piece }) => isThicker(stock, piece))),
  );
  const anyFine = (rows: readonly { readonly length: Length; readonly width?: Length }[]): boolean =>
    rows.some(({ length, width }) => isFine(length) || isFine(width));
  return [
    ...(anyFine(job.pieces) ? [`pieces finer than ${mark} are planned rounded up to it`] : []),
    ...(anyFine(job.stock) ? [`stock finer than ${mark} is planned rounded down to it`] : []),
    ...(isFine(job.kerf) ? [`the kerf is planned rounded up to ${mark}`] : []),
    ...(isFine(job.trim) || isFine(edgeTrimOf(job)) ? [`the trim is planned rounded up to ${mark}`] : []),
    ...(planed.length === 0 ? [] : [`pieces cut from thicker stock and planed down: ${planed.length}`]),
  ];
};

/** Says for which piece, the largest, there may be no room. */
const noRoom = (job: SheetJob, { pieceRows }: PartShelf, isProven: boolean): Problem<ImpossibleSheetPlan> => {
  const row = pieceRows[0]![0]!;
  const { label, length, width } = job.pieces[row]!;
  return problem(isProven ? "sheets-run-out" : "no-sheets-found", { piece: called(label, row), length, width: width! });
};

interface PlannedPart {
  readonly sheets: readonly LaidSheet[];
  readonly bound: Exact;
  readonly isProven: boolean;
  readonly proof: SheetPartProof | undefined;
}

const plannedPart = (job: SheetJob, part: PartShelf, effort: Effort): PlannedPart | Problem<ImpossibleSheetPlan> => {
  const { shelf, moneyUnit, steps } = part;
  if (shelf.kinds.length > MOST_SIZES) return problem("too-many-sizes", { count: shelf.kinds.length, most: MOST_SIZES });
  if (shelf.sheets.length > MOST_SHEETS) return problem("too-many-sheets", { count: shelf.sheets.length, most: MOST_SHEETS });
  const { ways, cuts, proven, ...known } = plannedEitherWay(shelf, effort);
  if (cuts === undefined) return noRoom(job, part, proven === Infinity);
  const sheets = laidSheets(job, part, ways, cuts);
  const money = (cost: number): Exact => moneyUnit.times(Math.floor(cost / steps));
  const cost = cutsCost(shelf, ways, cuts);
  // prices finer than whole-number arithmetic are rounded down; then no plan is proven the cheapest
  const isWhole = money(cost).eq(sum(sheets.map(({ stock }) => job.stock[stock]!.price)));
  const isProven = isWhole && money(proven).eq(money(cost));
  return { sheets, bound: money(proven), isProven, proof: sheetPartProof(part, known, proven) };
};

/**
 * The cheapest way to cut all pieces from sheets in two stages: rips along the sheet and crosscuts of each strip, or the other way round,
 * each sheet its own way where `first` is either; a strip is as wide as its widest piece. Among plans of one cost the least area of sheets
 * is bought, as far as the work goes. Same job, same plan.
 */
export const sheetPlan = (job: SheetJob, most = SHEET_EFFORT): SheetAnswer => {
  const fault = impossible(job, MOST_PIECES, MOST_STOCK);
  if (fault !== undefined) return fault;
  const parts = sheetParts(job);
  if (isProblem(parts)) return parts;
  const effort = { left: most };
  const planned: PlannedPart[] = [];
  for (const [place, part] of parts.entries()) {
    const found = withShare(effort, effort.left / (parts.length - place), (share) => plannedPart(job, partShelf(job, part), share));
    if (isProblem(found)) return found;
    planned.push(found);
  }
  const sheets = planned.flatMap((part) => part.sheets);
  const cost = sum(sheets.map(({ stock }) => job.stock[stock]!.price));
  const bound = sum(planned.map((part) => part.bound));
  const gap = cost.isZero() ? ZERO : cost.minus(bound).div(cost);
  const isProven = planned.every((part) => part.isProven);
  const proof = planned.flatMap((part) => part.proof ?? []);
  const isWhole = proof.length === planned.length;
  return {
    sheets, cost, bound, gap,
    yield: sum(job.pieces.map((piece) => area(piece).times(piece.quantity))).div(sum(sheets.map(({ stock }) => area(job.stock[stock]!)))),
    // what was only searched through leaves nothing by which a checker could repeat it
    verdict: isProven ? BEST[isWhole && proof.every(({ tooSmall }) => tooSmall.length === 0) ? "proven" : "searched"] : gapInWords(gap),
    notes: notesOf(job, sheets),
    proof: isWhole ? proof : undefined,
  };
};
