import { BID } from "../../../src/functions/bid/bid";
import { EXTEND } from "../../../src/functions/bid/extend";
import { call } from "../../../src/functions/call";
import { HOURS } from "../../../src/functions/takeoff/hours";
import { TAKEOFF } from "../../../src/functions/takeoff/takeoff";
import { TAKEOFF_ITEMS } from "../../../src/solver/takeoff/items";
import { words } from "../../../src/solver/words";

type Rows = readonly (readonly unknown[])[];

/** An invented stair: 14 risers of 7.580357 in, 13 treads of 10 in, three stringers, one open end. */
const STAIR: Rows = [["total rise", 106.125], ["risers", 14], ["run", 10], ["width", 36.75], ["open end", "right"], ["run past", 0.25]];

const rowsOf = (found: unknown): Rows => {
  if (!Array.isArray(found)) throw new Error(String(found));
  return found as Rows;
};

const takeoffOf = (stair: Rows, allowances?: Rows): Rows => rowsOf(call(TAKEOFF, allowances === undefined ? [stair] : [stair, allowances]));

const quantities = (rows: Rows): Readonly<Record<string, unknown>> =>
  Object.fromEntries(rows.slice(1).map(([item, quantity]) => [String(item), quantity]));

const without = (label: string): Rows => STAIR.filter(([name]) => name !== label);

/** Counted by hand on the invented stair, each by the rule of its item. */
const BY_HAND: Readonly<Record<string, number>> = {
  "tread with one return": 13,
  "landing nosing": 1,
  riser: 14,
  "open skirt": 1,
  "closed skirt": 1,
  "mitred return": 13,
  "run past riser": 14,
  // No tread runs back under the first riser: 14 - 1.
  notch: 13,
  "scribed end": 13,
  // 13 x (36 3/4 + 10 + 1 1/4) / 12
  cove: 52,
  // 13 x 4 and 14 x 6
  screws: 52,
  nails: 84,
  // 13 x (3 x 10 + 36 3/4) / 12
  "adhesive bead": 72.3125,
  // (13 x 11 1/4 + 106 1/8) x 36 3/4 / 144 = 252.375 x 36.75 / 144
  "finish area": 64.408203125,
  // 64.4 / 32 = 2.01
  "protection sheets": 3,
};

test("every item of the invented stair, counted by hand", () => {
  const found = quantities(takeoffOf(STAIR));
  expect(Object.keys(found)).toEqual(Object.keys(BY_HAND));
  for (const [item, quantity] of Object.entries(BY_HAND)) expect([item, found[item]]).toEqual([item, expect.closeTo(quantity, 9)]);
});

// By hand: (n - 1) treads x 11 1/4 with a total rise of what is left to 256 in, x 36 in / 144 = 64 sq ft, two sheets of 32 and not a third
// for the dust of total rise / n x n.
test.each(Array.from({ length: 14 }, (_, at) => at + 4))("%s risers that two sheets just protect take two", (risers) => {
  const stair = [["total rise", 256 - 11.25 * (risers - 1)], ["risers", risers], ["run", 10], ["width", 36], ["open end", "right"]];
  expect(quantities(takeoffOf(stair))["protection sheets"]).toBe(2);
});

test("every line prints its count with its numbers", () => {
  const rows = takeoffOf(STAIR);
  const how = Object.fromEntries(rows.slice(1).map(([item, , , counted]) => [String(item), String(counted)]));
  expect(how["screws"]).toMatch(/^13 treads x 4 = 52;/);
  expect(how["nails"]).toBe("14 risers x 6 = 84");
  expect(how["notch"]).toBe("(14 risers - 1) x 1 = 13");
  expect(how["cove"]).toBe("13 treads x (36.75 + 1 x 11.25) in / 12 = 52 ft");
  expect(how["adhesive bead"]).toBe("13 treads x (3 x 10 + 36.75) in / 12 = 72.31 ft");
  // 13 x 11 1/4 + 14 x 7.580357 is 146 1/4 + 106 1/8; 64.41 / 32 = 2.01.
  expect(how["finish area"]).toBe("(13 x 11.25 + 14 x 7.58) x 36.75 sq in / 144 = 64.41 sq ft");
  expect(how["protection sheets"]).toBe("64.41 sq ft / 32 for a sheet of 4 x 8 ft, rounded up = 3");
  for (const [item, , , counted] of rows.slice(1)) expect([item, counted]).toEqual([item, expect.stringMatching(/\d/)]);
});

