import { isProblem } from "../../../../src/solver/problem";
import { sheetPlan } from "../../../../src/solver/yield/sheets/sheet-plan";
import { sideBySide } from "../../../../src/solver/yield/sheets/side-by-side";
import { cents, checkedPlan, cuttingJob, seeded } from "../job";
import { TINY_COUNT } from "../tiny-count";
import { everySheetPlan } from "./every-sheet-plan";
import { checkedSheets, leastCents, type PlainSheetJob, sheetJob } from "./job";
import { tinyJobs } from "./tiny-jobs";

const dollars = (plain: PlainSheetJob): number => checkedSheets(plain).cost.toNumber();

const piece = (label: string, length: number, width: number, quantity = 1, free = false) => ({ label, length, width, quantity, free });
const sheet = (label: string, length: number, width: number, price: number, available = 1) => ({
  label, length, width, cents: price * 100, available,
});

const testTime = 300_000;

test(`${TINY_COUNT} tiny seeded jobs of sheets: the solver and every plan there is come to one least cost, proven`, () => {
  let solvable = 0;
  for (const [number, plain] of tinyJobs(52_001, TINY_COUNT).entries()) {
    const least = everySheetPlan(plain);
    if (least < Infinity) solvable += 1;
    expect({ number, plain, cents: leastCents(plain) }).toEqual({ number, plain, cents: least });
  }
  expect(solvable).toBeGreaterThan(TINY_COUNT / 3);
}, testTime);

describe("worked jobs, each figure by every way to lay its pieces and by an integer program", () => {
  test("two sizes of sheets, where the cheapest area first costs more", () => {
    const stock = [sheet("4 x 8", 96, 48, 62, 3), sheet("5 x 5", 60, 60, 52, 3)];
    // 36 and 20 and two kerfs of 60, and across 15 1/2 + 23 3/4 + ... : two 5 x 5, where the plan by area comes to 114
    const shelves = [piece("shelf", 36, 15.5, 4), piece("side", 20, 23.75, 4), piece("rail", 19, 7.5, 3)];
    expect(dollars({ pieces: shelves, stock, kerf: 0.125 })).toBe(104);
    // strips of 15 3/4, 15 3/4 and 11 1/2 and two kerfs are 43 1/4 of 48: one 4 x 8, where the plan by area comes to 104
    const other = [piece("shelf", 36, 14, 3), piece("side", 40, 11.5, 3), piece("rail", 19, 15.75, 2)];
    expect(dollars({ pieces: other, stock, kerf: 0.125 })).toBe(62);
  });

  test("grain: shelves that may be turned lie beside the panels, and half a sheet is saved", () => {
    const stock = [sheet("4 x 8", 96, 48, 62, 2), sheet("half", 48, 48, 36, 2)];
    const job = (free: boolean) => ({ pieces: [piece("panel", 46, 23.5, 3), piece("shelf", 22, 30, 3, free)], stock, kerf: 0.125 });
    expect(dollars(job(false))).toBe(124);
    expect(dollars(job(true))).toBe(98);
  });

  test("ripping saves a board, and a kerf across may cost one", () => {
    const boards = [sheet("A", 96, 11, 66), sheet("B", 96, 7.5, 45), sheet("C", 96, 5, 30)];
    const plan = checkedSheets({ pieces: [piece("riser", 42, 7.25, 2), piece("nosing", 42, 3.5, 2)], stock: boards, kerf: 0.125 });
    // by hand: 2 x 42 x (7 1/4 + 3 1/2) = 903 of 96 x 11 = 1,056
    expect([plan.cost.toNumber(), plan.yield.toNumber()]).toEqual([66, 903 / 1056]);
    const wide = [sheet("A", 96, 11, 60, 2), sheet("B", 96, 11.125, 63)];
    // by hand: 5 1/2 + 1/8 + 5 1/2 = 11 1/8 is an exact fit, with 3/16 it is none
    expect(dollars({ pieces: [piece("step", 42, 5.5, 4)], stock: wide, kerf: 0.125 })).toBe(63);
    expect(dollars({ pieces: [piece("step", 42, 5.5, 4)], stock: wide, kerf: 0.1875 })).toBe(120);
  });

  test("pieces that share only some of their sheets take none of them twice", () => {
    const pieces = [piece("long", 90, 9), piece("wide", 40, 38), piece("small", 30, 8)];
    const of = (count: number) => ({ pieces, stock: [sheet("A", 96, 10, 30), sheet("B", 48, 40, 50, count)], kerf: 0.125 });
    // by hand: long goes on A alone and leaves 1 beside it and 6 behind, wide on B alone and leaves 2 and 8 less a kerf: small has no room
    expect(leastCents(of(1))).toBe(Infinity);
    expect(dollars(of(2))).toBe(30 + 2 * 50);
  });

  test("each board its own way round", () => {
    const stock = [sheet("A", 84, 12, 60), sheet("B", 60, 8, 30), sheet("C", 72, 8, 40), sheet("D", 60, 12, 52)];
    const pieces = [piece("riser", 40, 7.25, 3), piece("skirt", 72, 4), piece("block", 20, 3, 2)];
    const costs = (["crosscut", "rip", "either"] as const).map((first) => dollars({ pieces, stock, kerf: 0.125, first }));
    expect(costs).toEqual([130, 112, 100]);
    const others = [sheet("A", 84, 12, 70), sheet("B", 60, 12, 52), sheet("C", 120, 8, 66), sheet("D", 48, 9, 30)];
    const more = [piece("riser", 40, 7.25, 2), piece("skirt", 60, 4), piece("block", 20, 4.5, 3)];
    expect((["crosscut", "rip", "either"] as const).map((first) => dollars({ pieces: more, stock: others, kerf: 0.125, first })))
      .toEqual([118, 100, 100]);
  });
});

