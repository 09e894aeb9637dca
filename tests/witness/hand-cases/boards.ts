import type { WorkedCase } from "../case-kind";

const BOARD = ["label", "length", "width", "thickness", "price"] as const;

/** Three ways of cutting cost three amounts: PLAN has the figures, here the boards that are cut. */
const OWN_WAY = {
  pieces: [["label", "length", "width", "quantity"], ["riser", 40, 7.25, 3], ["skirt", 72, 4, 1], ["block", 20, 3, 2]],
  tally: [BOARD, ["A", 84, 12, "4/4", 60], ["B", 60, 8, "4/4", 30], ["C", 72, 8, "4/4", 40], ["D", 60, 12, "4/4", 52]],
} as const;

export const boardCases: Readonly<Record<string, readonly WorkedCase[]>> = {
  PLAN: [
    {
      given: { pieces: OWN_WAY.pieces, stock: OWN_WAY.tally.map((row, at) => [...row, at === 0 ? "edge" : 0]), keep: 100, headings: false },
      keeps: (rows) =>
        [
          ["cost", 100], ["boards", 2], ["lowest possible cost", 100], ["most still to save", 0], ["board feet", 11],
          ["from a better grade", 0], ["boards left", 2], ["offcuts kept", 0], ["offcut length", 0],
        ].every(([label, value]) => rows.some((row) => row[0] === label && row[1] === value)) &&
        rows.some(([label, value]) => label === "yield" && Math.abs(Number(value) - 1278 / 1584) < 1e-9) &&
        rows.some(([label, value]) =>
          label === "note" &&
          /^no choice of boards costs less(: \d+ cheaper (choice was|choices were each) shown too small)?$/.test(String(value))),
      from: "an exhaustive table over counts; by hand (3 x 40 x 7 1/4 + 72 x 4 + 2 x 20 x 3) / (84 x 12 + 72 x 8) = 1278 / 1584; 7 + 4",
    },
  ],
  TALLYCUTS: [
    {
      given: { ...OWN_WAY, headings: false },
      gives: [
        ["A", "", "rip", 1, 0, 0, "riser", 40, 7.25, 3.75],
        ["A", "", "rip", 1, 40.125, 0, "riser", 40, 7.25, 3.75],
        ["A", "", "rip", 2, 0, 7.375, "skirt", 72, 4, 11.875],
        ["C", "", "crosscut", 1, 0, 0, "riser", 40, 7.25, 0.625],
        ["C", "", "crosscut", 2, 40.125, 0, "block", 20, 3, 1.75],
        ["C", "", "crosscut", 2, 40.125, 3.125, "block", 20, 3, 1.75],
      ],
      from: "an exhaustive table over counts: either 100.00 (A and C), rip 112.00, crosscut 130.00; by hand 84 - 2 x 40 1/8, 8 - 2 x 3 1/8",
    },
    {
      given: { ...OWN_WAY, first: "rip" },
      shows: [{ board: "A", first: "rip" }, { board: "D", first: "rip" }],
      from: "an exhaustive table over counts: rip first 112.00, A and D",
    },
    {
      given: { ...OWN_WAY, first: "crosscut" },
      keeps: ([, ...rows]) => rows.every((row) => row[2] === "crosscut") && new Set(rows.map(([board]) => board)).size === 3,
      from: "an exhaustive table over counts: crosscut first 130.00, three boards",
    },
    {
      given: {
        pieces: [["label", "length", "width", "quantity"], ["riser", 40, 7.25, 3], ["skirt", 64, 9.25, 1]],
        tally: [
          ["label", "length", "width", "thickness", "price", "edge", "defects"],
          ["A", 84, 8.5, "4/4", 32.72, 0.25, ""], ["B", 144, 8.5, "4/4", 56.1, 0.25, ""], ["C", 132, 8, "4/4", 48.4, 0.25, "24 to 28"],
          ["D", 120, 9.5, "4/4", 52.25, 0.25, "84 to 90"],
        ],
        trim: 0.5,
        first: "rip",
        headings: false,
      },
      gives: [
        ["B", "", "rip", 1, 0.5, 0.125, "riser", 40, 7.25, 22.625],
        ["B", "", "rip", 1, 40.625, 0.125, "riser", 40, 7.25, 22.625],
        ["B", "", "rip", 1, 80.75, 0.125, "riser", 40, 7.25, 22.625],
        ["D", "", "rip", 1, 0.5, 0.125, "skirt", 64, 9.25, 19.375],
      ],
      from: "by hand: 143 - 3 x 40 1/8; D is clear to 84, 83 1/2 - 64 1/8 holds no riser; half of 1/4 across",
    },
    {
      given: {
        pieces: [["label", "length", "width", "quantity"], ["step", 42, 5.5, 4]],
        tally: [BOARD, ["A", 96, 11, "4/4", 60], ["B", 96, 11.125, "4/4", 63], ["C", 96, 11, "4/4", 60]],
        kerf: "3/16",
      },
      shows: [{ board: "A", strip: 1, along: 42.1875, across: 0 }, { board: "C" }],
      from: "by hand: two of 5 1/2 and 3/16 are more than 11 1/8, so one across, two to a board, 120.00; 42 + 3/16",
    },
    {
      given: {
        pieces: [
          ["item", "length", "width", "quantity", "grade", "also from"],
          ["nosing", 46, 5.5, 1, "FAS", ""], ["riser", 40, 5.5, 4, "1C", "FAS"], ["cleat", 26, 5.5, 1, "1C", "FAS"],
        ],
        tally: [
          [...BOARD, "grade"], ["A", 144, 6, "4/4", 50.4, "FAS"], ["B", 120, 6, "4/4", 28, "1C"], ["C", 144, 6, "4/4", 50.4, "FAS"],
          ["D", 96, 6, "4/4", 22.4, "1C"], ["E", 144, 6, "4/4", 33.6, "1C"],
        ],
        headings: false,
      },
      gives: [
        ["A", "FAS", "rip", 1, 0, 0, "nosing", 46, 5.5, 17.625],
        ["A", "FAS", "rip", 1, 46.125, 0, "riser", 40, 5.5, 17.625],
        ["A", "FAS", "rip", 1, 86.25, 0, "riser", 40, 5.5, 17.625],
        ["B", "1C", "rip", 1, 0, 0, "riser", 40, 5.5, 13.625],
        ["B", "1C", "rip", 1, 40.125, 0, "riser", 40, 5.5, 13.625],
        ["B", "1C", "rip", 1, 80.25, 0, "cleat", 26, 5.5, 13.625],
      ],
      from: "by hand: 144 - 46 - 2 x 40 - 3/8 = 17 5/8; 120 - 2 x 40 - 26 - 3/8 = 13 5/8; 50.40 + 28.00",
    },
    {
      given: {
        pieces: [["step", "length", "depth", "height", "thickness", "species"], [1, 40, 10, "", 1, "oak"], [2, 36, "", 7, 0.75, "ash"]],
        tally: [
          [...BOARD, "species"], ["thin", 96, 11, "4/4", 40, "oak"], ["thick", 96, 11, "5/4", 60, "oak"], ["ash", 96, 12, "5/4", 30, "ash"],
        ],
        headings: false,
      },
      gives: [["thick", "", "rip", 1, 0, 0, 1, 40, 10, 55.875], ["ash", "", "rip", 1, 0, 0, 2, 36, 7, 59.875]],
      from: "by hand: 4/4 dresses to 13/16, 5/4 to 1 1/16; 96 - 40 1/8, 96 - 36 1/8",
    },
    {
      given: {
        pieces: [["label", "length", "width"], ["rail", 30, 3.9], ["seat", 20, 13], ["stop", 9, 3.5]],
        tally: [BOARD, ["A", 60, 4, "4/4", 10], ["B", 30, 14, "4/4", 30]],
        keep: 20,
        first: "rip",
      },
      shows: [{ board: "B", label: "stop", along: 20.125 }],
      from:
        "by hand: the stop behind the seat leaves A 29 7/8 long and 3.9 wide; behind the rail it leaves B 9 7/8 x 13, more by area but " +
        "shorter than the 20 kept",
    },
    {
      given: {
        pieces: [["label", "length", "width"], ["rail", 30, 3.9], ["seat", 20, 13], ["stop", 9, 3.5]],
        tally: [BOARD, ["A", 60, 4, "4/4", 10], ["B", 30, 14, "4/4", 30]],
        first: "rip",
      },
      shows: [{ board: "A", label: "stop", along: 30.125 }],
      from: "by hand: the end of B is 9 7/8 x 13 = 128 square inches, that of A would be 29 7/8 x 3.9 = 117",
    },
  ],
};
