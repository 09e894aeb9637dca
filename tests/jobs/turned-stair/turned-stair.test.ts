/** @jest-environment ./tests/workbook/engine-environment.cjs */
import { inventedTurnedJob } from "../../../src/sheets/demo/invented-turned-job";
import { turnedJob } from "../../../src/sheets/job/turned-job";
import { type ActCell, tickets } from "../../../src/sheets/tickets";
import type { CellValue, Workbook } from "../../../src/workbook/workbook";
import { closeWorkbooks, openedData } from "../../workbook/opened-workbook";
import { height, landingReadings, LOWER, riserReadings, treadReadings, UPPER } from "./corners";

/** For the engine to work both flights out on a busy machine, in milliseconds. */
const ENGINE_TIME = 240_000;

const sheets = turnedJob(inventedTurnedJob);
let book: Workbook;

beforeAll(async () => {
  book = await openedData({ version: 1, sheets });
  book.recalculate();
  await book.settled();
}, ENGINE_TIME);
afterAll(closeWorkbooks);

type Rows = readonly (readonly CellValue[])[];

const at = (place: string): CellValue => {
  const [sheet = "", address = ""] = place.split("!");
  return book.value(sheet, address);
};
const spilled = (place: string): Rows => {
  const [sheet = "", address = ""] = place.split("!");
  return book.spill(sheet, address);
};

/** A column of a spilled table, by its heading. */
const column = (place: string, heading: string): readonly CellValue[] => {
  const [headings = [], ...rows] = spilled(place);
  return rows.map((row) => row[headings.indexOf(heading)] ?? null);
};

/** One cell of a spilled table by the label in its first column and its heading. */
const cell = (place: string, label: CellValue, heading: string): CellValue => {
  const [headings = [], ...rows] = spilled(place);
  return rows.find(([first]) => first === label)?.[headings.indexOf(heading)] ?? null;
};

/** A figure of the whole stair: of it, or of a flight. */
const figure = (flight: string, label: string): CellValue =>
  spilled("Flights!AO8").find(([name, one]) => name === flight && one === label)?.[2] ?? null;

/** Total rise, risers, run, width, open end and handrails on Job. */
const KNOWN = ["B11", "B12", "B13", "B14", "B15", "B16"];

/** Rise over run is 181 / 265: a step's slope is sqrt(32761 + 70225) = sqrt(102986) = 320.914319. */
const SLOPE = Math.sqrt(102_986);

