import { JOB } from "../job/job";
import type { Filling, PileFilling } from "../job/filling";

/** Rough rises in millimetres: stringers dropped by tread less floor, 7 mm; the fifth sub-tread is the low one. */
const ROUGH_RISES = [176, 183, 182, 184, 175, 189, 185, 184, 184, 184, 183, 183, 184, 183, 191];

const SIZES = {
  nosing: 25, "riser thickness": 18, overhang: 25, "return width": 25, "run past": 6, lap: 6, "skirt thickness": 18, "skirt shows": 50,
  "stringer board": 286, headroom: 2000, opening: 3150, "floor thickness": 285, "handrail height": 900, guard: "yes", "guard height": 900,
};

/**
 * Readings of the next five treads: step, run, back, front, both diagonals, lean of the left skirt. Diagonals were computed from the
 * corners of a wall skirt 0.7 degrees out of square and rounded to whole millimetres.
 */
const TREADS = [
  [1, 250, 921, 923, 953, 957, -1],
  [2, 250, 920, 922, 953, 955, -1],
  [3, 250, 922, 923, 954, 957, -1],
  [4, 250, 921, 923, 953, 957, -1],
  [5, 250, 919, 921, 952, 954, -1],
];

/** Readings of the risers at the back with 5 mm packed under the fifth sub-tread: step, height, top, bottom, both diagonals. */
const RISERS = [
  [1, 176, 921, 923, 938, 940],
  [2, 183, 920, 921, 938, 939],
  [3, 182, 922, 923, 940, 941],
  [4, 184, 921, 923, 939, 941],
  [5, 180, 919, 921, 937, 937],
  [6, 184, 920, 922, 938, 940],
  [7, 185, 921, 922, 939, 940],
  [8, 184, 922, 924, 940, 942],
  [9, 184, 920, 921, 938, 939],
  [10, 184, 921, 923, 939, 941],
  [11, 183, 919, 920, 937, 938],
  [12, 183, 920, 922, 938, 940],
  [13, 184, 922, 923, 940, 941],
  [14, 183, 921, 923, 939, 941],
  [15, 191, 920, 921, 939, 940],
];

/**
 * Hours for one of each item, what one costs, and the unit of both: an invented shop that has always rated moulding and finish by the foot.
 * What stands in the order or the cut plan says included.
 */
const ITEMS = [
  ["tread with one return", 0.45, "included", "each"],
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
  ["adhesive bead", "included", "included", "m"],
  ["finish area", 0.01, "included", "sq ft"],
  ["protection sheets", 0.1, 14, "each"],
  ["adhesive", "included", 8.4, "each"],
  ["labour", "included", 45, "hour"],
];

/**
 * Boards of an invented pile, as sawn: 41 dresses to 27 and more, 27 to 18 and more. Label, length, width, thickness, grade, price, owned,
 * defects, edge.
 */
const PILE: PileFilling = {
  treadBoards: [
    [1, 3020, 205, 41, "prime", 58, "no", "", 6],
    [2, 3000, 220, 41, "prime", 61, "no", "", 6],
    [3, 4010, 190, 41, "prime", 70, "no", "", 6],
    [4, 2980, 235, 41, "prime", 65, "no", "", 6],
    [5, 3980, 215, 41, "prime", 80, "no", "", 6],
    [6, 3050, 180, 41, "prime", 50, "no", "1400 to 1460", 6],
    [7, 4000, 245, 41, "prime", 91, "no", "", 6],
    [8, 3000, 250, 41, "prime", 72, "no", "", 6],
  ],
  otherBoards: [
    [21, 4620, 250, 27, "prime", 96, "no", "", 6],
    [22, 4400, 295, 27, "prime", 110, "no", "", 6],
    [23, 3780, 180, 27, "rustic", 39, "no", "", 6],
    [24, 2860, 185, 27, "rustic", 31, "no", "1000 to 1080", 6],
    [25, 3780, 345, 27, "rustic", 74, "no", "", 6],
    [26, 2860, 180, 27, "prime", 31, "no", "", 6],
    [27, 2840, 175, 27, "rustic", 33, "no", "", 6],
    [28, 1900, 178, 27, "rustic", 20, "no", "", 6],
  ],
  sheets: [
    ["MDF 2440", 2440, 1220, 18, 38],
    ["primed MDF 5.4 m", 5400, 300, 18, 34],
  ],
  terms: { trim: 10, joint: 1.5, "rough length": 25, "rough width": 6, "greatest strip": 145 },
  sheetTrim: "",
  grades: [["prime", ""], ["rustic", "prime"], ["prime", ""]],
  says: "The boards are invented.",
};

/**
 * An invented job in millimetres, bid and not yet bought: 2750 in fifteen risers, open on the right, a wall skirt on the left. Skirts, rail
 * and returns are cut from what the shop has, so that of the boards the bid has the risers' alone.
 */
export const inventedMetricJob: Filling = {
  unit: "mm",
  job: "Loft stair (invented job)",
  customer: "invented customer",
  code: "uk-adk-private",
  totalRise: 2750,
  risers: 15,
  run: 250,
  width: 920,
  openEnd: "right",
  handrails: "one",
  roughRises: ROUGH_RISES,
  floors: { treadThickness: 27, lowerBuildUp: 20, upperBuildUp: 20 },
  alikeWithin: 5,
  sizes: SIZES,
  balusterWidth: 32,
  blanks: [
    ["oak blank 900", 900, 280, 27, 36],
    ["oak blank 1000", 1000, 280, 27, 41],
    ["oak blank 1100", "1.1 m", 280, 27, 46],
    ["oak nosing 1000", 1000, 90, 27, 14.5],
  ],
  boards: [
    ["pine 2.4 m", "2.4 m", 175, 18, 12.8, "any", "no", ""],
    ["pine 3.6 m", 3600, 175, 18, 18.9, "any", "no", ""],
    ["pine 4.2 m", 4200, 175, 18, 21.6, "any", "no", ""],
    ["rack skirt", 5100, 286, 18, "", 2, "yes", "skirt"],
    ["rack rail", 4800, 60, 55, "", 1, "yes", "rail"],
    ["rack strips", 2400, 25, 27, "", 2, "yes", "return"],
  ],
  kerf: 3,
  trim: 5,
  keep: 300,
  treads: TREADS,
  risersRead: RISERS,
  railHours: "",
  beadDiameter: 6,
  cartridge: "310 ml",
  items: ITEMS,
  terms: [["overhead on cost", 0.12], ["profit of price", 0.15], ["tax on price", 0.2]],
  roundUpTo: "",
  besides: [],
  changes: [],
  ownPieces: [],
  moves: [],
  booked: `=${JOB.job}&""`,
  hoursSpent: "",
  hoursCost: "",
  month: "",
  pile: PILE,
  trial:
    "Type what is known in the yellow cells; everything else on the thirteen other sheets follows. Clear them, sheet by sheet, for a job " +
    "of your own. The job, people and prices are invented.",
};
