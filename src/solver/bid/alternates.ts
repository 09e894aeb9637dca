import { type BadRow, goodRows, isBadRow } from "../bad-row";
import type { Amendment, AmendmentProblem } from "../code/amended-profile";
import { codeCheck } from "../code/check";
import { facts } from "../code/facts";
import { type OverallVerdict, overallVerdict } from "../code/overall-verdict";
import type { CodeProfile } from "../code/profile";
import { goodsKey } from "../goods/goods-key";
import { changedStair, type KnownStair } from "../layout/changed-stair";
import type { StairProblem } from "../layout/resolved-stair";
import type { StairFacts } from "../layout/stair-facts";
import type { Exact } from "../length/exact";
import type { Unit } from "../length/length";
import { nearestWord } from "../nearest-word";
import { isProblem, type Problem, problem } from "../problem";
import { buyList, type BuyRow } from "../yield/buy-list";
import type { CuttingJob } from "../yield/cutting-job";
import type { ImpossibleCutting } from "../yield/cutting-plan";
import { type PieceOfOption, piecesOfOption } from "../yield/pieces-of-option";
import { sharedPlan } from "../yield/shared-plan";
import { sharedSheets } from "../yield/sheets/shared-sheets";
import { type ImpossibleSheetPlan } from "../yield/sheets/sheet-plan";
import { sheetGoods } from "../yield/sheets/sheet-goods";
import { sideBySide } from "../yield/sheets/side-by-side";
import type { SheetJob } from "../yield/sheets/sheet-job";
import { bidFigures, blankNote, nothingLeft, type NoBid } from "./bid";
import { type Cost, type DirectCosts, directCosts, optionsOf, taxedWithoutGoods } from "./cost";
import { type LabourHours, labourHours } from "./labour-hours";
import type { CountedCost } from "./price-change";
import { partOfOption } from "./quote";
import type { Terms } from "./terms";

/** Alternates of one bid. */
const MOST_ALTERNATES = 20;
/** Cutting plans of one call, that of the bid as drawn among them: each may take the whole work of a plan. */
const MOST_PLANS = 4;

/** What an alternate changes of the stair, by labels, or what is wrong with that. */
export interface StairChange<Bad> {
  readonly option: string;
  readonly change: StairFacts | Faulty<Bad>;
}

/** What could not be read of one alternate. */
export interface Faulty<Bad> {
  readonly bad: Bad;
}

export const isFaulty = <Bad>(found: unknown): found is Faulty<Bad> => typeof found === "object" && found !== null && "bad" in found;

/** The stair as drawn, and the code it is checked against. */
export interface CheckedStair extends KnownStair {
  readonly unit: Unit;
  /** Absent: no code is given. */
  readonly profile?: CodeProfile;
  readonly amendments: readonly Amendment[];
}

export interface CutAlternates<Bad> {
  readonly pieces: readonly (PieceOfOption | BadRow<Bad>)[];
  readonly saw: Omit<CuttingJob, "pieces"> & Pick<SheetJob, "edgeTrim">;
}

export interface GivenAlternates<Bad> {
  readonly costs: readonly CountedCost[];
  readonly terms: Terms;
  readonly changes: readonly StairChange<Bad>[];
  readonly stair?: CheckedStair;
  /** Absent: pieces or stock are not given. */
  readonly cutting?: CutAlternates<Bad>;
}

/** What an alternate comes to, in cents. */
export interface PricedAlternate {
  readonly cost: Exact;
  readonly price: Exact;
  /** The price less that of the bid as drawn. */
  readonly addOrDeduct: Exact;
}

export type AlternateVerdict<Bad> = "as drawn" | "not given" | OverallVerdict | Problem<StairProblem> | Faulty<Bad>;
export type AlternateBoards<Bad> =
  | "as drawn" | "not given" | "too many plans" | readonly BuyRow[] | Problem<ImpossibleCutting | ImpossibleSheetPlan> | Faulty<Bad>;

export interface AlternateRow<Bad> {
  /** Empty: the bid as drawn. */
  readonly option: string;
  /** The part that its costs name, where that says more; else empty. */
  readonly part: string;
  /** Absent where no cost names the alternate; then `near` is the one most like it, if there is any. */
  readonly priced?: PricedAlternate;
  readonly near?: string;
  readonly labour: LabourHours;
  /** Of the row's own costs: those that are 0 or empty, in words, and labour without hours. */
  readonly blank: string;
  readonly uncounted: readonly Cost[];
  readonly verdict: AlternateVerdict<Bad>;
  readonly boards: AlternateBoards<Bad>;
}

export type NoAlternates = Exclude<NoBid, "no-such-option" | "no-options"> | AmendmentProblem | "too-many-alternates";

const isSame = (one: string, other: string): boolean => goodsKey(one) === goodsKey(other);

/** The stair of an alternate against the code; what is wrong with the amendments is no fault of the alternate. */
const checked = <Bad>(
  { stair, changes }: GivenAlternates<Bad>, option: string,
): AlternateVerdict<Bad> | { readonly amiss: Problem<AmendmentProblem> } => {
  if (stair?.profile === undefined) return "not given";
  const change = option === "" ? {} : changes.find((one) => isSame(one.option, option))?.change;
  if (change === undefined) return "as drawn";
  if (isFaulty<Bad>(change)) return change;
  const { given, assumed } = changedStair(stair, change);
  const known = facts(given, stair.unit, assumed);
  if (isProblem(known)) return known;
  const rows = codeCheck(known, stair.profile, [], stair.amendments);
  return isProblem(rows) ? { amiss: rows } : overallVerdict(rows);
};

