import { type Length, lengthOf, measure } from "../../../src/solver/length/length";
import { balusterSpacing, repeatedSpacing } from "../../../src/solver/layout/baluster-spacing";
import { choices } from "../../../src/solver/layout/choices";
import { headroom } from "../../../src/solver/layout/headroom";
import { railBetweenNewels } from "../../../src/solver/layout/rail-between-newels";
import { resolvedStair } from "../../../src/solver/layout/resolved-stair";
import type { StairFacts } from "../../../src/solver/layout/stair-facts";
import { flight } from "../../../src/solver/layout/stair-skirt";
import { storyPole } from "../../../src/solver/layout/story-pole";
import { treadBalusters } from "../../../src/solver/layout/tread-balusters";
import { isProblem } from "../../../src/solver/problem";

/** Each limit of a layout exactly at its figure, and a hair to either side; by hand. */

const inches = (value: number): Length => lengthOf(value, "in");
/** What it is, or the problem that it is. */
const told = <Value>(found: Value): unknown => (isProblem(found) ? found.problem : "answered");
const stair = (facts: StairFacts) => {
  const found = resolvedStair({ totalRise: inches(105), risers: 14, run: inches(10), ...facts });
  if (isProblem(found)) throw new Error(found.problem);
  return found;
};

test("headroom is more than nothing: 20 of opening at 7 over 10 are 14 in", () => {
  expect([headroom(7, 10, 20, 13.99, 0), headroom(7, 10, 20, 14, 0), headroom(7, 10, 20, 14.01, 0)].map(told)).toEqual([
    "answered", "no-headroom", "no-headroom",
  ]);
  // A nosing of 10 takes half of the opening.
  expect(headroom(7, 10, 20, 6, 10)).toBe(1);
});

test("two newels leave a rail between them, however short", () => {
  const between = (apart: number): unknown =>
    told(railBetweenNewels([{ place: 0, width: 4 }, { place: apart, width: 2 }], { rise: 7, run: 10, risers: 14, handrailHeight: 34 }));
  expect([between(3.01), between(3), between(2.99)]).toEqual(["answered", "newels-meet", "newels-meet"]);
  expect(told(railBetweenNewels([{ place: 0, width: 4 }], { rise: 7, run: 10, risers: 14, handrailHeight: 34 }))).toBe("one-newel");
});

test("marks of a story pole lie less than a rise below their treads: 105 by 14 is 7 1/2", () => {
  const below = (value: number): unknown => told(storyPole(inches(105), 14, 16, inches(value), "in"));
  expect([below(0), below(7.49), below(7.5), below(8)]).toEqual(["answered", "answered", "mark-below-floor", "mark-below-floor"]);
});

test("the last mark says where the total rise lies between two, and only where marks are those of the treads", () => {
  const notes = (total: number, below: number): string[] => {
    const marks = storyPole(inches(total), 2, 16, inches(below), "in");
    return isProblem(marks) ? [] : marks.map(({ note }) => note);
  };
  const said = "the total rise lies between two marks; height has it exactly";
  // 14 1/32 is no sixteenth, and its half neither.
  expect([notes(14.03125, 0), notes(14.0625, 0), notes(14.03125, 1)]).toEqual([["", said], ["", ""], ["", ""]]);
});

describe("balusters", () => {
  const counted = (found: ReturnType<typeof balusterSpacing>): unknown =>
    isProblem(found) ? found.problem : [found.count, measure(found.gap, "in"), found.touches];

  test("in an opening no wider than the gap there are none; a hair more takes one", () => {
    const opening = (value: number): unknown => counted(balusterSpacing(inches(value), inches(1), inches(4)));
    expect([opening(3), opening(4), opening(9), opening(1)]).toEqual([[0, 3, false], [0, 4, true], [1, 4, true], [0, 1, false]]);
    expect(opening(4.5)).toEqual([1, 1.75, false]);
    expect(opening(9.5)).toEqual([2, 2.5, false]);
  });

  test("as wide as their opening leave no gap", () => {
    // One of 6 in a run or an opening of 6 fills it; of 5.99 it leaves a hundredth.
    expect([counted(repeatedSpacing(inches(6), inches(6), inches(4))), told(repeatedSpacing(inches(6), inches(5.99), inches(4)))]).toEqual([
      "no-room-for-balusters", "answered",
    ]);
    expect(counted(balusterSpacing(inches(6), inches(6), inches(4)))).toBe("no-room-for-balusters");
  });

  test("of a run are at least one, and as few as keep the gap", () => {
    const run = (value: number): unknown => counted(repeatedSpacing(inches(value), inches(1), inches(4)));
    expect([run(3), run(5), run(10), run(10.5)]).toEqual([[1, 2, false], [1, 4, true], [2, 4, true], [3, 2.5, false]]);
  });

  test("on a tread are a hundred at most, and have a rail over them", () => {
    const asked = (perTread: number | undefined, width: number, railDepth?: number) =>
      told(treadBalusters(stair({ handrailHeight: inches(36) }), {
        width: inches(width), perTread, railDepth: railDepth === undefined ? undefined : inches(railDepth),
      }, "in"));
    expect([asked(100, 0.05), asked(101, 0.05), asked(4, 2.49), asked(4, 2.5), asked(4, 2.51)]).toEqual([
      "answered", "too-many-balusters", "answered", "no-room-for-balusters", "no-room-for-balusters",
    ]);
    // By the gap: 10 / (0.05 + 0.05) are 100, 10 / 0.099 are 102.
    const byGap = (gap: number) =>
      treadBalusters(stair({ guardGap: inches(gap) }), { width: inches(0.05), perTread: undefined, railDepth: undefined }, "in");
    expect([told(byGap(0.05)), byGap(0.049)]).toEqual(["answered", { problem: "too-many-balusters", details: { most: 100 } }]);
    // 7 1/2 over 10 is 3 in 4: a rail 28.8 deep is 36 plumb, 28.8 x 5 / 4; with the nosing 1 1/4 x 3 / 4 = 0.9375 more it is 29.55.
    expect([asked(2, 1, 29.54), asked(2, 1, 29.55), asked(2, 1, 30)]).toEqual(["answered", "rail-too-deep", "rail-too-deep"]);
  });
});

