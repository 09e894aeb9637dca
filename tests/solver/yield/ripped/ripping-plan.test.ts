import { isProblem } from "../../../../src/solver/problem";
import { lengthIn } from "../../../../src/solver/length/length";
import { type RippingPlan, rippingPlan } from "../../../../src/solver/yield/ripped/ripping-plan";
import { leastOfAll } from "./every-choice";
import { jobOf, type PlainBoard, type PlainJob, plainJob, type PlainPiece } from "./plain-job";
import { planFaults } from "./plan-checker";

const planned = (job: PlainJob): RippingPlan => {
  const plan = rippingPlan(jobOf(job));
  if (isProblem(plan)) throw new Error(JSON.stringify(plan));
  expect(planFaults(job, plan)).toEqual([]);
  return plan;
};

/** Label, along and across of each piece of a board. */
const places = (plan: RippingPlan, job: PlainJob): unknown[] =>
  plan.boards.map(({ board, pieces }) => [
    job.boards[board]!.label,
    ...pieces.map(({ piece, along, across }) =>
      [job.pieces[piece]!.label, lengthIn(along, "in").toNumber(), lengthIn(across, "in").toNumber()]),
  ]);

const money = (plan: RippingPlan): number => plan.cost.toNumber();
const proven = (plan: RippingPlan): boolean => plan.bound.eq(plan.cost);

const piece = (label: string, length: number, width: number, quantity: number, more: Partial<PlainPiece> = {}): PlainPiece =>
  ({ label, length, width, quantity, ...more });
const board = (label: string, length: number, width: number, price: number, more: Partial<PlainBoard> = {}): PlainBoard =>
  ({ label, length, width, price, ...more });

describe("two widths out of one board", () => {
  const pieces = [piece("riser", 42, 7.25, 2), piece("nosing", 42, 3.5, 2)];
  const boards = [board("A", 96, 11, 66), board("B", 96, 7.5, 45), board("C", 96, 5, 30)];

  // by hand: 7 1/4 + 1/8 + 3 1/2 = 10 7/8 of 11; one across is B + C, 75; A alone is the cheapest that holds risers and nosings
  test("the wide board alone, ripped in two", () => {
    const job = plainJob(pieces, boards);
    const plan = planned(job);
    expect(money(plan)).toBe(66);
    expect(proven(plan)).toBe(true);
    expect(places(plan, job)).toEqual([["A", ["riser", 0, 0], ["riser", 42.125, 0], ["nosing", 0, 7.375], ["nosing", 42.125, 7.375]]]);
    // 2 x 42 x 7 1/4 + 2 x 42 x 3 1/2 = 903 of 96 x 11 = 1056
    expect(plan.yield.toNumber()).toBeCloseTo(903 / 1056, 12);
  });

  test("every choice there is agrees", () => expect(leastOfAll(plainJob(pieces, boards))).toBe(66));
});

describe("the kerf between strips", () => {
  const pieces = [piece("step", 42, 5.5, 4)];
  const boards = [board("A", 96, 11, 60), board("B", 96, 11.125, 63), board("C", 96, 11, 60)];

  // by hand: 5 1/2 + 1/8 + 5 1/2 = 11 1/8: B exactly, A and C not; A and C one across hold two each
  test.each([[0.125, 63], [0.1875, 120]])("kerf %p costs %p", (kerf, cost) => {
    const job = plainJob(pieces, boards, { kerf });
    const plan = planned(job);
    expect(money(plan)).toBe(cost);
    expect(proven(plan)).toBe(true);
    expect(leastOfAll(job)).toBe(cost);
  });

  test("the second strip begins at 5 5/8", () => {
    const job = plainJob(pieces, boards);
    expect(places(planned(job), job)).toEqual([["B", ["step", 0, 0], ["step", 42.125, 0], ["step", 0, 5.625], ["step", 42.125, 5.625]]]);
  });
});

