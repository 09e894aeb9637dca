import { changedStair, type KnownStair } from "../../../src/solver/layout/changed-stair";
import { resolvedStair } from "../../../src/solver/layout/resolved-stair";
import type { StairFacts } from "../../../src/solver/layout/stair-facts";
import { stairLayout } from "../../../src/solver/layout/stair-layout";
import type { Length } from "../../../src/solver/length/length";
import { lengthIn, lengthOf } from "../../../src/solver/length/length";
import { isProblem } from "../../../src/solver/problem";

const inches = (value: number): Length => lengthOf(value, "in");

const TYPED: StairFacts = { totalRise: inches(105), risers: 14, run: inches(10), opening: inches(120), floorThickness: inches(10) };

/** The stair as LAYOUT hands it on: every label, given or worked out. */
const laidOut = (typed: StairFacts): KnownStair => {
  const lines = stairLayout(typed, "in");
  if (isProblem(lines)) throw new Error(lines.problem);
  const known = lines.filter(({ key, value }) => key !== "unit" && value !== undefined);
  const given = Object.fromEntries(known.map(({ key, value }) => [key, value])) as StairFacts;
  const marked = lines.filter(({ assumed }) => assumed.startsWith("assumed")).map(({ key, assumed }) => [key, assumed]);
  return { given, assumed: Object.fromEntries(marked) };
};

const figures = ({ given }: KnownStair): Readonly<Record<string, number>> => {
  const stair = resolvedStair(given);
  if (isProblem(stair)) throw new Error(stair.problem);
  const { risers, treads, unitRise, run, totalRun, headroomFound } = stair;
  const length = (of: Length | undefined): number => Number(lengthIn(of ?? inches(NaN), "in").toDecimalPlaces(4));
  return {
    risers: risers ?? NaN, treads: treads ?? NaN, rise: length(unitRise), run: length(run), totalRun: length(totalRun),
    headroom: length(headroomFound),
  };
};

// By hand: 105 / 14 = 7 1/2, 13 treads of 10 are 130, headroom 120 x 7.5 / 10 - 10 = 80.
test.each<readonly [string, StairFacts, Readonly<Record<string, number>>]>([
  ["nothing", {}, { risers: 14, treads: 13, rise: 7.5, run: 10, totalRun: 130, headroom: 80 }],
  // 105 / 15 = 7; 14 treads; 120 x 7 / 10 - 10.
  ["risers", { risers: 15 }, { risers: 15, treads: 14, rise: 7, run: 10, totalRun: 140, headroom: 74 }],
  ["unit rise", { unitRise: inches(7) }, { risers: 15, treads: 14, rise: 7, run: 10, totalRun: 140, headroom: 74 }],
  ["treads", { treads: 14 }, { risers: 15, treads: 14, rise: 7, run: 10, totalRun: 140, headroom: 74 }],
  // 105 / 7 1/4 = 14.48, so 15.
  ["greatest rise", { maxRise: inches(7.25) }, { risers: 15, treads: 14, rise: 7, run: 10, totalRun: 140, headroom: 74 }],
  // 13 x 12; 120 x 7.5 / 12 - 10.
  ["run", { run: inches(12) }, { risers: 14, treads: 13, rise: 7.5, run: 12, totalRun: 156, headroom: 65 }],
  ["tread depth", { treadDepth: inches(12) }, { risers: 14, treads: 13, rise: 7.5, run: 12, totalRun: 156, headroom: 65 }],
  ["total run", { totalRun: inches(156) }, { risers: 14, treads: 13, rise: 7.5, run: 12, totalRun: 156, headroom: 65 }],
  // 12 and the nosing of 1 1/4 that LAYOUT assumes.
  ["board depth", { boardDepth: inches(13.25) }, { risers: 14, treads: 13, rise: 7.5, run: 12, totalRun: 156, headroom: 65 }],
  // 112 / 14 = 8; 120 x 8 / 10 - 10.
  ["total rise", { totalRise: inches(112) }, { risers: 14, treads: 13, rise: 8, run: 10, totalRun: 130, headroom: 86 }],
  ["top tread", { topTread: "flush" }, { risers: 14, treads: 14, rise: 7.5, run: 10, totalRun: 140, headroom: 80 }],
  ["opening", { opening: inches(160) }, { risers: 14, treads: 13, rise: 7.5, run: 10, totalRun: 130, headroom: 110 }],
  ["risers and run", { risers: 15, run: inches(12) }, { risers: 15, treads: 14, rise: 7, run: 12, totalRun: 168, headroom: 60 }],
])("with another %s a layout follows anew", (_, change, wanted) => {
  expect(figures(changedStair(laidOut(TYPED), change))).toEqual(wanted);
  expect(figures(changedStair({ given: TYPED, assumed: {} }, change))).toEqual(wanted);
});

test("a stair known by its total run alone keeps it: the run follows", () => {
  const { run: _run, ...others } = TYPED;
  // By hand: 14 treads in 133 are 9 1/2.
  const changed = changedStair({ given: { ...others, totalRun: inches(133) }, assumed: {} }, { risers: 15 });
  expect(figures(changed)).toMatchObject({ treads: 14, run: 9.5, totalRun: 133 });
});

test("risers that were counted from a rise are counted again for another total rise", () => {
  const { risers: _risers, ...uncounted } = TYPED;
  // By hand: 105 / 7 3/4 = 13.55, so 14; 120 / 7 3/4 = 15.48, so 16.
  const layout = laidOut(uncounted);
  expect(figures(layout)).toMatchObject({ risers: 14 });
  expect(figures(changedStair(layout, { totalRise: inches(120) }))).toMatchObject({ risers: 16, rise: 7.5 });
});

test("what is changed is no longer assumed, and all else still is", () => {
  const changed = changedStair(laidOut(TYPED), { nosing: inches(1) });
  expect(Object.keys(changed.assumed)).not.toContain("nosing");
  expect(Object.keys(changed.assumed)).toContain("treadThickness");
  expect(changed.given.nosing?.eq(inches(1))).toBe(true);
});

test("two labels changed that contradict one another are no stair", () => {
  const changed = changedStair(laidOut(TYPED), { run: inches(10), totalRun: inches(117) });
  expect(resolvedStair(changed.given)).toMatchObject({ problem: "labels-disagree" });
});
