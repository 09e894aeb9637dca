import { RISERFIT } from "../../functions/fit/riserfit";
import { pieces, riserReadings, stock } from "../../functions/tables";
import { BUY } from "../../functions/yield/buy";
import { CUTS } from "../../functions/yield/cuts";
import { OFFCUTS } from "../../functions/yield/offcuts";
import { PLAN } from "../../functions/yield/plan";
import { headingsOf, spillOf } from "../result-looks";
import { DECIMALS, MONEY, sheet, SIXTEENTHS, THOUSANDTHS, TYPED_LENGTH } from "../sheet-builder";

/**
 * Readings of the invented stair's risers with the sub-treads packed: step, height, top, bottom, both diagonals. The height is the rough
 * rise once packed, the first less and the last more by what tread and floors differ.
 */
const RISERS: readonly (readonly [number, string, string, string, string, string])[] = [
  [1, "7 5/16", "36 9/16", "36 3/4", "37 5/16", "37 7/16"],
  [2, "7 9/16", "36 5/8", "36 7/8", "37 7/16", "37 9/16"],
  [3, "7 9/16", "36 1/2", "36 11/16", "37 1/4", "37 1/2"],
  [4, "7 9/16", "36 11/16", "36 7/8", "37 7/16", "37 5/8"],
  [5, "7 9/16", "36 5/8", "36 13/16", "37 3/8", "37 9/16"],
  [6, "7 9/16", "36 9/16", "36 13/16", "37 3/8", "37 9/16"],
  [7, "7 9/16", "36 5/8", "36 13/16", "37 3/8", "37 9/16"],
  [8, "7 9/16", "36 3/4", "36 15/16", "37 1/2", "37 11/16"],
  [9, "7 9/16", "36 5/8", "36 7/8", "37 7/16", "37 5/8"],
  [10, "7 9/16", "36 1/2", "36 11/16", "37 1/4", "37 1/2"],
  [11, "7 9/16", "36 11/16", "36 15/16", "37 1/2", "37 11/16"],
  [12, "7 9/16", "36 9/16", "36 3/4", "37 5/16", "37 1/2"],
  [13, "7 9/16", "36 5/8", "36 3/4", "37 5/16", "37 9/16"],
  [14, "7 13/16", "36 9/16", "36 3/4", "37 3/8", "37 9/16"],
];

const READINGS = headingsOf(riserReadings, "step", "height", "top", "bottom", "diagonal", "secondDiagonal", "cutHeight", "leftFlare");

/** How high each is cut, from the rise it stands in; it spills beside the readings. */
const CUT_HEIGHT = "=STAIR.RISERHEIGHT(Survey!S5#,Layout!B9,Layout!B18,C23)";

/** Flare of the invented wall skirt, its angle in plan, in degrees. */
const FLARE = -1.1;

