import loadHighs, { type Highs } from "highs";
import { highsMaster } from "../../src/long-search/highs-master";
import { highsWholeSearch } from "../../src/long-search/highs-whole-search";
import { wholeUnits, worthSteps } from "../../src/solver/yield/shelf/certificate";
import { columnsGenerated } from "../../src/solver/yield/shelf/column-generation";
import { knapsackOf } from "../../src/solver/yield/shelf/knapsack";
import { type Limits, wholeShelf } from "../../src/solver/yield/shelf/master";
import { nearPatterns, weighedBy } from "../../src/solver/yield/shelf/near-patterns";
import { patternBranched } from "../../src/solver/yield/shelf/pattern-branching";
import { type Shelf } from "../../src/solver/yield/shelf/shelf";
import { simplexMaster } from "../../src/solver/yield/shelf/simplex-master";
import { seeded } from "../solver/yield/job";

/** Our simplex and our search beside HiGHS, a general-purpose library of linear and integer programs. */
let highs: Highs;
beforeAll(async () => {
  highs = await loadHighs();
});

const PLENTY = 4_000_000_000;

const drawnShelf = (seed: number): Shelf => {
  const below = seeded(seed);
  const widths = new Set<number>();
  while (widths.size < 3 + below(5)) widths.add(60 + below(300));
  const kinds = [...widths].sort((a, b) => b - a).map((width) => ({ width, wanted: 1 + below(5) }));
  const pieces = kinds.reduce((sum, kind) => sum + kind.wanted, 0);
  const sticks = Array.from({ length: 1 + below(4) }, (_, index) => {
    const holds = 380 + below(700);
    return {
      section: 0,
      holds,
      usable: holds,
      price: 200 + holds + below(400),
      newLength: holds,
      available: index > 0 && below(3) === 0 ? 1 + below(3) : pieces,
    };
  });
  return { kinds, sticks, takes: [kinds.map(() => true)], marks: 1, keep: 0 };
};

const SEEDS = Array.from({ length: 24 }, (_, index) => index + 1);

const never = (): boolean => false;
const known: readonly [] = [];

const generated = (shelf: Shelf, limits: Limits, masterOf: typeof simplexMaster) =>
  columnsGenerated(shelf, limits, knapsackOf(shelf)!, known, masterOf, { left: PLENTY }, never);

describe("the linear program, by our own simplex and by HiGHS", () => {
  test.each(SEEDS)("job %i: the same least cost, with and without a least number of sticks", (seed) => {
    const shelf = drawnShelf(seed);
    const below = seeded(seed + 500);
    const stick = below(shelf.sticks.length);
    const forced: Limits = {
      ...wholeShelf(shelf),
      least: shelf.sticks.map((_, index) => (index === stick ? 1 + below(shelf.sticks[index]!.available) : 0)),
    };
    for (const limits of [wholeShelf(shelf), forced]) {
      const own = generated(shelf, limits, simplexMaster);
      const other = generated(shelf, limits, highsMaster(highs));
      expect(own.isComplete && other.isComplete).toBe(true);
      expect(own.answer.cost).toBeCloseTo(other.answer.cost, 5);
      expect(own.answer.shortage).toBeCloseTo(other.answer.shortage, 5);
      // what the whole-number worths prove is never above the linear cost, and here never more than a cent below it
      for (const { least, answer } of [own, other]) {
        const proven = least / worthSteps(shelf);
        expect(proven).toBeLessThanOrEqual(answer.cost + 1e-6);
        expect(proven).toBeGreaterThan(answer.cost - 1);
      }
    }
  });
});

describe("whole uses of patterns, by our own search and by an integer program", () => {
  test.each(SEEDS)("job %i: the same least cost, or both find none", (seed) => {
    const shelf = drawnShelf(seed);
    const limits = wholeShelf(shelf);
    const steps = worthSteps(shelf);
    const knapsack = knapsackOf(shelf)!;
    const root = generated(shelf, limits, simplexMaster);
    const weighed = weighedBy(
      shelf,
      limits,
      steps,
      root.worth,
      knapsack.fill(
        root.worth,
        shelf.kinds.map((kind) => kind.wanted),
        { left: PLENTY },
      ),
    );
    // far enough above the proven cost that there are plans, and at the proven cost itself, where often there is none
    for (const target of [wholeUnits(root.least, steps), Math.ceil(wholeUnits(root.least, steps) * 1.03)]) {
      const near = nearPatterns(shelf, limits, weighed, target * steps - root.least, true, 5_000, { left: PLENTY })!;
      const own = patternBranched(shelf, limits, weighed, near, target, simplexMaster, { left: PLENTY });
      const other = highsWholeSearch(highs)(shelf, limits, weighed, near, target, simplexMaster, { left: PLENTY });
      expect([own.isClosed, own.best?.cost]).toEqual([true, other.best?.cost]);
    }
  });
});
