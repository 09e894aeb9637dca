import { measure } from "../../../src/solver/length/length";
import { cents, checkedPlan, type PlainJob } from "./job";

interface Published {
  readonly source: string;
  /** What the expected optimum rests on, as far as the source goes. */
  readonly basis: string;
  readonly job: PlainJob;
  readonly optimum: number;
}

const rows = (pairs: readonly (readonly [number, number])[]) => pairs.map(([length, quantity]) => ({ length, quantity }));
/** Rolls and bins have no price: each counts as one cent. */
const rolls = (length: number) => [{ length, cents: 1 }];

const PROVED = "data seen, optimum proved by an integer program over all patterns";
const LUMBER_STOCK = [
  [36, 168],
  [48, 186],
  [72, 257],
  [84, 265],
  [96, 292],
  [120, 367],
  [144, 440],
  [168, 514],
  [192, 692],
  [216, 862],
  [240, 1040],
].map(([length, price]) => ({ length: length!, cents: price! }));
const LUMBER = rows([[72, 6], [70.75, 1], [70.5, 3], [28.5, 1], [25.5, 10], [12.5, 1]]);

const PUBLISHED: readonly Published[] = [
  {
    source: "Cutting stock problem, encyclopedia article; same data in the MO-Book notebook",
    basis: "data, total and the bound of 73 seen; 73 rolls proved to be the optimum by an integer program over all patterns",
    job: {
      unit: "mm",
      stock: rolls(5600),
      pieces: rows([
        [1380, 22],
        [1520, 25],
        [1560, 12],
        [1710, 14],
        [1820, 18],
        [1880, 18],
        [1930, 20],
        [2000, 10],
        [2050, 12],
        [2100, 14],
        [2140, 16],
        [2150, 18],
        [2200, 20],
      ]),
    },
    optimum: 73,
  },
  {
    source: "Chvatal, Linear Programming (1983), example as used in a JuMP notebook",
    basis: PROVED,
    job: {
      stock: rolls(100),
      pieces: rows([
        [45, 97],
        [36, 610],
        [31, 395],
        [14, 211],
      ]),
    },
    optimum: 453,
  },
  {
    source: "Gilmore and Gomory (1961) example, MO-Book notebook",
    basis: `${PROVED}: 10 x 6 as 4+2 and 10 x 9 as 4+3+2, no waste`,
    job: {
      stock: [
        { length: 5, cents: 6 },
        { length: 6, cents: 7 },
        { length: 9, cents: 10 },
      ],
      pieces: rows([
        [2, 20],
        [3, 10],
        [4, 20],
      ]),
    },
    optimum: 170,
  },
  {
    source: "Woodworking: problem data (2x4 outdoor sofa), MO-Book notebook",
    basis: "cost 32.28 printed; proved to be the optimum under both kerf conventions",
    job: { stock: LUMBER_STOCK, pieces: LUMBER, kerf: 0.125 },
    optimum: 3228,
  },
  {
    source: "Woodworking: problem data (2x4 outdoor sofa), MO-Book notebook, without kerf",
    basis: PROVED,
    job: { stock: LUMBER_STOCK, pieces: LUMBER },
    optimum: 3123,
  },
  {
    source: "JuMP documentation, Column generation tutorial",
    basis: "334 and 341 printed; the linear bound is 334.0, so 334 is the optimum",
    job: {
      unit: "mm",
      stock: rolls(100),
      pieces: rows([
        [75, 38],
        [75, 44],
        [75, 30],
        [75, 41],
        [75, 36],
        [53.8, 33],
        [53, 36],
        [51, 41],
        [50.2, 35],
        [32.2, 37],
        [30.8, 44],
        [29.8, 49],
        [20.1, 37],
        [16.2, 36],
        [14.5, 42],
        [11, 33],
        [8.6, 47],
        [8.2, 35],
        [6.6, 49],
        [5.1, 42],
      ]),
    },
    optimum: 334,
  },
  {
    source: "OR-Tools sample bin_packing_mip",
    basis: "data seen; total 370, so four bins of 100 at least",
    job: {
      stock: rolls(100),
      pieces: rows([
        [48, 1],
        [42, 2],
        [36, 3],
        [30, 2],
        [27, 1],
        [24, 1],
        [19, 1],
      ]),
    },
    optimum: 4,
  },
  {
    source: "MiniZinc example cutstock.mzn",
    basis: "data seen; by hand 7+3, 7+3, 5+5, 3+3, and 36 of wood needs four tens",
    job: {
      stock: rolls(10),
      pieces: rows([
        [7, 2],
        [5, 2],
        [3, 4],
      ]),
    },
    optimum: 4,
  },
  {
    source: "Notes on OR-Tools, cutting stock chapter",
    basis: "data seen; demand 8,200 over 100 is 82 without waste",
    job: {
      stock: rolls(100),
      pieces: rows([
        [50, 20],
        [40, 40],
        [30, 120],
        [20, 100],
      ]),
    },
    optimum: 82,
  },
  {
    source: "Lumber mill logs of length 40, cutting stock example of a numerical software's documentation",
    basis: PROVED,
    job: {
      stock: rolls(40),
      pieces: rows([
        [8, 90],
        [12, 111],
        [16, 55],
        [20, 30],
      ]),
    },
    optimum: 89,
  },
];

