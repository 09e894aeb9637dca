import fc from "fast-check";
import { type TreadFit, treadFits, type TreadPiece } from "../../../src/solver/fit/tread-fit";
import type { TreadReading } from "../../../src/solver/fit/tread-reading";
import {
  between, distance, from as apart, level, movedToward, planeThrough, type Plane, type Point, shifted, threePlanes, turnedAbout, upright,
} from "./space";

const PIECE: TreadPiece = {
  nosing: 1.25,
  openEnd: "none",
  overhang: 1.25,
  returnWidth: 1.25,
  thickness: 1,
  riserOn: "both",
  riserThickness: 0.75,
  gap: 0,
  backGap: 0,
  undercut: 0,
  closure: { most: 0.125, alike: 0.125, division: 1 / 16 },
  unit: "in",
};
const RADIANS = Math.PI / 180;

const one = (reading: TreadReading, piece: Partial<TreadPiece> = {}): TreadFit => {
  const [fit] = treadFits([reading], { ...PIECE, ...piece });
  if (fit === undefined || "bad" in fit) throw new Error(JSON.stringify(fit));
  return fit;
};

describe("a worked tapered step", () => {
  // Back 36, front 36.2578, runs 9 1/2 and 10 1/4, diagonals 37.9119 and 36.9907, nosing 1 1/4. By hand: 0.75 / 36.2578 = 0.020685, asin
  // 1.1853 deg; along the back the front is sqrt(36.2578² - 0.5625) = 36.25; sqrt(37.9119² - 105.0625) - 36.25 = 0.25 and
  // 36 - sqrt(36.9907² - 90.25) = 0.25. From the back line: left atan(-0.25 / 9.5) = -1.5074, right atan(0.5 / 10.25) = 2.7927; from the
  // nose -2.6927 and 3.9780. Depths 9.5 x 0.999786 - 0.25 x 0.020685 + 1.25 = 10.7428 and 10.25 x 0.999786 - 0.5 x 0.020685 + 1.25 =
  // 11.4875. Nose 36.2578 + 1.25 x (tan -2.6927 + tan 3.9780) = 36.2578 + 1.25 x 0.022509 = 36.2859.
  const read = { step: 2, back: 36, front: 36.2578, diagonal: 37.9119, secondDiagonal: 36.9907, leftLean: 0, rightLean: 0 };
  const fit = one({ ...read, leftRun: 9.5, rightRun: 10.25 });
  test.each([
    ["leftAngle", -2.6927, 3], ["rightAngle", 3.978, 3],
    ["leftDepth", 10.7428, 4], ["rightDepth", 11.4875, 4], ["depth", 11.4875, 4],
    ["front", 36.2859, 3], ["back", 36, 3], ["closure", 0, 3],
  ] as const)("%s is %d", (name, value, digits) => {
    expect(fit[name]).toBeCloseTo(value, digits);
  });

  test("what to do about it is said, in the unit of the readings", () => {
    const note = (more: string, end: string): string =>
      "tapered: rip to the larger depth, scribe the back from left depth to right depth; or instead of the taper: pack between the " +
      `stringers and the riser behind, ${more} at its ${end} end to nothing at the other, and read this step anew`;
    expect(fit.note).toBe(note("3/4 in", "right"));
    // 0.75 x 25.4 = 19.05
    const inMillimetres = {
      step: 2, back: 36 * 25.4, front: 36.2578 * 25.4, diagonal: 36.9907 * 25.4, secondDiagonal: 37.9119 * 25.4, leftRun: 260.35,
      rightRun: 241.3, leftLean: 0, rightLean: 0,
    };
    const metric = one(inMillimetres, { unit: "mm", nosing: 31.75, closure: { most: 2.38125, alike: 3.175, division: 1 } });
    expect(metric.note).toBe(note("19.05 mm", "left"));
    expect(metric.leftDepth).toBeCloseTo(11.4875 * 25.4, 2);
    expect(metric.rightAngle).toBeCloseTo(-2.6927, 3);
  });

  test("a mean of the two runs is not used", () => {
    expect(one({ ...read, run: 9.875, leftRun: 9.5, rightRun: 10.25 })).toEqual(fit);
    // By hand, what the mean would make of it: legs sqrt(37.9119² - 97.5156) = 36.6032 and sqrt(36.9907² - 97.5156) = 35.6482; s the mean
    // of 0.3454 and 0.3518, atan(-0.3486 / 9.875) = -2.0219, the depth 9.875 + 1.25: more than half a degree and a third of an inch off.
    const byMean = one({ ...read, run: 9.875 });
    expect(byMean.leftAngle).toBeCloseTo(-2.0219, 3);
    expect(byMean.depth).toBe(11.125);
  });
});

