import { candidateOf } from "../../../../src/solver/yield/shelf/dive";
import { fullSticksPlan } from "../../../../src/solver/yield/shelf/full-sticks";
import { handPlan } from "../../../../src/solver/yield/shelf/hand-plan";
import { cutsOf } from "../../../../src/solver/yield/shelf/pattern";
import type { Shelf } from "../../../../src/solver/yield/shelf/shelf";
import { cents, checkedPlan, seeded } from "../job";

const HOLDS = 1_000;
const testTime = 60_000;

/** Sticks of 1,000 sawn into three pieces of 250 to 490 each, so that these go on so many sticks again and on no fewer. */
const triplets = (seed: number, sticks: number): number[] => {
  const draw = seeded(seed);
  return Array.from({ length: sticks }).flatMap(() => {
    const long = 380 + draw(111);
    const middle = 250 + draw(Math.floor((HOLDS - long) / 2) - 249);
    return [long, middle, HOLDS - long - middle];
  });
};

const shelfOf = (widths: readonly number[], holds = HOLDS): Shelf => {
  const kinds = [...new Set(widths)].sort((a, b) => b - a);
  return {
    kinds: kinds.map((width) => ({ width, wanted: widths.filter((each) => each === width).length })),
    sticks: [{ section: 0, holds, usable: holds, price: 7, newLength: holds, available: widths.length }],
    takes: [kinds.map(() => true)],
    marks: 1,
    keep: 0,
  };
};

const planned = (shelf: Shelf, steps: number) => {
  const effort = { left: steps };
  const plan = fullSticksPlan(shelf, candidateOf(shelf, handPlan(shelf, { left: steps }))!, effort);
  return { plan, left: effort.left };
};

// The number of sticks is that of the construction; a plan by hand takes some 15 % more.
test.each([[20, 1], [40, 2], [83, 3], [167, 4]])("triplets of %i sticks go on so many again, each full", (sticks, seed) => {
  const widths = triplets(seed, sticks);
  const shelf = shelfOf(widths);
  const { plan } = planned(shelf, 400_000_000);
  const cuts = cutsOf(shelf, plan!.uses);
  const onSticks = cuts.map(({ kinds }) => kinds.map((kind) => shelf.kinds[kind]!.width));
  expect(plan!.cost).toBe(7 * sticks);
  expect(onSticks.map((each) => each.reduce((sum, width) => sum + width, 0))).toEqual(Array.from({ length: sticks }, () => HOLDS));
  expect(onSticks.flat().sort((a, b) => a - b)).toEqual([...widths].sort((a, b) => a - b));
}, testTime);

test("the same pieces have the same plan, after the same steps", () => {
  const shelf = shelfOf(triplets(5, 60));
  expect(planned(shelf, 200_000_000)).toEqual(planned(shelf, 200_000_000));
});

// By hand: four pieces of 3 come to three sticks of 4, and each stick holds one of them.
test("ends with its effort where sticks cannot be full", () => {
  const { plan, left } = planned(shelfOf([3, 3, 3, 3], 4), 100_000);
  expect(plan).toBeUndefined();
  // a try of four pieces looks at each of them a few times: some thousands of steps
  expect(left).toBeLessThanOrEqual(0);
  expect(left).toBeGreaterThan(-20_000);
});

test("leaves alone what does not come to whole sticks, and several kinds of stick", () => {
  const uneven = shelfOf([...triplets(6, 20), 250]);
  const even = shelfOf(triplets(6, 20));
  const [stick] = even.sticks;
  expect(planned(uneven, 1_000_000)).toEqual({ plan: undefined, left: 1_000_000 });
  expect(planned({ ...even, sticks: [stick!, { ...stick!, holds: 900 }] }, 1_000_000)).toEqual({ plan: undefined, left: 1_000_000 });
});

// Pieces are shorter than in the construction by the kerf, the stick is by one kerf and longer by two trims: the same 83 sticks, which all
// pieces together fill.
test("a job of 249 pieces is proven, kerf and trims in it", () => {
  const kerf = 2;
  const trim = 5;
  const pieces = triplets(3, 83).map((width) => ({ length: width - kerf }));
  const plan = checkedPlan({ unit: "mm", kerf, trim, pieces, stock: [{ length: HOLDS - kerf + 2 * trim, cents: 350 }] });
  expect([plan.sticksUsed, cents(plan.cost), plan.verdict]).toEqual([83, 83 * 350, "best possible (proven)"]);
}, testTime);
