import { EMC } from "../../../src/functions/wood/emc";
import { call } from "../../../src/functions/call";
import type { WorkedCase } from "../case-kind";

const STAIR = [["total rise", 107.5], ["risers", 14], ["run", 9.5], ["width", 30]] as const;
/** Rise 7, every part of a size of its own. */
const ITS_OWN = [
  ["total rise", 98],
  ["risers", 14],
  ["run", 9.5],
  ["nosing", 1.5],
  ["tread thickness", 1.25],
  ["riser thickness", 0.5],
  ["width", 36],
  ["overhang", 1.125],
  ["return width", 1.75],
  ["run past", 0.5],
  ["lap", 0.375],
  ["trim length", 0.5],
  ["trim depth", 0.125],
] as const;
const OAK = [["label", "length", "width", "thickness", "price"], ["oak 42", 42, 11.5, 1.25, 52]] as const;

/** The second step is the larger in everything, and larger than the nominal width and run. */
const READINGS = [["step", "run", "back", "front", "left offset"], [1, 9.5, 36, 36, "square"], [2, 10, 36.5, 36.5, "square"]] as const;

const emcIn = (scale: "F" | "C", degrees: number): unknown => call(EMC, [degrees, 50, scale]);

const RETURN = "along its outer edge, which runs past the riser face by the overhang";
const RISER = "rise less tread, plus lap; the first has no lap";