/** A step out of planes: finished riser behind at y = 0, the riser in front as it comes, two skirts; the sub-tread at z = 0. */
interface Shape {
  readonly nearRight: number;
  readonly farLeft: number;
  readonly farRight: number;
  readonly leftRun: number;
  readonly rightRun: number;
  readonly leftLean: number;
  readonly rightLean: number;
  readonly leftGap: number;
  readonly rightGap: number;
  readonly backGap: number;
  readonly undercut: number;
  readonly nosing: number;
  readonly thickness: number;
  readonly overhang: number;
  readonly returnWidth: number;
  readonly riserThickness: number;
}

const among = (min: number, max: number) => fc.double({ min, max, noNaN: true });

const shapes: fc.Arbitrary<Shape> = fc.record({
  nearRight: among(28, 60), farLeft: among(-1, 1), farRight: among(-1, 1),
  leftRun: among(8, 13), rightRun: among(8, 13),
  leftLean: among(-4, 4), rightLean: among(-4, 4),
  leftGap: among(0, 0.125), rightGap: among(0, 0.125), backGap: among(0, 0.25), undercut: among(0, 6),
  nosing: among(0.75, 1.5), thickness: among(0.75, 1.5), overhang: among(0.5, 1.5), returnWidth: among(0.75, 3),
  riserThickness: among(0.4, 1),
}).map((shape) => ({ ...shape, farRight: shape.nearRight + shape.farRight }));

const times = ([a, b, c]: Point, by: number): Point => [a * by, b * by, c * by];
const minus = ([a, b, c]: Point, [d, e, f]: Point): Point => [a - d, b - e, c - f];
const unit = (way: Point): Point => times(way, 1 / Math.hypot(...way));

/** The planes of the step, and what the tape finds between them. */
const built = (shape: Shape, open: { readonly left: boolean; readonly right: boolean }) => {
  const [backLeft, backRight]: readonly [Point, Point] = [[0, 0, 0], [shape.nearRight, 0, 0]];
  const [frontLeft, frontRight]: readonly [Point, Point] = [[shape.farLeft, shape.leftRun, 0], [shape.farRight, shape.rightRun, 0]];
  const nose = unit(minus(frontRight, frontLeft));
  const toBack: Point = [nose[1], -nose[0], 0];
  const ahead: Point = [shape.nearRight / 2, 100, 0];
  const behind: Point = [shape.nearRight / 2, -100, 0];
  const front = planeThrough(frontLeft, frontRight, shifted(frontLeft, [0, 0, 1]));
  // A lean is read along the nose.
  const skirt = (near: Point, far: Point, lean: number, side: -1 | 1): Plane =>
    planeThrough(near, far, shifted(shifted(near, times(nose, side * Math.tan(lean * RADIANS))), [0, 0, 1]));
  const left = skirt(backLeft, frontLeft, open.left ? 0 : shape.leftLean, -1);
  const right = skirt(backRight, frontRight, open.right ? 0 : shape.rightLean, 1);
  const tape = (near: Plane, far: Plane): TreadReading => {
    const at = (side: Plane, line: Plane): Point => threePlanes(side, line, level(0));
    const [fl, fr] = [at(left, far), at(right, far)];
    return {
      step: 1,
      leftRun: apart(near, fl),
      rightRun: apart(near, fr),
      back: distance(at(left, near), at(right, near)),
      front: distance(fl, fr),
      diagonal: distance(at(left, near), fr),
      secondDiagonal: distance(at(right, near), fl),
      leftLean: open.left ? 0 : shape.leftLean,
      rightLean: open.right ? 0 : shape.rightLean,
      ...(open.left ? {} : { leftGap: shape.leftGap }),
      ...(open.right ? {} : { rightGap: shape.rightGap }),
    };
  };
  const edge = movedToward(front, shape.riserThickness, behind);
  const readings = {
    off: tape(upright(-shape.riserThickness), edge),
    behind: tape(upright(0), edge),
    both: tape(upright(0), front),
  };
  return { nose, toBack, left, right, ahead, behind, front, noseEdge: movedToward(front, shape.nosing, ahead), readings };
};

