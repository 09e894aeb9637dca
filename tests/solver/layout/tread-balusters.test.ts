import fc from "fast-check";
import { type Length, lengthOf, measure } from "../../../src/solver/length/length";
import { resolvedStair, type Stair } from "../../../src/solver/layout/resolved-stair";
import type { StairFacts } from "../../../src/solver/layout/stair-facts";
import { type Balusters, type TreadBalusters, treadBalusters } from "../../../src/solver/layout/tread-balusters";
import { isProblem } from "../../../src/solver/problem";

const inches = (value: number | string): Length => lengthOf(value, "in");

const stairOf = (facts: StairFacts): Stair => {
  const stair = resolvedStair(facts);
  if (isProblem(stair)) throw new Error(stair.problem);
  return stair;
};

interface Asked {
  readonly width: number;
  readonly perTread?: number;
  readonly railDepth?: number;
}

const asked = ({ width, perTread, railDepth }: Asked): Balusters => ({
  width: inches(width), perTread, railDepth: railDepth === undefined ? undefined : inches(railDepth),
});

const found = (facts: StairFacts, given: Asked): TreadBalusters => {
  const answer = treadBalusters(stairOf(facts), asked(given), "in");
  if (isProblem(answer)) throw new Error(answer.problem);
  return answer;
};

const problemOf = (facts: StairFacts, given: Asked): string | undefined => {
  const answer = treadBalusters(stairOf(facts), asked(given), "in");
  return isProblem(answer) ? answer.problem : undefined;
};

/** 7 3/4 by 10, nosing 1 1/4, balusters 1 1/4, the rail's underside 31 1/2 plumb over the nosings. */
const USUAL: StairFacts = { totalRise: inches(108.5), risers: 14, run: inches(10), nosing: inches(1.25), handrailHeight: inches(34) };
/** Square to a rail at atan(0.775), 2 1/2 plumb: 2.5 x cos pitch = 2.5 / sqrt(1 + 0.600625) = 1.97604. */
const SQUARE_DEPTH = 2.5 / Math.hypot(1, 0.775);

describe("a worked tread", () => {
  // By hand: centres 0.625 + 10/m each; gap 10/m - 1.25; on the rake 12.6516 / m; on the centre 31.5 + (1.25 + centre) x 0.775.
  test.each([
    [2, [0.625, 5.625], [32.953, 36.828], 3.75, 6.326],
    [3, [0.625, 3.958, 7.292], [32.953, 35.536, 38.12], 2.083, 4.217],
  ])("%d to a tread", (perTread, centres, lengths, gap, rake) => {
    const answer = found(USUAL, { width: 1.25, perTread, railDepth: SQUARE_DEPTH });
    expect(answer.balusters.map(({ centre }) => centre)).toEqual(centres.map((centre) => expect.closeTo(centre, 3)));
    expect(answer.balusters.map(({ length }) => length)).toEqual(lengths.map((length) => expect.closeTo(length, 3)));
    expect(answer.gap).toBeCloseTo(gap, 3);
    expect(answer.rake).toBeCloseTo(rake, 3);
  });

  test("the long and the short point lie half a width up and down the rake", () => {
    // By hand: 0.625 x 0.775 = 0.484.
    const [first] = found(USUAL, { width: 1.25, perTread: 2, railDepth: SQUARE_DEPTH }).balusters;
    expect([first?.longPoint, first?.shortPoint]).toEqual([expect.closeTo(32.953 + 0.484, 3), expect.closeTo(32.953 - 0.484, 3)]);
  });
});

describe("published layouts", () => {
  test("Hatfield, The American House-Carpenter, art. 258: the first half its width from the riser, the second half a tread on", () => {
    // Its two lengths, 2 ft 5 and 2 ft 9, differ by half a riser: by that pair a riser of 8 in.
    const stair: StairFacts = { totalRise: inches(80), risers: 10, run: inches(10), handrailHeight: inches(32) };
    const [first, second] = found(stair, { width: 2, perTread: 2, railDepth: 2 }).balusters;
    expect(first?.centre).toBe(1);
    expect((second?.centre ?? 0) - (first?.centre ?? 0)).toBe(5);
    expect((second?.length ?? 0) - (first?.length ?? 0)).toBeCloseTo(33 - 29, 9);
  });

  // An answer on baluster layout in a trade magazine: three to a tread of 10 1/2 stand 3 1/2 apart, three to one of 10 stand 3 1/3.
  test.each([[10.5, 3.5], [10, 10 / 3]])("three on a run of %d stand %d apart", (run, apart) => {
    const { balusters } = found({ totalRise: inches(105), risers: 14, run: inches(run) }, { width: 1.25, perTread: 3 });
    for (const index of [1, 2]) {
      expect((balusters[index]?.centre ?? 0) - (balusters[index - 1]?.centre ?? 0)).toBeCloseTo(apart, 9);
    }
  });
});

const among = (min: number, max: number) => fc.double({ min, max, noNaN: true });

