import { type SheetJob } from "../solver/yield/sheets/sheet-job";
import { CUTTING, CUTTING_PROBLEMS, cuttingJobOf, type GivenCutting } from "./cutting";
import { type Size } from "./declare";

const { pieces, stock, kerf, unit, headings } = CUTTING;

const FIRSTS = ["either", "rip", "crosscut"] as const;

/** What is kept of sheets: a size. */
const keep = {
  kind: "length",
  sign: "not negative",
  optional: true,
  crossed: true,
  says:
    "Least length of an end that is kept as an offcut; of sheets and measured boards least length x width, as in 24 x 3. One length is " +
    "for both of a sheet, and of a board for ends no narrower than the narrowest piece.",
  without: "Left out: no offcuts are counted.",
} as const;

/** The arguments of a plan of sheets. */
export const SHEETS = {
  pieces: {
    ...pieces,
    says:
      "What is to be cut, each with its width; a grade is cut only from stock of the same grade, a thickness only from stock at " +
      "least as thick.",
  },
  stock: {
    ...stock,
    says:
      "Sheets or boards, each with its width; the length runs with the grain. Where there is a column `available`, an empty cell means " +
      "none, and `any` no limit.",
  },
  kerf,
  trim: {
    ...CUTTING.trim, crossed: true,
    says:
      "Cut off all four edges of every sheet before it is used, the kerf of that cut inside it; as `1/2 x 0` the first off its two ends, " +
      "the second off the edges along its length.",
  },
  keep,
  first: {
    kind: "choice", options: FIRSTS, default: "either",
    says: "What is done first on a sheet: rip along its length, crosscut, or on each sheet either, whichever costs less.",
  },
  unit,
  headings,
} as const;

/** The arguments of what tells of a plan, of sticks or of sheets; `first` was added last. */
export const PLANNED = {
  ...CUTTING,
  trim: { ...CUTTING.trim, crossed: true, says: `${CUTTING.trim.says} Of sheets all four edges, or as \`1/2 x 0\` ends x edges.` },
  keep,
  first: {
    kind: "choice", options: FIRSTS, optional: true,
    says: "Plans as SHEETCUTS does, a tally as TALLYCUTS does: either, rip or crosscut.",
    without:
      "Left out: as SHEETCUTS does with either where two pieces could lie side by side on the stock or one may be turned, else " +
      "as CUTS does; a tally either way.",
  },
} as const;

/** Wording of jobs of sheets that have no plan. */
export const SHEET_PROBLEMS = {
  ...CUTTING_PROBLEMS,
  "piece-without-width": {
    cell: "#VALUE!",
    says: "width: piece {piece} ({length}) has none; give its finished width, or leave the width out of all pieces and cut them with CUTS",
  },
  "piece-across-the-grain": {
    cell: "#N/A",
    says: "grain: piece {piece} ({length} x {width}) fits only across the grain; write free under grain where it may be turned",
  },
  "piece-fits-no-sheet": {
    cell: "#N/A",
    says:
      "length: piece {piece} ({length} x {width}) fits on no available sheet of its grade; the largest is {sheetLength} x {sheetWidth} " +
      "before its trims",
  },
  "piece-fits-no-available-sheet": {
    cell: "#N/A",
    says:
      "available: piece {piece} ({length} x {width}) fits on a sheet of {sheetLength} x {sheetWidth}, and none of it is available; write " +
      'how many there are, or "any"',
  },
  "too-many-sizes": {
    cell: "#VALUE!",
    says:
      "pieces: {count} different sizes of one grade are more than one plan of sheets takes; split the job into plans of {most} " +
      "or fewer",
  },
  "too-many-sheets": {
    cell: "#VALUE!",
    says: "stock: {count} different sheets of one grade are more than one plan takes; leave out what will not be cut, {most} or fewer",
  },
  "sheets-run-out": {
    cell: "#N/A",
    says:
      "available: the sheets cannot hold all pieces, the largest of them {piece} ({length} x {width}); add sheets, or write " +
      '"any"',
  },
  "no-sheets-found": {
    cell: "#N/A",
    says:
      "available: no plan was found that gives every piece a place, the largest of them {piece} ({length} x {width}); add sheets, or " +
      'write "any"',
  },
} as const;

export interface GivenSheets extends Omit<GivenCutting, "keep" | "trim"> {
  readonly trim: Size;
  readonly keep: Size | undefined;
  readonly first: SheetJob["first"];
}

/** The job as the solver takes it; one length to keep is for both ways. */
export const sheetJobOf = ({ keep: kept, first, trim, ...given }: GivenSheets): SheetJob => {
  const { keep: _, pieces: wanted, ...job } = cuttingJobOf({ ...given, trim: trim.length, keep: undefined });
  return {
    ...job,
    pieces: wanted.map((piece, row) => ({ ...piece, turns: given.pieces[row]!.grain === "free" })),
    first,
    ...(trim.width === undefined ? {} : { edgeTrim: trim.width }),
    ...(kept === undefined ? {} : { keep: { length: kept.length, width: kept.width ?? kept.length } }),
  };
};