describe("an invented L-shaped stair from survey to bid, by hand beside every figure", () => {
  test("nothing in it is in error, and only the books wait: for invoices", () => {
    const shown = sheets.flatMap(({ name, cells }) =>
      Object.entries(cells).flatMap(([address, { formula }]) =>
        (formula === undefined ? [] : book.spill(name, address).flat().map((value) => ({ place: `${name}!${address}`, value })))));
    expect(shown.filter(({ value }) => typeof value === "object" && value !== null)).toEqual([]);
    const asking = shown.filter(({ value }) => typeof value === "string" && value.startsWith("– type"));
    expect(new Set(asking.map(({ value }) => value))).toEqual(new Set(["– type in Books A9"]));
  });

  test("it says that it is invented, and which flight a sheet is of", () => {
    expect(at("Flights!A1")).toBe("L stair (invented job): the whole stair");
    expect(at("Job!A1")).toBe("L stair (invented job), invented customer, lower flight");
    expect(at("Order 2!A1")).toBe("Order of blanks, upper flight");
    expect(at("Check 2!A1")).toBe("Code check: au-ncc-2022-class1, upper flight");
    for (const place of ["Flights!A2", "Job!A2", "Job 2!A2"]) expect(String(at(place))).toContain("people and prices are invented");
    expect(sheets.map(({ name }) => name)).toEqual([
      "Flights", "Job", "Survey", "Layout", "Check", "Order", "Cut plan", "Fit", "Takeoff", "Job 2", "Survey 2", "Layout 2", "Check 2",
      "Order 2", "Cut plan 2", "Fit 2", "Takeoff 2", "Yard order", "Bid", "Quote", "Books", "Register",
    ]);
  });

  test("one rise over all: 2715 / 15, the landing eight of them up, 20 of its floor still to be laid", () => {
    expect(["total rise", "risers", "unit rise"].map((label) => figure("stair", label))).toEqual([2715, 15, 181]);
    // 8 x 181; 1448 - 20; 7 x 181.
    expect([figure("1 lower", "landing height"), figure("1 lower", "rough landing height")]).toEqual([1448, 1428]);
    expect(figure("2 upper", "rise of the flight")).toBe(1267);
  });

  test("in plan, by coordinates", () => {
    // Up the lower flight y from 0 to 7 x 265 = 1855, x from 0 to 900; the landing to y = 1855 + 920, for the upper flight is 920 wide;
    // the upper one from x = 900 to 900 + 6 x 265.
    expect([figure("stair", "length in plan"), figure("stair", "width in plan")]).toEqual([2775, 2490]);
    expect([figure("1 lower", "landing depth"), figure("1 lower", "landing width")]).toEqual([920, 900]);
    expect(figure("stair", "plan right of the first flight")).toBe(1590);
    expect(at("Flights!H4")).toBe("2775.0 × 2490.0");
  });

  test("the rails at the newel, by the lines of the nosings", () => {
    // The landing nosing is at y = 1855 - 25, the newel's centre at 1855 + 45: 900 + 70 x 181 / 265. The first nosing above is 25 before
    // its riser face, the newel 45 before it: 900 + 181 - 20 x 181 / 265.
    expect(figure("1 lower", "rail from below at the newel")).toBeCloseTo(900 + 47.8113, 3);
    expect(figure("1 lower", "rail from above at the newel")).toBeCloseTo(1081 - 13.6604, 3);
    expect(at("Flights!J4")).toBeCloseTo(119.5283, 3);
    // 1000 - 900 at the top nosing.
    expect(figure("stair", "guard over the rail")).toBe(100);
  });

  test("the opening in the upper floor reaches over the lower flight", () => {
    // The soffit is 2715 - 290 up. The nosings of the lower flight lie 2000 under it at 425, which is 1448 - 425 = 1023 below the landing:
    // 1023 x 265 / 181 = 1497.7624 from its nosing.
    expect(at("Flights!E23")).toBeCloseTo(1497.7624, 3);
    // 1600 from it they are at 1448 - 1600 x 181 / 265 = 355.1698: 2425 - 355.1698.
    expect(at("Flights!E24")).toBeCloseTo(2069.8302, 3);
    expect([at("Flights!L4"), figure("2 upper", "opening over this flight")]).toEqual(["✓ enough", "all"]);
    expect(cell("Layout!AA7", "headroom found", "value")).toBeCloseTo(2069.8302, 3);
  });

  test("readings are those of corners in space, read to a millimetre", () => {
    const { lower, upper } = inventedTurnedJob;
    const without = (rows: typeof lower.treads): unknown => rows.map((row) => row.slice(0, 6));
    // 140 less a nosing of 25.
    expect(without(lower.treads)).toEqual([...treadReadings(LOWER, 5), landingReadings(LOWER, 115)]);
    expect(without(upper.treads)).toEqual(treadReadings(UPPER, 5));
    expect(without(lower.risersRead)).toEqual(riserReadings(LOWER));
    expect(without(upper.risersRead)).toEqual(riserReadings(UPPER));
  });
});

