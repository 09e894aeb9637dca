import type { Filling, PileFilling } from "../job/filling";

/**
 * Rough rises of the invented stair, sub-tread to sub-tread, from the bottom; they add up to 106 1/8. The stringers were dropped by tread
 * less floor, and the fifth sub-tread lies low: 1/2 apart, which one shim mends.
 */
const ROUGH_RISES = [7.3125, 7.5625, 7.5, 7.625, 7.25, 7.75, 7.6875, 7.5625, 7.625, 7.5625, 7.625, 7.625, 7.5625, 7.875];

const SIZES = {
  nosing: 1.25, "riser thickness": 0.75, overhang: 1.25, "return width": 1.25, "run past": 0.25, lap: 0.25, "skirt thickness": 0.75,
  "skirt shows": 2, "skirt foot": 3, "skirt head": 4, "stringer board": 11.25, headroom: 80, opening: 123, "floor thickness": 11.25,
  "handrail height": 36, guard: "yes", "guard height": 36, "open risers": "no",
};

/** Lean of the invented open skirt, in degrees; flare of the wall skirt, its angle in plan. */
const LEAN = -1.5;
const FLARE = -1.1;

/** Readings of the next five treads; the diagonals close within a 1/16 tape. */
const TREADS = [
  [1, 10, 36.75, 36.625, 38.1875, 37.875],
  [2, 10, 36.8125, 36.625, 38.125, 38],
  [3, 10, 36.6875, 36.5, 38.0625, 37.8125],
  [4, 10, 36.75, 36.6875, 38.1875, 37.9375],
  [5, 10, 36.875, 36.6875, 38.1875, 38],
].map((row) => [...row, LEAN]);

/**
 * Readings of the risers with 3/16 packed under the fifth sub-tread: step, height, top, bottom, both diagonals. The height is the rough
 * rise, of the fifth 3/16 more and of the sixth 3/16 less.
 */
const RISERS = [
  [1, 7.3125, 36.5625, 36.75, 37.3125, 37.4375],
  [2, 7.5625, 36.625, 36.875, 37.4375, 37.5625],
  [3, 7.5, 36.5, 36.6875, 37.25, 37.5],
  [4, 7.625, 36.6875, 36.875, 37.4375, 37.625],
  [5, 7.4375, 36.625, 36.8125, 37.375, 37.5625],
  [6, 7.5625, 36.5625, 36.8125, 37.375, 37.5625],
  [7, 7.6875, 36.625, 36.8125, 37.375, 37.625],
  [8, 7.5625, 36.75, 36.9375, 37.5, 37.6875],
  [9, 7.625, 36.625, 36.875, 37.4375, 37.625],
  [10, 7.5625, 36.5, 36.6875, 37.25, 37.5],
  [11, 7.625, 36.6875, 36.9375, 37.5, 37.6875],
  [12, 7.625, 36.5625, 36.75, 37.3125, 37.5],
  [13, 7.5625, 36.625, 36.75, 37.3125, 37.5625],
  [14, 7.875, 36.5625, 36.75, 37.375, 37.5625],
].map((row) => [...row, FLARE]);

/**
 * Hours for one of each item, what one costs, and the unit of both: an invented shop. What is work or goods included elsewhere says so in
 * that word, since a bare 0 would be noted in every row.
 */
const ITEMS = [
  ["tread without return", 0.45, "included", "each"],
  ["tread with one return", 0.45, "included", "each"],
  ["tread with two returns", 0.45, "included", "each"],
  ["landing nosing", 0.4, "included", "each"],
  ["riser", 0.25, "included", "each"],
  ["open skirt", 1.5, "included", "each"],
  ["closed skirt", 2, "included", "each"],
  ["mitred return", 0.25, 6.75, "each"],
  ["run past riser", 0.05, "included", "each"],
  ["notch", 0.1, "included", "each"],
  ["scribed end", 0.15, "included", "each"],
  ["cove", 0.02, 1.15, "ft"],
  ["screws", "included", 0.11, "each"],
  ["nails", "included", 0.03, "each"],
  ["adhesive bead", "included", "included", "ft"],
  ["finish area", "included", "included", "sq ft"],
  ["protection sheets", 0.1, 14, "each"],
  ["adhesive", "included", 8.4, "each"],
  ["labour", "included", 58, "hour"],
];

