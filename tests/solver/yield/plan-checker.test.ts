import { Exact } from "../../../src/solver/length/exact";
import { lengthOf } from "../../../src/solver/length/length";
import type { CuttingPlan } from "../../../src/solver/yield/cutting-plan";
import type { PlannedStick } from "../../../src/solver/yield/planned-sticks";
import { cuttingJob } from "./job";
import { unproven } from "./certificate-checker";
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
  verdict: "best possible (proven)",
  // By hand, in tenths of a dollar: a 30 is worth 25 and a 20 is worth 20. A 64 holds 30 + 30 = 50 or 30 + 20 = 45, no more than its 50;
  // a 24 holds one 20, its price. All pieces are worth 25 + 25 + 20 = 70, so no plan costs less than 7.
  proofs: [
    {
      grade: "",
      pieceRows: [[0], [1]],
      stockRows: [[0], [1]],
      unit: new Exact(1),
      steps: 10,
      certified: new Exact(7),
      proof: { by: "worth", worth: [25, 20], isSearched: false },
    },
  ],
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
    const mixed = cuttingJob({
      pieces: [
        { length: 30, label: "tread" },
        { length: 20, label: "riser" },
      ],
      stock: [{ length: 64, cents: 500 }],
    });
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

describe("the checker of certificates", () => {
  const [proven] = sound.proofs;
  const withProof = (changed: Partial<typeof proven & object>): CuttingPlan => ({ ...sound, proofs: [{ ...proven!, ...changed }] });

  test("finds nothing wrong with a certificate made by hand", () => {
    expect(unproven(job, sound)).toEqual([]);
  });

  // By hand: no 64 at all leaves the 30s without a stick, so any worth for them proves as much; with one 64 or more the worths above hold.
  test("nor with one of two branches", () => {
    const upTo = { by: "worth", worth: [500, 0], isSearched: false } as const;
    expect(unproven(job, withProof({ proof: { by: "branch", stick: 0, atMost: 0, upTo, over: proven!.proof } }))).toEqual([]);
  });

  // By hand, by the same worths: of 70 a 64 holds 50 and a 24 holds 20, so what costs less than 7, one 64 or one or two 24s (of which there
  // is one), holds too little.
  test("nor with one of the numbers of sticks", () => {
    expect(unproven(job, withProof({ proof: { by: "counts", worths: [[25, 20]], isSearched: false } }))).toEqual([]);
  });

  test.each<[string, CuttingPlan, RegExp]>([
    // By hand: 20s alone are worth 20, which one 24 for 2 holds; 30s alone are worth 2, which one 64 for 5 holds, and it holds a 20 too.
    ["numbers of sticks for one piece", withProof({ proof: { by: "counts", worths: [[0, 20]], isSearched: false } }), /do not prove 7/],
    ["and for each by itself", withProof({ proof: { by: "counts", worths: [[1, 0], [0, 1]], isSearched: false } }), /do not prove 7/],
    ["no worths at all", withProof({ proof: { by: "counts", worths: [], isSearched: false } }), /do not prove 7/],
    // By hand: one of each costs 7 and holds all 70.
    [
      "a claim above the numbers of sticks",
      withProof({ certified: new Exact(8), proof: { by: "counts", worths: [[25, 20]], isSearched: false } }),
      /do not prove 8/,
    ],
    // By hand: 22 + 22 + 20 = 64, so 6.4 is proven, which is 7 in whole dollars; 20 + 20 + 20 = 60 proves 6.
    ["worths that prove less", withProof({ proof: { by: "worth", worth: [20, 20], isSearched: false } }), /do not prove 7/],
    // By hand: 40 + 40 in a 64 is 30 more than its 50, for each of up to three sticks: 100 - 3 x 30 proves 1.
    ["worths that a stick outbids", withProof({ proof: { by: "worth", worth: [40, 20], isSearched: false } }), /do not prove 7/],
    ["a claim above the proof", withProof({ certified: new Exact(8) }), /do not prove 8/],
    [
      "a branch left open",
      withProof({
        proof: { by: "branch", stick: 0, atMost: 1, upTo: { by: "worth", worth: [0, 0], isSearched: false }, over: proven!.proof },
      }),
      /do not prove 7/,
    ],
    [
      "a bound above the certificate without a search",
      { ...withProof({ certified: new Exact(6) }), verdict: "best possible (searched, not certified)" },
      /nothing was searched/,
    ],
    [
      "certified, but not the cost",
      { ...withProof({ certified: new Exact(6), proof: { by: "worth", worth: [25, 20], isSearched: true } }) },
      /called certified/,
    ],
    [
      "a piece that is not in the proof",
      withProof({ pieceRows: [[0]], proof: { by: "worth", worth: [25], isSearched: false } }),
      /not every piece/,
    ],
    [
      "pieces that differ taken for one kind",
      withProof({ pieceRows: [[0, 1]], proof: { by: "worth", worth: [25], isSearched: false } }),
      /of one kind differ/,
    ],
    ["a stick that is not in the proof", withProof({ stockRows: [[0]] }), /stock row 1 is not in the proof/],
    ["sticks that differ taken for one kind", withProof({ stockRows: [[0, 1]] }), /sticks of one kind differ/],
    ["pieces without a proof", { ...sound, proofs: [] }, /not every piece is in a proof once/],
  ])("catches %s", (_, planted, expected) => {
    expect(unproven(job, planted).join("\n")).toMatch(expected);
  });
});
