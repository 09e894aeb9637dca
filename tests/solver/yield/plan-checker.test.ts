import { Exact } from "../../../src/solver/length/exact";
import { lengthOf } from "../../../src/solver/length/length";
import type { CuttingPlan, PlannedStick } from "../../../src/solver/yield/cutting-plan";
import { cuttingJob } from "./job";
import { faults } from "./plan-checker";

const inches = (value: number) => lengthOf(value, "in");

const job = cuttingJob({
  pieces: [{ length: 30, quantity: 2, label: "tread" }, { length: 20, label: "riser" }],
  stock: [{ length: 64, cents: 500 }, { length: 24, cents: 200, available: 1 }, { length: 64, cents: 100, grade: "clear" }],
  kerf: 0.125,
  trim: 0.5,
});

/** Worked by hand: 63 usable less 30 + 30 and two kerfs of 1/8 leaves 2 3/4; 23 usable less 20 and a kerf leaves 2 7/8; 5.00 + 2.00. */
const full: PlannedStick = {
  stock: 0,
  pieces: [
    { piece: 0, label: "tread", length: inches(30), position: inches(0.5) },
    { piece: 0, label: "tread", length: inches(30), position: inches(30.625) },
  ],
  leftOver: inches(2.75),
};
const short: PlannedStick = {
  stock: 1,
  pieces: [{ piece: 1, label: "riser", length: inches(20), position: inches(0.5) }],
  leftOver: inches(2.875),
};
const sound: CuttingPlan = {
  sticks: [full, short],
  cost: new Exact(7),
  bound: new Exact(7),
  gap: new Exact(0),
  sticksUsed: 2,
  yield: new Exact(80).div(88),
  verdict: "optimal (certified)",
  notes: [],
};

const withFirst = (stick: Partial<PlannedStick>): CuttingPlan => ({ ...sound, sticks: [{ ...full, ...stick }, short] });
const [first, second] = full.pieces;

describe("the checker of plans", () => {
  test("finds nothing wrong with a plan made by hand", () => {
    expect(faults(job, sound)).toEqual([]);
  });

  test.each<[string, CuttingPlan, RegExp]>([
    ["a piece left out", withFirst({ pieces: [first!] }), /1 cut, 2 wanted/],
    ["a piece cut too often", { ...sound, sticks: [full, full, short] }, /4 cut, 2 wanted/],
    ["a piece in the kerf before it", withFirst({ pieces: [first!, { ...second!, position: inches(30.5) }] }), /starts in the kerf/],
    ["a piece in the trim", withFirst({ pieces: [{ ...first!, position: inches(0) }, second!] }), /starts in the kerf/],
    ["a piece past the far trim", withFirst({ pieces: [first!, { ...second!, position: inches(33.75) }] }), /runs past the end/],
    ["more pieces than a stick holds", { ...sound, sticks: [{ ...full, stock: 1 }, short] }, /do not fit/],
    ["a stick too many of a limited row", { ...sound, sticks: [full, short, short] }, /2 used, 1 available/],
    ["the wrong grade", withFirst({ stock: 2 }), /wrong grade/],
    ["another length than asked", withFirst({ pieces: [{ ...first!, length: inches(29) }, second!] }), /has another length/],
    ["another label than asked", withFirst({ pieces: [{ ...first!, label: "nosing" }, second!] }), /is called nosing/],
    ["a left over that is not there", withFirst({ leftOver: inches(3) }), /is not what is left/],
    ["an empty stick", { ...sound, sticks: [...sound.sticks, { ...full, pieces: [] }] }, /nothing is cut from it/],
    ["a cost that is not the sum", { ...sound, cost: new Exact(6) }, /not the sum of the prices/],
    ["a bound above the cost", { ...sound, bound: new Exact(8) }, /bound is above the cost/],
    ["a wrong number of sticks", { ...sound, sticksUsed: 3 }, /number of sticks/],
    ["a wrong yield", { ...sound, yield: new Exact(1) }, /yield is not net over gross/],
    ["a gap that is not shown", { ...sound, bound: new Exact(6) }, /gap is not/],
    ["a claim that does not follow", { ...sound, bound: new Exact(6), gap: new Exact(1).div(7) }, /does not follow/],
  ])("finds %s", (_, plan, fault) => {
    expect(faults(job, plan).join("\n")).toMatch(fault);
  });

  test("finds a longer piece cut after a shorter one", () => {
    const mixed = cuttingJob({ pieces: [{ length: 30, label: "tread" }, { length: 20, label: "riser" }], stock: [{ length: 64, cents: 500 }] });
    const stick: PlannedStick = {
      stock: 0,
      pieces: [
        { piece: 1, label: "riser", length: inches(20), position: inches(0) },
        { piece: 0, label: "tread", length: inches(30), position: inches(20) },
      ],
      leftOver: inches(14),
    };
    const plan = { ...sound, sticks: [stick], cost: new Exact(5), bound: new Exact(5), sticksUsed: 1, yield: new Exact(50).div(64) };
    expect(faults(mixed, plan)).toEqual(["stick 0: a longer piece after a shorter one"]);
  });
});
