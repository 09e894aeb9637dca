import fc from "fast-check";
import { isProblem } from "../../../src/solver/problem";
import { type TreadFit, treadFits, type TreadPiece, type TreadReading } from "../../../src/solver/fit/tread-fit";
import { distance, planeThrough, type Point, pointOn, shifted, threePlanes } from "./space";

const PIECE: TreadPiece = { nosing: 1.25, openEnd: "none", overhang: 1.25, returnWidth: 1.25, thickness: 1, closure: { most: 0.125, alike: 0.125 } };

const one = (reading: TreadReading, piece: Partial<TreadPiece> = {}): TreadFit => {
  const [fit] = treadFits([reading], { ...PIECE, ...piece });
  if (fit === undefined || "bad" in fit) throw new Error(JSON.stringify(fit));
  return fit;
};

const problemOf = (reading: TreadReading, piece: Partial<TreadPiece> = {}): string | undefined => {
  const [fit] = treadFits([reading], { ...PIECE, ...piece });
  return fit !== undefined && "bad" in fit && isProblem(fit.bad) ? fit.bad.problem : undefined;
};

/** The step's shape: the near line along y = 0, the far one along y = run, both at z = 0; the face at z = thickness; x to the right. */
interface Shape {
  readonly run: number;
  readonly nearRight: number;
  readonly farLeft: number;
  readonly farRight: number;
  readonly leftLean: number;
  readonly rightLean: number;
  readonly nosing: number;
  readonly thickness: number;
  readonly overhang: number;
  readonly returnWidth: number;
}

const shapes: fc.Arbitrary<Shape> = fc.record({
  run: fc.double({ min: 8, max: 12, noNaN: true }),
  nearRight: fc.double({ min: 28, max: 60, noNaN: true }),
  farLeft: fc.double({ min: -1, max: 1, noNaN: true }),
  farRight: fc.double({ min: -1, max: 1, noNaN: true }),
  leftLean: fc.double({ min: -4, max: 4, noNaN: true }),
  rightLean: fc.double({ min: -4, max: 4, noNaN: true }),
  nosing: fc.double({ min: 0.75, max: 1.5, noNaN: true }),
  thickness: fc.double({ min: 0.75, max: 1.5, noNaN: true }),
  overhang: fc.double({ min: 0.5, max: 1.5, noNaN: true }),
  returnWidth: fc.double({ min: 0.75, max: 3, noNaN: true }),
}).map((shape) => ({ ...shape, farRight: shape.nearRight + shape.farRight }));

const corner = (x: number, y: number, z: number): Point => [x, y, z];

/** What a tape reads of the shape: lengths between points in space, nothing else. */
const taped = (shape: Shape): TreadReading => {
  const [backLeft, backRight] = [corner(0, 0, 0), corner(shape.nearRight, 0, 0)];
  const [frontLeft, frontRight] = [corner(shape.farLeft, shape.run, 0), corner(shape.farRight, shape.run, 0)];
  return {
    step: 1,
    run: shape.run,
    back: distance(backLeft, backRight),
    front: distance(frontLeft, frontRight),
    diagonal: distance(backLeft, frontRight),
    secondDiagonal: distance(backRight, frontLeft),
    leftLean: shape.leftLean,
    rightLean: shape.rightLean,
  };
};

const RADIANS = Math.PI / 180;

/** A skirt as a plane: through its line on the sub-tread, leaning away by `lean`, seen along the riser. `side` is -1 on the left. */
const skirt = (near: Point, far: Point, lean: number, side: -1 | 1) =>
  planeThrough(near, far, shifted(near, [side * Math.tan(lean * RADIANS), 0, 1]));

const level = (z: number) => planeThrough([0, 0, z], [1, 0, z], [0, 1, z]);
const upright = (y: number) => planeThrough([0, y, 0], [1, y, 0], [0, y, 1]);

/** Where a piece between the skirts has its corners: three planes met at each. */
const corners = (shape: Shape, openRight: boolean) => {
  const depth = shape.run + shape.nosing;
  const left = skirt(corner(0, 0, 0), corner(shape.farLeft, shape.run, 0), shape.leftLean, -1);
  const right = skirt(corner(shape.nearRight, 0, 0), corner(shape.farRight, shape.run, 0), openRight ? 0 : shape.rightLean, 1);
  const at = (side: typeof left, y: number, z: number): number => threePlanes(side, upright(y), level(z))[0];
  return { depth, left: (y: number, z: number) => at(left, y, z), right: (y: number, z: number) => at(right, y, z) };
};