describe("defects", () => {
  const pieces = [piece("riser", 40, 7.25, 3), piece("skirt", 64, 9.25, 1)];
  const boards = [
    board("A", 84, 8.5, 32.72, { edge: 0.25 }), board("B", 144, 8.5, 56.1, { edge: 0.25 }),
    board("C", 132, 8, 48.4, { edge: 0.25, defects: [[24, 28]] }), board("D", 120, 9.5, 52.25, { edge: 0.25, defects: [[84, 90]] }),
  ];

  // by hand: the skirt only fits D, 83 1/2 clear; 64 1/8 leaves 19 3/8, no riser; three of 40 are 120 1/4 of B's 143
  test("the skirt before the knot, the risers out of B", () => {
    const job = plainJob(pieces, boards, { trim: 0.5, first: "rip" });
    const plan = planned(job);
    expect(money(plan)).toBe(108.35);
    expect(proven(plan)).toBe(true);
    expect(places(plan, job)).toEqual([
      ["B", ["riser", 0.5, 0.125], ["riser", 40.625, 0.125], ["riser", 80.75, 0.125]], ["D", ["skirt", 0.5, 0.125]],
    ]);
  });

  // by hand: without the knot D's 119 hold 64 + 1/8 + 40, A two risers: 32.72 + 52.25
  test("without them two risers come from A and one stands behind the skirt", () => {
    const job = plainJob(pieces, boards.map(({ defects: _, ...rest }) => rest), { trim: 0.5, first: "rip" });
    const plan = planned(job);
    expect(money(plan)).toBe(84.97);
    expect(places(plan, job)).toEqual([
      ["A", ["riser", 0.5, 0.125], ["riser", 40.625, 0.125]], ["D", ["skirt", 0.5, 0.125], ["riser", 64.625, 0.125]],
    ]);
  });
});

describe("a better grade stands in", () => {
  const pieces = (also: string) => [
    piece("nosing", 46, 5.5, 1, { grade: "FAS" }), piece("riser", 40, 5.5, 4, { grade: "1C", alsoFrom: also }),
    piece("cleat", 26, 5.5, 1, { grade: "1C", alsoFrom: also }),
  ];
  const boards = [
    board("A", 144, 6, 50.4, { grade: "FAS" }), board("B", 120, 6, 28, { grade: "1C" }), board("C", 144, 6, 50.4, { grade: "FAS" }),
    board("D", 96, 6, 22.4, { grade: "1C" }), board("E", 144, 6, 33.6, { grade: "1C" }),
  ];

  // by hand: 46 + 40 + 40 + 2/8 of 144; 40 + 40 + 26 + 2/8 of 120; 50.40 + 28.00
  test("two risers beside the nosing", () => {
    const job = plainJob(pieces("FAS"), boards);
    const plan = planned(job);
    expect(money(plan)).toBe(78.4);
    expect(proven(plan)).toBe(true);
    expect(plan.fromOtherGrade).toBe(2);
    expect(places(plan, job)).toEqual([
      ["A", ["nosing", 0, 0], ["riser", 46.125, 0], ["riser", 86.25, 0]], ["B", ["riser", 0, 0], ["riser", 40.125, 0], ["cleat", 80.25, 0]],
    ]);
  });

  // by hand: the nosing takes A by itself; B holds two risers and the cleat, D two risers: 50.40 + 28.00 + 22.40
  test("its own grade only", () => {
    const plan = planned(plainJob(pieces(""), boards));
    expect(money(plan)).toBe(100.8);
    expect(plan.fromOtherGrade).toBe(0);
  });
});