// By hand: two open ends are 26 returns, 28 run past, (14 - 1) x 2 notches; none open is 26 ends to scribe and nothing to mitre or notch.
test("ends decide treads, returns, skirts and scribed ends", () => {
  const both = quantities(takeoffOf([...without("open end"), ["open end", "both"]]));
  expect(both).toMatchObject({ "tread with two returns": 13, "mitred return": 26, "open skirt": 2, notch: 26, "run past riser": 28 });
  expect(both).not.toHaveProperty("scribed end");
  const none = quantities(takeoffOf([...without("open end"), ["open end", "none"]]));
  expect(none).toMatchObject({ "tread without return": 13, "closed skirt": 2, "scribed end": 26 });
  for (const item of ["mitred return", "notch", "run past riser", "open skirt"]) expect(none).not.toHaveProperty(item);
});

// By hand: 14 risers and 14 - 1 notches at one open end, as where 1/4 in was given; with 0 there is nothing to run past.
test("risers run past an open end where nobody says otherwise, and the row says what is assumed", () => {
  const rows = takeoffOf(without("run past"));
  expect(quantities(rows)).toMatchObject({ "run past riser": 14, notch: 13 });
  const noteOf = (all: Rows): unknown => all.find(([item]) => item === "run past riser")?.[4];
  expect(noteOf(rows)).toBe("run past 1/4 in assumed; enter run past 0 where risers end at the skirt");
  expect(noteOf(takeoffOf(STAIR))).toBe("");
  const none = quantities(takeoffOf([...without("run past"), ["run past", 0]]));
  for (const item of ["notch", "run past riser"]) expect(none).not.toHaveProperty(item);
});

test("a tread level with the upper floor is one more tread and no landing nosing", () => {
  const flush = quantities(takeoffOf([...STAIR, ["top tread", "flush"]]));
  expect(flush["tread with one return"]).toBe(14);
  // The last tread lies behind the last riser, under none: still 13 notches.
  expect(flush["notch"]).toBe(13);
  expect(flush).not.toHaveProperty("landing nosing");
});

test("screws are compared with the riser they go through", () => {
  const how = (thickness: number): string =>
    String(takeoffOf([...STAIR, ["riser thickness", thickness]]).find(([item]) => item === "screws")?.[3]);
  // By hand: 2 - 3/4 = 1 1/4; 2 - 1 1/8 = 7/8, less than an inch.
  expect(how(0.75)).toContain("2 in screws leave 1.25 in in the tread");
  expect(how(1.125)).toContain("leave only 0.88 in in the tread: use longer ones");
});

/** An invented stair in millimetres: 15 risers of 183 1/3, 14 treads of 250, three stringers, one open end. */
const METRIC: Rows = [
  ["unit", "mm"],
  ["total rise", 2750],
  ["risers", 15],
  ["run", 250],
  ["nosing", 25],
  ["riser thickness", 18],
  ["width", 920],
  ["open end", "right"],
  ["run past", 6],
];