describe("its lower flight", () => {
  test("has what the whole stair has of it", () => {
    // 8 x 181; the landing's own floor at the top.
    expect(KNOWN.map((address) => at(`Job!${address}`))).toEqual([1448, 8, 265, 900, "none", "one"]);
    expect(["I8", "I9", "I10"].map((address) => at(`Survey!${address}`))).toEqual([27, 15, 20]);
    expect(["B38", "B39", "B40", "B41"].map((address) => at(`Layout!${address}`))).toEqual(["turn", 920, 900, 140]);
  });

  test("its rough rises, finished: the first gains 27 and loses 15, the last gains 20 and loses 27", () => {
    // 169 + 12; 190 - 7.
    expect(spilled("Survey!C8").flat()).toEqual([181, 180, 181, 171, 189, 183, 180, 183]);
    // 189 - 171, neighbours: more than the 5 of neighbours and the 10 of a flight.
    expect([at("Survey!A4"), at("Survey!D4"), at("Survey!E4"), at("Survey!G4")]).toEqual([1448, 18, "✗ not alike", "✓ alike"]);
    expect(spilled("Check!A8").filter(([mark]) => String(mark).startsWith("✗")).map((row) => row[1])).toEqual([
      "riser uniformity adjacent", "riser uniformity",
    ]);
    expect([at("Check!C4"), at("Check!E4")]).toEqual(["✓ none fail", "✓ none fail"]);
  });

  test("7 under the fourth sub-tread make its rises alike within 5, and nothing less does", () => {
    // With the others from 180 to 183 the fourth has to be 178 at least: 171 + 7; the fifth is 189 - 7 then. A greatest rise under 183
    // takes packing under the fifth and the seventh, too, one each, and saves one under the fourth.
    expect(spilled("Survey!E8").flat()).toEqual([181, 180, 181, 178, 182, 183, 180, 183]);
    expect(spilled("Survey!D8").flat()).toEqual([0, 0, 0, 7, 0, 0, 0, ""]);
    expect(at("Survey!F11")).toBe("pack 7.0 mm under sub-tread 4");
    expect(at("Survey!F15")).toBe("ends on the landing");
    // Cut 27 lower, the treads being that thick, and all but the first 6 higher for the lap.
    expect(spilled("Fit!G18").flat()).toEqual([154, 159, 160, 157, 161, 162, 159, 162]);
  });

  test("treads between two skirts, a landing tread and no return", () => {
    // 900; 265 + 25. 140 as typed. 181 - 27 + 6.
    expect(spilled("Order!G8").slice(1)).toEqual([
      ["tread", 900, 290, 27, 7], ["landing tread", 900, 140, 27, 1], ["riser", 900, 160, 18, 8],
    ]);
    // 7 x 39 and 24; 273 x 10 / 300.
    expect(["oak blank 920", "oak landing 1 m", "total"].map((item) => cell("Order!A17", item, "cost"))).toEqual([273, 24, 297]);
    expect(cell("Order!A17", "oak blank 920", "rip cost")).toBeCloseTo(9.1, 9);
  });

  test("two closed skirts, a rail, and no balusters", () => {
    // 7 slopes + 181 / 265 x (50 + 181 x 265 / 320.914319) = 2246.400231 + 0.683019 x 199.463572.
    expect(cell("Layout!N8", "closed skirt length", "value")).toBeCloseTo(2382.6376, 3);
    // 50 + (290 x 181 + 27 x 265) / 320.914319.
    expect(cell("Layout!N8", "closed skirt width", "value")).toBeCloseTo(235.8596, 3);
    expect(cell("Layout!N17", "rail length", "value")).toBeCloseTo(7 * SLOPE, 6);
    expect(["H25", "H26", "H27", "H28"].map((address) => at(`Cut plan!${address}`))).toEqual([0, 2, 1, ""]);
    expect([at("Layout!N28"), at("Layout!B37")]).toEqual(["none", ""]);
  });

  test("eight risers out of two boards of 4.2 m, each skirt and the rail out of one of 2.4 m", () => {
    // Risers are 900 to 903 long: 4190 holds four with three kerfs, 3590 three, 2390 two: at best 21.60 / 4 = 5.40 each, 8 of them 43.20.
    // 2382.6 + 2 x 5 is under 2400; two do not fit on 3000. 2 x 64 and 48.
    expect(spilled("Cut plan!S8").map((row) => [row[0], row[2], row[4]])).toEqual([
      ["oak blank 920", 7, 273], ["oak landing 1 m", 1, 24], ["pine 4.2 m", 2, 43.2], ["skirt 2.4 m", 2, 128],
      ["rail 2.4 m", 1, 48],
    ]);
    expect(at("Cut plan!A4")).toBeCloseTo(219.2, 9);
  });

  test("the first tread, by the legs of its diagonals", () => {
    const first = (heading: string): CellValue => cell("Fit!AA8", 1, heading);
    // sqrt(940² - 265²) = 901.87305 and sqrt(936² - 265²) = 897.70318; s = 2.87305 and 3.29682, mean 3.08494, closure -0.42377.
    expect(first("closure")).toBeCloseTo(-0.42377, 4);
    // -atan(3.08494 / 265); atan((3.08494 + 899 - 901) / 265).
    expect([first("left angle"), first("right angle")].map(Number)).toEqual([expect.closeTo(-0.66697, 4), expect.closeTo(0.23457, 4)]);
    // A quarter of the closure, -0.10594; lean 27 x tan -0.5 deg = -0.23563 at the face. 901 - 0.34157; 901 - 2 x 290 / 265 - 0.34157.
    expect(first("back")).toBeCloseTo(900.65843, 4);
    expect(first("front")).toBeCloseTo(898.46975, 4);
    // The underside is the longer: from its back left corner to its front right one, 901 - 0.10594 + 1.08494 x 290 / 265.
    expect(first("length")).toBeCloseTo(902.08135, 3);
    expect([first("left set"), first("right set")]).toEqual(["right 0.67°, underside longer 0.50°", "right 0.23°, upright"]);
    expect(column("Fit!AA8", "note")).toEqual(["", "", "", "", "", ""]);
  });

  test("the landing tread has a ticket of its own, beside the treads'", () => {
    const [treads, landing, ...others] = tickets("Fit", "treads", spilled("Fit!CA8") as readonly (readonly ActCell[])[]);
    expect([treads?.title, landing?.title, others]).toEqual(["Fit: treads, steps 1 to 5", "Fit: treads, step landing", []]);
    const figure = (act: string): string | undefined => landing?.acts.find((one) => one.act === act)?.cells[0]?.figure;
    // 115 + 25 deep. sqrt(909² - 115²) = 901.69618 and sqrt(907² - 115²) = 899.67995; s = 0.69618 and 1.32005, mean 1.00811, closure
    // -0.62387, a quarter of it -0.15597; at the face 27 x tan -0.5 deg = -0.23563. 901 - 0.39160 is 900.6 long at the back, and to the
    // front corner, 1.00811 x 25 / 115 either way the same, as much: 100 more is burnt, for the underside is the longer.
    expect(["RIP", "MARK RIGHT NOSE", "MARK RIGHT BACK"].map(figure)).toEqual(["140", "1000.5", "1000.5"]);
    expect(at("Fit!A15")).toBe("");
  });

  test("the first riser, by the legs of its diagonals", () => {
    const first = (heading: string): CellValue => cell("Fit!AA40", 1, heading);
    // sqrt(915² - 169²) = 899.25747 and sqrt(916² - 169²) = 900.27496; s = -0.74253 and -1.27496, mean -1.00875, closure 0.53243.
    expect(first("closure")).toBeCloseTo(0.53243, 4);
    // A quarter of it; flare 18 x tan -0.6 deg = -0.18850 at the face. 899 + 0.13311 - 0.18850; a foot 154 / 169 longer.
    expect(first("top")).toBeCloseTo(898.94461, 4);
    expect(first("bottom")).toBeCloseTo(899.85585, 4);
    expect([first("left set"), first("right set")]).toEqual(["left 0.34°, back longer 0.60°", "square"]);
  });
});

