import { exact } from "../../solver/length/exact";
import { lengthOf } from "../../solver/length/length";
import { isProblem } from "../../solver/problem";
import type { Length } from "../../solver/length/length";
import { type Offcut, offcuts } from "../../solver/yield/offcuts";
import { dressed } from "../../solver/yield/glue-up/suitable-boards";
import { keptEnds } from "../../solver/yield/ripped/ripping-lists";
import { sheetOffcuts } from "../../solver/yield/sheets/sheet-offcuts";
import { isFailed } from "../cells";
import { declare, type Size } from "../declare";
import { plannedWood, WOOD, WOOD_PROBLEMS } from "../planned-wood";
import { namedBoard } from "../ripping";

const OWNED = { price: 0, owned: "yes" } as const;

/** Goes into stock like any row and adds nothing to it; a row of stock has some length. */
const noneKept = (keep: Size | undefined, first: { readonly length: Length } | undefined): Offcut => {
  const length = keep !== undefined && keep.length.gt(0) ? keep.length : first?.length;
  const label = keep?.width === undefined ? "no end is long enough" : "no end is large enough";
  return { length: length ?? lengthOf(1, "in"), available: 0, label, grade: "", value: exact(0) };
};

export const OFFCUTS = declare({
  id: "OFFCUTS",
  group: "Cut plan",
  says: "Ends of a cutting plan worth keeping, as stock for tomorrow.",
  parameters: WOOD,
  result: {
    kind: "table",
    says:
      "One row per kind of end that is at least `keep` long, of sheets at least as long and wide, with the headings of the stock " +
      "table: it goes into the stock of the next job as it stands. Where no end is, one row says so, with none available. Of a tally " +
      "one row per end of a strip and per part left uncut, as wide as `keep` says, or no narrower than the narrowest piece.",
    columns: {
      length: { kind: "length", says: "Length of the end." },
      price: { kind: "money", says: "0: it is paid for." },
      available: { kind: "count", says: "How many ends of that length." },
      owned: { kind: "text", says: "Always yes." },
      label: { kind: "label", says: "What it is the offcut of." },
      grade: { kind: "text", says: "Grade of the stick it comes from." },
      width: { kind: "length", says: "Width of the stick it comes from." },
      thickness: { kind: "length", says: "Thickness of the stick it comes from; of a rough board what it dresses to." },
      value: {
        kind: "money",
        says:
          "What one is worth in the books: price x length of the end / length of the stick, in cents; a stick without a price gives " +
          "0. A cut plan does not read it: what is on the rack is paid for.",
      },
    },
  },
  problems: {
    ...WOOD_PROBLEMS,
    "keep-missing": { cell: "#VALUE!", says: "keep: is missing; give the least length of an end worth keeping" },
  },
  examples: [
    {
      given: {
        pieces: [
          ["label", "length"],
          ["tread", 40],
        ],
        stock: [
          ["label", "length", "price", "width", "thickness"],
          ["oak 8 ft", 96, 24.5, 11.25, 1],
        ],
        keep: 12,
      },
      gives: [
        ["length", "price", "available", "owned", "label", "grade", "width", "thickness", "value"],
        [55.875, 0, 1, "yes", "offcut of oak 8 ft", "", 11.25, 1, 14.26],
      ],
      from: "by hand: 96 - 40 - 1/8; 24.50 x 55.875 / 96 = 14.2597, 14.26 in cents",
    },
    {
      given: {
        pieces: [["label", "length", "width", "quantity"], ["shelf", 30, 20, 3]],
        stock: [["label", "length", "width", "price"], ["4 x 8", 96, 48, 64]],
        keep: "24 x 5",
        first: "rip",
      },
      gives: [
        ["length", "price", "available", "owned", "label", "grade", "width", "thickness", "value"],
        [96, 0, 1, "yes", "offcut of 4 x 8", "", 27.875, "", 37.17],
      ],
      from: "by hand: three of 30 in one strip, 5 5/8 left at its end; 48 - 20 - 1/8 beside it; 64 x 27.875 / 48 = 37.1667",
    },
    {
      given: {
        pieces: [["label", "length", "width", "quantity"], ["shelf", 30, 20, 3]],
        stock: [["label", "length", "width", "price"], ["4 x 8", 96, 48, 64]],
        keep: 5,
        first: "rip",
        headings: false,
      },
      gives: [
        [96, 0, 1, "yes", "offcut of 4 x 8", "", 27.875, "", 37.17],
        [5.625, 0, 1, "yes", "offcut of 4 x 8", "", 20, "", 1.56],
      ],
      from: "by hand: the end of the strip is 5 5/8 x 20, more than 5 both ways; 64 x 5.625 x 20 / (96 x 48) = 1.5625",
    },
    {
      given: {
        pieces: [[48, 4]],
        stock: [
          ["length", "price"],
          [96, 24.5],
        ],
        kerf: 0,
        keep: 12,
        headings: false,
      },
      gives: [[12, 0, 0, "yes", "no end is long enough", "", "", "", 0]],
      from: "by hand: two of 48 use up a stick of 96",
    },
    {
      given: {
        pieces: [["label", "length", "width", "grade"], ["riser", 40, 7.25, "FAS"]],
        stock: [["label", "length", "width", "thickness", "grade", "board foot price"], ["7", 96, 7.5, "4/4", "FAS", 6]],
        keep: 24,
      },
      gives: [
        ["length", "price", "available", "owned", "label", "grade", "width", "thickness", "value"],
        [55.875, 0, 1, "yes", "offcut of 7", "FAS", 7.25, 0.8125, 16.88],
      ],
      from:
        "by hand: 96 - 40 - 1/8, as wide as its strip; 5 board feet at 6.00; 30.00 x 55.875 x 7 1/4 / (96 x 7 1/2) = " +
        "16.8789; 4/4 dresses to 13/16 (hardwood thickness table)",
    },
    {
      given: {
        pieces: [["label", "length", "width"], ["riser", 40, 5]],
        stock: [["label", "length", "width", "thickness", "board foot price"], ["7", 96, 7.5, "4/4", 6]],
        keep: "24 x 2",
        first: "rip",
        headings: false,
      },
      gives: [
        [55.875, 0, 1, "yes", "offcut of 7", "", 5, 0.8125, 11.64],
        [96, 0, 1, "yes", "offcut of 7", "", 2.375, 0.8125, 9.5],
      ],
      from:
        "by hand: 96 - 40 - 1/8 of the strip 5 wide, and 7 1/2 - 5 - 1/8 beside it, wider than 2; 5 board feet at 6.00; " +
        "30.00 x 55.875 x 5 / (96 x 7 1/2) = 11.6406, 30.00 x 2.375 / 7 1/2 = 9.50",
    },
    {
      given: { pieces: [[40]], stock: [[96, 24.5]] },
      fails: "#VALUE!",
      says: "keep: is missing; give the least length of an end worth keeping",
      from: "by hand: only the shop knows what is worth the rack",
    },
  ],
  source:
    "The ends left over in the plan that CUTS shows; their value by length, as sticks are sold. Of the plan that SHEETCUTS " +
    "shows, the end of " +
    "each strip and what is uncut beside the last one; their value by area.",
  solve: (given) => {
    const wood = plannedWood(given);
    if (isFailed(wood) || isProblem(wood)) return wood;
    if (wood.of === "boards") {
      const kept = keptEnds(wood.job, wood.plan);
      if (isProblem(kept)) return kept;
      return kept.length === 0
        ? [{ ...OWNED, ...noneKept(given.keep, wood.job.boards[0]) }]
        : kept.map(({ length, width, value, board, from: { row } }) => ({
            ...OWNED, length, width, value, available: 1, grade: row.grade, thickness: dressed(row) ?? row.thickness,
            label: `offcut of ${namedBoard(row.label, board)}`,
          }));
    }
    const keep = wood.of === "sheets" || given.keep === undefined ? given.keep : { length: given.keep.length };
    const ends = wood.of === "sheets" ? sheetOffcuts(wood.job, wood.plan) : offcuts(wood.job, wood.plan);
    if (isProblem(ends)) return ends;
    return (ends.length === 0 ? [noneKept(keep, wood.job.stock[0])] : ends).map((end) => ({ ...OWNED, ...end }));
  },
});