test("a stair in millimetres is counted in metres, each sentence in millimetres", () => {
  const rows = takeoffOf(METRIC).slice(1);
  expect(rows.map(([item, quantity, unit]) => [item, quantity, unit])).toEqual([
    ["tread with one return", 14, "each"],
    ["landing nosing", 1, "each"],
    ["riser", 15, "each"],
    ["open skirt", 1, "each"],
    ["closed skirt", 1, "each"],
    ["mitred return", 14, "each"],
    ["run past riser", 15, "each"],
    ["notch", 14, "each"],
    ["scribed end", 14, "each"],
    // 14 x (920 + 250 + 25) = 16,730 mm.
    ["cove", 16.73, "m"],
    // 14 x 4 and 15 x 6.
    ["screws", 56, "each"],
    ["nails", 90, "each"],
    // 14 x (3 x 250 + 920) = 23,380 mm.
    ["adhesive bead", 23.38, "m"],
    // (14 x 275 + 2,750) x 920 = 6,072,000 square millimetres.
    ["finish area", 6.072, "sq m"],
    // 1.22 x 2.44 = 2.9768; 6.072 / 2.9768 = 2.04.
    ["protection sheets", 3, "each"],
  ]);
  const how = Object.fromEntries(rows.map(([item, , , counted]) => [String(item), counted]));
  expect(how).toMatchObject({
    cove: "14 treads x (920 + 1 x 275) mm / 1000 = 16.73 m",
    "adhesive bead": "14 treads x (3 x 250 + 920) mm / 1000 = 23.38 m",
    "finish area": "(14 x 275 + 15 x 183.33) x 920 sq mm / 1000000 = 6.07 sq m",
    "protection sheets": "6.07 sq m / 2.9768 for a sheet of 1220 x 2440 mm, rounded up = 3",
    // 50 - 18.
    screws: "14 treads x 4 = 56; 50 mm screws leave 32 mm in the tread",
  });
});

