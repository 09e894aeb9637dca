import fc from "fast-check";
import { call } from "../../../../src/functions/call";
import { isFailed } from "../../../../src/functions/cells";
import { CHECK } from "../../../../src/functions/code/check";
import type { Declaration } from "../../../../src/functions/declare";
import { LAYOUT } from "../../../../src/functions/layout/layout";
import { ONEFLIGHT } from "../../../../src/functions/layout/oneflight";
import { RAIL } from "../../../../src/functions/layout/rail";
import { SKIRT } from "../../../../src/functions/layout/skirt";
import { STORYPOLE } from "../../../../src/functions/layout/storypole";
import { STRINGER } from "../../../../src/functions/layout/stringer";
import { BLANK } from "../../../../src/functions/order/blank";
import { ORDER } from "../../../../src/functions/order/order";
import { TAKEOFF } from "../../../../src/functions/takeoff/takeoff";
import { oneFlight } from "../../../../src/solver/layout/flights/one-flight";
import type { FlightGiven } from "../../../../src/solver/layout/flights/flight-given";
import { lengthOf } from "../../../../src/solver/length/length";
import { isProblem } from "../../../../src/solver/problem";

type Cell = string | number;
type Table = readonly (readonly Cell[])[];

const answerOf = (declaration: Declaration, ...given: readonly (Table | Cell)[]): Table => {
  const answer = call(declaration, given);
  if (isFailed(answer)) throw new Error(`${declaration.id}: ${answer.says}`);
  if (!Array.isArray(answer)) throw new Error(String(answer));
  return answer as unknown as Table;
};

const valueOf = (rows: Table, label: string): Cell | undefined => rows.find(([name]) => name === label)?.[1];
const rowOf = (rows: Table, item: string): readonly Cell[] | undefined => rows.find(([name]) => name === item);

/** An L with a closed lower flight and an upper one open on its left; floors to be laid on the landing and above. */
const STAIR: Table = [
  ["total rise", 108.5], ["run", 10], ["width", 36], ["handrail height", 36], ["lower build up", 0.25], ["upper build up", 0.75],
  ["headroom", 80], ["floor thickness", 11], ["stringers", 4],
];
const L: Table = [
  ["flight", "risers", "turn", "landing build up", "open end", "landing tread", "width", "run"],
  [1, 7, "quarter left", 0.5, "none", 5.5, "", ""],
  [2, 8, "", "", "left", "", 34, 9.5],
];
const lower = answerOf(ONEFLIGHT, STAIR, L, 1);
const upper = answerOf(ONEFLIGHT, STAIR, L, 2);

