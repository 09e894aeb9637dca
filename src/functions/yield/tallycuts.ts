import { isProblem } from "../../solver/problem";
import { FIRST_CUTS } from "../../solver/yield/ripped/ripping-job";
import { sharedRipping } from "../../solver/yield/ripped/ripping-plan";
import { CAUTION, SAW_CAUTION } from "../caution";
import { isFailed } from "../cells";
import { CUTTING } from "../cutting";
import { declare, headings, unit } from "../declare";
import { namedBoard, RIPPING_PROBLEMS, rippingJobOf } from "../ripping";
import { rippedPieces, tally } from "../tables";

const BOARDS = [
  ["label", "length", "width", "thickness", "price"],
  ["A", 96, 11, "4/4", 66],
  ["B", 96, 7.5, "4/4", 45],
  ["C", 96, 5, "4/4", 30],
] as const;

const TWO_WIDTHS = [
  ["label", "length", "width", "quantity"],
  ["riser", 42, 7.25, 2],
  ["nosing", 42, 3.5, 2],
] as const;

export const TALLYCUTS = declare({
  id: "TALLYCUTS",
  words: "tally cuts",
  group: "Cut plan",
  says: "Which piece to rip and cut from which measured board, and where it lies on it, at least cost.",
  parameters: {
    pieces: {
      kind: "table", table: rippedPieces, rows: 100, badRows: "refuse",
      says: "What is to be cut, the grain along its length; a piece is ripped out of its board where it has a width.",
    },
    tally: { kind: "table", table: tally, rows: 60, badRows: "refuse", says: "The measured boards." },
    kerf: CUTTING.kerf,
    trim: {
      kind: "length", sign: "not negative", default: 0,
      says: "Cut off each end of every board, the kerf of that cut inside it; a cut at a defect lies in the defect.",
    },
    keep: {
      kind: "length", sign: "not negative", optional: true, crossed: true,
      says: "Least length x width of what is kept, as in 24 x 3; one length is for pieces no narrower than the narrowest one wanted.",
      without: "Left out: any end counts.",
    },
    first: {
      kind: "choice", options: FIRST_CUTS, default: "either",
      says: "What is cut first on each clear stretch: rip into strips, crosscut into sections, or either, whichever costs less.",
    },
    unit,
    headings,
  },
  result: {
    kind: "table",
    says: "One row per piece: board after board of the tally, strip after strip, the longest piece of a strip first.",
    columns: {
      board: { kind: "label", says: "Label of the board; its place in the tally where it has none." },
      grade: { kind: "text", says: "Grade of the board." },
      first: { kind: "text", says: "rip or crosscut: how this stretch of the board is cut first." },
      strip: { kind: "count", says: "Number of the strip, or of the section crosscut first, on its board." },
      along: { kind: "length", says: "From the end chalked 0 to the start of the piece; trim and defects are counted." },
      across: {
        kind: "length",
        says: "From the edge the board is straightened on to the edge of the piece; half of what both edges lose is counted.",
      },
      label: { kind: "label", says: "What the piece is." },
      length: { kind: "length", says: "Length of the piece, along the grain." },
      width: { kind: "length", says: "Width of the piece; where it has none, the width of the board less the edges." },
      leftOver: { kind: "length", says: "What its strip, or section, leaves at its end after the last kerf." },
    },
  },
  problems: RIPPING_PROBLEMS,
  examples: [
    {
      given: { pieces: TWO_WIDTHS, tally: BOARDS },
      gives: [
        ["board", "grade", "first", "strip", "along", "across", "label", "length", "width", "left over"],
        ["A", "", "rip", 1, 0, 0, "riser", 42, 7.25, 11.75],
        ["A", "", "rip", 1, 42.125, 0, "riser", 42, 7.25, 11.75],
        ["A", "", "rip", 2, 0, 7.375, "nosing", 42, 3.5, 11.75],
        ["A", "", "rip", 2, 42.125, 7.375, "nosing", 42, 3.5, 11.75],
      ],
      from:
        "by hand: 7 1/4 + 1/8 + 3 1/2 = 10 7/8 across the 11, 66.00; one piece across takes B and C, 75.00; 96 - 2 x 42 1/8 = 11 3/4; " +
        "the second strip begins at 7 3/8",
    },
  ],
  source:
    "Rip first: strips along a clear stretch whose widths and kerfs add to no more than its width and one kerf, in each pieces whose " +
    "lengths and kerfs add to no more than its length and one kerf; a strip is as wide as its widest piece, and a narrower one is " +
    "ripped again by itself. Crosscut first is the same turned. Least money; then least board feet newly cut, fewest boards. A lot is " +
    "paid once. Rough lumber gives what it dresses to on both faces: 4/4 13/16, 5/4 1 1/16, 8/4 1 3/4 (hardwood thickness table of a " +
    "state extension service; 6/4 1 5/16, 10/4 2 1/4, 12/4 2 3/4 from memory); another thickness is taken as finished. A defect " +
    "shorter than the kerf is widened to it. Board foot prices are counted by surface measure. Planned on marks of 1/64 in or 0.1 mm. " +
    "The work is counted, not timed, so the same job has the same plan everywhere; PLAN says how far the plan is proven, and plans " +
    "each stretch either way.",
  caution: `${CAUTION} ${SAW_CAUTION}`,
  solve: (given) => {
    const job = rippingJobOf(given);
    if (isFailed(job)) return job;
    const plan = sharedRipping(job);
    if (isProblem(plan)) return plan;
    return plan.boards.flatMap(({ board, pieces }) => {
      const { label, grade } = plan.single[board]!.row;
      return pieces.map(({ piece, ...laid }) => ({ board: namedBoard(label, board), grade, label: job.pieces[piece]!.label, ...laid }));
    });
  },
});
