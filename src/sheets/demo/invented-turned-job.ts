import { JOB } from "../job/job";
import type { OfAllFlights, OfOneFlight } from "../job/flight-of-several";
import type { FlightsFilling } from "../job/flights";
import type { TurnedFilling } from "../job/turned-job";

/**
 * What both flights of the invented stair share, in millimetres: 2715 in fifteen risers of 181, an L with its landing after the eighth. The
 * lower flight stands between two walls, the upper one is open on the right.
 */
const WHOLE: FlightsFilling = {
  unit: "mm",
  job: "L stair (invented job)",
  customer: "invented customer",
  code: "au-ncc-2022-class1",
  sizes: {
    "total rise": 2715, run: 265, nosing: 25, "tread thickness": 27, "riser thickness": 18, "lower build up": 15, "upper build up": 22,
    overhang: 25, "return width": 25, "run past": 6, lap: 6, "skirt thickness": 18, "skirt shows": 50, "stringer board": 286,
    headroom: 2000, "floor thickness": 290, "handrail height": 900, guard: "yes", "guard height": 900, "landing guard height": 1000,
    "open risers": "no",
  },
  further: [["infrequent", "no"], ["storeys joined", 2]],
  flights: {
    flight: ["1 lower", "2 upper"],
    risers: [8, 7],
    width: [900, 920],
    turn: ["quarter right", ""],
    "landing build up": [20, ""],
    "newel past": [45, ""],
    "open end": ["none", "right"],
    "open sides": ["none", "one"],
    handrails: ["one", "one"],
    "landing tread": [140, ""],
  },
  opening: 1600,
  ceiling: 2350,
  says:
    "Type the whole stair in the yellow cells: what its flights share on the left, each flight in the middle. Every sheet of both " +
    "flights follows. Try it: swap the turn, or give the lower flight 9 risers. The job, people and prices are invented.",
};

/** The blanks of one yard, for both flights. */
const BLANKS = [
  ["oak blank 920", 920, 300, 27, 39],
  ["oak blank 1000", 1000, 300, 27, 43],
  ["oak nosing 1000", 1000, 90, 27, 14.5],
  ["oak landing 1 m", 1000, 140, 27, 24],
];

/** Boards of one yard; what is on the rack is shared out between the flights. */
const BOARDS = [
  ["pine 2.4 m", 2400, 175, 18, 12.8, "any", "no", ""],
  ["pine 3.6 m", 3600, 175, 18, 18.9, "any", "no", ""],
  ["pine 4.2 m", 4200, 175, 18, 21.6, "any", "no", ""],
  ["skirt 2.4 m", 2400, 286, 18, 64, "any", "no", "skirt"],
  ["skirt 3 m", 3000, 286, 18, 80, "any", "no", "skirt"],
  ["rail 2.4 m", 2400, 60, 45, 48, "any", "no", "rail"],
  ["rail 3 m", 3000, 60, 45, 60, "any", "no", "rail"],
];

/** Neighbours may differ by 5: Housing Provisions 11.2.2. */
const ALIKE_WITHIN = 5;

const SHOP = { alikeWithin: ALIKE_WITHIN, kerf: 3, trim: 5, keep: 300, blanks: BLANKS, beadDiameter: 5, cartridge: "310 ml" };

/** Left skirts lean by as much, in degrees; and meet the risers in plan at such an angle. */
const LOWER_LEAN = -0.5;
const LOWER_FLARE = -0.6;
const UPPER_LEAN = 0.3;
const UPPER_FLARE = 0.4;

/**
 * The lower flight. Its fourth sub-tread lies 11 low, and 7 are packed under it. Readings were computed from the corners of two skirt
 * faces and rounded to whole millimetres: of treads step, run, back, front, both diagonals; of risers, with that packed, step, height,
 * top, bottom, both diagonals. The landing tread is read as a step is, 140 deep less the nosing.
 */