describe("one flight is an ordinary stair table", () => {
  // By hand: rise 108.5 / 15 = 7.2333; 7 of them 50.6333, 8 of them 57.8667.
  test("LAYOUT has its risers, treads, rise and floors", () => {
    const [one, two] = [answerOf(LAYOUT, lower), answerOf(LAYOUT, upper)];
    expect(["risers", "treads", "total run", "width"].map((label) => valueOf(one, label))).toEqual([7, 6, 60, 36]);
    expect(["risers", "treads", "total run", "width"].map((label) => valueOf(two, label))).toEqual([8, 7, 66.5, 34]);
    expect(valueOf(one, "total rise")).toBeCloseTo(50.6333, 4);
    expect(valueOf(two, "total rise")).toBeCloseTo(57.8667, 4);
    // Tread 1 less the floor under its foot: 1/4 below the lower flight, the landing's 1/2 below the upper.
    expect([valueOf(one, "drop"), valueOf(two, "drop")]).toEqual([0.75, 0.5]);
    // Rough landing 1/2, rough floor 3/4 under the finished one, to the level cut a rise and a tread below: 7.2333 - floor + 1.
    expect(valueOf(one, "hang")).toBeCloseTo(7.7333, 4);
    expect(valueOf(two, "hang")).toBeCloseTo(7.4833, 4);
  });

  test("an opening that goes on past the landing is no figure of the upper flight alone", () => {
    // 80 + 11 is more than the 57.87 it climbs; with 13 of the 15 risers, 94.03, it ends within: 91 x 10 / 7.2333 = 125.81.
    expect(valueOf(answerOf(LAYOUT, upper), "opening needed from the landing nosing")).toBe("");
    expect(valueOf(answerOf(LAYOUT, lower), "opening needed from the landing nosing")).toBe("");
    const long: Table = [["risers", "turn"], [2, "quarter left"], [13, ""]];
    const found = valueOf(answerOf(LAYOUT, answerOf(ONEFLIGHT, STAIR, long, 2)), "opening needed from the landing nosing");
    expect(found).toBeCloseTo(125.81, 2);
    // An opening of 150 reaches past 8 runs: over the landing, 57.8667 under the floor, less the floor's 11.
    const open = answerOf(ONEFLIGHT, [...STAIR, ["opening", 150]], [["risers", "turn"], [7, "quarter left"], [8, ""]], 2);
    expect(valueOf(answerOf(LAYOUT, open), "headroom found")).toBeCloseTo(46.8667, 4);
  });

  test("SKIRT and RAIL are those of a stair typed by hand", () => {
    const typed = (total: number, risers: number, run: number, below: number): Table =>
      [["total rise", total], ["risers", risers], ["run", run], ["lower build up", below], ["handrail height", 36]];
    const both = [[lower, 50.6333333333333, 7, 10, 0.25], [upper, 57.8666666666667, 8, 9.5, 0.5]] as const;
    for (const [flight, total, risers, run, below] of both) {
      for (const reader of [SKIRT, RAIL]) {
        const [found, wanted] = [answerOf(reader, flight), answerOf(reader, typed(total, risers, run, below))];
        for (const [index, [label, value]] of wanted.entries()) {
          if (typeof value === "number") expect([label, found[index]?.[1]]).toEqual([label, expect.closeTo(value, 9)]);
        }
      }
    }
  });

  test("STRINGER and STORYPOLE take its figures", () => {
    const size = (rows: Table, label: string) => Number(valueOf(rows, label));
    const rise = size(answerOf(LAYOUT, upper), "unit rise");
    const cut = answerOf(STRINGER, rise, size(upper, "run"), size(upper, "risers"), 11.25, 1, size(upper, "lower build up"));
    // 7 slopes of hypot(7.2333, 9.5) = 11.9403, less 1/2 of drop x 7.2333 / 11.9403.
    expect(valueOf(cut, "length")).toBeCloseTo(7 * 11.9403 - 0.5 * (7.2333 / 11.9403), 3);
    const pole = answerOf(STORYPOLE, Number(valueOf(upper, "total rise")), 8);
    // 57.8667 to the nearest 1/16 is 57 7/8.
    expect(pole[pole.length - 1]?.slice(1, 3)).toEqual([expect.closeTo(57.8667, 4), 57.875]);
  });

  test("BLANK: closed below, a return and a landing nosing above; the landing tread is a piece of its own", () => {
    const [one, two] = [answerOf(BLANK, lower), answerOf(BLANK, upper)];
    // Lower: 6 treads of 36 x 11 1/4, no return; the landing tread 36 x 5 1/2, once; 7 risers of 36.
    expect(rowOf(one, "tread")?.slice(1, 5)).toEqual([36, 11.25, 1, 6]);
    expect(rowOf(one, "return")).toBeUndefined();
    expect(rowOf(one, "landing nosing")).toBeUndefined();
    expect(rowOf(one, "landing tread")?.slice(1, 5)).toEqual([36, 5.5, 1, 1]);
    expect([rowOf(one, "riser")?.[1], rowOf(one, "riser")?.[4]]).toEqual([36, 7]);
    // Upper: 7 treads of 34 + 1 1/4 by 9 1/2 + 1 1/4, as many returns; the floor's nosing 1 1/4 + 3/4 wide.
    expect(rowOf(two, "tread")?.slice(1, 5)).toEqual([35.25, 10.75, 1, 7]);
    expect(rowOf(two, "return")?.[4]).toBe(7);
    expect(rowOf(two, "landing tread")).toBeUndefined();
    expect(rowOf(two, "landing nosing")?.slice(1, 5)).toEqual([35.25, 2, 1, 1]);
  });

  test("TAKEOFF: the landing tread is counted once and is no tread", () => {
    const counts = (rows: Table) => Object.fromEntries(rows.slice(1).map(([item, quantity]) => [String(item), quantity]));
    expect(counts(answerOf(TAKEOFF, lower))).toMatchObject({
      "tread without return": 6, "landing tread": 1, riser: 7, "closed skirt": 2, screws: 24,
    });
    expect(counts(answerOf(TAKEOFF, lower))).not.toHaveProperty("landing nosing");
    expect(counts(answerOf(TAKEOFF, upper))).toMatchObject({
      "tread with one return": 7, "landing nosing": 1, riser: 8, "open skirt": 1, "closed skirt": 1, "mitred return": 7,
    });
    expect(counts(answerOf(TAKEOFF, upper))).not.toHaveProperty("landing tread");
  });

  test("ORDER buys it from stock of its own, and says so where there is none", () => {
    const stock: Table = [["label", "length", "width", "thickness", "price"], ["oak 42", 42, 11.5, 1, 52], ["landing oak", 42, 5.5, 1, 31]];
    expect(rowOf(answerOf(ORDER, lower, stock), "landing oak")?.slice(1, 6)).toEqual([42, 5.5, 1, 31, 31]);
    expect(rowOf(answerOf(ORDER, lower, stock), "oak 42")?.[3]).toBe(6);
    const short: Table = [["label", "length", "width", "thickness", "price"], ["oak 42", 42, 11.5, 1, 52]];
    // It is a tread's length: the same board covers it, 6 treads and it.
    expect(answerOf(ORDER, lower, short).filter(([item]) => item === "oak 42").map((row) => row[3])).toEqual([6, 1]);
  });

  test("CHECK has the landing of the lower flight and the height of the whole stair", () => {
    const given = (rows: Table, item: string) => rows.filter(([name]) => String(name).startsWith(item)).map(([, value]) => value);
    const checked = answerOf(CHECK, lower, "irc-2021");
    // As deep as the flight above is wide.
    expect(given(checked, "landing depth")).toEqual([34]);
    expect(valueOf(lower, "stair height")).toBe(108.5);
    expect(given(checked, "riser height")[0]).toBeCloseTo(7.2333, 4);
  });
});