test("no sentence of a stair in millimetres speaks of inches or feet", () => {
  const said = takeoffOf(METRIC, [["item", "allowance"], ["cove", 0.1]]).flat().join(" | ");
  expect(said).not.toMatch(/\d in\b|\bft\b|inch|"/);
  // 16.73 x 1.1 = 18.403.
  expect(said).toContain("= 16.73 m, and 10 % = 18.4 m");
});

// A foot is 304.8 mm and a square foot 0.09290304 sq m by definition.
test("one stair in inches and in millimetres takes the same", () => {
  const scaled = STAIR.map(([label, value]) => [label, typeof value === "number" && label !== "risers" ? value * 25.4 : value]);
  const [inches, millimetres] = [quantities(takeoffOf(STAIR)), quantities(takeoffOf([["unit", "mm"], ...scaled]))];
  expect(Object.keys(millimetres)).toEqual(Object.keys(inches));
  const PER: Readonly<Record<string, number>> = { cove: 0.3048, "adhesive bead": 0.3048, "finish area": 0.09290304 };
  for (const [item, quantity] of Object.entries(inches))
    expect([item, millimetres[item]]).toEqual([item, expect.closeTo(Number(quantity) * (PER[item] ?? 1), 9)]);
});

// By hand: two thirds of 0.164 is 0.1093, 90 % of it 0.0984 (Wood Handbook, chapter 8).
test("pilot holes go with the screws, in the stair's unit", () => {
  const note = (stair: Rows): unknown => takeoffOf(stair).find(([item]) => item === "screws")?.[4];
  expect(note(STAIR)).toBe("pilot holes for a no. 8: 0.164 in through the riser, 0.0984 in in a hardwood tread; test in scrap");
  expect(
    note([
      ["unit", "mm"],
      ["total rise", 2695.575],
      ["risers", 14],
      ["run", 254],
      ["width", 933.45],
    ]),
  ).toContain("4.17 mm through the riser, 2.5 mm in");
});

test("allowances add their share and pieces round up, feet do not", () => {
  // By hand: 52 x 1.1 = 57.2, so 58; 52 ft x 1.05 = 54.6 ft.
  expect(quantities(takeoffOf(STAIR, [["item", "allowance"], ["screws", 0.1], ["cove", 0.05]]))).toMatchObject({ screws: 58, cove: 54.6 });
});

// By hand: 10 is a thousand percent, 10 % and 20 % of one item cannot both be meant.
test.each([
  ["10 for 10 %", [["screws", 10]], "allowance in row 2 (screws): 10 is 1000 %, write 10% or 0.1"],
  [
    "more than the item itself",
    [["screws", 1.5]],
    'allowance in row 2 (screws): 1.5 is 150 %, more than the whole; write "150%" if it is meant, else a share under 1',
  ],
  [
    "two that differ",
    [
      ["screws", 0.1],
      ["Screws", 0.2],
    ],
    "allowances, screws: has two allowances, 0.1 and 0.2; keep one",
  ],
  ["an item that is not counted", [["screwz", 0.1]], 'allowances, item: "screwz" is not a takeoff item; nearest is "screws"'],
  ["less than nothing", [["screws", -0.1]], "allowance in row 2 (screws): must be 0 or more, got -0.1"],
] as const)("an allowance of %s is refused by name", (_, rows, says) => {
  expect(call(TAKEOFF, [STAIR, [["item", "allowance"], ...rows]])).toMatchObject({ says });
});

test("without a width only what needs it is refused, in its row", () => {
  const found = quantities(takeoffOf(without("width")));
  expect(found["riser"]).toBe(14);
  const cove = takeoffOf(without("width")).find(([item]) => item === "cove");
  expect(JSON.stringify(cove)).toContain("width: is missing, empty or 0; give width, skirt to skirt");
});

test("takeoff, hours, extend and bid feed one another as they stand", () => {
  const counted = takeoffOf(STAIR);
  // An invented shop: only what takes time by itself has a rate; what is included elsewhere says 0.
  const RATED: Readonly<Record<string, number>> = {
    "tread with one return": 0.5,
    riser: 0.25,
    "mitred return": 0.25,
    notch: 0.125,
    "run past riser": 0.125,
    "scribed end": 0.25,
  };
  const rates = [["item", "hours"], ...Object.keys(BY_HAND).map((item) => [item, RATED[item] ?? 0])];
  const hours = rowsOf(call(HOURS, [counted, rates]));
  // By hand: 6.5 + 3.5 + 3.25 + 1.75 + 1.625 + 3.25 = 19.875 hours.
  expect(hours.slice(1).reduce((sum, [, quantity]) => sum + Number(quantity), 0)).toBe(19.875);
  const goods = [
    ["item", "price", "unit"],
    ...Object.keys(BY_HAND).map((item) => [item, item === "cove" ? 1.5 : 0, ""]),
    ["labour", 60, "hour"],
  ];
  const labour = rowsOf(call(EXTEND, [hours, [["item", "price", "unit"], ["labour", 60, "hour"]]]));
  const material = rowsOf(call(EXTEND, [counted, goods]));
  const bid = rowsOf(call(BID, [[...labour, ...material.slice(1)], [["overhead on cost", 0.1], ["profit on cost", 0.2]]]));
  // By hand, row by row to the cent: 19.875 x 60 + 52 x 1.50 = 1,270.50; 127.05; 279.51; 1,677.06.
  const costs = new Map(bid.map(([label, amount]) => [label, amount]));
  expect(["labour", "materials", "direct", "overhead", "profit", "price"].map((label) => costs.get(label))).toEqual([
    1192.5, 78, 1270.5, 127.05, 279.51, 1677.06,
  ]);
});

test("work without a rate is named in its row and the rest is reckoned", () => {
  const rows = rowsOf(call(HOURS, [[["item", "quantity"], ["notch", 14], ["riser", 14]], [["item", "hours"], ["riser", 0.5]]]));
  expect(rows[2]).toEqual(["riser", 7, "hour", 0.5, ""]);
  expect(rows[1]?.[4]).toBe('rates: "notch" has no rate; give its hours, or "included" where it takes none here');
});

test("a row of the takeoff that has no count keeps its error in HOURS, and the others are reckoned", () => {
  const rates = [["item", "hours"], ...Object.keys(BY_HAND).map((item) => [item, 0.5])];
  const rows = rowsOf(call(HOURS, [takeoffOf(without("width")), rates]));
  // By hand: 13 notches x 0.5.
  expect(quantities(rows)["notch"]).toBe(6.5);
  expect(rows.find(([item]) => item === "cove")?.[1]).toMatchObject({ failed: "#VALUE!" });
});

test("a rate that cannot be read is the error of its item alone", () => {
  const rows = rowsOf(
    call(HOURS, [
      [
        ["item", "quantity"],
        ["notch", 14],
        ["riser", 14],
      ],
      [
        ["item", "hours"],
        ["notch", "slow"],
        ["riser", 0.5],
      ],
    ]),
  );
  expect(rows[1]?.[1]).toMatchObject({ failed: "#VALUE!", says: 'hours in row 2 (notch): must be a number, got "slow"' });
  expect(rows[2]).toEqual(["riser", 7, "hour", 0.5, ""]);
});

test("one item at two rates is refused in its row", () => {
  const rows = rowsOf(call(HOURS, [[["item", "quantity"], ["riser", 14]], [["item", "hours"], ["riser", 0.5], ["Riser", 0.25]]]));
  expect(rows[1]?.[1]).toMatchObject({ says: 'rates: "riser" has two rates for any unit, 0.5 and 0.25; keep one' });
});

test("tread 5/4 lends its hours to no tread 54, and both are named", () => {
  const rows = rowsOf(
    call(HOURS, [
      [
        ["item", "quantity"],
        ["tread 54", 2],
        ["tread 5/4", 4],
      ],
      [
        ["item", "hours"],
        ["tread 5/4", 0.5],
        ["tread 54", 2],
      ],
      false,
    ]),
  );
  expect(rows).toEqual([
    ["tread 54", 4, "hour", 2, 'like "tread 5/4" in row 3: same goods?'],
    ["tread 5/4", 2, "hour", 0.5, 'like "tread 54" in row 2: same goods?'],
  ]);
  const [alone] = rowsOf(call(HOURS, [[["tread 54", 2]], [["tread 5/4", 0.5]], false]));
  expect(alone?.[4]).toBe('rates: "tread 54" has no rate; like "tread 5/4" in row 1: same work? write one name');
});

test("a rate for another unit of length is converted, and items of a takeoff match in either spelling", () => {
  // By hand: 13 ft are 3.9624 m, at 0.1 hours a metre 0.39624; 12 x 0.25.
  const rows = rowsOf(
    call(HOURS, [
      [
        ["item", "quantity", "unit"],
        ["cove", 13, "ft"],
        ["mitered returns", 12, "each"],
      ],
      [
        ["item", "hours", "unit"],
        ["cove", 0.1, "m"],
        ["mitred return", 0.25, ""],
      ],
      false,
    ]),
  );
  expect(rows).toEqual([["cove", 0.39624, "hour", 0.03048, ""], ["mitered returns", 3, "hour", 0.25, ""]]);
});

// By hand: 13 treads as before; the landing the flight ends on has its piece once, and no floor's.
test("a flight that ends on a landing has a landing tread in place of the landing nosing", () => {
  const found = quantities(takeoffOf([...STAIR, ["landing tread", 5.5]]));
  expect(found).toMatchObject({ "landing tread": 1, "tread with one return": 13 });
  expect(found).not.toHaveProperty("landing nosing");
  expect(quantities(takeoffOf([...STAIR, ["landing tread", 5.5], ["top tread", "flush"]]))).not.toHaveProperty("landing tread");
});

test("every item is counted on one stair or another", () => {
  const ends = ["none", "right", "both"].map((end): Rows => [...without("open end"), ["open end", end]]);
  const seen = [...ends, [...STAIR, ["landing tread", 5.5]]].flatMap((stair) => Object.keys(quantities(takeoffOf(stair))));
  expect([...new Set(seen)].sort()).toEqual(Object.keys(TAKEOFF_ITEMS).map(words).sort());
});