const CLOSED = { left: false, right: false };

describe("tapered openings out of planes, taped, and cut by what is printed", () => {
  test("in each way of holding the tape the piece lies on its lines, clear of skirts and riser by the gaps", () => {
    fc.assert(
      fc.property(shapes, fc.constantFrom("off", "behind", "both"), (shape, riserOn) => {
        const { nose, toBack, left, right, noseEdge, front, ahead, readings } = built(shape, CLOSED);
        const fit = one(readings[riserOn], { ...shape, riserOn });
        expect(fit.closure).toBeCloseTo(0, 9);
        // The face drawn on the bench from the numbers alone: nose corner, along the nose, and square to it.
        const bench = (along: number, back: number): readonly [number, number] => [along, back];
        const { leftDepth, rightDepth } = fit;
        const drawn = [
          bench(0, 0),
          bench(fit.front, 0),
          bench(leftDepth * Math.tan(fit.leftAngle * RADIANS), leftDepth),
          bench(fit.front - rightDepth * Math.tan(fit.rightAngle * RADIANS), rightDepth),
        ];
        // Carried to the step with its left nose corner where skirt, gap and nose line meet.
        const middle: Point = [shape.nearRight / 2, 5, 0];
        const corner = threePlanes(movedToward(left, shape.leftGap, middle), noseEdge, level(shape.thickness));
        const [nl, nr, bl, br] = drawn.map(([along, back]) => shifted(shifted(corner, times(nose, along)), times(toBack, back)));
        if (!nl || !nr || !bl || !br) throw new Error("four corners");
        for (const at of [nl, bl]) expect(apart(left, at)).toBeCloseTo(shape.leftGap, 8);
        for (const at of [nr, br]) expect(apart(right, at)).toBeCloseTo(shape.rightGap, 8);
        for (const at of [bl, br]) expect(at[1]).toBeCloseTo(shape.backGap, 8);
        for (const at of [nl, nr]) expect(apart(front, at)).toBeCloseTo(shape.nosing, 8);
        expect(distance(nl, ahead)).toBeLessThan(distance(bl, ahead));
        expect(fit.back).toBeCloseTo(distance(bl, br), 8);
        expect(fit.depth).toBe(Math.max(leftDepth, rightDepth));
        // Ends: the clear skirt turned about the face's edge by the undercut; the tilt is its angle from plumb.
        const sawn = (wall: Plane, gap: number, from: Point, to: Point, side: -1 | 1): Plane =>
          turnedAbout(movedToward(wall, gap, middle), from, minus(to, from), side * shape.undercut);
        const [sawnLeft, sawnRight] = [sawn(left, shape.leftGap, bl, nl, -1), sawn(right, shape.rightGap, br, nr, 1)];
        const plumb = (from: Point, to: Point): Plane => planeThrough(from, to, shifted(from, [0, 0, 1]));
        expect(Math.abs(fit.leftTilt)).toBeCloseTo(between(sawnLeft, plumb(bl, nl)), 7);
        expect(Math.abs(fit.rightTilt)).toBeCloseTo(between(sawnRight, plumb(br, nr)), 7);
        // The blank holds face and underside, seen along the nose.
        const places = [sawnLeft, sawnRight].flatMap((end) =>
          [noseEdge, upright(shape.backGap)].flatMap((line) =>
            [0, shape.thickness].map((z) => {
              const [x, y] = threePlanes(end, line, level(z));
              return x * nose[0] + y * nose[1];
            }),
          ),
        );
        expect(fit.length).toBeCloseTo(Math.max(...places) - Math.min(...places), 8);
        expect([fit.longPoint, fit.shortPoint]).toEqual([
          expect.closeTo(Math.max(...drawn.map(([x]) => x)) - Math.min(...drawn.map(([x]) => x)), 8),
          expect.closeTo(Math.min(drawn[1]?.[0] ?? 0, drawn[3]?.[0] ?? 0) - Math.max(0, drawn[2]?.[0] ?? 0), 8),
        ]);
      }),
    );
  });

  test("marks of the returns, one end open and both", () => {
    fc.assert(
      fc.property(shapes, fc.constantFrom("right", "left", "both"), (shape, openEnd) => {
        const open = { left: openEnd !== "right", right: openEnd !== "left" };
        const { left, right, noseEdge, behind, readings } = built(shape, open);
        const fit = one(readings.both, { ...shape, openEnd, undercut: 0 });
        const face = level(shape.thickness);
        const back = upright(shape.backGap);
        const heelLine = movedToward(noseEdge, shape.returnWidth, behind);
        const middle: Point = [shape.nearRight / 2, 5, 0];
        const strip = (skirt: Plane, outward: Point) => {
          const outer = movedToward(skirt, shape.overhang, outward);
          const inner = movedToward(outer, shape.returnWidth, middle);
          const toe = threePlanes(outer, noseEdge, face);
          return {
            toe,
            heel: threePlanes(inner, heelLine, face),
            line: threePlanes(inner, back, face),
            // It runs past the riser face by the overhang, wherever the tread's own back is.
            long: distance(toe, threePlanes(outer, upright(-shape.overhang), face)),
          };
        };
        const ofLeft = strip(left, [-200, 5, 0]);
        const ofRight = strip(right, [200, 5, 0]);
        if (openEnd === "both") {
          expect(fit.toe).toBeCloseTo(distance(ofLeft.toe, ofRight.toe), 8);
          expect(fit.heelAtTheHook).toBeCloseTo(distance(ofLeft.heel, ofRight.heel), 8);
          expect(fit.returnLine).toBeCloseTo(distance(ofLeft.line, ofRight.line), 8);
          expect(fit.leftReturnLength).toBeCloseTo(ofLeft.long, 8);
          expect(fit.leftMitreLine).toBeCloseTo(distance(ofLeft.toe, ofLeft.heel), 8);
        } else {
          const [own, wall, gap] = openEnd === "right" ? [ofRight, left, shape.leftGap] : [ofLeft, right, shape.rightGap];
          const clear = movedToward(wall, gap, middle);
          expect(fit.toe).toBeCloseTo(distance(threePlanes(clear, noseEdge, face), own.toe), 8);
          expect(fit.heelAtTheHook).toBeCloseTo(distance(threePlanes(clear, heelLine, face), own.heel), 8);
          expect(fit.returnLine).toBeCloseTo(distance(threePlanes(clear, back, face), own.line), 8);
        }
        const main = openEnd === "left" ? ofLeft : ofRight;
        expect(fit.mitreLine).toBeCloseTo(distance(main.toe, main.heel), 8);
        expect(fit.returnLength).toBeCloseTo(main.long, 8);
      }),
    );
  });

  test("an offset, a diagonal, both angles and both lengths fix the same piece", () => {
    fc.assert(
      fc.property(shapes, (shape) => {
        const whole = one(built(shape, CLOSED).readings.both, shape);
        const { diagonal = 0, secondDiagonal = 0, ...read } = built(shape, CLOSED).readings.both;
        const { front: _, ...bare } = read;
        // A bevel gauge stands square to the riser behind.
        const angles = {
          leftAngle: Math.atan2(-shape.farLeft, shape.leftRun) / RADIANS,
          rightAngle: Math.atan2(shape.farRight - shape.nearRight, shape.rightRun) / RADIANS,
        };
        const ways = [
          { ...read, diagonal },
          { ...read, secondDiagonal },
          { ...read, leftOffset: shape.farLeft },
          { ...read, ...angles },
          { ...bare, ...angles },
        ];
        for (const way of ways) {
          const fit = one(way, shape);
          for (const name of ["length", "back", "front", "leftAngle", "rightAngle", "leftDepth", "rightDepth"] as const) {
            expect(fit[name]).toBeCloseTo(whole[name], 7);
          }
        }
      }),
    );
  });

  test("a step packed square as the note says is as deep all over as its shallow end was", () => {
    fc.assert(
      fc.property(shapes, (shape) => {
        const least = Math.min(shape.leftRun, shape.rightRun);
        const packed = one(built({ ...shape, leftRun: least, rightRun: least }, CLOSED).readings.both, shape);
        expect([packed.leftDepth, packed.rightDepth]).toEqual([
          expect.closeTo(least + shape.nosing - shape.backGap, 8), expect.closeTo(least + shape.nosing - shape.backGap, 8),
        ]);
        expect(packed.note).toBe("");
      }),
      { numRuns: 20 },
    );
  });
});

