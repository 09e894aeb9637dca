import { BID } from "../../functions/bid/bid";
import { EXTEND } from "../../functions/bid/extend";
import { prices, quantities, rates } from "../../functions/tables";
import { HOURS } from "../../functions/takeoff/hours";
import { TAKEOFF } from "../../functions/takeoff/takeoff";
import { headingsOf, spillOf } from "../result-looks";
import { DECIMALS, MONEY, PERCENT, sheet, TYPED_LENGTH } from "../sheet-builder";

/**
 * Hours for one of each item, what one costs, and the unit of both: an invented shop. 0 is work or goods included elsewhere, and the sheet
 * says so in that word.
 */
const ITEMS: readonly (readonly [item: string, hours: number, price: number, unit: string])[] = [
  ["tread without return", 0.45, 0, "each"],
  ["tread with one return", 0.45, 0, "each"],
  ["tread with two returns", 0.45, 0, "each"],
  ["landing nosing", 0.4, 0, "each"],
  ["riser", 0.25, 0, "each"],
  ["open skirt", 1.5, 0, "each"],
  ["closed skirt", 2, 0, "each"],
  ["mitred return", 0.25, 6.75, "each"],
  ["run past riser", 0.05, 0, "each"],
  ["notch", 0.1, 0, "each"],
  ["scribed end", 0.15, 0, "each"],
  ["cove", 0.02, 1.15, "ft"],
  ["screws", 0, 0.11, "each"],
  ["nails", 0, 0.03, "each"],
  ["adhesive bead", 0, 0, "ft"],
  ["finish area", 0, 0, "sq ft"],
  ["protection sheets", 0.1, 14, "each"],
];

/** A 0 that is meant: a bare 0 would be noted in every row. */
const shown = (figure: number): string | number => (figure === 0 ? "included" : figure);

/** Rows a takeoff can have, with its headings. */
const TAKEOFF_ROWS = 16;

/** Where what is priced stands, and how many rows of it. */
const PRICED: readonly (readonly [at: string, rows: number, formats?: Readonly<Record<string, string>>])[] = [
  ["K25", TAKEOFF_ROWS - 1], ["E43", TAKEOFF_ROWS - 1, { quantity: DECIMALS }], ["K44", 6], ["K52", 4], ["K59", 4], ["E61", 2],
];

const extended = (at: string, quantities: string, prices = "O4:Q23"): { at: string; rows: string[][] } => ({
  at,
  rows: [[`=STAIR.EXTEND(${quantities},${prices})`]],
});

export const bid = sheet(
  "Bid",
  "Bid",
  "Type the shop's hours, prices and rates; out comes the bid: what the stair takes, its hours, and the blanks, boards, skirts " +
    "and rail from the sheets before it.",
  [
    {
      at: "A4",
      labels: true,
      inputs: [1],
      formats: { 1: PERCENT },
      rows: [
        ["overhead", 0.12],
        ["profit", 0.15],
        ["basis", "margin"],
        ["tax", 0.065],
      ],
    },
    { at: "A9", style: "label", rows: [["Adhesive: along each stringer and each tread's back"]] },
    {
      at: "A10",
      labels: true,
      inputs: [1],
      formats: { 1: TYPED_LENGTH },
      rows: [
        ["bead length", '=STAIR.PICK(E4#,"adhesive bead","quantity")&" "&STAIR.PICK(E4#,"adhesive bead","unit")'],
        ["bead diameter", "5/16"],
        ["cartridge", "10.1 fl oz"],
      ],
    },
    {
      at: "A15",
      headings: true,
      labels: true,
      inputs: [0, 1, 2],
      rows: [
        headingsOf(quantities, "item", "quantity", "unit"),
        ["adhesive", "=STAIR.ADHESIVE(B10,B11,B12)", "each"],
        ["hang rail", 3, "hour"],
      ],
    },
    { at: "A20", style: "label", rows: [["The bid"]] },
    { at: "A21", rows: [[`=STAIR.BID(VSTACK(${PRICED.map(([at]) => `${at}#`).join(",")}),B4,B5,B6,B7)`]] },
    {
      at: "A29",
      labels: true,
      formats: { 1: MONEY },
      rows: [["a spare blank, at the same profit", '=STAIR.SELLINGPRICE(STAIR.PICK(K44#,"oak blank 42","price"),B5,B6)']],
    },
    { at: "E3", style: "label", rows: [["What the stair takes"]] },
    { at: "E4", rows: [["=STAIR.TAKEOFF(Layout!D4#)"]] },
    { at: "K3", style: "label", rows: [["Hours for one"]] },
    {
      at: "K4",
      headings: true,
      labels: true,
      inputs: [1, 2],
      rows: [headingsOf(rates, "item", "hours", "unit"), ...ITEMS.map(([item, hours, , unit]) => [item, shown(hours), unit])],
    },
    { at: "O3", style: "label", rows: [["Prices"]] },
    {
      at: "O4",
      headings: true,
      labels: true,
      inputs: [1, 2],
      formats: { 1: MONEY },
      rows: [
        headingsOf(prices, "item", "price", "unit"),
        ...ITEMS.map(([item, , price, unit]) => [item, shown(price), unit]),
        ["adhesive", 8.4, "each"],
        ["labour", 58, "hour"],
      ],
    },
    { at: "E23", style: "label", rows: [["Hours"]] },
    { at: "E24", rows: [["=STAIR.HOURS(E4#,K4:M21)"]] },
    { at: "K24", style: "label", rows: [["What the stair takes, priced; what is included stands in Order or Cut plan"]] },
    extended("K25", "E4#"),
    { at: "E42", style: "label", rows: [["Hours, priced"]] },
    extended("E43", "E24#"),
    { at: "K43", style: "label", rows: [["Blanks, from Order; rows without a price are cut from sticks, and the bid names them"]] },
    extended("K44", "Order!A15#", "Order!A15#"),
    { at: "K51", style: "label", rows: [["Boards, from Cut plan"]] },
    extended("K52", "'Cut plan'!J22#", "'Cut plan'!J22#"),
    { at: "K58", style: "label", rows: [["Skirts and rail, from Cut plan"]] },
    extended("K59", "'Cut plan'!R22#", "'Cut plan'!R22#"),
    { at: "E60", style: "label", rows: [["Everything else, priced"]] },
    extended("E61", "A15:C17"),
  ],
  [
    ...spillOf(BID, "A21", 6),
    ...spillOf(TAKEOFF, "E4", TAKEOFF_ROWS - 1),
    ...spillOf(HOURS, "E24", TAKEOFF_ROWS - 1, { quantity: DECIMALS, hoursEach: DECIMALS }),
    ...PRICED.flatMap(([at, rows, formats]) => spillOf(EXTEND, at, rows, formats)),
  ],
  { A: 290, B: 100, C: 70, E: 180, F: 110, G: 60, H: 370, I: 120, J: 120, K: 190, L: 110, M: 70, N: 80, O: 180, P: 120, Q: 70 },
);