describe("its upper flight", () => {
  test("stands on the landing: its floor below, the upper floor above, a fall to the lower floor beside it", () => {
    expect(KNOWN.map((address) => at(`Job 2!${address}`))).toEqual([1267, 7, 265, 920, "right", "one"]);
    expect(["I8", "I9", "I10"].map((address) => at(`Survey 2!${address}`))).toEqual([27, 20, 22]);
    // 2715 - 181; (265 - 2 x 40) / 2.
    expect([at("Layout 2!B36"), at("Layout 2!B37")]).toEqual([2534, 92.5]);
    expect(["B38", "B39", "B40", "B41"].map((address) => at(`Layout 2!${address}`))).toEqual(["", "", "", ""]);
  });

  test("its rough rises, finished: the first gains 27 and loses 20, the last gains 22 and loses 27", () => {
    // 174 + 7; 188 - 5. 184 - 179.
    expect(spilled("Survey 2!C8").flat()).toEqual([181, 179, 180, 184, 180, 180, 183]);
    expect([at("Survey 2!A4"), at("Survey 2!D4"), at("Survey 2!G4"), at("Survey 2!F14")]).toEqual([
      1267, 5, "✓ alike", "ends on the upper floor",
    ]);
    expect(["A4", "C4", "E4"].map((address) => at(`Check 2!${address}`))).toEqual(["✓ none fail", "✓ none fail", "✓ none fail"]);
  });

  test("treads with a return each, and a landing nosing at the upper floor", () => {
    // 920 + 25; 290 + 25; 18 + 25; 920 + 6.
    expect(spilled("Order 2!G8").slice(1)).toEqual([
      ["tread", 945, 290, 27, 6], ["return", 315, 25, 27, 6], ["landing nosing", 945, 43, 27, 1], ["riser", 926, 160, 18, 7],
    ]);
    // 6 x 43 and 14.50.
    expect(["oak blank 1000", "oak nosing 1000", "total"].map((item) => cell("Order 2!A17", item, "cost"))).toEqual([258, 14.5, 272.5]);
  });

  test("seven risers out of a board of 4.2 m and one of 3.6 m, six returns off one strip of the rack", () => {
    // Risers are 924 to 927 long: 4190 holds four, 3590 three, 2390 two. Four and three are 21.60 + 18.90; without the 4.2 m they are
    // at least 7 x 6.30 = 44.10, and two of it 43.20. Six returns of 315 with five kerfs are 1905.
    // Open skirt 6 slopes - 7 x 181 / 320.914319; the closed one 6 slopes + 136.237384: both together are over 3000.
    expect(spilled("Cut plan 2!S8").map((row) => [row[0], row[2], row[4]])).toEqual([
      ["oak blank 1000", 6, 258], ["oak nosing 1000", 1, 14.5], ["pine 3.6 m", 1, 18.9], ["pine 4.2 m", 1, 21.6],
      ["skirt 2.4 m", 2, 128], ["rail 2.4 m", 1, 48],
    ]);
    expect(cell("Layout 2!N8", "open skirt length", "value")).toBeCloseTo(1921.5378, 3);
    expect(cell("Layout 2!N8", "closed skirt length", "value")).toBeCloseTo(2061.7233, 3);
    expect(spilled("Cut plan 2!J8").filter(([stock]) => stock === "rack strip").map((row) => row[3])).toEqual(Array<number>(6).fill(315));
  });

  test("the order to the yard has the goods of both flights, alike goods in one row", () => {
    // Of both flights above: 2 + 1 of pine 4.2 m, 2 + 2 skirts, 1 + 1 rail. 7 + 1 + 3 + 4 + 2 + 6 + 1 + 1.
    expect(spilled("Yard order!A17")).toEqual([
      ["oak blank 920", 920, 300, 27, 7], ["oak landing 1 m", 1000, 140, 27, 1], ["pine 4.2 m", 4200, 175, 18, 3],
      ["skirt 2.4 m", 2400, 286, 18, 4], ["rail 2.4 m", 2400, 60, 45, 2], ["oak blank 1000", 1000, 300, 27, 6],
      ["oak nosing 1000", 1000, 90, 27, 1], ["pine 3.6 m", 3600, 175, 18, 1],
    ]);
    expect([at("Yard order!B4"), at("Yard order!A1")]).toEqual([25, "Yard order: L stair (invented job)"]);
  });

  test("the first tread, by the legs of its diagonals", () => {
    const first = (heading: string): CellValue => cell("Fit 2!AA8", 1, heading);
    // sqrt(956² - 265²) = 918.53742 and sqrt(959² - 265²) = 921.65937; s = -2.46258 and -2.65937, mean -2.56098, closure 0.19679.
    expect(first("closure")).toBeCloseTo(0.19679, 4);
    // atan(2.56098 / 265); atan((-2.56098 + 921 - 919) / 265).
    expect([first("left angle"), first("right angle")].map(Number)).toEqual([expect.closeTo(0.55369, 4), expect.closeTo(-0.12129, 4)]);
    // A quarter of the closure, 0.04920; lean 27 x tan 0.3 deg = 0.14137. 919 + 0.19057; 919 + 2 x 290 / 265 + 0.19057.
    expect(first("back")).toBeCloseTo(919.19057, 4);
    expect(first("front")).toBeCloseTo(921.37925, 4);
    // Toe 921.37925 + 25 / cos 0.12129 deg; heel less 25 x tan(45 - 0.06065 deg) = 24.94714; at the hook less 25 x tan 0.55369 deg.
    expect(first("toe")).toBeCloseTo(946.37931, 4);
    expect(first("heel")).toBeCloseTo(921.43217, 4);
    expect(first("heel at the hook")).toBeCloseTo(921.19057, 3);
    // (90 + 0.12129) / 2.
    expect(first("mitre")).toBeCloseTo(45.06065, 4);
    expect([first("left set"), first("right set")]).toEqual(["left 0.55°, face longer 0.30°", "left 0.12°, upright"]);
  });

  test("the notch for its risers takes skirt, reveal and lap with a millimetre of room", () => {
    // 18 + 6 + 1; 6 + 1.
    expect(spilled("Fit 2!AA70").flat()).toEqual([25, 7]);
  });
});