describe("a stair that is told in several ways", () => {
  const of = (facts: StairFacts): unknown => told(resolvedStair(facts));

  test("may differ by a 64th and no more", () => {
    const MARK = 1 / 64;
    const known = { totalRise: inches(105), risers: 14, run: inches(10) };
    expect([of({ ...known, maxRise: inches(7.5 - MARK) }), of({ ...known, maxRise: inches(7.5 - MARK - 0.001) })]).toEqual([
      "answered", "rise-over-greatest",
    ]);
    expect([of({ ...known, availableRun: inches(130 - MARK) }), of({ ...known, availableRun: inches(130 - MARK - 0.001) })]).toEqual([
      "answered", "available-run-short",
    ]);
    expect([of({ ...known, treadDepth: inches(10 + MARK) }), of({ ...known, treadDepth: inches(10 - MARK - 0.001) })]).toEqual([
      "answered", "labels-disagree",
    ]);
    expect([of({ ...known, treads: 13 }), of({ ...known, treads: 14 }), of({ ...known, treads: 14, topTread: "flush" })]).toEqual([
      "answered", "treads-disagree", "answered",
    ]);
  });

  test("with one riser has no run to share out, flush it has one", () => {
    const one = { totalRise: inches(7), risers: 1 };
    expect([of({ ...one, totalRun: inches(10) }), of({ ...one, availableRun: inches(10) }), of({ ...one, run: inches(10) })]).toEqual([
      "run-without-treads", "run-without-treads", "answered",
    ]);
    expect([of({ ...one, totalRun: inches(10), topTread: "flush" }), of({ totalRun: inches(10) })]).toEqual(["answered", "answered"]);
  });

  test("one flight of several climbs its share of the stair, where a cell lost no more than its last digits", () => {
    const share = (totalRise: number): string | undefined => {
      const found = resolvedStair({ totalRise: inches(totalRise), risers: 7, run: inches(10), stairHeight: inches(100), stairRisers: 14 });
      return isProblem(found) ? found.problem : found.totalRise?.div(25.4).toString();
    };
    expect([share(50), share(50.000000001), share(50.0000001)]).toEqual(["50", "50", "50.0000001"]);
  });
});

test("a skirt needs a rise, a run and two risers", () => {
  const of = (facts: StairFacts): unknown => {
    const found = resolvedStair(facts);
    return isProblem(found) ? found.problem : told(flight(found, "in"));
  };
  expect([of({ run: inches(10) }), of({ totalRise: inches(14), risers: 2 })]).toEqual(["no-total-rise", "no-run"]);
  expect(of({ totalRise: inches(7), risers: 1, run: inches(10) })).toBe("single-rise");
  expect(of({ totalRise: inches(14), risers: 2, run: inches(10) })).toBe("answered");
});

// Rises from 5 to 8 1/4 in: common practice, no source. 2 x 8 1/4 is 16 1/2, 2 x 5 is 10, 3 x 8 1/4 is 24 3/4.
test.each([
  [16.5, [2, 3]], [16.51, [3]], [24.75, [3, 4]], [24.76, [4]], [10, [2]], [15, [2, 3]], [14.99, [2]], [9.99, "no-workable-count"],
  [8, "no-workable-count"],
] as const)("%d in can be climbed in %j risers", (total, risers) => {
  const found = choices(inches(total), undefined, undefined, "in");
  expect(isProblem(found) ? found.problem : found.map((one) => one.risers).sort((one, other) => one - other)).toEqual(risers);
});

test("the run goes with the rise by the stride of 25, and is never under the least", () => {
  const run = (total: number, risers: number, available?: number): unknown => {
    const found = choices(inches(total), available === undefined ? undefined : inches(available), undefined, "in");
    const one = isProblem(found) ? undefined : found.find((choice) => choice.risers === risers);
    return one && [measure(one.run, "in"), measure(one.totalRun, "in"), measure(one.twiceRisePlusRun, "in")];
  };
  // 25 - 2 x 7 = 11; 25 - 2 x 7 1/2 = 10; 25 - 2 x 8 = 9, and the least is 10.
  expect([run(98, 14), run(105, 14), run(112, 14)]).toEqual([[11, 143, 25], [10, 130, 25], [10, 130, 26]]);
  expect(run(98, 14, 117)).toEqual([9, 117, 23]);
});