const optionOfBad = ({ read }: BadRow<unknown>): string => String(read?.["option"] ?? "");

/** What BUY buys for the pieces: of sheets, or boards to rip, where two could lie side by side; no piece is turned. */
const goodsOf = (job: CuttingJob & Pick<SheetJob, "edgeTrim">): readonly BuyRow[] | Problem<ImpossibleCutting | ImpossibleSheetPlan> => {
  if (sideBySide(job) !== undefined) {
    const { keep: _, ...rest } = job;
    const sheets = { ...rest, pieces: job.pieces.map((piece) => ({ ...piece, turns: false })), first: "either" } as const;
    const plan = sharedSheets(sheets);
    return isProblem(plan) ? plan : sheetGoods(sheets, plan);
  }
  const plan = sharedPlan(job);
  return isProblem(plan) ? plan : buyList(job, plan);
};

/** The boards of an alternate; as many as are cut in other pieces than as drawn are planned, in their order. */
const boardsOf = <Bad>({ cutting }: GivenAlternates<Bad>): ((option: string) => AlternateBoards<Bad>) => {
  let plans = 0;
  return (option) => {
    if (cutting === undefined) return "not given";
    const { pieces, saw } = cutting;
    const faults = pieces.filter(isBadRow);
    const isOwn = (name: string): boolean => isSame(name, option);
    const good = goodRows(pieces);
    const isDrawn = !faults.some((fault) => isOwn(optionOfBad(fault))) && !good.some((piece) => isOwn(piece.option));
    if (option !== "" && isDrawn) return "as drawn";
    const fault = faults.find((one) => [option, ""].some((name) => isSame(name, optionOfBad(one))));
    if (fault !== undefined) return { bad: fault.bad };
    const own = piecesOfOption(good, option);
    if (own.length === 0) return [];
    if (plans >= MOST_PLANS) return "too many plans";
    plans += 1;
    return goodsOf({ ...saw, pieces: own.map(({ option: _option, ...piece }) => piece) });
  };
};

const optionsOfAll = <Bad>({ costs, changes, cutting }: GivenAlternates<Bad>): readonly string[] => {
  const cut = (cutting?.pieces ?? []).map((piece) => (isBadRow(piece) ? optionOfBad(piece) : piece.option));
  return optionsOf([...costs, ...changes, ...cut.map((option) => ({ option }))]);
};

/** The costs that stand whatever is chosen, under an empty name, and those of each alternate. */
const costsByOption = (costs: readonly CountedCost[]): ReadonlyMap<string, readonly CountedCost[]> => {
  const found = new Map<string, CountedCost[]>([["", []]]);
  for (const cost of costs) {
    const key = goodsKey(cost.option ?? "");
    const known = found.get(key);
    if (known === undefined) found.set(key, [cost]);
    else known.push(cost);
  }
  return found;
};

/** What the costs of a bid come to, each of its own rows in cents: those of an alternate stand on those of the bid as drawn. */
interface Sums {
  readonly direct: DirectCosts;
  readonly labour: LabourHours;
}

const sumsOf = (costs: readonly CountedCost[]): Sums => ({ direct: directCosts(costs), labour: labourHours(costs) });

const together = (drawn: Sums, own: Sums): Sums => ({
  direct: {
    materials: drawn.direct.materials.plus(own.direct.materials),
    taxedMaterials: drawn.direct.taxedMaterials.plus(own.direct.taxedMaterials),
    labour: drawn.direct.labour.plus(own.direct.labour),
    subcontract: drawn.direct.subcontract.plus(own.direct.subcontract),
  },
  labour: {
    hours: drawn.labour.hours.plus(own.labour.hours),
    counted: drawn.labour.counted + own.labour.counted,
    uncounted: [...drawn.labour.uncounted, ...own.labour.uncounted],
  },
});

/**
 * The bid as drawn and each of its alternates: what it costs and is asked, its hours, what a code says of its stair and which boards it
 * takes. An alternate that is no stair, breaks the code or cannot be cut says so in its own row.
 */
export const alternates = <Bad>(given: GivenAlternates<Bad>): readonly AlternateRow<Bad>[] | Problem<NoAlternates> => {
  const { costs, terms } = given;
  const fault = taxedWithoutGoods(costs) ?? nothingLeft(terms);
  if (fault !== undefined) return fault;
  const options = optionsOfAll(given);
  if (options.length > MOST_ALTERNATES) return problem("too-many-alternates", { count: options.length, most: MOST_ALTERNATES });
  const [byOption, priced, boards] = [costsByOption(costs), optionsOf(costs), boardsOf(given)];
  const drawn = sumsOf(byOption.get("") ?? []);
  const priceAsDrawn = bidFigures(drawn.direct, terms).price;
  const rows: AlternateRow<Bad>[] = [];
  for (const option of ["", ...options]) {
    const verdict = checked(given, option);
    if (typeof verdict === "object" && "amiss" in verdict) return verdict.amiss;
    const costed = byOption.get(goodsKey(option));
    const own = sumsOf(costed ?? []);
    const { direct, labour } = option === "" ? drawn : together(drawn, own);
    const { direct: cost, price } = bidFigures(direct, terms);
    const [near, part] = [nearestWord(option, priced), costed === undefined || option === "" ? "" : partOfOption(costed, option)];
    rows.push({
      option,
      part: isSame(part, option) ? "" : part,
      ...(costed !== undefined ? { priced: { cost, price, addOrDeduct: price.minus(priceAsDrawn) } } : near === undefined ? {} : { near }),
      labour,
      blank: blankNote(costed ?? []),
      uncounted: own.labour.uncounted,
      verdict,
      boards: boards(option),
    });
  }
  return rows;
};