describe("treads built as corners in space, taped, and fitted again", () => {
  test("between two leaning skirts every length, angle and tilt comes back", () => {
    fc.assert(
      fc.property(shapes, (shape) => {
        const { depth, left, right } = corners(shape, false);
        const face = shape.thickness;
        const fit = one(taped(shape), shape);
        const [bl, br, fl, fr] = [left(0, face), right(0, face), left(depth, face), right(depth, face)];
        expect(fit.closure).toBeCloseTo(0, 9);
        expect(fit.depth).toBeCloseTo(depth, 9);
        expect(fit.back).toBeCloseTo(br - bl, 8);
        expect(fit.front).toBeCloseTo(fr - fl, 8);
        expect(fit.longPoint).toBeCloseTo(Math.max(br, fr) - Math.min(bl, fl), 8);
        expect(fit.shortPoint).toBeCloseTo(Math.min(br, fr) - Math.max(bl, fl), 8);
        expect(fit.leftAngle).toBeCloseTo(Math.atan2(bl - fl, depth) / RADIANS, 8);
        expect(fit.rightAngle).toBeCloseTo(Math.atan2(fr - br, depth) / RADIANS, 8);
        expect(fit.leftTilt).toBe(shape.leftLean);
        const places = [0, depth].flatMap((y) => [0, face].flatMap((z) => [left(y, z), right(y, z)]));
        expect(fit.length).toBeCloseTo(Math.max(...places) - Math.min(...places), 8);
      }),
    );
  });

  test("with a mitred return on the right, heel, toe, mitre and return come back", () => {
    fc.assert(
      fc.property(shapes, (shape) => {
        const { depth, left, right } = corners(shape, true);
        const fit = one(taped(shape), { ...shape, openEnd: "right" });
        const skirtBack: Point = [right(0, 0), 0, 0];
        const skirtFront: Point = [right(depth, 0), depth, 0];
        // The return is a strip along the skirt: its edges are the skirt line moved square to itself.
        const outer = pointOn(skirtBack, skirtFront, shape.overhang);
        const inner = pointOn(skirtBack, skirtFront, shape.overhang - shape.returnWidth);
        const toe = outer(depth);
        const heel = inner(depth - shape.returnWidth);
        const places = [0, depth].flatMap((y) => [0, shape.thickness].map((z) => left(y, z)));
        const farEnd = Math.min(...places);
        expect(fit.toe).toBeCloseTo(toe - farEnd, 8);
        expect(fit.heel).toBeCloseTo(heel - farEnd, 8);
        expect(fit.mitre).toBeCloseTo(Math.atan2(shape.returnWidth, toe - heel) / RADIANS, 8);
        expect(fit.returnLength).toBeCloseTo(distance([outer(-shape.overhang), -shape.overhang, 0], [toe, depth, 0]), 8);
        expect(fit.length).toBeCloseTo(Math.max(toe, right(0, 0)) - farEnd, 8);
      }),
    );
  });

  test("one diagonal, a measured offset or a measured angle fix the end as well as two diagonals", () => {
    fc.assert(
      fc.property(shapes, (shape) => {
        const { diagonal, secondDiagonal, ...bare } = taped(shape);
        const both = one(taped(shape), shape);
        const ways: TreadReading[] = [
          { ...bare, ...(diagonal === undefined ? {} : { diagonal }) },
          { ...bare, ...(secondDiagonal === undefined ? {} : { secondDiagonal }) },
          { ...bare, leftOffset: shape.farLeft },
          { ...bare, leftAngle: Math.atan2(-shape.farLeft, shape.run) / RADIANS },
        ];
        for (const way of ways) {
          const fit = one(way, shape);
          expect(fit.length).toBeCloseTo(both.length, 8);
          expect(fit.leftAngle).toBeCloseTo(both.leftAngle, 8);
          expect(fit.note).toBe("unchecked: one more diagonal would check this step");
        }
      }),
    );
  });

  test("readings off by a 32nd move no result by more than the error they carry", () => {
    const OFF = 1 / 32;
    const slip = fc.double({ min: -OFF, max: OFF, noNaN: true });
    fc.assert(
      fc.property(shapes, slip, slip, slip, slip, (shape, onBack, onFront, onFirst, onSecond) => {
        const exact = taped(shape);
        const read: TreadReading = {
          ...exact,
          back: exact.back + onBack,
          front: exact.front + onFront,
          diagonal: (exact.diagonal ?? 0) + onFirst,
          secondDiagonal: (exact.secondDiagonal ?? 0) + onSecond,
        };
        const [clean, dusty] = [one(exact, shape), one(read, shape)];
        const carried = clean.depth / shape.run;
        // front = F D/M - B (D/M - 1): its error is at most OFF (2 D/M - 1).
        expect(Math.abs(dusty.front - clean.front)).toBeLessThanOrEqual(OFF * (2 * carried - 1) + 1e-9);
        // s is the mean of leg(d1) - F and B - leg(d2); a leg moves by OFF d/leg at first order, and d/leg grows with OFF by less than 1 %.
        const steep = Math.max(
          ...[exact.diagonal ?? 0, exact.secondDiagonal ?? 0].map((d) => (d - OFF) / Math.sqrt((d - OFF) ** 2 - shape.run ** 2)),
        );
        const onOffset = OFF * (1 + steep);
        const perRun = onOffset / shape.run / RADIANS;
        expect(Math.abs(dusty.leftAngle - clean.leftAngle)).toBeLessThanOrEqual(perRun + 1e-9);
        // The right edge is s + F - B over M: three readings more.
        expect(Math.abs(dusty.rightAngle - clean.rightAngle)).toBeLessThanOrEqual((onOffset + 2 * OFF) / shape.run / RADIANS + 1e-9);
        // Long point: either edge moves by at most (s and its own length) carried to the depth.
        expect(Math.abs(dusty.longPoint - clean.longPoint)).toBeLessThanOrEqual((2 * onOffset + 2 * OFF) * carried + OFF + 1e-9);
        // Closure of such readings: four of them, two through legs.
        expect(Math.abs(dusty.closure ?? 0)).toBeLessThanOrEqual(OFF * (2 + 2 * steep) + 1e-9);
      }),
    );
  });
});

