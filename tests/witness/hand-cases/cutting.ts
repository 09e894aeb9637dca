import type { Rows, WorkedCase } from "../case-kind";

/** As many pieces of as many lengths, from three lengths, as the work of one cell does not prove. Invented. */
const MANY_PIECES = Array.from({ length: 60 }, (_, place) => [10 + ((place * 29) % 61) + (place % 8) / 8, 20 + (place % 7)]);

const valueOf = (rows: Rows, label: string): unknown => rows.find(([found]) => found === label)?.[1];

export const cuttingCases: Readonly<Record<string, readonly WorkedCase[]>> = {
  CUTS: [
    {
      given: { pieces: [[14], [13], [11], [4, 2]], stock: [["length", "price"], [20, 9]], kerf: 0, keep: 10 },
      shows: [{ stick: 1, length: 11, leftOver: 1 }],
      from:
        "by hand: three sticks hold 14 4, 13 4, 11 or 14, 13 4, 11 4 or 14 4, 13, 11 4 or 14, 13, 11 4 4; no end is 10, so the one whose " +
        "first stick is fullest; kept from any length on, 14 4, 13 4, 11 has the largest end, 9",
    },
    {
      given: {
        pieces: [
          ["label", "length", "grade"],
          ["tread", 40, "clear"],
          ["cleat", 20, "common"],
        ],
        stock: [
          ["label", "length", "price", "grade"],
          ["clear 48", 48, 30, "clear"],
          ["common 96", 96, 20, "common"],
        ],
      },
      shows: [
        { stock: "clear 48", label: "tread" },
        { stock: "common 96", label: "cleat" },
      ],
      from:
        "by hand: the tread is cut from clear stock alone, though the common board would hold both " +
        "at 20; the cleat does not fit beside it",
    },
    {
      given: {
        pieces: [
          ["step", "length"],
          [7, 40],
        ],
        stock: [
          ["length", "price"],
          [48, 10],
        ],
        headings: false,
      },
      gives: [[1, 48, 0, 7, 40, 7.875]],
      from: "by hand: the step serves as label; 48 - 40 - 1/8",
    },
    {
      given: {
        pieces: [
          ["item", "step", "length"],
          ["tread", 7, 40],
        ],
        stock: [
          ["length", "price"],
          [48, 10],
        ],
      },
      shows: [{ label: "tread", length: 40 }],
      from: "by hand: the item serves as label before the step does",
    },
    {
      given: {
        pieces: [
          ["label", "length", "width", "thickness"],
          ["skirt", 40, 9, 1],
        ],
        stock: [
          ["label", "length", "price", "width", "thickness"],
          ["thin", 48, 15, 11.25, 0.75],
          ["thick", 48, 20, 9.25, 1],
        ],
      },
      shows: [{ stock: "thick", label: "skirt" }],
      from: "by hand: 3/4 is under 1",
    },
    {
      given: {
        pieces: [
          ["label", "length", "width"],
          ["rail", 40, 3],
        ],
        stock: [
          ["label", "length", "price", "width"],
          ["narrow", 48, 10, 3.5],
          ["wide", 48, 20, 9.25],
        ],
      },
      shows: [{ stock: "narrow", label: "rail" }],
      from: "by hand: both hold it, at 10 and 20",
    },
    {
      given: {
        pieces: [
          ["label", "length", "depth"],
          ["tread", 40, 11],
        ],
        stock: [
          ["label", "length", "price", "width"],
          ["narrow", 48, 10, 9.25],
          ["wide", 48, 20, 11.25],
        ],
      },
      shows: [{ stock: "wide", label: "tread" }],
      from: "by hand: a tread's depth is its width; 9 1/4 is under 11",
    },
    {
      given: {
        pieces: [
          ["label", "length", "height"],
          ["riser", 40, 7],
        ],
        stock: [
          ["label", "length", "price", "width"],
          ["narrow", 48, 10, 5.5],
          ["wide", 48, 20, 7.25],
        ],
      },
      shows: [{ stock: "wide", label: "riser" }],
      from: "by hand: a riser's height is its width; 5 1/2 is under 7",
    },
    {
      given: {
        pieces: [
          ["label", "length", "quantity"],
          ["tread", 40, 3],
        ],
        stock: [
          ["label", "length", "price", "available"],
          ["short", 48, 5, 1],
          ["long", 96, 20, "any"],
        ],
      },
      shows: [{ stock: "short" }, { stock: "long" }],
      from: "by hand: there is one short stick, so two come from a long one: 25, where three short ones would be 15",
    },
  ],
  PLAN: [
    {
      given: {
        pieces: [["length"], [48], [47], [60]],
        stock: [
          ["length", "price"],
          [96, 10],
        ],
        keep: 12,
      },
      shows: [
        { label: "cost", value: 20 },
        { label: "sticks", value: 2 },
        { label: "yield", value: 0.807291666667 },
        { label: "offcuts kept", value: 1 },
        { label: "offcut length", value: 35.875 },
      ],
      from: "by hand: 48 + 1/8 + 47 fill one stick but for 3/4 with its kerf; 96 - 60 - 1/8 is kept; 155 / 192",
    },
    {
      given: {
        pieces: [[90, 3]],
        stock: [
          ["length", "price"],
          [96, 10.001],
        ],
      },
      shows: [
        { label: "cost", value: 30 },
        { label: "lowest possible cost", value: 30.003 },
      ],
      from:
        "by hand: one piece to a stick, 3 x 10.001 = 30.003, which is 30.00 in cents; what is " +
        "proven is proven of the prices as they stand",
    },
    {
      given: {
        pieces: MANY_PIECES,
        stock: [
          ["length", "price"],
          [96, 2.92],
          [120, 3.67],
          [144, 4.4],
        ],
      },
      keeps: (rows) => {
        const [cost, lowest, most] = ["cost", "lowest possible cost", "most still to save"].map((label) => Number(valueOf(rows, label)));
        if (cost === undefined || lowest === undefined || most === undefined) return false;
        const [, said = "0"] =
          /^not proven: at most ([\d.]+) % of the cost could still be saved$/.exec(String(valueOf(rows, "verdict"))) ?? [];
        return (
          most > 0 && Math.abs(cost * (1 - most) - lowest) < 1e-9 * cost && Number(said) >= most * 100 && Number(said) < most * 100 + 0.01
        );
      },
      from:
        "law: what could be saved at most is the share of the cost above the lowest possible one, and the verdict says it in " +
        "percent, rounded up",
    },
  ],
  OFFCUTS: [
    {
      given: {
        pieces: [
          ["label", "length", "grade"],
          ["tread", 40, "clear"],
        ],
        stock: [
          ["label", "length", "price", "grade", "width", "thickness"],
          ["oak 8 ft", 96, 24.5, "clear", 11.25, 1],
        ],
        keep: 12,
        headings: false,
      },
      gives: [[55.875, 0, 1, "yes", "offcut of oak 8 ft", "clear", 11.25, 1, 14.26]],
      from: "by hand: 96 - 40 - 1/8, of the board's own grade; 24.50 x 55.875 / 96 = 14.2597",
    },
  ],
};