/**
 * Alternates of the invented job: item, cost, kind, option, hours. Of one riser more a blank 54, a return 6.75, 4 ft of cove 4.60,
 * fasteners 0.62, riser boards 13.60 and a rail 16 dearer; 1.2 h at 58.
 */
const ALTERNATES = [
  ["white oak instead of red", 236.8, "material", "white oak", ""],
  ["a tread, a riser, a longer rail", 95.57, "material", "15 risers", ""],
  ["fitting them", 69.6, "labour", "15 risers", 1.2],
];

/** Date, job, item, quantity, unit, cost, kind, to, invoice, of, share. */
const MOVE_COLUMNS = 11;

/** The name of the job in the moves of the shop. */
const OAK = "Oak stair";

/**
 * The moves of an invented March 2026 and of 2 April; 46081 is 2026-02-28. A blank spoiled and bought again dear, its freight late; a
 * board too many, of which one is sent back and one goes to the rack; an end of a skirt kept at its share; returns cut from strips on hand.
 */
const MOVES = [
  [46081, "", "strip 8 ft", 2, "each", 22, "opening"],
  [46081, "", "screws", 200, "each", 22, "opening"],
  [46081, "", "nails", 500, "each", 15, "opening"],
  [46083, OAK, "oak blank 42", 13, "each", 708.5, "purchase", "", "A-101"],
  [46083, OAK, "oak nosing 48", 1, "each", 19.5, "purchase", "", "A-101"],
  [46083, OAK, "skirt 16 ft", 2, "each", 176, "purchase", "", "A-101"],
  [46083, OAK, "rail 14 ft", 1, "each", 96, "purchase", "", "A-101"],
  [46083, "", "", "", "", 40, "freight", "", "A-101"],
  [46083, "", "", "", "", 1040, "invoice total", "", "A-101"],
  [46084, "", "poplar 16 ft", 4, "each", 152, "purchase", "", "B-7"],
  [46084, OAK, "poplar 10 ft", 1, "each", 21.5, "purchase", "", "B-7"],
  [46084, OAK, "poplar 16 ft", 3, "each", "", "issue"],
  [46085, OAK, "screws", 52, "each", "", "issue"],
  [46085, OAK, "nails", 84, "each", "", "issue"],
  [46085, OAK, "strip 8 ft", 2, "each", "", "issue"],
  [46086, OAK, "cove", 52, "ft", 59.8, "purchase", "", "C-12"],
  [46086, OAK, "adhesive", 5, "each", 42, "purchase", "", "C-12"],
  [46086, OAK, "protection sheets", 3, "each", 42, "purchase", "", "C-12"],
  [46087, "Ash hall", "screws", 60, "each", "", "issue"],
  [46090, OAK, "oak blank 42", 1, "each", "", "scrap"],
  [46091, OAK, "oak blank 42", 1, "each", 61, "purchase", "", "D-3"],
  [46093, "", "poplar 16 ft", 1, "each", 38, "return", "", "B-7"],
  [46094, OAK, "poplar 16 ft", 1, "each", "", "transfer", "rack"],
  [46094, OAK, "skirt end 24 in", 1, "each", "", "offcut", "rack", "", "skirt 16 ft", 0.125],
  [46099, "shop", "sandpaper", 2, "box", 18, "purchase", "", "E-5"],
  [46112, "", "poplar 16 ft", 1, "each", "", "count"],
  [46112, "", "screws", 80, "each", "", "count"],
  [46114, "", "", "", "", 12, "freight", "", "D-3"],
].map((row) => Array.from({ length: MOVE_COLUMNS }, (_, place) => row[place] ?? ""));

/** Boards of an invented pile: label, length, width, thickness, grade, price of a board foot, owned, defects, edge. */
const board = (
  label: number, length: number, width: number, thickness: string, grade: string, defects = "",
): PileFilling["treadBoards"][number] =>
  [label, length, width, thickness, grade, PRICES[`${thickness} ${grade}`] ?? "", "no", defects, 0.25];

/** Of a board foot, invented. */
const PRICES: Readonly<Record<string, number>> = { "5/4 FAS": 7.8, "4/4 FAS": 9.2, "4/4 1C": 6.4 };

