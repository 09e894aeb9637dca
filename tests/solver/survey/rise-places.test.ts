import fc from "fast-check";
import { exact } from "../../../src/solver/length/exact";
import { leastPacking, packedRises } from "../../../src/solver/survey/least-packing";
import { risePlaces } from "../../../src/solver/survey/rise-places";

/** Heights that rises can come to by whole divisions, counted upward; small whole numbers by hand. */

describe("places of 7, 7.5 and 8.5 in divisions of 1", () => {
  // Rests 0 and 0.5: the heights are ... 6.5, 7, 7.5, 8, 8.5 ..., two to a division.
  const places = risePlaces([7, 7.5, 8.5].map((rise) => exact(rise)), exact(1));

  test("are whole numbers that stand as the heights do", () => {
    expect([places.found, places.division]).toEqual([[14, 15, 17], 2]);
    expect([14, 15, 16, 17, 1, 0, -1, -2].map((place) => places.heightAt(place).toNumber())).toEqual([7, 7.5, 8, 8.5, 0.5, 0, -0.5, -1]);
  });

  test("are the last not above a height, also under nothing", () => {
    expect([7, 7.49, 7.5, 7.99, 8, 0, -0.01, -0.5, -0.51, -1].map((height) => places.notAbove(exact(height)))).toEqual([
      14, 14, 15, 15, 16, 0, -1, -1, -2, -2,
    ]);
  });

  test("reach as far as a spread goes, from either rest", () => {
    const reach = (spread: number) => [14, 15, -1].map(places.within(exact(spread)));
    expect([reach(0), reach(0.49), reach(0.5), reach(1), reach(1.75)]).toEqual([
      [14, 15, -1], [14, 15, -1], [15, 16, 0], [16, 17, 1], [17, 18, 2],
    ]);
  });
});

test("packing raises the rise below and lowers the one above", () =>
  expect(packedRises({ rises: [10, 10, 10], division: 2 }, [0, 1, 0, 3])).toEqual([12, 8, 16]));

describe("the least packing into a band", () => {
  const rises = [10, 14, 10];
  const pack = (low: number, high: number, most: readonly number[] = [9, 9, 9, 9]): unknown =>
    leastPacking({ rises, division: 1, most }, { low, high });

  test("is none where all are in it, both ends among it", () => expect(pack(10, 14)).toEqual([0, 0, 0, 0]));

  test("raises the surface under a tall rise, and those below it where that must be", () => {
    // 10, 14, 10 with 3 under the second surface are 13, 11, 10; with 2 they are 12, 12, 10.
    expect([pack(10, 13), pack(10, 12), pack(11, 13), pack(10, 11)]).toEqual([[0, 1, 0, 0], [0, 2, 0, 0], [0, 1, 0, 1], [2, 3, 0, 0]]);
  });

  test("is undefined where a surface has no room, or no packing brings all in", () => {
    expect([pack(10, 12, [0, 2, 0, 0]), pack(10, 12, [0, 1, 9, 9]), pack(10, 11, [2, 3, 0, 0]), pack(10, 11, [1, 9, 9, 9])]).toEqual([
      [0, 2, 0, 0], undefined, [2, 3, 0, 0], undefined,
    ]);
    expect(leastPacking({ rises: [10], division: 4, most: [9, 9] }, { low: 11, high: 13 })).toBeUndefined();
  });

  test("of all packings is the least under every surface, tried one by one", () => {
    const among = (min: number, max: number) => fc.integer({ min, max });
    const flight = fc.record({ rises: fc.array(among(4, 12), { minLength: 1, maxLength: 3 }), division: among(1, 3) });
    fc.assert(fc.property(flight, among(4, 12), among(0, 5), among(0, 3), (one, low, band, most) => {
      const limits = Array.from({ length: one.rises.length + 1 }, () => most);
      const further = (begun: readonly number[]): number[][] => Array.from({ length: most + 1 }, (_, under) => [...begun, under]);
      const all = limits.reduce<number[][]>((some) => some.flatMap(further), [[]]);
      const fitting = all.filter((packing) => packedRises(one, packing).every((rise) => rise >= low && rise <= low + band));
      const least = fitting[0]?.map((_, surface) => Math.min(...fitting.map((packing) => packing[surface]!)));
      const found = leastPacking({ ...one, most: limits }, { low, high: low + band });
      if (found !== undefined) expect(fitting).toContainEqual([...found]);
      expect(found).toEqual(least);
    }));
  });
});
