import { exact, Exact } from "../../../src/solver/length/exact";
import { lengthOf } from "../../../src/solver/length/length";
import { resolvedStair } from "../../../src/solver/layout/resolved-stair";
import type { StairFacts } from "../../../src/solver/layout/stair-facts";
import { isProblem } from "../../../src/solver/problem";
import { adhesive } from "../../../src/solver/takeoff/adhesive";
import { cartridge } from "../../../src/solver/takeoff/cartridge";
import { type Allowance, takeoff } from "../../../src/solver/takeoff/takeoff";

/** Each limit of a takeoff at its figure and a hair to either side; by hand. */

const inch = (inches: number) => lengthOf(inches, "in");
const FACTS: StairFacts = { totalRise: inch(105), risers: 14, run: inch(10), width: inch(36), openEnd: "right", runPast: inch(0.25) };
const linesOf = (facts: StairFacts, unit: "in" | "mm" = "in", allowances: readonly Allowance[] = []) => {
  const stair = resolvedStair(facts);
  if (isProblem(stair)) throw new Error(stair.problem);
  return takeoff(stair, allowances, unit);
};
const lineOf = (item: string, facts: StairFacts = {}, unit: "in" | "mm" = "in", allowances: readonly Allowance[] = []) => {
  const lines = linesOf({ ...FACTS, ...facts }, unit, allowances);
  if (isProblem(lines)) throw new Error(lines.problem);
  return lines.find((line) => line.item === item);
};
const count = (item: string, facts: StairFacts = {}): number | undefined => lineOf(item, facts)?.quantity?.toNumber();

test("a screw leaves an inch in the tread, or 25 mm, and a hair less is too little", () => {
  const screws = (thickness: number, unit: "in" | "mm" = "in"): string | undefined =>
    lineOf("screws", { riserThickness: lengthOf(thickness, unit) }, unit)?.howItWasCounted;
  expect([screws(1), screws(1.01)]).toEqual([
    expect.stringMatching(/; 2 in screws leave 1 in in the tread$/),
    expect.stringMatching(/; 2 in screws leave only 0[.]99 in in the tread: use longer ones$/),
  ]);
  expect([screws(25, "mm"), screws(25.1, "mm")]).toEqual([
    expect.stringMatching(/; 50 mm screws leave 25 mm in the tread$/), expect.stringMatching(/leave only 24[.]9 mm .*use longer ones$/),
  ]);
});

test("only risers that run past an open skirt are notched", () => {
  expect([count("run past riser"), count("notch")]).toEqual([14, 13]);
  expect([count("run past riser", { openEnd: "both" }), count("notch", { openEnd: "both" })]).toEqual([28, 26]);
  for (const facts of [{ runPast: inch(0) }, { openEnd: "none" as const }])
    expect([count("run past riser", facts), count("notch", facts)]).toEqual([undefined, undefined]);
});

test("the piece at the top is that of the landing, of the floor, or none", () => {
  const top = (facts: StairFacts): unknown => [count("landing nosing", facts), count("landing tread", facts)];
  expect([top({}), top({ landingTread: inch(3) }), top({ landingNosing: false }), top({ topTread: "flush" })]).toEqual([
    [1, undefined], [undefined, 1], [undefined, undefined], [undefined, undefined],
  ]);
  expect(top({ landingTread: inch(3), topTread: "flush" })).toEqual([undefined, undefined]);
});

test("ends decide how many returns a tread has, and which ends are scribed", () => {
  const items = [
    "tread without return", "tread with one return", "tread with two returns", "mitred return", "scribed end", "open skirt", "closed skirt",
  ];
  const ends = (openEnd: "none" | "left" | "right" | "both"): unknown => items.map((item) => count(item, { openEnd }));
  expect(ends("none")).toEqual([13, undefined, undefined, undefined, 26, undefined, 2]);
  for (const side of ["left", "right"] as const) expect(ends(side)).toEqual([undefined, 13, undefined, 13, 13, 1, 1]);
  expect(ends("both")).toEqual([undefined, undefined, 13, 26, undefined, 2, undefined]);
});

