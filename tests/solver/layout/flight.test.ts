import fc from "fast-check";
import { arcRadius } from "../../../src/solver/layout/arc-radius";
import { headroom } from "../../../src/solver/layout/headroom";
import { opening } from "../../../src/solver/layout/opening";
import { rail } from "../../../src/solver/layout/rail";
import { skirt } from "../../../src/solver/layout/skirt";
import { stringer } from "../../../src/solver/layout/stringer";
import { isProblem } from "../../../src/solver/problem";

/** A point in the plane of the flight: level from the first riser's face, plumb over the finished lower floor. */
type Point = readonly [number, number];

const flights = fc.record({
  rise: fc.double({ min: 6, max: 8.25, noNaN: true }),
  run: fc.double({ min: 8, max: 12, noNaN: true }),
  risers: fc.integer({ min: 2, max: 18 }),
  nosing: fc.double({ min: 0, max: 1.5, noNaN: true }),
  treadThickness: fc.double({ min: 0.75, max: 1.5, noNaN: true }),
  lowerBuildUp: fc.double({ min: 0, max: 1, noNaN: true }),
  upperBuildUp: fc.double({ min: 0, max: 1, noNaN: true }),
});

/** How far a point lies along the slope of a flight. */
const alongSlope = ([x, y]: Point, rise: number, run: number): number => (x * run + y * rise) / Math.hypot(rise, run);
/** Distance of a point from the line through two others. */
const fromLine = ([x, y]: Point, [ax, ay]: Point, [bx, by]: Point): number =>
  ((bx - ax) * (y - ay) - (by - ay) * (x - ax)) / Math.hypot(bx - ax, by - ay);

describe("a cut stringer, by the corners of its cuts", () => {
  test("length, throat and hang", () => {
    fc.assert(
      fc.property(flights, ({ rise, run, risers, treadThickness, lowerBuildUp, upperBuildUp }) => {
        const found = stringer({ rise, run, risers, boardWidth: 11.25, treadThickness, lowerBuildUp, upperBuildUp });
        // Sub-tread k is level at k rises less the tread; the stringer stands on the rough floor.
        const foot: Point = [0, -lowerBuildUp];
        const back: Point = [(risers - 1) * run, (risers - 1) * rise - treadThickness];
        expect(found.length).toBeCloseTo(alongSlope(back, rise, run) - alongSlope(foot, rise, run), 8);
        // The deepest cut is the inner corner of a sub-tread and the riser above it; the board's top edge runs through the outer corners.
        const outer: Point = [0, rise - treadThickness];
        const next: Point = [run, 2 * rise - treadThickness];
        const inner: Point = [run, rise - treadThickness];
        expect(found.throat).toBeCloseTo(11.25 - Math.abs(fromLine(inner, outer, next)), 8);
        // The rough upper floor lies one rise over the last tread's top, less what is still to be laid.
        const roughUpper = risers * rise - upperBuildUp;
        expect(found.hang).toBeCloseTo(roughUpper - back[1], 8);
        expect(found.plumbCut + found.levelCut).toBeCloseTo(90, 9);
      }),
    );
  });
});

describe("skirt boards, by the points they must cover", () => {
  test("a closed skirt reaches from its edge above the nosing line to the lowest back corner of a tread, foot to head", () => {
    fc.assert(
      fc.property(
        flights,
        fc.double({ min: 0, max: 3, noNaN: true }),
        fc.double({ min: 0, max: 6, noNaN: true }),
        fc.double({ min: 0, max: 6, noNaN: true }),
        (flight, shows, foot, head) => {
          const { rise, run, risers, nosing, treadThickness } = flight;
          const found = skirt({ ...flight, boardWidth: 10, shows, foot, head });
          const nose: Point = [-nosing, rise];
          const landing: Point = [(risers - 1) * run - nosing, risers * rise];
          // The back underside corner of the first tread, at the face of the riser above it.
          const corner: Point = [run, rise - treadThickness];
          expect(found.closedSkirtWidth).toBeCloseTo(shows - fromLine(corner, nose, landing), 8);
          // Its ends: the foot on the floor, plumb under where it begins; the head's upper corner, on the line that shows, plumb over where
          // it ends.
          const footCorner: Point = [nose[0] - foot, 0];
          const headCorner: Point = [landing[0] + head, landing[1] + (rise / run) * head + shows * Math.hypot(1, rise / run)];
          expect(found.closedSkirtLength).toBeCloseTo(alongSlope(headCorner, rise, run) - alongSlope(footCorner, rise, run), 8);
        },
      ),
    );
  });

  test("an open skirt is cut like the stringer", () => {
    fc.assert(
      fc.property(flights, (flight) => {
        const cut = stringer({ ...flight, boardWidth: 11.25 });
        const board = skirt({ ...flight, boardWidth: 11.25, shows: 2, foot: 0, head: 0 });
        expect(board.openSkirtWidth).toBeCloseTo(11.25, 9);
        expect(board.openSkirtLength).toBeCloseTo(cut.length, 9);
      }),
    );
  });
});