describe("laws of the fit", () => {
  test("a mirrored step is cut mirrored", () => {
    fc.assert(
      fc.property(shapes, (shape) => {
        const reading = taped(shape);
        const seenInMirror: TreadReading = {
          ...reading,
          diagonal: reading.secondDiagonal ?? 0,
          secondDiagonal: reading.diagonal ?? 0,
          leftLean: reading.rightLean,
          rightLean: reading.leftLean,
        };
        for (const [openEnd, other] of [["none", "none"], ["right", "left"], ["both", "both"]] as const) {
          const [straight, mirrored] = [one(reading, { ...shape, openEnd }), one(seenInMirror, { ...shape, openEnd: other })];
          expect(mirrored.length).toBeCloseTo(straight.length, 8);
          expect(mirrored.leftAngle).toBeCloseTo(straight.rightAngle, 8);
          expect(mirrored.leftTilt).toBeCloseTo(straight.rightTilt, 8);
          if (openEnd === "right") {
            expect(mirrored.heel).toBeCloseTo(straight.heel ?? 0, 8);
            expect(mirrored.mitre).toBeCloseTo(straight.mitre ?? 0, 8);
          }
          if (openEnd === "both") {
            expect(mirrored.leftHeel).toBeCloseTo(straight.heel ?? 0, 8);
            expect(mirrored.toe).toBeCloseTo(straight.leftToe ?? 0, 8);
          }
        }
      }),
    );
  });

  test("a step twice the size is cut twice the size at the same angles", () => {
    fc.assert(
      fc.property(shapes, (shape) => {
        const half = taped(shape);
        const whole = taped({
          ...shape, run: shape.run * 2, nearRight: shape.nearRight * 2, farLeft: shape.farLeft * 2, farRight: shape.farRight * 2,
        });
        const double = { nosing: shape.nosing * 2, thickness: shape.thickness * 2, overhang: shape.overhang * 2, returnWidth: shape.returnWidth * 2, openEnd: "right" as const };
        const [small, large] = [one(half, { ...shape, openEnd: "right" }), one(whole, double)];
        for (const size of ["length", "longPoint", "shortPoint", "back", "front", "depth", "heel", "toe", "returnLength"] as const) {
          expect(large[size]).toBeCloseTo((small[size] ?? 0) * 2, 7);
        }
        for (const angle of ["leftAngle", "rightAngle", "mitre"] as const) expect(large[angle]).toBeCloseTo(small[angle] ?? 0, 8);
      }),
    );
  });

  test("a square step stays square, a lean of nothing changes nothing", () => {
    const square = one({ step: 1, run: 10, back: 36, front: 36, diagonal: Math.hypot(36, 10), secondDiagonal: Math.hypot(36, 10), leftLean: 0, rightLean: 0 });
    expect(square).toMatchObject({ length: 36, longPoint: 36, shortPoint: 36, leftTilt: 0, rightTilt: 0, note: "" });
    expect(square.leftAngle).toBeCloseTo(0, 12);
    expect(square.rightAngle).toBeCloseTo(0, 12);
  });

  test("rows in another order give the same rows in that order", () => {
    fc.assert(
      fc.property(fc.array(shapes, { minLength: 2, maxLength: 5 }), (steps) => {
        const readings = steps.map((shape, index) => ({ ...taped(shape), step: index + 1 }));
        const there = treadFits(readings, PIECE);
        const back = treadFits([...readings].reverse(), PIECE);
        expect([...back].reverse()).toEqual(there);
      }),
      { numRuns: 30 },
    );
  });
});

