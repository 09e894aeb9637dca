import fc from "fast-check";
import { lengthOf } from "../../../../src/solver/length/length";
import { isProblem } from "../../../../src/solver/problem";
import { draws } from "../../../../src/solver/yield/draws";
import type { Plain } from "../tally/board";
import { leastOfEvery } from "./every-glue-up";
import { faultsOf } from "./glue-checker";
import { answered, gapOf, isProven, planned, type PlainGlueUp, totalOf } from "./glue-job";
import { asGlueUp, tinyJob } from "./tiny-jobs";

const sound = (job: PlainGlueUp) => {
  const rows = planned(job);
  expect(faultsOf(job, rows)).toEqual([]);
  return rows;
};

const FIVE: readonly Plain[] = [
  { length: 92, width: 6.5, price: 36 }, { length: 92, width: 8, price: 44.5 }, { length: 138, width: 6.25, price: 52 },
  { length: 92, width: 5.25, price: 29 }, { length: 138, width: 4.5, price: 37.5 },
];
const TREADS = [{ label: "tread", length: 42, width: 11.25, quantity: 3 }];

describe("by hand", () => {
  // A section nets A 6 1/8 in two strips, D 5 1/8, E 4 3/8: 2 x 6 1/8 + 2 x 5 1/8 + 3 x 4 3/8 = 35 5/8 of 3 x 11 1/2 = 34 1/2. No two
  // boards net as much, B and C 32 7/8, and A, D and E are the cheapest three.
  test("three treads out of A, D and E at 102.50", () => {
    const rows = sound({ panels: TREADS, tally: FIVE });
    expect(totalOf(rows)).toMatchObject({ cost: 102.5, boardsInAll: 3, stripsInAll: 9 });
    expect([...new Set(rows.flatMap(({ board }) => board ?? []))].sort()).toEqual(["A", "D", "E"]);
    expect(totalOf(rows).note).toMatch(
      /^best possible \(proven\): no choice of boards costs less; [23] panels mix boards; same board costs 15.50 more$/,
    );
  });

  // Of one board: B 15 1/4, C 17 5/8, A 12 1/4, E 13 1/8 hold one tread each, D 10 1/4 none: A + B + E.
  test("each tread of one board costs 118.00", () => {
    const rows = sound({ panels: TREADS, tally: FIVE, terms: { together: "board" } });
    expect(totalOf(rows)).toMatchObject({ cost: 118, note: "best possible (proven): no choice of boards costs less" });
  });

  const WIDE: readonly Plain[] = [
    { length: 92, width: 8, price: 44 }, { length: 92, width: 8, price: 44 }, { length: 92, width: 6, price: 33 },
    { length: 92, width: 7.5, price: 40 }, { length: 92, width: 9, price: 50 },
  ];
  const TWO = [{ label: "tread", length: 42, width: 11.25, quantity: 2 }];
  test("two strips of 5 1/2 are 11 of 11 1/2; up to 8 wide they are 5 7/8 and 5 5/8, or as much again", () => {
    expect(answered({ panels: TWO, tally: WIDE, terms: { strips: 2 } })).toMatchObject({ problem: "too-few-strips" });
    const rows = sound({ panels: TWO, tally: WIDE, terms: { strips: 2, greatestStrip: 8 } });
    // By hand: no one board nets 23 out of two sections, and C and D are the cheapest two.
    expect(totalOf(rows)).toMatchObject({ cost: 73, stripsInAll: 4 });
    expect(isProven(rows)).toBe(true);
  });

  test("a woodworking article: two case sides 16 7/8 x 31 out of one board 11 x 130, four lengths of two widths of 8 7/16", () => {
    const rows = sound({
      panels: [{ label: "side", length: 31, width: 16.875, quantity: 2 }], tally: [{ length: 130, width: 11, price: 60 }],
      terms: { roughLength: 1, roughWidth: 0, joint: 1 / 32, greatestStrip: 8.5 },
    });
    expect(totalOf(rows)).toMatchObject({ cost: 60, stripsInAll: 4, boardsInAll: 1 });
    expect(rows.filter(({ board }) => board === undefined).slice(0, 2)).toMatchObject([
      { stripsInAll: 2, netWidth: 16.875, over: 0 }, { stripsInAll: 2, netWidth: 16.875, over: 0 },
    ]);
    expect(Math.max(...rows.map(({ section = 0 }) => section))).toBe(4);
  });

  test("panels of two lengths out of one board: 43, 43 and 31 and two kerfs of 1/8 are 117 1/4", () => {
    // By hand: three sections as wide as a panel each; one mark shorter there is room for no third.
    const panels = [{ label: "tread", length: 42, width: 5, quantity: 2 }, { label: "cap", length: 30, width: 5 }];
    const terms = { roughWidth: 0.25, greatestStrip: 5.25 };
    const rows = sound({ panels, tally: [{ length: 117.25, width: 5.375, price: 9 }], terms });
    expect(totalOf(rows)).toMatchObject({ cost: 9, stripsInAll: 3 });
    expect(rows.flatMap(({ board, along }) => (board === undefined ? [] : along)).sort()).toEqual([0, 43.125, 86.25]);
    expect(isProblem(answered({ panels, tally: [{ length: 117.234375, width: 5.375, price: 9 }], terms }))).toBe(true);
  });

  test("trim is taken at the ends, half the edge at the side, and no strip lies in a defect", () => {
    const inches = (value: number) => lengthOf(value, "in");
    const rows = sound({
      panels: [{ label: "cap", length: 30, width: 5, quantity: 2 }],
      tally: [{ length: 96, width: 5.625, edge: 0.25, price: 9, defects: [{ from: inches(33), to: inches(40) }] }],
      terms: { trim: 0.5, greatestStrip: 5.25 },
    });
    // By hand: 31 from 1/2 to 31 1/2 of the 33 there are, and from 40 on; across from half of 1/4 on.
    expect(rows.filter(({ board }) => board !== undefined)).toMatchObject([{ along: 0.5, across: 0.125 }, { along: 40, across: 0.125 }]);
  });

  test("a defect narrower than the kerf takes the kerf", () => {
    const inches = (value: number) => lengthOf(value, "in");
    const job = (length: number): PlainGlueUp => ({
      panels: [{ length: 30, width: 5, quantity: 2 }],
      tally: [{ length, width: 5.375, price: 9, defects: [{ from: inches(31.03125), to: inches(31.09375) }] }],
      terms: { greatestStrip: 5.25 },
    });
    // By hand: a cut of 1/8 about the middle at 31 1/16 is from 31 to 31 1/8; 31 more are 62 1/8.
    expect(totalOf(sound(job(62.125))).cost).toBe(9);
    expect(isProblem(answered(job(62.109375)))).toBe(true);
  });

  test("a lot is paid once and gives all its boards; owned boards cost nothing", () => {
    const panels = [{ length: 30, width: 5, quantity: 2 }];
    const each = { length: 32, width: 5.375 };
    const terms = { greatestStrip: 5.25 };
    // By hand: two boards of the lot for 11, two at 6 each for 12, or the lot at 13.
    const tally = (lotPrice: number): readonly Plain[] =>
      [{ ...each, lot: "X", lotPrice }, { ...each, lot: "X" }, { ...each, price: 6 }, { ...each, price: 6 }];
    expect(totalOf(sound({ panels, tally: tally(11), terms })).cost).toBe(11);
    expect(totalOf(sound({ panels, tally: tally(13), terms })).cost).toBe(12);
    expect(totalOf(sound({ panels, tally: [...tally(11), { ...each, owned: true }], terms })).cost).toBe(6);
  });

  test("without prices least board feet count, and no cost is printed", () => {
    // By hand: 8 ft x 6 / 12 = 4 against 8 ft x 9 / 12 = 6 board feet.
    const rows = sound({ panels: [{ length: 30, width: 5 }], tally: [{ length: 96, width: 9 }, { length: 96, width: 6 }] });
    expect(rows.find(({ board }) => board !== undefined)?.board).toBe("B");
    expect(totalOf(rows).cost).toBeUndefined();
    expect(totalOf(rows).note).toBe("best possible (proven): no choice of boards is of fewer board feet");
  });

  test("equal costs: fewest strips, then fewest boards a panel", () => {
    // By hand: 6 net out of one strip of 6 1/8, or of two boards in two strips of 3.
    const terms = { greatestStrip: 8, roughWidth: 0 };
    const rows = sound({
      panels: [{ length: 30, width: 6 }], terms,
      tally: [{ length: 31, width: 3.125, price: 3 }, { length: 31, width: 6.125, price: 6 }, { length: 31, width: 3.125, price: 3 }],
    });
    expect(totalOf(rows)).toMatchObject({ stripsInAll: 1, boardsInAll: 1, cost: 6 });
  });
});