describe("published cutting jobs", () => {
  test.each(PUBLISHED)("$source", ({ job, optimum }) => {
    const plan = checkedPlan(job);
    expect(cents(plan.cost)).toBe(optimum);
    expect(cents(plan.bound)).toBeLessThanOrEqual(optimum);
  });

  // CBE 40455 Process Operations notebook 05.07 Stock Cutting:
  // two sticks of 15 and three of 10, nothing left over (printed). Length is the aim there, so a stick is priced by its length.
  test("limited stock of two lengths, cut without waste", () => {
    const plan = checkedPlan({
      pieces: rows([[7, 3], [6, 2], [4, 6], [3, 1]]),
      stock: [{ length: 15, cents: 15, available: 3 }, { length: 10, cents: 10, available: 3 }],
    });
    const used = (row: number): number => plan.sticks.filter((stick) => stick.stock === row).length;
    expect([used(0), used(1), cents(plan.cost), cents(plan.bound), plan.verdict]).toEqual([2, 3, 60, 60, "best possible (proven)"]);
    expect(plan.sticks.every((stick) => stick.leftOver.isZero())).toBe(true);
  });

  // Elementary Technical Mathematics, sec. 1.8 exercise 51, worked answer printed: 12 cuts of 1/16 take 3/4, 8 5/8 remain.
  test("twelve pieces and twelve 1/16 in kerfs leave 8 5/8 of 36 in", () => {
    const plan = checkedPlan({
      pieces: rows([
        [2.125, 3],
        [5.75, 2],
        [0.875, 6],
        [3.5, 1],
      ]),
      stock: [{ length: 36, cents: 100 }],
      kerf: 1 / 16,
    });
    expect(plan.sticksUsed).toBe(1);
    expect(measure(plan.sticks[0]!.leftOver, "in")).toBe(8.625);
  });

  // H. E. Dudeney, Modern Puzzles (1926) no. 15, Sawing Logs:
  // a 3 ft log takes 2 cuts and a 6 ft log 5 (printed). So a stick longer by just those kerfs holds the pieces, and one less by a mark does
  // not.
  test.each([[3, 2], [6, 5]])("%i one-foot logs take %i cuts when nothing is left over", (logs, cuts) => {
    const kerf = 1 / 8;
    const sticks = (length: number): number => checkedPlan({ pieces: rows([[12, logs]]), stock: [{ length, cents: 1 }], kerf }).sticksUsed;
    expect(sticks(12 * logs + cuts * kerf)).toBe(1);
    expect(sticks(12 * logs + cuts * kerf - 1 / 64)).toBe(2);
  });

  // US Army Engineer School subcourse EN0069, Lesson 4 answers to self test, answer 12: a part of 9 ft 2 in comes from 10 ft with 10 in
  // left, two from 20 ft with 20 in left (printed, kerf passed over). Its rule is least waste, so here a stick costs what its length is.
  test("a part of 9 ft 2 in is cut from the 10 ft length", () => {
    const stock = [8, 10, 12, 14, 16, 18, 20].map((feet) => ({ length: feet * 12, cents: feet }));
    const one = checkedPlan({ pieces: rows([[110, 1]]), stock });
    expect(one.sticks.map((stick) => [stick.stock, measure(stick.leftOver, "in")])).toEqual([[1, 10]]);
    const two = checkedPlan({ pieces: rows([[110, 2]]), stock: stock.slice(-1) });
    expect(two.sticks.map((stick) => measure(stick.leftOver, "in"))).toEqual([20]);
  });

  // Hand calculation: 93 ft of pieces from sticks of 20, 25 and 40 ft, so 95 ft at least. The one way to 95 is 20 + 25 + 25 + 25, which may
  // waste 2; but a 16 wastes 4 in a 20 (no piece is 4) and 4 in a 25 (9 holds one 5). So 100, as 40 (16 + 12 + 12), 40 (16 + 12 + 5 + 5),
  // 20 (5 + 5 + 5).
  test("sticks priced by length: 93 ft of pieces take 100 ft of stock", () => {
    const plan = checkedPlan({
      pieces: rows([
        [16, 2],
        [12, 3],
        [5, 5],
      ]),
      stock: [20, 25, 40].map((length) => ({ length, cents: length })),
    });
    expect(cents(plan.cost)).toBe(100);
    expect(plan.verdict).toMatch(/^best possible/);
  });
});