describe("an allowance", () => {
  const allowed = (item: string, allowance: number) => lineOf(item, {}, "in", [{ item, allowance }]);

  test("adds its share, and what is counted in pieces is whole", () => {
    // 14 risers and a tenth are 15.4, a seventh of 14 exactly 2.
    expect([allowed("riser", 0.1)?.quantity?.toNumber(), allowed("riser", 1 / 7)?.quantity?.toNumber()]).toEqual([16, 16]);
    expect(allowed("riser", 0.1)?.howItWasCounted).toMatch(/, and 10 % = 16$/);
    // 13 treads x (36 + 11 1/4) / 12 = 51.1875 ft of cove, half as much again 76.78125.
    expect(allowed("cove", 0.5)?.quantity?.toNumber()).toBe(76.78125);
    expect(allowed("riser", 0)?.howItWasCounted).toBe("14 risers = 14");
  });

  test("that is of nothing, or of two sizes, is refused", () => {
    const of = (...allowances: Allowance[]): unknown => {
      const found = linesOf(FACTS, "in", allowances);
      return isProblem(found) ? [found.problem, found.details] : "answered";
    };
    expect(of({ item: "risr", allowance: 0.1 })).toEqual([
      "allowance-for-nothing", { item: "risr", nearest: expect.stringContaining('nearest is "riser"') },
    ]);
    expect(of({ item: "Risers", allowance: 0.1 }, { item: "riser", allowance: 0.2 })).toEqual([
      "two-allowances", { item: "Risers", first: 0.1, second: 0.2 },
    ]);
    expect(of({ item: "Risers", allowance: 0.1 }, { item: "riser", allowance: 0.1 })).toBe("answered");
    // An item that this stair has none of is an item all the same.
    expect(of({ item: "tread with two returns", allowance: 0.1 })).toBe("answered");
  });
});

test("without a rise or a run there is no count, without a width only what lies across is missing", () => {
  const of = (facts: StairFacts): unknown => {
    const found = linesOf(facts);
    return isProblem(found) ? found.problem : found.filter(({ bad }) => bad !== undefined).map(({ item }) => item);
  };
  expect([of({ run: inch(10) }), of({ totalRise: inch(105), risers: 14 })]).toEqual(["no-total-rise", "no-run"]);
  const { width: _, ...narrow } = FACTS;
  expect([of(narrow), of(FACTS)]).toEqual([["cove", "adhesive bead", "finish area", "protection sheets"], []]);
});

test("a bead is up to two inches wide, and a cartridge more is opened for a hair more", () => {
  const volume = exact(1_000_000);
  const opened = (length: number, wide: number, waste = 0): unknown => {
    const found = adhesive(lengthOf(length, "mm"), lengthOf(wide, "mm"), volume, exact(waste));
    return isProblem(found) ? found.problem : found;
  };
  expect([opened(1, 50.8), opened(1, 50.9)]).toEqual([1, "wide-bead"]);
  // Pi / 4 x 20 x 20 is 314.159 square millimetres: 3,183 mm of it are 999,969 cubic ones, 3,184 are 1,000,283.
  expect([opened(3_183, 20), opened(3_184, 20), opened(3_183, 20, 0.1), opened(3_183, 20, 1)]).toEqual([1, 2, 2, 2]);
});

describe("a cartridge", () => {
  const holds = (text: string): unknown => {
    const found = cartridge(text);
    return found instanceof Exact ? found.toNumber() : found;
  };

  test("of a bare number is fluid ounces up to a gallon", () => {
    expect(holds("128.01")).toMatchObject({ problem: "volume-in-millilitres" });
    // 128 x 29,573.5295625.
    for (const text of ["128", "+128 oz", "128.", "128 fluid oz", "128 us fl oz."]) expect(holds(text)).toBe(3_785_411.784);
    expect([holds(".5 ml"), holds("0.5ML"), holds("500 ml")]).toEqual([500, 500, 500_000]);
  });

  test("that is none says what it may be", () => {
    expect(holds("10 , 1 ml")).toMatchObject({ problem: "volume-comma", details: { instead: "10.1 ml" } });
    for (const text of ["", "ml", ".", "10 l", "10 ml 5", "x10", "10 flozz", "oz 10"])
      expect(holds(text)).toMatchObject({ problem: "not-a-volume" });
    for (const text of ["0", "0.0 oz", ".0 ml"]) expect(holds(text)).toMatchObject({ problem: "no-volume" });
  });
});
