import fc from "fast-check";
import { type Length, lengthOf, measure } from "../../../src/solver/length/length";
import { type ShimLimits, shimPlan } from "../../../src/solver/survey/shim-plan";

const inches = (value: number): Length => lengthOf(value, "in");
const each = (lengths: readonly Length[]): readonly number[] => lengths.map((length) => measure(length, "in"));

const NOTHING_MORE: ShimLimits = {
  spread: inches(0.375), most: undefined, lowerMore: inches(0), upperMore: inches(0), maxRise: undefined, tape: 16, unit: "in",
};

/** A plan with treads of 1 in and floors of 3/4 in still to be laid. */
const planOf = (rough: readonly number[], limits: Partial<ShimLimits> = {}) =>
  shimPlan(
    { roughRises: rough.map(inches), treadThickness: inches(1), lowerBuildUp: inches(0.75), upperBuildUp: inches(0.75) },
    { ...NOTHING_MORE, ...limits },
  );

describe("worked by hand", () => {
  test("one shim where one rise is too tall", () => {
    // 7 1/2 + 1 - 3/4 = 7 3/4, 7 5/8 - 1 + 3/4 = 7 3/8. The last, 7 3/8, can only come down and so holds the tallest to 7 3/4; the
    // fourth, 7 7/8, comes down by 1/8 under sub-tread 3. The first, 7 3/4, can only go up
    // and the last only down, so no packing brings them nearer than 3/8.
    const rough = [7.5, 7.75, 7.375, 7.875, 7.625];
    for (const spread of [inches(0.375), undefined]) {
      const plan = planOf(rough, { spread });
      expect(each(plan.asFound)).toEqual([7.75, 7.75, 7.375, 7.875, 7.375]);
      expect(each(plan.packing)).toEqual([0, 0, 0, 0.125, 0, 0]);
      expect(each(plan.rises)).toEqual([7.75, 7.75, 7.5, 7.75, 7.375]);
      expect(each([plan.total, plan.spreadFound, plan.spread])).toEqual([0.125, 0.5, 0.375]);
      expect([plan.isReached, plan.waysOut]).toEqual([spread && true, undefined]);
    }
  });

  test("a tall first and a short last rise are beyond packing: a floor comes up by 1/4, and nothing else", () => {
    // Thirteen of 7 11/16 and one of 7 9/16: 7 15/16, twelve of 7 11/16, 7 5/16. The first can only go up, the last only down: 5/8.
    const rough = [...Array.from({ length: 13 }, () => 7.6875), 7.5625];
    const framed = planOf(rough);
    expect([framed.isReached, measure(framed.spread, "in"), measure(framed.total, "in")]).toEqual([false, 0.625, 0]);
    const { lowerMore, upperMore, both, most } = framed.waysOut ?? {};
    expect([lowerMore, upperMore].map((more) => more && measure(more, "in"))).toEqual([0.25, 0.25]);
    expect([both, most]).toEqual([undefined, undefined]);
    // 7 15/16 - 1/4 = 7 11/16; 7 11/16 - 7 5/16 = 3/8.
    const raised = planOf(rough, { lowerMore: inches(0.25) });
    expect(each(raised.packing)).toEqual([0.25, ...Array.from({ length: 14 }, () => 0)]);
    expect([raised.isReached, measure(raised.spread, "in")]).toEqual([true, 0.375]);
    expect(planOf(rough, { lowerMore: inches(0.1875) }).isReached).toBe(false);
  });

  test("rises that are alike need nothing, and a single rise is alike with itself", () => {
    // 6 3/4, 7 and 7 1/4 rough: 7, 7, 7.
    expect(each(planOf([6.75, 7, 7.25]).packing)).toEqual([0, 0, 0, 0]);
    const single = planOf([7], { spread: undefined });
    expect([each(single.packing), each(single.rises), measure(single.spread, "in")]).toEqual([[0, 0], [7], 0]);
  });

  test("no rise is over the greatest while some packing keeps them under it", () => {
    // 7 1/4 and 7 3/4 after treads and floors: 3/8 apart with 1/16, but no rise over 7 5/8 only with 1/8.
    expect(each(planOf([7, 8]).packing)).toEqual([0, 0.0625, 0]);
    expect(each(planOf([7, 8], { maxRise: inches(7.625) }).packing)).toEqual([0, 0.125, 0]);
    // Together 15, so two of 7 1/2 are the lowest there are; under that only a raised lower floor helps: 15 less 2 x 7 7/16 is 1/8.
    const over = planOf([7, 8], { maxRise: inches(7.4375) });
    expect([over.hasRiseOver, over.isReached]).toEqual([true, false]);
    expect([over.waysOut?.lowerMore && measure(over.waysOut.lowerMore, "in"), over.waysOut?.upperMore]).toEqual([0.125, undefined]);
  });

  test("packing is in divisions of the tape, whatever the rises were read to", () => {
    // 7.01 and 7.99: 0.98 apart; 5/16 brings them to 0.355, 1/4 to 0.48. In thirds 1/3 is the first that does: 0.98 - 2/3.
    expect(each(planOf([6.76, 8.24]).packing)).toEqual([0, 0.3125, 0]);
    const thirds = planOf([6.76, 8.24], { tape: 3 });
    expect(measure(thirds.packing[1] ?? inches(0), "in")).toBeCloseTo(1 / 3, 12);
    // 180 and 196 mm: 10 apart with 3 mm, 8 with 4; floors and treads of 27.
    const [tread, limit] = [lengthOf(27, "mm"), lengthOf(9, "mm")];
    const metric = shimPlan(
      { roughRises: [180, 196].map((rise) => lengthOf(rise, "mm")), treadThickness: tread, lowerBuildUp: tread, upperBuildUp: tread },
      { ...NOTHING_MORE, spread: limit, tape: 1, unit: "mm" },
    );
    expect(metric.packing.map((under) => measure(under, "mm"))).toEqual([0, 4, 0]);
  });
});

