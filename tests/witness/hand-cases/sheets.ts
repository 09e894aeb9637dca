import type { WorkedCase } from "../case-kind";

const MIXED = [["label", "length", "width", "quantity"], ["riser", 40, 7.25, 3], ["skirt", 72, 4, 1], ["block", 20, 3, 2]];
const WIDE = [
  ["label", "length", "width", "price", "available"],
  ["A", 84, 12, 60, 1],
  ["B", 60, 8, 30, 1],
  ["C", 72, 8, 40, 1],
  ["D", 60, 12, 52, 1],
];

export const sheetCases: Readonly<Record<string, readonly WorkedCase[]>> = {
  SHEETCUTS: [
    {
      given: { pieces: MIXED, stock: WIDE },
      shows: [
        { stock: "A", first: "rip", strip: 2, along: 0, across: 7.375, label: "skirt", length: 72, width: 4, leftOver: 11.875 },
        { stock: "C", first: "crosscut", strip: 1, along: 0, across: 0, label: "riser", leftOver: 0.625 },
        { sheet: 2, first: "crosscut", strip: 2, along: 40.125, across: 3.125, label: "block", leftOver: 1.75 },
      ],
      from:
        "by hand: A ripped, 7 1/4 + 1/8 + 4 of 12, 84 - 72 - 1/8; C crosscut, 8 - 7 1/4 - 1/8, 40 1/8 to the blocks, 8 - 3 - 1/8 " +
        "- 3 - 1/8; " +
        "100 in all, the least of every way to lay seven pieces on four boards",
    },
    {
      given: { pieces: [["length", "width"], [30, 20]], stock: [["length", "width", "price"], [96, 48, 62]], trim: 0.25, keep: 24 },
      gives: [
        ["sheet", "stock", "first", "strip", "along", "across", "label", "length", "width", "turned", "left over"],
        [1, 96, "crosscut", 1, 0.25, 0.25, "", 30, 20, "", 27.375],
      ],
      from:
        "by hand: ripped first 95 1/2 x 27 3/8 is left beside the strip; crosscut first 65 3/8 x 47 1/2, more; the strip ends 47 " +
        "1/2 - 20 - " +
        "1/8",
    },
    {
      given: { pieces: MIXED, stock: WIDE, first: "crosscut" },
      shows: [{ sheet: 1, first: "crosscut" }, { sheet: 2, first: "crosscut" }, { sheet: 3, first: "crosscut" }],
      from: "by hand: crosscut first costs 130, as 60 + 30 + 40, by every way to lay seven pieces on four boards",
    },
  ],
};