describe("what goes on the saw, beside the corners in space", () => {
  // Read to a millimetre, a length is out by at most half of one, and at the nose and the face by what angles and leans lose with it.
  test.each([["Fit", LOWER], ["Fit 2", UPPER]])("%s: each tread is within a millimetre of its opening", (sheet, flight) => {
    const across = (y: number, z: number): number =>
      flight.right.at + flight.right.along * y + flight.right.up * z - flight.left.at - flight.left.along * y - flight.left.up * z;
    const [backs, fronts] = ["back", "front"].map((heading) => column(`${sheet}!AA8`, heading).map(Number));
    for (const step of [1, 2, 3, 4, 5]) {
      // The face lies a tread's thickness over the sub-tread; the nose 25 before the riser face below.
      expect(Math.abs((backs?.[step - 1] ?? 0) - across(step * 265, height(flight, step)))).toBeLessThan(1);
      expect(Math.abs((fronts?.[step - 1] ?? 0) - across((step - 1) * 265 - 25, height(flight, step)))).toBeLessThan(1);
    }
  });
});

describe("one bid for both flights", () => {
  test("what each takes", () => {
    const counted = (sheet: string) => Object.fromEntries(spilled(`${sheet}!J8`).map(([item, quantity]) => [String(item), quantity]));
    // 7 x 900; 7 x (3 x 265 + 900) = 11,865; (7 x 290 + 8 x 181) x 900 = 3,130,200, more than one sheet of 2.9768.
    expect(counted("Takeoff")).toEqual({
      "tread without return": 7, "landing tread": 1, riser: 8, "closed skirt": 2, "scribed end": 14, cove: 6.3, screws: 28, nails: 48,
      "adhesive bead": 11.87, "finish area": 3.13, "protection sheets": 2,
    });
    // 6 x (920 + 290); 6 x (3 x 265 + 920) = 10,290; (6 x 290 + 7 x 181) x 920 = 2,766,440.
    expect(counted("Takeoff 2")).toEqual({
      "tread with one return": 6, "landing nosing": 1, riser: 7, "open skirt": 1, "closed skirt": 1, "mitred return": 6,
      "run past riser": 7, notch: 6, "scribed end": 6, cove: 7.26, screws: 24, nails: 42, "adhesive bead": 10.29, "finish area": 2.77,
      "protection sheets": 1,
    });
    // pi / 4 x 5² x 11,865 x 1.1 = 256,268 cubic mm; of 10,290 222,249: a cartridge of 310 ml each.
    expect([at("Takeoff!B14"), at("Takeoff 2!B14")]).toEqual([1, 1]);
  });

  test("what each costs", () => {
    // Labour at 60: treads 2.8 h 168, landing tread 0.6 h 36, risers 120, skirts 240, scribed ends 2.1 h 126, cove 37.80, finish 3.1302 x
    // 0.2 h 37.56, sheets 12, rail 60: 837.36. Goods: 22.05 + 2.80 + 1.44 + 28 + 297 + 43.20 + 176 + 9 = 579.49.
    expect(at("Takeoff!A4")).toBeCloseTo(1416.85, 6);
    // 162 + 24 + 105 + 90 + 120 + 90 + 21 + 36 + 54 + 43.56 + 2.76644 x 0.2 h 33.20 + 6 + 120 = 904.76; 39 + 25.41 + 2.40 + 1.26 + 14 +
    // 272.50 + 40.50 + 176 + 9 = 580.07.
    expect(at("Takeoff 2!A4")).toBeCloseTo(1484.83, 6);
  });

  test("the price", () => {
    // 1416.85 + 1484.83; a tenth is 290.17; 3191.85 / 0.8 = 3989.81; a tenth of that.
    const bid = new Map(spilled("Bid!A19").map(([label, cost]) => [label, cost]));
    expect(["direct", "overhead", "profit", "price", "tax", "total"].map((label) => bid.get(label))).toEqual([
      2901.68, 290.17, 797.96, 3989.81, 398.98, 4388.79,
    ]);
    expect([at("Job!G4"), at("Job 2!G4"), at("Flights!E31")]).toEqual([3989.81, 3989.81, 3989.81]);
  });
});