describe("the landing tread", () => {
  const blankOf = (stair: Table, flights: Table) => answerOf(BLANK, answerOf(ONEFLIGHT, stair, flights, 1));
  const U = (...last: readonly Cell[]): Table =>
    [["risers", "turn", "well", "landing tread", "landing tread length"], [7, "half left", 4, ...last], [8, "", "", "", ""]];

  test("the least depth where nobody says it, of its own length where somebody does", () => {
    // 1 1/4 + 3/4; 36 + 4 + 36 across both flights of the half turn.
    expect(rowOf(blankOf(STAIR, U("", 76)), "landing tread")?.slice(1, 5)).toEqual([76, 2, 1, 1]);
    expect(rowOf(blankOf(STAIR, U("", "")), "landing tread")?.slice(1, 3)).toEqual([36, 2]);
    expect(String(rowOf(blankOf(STAIR, U("", "")), "landing tread")?.[5])).toMatch(/the least width, riser thickness and nosing/);
    expect(String(rowOf(blankOf(STAIR, U(1.5, "")), "landing tread")?.[5])).toMatch(/less than the riser and its nosing together/);
  });

  test("the saw allowances are added to it", () => {
    const trimmed = blankOf([...STAIR, ["trim length", 0.5], ["trim depth", 0.25]], U(5.5, 76));
    expect(rowOf(trimmed, "landing tread")?.slice(1, 3)).toEqual([76.5, 5.75]);
  });

  test("the stair's row is for all landings, the flight's row for one, none for none", () => {
    const all: Table = [...STAIR, ["landing tread", 3.5], ["landing tread length", 40]];
    expect(rowOf(blankOf(all, U("", "")), "landing tread")?.slice(1, 3)).toEqual([40, 3.5]);
    expect(rowOf(blankOf(all, U(5.5, 76)), "landing tread")?.slice(1, 3)).toEqual([76, 5.5]);
    const none = blankOf(all, U("none", ""));
    expect([rowOf(none, "landing tread"), rowOf(none, "landing nosing")]).toEqual([undefined, undefined]);
    const plain = blankOf([...STAIR, ["landing nosing", "no"]], U("", ""));
    expect([rowOf(plain, "landing tread"), rowOf(plain, "landing nosing")]).toEqual([undefined, undefined]);
  });
});