/** A small flight in whole divisions of a tape with one to the inch, and all that may be asked of it. */
interface SmallFlight {
  readonly rises: readonly number[];
  readonly spread: number;
  readonly most: number;
  readonly lowerMore: number;
  readonly upperMore: number;
  readonly maxRise: number;
}

const smallFlights: fc.Arbitrary<SmallFlight> = fc.record({
  // Two remainders of a division, so that rises do not all differ by whole ones.
  rises: fc.array(fc.constantFrom(5, 5.5, 6, 6.25, 7, 7.5, 8), { minLength: 1, maxLength: 4 }),
  spread: fc.constantFrom(0.25, 0.5, 1, 1.25, 1.5, 2, 3),
  most: fc.integer({ min: 1, max: 3 }),
  lowerMore: fc.integer({ min: 0, max: 2 }),
  upperMore: fc.integer({ min: 0, max: 2 }),
  maxRise: fc.constantFrom(6.5, 7, 7.25, 8, 12),
});

const small = ({ rises, spread, most, lowerMore, upperMore, maxRise }: SmallFlight, asksLeast = false) =>
  shimPlan(
    { roughRises: rises.map(inches), treadThickness: inches(0), lowerBuildUp: inches(0), upperBuildUp: inches(0) },
    {
      spread: asksLeast ? undefined : inches(spread), most: inches(most), lowerMore: inches(lowerMore), upperMore: inches(upperMore),
      maxRise: inches(maxRise), tape: 1, unit: "in",
    },
  );

/** The rises with each surface packed, worked from heights over the rough floor. */
const withPacking = (rises: readonly number[], packing: readonly number[]): readonly number[] => {
  const heights = [0, ...rises.map((_, step) => rises.slice(0, step + 1).reduce((sum, rise) => sum + rise, 0))]
    .map((height, surface) => height + (packing[surface] ?? 0));
  return rises.map((_, step) => (heights[step + 1] ?? 0) - (heights[step] ?? 0));
};

