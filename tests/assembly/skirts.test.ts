import fc from "fast-check";
import { SKIRT } from "../../src/functions/layout/skirt";
import { cellsOf } from "../functions/printed-rows";

/**
 * Skirts drawn on the finished stair: its nosings and the underside of its treads as points, the board as a strip cut off plumb and on the
 * floor, measured along itself. The pitch is taken from two nosings.
 */
type Spot = readonly [along: number, up: number];

interface Wanted {
  readonly stair: readonly (readonly (string | number)[])[];
  readonly risers: number;
  readonly run: number;
  readonly rise: number;
  readonly nosing: number;
  readonly thickness: number;
  readonly shows: number;
  readonly foot: number;
  readonly head: number;
}

const between = (min: number, max: number): fc.Arbitrary<number> => fc.double({ min, max, noNaN: true });
const wanted: fc.Arbitrary<Wanted> = fc
  .record({
    risers: fc.integer({ min: 3, max: 16 }),
    rise: between(6, 8),
    run: between(9, 12),
    nosing: between(0.75, 1.5),
    thickness: between(0.75, 1.5),
    shows: between(0.5, 4),
    foot: between(0, 6),
    head: between(0, 6),
  })
  .map((sizes) => ({
    ...sizes,
    stair: [
      ["total rise", sizes.rise * sizes.risers], ["risers", sizes.risers], ["run", sizes.run], ["nosing", sizes.nosing],
      ["tread thickness", sizes.thickness], ["skirt shows", sizes.shows], ["skirt foot", sizes.foot], ["skirt head", sizes.head],
    ],
  }));

const valueOf = (cells: readonly (readonly unknown[])[], label: string): number => Number(cells.find((row) => row[0] === label)?.[1]);

/** What of a polygon lies where `inside` is 0 or more (Sutherland and Hodgman). */
const clipped = (polygon: readonly Spot[], inside: (spot: Spot) => number): readonly Spot[] =>
  polygon.flatMap((to, index): readonly Spot[] => {
    const from = polygon[(index + polygon.length - 1) % polygon.length] ?? to;
    const [a, b] = [inside(from), inside(to)];
    const share = a / (a - b);
    const crossing: Spot = [from[0] + (to[0] - from[0]) * share, from[1] + (to[1] - from[1]) * share];
    return [...(a < 0 !== b < 0 ? [crossing] : []), ...(b >= 0 ? [to] : [])];
  });

const extent = (values: readonly number[]): number => Math.max(...values) - Math.min(...values);

describe("skirts laid on the finished stair", () => {
  test("a closed skirt shows what it is to show over the nosings, reaches every tread's underside and is as long as is printed", () => {
    fc.assert(
      fc.property(wanted, ({ stair, risers, run, rise, nosing, thickness, shows, foot, head }) => {
        const cells = cellsOf(SKIRT, { stair });
        const [width, length] = [valueOf(cells, "closed skirt width"), valueOf(cells, "closed skirt length")];
        // Riser k stands at (k - 1) runs; the nosing over it projects before it. The last is the landing's.
        const nosings = Array.from({ length: risers }, (_, index): Spot => [index * run - nosing, (index + 1) * rise]);
        const [first, second] = nosings;
        const last = nosings[risers - 1];
        if (first === undefined || second === undefined || last === undefined) throw new Error("no nosings");
        const along: Spot = [second[0] - first[0], second[1] - first[1]];
        const long = Math.hypot(...along);
        const lengthwise = ([x, z]: Spot): number => (x * along[0] + z * along[1]) / long;
        const over = ([x, z]: Spot): number => (-(x - first[0]) * along[1] + (z - first[1]) * along[0]) / long;
        const undersides = Array.from({ length: risers - 1 }, (_, index): Spot => [(index + 1) * run, (index + 1) * rise - thickness]);
        // By definition: no tread's lowest back corner shows under the board, and the board is no wider than that takes.
        expect(shows - width - Math.min(...undersides.map(over))).toBeCloseTo(0, 9);
        const far = 10 * long * risers;
        const place = (lengthwiseAt: number, overBy: number): Spot => [
          first[0] + (lengthwiseAt * along[0] - overBy * along[1]) / long, first[1] + (lengthwiseAt * along[1] + overBy * along[0]) / long,
        ];
        const strip = [place(-far, shows), place(far, shows), place(far, shows - width), place(-far, shows - width)];
        const plumb = clipped(clipped(strip, ([x]) => x - (first[0] - foot)), ([x]) => last[0] + head - x);
        // What is left of the strip when both ends and the floor are cut comes out of a board as long as is printed.
        const board = clipped(plumb, ([, z]) => z);
        expect(extent(board.map(lengthwise))).toBeCloseTo(length, 9);
      }),
      { numRuns: 100 },
    );
  });

  test("an open skirt, cut out under treads and behind risers, comes out of a board of the printed size", () => {
    fc.assert(
      fc.property(wanted, ({ stair, risers, run, rise, thickness }) => {
        const cells = cellsOf(SKIRT, { stair });
        const [width, length] = [valueOf(cells, "open skirt width"), valueOf(cells, "open skirt length")];
        const long = Math.hypot(run, rise);
        const lengthwise = ([x, z]: Spot): number => (x * run + z * rise) / long;
        const across = ([x, z]: Spot): number => (z * run - x * rise) / long;
        // Riser faces and the undersides of the treads, from the floor up to the back of the last tread.
        const steps = Array.from({ length: risers - 1 }, (_, index): readonly Spot[] => [
          [index * run, (index + 1) * rise - thickness], [(index + 1) * run, (index + 1) * rise - thickness],
        ]).flat();
        const corners: readonly Spot[] = [[0, 0], ...steps];
        expect(extent(corners.map(lengthwise))).toBeCloseTo(length, 9);
        // The board's upper edge lies on the outer corners; what is left under the inner ones still holds together.
        expect(extent(corners.map(across))).toBeLessThan(width);
      }),
      { numRuns: 100 },
    );
  });
});
