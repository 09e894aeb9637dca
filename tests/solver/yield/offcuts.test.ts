import { call } from "../../../src/functions/call";
import { BUY } from "../../../src/functions/yield/buy";
import { CUTS } from "../../../src/functions/yield/cuts";
import { OFFCUTS } from "../../../src/functions/yield/offcuts";
import { PLAN } from "../../../src/functions/yield/plan";
import { isProblem } from "../../../src/solver/problem";
import { offcuts } from "../../../src/solver/yield/offcuts";
import { checkedPlan, cuttingJob, type PlainJob } from "./job";

const ends = (plain: PlainJob): unknown => {
  const found = offcuts(cuttingJob(plain), checkedPlan(plain));
  return isProblem(found)
    ? found.problem
    : found.map(({ length, available, label, grade }) => [length.div("25.4").toNumber(), available, label, grade]);
};

test("equal ends stand in one row, and what is shorter than keep is waste", () => {
  // By hand: a stick of 96 holds one 60 and leaves 36; three of them. The 90 leaves 6.
  const job: PlainJob = {
    pieces: [{ length: 60, quantity: 3 }, { length: 90 }],
    stock: [{ length: 96, cents: 1000, label: "oak" }],
    keep: 12,
  };
  expect(ends(job)).toEqual([[36, 3, "offcut of oak", ""]]);
  expect(ends({ ...job, keep: 6 })).toEqual([[36, 3, "offcut of oak", ""], [6, 1, "offcut of oak", ""]]);
});

test("an end is worth its share of the stick by length, in cents, each of several alike", () => {
  // By hand: 10.00 x 36 / 96 = 3.75 for each of three; 10.00 x 6 / 96 = 0.625, half a cent away from zero.
  const job: PlainJob = {
    pieces: [{ length: 60, quantity: 3 }, { length: 90 }],
    stock: [{ length: 96, cents: 1000, label: "oak" }],
    kerf: 0,
    keep: 6,
  };
  const found = offcuts(cuttingJob(job), checkedPlan(job));
  expect(isProblem(found) ? found : found.map(({ available, value }) => [available, value.toNumber()])).toEqual([[3, 3.75], [1, 0.63]]);
});

test("the wood is all there: pieces, kerfs, trims and ends make up the sticks", () => {
  const job: PlainJob = {
    pieces: [
      { length: 31, quantity: 7 },
      { length: 22.5, quantity: 4 },
    ],
    stock: [
      { length: 96, cents: 1000 },
      { length: 120, cents: 1300 },
    ],
    kerf: 0.125,
    trim: 0.25,
    keep: 0,
  };
  const found = ends(job) as [number, number][];
  const plan = checkedPlan(job);
  const bought = plan.sticks.reduce((sum, { stock }) => sum + (stock === 0 ? 96 : 120), 0);
  const cut = plan.sticks.reduce((sum, { pieces, leftOver }) => sum + (pieces.length - (leftOver.isZero() ? 1 : 0)) * 0.125 + 0.5, 0);
  expect(found.reduce((sum, [length, count]) => sum + length * count, 0)).toBeCloseTo(bought - cut - 7 * 31 - 4 * 22.5, 9);
});

test("today's ends are tomorrow's stock as they stand, with headings and without", () => {
  const stock = [["label", "length", "price", "grade", "width"], ["oak 8 ft", 96, 24.5, "clear", 11.25]];
  for (const headings of [true, false]) {
    const kept = call(OFFCUTS, [[["length", "grade"], [40, "clear"]], stock, 0.125, 0, 12, "in", headings]);
    // By hand: 96 - 40 - 1/8 = 55 7/8 is on the rack, so a 50 costs nothing and leaves 5 3/4.
    const tomorrow = [["length", "label", "grade"], [50, "tread", "clear"]];
    expect(call(CUTS, [tomorrow, kept])).toMatchObject({ 1: { 1: "offcut of oak 8 ft", 3: "tread", 5: 5.75 } });
    expect(call(BUY, [tomorrow, kept])).toMatchObject({ 1: { 0: "nothing to buy" } });
  }
});

test("what an end is worth in the books changes nothing of a later plan", () => {
  const stock = [["label", "length", "price"], ["oak 8 ft", 96, 24.5]];
  const kept = call(OFFCUTS, [[["length"], [40]], stock, 0.125, 0, 12]) as unknown[][];
  const at = kept[0]!.indexOf("value");
  // By hand: 24.50 x 55.875 / 96.
  expect([at, kept[1]?.[at]]).toEqual([kept[0]!.length - 1, 14.26]);
  const valued = (value: unknown): unknown[][] => kept.map((row, down) => (down === 0 ? row : [...row.slice(0, at), value]));
  const tomorrow = [["label", "length", "quantity"], ["tread", 50, 2]];
  for (const declaration of [CUTS, BUY, PLAN, OFFCUTS]) {
    const answers = [kept, valued(0), valued(999), valued("unknown"), kept.map((row) => row.slice(0, at))].map((ends) =>
      call(declaration, [tomorrow, [...ends, [96, 24.5, "any", "no", "oak 8 ft"]], 0.125, 0, 12]),
    );
    expect(Array.isArray(answers[0])).toBe(true);
    for (const answer of answers) expect(answer).toEqual(answers[0]);
  }
});

test("no end worth keeping is a row that adds nothing to a stock", () => {
  const none = call(OFFCUTS, [[["length", "quantity"], [48, 2]], [["length", "price"], [96, 10]], 0, 0, 12]);
  expect(none).toMatchObject({ 1: { 2: 0, 4: "no end is long enough" } });
  expect(call(BUY, [[["length"], [8]], none])).toMatchObject({ failed: "#N/A" });
});