const apart = (rises: readonly number[]): number => Math.max(...rises) - Math.min(...rises);
const sum = (numbers: readonly number[]): number => numbers.reduce((total, one) => total + one, 0);

/** Every packing there is, each surface from nothing up to its most. */
const everyPacking = (limits: readonly number[]): readonly (readonly number[])[] =>
  limits.reduce<readonly (readonly number[])[]>(
    (begun, limit) => begun.flatMap((packing) => Array.from({ length: limit + 1 }, (_, under) => [...packing, under])), [[]],
  );

const limitsOf = ({ rises, most, lowerMore, upperMore }: SmallFlight): readonly number[] =>
  [lowerMore, ...rises.slice(1).map(() => most), upperMore];

/** All packings that leave no rise over the greatest. */
const allowedIn = (flight: SmallFlight): readonly (readonly number[])[] =>
  everyPacking(limitsOf(flight)).filter((packing) => Math.max(...withPacking(flight.rises, packing)) <= flight.maxRise);

const TRIES = 4_000;

describe("against every packing there is", () => {
  test("within a spread the plan has the least total, and of these the least spread", () => {
    let [reached, missed, over] = [0, 0, 0];
    fc.assert(
      fc.property(smallFlights, (flight) => {
        const plan = small(flight);
        const allowed = allowedIn(flight);
        const within = allowed.filter((packing) => apart(withPacking(flight.rises, packing)) <= flight.spread);
        expect([plan.hasRiseOver, plan.isReached]).toEqual([allowed.length === 0, within.length > 0]);
        const packing = each(plan.packing);
        expect(each(plan.rises)).toEqual(withPacking(flight.rises, packing));
        packing.forEach((under, surface) => expect(under).toBeLessThanOrEqual(limitsOf(flight)[surface] ?? 0));
        const spread = measure(plan.spread, "in");
        if (within.length > 0) {
          reached++;
          const least = Math.min(...within.map(sum));
          expect([sum(packing), spread]).toEqual([
            least, Math.min(...within.filter((one) => sum(one) === least).map((one) => apart(withPacking(flight.rises, one)))),
          ]);
        } else if (allowed.length > 0) {
          missed++;
          expect(spread).toBe(Math.min(...allowed.map((one) => apart(withPacking(flight.rises, one)))));
        } else over++;
      }),
      { numRuns: TRIES },
    );
    for (const kind of [reached, missed, over]) expect(kind).toBeGreaterThan(TRIES / 40);
  });

  test("the least spread is the least of all packings, with the least total that has it", () => {
    fc.assert(
      fc.property(smallFlights, (flight) => {
        const plan = small(flight, true);
        const allowed = allowedIn(flight);
        if (allowed.length === 0) return;
        const spreads = allowed.map((packing) => apart(withPacking(flight.rises, packing)));
        const least = Math.min(...spreads);
        expect(measure(plan.spread, "in")).toBe(least);
        expect(measure(plan.total, "in")).toBe(Math.min(...allowed.filter((_, place) => spreads[place] === least).map(sum)));
      }),
      { numRuns: TRIES },
    );
  });

  test("each way out is the least that reaches the spread, and where none is named none does", () => {
    const isReached = (flight: SmallFlight): boolean =>
      allowedIn(flight).some((packing) => apart(withPacking(flight.rises, packing)) <= flight.spread);
    const least = (flight: SmallFlight, changed: (more: number) => SmallFlight, most: number): number | undefined =>
      Array.from({ length: most + 1 }, (_, more) => more).find((more) => isReached(changed(more)));
    const few = fc.record({
      rises: fc.array(fc.constantFrom(5, 5.5, 6, 7), { minLength: 2, maxLength: 3 }), spread: fc.constantFrom(0.5, 1),
      most: fc.integer({ min: 1, max: 2 }), lowerMore: fc.integer({ min: 0, max: 1 }), upperMore: fc.constant(0),
      maxRise: fc.constantFrom(5.5, 6, 12),
    });
    fc.assert(
      fc.property(few, (flight) => {
        const { isReached: isThere, waysOut } = small(flight);
        if (isThere === true) return expect(waysOut).toBeUndefined();
        // No floor comes up by more than a rise as found, and none has to be packed by more than all of them under a sub-tread.
        const rise = Math.floor(Math.max(...flight.rises));
        const lower = least(flight, (lowerMore) => ({ ...flight, lowerMore }), rise);
        const upper = least(flight, (upperMore) => ({ ...flight, upperMore }), rise);
        const under = least(flight, (most) => ({ ...flight, most }), 8);
        expect([waysOut?.lowerMore, waysOut?.upperMore, waysOut?.most].map((more) => more && measure(more, "in"))).toEqual([
          lower, upper, under,
        ]);
        if (lower !== undefined || upper !== undefined) return expect(waysOut?.both).toBeUndefined();
        const pairs = everyPacking([rise, rise]).filter(([lowerMore = 0, upperMore = 0]) => isReached({ ...flight, lowerMore, upperMore }));
        const { both } = waysOut ?? {};
        const leastOfBoth = pairs.length === 0 ? undefined : Math.min(...pairs.map(sum));
        expect(both && measure(both.lowerMore.plus(both.upperMore), "in")).toBe(leastOfBoth);
      }),
      { numRuns: 400 },
    );
  });
});