const LOWER: OfOneFlight = {
  ...SHOP,
  roughRises: [169, 180, 181, 171, 189, 183, 180, 190],
  boards: BOARDS,
  balusterWidth: "none",
  railHours: 1,
  treads: [
    [1, 265, 901, 899, 940, 936],
    [2, 265, 901, 899, 940, 936],
    [3, 265, 901, 899, 940, 937],
    [4, 265, 901, 900, 940, 937],
    [5, 265, 902, 900, 941, 937],
    ["landing", 115, 901, 901, 909, 907],
  ].map((row) => [...row, LOWER_LEAN]),
  risersRead: [
    [1, 169, 899, 900, 915, 916],
    [2, 180, 899, 901, 917, 918],
    [3, 181, 899, 901, 917, 919],
    [4, 178, 900, 901, 917, 919],
    [5, 182, 900, 901, 918, 920],
    [6, 183, 900, 902, 919, 920],
    [7, 180, 900, 902, 918, 920],
    [8, 190, 901, 902, 920, 922],
  ].map((row) => [...row, LOWER_FLARE]),
};

/** The upper flight, read alike; it stands on the landing. */
const UPPER: OfOneFlight = {
  ...SHOP,
  roughRises: [174, 179, 180, 184, 180, 180, 188],
  boards: [...BOARDS, ["rack strip", 2400, 25, 27, "", 1, "yes", "return"]],
  balusterWidth: 40,
  railHours: 2,
  treads: [
    [1, 265, 919, 921, 956, 959],
    [2, 265, 919, 920, 956, 958],
    [3, 265, 919, 920, 956, 958],
    [4, 265, 918, 919, 955, 957],
    [5, 265, 918, 919, 955, 957],
  ].map((row) => [...row, UPPER_LEAN]),
  risersRead: [
    [1, 174, 921, 920, 937, 936],
    [2, 179, 920, 919, 938, 937],
    [3, 180, 920, 919, 937, 936],
    [4, 184, 919, 918, 938, 937],
    [5, 180, 919, 918, 936, 935],
    [6, 180, 919, 918, 936, 935],
    [7, 188, 918, 917, 937, 936],
  ].map((row) => [...row, UPPER_FLARE]),
};

/** Hours for one of each item, what one costs, and the unit of both: an invented shop. What an order or a cut plan has is included. */
const SHOP_FLOOR: OfAllFlights = {
  items: [
    ["tread without return", 0.4, "included", "each"],
    ["tread with one return", 0.45, "included", "each"],
    ["landing nosing", 0.4, "included", "each"],
    ["landing tread", 0.6, "included", "each"],
    ["riser", 0.25, "included", "each"],
    ["open skirt", 1.5, "included", "each"],
    ["closed skirt", 2, "included", "each"],
    ["mitred return", 0.25, 6.5, "each"],
    ["run past riser", 0.05, "included", "each"],
    ["notch", 0.1, "included", "each"],
    ["scribed end", 0.15, "included", "each"],
    ["cove", 0.1, 3.5, "m"],
    ["screws", "included", 0.1, "each"],
    ["nails", "included", 0.03, "each"],
    ["adhesive bead", "included", "included", "m"],
    ["finish area", 0.2, "included", "sq m"],
    ["protection sheets", 0.1, 14, "each"],
    ["adhesive", "included", 9, "each"],
    ["labour", "included", 60, "hour"],
  ],
  terms: [["overhead on cost", 0.1], ["profit of price", 0.2], ["tax on price", 0.1]],
  roundUpTo: "",
  besides: [],
  changes: [],
  ownPieces: [],
  moves: [],
  booked: `=${JOB.job}&""`,
  hoursSpent: "",
  hoursCost: "",
  month: "",
};

/** An invented job in millimetres, bid and not yet bought: an L-shaped stair with a landing, closed below and open above. */
export const inventedTurnedJob: TurnedFilling = { whole: WHOLE, lower: LOWER, upper: UPPER, ...SHOP_FLOOR };
