import { type Effort } from "../shelf/effort";
import { cheapestCounts, isWithin } from "./cheapest-counts";
import { type PartShelf } from "./part-shelf";
import { type SheetShelf } from "./sheet-shelf";
import { lack, leastCostBy, type Worths } from "./worths";

/** Sheets that together hold less than all pieces are worth do not hold them. */
export interface SheetLaw {
  /** What one piece of each kind is worth, in whole numbers. */
  readonly worth: readonly number[];
  /** The most worth that one sheet of each kind holds. */
  readonly holds: readonly number[];
}

/** Why no sheets of one part of the job that cost less hold its pieces: each choice breaks a law or is one searched through. */
export interface SheetPartProof {
  /** For each kind of piece its rows of the pieces table, and for each kind of sheet its rows of the stock table. */
  readonly pieceRows: readonly (readonly number[])[];
  readonly stockRows: readonly (readonly number[])[];
  /** Only those that are needed. */
  readonly laws: readonly SheetLaw[];
  /** So many of each kind of sheet, and fewer, were shown too small by a search: by nothing that is kept. */
  readonly tooSmall: readonly (readonly number[])[];
}

/** Steps for one part: a small share of a cell's, beside those of the plan, so that the plan does not depend on its proof; chosen. */
const PROOF_STEPS = 8_000_000;

type Counts = readonly number[];

/** What is known of numbers of sheets. */
interface Known {
  readonly worths: readonly Worths[];
  readonly tooSmall: readonly Counts[];
}

/** The share of all worth that these numbers of sheets lack. */
const lackShare = (law: Worths, counts: Counts): number => lack(law, counts) / law.total;

const highest = <Item>(all: readonly Item[], figure: (item: Item) => number): Item | undefined =>
  all.reduce<Item | undefined>((best, each) => (best === undefined || figure(each) > figure(best) ? each : best), undefined);

/** The cheapest numbers of sheets that are open by what is known, "none", or "unknown" where the effort is spent. */
const openCounts = (shelf: SheetShelf, { worths, tooSmall }: Known, below: number, effort: Effort): Counts | "none" | "unknown" => {
  const { counts, isExact } = cheapestCounts(shelf, worths, tooSmall, new Set(), below, effort);
  return isExact ? counts ?? "none" : "unknown";
};

/** Of what is known enough to show every choice below a cost too small: law after law, each for the cheapest choice still open. */
const enough = (shelf: SheetShelf, { worths, tooSmall }: Known, below: number, effort: Effort): Known | undefined => {
  const strongest = highest(worths, (law) => leastCostBy(shelf, law));
  const chosen = { worths: strongest === undefined ? [] : [strongest], tooSmall: [] as Counts[] };
  for (;;) {
    const counts = openCounts(shelf, chosen, below, effort);
    if (counts === "none") return chosen;
    if (counts === "unknown") return undefined;
    const law = highest(worths, (each) => lackShare(each, counts));
    const searched = tooSmall.find((each) => isWithin(counts, each));
    if (law !== undefined && lackShare(law, counts) > 0) chosen.worths.push(law);
    else if (searched !== undefined) chosen.tooSmall.push(searched);
    else return undefined;
  }
};

/** The same without what the rest shows as well; what was searched is given up first. */
const needed = (shelf: SheetShelf, { worths, tooSmall }: Known, below: number, effort: Effort): Known => {
  const isEnough = (known: Known): boolean => openCounts(shelf, known, below, effort) === "none";
  const leftOut = <Item>(all: readonly Item[], knownWith: (rest: readonly Item[]) => Known): readonly Item[] =>
    all.reduce((kept, each) => {
      const rest = kept.filter((other) => other !== each);
      return isEnough(knownWith(rest)) ? rest : kept;
    }, all);
  const small = leftOut(tooSmall, (rest) => ({ worths, tooSmall: rest }));
  return { tooSmall: small, worths: leftOut(worths, (rest) => ({ worths: rest, tooSmall: small })) };
};

/** The proof of a bound in the terms of the job's rows; undefined where what is known was not put together within the steps. */
export const sheetPartProof = (part: PartShelf, known: Known, bound: number): SheetPartProof | undefined => {
  const { shelf, steps, pieceRows, stockRows } = part;
  const effort = { left: PROOF_STEPS };
  // only money is claimed, so what costs as much and has less area need not be shown too small
  const below = Math.floor(bound / steps) * steps;
  const found = enough(shelf, known, below, effort);
  if (found === undefined) return undefined;
  const { worths, tooSmall } = needed(shelf, found, below, effort);
  return { pieceRows, stockRows, laws: worths.map(({ worth, most }) => ({ worth, holds: most })), tooSmall };
};