/**
 * The least spread that packing of any thickness reaches: between two surfaces i < j the rises have a mean of at least what is left when i
 * is packed all it may and j not at all, and of at most the other way round; the tallest is no lower than the greatest of the one, the
 * lowest no higher than the least of the other.
 */
const leastContinuous = (flight: SmallFlight): number => {
  const limits = limitsOf(flight);
  const heights = [0, ...flight.rises.map((_, step) => sum(flight.rises.slice(0, step + 1)))];
  let [tallest, lowest] = [-Infinity, Infinity];
  heights.forEach((one, i) =>
    heights.slice(i + 1).forEach((other, further) => {
      const j = i + 1 + further;
      tallest = Math.max(tallest, (other - one - (limits[i] ?? 0)) / (j - i));
      lowest = Math.min(lowest, (other + (limits[j] ?? 0) - one) / (j - i));
    }),
  );
  return Math.max(0, tallest - lowest);
};

test("the least spread lies under two divisions over that of packing in any thickness, and comes to it on a finer tape", () => {
  fc.assert(
    fc.property(smallFlights, (flight) => {
      const bound = leastContinuous(flight);
      // Rounding every packing up to a division changes each rise by less than one either way, and stays within limits of whole divisions.
      for (const tape of [1, 64]) {
        const { spread } = shimPlan(
          { roughRises: flight.rises.map(inches), treadThickness: inches(0), lowerBuildUp: inches(0), upperBuildUp: inches(0) },
          {
            spread: undefined, most: inches(flight.most), lowerMore: inches(flight.lowerMore), upperMore: inches(flight.upperMore),
            maxRise: undefined, tape, unit: "in",
          },
        );
        expect(measure(spread, "in")).toBeGreaterThanOrEqual(bound - 1e-9);
        expect(measure(spread, "in")).toBeLessThan(bound + 2 / tape);
      }
    }),
    { numRuns: 300 },
  );
});

test("packing keeps the sum of the rises but for the floors, and more of it allowed is never worse", () => {
  fc.assert(
    fc.property(smallFlights, (flight) => {
      const plan = small(flight);
      const [lower = 0, ...rest] = each(plan.packing);
      expect(sum(each(plan.rises))).toBeCloseTo(sum(flight.rises) - lower + (rest[rest.length - 1] ?? 0), 9);
      const more = small({ ...flight, most: flight.most + 1 });
      if (plan.isReached === true) expect(measure(more.total, "in")).toBeLessThanOrEqual(measure(plan.total, "in"));
      else if (!plan.hasRiseOver && more.isReached !== true)
        expect(measure(more.spread, "in")).toBeLessThanOrEqual(measure(plan.spread, "in"));
    }),
  );
});