const TINY = 40;

describe.each([false, true])("seeded jobs against every glue-up there is; each panel of one board: %s", (isOfOneBoard) => {
  test("the cheapest is found, and what is said of it holds", () => {
    const missed: unknown[] = [];
    for (let seed = 1; seed <= TINY; seed += 1) {
      const tiny = tinyJob(seed, isOfOneBoard);
      const best = leastOfEvery(tiny);
      const rows = answered(asGlueUp(tiny));
      if (isProblem(rows)) {
        if (rows.problem !== "no-plan-found") expect([seed, best]).toEqual([seed, undefined]);
        if (best !== undefined) missed.push([seed, rows.problem, best]);
        continue;
      }
      const plan = sound(asGlueUp(tiny));
      const cost = totalOf(plan).cost!;
      expect([seed, best !== undefined && cost >= best]).toEqual([seed, true]);
      expect(cost * (1 - gapOf(plan))).toBeLessThanOrEqual(best! + 1e-9);
      if (isProven(plan)) expect([seed, cost]).toEqual([seed, best]);
      if (cost !== best) missed.push([seed, cost, best]);
    }
    expect(missed).toEqual([]);
  });
});

/** Panels of several sizes, grades and species; boards with defects, edges, lots, several alike, owned and rough or surfaced. */
const mixedJob = (seed: number): PlainGlueUp => {
  const draw = draws(5_600 + seed);
  const whole = (least: number, below: number): number => least + Math.floor(draw() * (below - least));
  const oneOf = <Thing,>(things: readonly Thing[]): Thing => things[whole(0, things.length)]!;
  const inches = (value: number) => lengthOf(value, "in");
  const panels = Array.from({ length: whole(1, 5) }, () => ({
    length: whole(20, 60) + whole(0, 16) / 16, width: whole(3, 14) + whole(0, 8) / 8, quantity: whole(1, 4), thickness: oneOf([0.75, 1]),
    grade: oneOf(["FAS", "1C"]), alsoFrom: oneOf(["", "FAS", "any"]), species: "oak",
  }));
  const tally = Array.from({ length: whole(12, 26) }, (_, place): Plain => {
    const length = whole(90, 190);
    const from = whole(10, length - 12);
    const quantity = whole(0, 6) === 0 ? 2 : 1;
    const price = whole(15, 90);
    const paid = oneOf<Partial<Plain>>([{ price }, { price: price + 0.25 }, { owned: true }, { lot: "X", lotPrice: 120 }]);
    return {
      label: place + 1, length, width: whole(30, 90) / 8, grade: oneOf(["FAS", "1C"]), species: oneOf(["oak", "oak", "ash"]), quantity,
      thickness: oneOf([1, 1.25]), surfaced: whole(0, 5) === 0, edge: whole(0, 3) / 8, ...paid,
      ...(quantity === 1 && whole(0, 2) === 0 ? { defects: [{ from: inches(from), to: inches(from + whole(1, 6)) }] } : {}),
    };
  });
  const together = oneOf(["any", "any", "board"] as const);
  return { panels, tally, terms: { trim: whole(0, 3) / 2, kerf: oneOf([0.125, 0.09375]), strips: oneOf([4, 6, Infinity]), together } };
};