test("sides and returns are the stair's, or the flight's own", () => {
  const stair: Table = [
    ...STAIR, ["open end", "both"], ["overhang", 1], ["return width", 1.5], ["run past", 0.5], ["open sides", "one"], ["handrails", "one"],
  ];
  const flights: Table = [
    ["risers", "turn", "open end", "overhang", "return width", "run past", "open sides", "handrails"],
    [7, "quarter left", "none", "", "", "", "none", "both"],
    [8, "", "", "none", 1.25, "none", "", ""],
  ];
  const values = (number: number) => {
    const rows = answerOf(ONEFLIGHT, stair, flights, number);
    return ["open end", "overhang", "return width", "run past", "open sides", "handrails"].map((label) => valueOf(rows, label));
  };
  expect(values(1)).toEqual(["none", 1, 1.5, 0.5, "none", "both"]);
  expect(values(2)).toEqual(["both", 0, 1.25, 0, "one", "one"]);
});

test("a landing that nothing is said of is finished, whatever is still to be laid on the lower floor", () => {
  const stair: Table = [["total rise", 108.5], ["run", 10], ["width", 36], ["lower build up", 0.75]];
  const flights: Table = [["risers", "turn"], [7, "quarter left"], [8, ""]];
  const above = answerOf(ONEFLIGHT, stair, flights, 2);
  expect(valueOf(answerOf(ONEFLIGHT, stair, flights, 1), "lower build up")).toBe(0.75);
  expect([valueOf(above, "lower build up"), valueOf(above, "upper build up")]).toEqual([undefined, undefined]);
  // A tread of 1 on a finished landing.
  expect(valueOf(answerOf(LAYOUT, above), "drop")).toBe(1);
});

test("the result of LAYOUT serves as the stair, with what it assumed marked again", () => {
  const whole = answerOf(LAYOUT, [["total rise", 108.5], ["run", 10], ["width", 36]]);
  const one = answerOf(ONEFLIGHT, whole, [["risers", "turn"], [7, "quarter left"], [8, ""]], 2);
  // LAYOUT counted its risers from the greatest rise, 108.5 / 7.75 = 14: an assumption that gives way to the 15 of the flights.
  expect(valueOf(one, "total rise")).toBeCloseTo(57.8667, 4);
  expect(rowOf(one, "nosing")?.[3]).toBe("assumed: common practice, no source");
  expect(rowOf(one, "treads")).toBeUndefined();
});

test("risers in line without a turn are counted over straight landings", () => {
  const flights: Table = [["risers", "turn"], [4, "none"], [5, "quarter left"], [3, "none"], [3, ""]];
  const inLine = [1, 2, 3, 4].map((number) => valueOf(answerOf(ONEFLIGHT, STAIR, flights, number), "risers before turn"));
  // 4 + 5 before the turn, 3 + 3 after it.
  expect(inLine).toEqual([9, 9, 6, 6]);
  const landings = [1, 2, 3, 4].map((number) => valueOf(answerOf(ONEFLIGHT, STAIR, flights, number), "landing"));
  expect(landings).toEqual(["straight", "turn", "straight", undefined]);
});