describe("headroom and openings", () => {
  test("the line of the nosings passes the far edge with the headroom asked for", () => {
    fc.assert(
      fc.property(
        flights,
        fc.double({ min: 76, max: 90, noNaN: true }),
        fc.double({ min: 0, max: 16, noNaN: true }),
        ({ rise, run, nosing }, wanted, floor) => {
          const level = opening(rise, run, wanted, floor, 0);
          // From the landing nosing at height 0, the nosing line a distance `level` out is this far down.
          expect((level * rise) / run).toBeCloseTo(wanted + floor, 8);
          expect(opening(rise, run, wanted, floor, nosing)).toBeCloseTo(level + nosing, 9);
          expect(headroom(rise, run, level, floor, 0)).toBeCloseTo(wanted, 8);
        },
      ),
    );
  });

  test("132 in in 18 steps under a 12 in floor, three steps down: owner-builder worksheet, printed 98", () => {
    // The ceiling over step 3 is 132 - 12; the opening that ends over that step leaves 15 rises to the upper floor.
    const found = headroom(132 / 18, 10, 15 * 10, 12, 0);
    expect(found).toBeCloseTo(98, 1);
  });

  test("102 in under a ceiling, header over the third riser of 7: The Carpenters' Guide, 81 in", () => {
    // By steps: 102 - 3 x 7. The opening that ends there from a landing of n rises: (n - 3) runs; with no floor and 102 in of height, n x 7
    // = 102.
    const rises = 102 / 7;
    expect(headroom(7, 10, (rises - 3) * 10, 0, 0)).toBeCloseTo(81, 9);
  });

  test("an opening that ends before the stair is under the floor has no headroom", () => {
    expect(isProblem(headroom(7.5, 10, 12, 10, 0))).toBe(true);
  });
});

test("the rail runs with the nosings", () => {
  fc.assert(
    fc.property(flights, fc.double({ min: 34, max: 38, noNaN: true }), ({ rise, run, risers }, height) => {
      const found = rail(rise, run, risers, height);
      const first: Point = [0, rise + height];
      const last: Point = [(risers - 1) * run, risers * rise + height];
      expect(found.railLength).toBeCloseTo(Math.hypot(last[0] - first[0], last[1] - first[1]), 8);
      expect(found.heightOverTheNosings).toBeCloseTo(first[1] - rise, 8);
      expect(found.heightOverTheLowerFloorAtTheFirstNosing).toBeCloseTo(first[1], 8);
      expect(found.heightOverTheUpperFloorAtTheLandingNosing).toBeCloseTo(last[1] - risers * rise, 8);
      expect(found.squareHeight).toBeCloseTo(Math.abs(fromLine(first, [0, rise], [run, 2 * rise])), 8);
    }),
  );
});

describe("arcs", () => {
  // 96 and 24 give 60 (printed diameter 120); 76 and 3 give 242.1667; Math Central: 132 and 21 give 114.214.
  test.each([[96, 24, 60], [76, 3, 242.1667], [132, 21, 114.214]])("chord %d, rise %d: radius %d", (chord, rise, radius) => {
    expect(arcRadius(chord, rise)).toBeCloseTo(radius, 3);
  });

  test("both ends and the crown lie on the circle", () => {
    fc.assert(
      fc.property(fc.double({ min: 1, max: 400, noNaN: true }), fc.double({ min: 0.05, max: 1, noNaN: true }), (chord, share) => {
        const rise = (chord / 2) * share;
        const radius = arcRadius(chord, rise);
        expect(Math.hypot(chord / 2, radius - rise) / radius).toBeCloseTo(1, 9);
      }),
    );
  });
});