export const orderCases: Readonly<Record<string, readonly WorkedCase[]>> = {
  BLANK: [
    {
      given: { stair: [...ITS_OWN, ["open end", "both"], ["top tread", "flush"]], headings: false },
      gives: [
        ["tread", 38.75, 11.125, 1.25, 14, "from the nominal width"],
        ["return", 12.125, 1.75, 1.25, 28, RETURN],
        ["riser", 37.5, 6.125, 0.5, 14, RISER],
      ],
      from:
        "by hand: 36 + 2 x 1 1/8 + 1/2; 11 + 1/8; 11 + 1 1/8; 36 + 2 x 1/2 + 1/2; 7 - 1 1/4 + 3/8; flush, so fourteen treads and " +
        "no landing nosing",
    },
    {
      given: { stair: [...ITS_OWN, ["open end", "left"], ["landing nosing", "yes"]], headings: false },
      gives: [
        ["tread", 37.625, 11.125, 1.25, 13, "from the nominal width"],
        ["return", 12.125, 1.75, 1.25, 13, RETURN],
        ["landing nosing", 37.625, 2, 1.25, 1, "the least width, riser thickness and nosing; list a nosing blank to save the rip"],
        ["riser", 37, 6.125, 0.5, 14, RISER],
      ],
      from: "by hand: 36 + 1 1/8 + 1/2; 1 1/2 + 1/2; 36 + 1/2 + 1/2",
    },
    {
      given: { stair: STAIR, readings: READINGS },
      shows: [
        { item: "tread", length: 36.5, width: 11.25, quantity: 13 },
        { item: "riser", length: 36.5 },
      ],
      from: "by hand: the second tread is 36 1/2 long and 10 + 1 1/4 deep; a riser is as long as a tread is, skirt to skirt",
    },
  ],
  ORDER: [
    {
      given: { stair: [...ITS_OWN, ["open end", "both"], ["top tread", "flush"]], stock: OAK },
      shows: [
        { item: "oak 42", quantity: 14, rippedOff: 0.375, cutOff: 3.25, net: 52.389865451389, gross: 58.697916666667 },
        { item: "return", quantity: 28 },
      ],
      from: "by hand: 11 1/2 - 11 1/8; 42 - 38 3/4; 14 x 38.75 x 11.125 x 1.25 / 144, and 14 x 42 x 11.5 x 1.25 / 144",
    },
    {
      given: {
        stair: [...ITS_OWN, ["open end", "left"], ["landing nosing", "yes"]],
        stock: [...OAK, ["nosing stock", 42, 2.25, 1.25, 12]],
      },
      shows: [
        { item: "oak 42", quantity: 13, cutOff: 4.375, rippedOff: 0.375 },
        { item: "nosing stock", length: 42, width: 2.25, quantity: 1, rippedOff: 0.25, cutOff: 4.375 },
      ],
      from: "by hand: 42 - (36 + 1 1/8 + 1/2); the landing nosing is 1 1/2 + 1/2 wide and as long as a tread",
    },
    {
      given: {
        stair: STAIR,
        readings: READINGS,
        stock: [
          ["label", "length", "width", "thickness", "price"],
          ["oak 42", 42, 11.5, 1, 52],
        ],
      },
      shows: [{ item: "oak 42", quantity: 13, rippedOff: 0.25, cutOff: 5.5 }],
      from: "by hand: 11 1/2 - 11 1/4; 42 - 36 1/2, of the larger step",
    },
    {
      given: {
        stair: [
          ["total rise", 107.5],
          ["risers", 14],
          ["run", 9],
          ["width", 36.75],
          ["open end", "right"],
        ],
        stock: [
          ["label", "length", "width", "thickness", "price"],
          ["oak 42", 42, 11.5, 1, 52],
        ],
      },
      shows: [{ item: "oak 42", net: 35.163194444444, gross: 43.604166666667 }],
      from: "by hand: 13 pieces of 38 x 10 1/4 are 5,063 1/2 sq in, 13 boards of 42 x 11 1/2 are 6,279; over 144, an inch thick",
    },
  ],
  TAKEOFF: [
    {
      given: { stair: [...ITS_OWN, ["open end", "both"], ["top tread", "flush"], ["stringers", 4]] },
      shows: [
        { item: "tread with two returns", quantity: 14 },
        { item: "open skirt", quantity: 2 },
        { item: "mitred return", quantity: 28 },
        { item: "run past riser", quantity: 28 },
        { item: "notch", quantity: 26 },
        { item: "cove", quantity: 67.6666666667 },
        { item: "adhesive bead", quantity: 86.3333333333 },
        { item: "finish area", quantity: 63 },
      ],
      from: "by hand: 14 x 2; 13 x 2; 14 x (36 + 2 x 11) / 12; 14 x (4 x 9.5 + 36) / 12; (14 x 11 + 14 x 7) x 36 / 144",
    },
    {
      given: { stair: [...ITS_OWN, ["open end", "left"], ["landing nosing", "yes"]] },
      shows: [
        { item: "tread with one return", quantity: 13 },
        { item: "landing nosing", quantity: 1 },
        { item: "open skirt", quantity: 1 },
        { item: "closed skirt", quantity: 1 },
        { item: "scribed end", quantity: 13 },
        { item: "cove", quantity: 50.9166666667 },
        { item: "nails", quantity: 84 },
      ],
      from: "by hand: thirteen treads, one end scribed; 13 x (36 + 11) / 12; 14 x 6",
    },
    {
      given: {
        stair: [
          ["total rise", 107.5],
          ["risers", 14],
          ["run", 10],
          ["width", 36.75],
        ],
        allowances: [
          ["item", "allowance"],
          ["screws", 0.1],
          ["cove", 0.2],
        ],
      },
      shows: [
        { item: "screws", quantity: 58 },
        { item: "cove", quantity: 47.775 },
      ],
      from: "by hand: 52 x 1.1 = 57.2, so 58; 13 x 36.75 / 12 x 1.2",
    },
    {
      given: {
        stair: [
          ["total rise", 107.5],
          ["risers", 14],
          ["run", 10],
          ["width", 36.75],
        ],
      },
      shows: [
        { item: "screws", note: "pilot holes for a no. 8: 0.164 in through the riser, 0.0984 in in a hardwood tread; test in scrap" },
      ],
      from:
        "US Army EN5155, Pilot and Starter Holes: the shank of a no. 8 is 0.164 in; by hand 0.164 x 2/3 x 0.9 = 0.0984, the root " +
        "two thirds of the shank (Wood Handbook, FPL-GTR-190, chapter 8), 90 % of it in hardwood from memory",
    },
  ],
  TREADLOAD: [
    {
      given: { span: 36, depth: 12, thickness: 1.5, species: "red oak", load: 200 },
      shows: [
        { label: "bending stress", value: 400 },
        { label: "clear-wood average in bending", value: 14300 },
        { label: "load at mid-span", value: 200 },
        { label: "source of the load", value: "as given" },
      ],
      from: "by hand: 200 x 36 / 4 / 4.5; Wood Handbook, northern red oak at 12 %: 14,300 psi (from memory)",
    },
    {
      given: { span: 36, depth: 12, thickness: 1.5, species: "white oak", uniform: 40, headings: false },
      gives: [
        ["deflection", 0.06067415730337, "in"],
        ["span ratio", 593.3333333333, ""],
        ["bending stress", 720, "psi"],
        ["clear-wood average in bending", 15200, "psi"],
        ["shear stress", 17.5, "psi"],
        ["clear-wood average in shear", 2000, "psi"],
        ["modulus of elasticity", 1780000, "psi"],
        ["load at mid-span", 300, "lb"],
        ["uniform load", 40, "lb/ft"],
        ["source of the load", "IRC Table R301.5, note c: 300 lb on 4 sq in of a tread, taken as a point", ""],
        [
          "source of the averages",
          "white oak: Wood Handbook, FPL-GTR-190, Table 5-3b: averages of clear specimens at 12 %; the figures in psi are from " +
            "memory and agree with the metric Table 5-3a, which was seen",
          "",
        ],
        [
          "caution",
          "Averages of clear specimens are no design values: knots, grain and duration of load take much of them. No tread is " +
            "passed or failed here; a licensed engineer decides for anything that carries load.",
          "",
        ],
      ],
      from:
        "by hand: I = 12 x 1.5³ / 12 = 3.375, S = 4.5; 300 x 36³ / (48 x 1,780,000 I) + 5 x (40/12) x 36⁴ / (384 x 1,780,000 I) = " +
        "0.0485393 + 0.0121348; 36 over that; (300 x 36 / 4 + (40/12) x 36² / 8) / S = 3,240 / 4.5; 3 x (150 + 60) / (2 x 12 x " +
        "1.5); Wood Handbook: white oak 15,200 and 2,000 psi, 1.78 million",
    },
  ],
  EMC: [
    {
      given: { temperature: 50, humidity: 50, scale: "C" },
      keeps: (rows) => rows[0]?.[0] === emcIn("F", 122),
      from: "law: 50 degrees Celsius are 122 Fahrenheit",
    },
  ],
};
