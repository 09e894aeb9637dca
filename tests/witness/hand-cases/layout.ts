import type { WorkedCase } from "../case-kind";

/** The 3-4-5 triangle (Vitruvius IX.0.8): rise 6, run 8, slope length 10. */
const TRIANGLE = [["total rise", 60], ["risers", 10], ["run", 8]] as const;
const PITCH = 36.86989764584402;

/** Labels that a layout has no use for and gives back as they came. */
const GIVEN_BACK = [
  ["riser thickness", 0.5],
  ["width", 36.75],
  ["open end", "right"],
  ["overhang", 1.125],
  ["return width", 1.75],
  ["run past", 0.625],
  ["lap", 0.25],
  ["riser on", "behind"],
  ["stringers", 4],
  ["skirt thickness", 0.875],
  ["skirt shows", 3],
  ["skirt foot", 5],
  ["skirt head", 9.5],
  ["trim length", 1.5],
  ["trim depth", 0.125],
  ["landing nosing", "no"],
  ["species", "white oak"],
  ["handrail height", 35],
] as const;

export const layoutCases: Readonly<Record<string, readonly WorkedCase[]>> = {
  LAYOUT: [
    {
      given: { stair: [...TRIANGLE, ["available run", 80]] },
      shows: [
        { label: "total run", value: 72 },
        { label: "available run", value: 80 },
      ],
      from: "by hand: 9 treads x 8, with room to spare",
    },
    {
      given: { stair: [...TRIANGLE, ...GIVEN_BACK] },
      shows: GIVEN_BACK.map(([label, value]) => ({ label, value })),
      from: "by hand: what was given",
    },
    {
      given: {
        stair: [
          ["total rise", 60],
          ["unit rise", 6],
          ["tread depth", 8],
          ["top tread", "flush"],
          ["open end", "left"],
          ["riser on", "off"],
        ],
      },
      shows: [
        { label: "risers", value: 10 },
        { label: "run", value: 8 },
        { label: "treads", value: 10 },
        { label: "total run", value: 80 },
        { label: "hang", value: 1 },
        { label: "open end", value: "left" },
        { label: "riser on", value: "off" },
        { label: "tread depth", value: 8 },
        { label: "top tread", value: "flush" },
        { label: "2R+T", value: 20 },
        { label: "drop", value: 1 },
        { label: "nosing", value: 1.25 },
        { label: "tread thickness", value: 1 },
      ],
      from: "by hand: 60 / 6; the codes' tread depth is the run; flush: ten treads, the uppermost one inch thick over the rough floor",
    },
    {
      given: {
        stair: [
          ["total rise", 60],
          ["max rise", 7],
          ["available run", 72.5],
          ["open end", "both"],
          ["riser on", "both"],
        ],
      },
      shows: [
        { label: "risers", value: 9 },
        { label: "run", value: 9.0625 },
        { label: "open end", value: "both" },
        { label: "riser on", value: "both" },
        { label: "max rise", value: 7 },
        { label: "available run", value: 72.5 },
        { label: "treads", value: 8 },
        { label: "total run", value: 72.5 },
      ],
      from: "by hand: 60 / 7 = 8.57, so 9; 72 1/2 over 8 treads",
    },
    {
      given: {
        stair: [
          ...TRIANGLE,
          ["nosing", 1],
          ["tread thickness", 1.125],
          ["stringer board", 11.5],
          ["lower build up", 0.75],
          ["upper build up", 0.5],
          ["headroom", 81],
          ["floor thickness", 12],
          ["opening", 100],
        ],
      },
      shows: [
        { label: "unit", value: "in" },
        { label: "total rise", value: 60, unit: "in" },
        { label: "risers", value: 10, unit: "" },
        { label: "unit rise", value: 6, unit: "in" },
        { label: "run", value: 8 },
        { label: "treads", value: 9 },
        { label: "nosing", value: 1, assumed: "" },
        { label: "tread thickness", value: 1.125, assumed: "" },
        { label: "board depth", value: 9 },
        { label: "total run", value: 72 },
        { label: "pitch", value: PITCH, unit: "deg" },
        { label: "slope length", value: 10, unit: "in" },
        { label: "stringer board", value: 11.5 },
        { label: "throat", value: 6.7 },
        { label: "drop", value: 0.375 },
        { label: "hang", value: 6.625 },
        { label: "2R+T", value: 20 },
        { label: "opening needed from the landing nosing", value: 124 },
        { label: "opening needed from the face", value: 125 },
        { label: "headroom found", value: 63 },
        { label: "lower build up", value: 0.75 },
        { label: "upper build up", value: 0.5 },
        { label: "headroom", value: 81 },
        { label: "opening", value: 100 },
        { label: "floor thickness", value: 12 },
      ],
      from:
        "by hand on the 3-4-5 triangle: 60 / 10; 9 treads x 8; 8 + 1; atan(6/8); 11 1/2 - 6 x 8 / 10; 1 1/8 - 3/4; 6 - 1/2 + 1 " +
        "1/8; 2 x 6 + 8; (81 + 12) x 8 / 6, and the nosing; 100 x 6 / 8 - 12",
    },
  ],
  STORYPOLE: [
    {
      given: { totalRise: 31.03, risers: 4 },
      shows: [{ riser: 4, height: 31.03, mark: 31, note: "the total rise lies between two marks; height has it exactly" }],
      from: "by hand: 31.03 x 16 = 496.48, so the nearest sixteenth is 496, which is 31 in",
    },
  ],
  SKIRT: [
    {
      given: {
        stair: [
          ...TRIANGLE,
          ["nosing", 1],
          ["tread thickness", 1.5],
          ["lower build up", 0.25],
          ["stringer board", 12],
          ["skirt shows", 2],
          ["skirt foot", 5],
          ["skirt head", 10],
        ],
      },
      shows: [
        { label: "open skirt width", value: 12 },
        { label: "open skirt length", value: 89.25 },
        { label: "closed skirt width", value: 8.6 },
        { label: "closed skirt length", value: 111.6 },
      ],
      from:
        "by hand, x level from the first nosing, z up: as wide as the stringer board; 90 - (1 1/2 - 1/4) x 6/10; the back corner " +
        "of a tread's underside lies (9 x 6 + 1 1/2 x 8) / 10 under the nosings; the board's outline from (-5, 0) to (82, 6 + 82 x " +
        "3/4 + 2 x 5/4 = 70), along the slope 0.8 x 82 + 0.6 x 70 + 0.8 x 5",
    },
    {
      given: { stair: [...TRIANGLE, ["nosing", 1], ["skirt shows", 2]], headings: false },
      gives: [
        ["open skirt width", 11.25, "in"],
        ["open skirt length", 89.4, "in"],
        ["closed skirt width", 8.2, "in"],
        ["closed skirt length", 95.1, "in"],
        ["plumb cut", PITCH, "deg"],
        ["level cut", 53.13010235415598, "deg"],
      ],
      from: "by hand on the 3-4-5 triangle: as the example of the reference; atan(6/8), and 90 less it",
    },
  ],
  WINDERS: [
    {
      given: { winders: 3, turn: 90, innerRadius: 152.4, width: 914.4, unit: "mm" },
      shows: [{ label: "walkline radius", value: 457.2 }],
      from: "by hand: 6 in, and the walkline 12 in further: 18 x 25.4",
    },
    {
      given: { winders: 3, turn: 90, innerRadius: 6, width: 36, walkline: 12, headings: false },
      gives: [
        ["walkline radius", "", 18],
        ["depth at the walkline", "", 9.317485623690747],
        ["arc at the walkline", "", 9.42477796076938],
        ["depth at the narrow end", "", 3.105828541230249],
        ["nosing 1", "inner", 0],
        ["nosing 1", "outer", 0],
        ["nosing 2", "inner", 3.141592653589793],
        ["nosing 2", "outer", 21.991148575128552],
        ["nosing 3", "inner", 6.283185307179586],
        ["nosing 3", "outer", 43.982297150257104],
        ["nosing 4", "inner", 9.42477796076938],
        ["nosing 4", "outer", 65.97344572538566],
      ],
      from:
        "by hand: 6 + 12; chords 36 sin 15 deg and 12 sin 15 deg = 12 (√6 - √2) / 4; a third of the quarter turn is pi/6, along 6 " +
        "it is pi, along 42 it is 7 pi",
    },
    {
      given: { winders: 3, turn: 90, innerRadius: 4, width: 32, walkline: 12, strings: "straight", headings: false },
      gives: [
        ["walkline radius", "", 16],
        ["depth at the walkline", "", 8.282209443280664],
        ["arc at the walkline", "", 8.377580409572781],
        ["depth at the narrow end", "", 2.070552360820166],
        ["nosing 1", "first", 0],
        ["nosing 2", "first", 20.784609690826528],
        ["nosing 3", "second", 20.784609690826528],
        ["nosing 4", "second", 0],
      ],
      from:
        "by hand: chords 32 sin 15 deg = 8 (√6 - √2) and a quarter of it, arc 16 pi / 6; walls 4 + 32 from the centre are met at " +
        "36 tan 30 deg = 12√3, one from each end",
    },
  ],
  STRINGER: [
    {
      given: { rise: 6, run: 8, risers: 10, boardWidth: 11.25, treadThickness: 1.5, lowerBuildUp: 0.75, upperBuildUp: 0.5 },
      shows: [
        { label: "length", value: 89.55 },
        { label: "throat", value: 6.45 },
        { label: "drop", value: 0.75 },
        { label: "hang", value: 7 },
      ],
      from: "by hand on the 3-4-5 triangle: 1 1/2 - 3/4; 90 - 0.75 x 6 / 10; 6 - 1/2 + 1 1/2",
    },
    {
      given: { rise: "152.4 mm", run: "203.2 mm", risers: 10, boardWidth: "285.75 mm", unit: "mm" },
      shows: [
        { label: "length", value: 2270.76, unit: "mm" },
        { label: "throat", value: 163.83 },
        { label: "drop", value: 25.4 },
        { label: "hang", value: 177.8 },
      ],
      from: "by hand: 89.4, 6.45, 1 and 7 in x 25.4",
    },
  ],
  UNIFORMITY: [
    {
      given: { values: [[7.5], [7.75]], tolerance: 0.5 },
      shows: [{ label: "verdict", value: "pass" }],
      from: "by hand: 1/4 is within 1/2",
    },
    {
      given: { values: [[7], [7.5]] },
      shows: [{ label: "verdict", value: "assumed: would fail" }],
      from: "IRC 2021 R311.7.5.1: 3/8 in; by hand 1/2 is more",
    },
    { given: { values: [[7]] }, shows: [{ label: "verdict", value: "not given" }], from: "by hand: one rise differs from none" },
    {
      given: { values: [[180], [180.4]], unit: "mm" },
      shows: [
        { label: "spread", value: 0.4 },
        { label: "verdict", value: "assumed: would pass" },
      ],
      from: "IRC 2021 R311.7.5.1: 3/8 in, by hand 9.525 mm, which 0.4 mm is far under, as 0.4 in is not",
    },
  ],
  CHOICES: [
    {
      given: { totalRise: 30, availableRun: 27, code: "trade-rules" },
      shows: [{ risers: 4, rise: 7.5, run: 9, verdict: "caution" }],
      from: "by hand: rise and run together are 16 1/2 in, where the rule of thumb says 17 to 18",
    },
    {
      given: { totalRise: 30, code: "nbc-ca-2020" },
      shows: [
        { risers: 5, run: 13, verdict: "assumed: would pass" },
        { risers: 6, run: 15, verdict: "assumed: would fail" },
      ],
      from:
        "NBC 2020 Table 9.8.4.1. and 9.8.4.2., private: rise 125 to 200 mm, run 255 to 355; by hand 152.4 and 330.2, 127 and 381; " +
        "nobody gave the use",
    },
    {
      given: { totalRise: 30, code: "osha-1926.1052" },
      shows: [{ risers: 4, rise: 7.5, run: 10, verdict: "not on file" }],
      from: "29 CFR 1926.1052(a)(2) limits the angle alone, 30 to 50 degrees; no rise and no run of it is on file",
    },
    {
      given: { totalRise: "762 mm", unit: "mm" },
      shows: [{ risers: 4, rise: 190.5, run: 254, totalRun: 762, "2R+T": 635, verdict: "not given" }],
      from: "by hand: 762 / 4; two rises and a run are 25 in, 635 mm; 635 - 381; three treads",
    },
  ],
  EQUALIZE: [
    {
      given: { roughRises: [[7], [8]], treadThickness: 1, lowerBuildUp: 0.75, upperBuildUp: 0.5 },
      shows: [
        { step: 1, asFound: 7.25, packing: 0, rise: 7.25 },
        { step: 2, asFound: 7.5, rise: 7.5 },
        { step: "total and spread", asFound: 0.25, note: 'within 3/8"; nothing to pack' },
      ],
      from: "by hand: 7 + 1 - 3/4 and 8 - 1 + 1/2; 1/4 apart, under 3/8",
    },
  ],
};