describe("one rise over the whole stair, to the last digit", () => {
  const counts = fc.array(fc.integer({ min: 2, max: 12 }), { minLength: 2, maxLength: 5 });
  const sixteenths = fc.integer({ min: 900, max: 4000 }).map((count) => count / 16);

  test("exactly, the flights' rises add up to the stair's", () => {
    fc.assert(
      fc.property(counts, sixteenths, (risers, total) => {
        const none = lengthOf(0, "in");
        const rows = risers.map((count): FlightGiven => ({ risers: count, turn: "none", well: none, setBack: none, newelPast: none }));
        const given = { totalRise: lengthOf(total, "in"), run: lengthOf(10, "in"), width: lengthOf(36, "in") };
        const rises = rows.map((_, index) => {
          const lines = oneFlight(given, {}, rows, index + 1);
          if (isProblem(lines)) throw new Error(lines.problem);
          return lengthOf(0, "in").plus((lines.find(({ key }) => key === "totalRise")?.value ?? 0) as never);
        });
        const sum = rises.reduce((all, rise) => all.plus(rise));
        expect(sum.minus(given.totalRise).abs().lt("1e-50")).toBe(true);
      }),
    );
  });

  test("through cells, of fifteen digits, every flight has the same unit rise", () => {
    fc.assert(
      fc.property(counts, sixteenths, (risers, total) => {
        const flights: Table = [["risers"], ...risers.map((count) => [count])];
        const stair: Table = [["total rise", total], ["run", 10], ["width", 36]];
        const fifteen = (cell: Cell): Cell => (typeof cell === "number" ? Number(cell.toPrecision(15)) : cell);
        const rises = risers.map((_, index) => {
          const cells = answerOf(ONEFLIGHT, stair, flights, index + 1).map((row) => row.map(fifteen));
          return valueOf(answerOf(LAYOUT, cells), "unit rise");
        });
        expect(new Set(rises).size).toBe(1);
        const all = risers.reduce((sum, count) => sum + count, 0);
        expect(rises[0]).toBeCloseTo(total / all, 12);
      }),
      { numRuns: 60 },
    );
  });

  test("without the height of the whole stair two flights may differ in the fifteenth digit", () => {
    const rise = (flight: Table): Cell | undefined => valueOf(answerOf(LAYOUT, flight.map((row) => row.map((cell) =>
      typeof cell === "number" ? Number(cell.toPrecision(15)) : cell))), "unit rise");
    const alone = (flight: Table): Table => flight.filter(([label]) => label !== "stair height" && label !== "stair risers");
    expect(rise(lower)).toBe(rise(upper));
    expect(rise(alone(lower))).not.toBe(rise(alone(upper)));
  });

  test("a stair height that says something else is left to the check", () => {
    const stair: Table = [["total rise", 60], ["risers", 8], ["run", 10], ["stair height", 120], ["stair risers", 15]];
    // 60 / 8 = 7.5 and 120 / 15 = 8 are two rises: the flight's own holds.
    expect(valueOf(answerOf(LAYOUT, stair), "unit rise")).toBe(7.5);
  });
});

describe("what makes no stair is said", () => {
  const refused = (stair: Table, flights: Table, number = 1): string => {
    const answer = call(ONEFLIGHT, [stair, flights, number]);
    if (!isFailed(answer)) throw new Error("an answer");
    return answer.says;
  };
  const plain: Table = [["total rise", 108.5], ["run", 10], ["width", 36]];
  const two = (heading: string, first: Cell, second: Cell = "", turn = "quarter left"): Table =>
    [["flight", "risers", "turn", heading], [1, 7, turn, first], [2, 8, "", second]];

  test.each([
    [[...plain, ["top tread", "flush"]], two("run", ""), "top tread: must be floor"],
    [[["run", 10], ["width", 36]], two("run", ""), "total rise: is missing"],
    [[["total rise", 108.5], ["width", 36]], two("run", 10), "run: is missing for flight 2"],
    [[["total rise", 108.5], ["run", 10]], two("width", "", 36), "width: is missing for flight 1"],
    [plain, two("landing depth", "", 40), "landing depth: flight 2 is the last"],
    [plain, two("well", "", 4), "well: flight 2 is the last"],
    [plain, two("newel past", "", 2), "newel past: flight 2 is the last"],
    [plain, two("landing tread", "", "none"), "landing tread: flight 2 is the last"],
    [plain, [["risers", "turn"], [7, "quarter left"], [8, "half left"]], "turn: flight 2 is the last"],
    [plain, two("well", 4), "well: flight 1 makes no half turn"],
    [plain, two("set back", 4, "", "none"), "set back: flight 1 makes no turn"],
    [plain, two("set back", 36), 'set back: 36" at flight 1 leaves nothing of the landing, which has 36" that way'],
    [plain, [["flight", "risers"], [2, 8], [1, 7]], "flight: 1 stands after 2"],
    [plain, [["flight", "risers"], [1, 8], [2, 0]], "risers in row 3"],
  ] as const)("%j with %j", (stair, flights, says) => {
    expect(refused(stair, flights)).toContain(says);
  });
});