describe("a change on the sheet of the whole stair moves every flight", () => {
  const changed = async (cells: Readonly<Record<string, string | number>>, look: () => void): Promise<void> => {
    const before = Object.fromEntries(Object.keys(cells).map((address) => [address, { value: book.value("Flights", address) as string }]));
    book.put("Flights", Object.fromEntries(Object.entries(cells).map(([address, value]) => [address, { value }])));
    await book.settled();
    look();
    book.put("Flights", before);
    await book.settled();
    expect(at("Bid!A4")).toBe(3989.81);
  };

  test("30 more of total rise are 2 a riser", async () => {
    await changed({ B14: 2745 }, () => {
      // 2745 / 15 = 183; 8 and 7 of them.
      expect([at("Job!B11"), at("Job 2!B11"), at("Flights!D4")]).toEqual([1464, 1281, 1464]);
      expect([cell("Layout!AA7", "unit rise", "value"), cell("Layout 2!AA7", "unit rise", "value")]).toEqual([183, 183]);
      // 183 - 27 + 6.
      expect(cell("Order!G8", "riser", "width")).toBe(162);
      expect(at("Survey!A5")).toBe("✗ on Job: 1464.0 mm");
    });
  }, ENGINE_TIME);

  test("nine risers below: lower rises above, too, another tread below, and the opening ends too soon", async () => {
    await changed({ E9: 9 }, () => {
      // 2715 / 16 = 169.6875; 9 and 7 of them; 8 treads.
      expect([at("Job!B12"), at("Job!B11"), at("Job 2!B11")]).toEqual([9, 1527.1875, 1187.8125]);
      expect([cell("Order!G8", "tread", "quantity"), cell("Order 2!G8", "tread", "quantity")]).toEqual([8, 6]);
      expect(figure("stair", "length in plan")).toBe(3040);
      // 425 is 1102.1875 below the landing: x 265 / 169.6875 = 1721.28, more than 1600.
      expect(at("Flights!E23")).toBeCloseTo(1721.2799, 3);
      expect([at("Flights!L4"), at("Layout!J4")]).toEqual(["✗ too little", "✗ headroom"]);
      expect(at("Takeoff!A4")).not.toBe("–");
      expect(at("Bid!A4")).not.toBe("–");
    });
  }, ENGINE_TIME);

  test("the turn to the other side, the upper flight open on the left and wider", async () => {
    await changed({ E12: "quarter left", F16: "left", F11: 940 }, () => {
      expect([figure("stair", "plan left of the first flight"), figure("stair", "plan right of the first flight")]).toEqual([1590, null]);
      expect([at("Job 2!B15"), at("Job 2!B14"), figure("1 lower", "landing depth")]).toEqual(["left", 940, 940]);
      // 940 + 25.
      expect(cell("Order 2!G8", "tread", "length")).toBe(965);
      expect([at("Job!B15"), at("Job!B14")]).toEqual(["none", 900]);
    });
  }, ENGINE_TIME);

  test("what it lacks, it asks for, and so does every sheet of a flight", async () => {
    await changed({ B14: "" }, () => {
      for (const place of ["Flights!H8", "Survey!C8", "Layout!AA7", "Order!A17", "Survey 2!C8", "Layout 2!AA7", "Takeoff 2!AY8"])
        expect([place, at(place)]).toEqual([place, "– type in Flights B14"]);
    });
    await changed({ F9: "" }, () => expect(at("Layout!AA7")).toBe("– type in Flights F9"));
  }, ENGINE_TIME);
});