describe("each board its own way", () => {
  const pieces = [piece("riser", 40, 7.25, 3), piece("skirt", 72, 4, 1), piece("block", 20, 3, 2)];
  const boards = [board("A", 84, 12, 60), board("B", 60, 8, 30), board("C", 72, 8, 40), board("D", 60, 12, 52)];

  // an exhaustive table over counts, and by hand for either: A 7 1/4 + 1/8 + 4 of 12; C 40 + 1/8 + 20 of 72, 3 + 1/8 + 3 of 8
  test.each([["crosscut", 130], ["rip", 112], ["either", 100]] as const)("%p costs %p", (first, cost) => {
    const job = plainJob(pieces, boards, { first });
    const plan = planned(job);
    expect(money(plan)).toBe(cost);
    expect(proven(plan)).toBe(true);
    expect(leastOfAll(job)).toBe(cost);
  });

  test("A is ripped and C crosscut", () => {
    const job = plainJob(pieces, boards);
    const plan = planned(job);
    expect(plan.boards.map((one) => one.pieces[0]!.first)).toEqual(["rip", "crosscut"]);
    expect(places(plan, job)).toEqual([
      ["A", ["riser", 0, 0], ["riser", 40.125, 0], ["skirt", 0, 7.375]],
      ["C", ["riser", 0, 0], ["block", 40.125, 0], ["block", 40.125, 3.125]],
    ]);
  });

  // an exhaustive table over counts
  test.each([["crosscut", 118], ["rip", 100], ["either", 100]] as const)("another job: %p costs %p", (first, cost) => {
    const job = plainJob(
      [piece("riser", 40, 7.25, 2), piece("skirt", 60, 4, 1), piece("block", 20, 4.5, 3)],
      [board("A", 84, 12, 70), board("B", 60, 12, 52), board("C", 120, 8, 66), board("D", 48, 9, 30)], { first },
    );
    expect(money(planned(job))).toBe(cost);
    expect(leastOfAll(job)).toBe(cost);
  });
});

describe("a lot", () => {
  const pieces = [piece("riser", 40, 7.25, 4), piece("nosing", 40, 3.5, 2)];
  const boards = (lotPrice: number): PlainBoard[] => [
    { label: "X1", length: 96, width: 7.5, lot: "X", lotPrice }, { label: "X2", length: 96, width: 7.5, lot: "X", lotPrice },
    { label: "X3", length: 84, width: 6, lot: "X", lotPrice },
    board("S1", 132, 8, 58), board("S2", 96, 12, 72), board("S3", 84, 4, 21),
  ];

  // by hand: X1 and X2 hold two risers each, X3 both nosings; S1 three risers, S2 a riser and two nosings ripped beside it; at a tie
  // 5 + 5 + 3 1/2 = 13 1/2 board feet are less than 7 1/3 + 8 = 15 1/3
  test.each([[95, 95, 3], [131, 130, 2], [130, 130, 3]])("at %p the plan costs %p on %p boards", (lotPrice, cost, count) => {
    const plan = planned(plainJob(pieces, boards(lotPrice), { trim: 0.5, first: "rip" }));
    expect(money(plan)).toBe(cost);
    expect(proven(plan)).toBe(true);
    expect(plan.boards).toHaveLength(count);
  });
});

describe("the checker", () => {
  const job = plainJob([piece("riser", 42, 7.25, 2), piece("nosing", 42, 3.5, 2)], [board("A", 96, 11, 66), board("B", 96, 7.5, 45)]);
  const plan = planned(job);
  const [first] = plan.boards;
  const moved = (change: (one: RippingPlan["boards"][number]["pieces"][number], at: number) => typeof one): RippingPlan =>
    ({ ...plan, boards: [{ ...first!, pieces: first!.pieces.map(change) }] });

  // each plan is the right one with one thing wrong
  test("notices a piece too near, over the edge, outside, missing, and another cost", () => {
    const third = first!.pieces[2]!;
    expect(planFaults(job, moved((one, at) => (at === 2 ? { ...one, across: first!.pieces[0]!.width } : one)))).not.toEqual([]);
    expect(planFaults(job, moved((one, at) => (at === 2 ? { ...one, across: third.across.times(2) } : one)))).not.toEqual([]);
    expect(planFaults(job, moved((one, at) => (at === 1 ? { ...one, along: one.along.times(2) } : one)))).not.toEqual([]);
    expect(planFaults(job, { ...plan, boards: [{ ...first!, pieces: first!.pieces.slice(1) }] })).not.toEqual([]);
    expect(planFaults(job, { ...plan, cost: plan.cost.plus(1) })).not.toEqual([]);
    const graded = { ...job, pieces: job.pieces.map((one) => ({ ...one, grade: "FAS" })) };
    expect(planFaults(graded, plan)).not.toEqual([]);
  });
});