test("plans of mixed jobs can be sawn and glued, and cost what they say", () => {
  let count = 0;
  for (let seed = 1; seed <= 24; seed += 1) {
    const job = mixedJob(seed);
    if (isProblem(answered(job))) continue;
    count += 1;
    expect([seed, faultsOf(job, planned(job))]).toEqual([seed, []]);
  }
  // Of jobs whose boards do not hold them, no plan is to be seen: enough of them have one.
  expect(count).toBeGreaterThan(8);
});

describe("laws", () => {
  const boards = fc.array(
    fc.record({
      length: fc.integer({ min: 90, max: 150 }), width: fc.integer({ min: 40, max: 80 }).map((eighths) => eighths / 8),
      price: fc.integer({ min: 20, max: 60 }),
    }),
    { minLength: 6, maxLength: 9 },
  );
  const panels = fc.array(
    fc.record({
      length: fc.constantFrom(42, 42, 36, 60), width: fc.integer({ min: 8, max: 12 }), quantity: fc.integer({ min: 1, max: 2 }),
    }),
    { minLength: 1, maxLength: 3 },
  );
  const job = fc.record({ panels, tally: boards });
  const runs = { numRuns: 6, seed: 7 };
  const sumOf = (given: PlainGlueUp) => {
    const rows = answered(given);
    if (isProblem(rows)) return { problem: rows.problem };
    const plan = sound(given);
    return { cost: totalOf(plan).cost!, least: totalOf(plan).cost! * (1 - gapOf(plan)), isProven: isProven(plan) };
  };
  /** Of a job made easier: what was shown possible or too dear before still is so. */
  const isNoDearer = (before: PlainGlueUp, after: PlainGlueUp): void => {
    const [one, other] = [sumOf(before), sumOf(after)];
    if (one.cost === undefined) return;
    expect(other.least).toBeDefined();
    expect(other.least!).toBeLessThanOrEqual(one.cost + 1e-9);
    if (other.isProven === true) expect(other.cost!).toBeLessThanOrEqual(one.cost);
  };

  test("rows in another order: the same cost", () => {
    fc.assert(
      fc.property(job, fc.infiniteStream(fc.integer({ min: 0, max: 1e6 })), (given, keys) => {
        const shuffled = <Row,>(rows: readonly Row[]): Row[] =>
          rows.map((row) => ({ row, key: keys.next().value as number })).sort((one, other) => one.key - other.key).map(({ row }) => row);
        // Names go with their boards.
        const tally = given.tally.map((one, place) => ({ ...one, label: place }));
        expect(sumOf({ panels: shuffled(given.panels), tally: shuffled(tally) })).toEqual(sumOf({ panels: given.panels, tally }));
      }),
      runs,
    );
  });

  test("a row of several panels, or boards, split: the same cost", () => {
    fc.assert(
      fc.property(job, (given) => {
        const split = given.panels.flatMap(({ quantity, ...panel }) => Array.from({ length: quantity }, () => panel));
        expect(sumOf({ ...given, panels: split })).toEqual(sumOf(given));
        const double = given.tally.slice(0, 4).map((one) => ({ ...one, quantity: 2 }));
        const each = double.flatMap((one) => [{ ...one, quantity: 1 }, { ...one, quantity: 1 }]);
        expect(sumOf({ ...given, tally: double })).toEqual(sumOf({ ...given, tally: each }));
      }),
      runs,
    );
  });

  test("a wider board, a longer one, one more, a smaller kerf: never dearer", () => {
    fc.assert(
      fc.property(job, fc.nat({ max: 5 }), (given, place) => {
        const changed = (change: Partial<Plain>): PlainGlueUp => ({
          ...given, tally: given.tally.map((one, at) => (at === place ? { ...one, ...change } : one)),
        });
        isNoDearer(given, changed({ width: given.tally[place]!.width + 0.5 }));
        isNoDearer(given, changed({ length: given.tally[place]!.length + 5 }));
        isNoDearer(given, { ...given, tally: [...given.tally, { length: 100, width: 6, price: 30 }] });
        isNoDearer(given, { ...given, terms: { kerf: 0.09375 } });
      }),
      runs,
    );
  });

  test("a board cut in two at its defect, as a lot of two: the same cost", () => {
    fc.assert(
      fc.property(job, fc.integer({ min: 44, max: 46 }), (given, from) => {
        const [first, ...others] = given.tally;
        const inches = (value: number) => lengthOf(value, "in");
        const whole = { ...first!, defects: [{ from: inches(from), to: inches(from + 3) }] };
        const { price, ...plain } = first!;
        const parts = [{ ...plain, length: from, lot: "X", lotPrice: price! }, { ...plain, length: first!.length - from - 3, lot: "X" }];
        expect(sumOf({ ...given, tally: [...others, ...parts] })).toEqual(sumOf({ ...given, tally: [...others, whole] }));
      }),
      runs,
    );
  });
});

describe("the checker sees", () => {
  const job: PlainGlueUp = { panels: TREADS, tally: FIVE };
  const rows = planned(job);
  const at = rows.findIndex(({ board, across }) => board !== undefined && across! > 0);
  test.each<[string, Partial<(typeof rows)[number]>]>([
    ["a strip past the edge", { across: 4.5 }], ["one on top of another", { across: 0 }], ["one past the end", { along: 100 }],
    ["a width that is not ripped", { roughWidth: 3 }], ["a sliver", { netWidth: 1.5, roughWidth: 1.625 }], ["a short one", { length: 42 }],
    ["a board that is not there", { board: "Z" }], ["another board", { board: "B" }],
  ])("%s", (_, change) => {
    expect(faultsOf(job, rows)).toEqual([]);
    expect(faultsOf(job, rows.map((row, place) => (place === at ? { ...row, ...change } : row)))).not.toEqual([]);
  });
});