test("a mirrored tapered step is cut mirrored", () => {
  fc.assert(
    fc.property(shapes, (shape) => {
      const { nearRight } = shape;
      const mirrored: Shape = {
        ...shape,
        farLeft: nearRight - shape.farRight,
        farRight: nearRight - shape.farLeft,
        leftRun: shape.rightRun,
        rightRun: shape.leftRun,
        leftLean: shape.rightLean,
        rightLean: shape.leftLean,
        leftGap: shape.rightGap,
        rightGap: shape.leftGap,
      };
      for (const [openEnd, other] of [["none", "none"], ["right", "left"], ["both", "both"]] as const) {
        const open = { left: openEnd === "both", right: openEnd !== "none" };
        const opposite = { left: open.right, right: open.left };
        const there = one(built(shape, open).readings.both, { ...shape, openEnd });
        const back = one(built(mirrored, opposite).readings.both, { ...shape, openEnd: other });
        for (const [name, twin] of [
          ["length", "length"], ["back", "back"], ["front", "front"], ["depth", "depth"], ["leftAngle", "rightAngle"],
          ["rightAngle", "leftAngle"], ["leftTilt", "rightTilt"], ["leftDepth", "rightDepth"], ["rightDepth", "leftDepth"],
        ] as const) {
          expect(back[name]).toBeCloseTo(there[twin], 7);
        }
        if (openEnd === "none") continue;
        for (const name of ["toe", "heelAtTheHook", "returnLine"] as const) expect(back[name]).toBeCloseTo(there[name] ?? 0, 7);
        expect(back.returnLength).toBeCloseTo((openEnd === "both" ? there.leftReturnLength : there.returnLength) ?? 0, 7);
      }
    }),
  );
});

test("a small taper changes a small thing: no step between square and tapered", () => {
  fc.assert(
    fc.property(shapes, (shape) => {
      const square = one(built({ ...shape, rightRun: shape.leftRun }, CLOSED).readings.both, shape);
      const nearly = one(built({ ...shape, rightRun: shape.leftRun + 1e-7 }, CLOSED).readings.both, shape);
      for (const name of ["length", "back", "front", "leftAngle", "rightAngle", "leftDepth", "rightDepth"] as const) {
        expect(nearly[name]).toBeCloseTo(square[name], 5);
      }
    }),
    { numRuns: 30 },
  );
});