describe("a worked step, by coordinates", () => {
  // Run 10, back 36 11/16, front 37, diagonals 38 1/4 and 38 1/8, wall skirt leaning in 1.72 degrees, 1 in tread, 1 1/4 nosing and return.
  // By hand: legs sqrt(38.25² - 100) = 36.91968 and sqrt(38.125² - 100) = 36.79016, so s = -0.08032 and -0.10266, mean -0.09149, closure 0.0223;
  // carried to 11 1/4: left -0.10293, right 36.6875 + 0.22101 x 1.125 = 36.93614; tan 1.72 deg = 0.03003.
  const fit = one(
    { step: 3, run: 10, back: 36.6875, front: 37, diagonal: 38.25, secondDiagonal: 38.125, leftLean: -1.72, rightLean: 0 },
    { openEnd: "right" },
  );
  test.each([
    ["closure", 0.0223, 3], ["back", 36.6575, 3], ["front", 37.009, 3], ["leftAngle", 0.524, 2], ["rightAngle", 1.266, 2], ["leftTilt", -1.72, 9],
    // toe: 36.93614 + 1.25 / cos 1.266 deg = 38.18645, and 0.10293 from the long point; heel: 36.6875 + 0.22101 = 36.90851 and 0.10293.
    ["toe", 38.2894, 3], ["length", 38.2894, 3], ["heel", 37.0114, 3], ["mitre", 44.367, 2],
    // return: (11.25 + 1.25) / cos 1.266 deg
    ["returnLength", 12.503, 3],
  ] as const)("%s is %d", (name, value, digits) => {
    expect(fit[name]).toBeCloseTo(value, digits);
  });
});

describe("readings that fit no piece, and readings to look at again", () => {
  const bare: TreadReading = { step: 4, run: 10, back: 36, front: 36, leftLean: 0, rightLean: 0 };
  test("each has its own reason", () => {
    expect(problemOf(bare)).toBe("nothing-fixes-the-end");
    expect(problemOf({ ...bare, diagonal: 10 })).toBe("diagonal-too-short");
    expect(problemOf({ ...bare, secondDiagonal: 9.5 })).toBe("second-diagonal-too-short");
    expect(problemOf({ ...bare, front: 2, leftOffset: -3 })).toBe("diagonal-on-the-wrong-side");
    expect(problemOf({ ...bare, back: 20, front: 2, leftOffset: 9 })).toBe("edges-cross");
    const { run: _, ...withoutRun } = { ...bare, leftOffset: 0 };
    expect(problemOf(withoutRun)).toBe("no-distance");
  });

  test("a depth without a run says the readings were taken at full depth", () => {
    const { run: _, ...withoutRun } = bare;
    expect(one({ ...withoutRun, depth: 11.25, leftOffset: 0.5 })).toMatchObject({ depth: 11.25, front: 36 });
  });

  test("diagonals that disagree by more than twice the tape's division are said, and a cause all steps share", () => {
    const off = { ...bare, front: 36, diagonal: Math.hypot(36, 10) + 0.2, secondDiagonal: Math.hypot(36, 10) };
    expect(one(off).note).toBe("the diagonals disagree: read this step again");
    // A run typed too small makes every closure positive by about the same.
    const readings = [1, 2, 3].map((step) => ({ ...bare, step, diagonal: Math.hypot(36, 12), secondDiagonal: Math.hypot(36, 12) }));
    for (const fit of treadFits(readings, PIECE)) {
      expect("note" in fit && fit.note).toBe("every step is off by the same amount: is run the distance between the lines you measured?");
    }
  });

  test("an offset beside diagonals is set aside and said", () => {
    const both = { ...bare, diagonal: Math.hypot(36, 10), secondDiagonal: Math.hypot(36, 10), leftOffset: 3 };
    expect(one(both).note).toBe("left offset not used, the diagonals fix the end");
  });
});