test("met in the plane: tread, rail moved square down by its depth, and the plumb faces of each baluster", () => {
  const shapes = fc.record({
    rise: among(6, 8.25), run: among(8, 12), nosing: among(0, 1.5), height: among(30, 42), depth: among(1, 4), width: among(0.5, 2),
    perTread: fc.integer({ min: 1, max: 3 }),
  });
  fc.assert(
    fc.property(shapes, ({ rise, run, nosing, height, depth, width, perTread }) => {
      const facts = {
        totalRise: inches(rise).times(12), risers: 12, run: inches(run), nosing: inches(nosing), handrailHeight: inches(height),
      };
      const answer = found(facts, { width, perTread, railDepth: depth });
      // x = 0 is the riser face below the tread, y = 0 the tread; the nosings lie on a line through (-nosing, 0) and (run - nosing, rise).
      const along = [run / Math.hypot(run, rise), rise / Math.hypot(run, rise)] as const;
      const squareDown = [along[1], -along[0]] as const;
      const onTop = [-nosing, height] as const;
      const under = [onTop[0] + depth * squareDown[0], onTop[1] + depth * squareDown[1]] as const;
      // Where the plumb line at x meets the underside: under + t along, its x given.
      const meets = (x: number): number => under[1] + ((x - under[0]) / along[0]) * along[1];
      expect(answer.balusters).toHaveLength(perTread);
      answer.balusters.forEach((one, index) => {
        const [back, front] = [one.centre + width / 2, one.centre - width / 2];
        expect(one.length).toBeCloseTo(meets(one.centre), 8);
        expect(one.longPoint).toBeCloseTo(meets(back), 8);
        expect(one.shortPoint).toBeCloseTo(meets(front), 8);
        if (index === 0) expect(front).toBeCloseTo(0, 9);
        // The next one stands on this tread, or is the first of the next, a run further up.
        const next = answer.balusters[index + 1]?.centre ?? run + (answer.balusters[0]?.centre ?? 0);
        expect(next - width / 2 - back).toBeCloseTo(answer.gap, 8);
        expect(Math.hypot(next - one.centre, meets(next) - meets(one.centre))).toBeCloseTo(answer.rake, 8);
      });
    }),
  );
});

describe("how many", () => {
  test("the fewest that keep the stair's guard gap, or the usual one", () => {
    // By hand: 10 / (1.25 + 3.9375) = 1.93: 2, gap 3.75; within 3 it is 10 / 4.25 = 2.35: 3; within 8.75 one is enough, 10 / 10.
    const usual = found(USUAL, { width: 1.25 });
    expect([usual.balusters.length, usual.gap, usual.limit.isGiven, measure(usual.limit.most, "in")]).toEqual([2, 3.75, false, 3.9375]);
    const tight = found({ ...USUAL, guardGap: inches(3) }, { width: 1.25 });
    expect([tight.balusters.length, tight.limit.isGiven, measure(tight.limit.most, "in")]).toEqual([3, true, 3]);
    expect(found({ ...USUAL, guardGap: inches(8.75) }, { width: 1.25 })).toMatchObject({ gap: 8.75, touches: true });
  });

  test("one fewer would leave a gap over the limit", () => {
    const sixteenths = [fc.integer({ min: 128, max: 192 }), fc.integer({ min: 8, max: 40 }), fc.integer({ min: 32, max: 80 })] as const;
    fc.assert(
      fc.property(...sixteenths, (run, width, most) => {
        const { balusters, gap } = found(
          { totalRise: inches(105), risers: 14, run: inches(run / 16), guardGap: inches(most / 16) }, { width: width / 16 },
        );
        expect(gap).toBeLessThanOrEqual(most / 16 + 1e-5);
        const fewer = balusters.length - 1;
        if (fewer > 0) expect((run / fewer - width) / 16).toBeGreaterThan(most / 16);
        else expect(run - width).toBeGreaterThan(0);
      }),
    );
  });

  test("a gap that another cell worked out, with its last digits cut off, is kept to as it is meant", () => {
    // By hand: 10/3 - 1.25 = 2.0833..., of which a cell keeps fifteen digits.
    expect(found({ ...USUAL, guardGap: inches("2.08333333333333") }, { width: 1.25 }).balusters).toHaveLength(3);
  });

  test("asked for too few they are answered, and how many would keep the gap is known", () => {
    expect(found(USUAL, { width: 1.25, perTread: 1 })).toMatchObject({ gap: 8.75, fewest: 2 });
    // By hand: 10 / (8 + 1) = 1.1 asks for two of 8 on a run of 10.
    expect(found({ ...USUAL, guardGap: inches(1) }, { width: 8, perTread: 1 }).fewest).toBeUndefined();
  });
});

test("without a handrail height or a rail depth there are places and no lengths", () => {
  const { handrailHeight: _, ...without } = USUAL;
  for (const answer of [found(without, { width: 1.25, railDepth: 2 }), found(USUAL, { width: 1.25 })]) {
    expect(answer.balusters[0]).toEqual({ baluster: 1, centre: 0.625, length: undefined, longPoint: undefined, shortPoint: undefined });
  }
});

test("what leaves no balusters is told apart", () => {
  expect(problemOf(USUAL, { width: 5, perTread: 2 })).toBe("no-room-for-balusters");
  expect(problemOf({ ...USUAL, guardGap: inches(1) }, { width: 8 })).toBe("no-room-for-balusters");
  expect(problemOf(USUAL, { width: 0.001, perTread: 101 })).toBe("too-many-balusters");
  expect(problemOf({ ...USUAL, guardGap: inches(0.01) }, { width: 0.01 })).toBe("too-many-balusters");
  // By hand: 40 square is 50.6 plumb, over the 34 of the handrail by more than the 0.97 the nosing gives back.
  expect(problemOf(USUAL, { width: 1.25, railDepth: 40 })).toBe("rail-too-deep");
  expect(problemOf({ totalRise: inches(7), risers: 1, run: inches(10) }, { width: 1.25 })).toBe("single-rise");
});