export const cutPlan = sheet(
  "Cut plan",
  "Cut plan: risers, skirts and rail",
  "Type riser readings and the boards to be had; out come what to buy, each stick in cutting order, what is left of it, and how " +
    "good the plan is.",
  [
    {
      at: "A4",
      headings: true,
      inputs: [1, 2, 3, 4, 5, 7],
      formats: { 1: TYPED_LENGTH, 2: TYPED_LENGTH, 3: TYPED_LENGTH, 4: TYPED_LENGTH, 5: TYPED_LENGTH },
      rows: [READINGS, ...RISERS.map((row, step) => [...row, step === 0 ? CUT_HEIGHT : null, FLARE])],
    },
    {
      at: "A21",
      headings: true,
      labels: true,
      inputs: [0, 1, 2, 3, 4, 5, 6, 7],
      formats: { 1: TYPED_LENGTH, 2: TYPED_LENGTH, 3: TYPED_LENGTH, 4: MONEY },
      rows: [
        headingsOf(stock, "label", "length", "width", "thickness", "price", "available", "owned", "grade"),
        ["rack 5 ft", "5'", "7 1/4", "3/4", "", 1, "yes", ""],
        ["poplar 8 ft", "8'", "7 1/4", "3/4", 18, "any", "no", ""],
        ["poplar 10 ft", "10'", "7 1/4", "3/4", 22.4, 2, "no", ""],
        ["poplar 16 ft", "16'", "7 1/4", "3/4", 38, "any", "no", ""],
        ["skirt 12 ft", "12'", "11 1/4", "3/4", 62, "any", "no", "skirt"],
        ["skirt 16 ft", "16'", "11 1/4", "3/4", 88, "any", "no", "skirt"],
        ["rail 12 ft", "12'", "2 1/4", "2 1/2", 81, "any", "no", "rail"],
        ["rail 14 ft", "14'", "2 1/4", "2 1/2", 96, "any", "no", "rail"],
        ["rail 16 ft", "16'", "2 1/4", "2 1/2", 112, "any", "no", "rail"],
      ],
    },
    {
      at: "A33",
      labels: true,
      inputs: [1],
      formats: { 1: TYPED_LENGTH },
      rows: [
        ["kerf", "1/8"],
        ["trim", "1/4"],
        ["keep", "12"],
      ],
    },
    {
      at: "D33",
      headings: true,
      labels: true,
      rows: [
        headingsOf(pieces, "label", "length", "width", "grade"),
        ["open skirt", '=STAIR.PICK(Layout!P4#,"open skirt length")', '=STAIR.PICK(Layout!P4#,"open skirt width")', "skirt"],
        ["closed skirt", '=STAIR.PICK(Layout!P4#,"closed skirt length")', '=STAIR.PICK(Layout!P4#,"closed skirt width")', "skirt"],
        ["rail", '=STAIR.PICK(Layout!P12#,"rail length")', "=C28", "rail"],
      ],
      formats: { 1: SIXTEENTHS, 2: SIXTEENTHS },
    },
    { at: "J4", rows: [["=STAIR.RISERFIT(A4:H18,Layout!B14,Layout!B17,Layout!B10)"]] },
    { at: "J21", style: "label", rows: [["Risers: what to buy"]] },
    { at: "J22", rows: [["=STAIR.BUY(J4#,A21:H30,B33,B34,B35)"]] },
    { at: "J27", rows: [["=STAIR.PLAN(J4#,A21:H30,B33,B34,B35)"]] },
    { at: "R21", style: "label", rows: [["Skirts and rail: what to buy"]] },
    { at: "R22", rows: [["=STAIR.BUY(D33:G36,A21:H30,B33,B34,B35)"]] },
    { at: "R27", rows: [["=STAIR.PLAN(D33:G36,A21:H30,B33,B34,B35)"]] },
    { at: "J37", style: "label", rows: [["Risers, stick by stick"]] },
    { at: "J38", rows: [["=STAIR.CUTS(J4#,A21:H30,B33,B34,B35)"]] },
    { at: "A38", style: "label", rows: [["Ends of skirts and rail worth the rack"]] },
    { at: "A39", rows: [["=STAIR.OFFCUTS(D33:G36,A21:H30,B33,B34,B35)"]] },
    { at: "R37", style: "label", rows: [["Skirts and rail, stick by stick"]] },
    { at: "R38", rows: [["=STAIR.CUTS(D33:G36,A21:H30,B33,B34,B35)"]] },
  ],
  [
    { at: "G5", rows: 14, formats: { 0: SIXTEENTHS } },
    ...spillOf(RISERFIT, "J4", 14, { closure: THOUSANDTHS }),
    ...["J", "R"].flatMap((column) => [
      ...spillOf(BUY, `${column}22`, 3, { net: DECIMALS, gross: DECIMALS }),
      ...spillOf(PLAN, `${column}27`, 8),
    ]),
    ...spillOf(CUTS, "J38", 14),
    ...spillOf(CUTS, "R38", 3),
    ...spillOf(OFFCUTS, "A39", 3),
  ],
  {
    A: 110,
    B: 80,
    C: 80,
    D: 110,
    E: 150,
    F: 140,
    G: 90,
    H: 90,
    J: 160,
    K: 90,
    L: 90,
    M: 100,
    N: 90,
    O: 80,
    P: 100,
    Q: 100,
    R: 160,
    S: 90,
    T: 90,
    U: 90,
    V: 200,
    W: 150,
  },
);
