import { isProblem, problem } from "../../solver/problem";
import { cutList } from "../../solver/yield/cut-list";
import { sharedPlan } from "../../solver/yield/shared-plan";
import { sideBySide } from "../../solver/yield/sheets/side-by-side";
import { CAUTION, SAW_CAUTION } from "../caution";
import { CUTTING, CUTTING_PROBLEMS, cuttingJobOf, type GivenCutting, namedStock } from "../cutting";
import { declare } from "../declare";
import { isTally, WOOD } from "../planned-wood";

const PIECES = [
  ["label", "length", "quantity"],
  ["tread", 36, 2],
  ["riser", 20, 1],
] as const;

const STOCK = [
  ["label", "length", "price"],
  ["oak 8 ft", 96, 24.5],
  ["oak 10 ft", 120, 31],
] as const;

export const CUTS = declare({
  id: "CUTS",
  group: "Cut plan",
  says: "Which piece to cut from which stick, in cutting order, at least cost.",
  parameters: { ...CUTTING, pieces: WOOD.pieces, stock: WOOD.stock },
  result: {
    kind: "table",
    says: "One row per piece: stick after stick, equal sticks together, each cut longest piece first.",
    columns: {
      stick: { kind: "count", says: "Number of the stick." },
      stock: { kind: "label", says: "Label of the stock the stick is taken from; its length where it has none." },
      position: { kind: "length", says: "From the end of the stick to the start of the piece; the trim is counted." },
      label: { kind: "label", says: "What the piece is." },
      length: { kind: "length", says: "Length of the piece." },
      leftOver: { kind: "length", says: "What the whole stick leaves between its last kerf and its far trim." },
    },
  },
  problems: {
    ...CUTTING_PROBLEMS,
    "stock-is-a-tally": { cell: "#VALUE!", says: "stock: its headings make it a tally of measured boards; TALLYCUTS cuts those" },
  },
  examples: [
    {
      given: { pieces: PIECES, stock: STOCK, kerf: "1/8", trim: 0.5 },
      gives: [
        ["stick", "stock", "position", "label", "length", "left over"],
        [1, "oak 8 ft", 0.5, "tread", 36, 2.625],
        [1, "oak 8 ft", 36.625, "tread", 36, 2.625],
        [1, "oak 8 ft", 72.75, "riser", 20, 2.625],
      ],
      from: "by hand: 95 usable less 36 + 36 + 20 and three kerfs of 1/8 leaves 2 5/8; positions 1/2, + 36 1/8, + 36 1/8",
    },
    {
      given: {
        pieces: [
          ["2 1/8", 3],
          ["5 3/4", 2],
          ["7/8", 6],
          ["3 1/2", 1],
        ],
        stock: [[36, 10]],
        kerf: "1/16",
      },
      shows: [{ stick: 1, stock: 36, position: 0, length: 5.75, leftOver: 8.625 }],
      from: "Elementary Technical Mathematics, sec. 1.8 exercise 51: twelve cuts of 1/16 take 3/4, 8 5/8 of 36 remain",
    },
    {
      given: {
        pieces: [["length"], [12], [12], [12]],
        stock: [
          ["length", "price"],
          [36.25, 8],
        ],
        headings: false,
      },
      gives: [
        [1, 36.25, 0, "", 12, 0],
        [1, 36.25, 12.125, "", 12, 0],
        [1, 36.25, 24.25, "", 12, 0],
      ],
      from: "by hand: 3 x 12 and the two kerfs between them are 36 1/4, an exact fit",
    },
    {
      given: {
        pieces: [
          ["item", "length", "width", "thickness", "quantity"],
          ["tread", 38, 11.25, 1, 2],
          ["riser", 36, 6.875, 0.75, 1],
        ],
        stock: [
          ["label", "length", "width", "thickness", "price"],
          ["oak 8 ft", 96, 11.5, 1, 60],
          ["poplar 4 ft", 48, 7.25, 0.75, 9],
        ],
        headings: false,
      },
      gives: [
        [1, "oak 8 ft", 0, "tread", 38, 19.75],
        [1, "oak 8 ft", 38.125, "tread", 38, 19.75],
        [2, "poplar 4 ft", 0, "riser", 36, 11.875],
      ],
      from:
        "by hand: treads only out of the 11 1/2 oak, 96 - 2 x 38 1/8 = 19 3/4 holds no riser; the riser out of the poplar, 48 - 36 " +
        "1/8 = 11 7/8",
    },
    {
      given: {
        pieces: [
          ["label", "length", "width"],
          ["tread", 38, 11.25],
        ],
        stock: [
          ["label", "length", "width", "price"],
          ["poplar", 96, 7.25, 18],
        ],
      },
      fails: "#N/A",
      says: 'width: piece tread is 11 1/4" wide, and the widest available stock of its grade is 7 1/4"; add wider stock',
      from: "by hand: one piece lies across the board, and 11 1/4 is more than 7 1/4",
    },
    {
      given: {
        pieces: [["label", "length", "width", "quantity"], ["riser", 40, 3.5, 2]],
        stock: [["label", "length", "width", "price"], ["poplar 8 ft", 96, 7.5, 18]],
      },
      fails: "#VALUE!",
      says:
        'width: 2 x riser of 3 1/2" and the kerf fit across the 7 1/2" of poplar 8 ft; SHEETCUTS rips it, or leave the pieces\' width out',
      from: "by hand: 3 1/2 + 1/8 + 3 1/2 = 7 1/8 of 7 1/2",
    },
    {
      given: {
        pieces: [["label", "length", "width"], ["riser", 40, 7.25], ["nosing", 40, 3.5]],
        stock: [["label", "length", "width", "price"], ["A", 96, 10.875, 66]],
      },
      fails: "#VALUE!",
      says:
        'width: nosing of 3 1/2", riser of 7 1/4" and the kerf fit across the 10 7/8" of A; SHEETCUTS rips it, or leave the pieces\' ' +
        "width out",
      from: "by hand: 7 1/4 + 1/8 + 3 1/2 = 10 7/8, an exact fit",
    },
    {
      given: {
        pieces: [
          ["label", "length"],
          ["skirt", 130],
        ],
        stock: STOCK,
        trim: 0.5,
      },
      fails: "#N/A",
      says: 'length: piece skirt is 130", more than the 119" that can be cut from the longest stock of its grade',
      from: "by hand: 120 less a trim of 1/2 at both ends is 119",
    },
    {
      given: {
        pieces: [
          ["label", "length"],
          ["skirt", 50],
        ],
        stock: [
          ["length", "price", "available"],
          [48, 12, 3],
          [96, 24.5, 0],
        ],
      },
      fails: "#N/A",
      says:
        'length: piece skirt is 50", the longest stock of its grade is 96", and none of it is ' +
        'available; the longest available gives 48"',
      from: "by hand: 50 is longer than the 48 there are, and of the 96 there is none",
    },
    {
      given: {
        pieces: [[20]],
        stock: [
          ["length", "price", "available"],
          [96, "", 3],
          [120, 30, "any"],
        ],
      },
      fails: "#VALUE!",
      says: 'price: stock number 1 (96") is empty or 0; give its price, or write yes under owned if it is on hand',
      from: "common practice, no source: three sticks that nobody marked as on hand are bought, too",
    },
    {
      given: { pieces: [[20]], stock: [["length", "width", "thickness", "price", "lot"], [96, 6, "4/4", 20, ""]] },
      fails: "#VALUE!",
      says: "stock: its headings make it a tally of measured boards; TALLYCUTS cuts those",
      from: "common practice, no source: boards sold by the lot are measured boards",
    },
    {
      given: {
        pieces: [[20]],
        stock: [
          ["length", "price"],
          [96, ""],
        ],
      },
      fails: "#VALUE!",
      says: 'price: stock number 1 (96") is empty or 0; give its price, or write yes under owned if it is on hand',
      from: "common practice, no source: what is bought costs something",
    },
  ],
  source:
    "A stick holds pieces whose lengths and kerfs add to no more than its length less both trims and plus one kerf. Least cost; " +
    "among plans of that cost, as far as a fixed amount of work goes: least new length, fewest sticks, fewest different patterns, " +
    "largest end worth keeping (of at least `keep`, or any), most of such ends, first in cutting order. A piece goes only on " +
    "stock of its own grade, at least as wide and as thick as it is, one piece across the board; where two could lie side by side " +
    "on a row of stock SHEETCUTS plans them. A piece without a width or thickness takes its board's, and stock without one is " +
    "refused where a piece has one. Stock that is wide and thick enough for " +
    "more than one size is shared among them where that costs less; what shares no stock is planned apart. Widths and thicknesses " +
    "are as they are, not as boards are called. Planned on marks of 1/64 in or 0.1 mm, pieces rounded up, stock down. One plan " +
    "takes up to 5,000 pieces, 1,000 rows of stock, 500 different widths and thicknesses in a grade and 200 grades or sizes that " +
    "share no stock; more is refused. The work is counted: a large job gets a plan and the most that could still be saved, not " +
    "always the proof.",
  caution: `${CAUTION} ${SAW_CAUTION}`,
  solve: ({ pieces, stock, ...rest }) => {
    if (isTally(stock)) return problem("stock-is-a-tally");
    const job = cuttingJobOf({ ...rest, pieces: pieces as GivenCutting["pieces"], stock });
    const plan = sideBySide(job) ?? sharedPlan(job);
    return isProblem(plan) ? plan : cutList(job, plan).map((row) => ({ ...row, stock: namedStock(row.stock) }));
  },
});