const PILE: PileFilling = {
  treadBoards: [
    board(1, 122, 8.5, "5/4", "FAS"),
    board(2, 120, 9.25, "5/4", "FAS"),
    board(3, 121, 7.75, "5/4", "FAS"),
    board(4, 144, 8, "5/4", "FAS"),
    board(5, 161, 9, "5/4", "FAS"),
    board(6, 124, 10.5, "5/4", "FAS"),
    board(7, 98, 7.25, "5/4", "FAS", "30 to 33"),
    board(8, 162, 8.125, "5/4", "FAS"),
  ],
  otherBoards: [
    board(21, 181, 10.25, "4/4", "FAS"),
    board(22, 168, 11.75, "4/4", "FAS"),
    board(23, 153, 7.5, "4/4", "1C"),
    board(24, 118, 8.25, "4/4", "1C", "40 to 44"),
    board(25, 118, 14.5, "4/4", "1C"),
    board(26, 82, 7.5, "4/4", "FAS"),
    board(27, 120, 7.5, "4/4", "1C"),
    board(28, 97, 7.375, "4/4", "1C"),
  ],
  sheets: [
    ["plywood 4 x 8", 96, 48, 0.75, 74],
    ["primed 1 x 12, 16 ft", 192, 11.25, 0.75, 52],
    ["primed 1 x 8, 8 ft", 96, 7.25, 0.75, 15.5],
  ],
  terms: { trim: 0.5, joint: 0.0625, "rough length": 1, "rough width": 0.25, "greatest strip": 5.5 },
  sheetTrim: "",
  grades: [["FAS", ""], ["1C", "FAS"], ["FAS", ""]],
  says: "The boards are invented.",
};

/** The demo's job: names, readings and prices are invented. */
export const inventedJob: Filling = {
  unit: "in",
  job: "Oak stair (invented job)",
  customer: "invented customer",
  code: "irc-2021",
  totalRise: 106.125,
  risers: 14,
  run: 10,
  width: 36.75,
  openEnd: "right",
  handrails: "one",
  roughRises: ROUGH_RISES,
  floors: { treadThickness: 1, lowerBuildUp: 0.75, upperBuildUp: 0.75 },
  alikeWithin: 0.25,
  sizes: SIZES,
  balusterWidth: 1.25,
  blanks: [
    ["oak blank 36", 36, 11.5, 1, 46],
    ["oak blank 42", 42, 11.5, 1, 54],
    ["oak blank 48", 48, 11.5, 1, 61.5],
    ["oak nosing 48", 48, 3.5, 1, 19.5],
  ],
  boards: [
    ["rack 5 ft", "5'", 7.25, 0.75, "", 1, "yes", ""],
    ["poplar 8 ft", "8'", 7.25, 0.75, 18, "any", "no", ""],
    ["poplar 10 ft", "10'", 7.25, 0.75, 22.4, 2, "no", ""],
    ["poplar 16 ft", "16'", 7.25, 0.75, 38, "any", "no", ""],
    ["skirt 12 ft", "12'", 11.25, 0.75, 62, "any", "no", "skirt"],
    ["skirt 16 ft", "16'", 11.25, 0.75, 88, "any", "no", "skirt"],
    ["rail 12 ft", "12'", 2.25, 2.5, 81, "any", "no", "rail"],
    ["rail 14 ft", "14'", 2.25, 2.5, 96, "any", "no", "rail"],
    ["rail 16 ft", "16'", 2.25, 2.5, 112, "any", "no", "rail"],
    ["strip 8 ft", "8'", 1.25, 1, "", 2, "yes", "return"],
  ],
  kerf: 0.125,
  trim: 0.25,
  keep: 12,
  treads: TREADS,
  risersRead: RISERS,
  railHours: 3,
  beadDiameter: 0.3125,
  cartridge: "10.1 fl oz",
  items: ITEMS,
  terms: [["overhead on cost", 0.12], ["profit of price", 0.15], ["tax on price", 0.065]],
  roundUpTo: "",
  besides: ALTERNATES,
  changes: [["15 risers", "risers", 15]],
  ownPieces: [["15 risers", "", "riser", 37, 7.125, 15], ["15 risers", "rail", "rail", 171.5, 2.25, 1]],
  moves: MOVES,
  booked: OAK,
  hoursSpent: 26.5,
  hoursCost: 1550.25,
  month: "2026-03",
  pile: PILE,
  trial:
    "Type what is known in the yellow cells; everything else on the thirteen other sheets follows. Try it: type 9 for the run (B13) and " +
    "watch this line of answers. The job, people and prices are invented.",
};