describe("laws", () => {
  const jobs = tinyJobs(77_003, 60).filter((plain) => leastCents(plain) < Infinity);

  test("a larger sheet, a smaller kerf, grain that is free, either way round: never dearer", () => {
    for (const plain of jobs) {
      const least = leastCents(plain);
      expect(leastCents({ ...plain, stock: plain.stock.map((each) => ({ ...each, length: each.length + 1 })) })).toBeLessThanOrEqual(least);
      expect(leastCents({ ...plain, stock: plain.stock.map((each) => ({ ...each, width: each.width! + 1 })) })).toBeLessThanOrEqual(least);
      expect(leastCents({ ...plain, kerf: 0 })).toBeLessThanOrEqual(least);
      expect(leastCents({ ...plain, pieces: plain.pieces.map((each) => ({ ...each, free: true })) })).toBeLessThanOrEqual(least);
      expect(leastCents({ ...plain, first: "either" })).toBeLessThanOrEqual(least);
    }
  }, testTime);

  test("rows in another order, a row of pieces split: the same cost", () => {
    for (const plain of jobs) {
      const split = plain.pieces.flatMap((each) => Array.from({ length: each.quantity ?? 1 }, () => ({ ...each, quantity: 1 })));
      expect(leastCents({ ...plain, pieces: split.reverse(), stock: [...plain.stock].reverse() })).toBe(leastCents(plain));
    }
  }, testTime);

  test("where one piece lies across each board, crosscutting alone costs the same", () => {
    const draw = seeded(4_410);
    for (let number = 0; number < 40; number += 1) {
      const plain = {
        pieces: Array.from({ length: 3 }, () => ({ length: 10 + draw(40), width: 6 + draw(3), quantity: 1 + draw(3) })),
        stock: Array.from({ length: 3 }, () => ({ length: 60 + draw(60), width: 8 + draw(3), cents: 1000 + draw(2000) })),
        kerf: 0.125,
      };
      expect(sideBySide(cuttingJob(plain))).toBeUndefined();
      expect({ number, cents: leastCents(plain) }).toEqual({ number, cents: cents(checkedPlan(plain).cost) });
    }
  }, testTime);
});

test("a large job comes to an end with a plan and an honest bound", () => {
  const pieces = Array.from({ length: 40 }, (_, n) =>
    piece(`p${n}`, 10 + ((n * 37) % 50), 6 + ((n * 53) % 20) + (n % 7) / 8, 5, n % 2 === 0),
  );
  const stock = [sheet("4 x 8", 96, 48, 62, Infinity), sheet("5 x 5", 60, 60, 52, 20)];
  const plan = checkedSheets({ pieces, stock, kerf: 0.125 }, 30_000_000);
  // by hand: the bound is at least what the area alone asks for, at the cheapest rate there is, 62 / 4,608
  const area = pieces.reduce((sum, { length, width, quantity }) => sum + length * width * quantity, 0);
  expect(plan.bound.toNumber()).toBeGreaterThan((area / (48 * 96)) * 62 * 0.95);
});

test("what shares no sheet is planned apart, thicker stock is planed down and says so, and lengths finer than a mark are rounded", () => {
  const plan = checkedSheets({
    pieces: [{ ...piece("back", 30, 20), grade: "birch", thickness: 0.25 }, { ...piece("side", 30.01, 20), grade: "oak", thickness: 0.75 }],
    stock: [
      { ...sheet("birch", 48, 24, 20), grade: "birch", thickness: 0.5 },
      { ...sheet("oak", 48, 24, 30), grade: "oak", thickness: 0.75 },
    ],
  });
  expect(plan.cost.toNumber()).toBe(50);
  expect(plan.notes).toEqual([
    "pieces finer than 1/64 in are planned rounded up to it", "pieces cut from thicker stock and planed down: 1",
  ]);
});

test("the same job has the same plan", () => {
  const [plain] = tinyJobs(9_001, 1) as [PlainSheetJob];
  const [one, other] = [sheetPlan(sheetJob(plain)), sheetPlan(sheetJob(plain))];
  expect(isProblem(one) ? one.problem : one.sheets).toEqual(isProblem(other) ? other.problem : other.sheets);
});
