import fc from "fast-check";
import { isProblem } from "../../../src/solver/problem";
import { type TreadFit, treadFits, type TreadPiece, type TreadReading } from "../../../src/solver/fit/tread-fit";
import { bothReturnMarks, returnMarks } from "../../../src/solver/fit/return-marks";
import {
  between,
  distance,
  from as apart,
  level,
  movedToward,
  planeThrough,
  type Plane,
  type Point,
  pointOn,
  shifted,
  threePlanes,
  turnedAbout,
  upright,
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
};

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
        // The tilt is the angle between the skirt and a plumb plane through its own line, and has the sign of the lean.
        const plumb = skirt(corner(0, 0, 0), corner(shape.farLeft, shape.run, 0), 0, -1);
        expect(Math.abs(fit.leftTilt)).toBeCloseTo(
          between(skirt(corner(0, 0, 0), corner(shape.farLeft, shape.run, 0), shape.leftLean, -1), plumb),
          8,
        );
        expect(fit.leftTilt * shape.leftLean).toBeGreaterThanOrEqual(0);
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
        // What a tape can hook: the nose corner on the face, and the finished end on a line the return's width behind the nose.
        const noseCorner = left(depth, shape.thickness);
        const backCorner = left(0, shape.thickness);
        const behind = depth - shape.returnWidth;
        expect(fit.toe).toBeCloseTo(toe - noseCorner, 8);
        expect(fit.heel).toBeCloseTo(heel - noseCorner, 8);
        expect(fit.heelAtTheHook).toBeCloseTo(heel - left(behind, shape.thickness), 8);
        expect(fit.mitreLine).toBeCloseTo(distance([toe, depth, 0], [heel, behind, 0]), 8);
        expect(fit.returnLine).toBeCloseTo(inner(0) - backCorner, 8);
        expect(fit.mitre).toBeCloseTo(Math.atan2(shape.returnWidth, toe - heel) / RADIANS, 8);
        expect(fit.returnLength).toBeCloseTo(distance([outer(-shape.overhang), -shape.overhang, 0], [toe, depth, 0]), 8);
        expect(fit.length).toBeCloseTo(Math.max(toe, right(0, 0)) - farEnd, 8);
      }),
    );
  });

  test("one diagonal, a measured offset or one measured angle fix the end as well as two diagonals", () => {
    fc.assert(
      fc.property(shapes, (shape) => {
        const { diagonal, secondDiagonal, ...bare } = taped(shape);
        const both = one(taped(shape), shape);
        const leftAngle = Math.atan2(-shape.farLeft, shape.run) / RADIANS;
        const rightAngle = Math.atan2(shape.farRight - shape.nearRight, shape.run) / RADIANS;
        const ways: TreadReading[] = [
          { ...bare, ...(diagonal === undefined ? {} : { diagonal }) },
          { ...bare, ...(secondDiagonal === undefined ? {} : { secondDiagonal }) },
          { ...bare, leftOffset: shape.farLeft },
          { ...bare, leftAngle },
          { ...bare, rightAngle },
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
          front: (exact.front ?? 0) + onFront,
          diagonal: (exact.diagonal ?? 0) + onFirst,
          secondDiagonal: (exact.secondDiagonal ?? 0) + onSecond,
        };
        const [clean, dusty] = [one(exact, shape), one(read, shape)];
        const carried = clean.depth / shape.run;
        // s is the mean of leg(d1) - F and B - leg(d2); a leg moves by OFF d/leg at first order, and d/leg grows with OFF by less than 1 %.
        const steep = Math.max(
          ...[exact.diagonal ?? 0, exact.secondDiagonal ?? 0].map((d) => (d - OFF) / Math.sqrt((d - OFF) ** 2 - shape.run ** 2)),
        );
        const onOffset = OFF * (1 + steep);
        // front = F D/M - B (D/M - 1), where a quarter of the closure makes F 3/4 F - 1/4 B + 1/4 of both legs, and B alike: OFF (2 D/M - 1
        // + steep/2).
        expect(Math.abs(dusty.front - clean.front)).toBeLessThanOrEqual(OFF * (2 * carried - 1 + steep / 2) + 1e-9);
        const perRun = onOffset / shape.run / RADIANS;
        expect(Math.abs(dusty.leftAngle - clean.leftAngle)).toBeLessThanOrEqual(perRun + 1e-9);
        // The right edge is s + F - B over M: three readings more.
        expect(Math.abs(dusty.rightAngle - clean.rightAngle)).toBeLessThanOrEqual((onOffset + 2 * OFF) / shape.run / RADIANS + 1e-9);
        // Long point: either edge moves by at most (s and its own length) carried to the depth.
        // and the right edge by a quarter of the closure more.
        const onClosure = OFF * (2 + 2 * steep);
        expect(Math.abs(dusty.longPoint - clean.longPoint)).toBeLessThanOrEqual(
          (2 * onOffset + 2 * OFF) * carried + OFF + onClosure / 4 + 1e-9,
        );
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
          const turned = (set: string): string => set.replace(/^left|^right/, (way) => (way === "left" ? "right" : "left"));
          expect(mirrored.leftSet).toBe(turned(straight.rightSet));
          if (openEnd === "right") {
            expect(mirrored.heel).toBeCloseTo(straight.heel ?? 0, 8);
            expect(mirrored.mitre).toBeCloseTo(straight.mitre ?? 0, 8);
            expect(mirrored.heelAtTheHook).toBeCloseTo(straight.heelAtTheHook ?? 0, 8);
            expect(mirrored.returnLine).toBeCloseTo(straight.returnLine ?? 0, 8);
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
        const double = {
          riserThickness: PIECE.riserThickness * 2,
          nosing: shape.nosing * 2,
          thickness: shape.thickness * 2,
          overhang: shape.overhang * 2,
          returnWidth: shape.returnWidth * 2,
          openEnd: "right" as const,
        };
        const [small, large] = [one(half, { ...shape, openEnd: "right" }), one(whole, double)];
        for (const size of [
          "length",
          "longPoint",
          "shortPoint",
          "back",
          "front",
          "depth",
          "heel",
          "toe",
          "returnLength",
          "heelAtTheHook",
          "mitreLine",
          "returnLine",
        ] as const) {
          expect(large[size]).toBeCloseTo((small[size] ?? 0) * 2, 7);
        }
        for (const angle of ["leftAngle", "rightAngle", "mitre"] as const) expect(large[angle]).toBeCloseTo(small[angle] ?? 0, 8);
      }),
    );
  });

  test("a square step stays square, a lean of nothing changes nothing", () => {
    const square = one({
      step: 1,
      run: 10,
      back: 36,
      front: 36,
      diagonal: Math.hypot(36, 10),
      secondDiagonal: Math.hypot(36, 10),
      leftLean: 0,
      rightLean: 0,
    });
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
  // Run 10, back 36 11/16, front 37, diagonals 38 1/4 and 38 1/8, wall skirt leaning in 1.72 degrees, 1 in tread, 1 1/4 nosing and
  // return. By hand: legs sqrt(38.25² - 100) = 36.91968 and sqrt(38.125² - 100) = 36.79016, so s = -0.08032 and -0.10266, mean -0.09149,
  // closure 0.02234, of which a quarter, 0.00558, goes on back and front; carried to 11 1/4: left -0.10293, right 36.6875 + 0.22101 x
  // 1.125 + 0.00558 = 36.94172; tan 1.72 deg = 0.03003; left angle atan(0.009149) = 0.5242 deg, right atan(0.022101) = 1.2661 deg.
  const fit = one(
    { step: 3, run: 10, back: 36.6875, front: 37, diagonal: 38.25, secondDiagonal: 38.125, leftLean: -1.72, rightLean: 0 },
    { openEnd: "right" },
  );
  test.each([
    ["closure", 0.0223, 3], ["leftAngle", 0.5242, 3], ["rightAngle", 1.2661, 3],
    // 36.6875 + 0.00558 - 0.03003 and 37.04465 - 0.03003
    ["back", 36.6631, 4], ["front", 37.0146, 4],
    // atan(0.03003 x cos 0.5242 deg)
    ["leftTilt", -1.7199, 4],
    // toe: 37.01462 + 1.25 / cos 1.2661 deg (1.25031); heel: toe less 1.25 x tan 45.63305 deg (1.27794); at the hook less 1.25 x 0.009149
    // (0.01144).
    ["toe", 38.2649, 4], ["heel", 36.987, 4], ["heelAtTheHook", 36.9756, 4], ["mitre", 44.367, 3],
    // blank: 36.94172 + 1.25031 + 0.10293
    ["length", 38.295, 3],
    // mitre line 1.25 / sin 44.367 deg; return line as long as the back, the return being as wide as it overhangs
    ["mitreLine", 1.7876, 4], ["returnLine", 36.6631, 4],
    // return: (11.25 + 1.25) / cos 1.2661 deg
    ["returnLength", 12.5031, 4],
  ] as const)("%s is %d", (name, value, digits) => {
    expect(fit[name]).toBeCloseTo(value, digits);
  });

  test("said as it is set at the saw", () => {
    expect([fit.leftSet, fit.rightSet]).toEqual(["left 0.52°, underside longer 1.72°", "right 1.27°, upright"]);
  });
});

describe("marks of a return, from edges as they are given", () => {
  const returns = { depth: 11.25, overhang: 1.25, returnWidth: 1.25, backGap: 0 };
  test("one open end: the worked step's edges before its closure is shared out", () => {
    // By hand: front 37 + 0.3125 x 0.125 - 0.03003 = 37.00903; + 1.25 / cos 1.2661 (1.2503); less 1.25 x tan(45 + 0.63305) (1.2779); less
    // 1.25 x tan 0.5242 (0.0114); 1.25 / sin 44.36695;
    // (11.25 - 1.25) / cos 1.2661; (11.25 + 1.25) / cos 1.2661 and 11.25 / cos 1.2661.
    const found = returnMarks(1.2661, 0.5242, { back: 36.6575, front: 37.00903 }, returns);
    const expected = {
      toe: 38.2593,
      heel: 36.9814,
      heelAtTheHook: 36.97,
      mitreLine: 1.7876,
      returnLine: 36.6575,
      returnLineToHeel: 10.0024,
      outerEdge: 12.5031,
      innerEdge: 11.2527,
    };
    for (const [name, value] of Object.entries(expected)) expect(found[name as keyof typeof expected]).toBeCloseTo(value, 4);
  });

  test("both open, angles 1 and 2 on a front of 37", () => {
    // By hand: 37 + 1.25 / cos 1 (1.25019) + 1.25 / cos 2 (1.25076); less 1.25 x tan 46 (1.29441) at the right; less 1.25 x tan 45.5
    // (1.27201) at the left.
    const { left, right } = bothReturnMarks(1, 2, { back: 36.5, front: 37 }, returns);
    expect([left.toe, right.toe]).toEqual([expect.closeTo(39.501, 3), expect.closeTo(39.501, 3)]);
    expect(right.heel).toBeCloseTo(38.2065, 4);
    expect(left.heel).toBeCloseTo(39.501 - 1.27201, 3);
    expect([left.heelAtTheHook, right.heelAtTheHook]).toEqual([expect.closeTo(36.9345, 4), expect.closeTo(36.9345, 4)]);
  });

  test("a wall end that closes by 2 degrees no longer counts its blank's corner: 0.393 in too much before", () => {
    // By hand: the far left corner lies 11.25 x tan 2 = 0.3929 right of the back one, so a mark from the blank's end was that much longer.
    const step: TreadReading = { run: 10, back: 36, front: 36 - 10 * Math.tan(2 * RADIANS), leftAngle: -2, leftLean: 0, rightLean: 0 };
    const cut = one(step, { openEnd: "right" });
    expect(cut.toe).toBeCloseTo(37.25 - 0.3929, 4);
    expect(cut.length).toBeCloseTo(37.25, 9);
  });
});

describe("three ways of holding the tape", () => {
  const run = 10;
  const angles = { leftAngle: 1, leftLean: 0, rightLean: 0 };
  test.each([
    // By hand, tan 1 + tan 2 = 0.052376: at the rough riser 36 - 0.75 x 0.052376 = 35.9607, at the sub-tread's edge 36 + 9.25 x 0.052376
    // = 36.4845, at the finished face in front 36 + 10 x 0.052376 = 36.5238; nose 36 + 11.25 x 0.052376 = 36.5892.
    ["off", { run: 10, back: 35.9607, front: 36.4845 }],
    ["behind", { run: 9.25, back: 36, front: 36.4845 }],
    ["both", { run: 10, back: 36, front: 36.5238 }],
  ] as const)("%s: back 36, nose 36.5892, depth 11.25", (riserOn, read) => {
    const fit = one({ ...read, ...angles }, { riserOn });
    expect(fit.back).toBeCloseTo(36, 3);
    expect(fit.front).toBeCloseTo(36.5892, 3);
    expect(fit.depth).toBe(11.25);
    expect(fit.rightAngle).toBeCloseTo(2, 2);
  });

  test("taken one for another, lengths or depth are off by what the contract of the three says", () => {
    // By hand: read with no riser on and taken as both on, every length is short by 0.75 x 0.052376 = 0.0393; read with the one behind on
    // and taken as both on, the depth is short by 3/4; read with both on and taken as the one behind, 3/4 too deep.
    const rough = one({ run: 10, back: 35.9607, front: 36.4845, ...angles }, { riserOn: "both" });
    expect(36.5892 - rough.front).toBeCloseTo(0.0393, 3);
    expect(rough.depth).toBe(11.25);
    expect(one({ run: 9.25, back: 36, front: 36.4845, ...angles }, { riserOn: "both" }).depth).toBe(10.5);
    expect(one({ run, back: 36, front: 36.5238, ...angles }, { riserOn: "behind" }).depth).toBe(12);
  });

  test("corners in space, taped in each of the three ways, give one and the same piece", () => {
    const riser = fc.double({ min: 0.4, max: 1, noNaN: true });
    const backGap = fc.double({ min: 0, max: 0.25, noNaN: true });
    fc.assert(
      fc.property(shapes, riser, backGap, fc.constantFrom("none", "right"), (shape, riserThickness, taken, openEnd) => {
        // y = 0 is the finished face of the riser behind, y = run that of the riser in front.
        const { depth, left, right } = corners(shape, openEnd === "right");
        const tape = (near: number, far: number): TreadReading => {
          const at = (side: (y: number, z: number) => number, y: number): Point => [side(y, 0), y, 0];
          return {
            run: far - near,
            back: distance(at(left, near), at(right, near)), front: distance(at(left, far), at(right, far)),
            diagonal: distance(at(left, near), at(right, far)), secondDiagonal: distance(at(right, near), at(left, far)),
            leftLean: shape.leftLean, rightLean: openEnd === "right" ? 0 : shape.rightLean,
          };
        };
        const edge = shape.run - riserThickness;
        const ways = [["off", -riserThickness, edge], ["behind", 0, edge], ["both", 0, shape.run]] as const;
        const [back, nose, face] = [taken, depth, shape.thickness];
        for (const [riserOn, near, far] of ways) {
          const fit = one(tape(near, far), { ...shape, openEnd, riserOn, riserThickness, backGap: taken });
          expect(fit.depth).toBeCloseTo(nose - back, 8);
          expect(fit.back).toBeCloseTo(right(back, face) - left(back, face), 8);
          expect(fit.front).toBeCloseTo(right(nose, face) - left(nose, face), 8);
          if (openEnd !== "right") continue;
          // The return runs past the riser by the overhang, wherever the tread's own back is.
          const outer = pointOn([right(0, 0), 0, 0], [right(nose, 0), nose, 0], shape.overhang);
          expect(fit.returnLength).toBeCloseTo(distance([outer(-shape.overhang), -shape.overhang, 0], [outer(nose), nose, 0]), 7);
        }
      }),
    );
  });
});

describe("bevel gauge, template, clearance, undercut on purpose", () => {
  test("a published-by-hand case: gaps of 1/32, leans 2 and -1, undercut 2", () => {
    // By hand, part by part: front 36 + 10 x (tan 1 + tan 2) = 36.5238 at the line; on the face + tan 2 - tan 1 = 0.01747, less two gaps
    // of 1/32 each over cos x cos (0.06254): 35.9549; nose + 11.25 x 0.052376 = 36.5441; tilts 2 + 2 and -1 + 2.
    const fit = one({ run: 10, back: 36, leftAngle: 1, rightAngle: 2, leftLean: 2, rightLean: -1 }, { gap: 1 / 32, undercut: 2 });
    expect(fit.back).toBeCloseTo(35.9549, 4);
    expect(fit.front).toBeCloseTo(36.5441, 3);
    expect([fit.leftTilt.toFixed(2), fit.rightTilt.toFixed(2)]).toEqual(["4.00", "1.00"]);
    expect([fit.leftSet, fit.rightSet]).toEqual(["left 1.00°, face longer 4.00°", "right 2.00°, face longer 1.00°"]);
    expect(fit.note).toBe("unchecked: a length along the other line would check this step");
    // A lean of 1.72 the other way eats up 1.72 of an undercut of 2 first.
    const leaning = one({ run: 10, back: 36, leftAngle: 0, rightAngle: 0, leftLean: -1.72, rightLean: 0 }, { undercut: 2 });
    expect(leaning.leftSet).toBe("square, face longer 0.28°");
    expect(leaning.rightSet).toBe("square, face longer 2.00°");
  });

  test("the tilt is square to the cut, the lean along the nose: the same on a nearly square end, less on a skewed one", () => {
    const tilt = (angle: number) => one({ run: 10, back: 36, leftAngle: angle, rightAngle: 0, leftLean: 3, rightLean: 0 }).leftTilt;
    // By hand: atan(tan 3 x cos 30) = atan(0.0524078 x 0.8660254) = 2.5987; at 5 degrees cos is 0.99619, so 0.011 less than 3.
    expect(tilt(30)).toBeCloseTo(2.5987, 4);
    expect(3 - tilt(5)).toBeGreaterThan(0.011);
    expect(3 - tilt(5)).toBeLessThan(0.012);
  });

  test("a gauge out by a quarter degree is 0.049 in at the nose", () => {
    // By hand: 11 1/4 x tan 0.25 = 0.0491.
    const nose = (angle: number) => one({ run: 10, back: 36, leftAngle: 0, rightAngle: angle, leftLean: 0, rightLean: 0 }).front;
    expect(nose(0.25) - nose(0)).toBeCloseTo(0.0491, 4);
  });

  test("no number in words is below 0, and words say what the corners in space show", () => {
    fc.assert(
      fc.property(shapes, (shape) => {
        const { depth, left, right } = corners(shape, false);
        const fit = one(taped(shape), shape);
        for (const [set, at] of [[fit.leftSet, left], [fit.rightSet, right]] as const) {
          expect(set).not.toMatch(/-/);
          // Nose toward the operator: the near end of the blade's path is the nose corner.
          const out = at(depth, shape.thickness) - at(0, shape.thickness);
          if (Math.abs(out) > 0.01) expect(set.startsWith(out > 0 ? "right" : "left")).toBe(true);
          const over = (at === left ? -1 : 1) * (at(0, shape.thickness) - at(0, 0));
          if (Math.abs(over) > 0.001) expect(set).toContain(over > 0 ? "face longer" : "underside longer");
        }
      }),
    );
  });

  test("gap planes, undercut planes: corners of the cut piece, met in space", () => {
    const extras = fc.record({
      leftGap: fc.double({ min: 0, max: 0.125, noNaN: true }),
      rightGap: fc.double({ min: 0, max: 0.125, noNaN: true }),
      undercut: fc.double({ min: 0, max: 6, noNaN: true }),
    });
    fc.assert(
      fc.property(shapes, extras, (shape, { leftGap, rightGap, undercut }) => {
        const depth = shape.run + shape.nosing;
        const face = shape.thickness;
        const middle = corner(shape.nearRight / 2, shape.run / 2, face / 2);
        const meets = (plane: Plane, y: number, z: number): Point => threePlanes(plane, upright(y), level(z));
        const cut = (near: Point, far: Point, lean: number, gap: number, side: -1 | 1) => {
          const wall = skirt(near, far, lean, side);
          const clear = movedToward(wall, gap, middle);
          const [back, nose] = [meets(clear, 0, face), meets(clear, depth, face)];
          // Turned about the face's edge so that the underside comes in: the other way round at the other end.
          const sawn = turnedAbout(clear, back, shifted(nose, [-back[0], -back[1], -back[2]]), side * undercut);
          return { wall, back, nose, sawn, plumb: skirt(back, nose, 0, side) };
        };
        const left = cut(corner(0, 0, 0), corner(shape.farLeft, shape.run, 0), shape.leftLean, leftGap, -1);
        const right = cut(corner(shape.nearRight, 0, 0), corner(shape.farRight, shape.run, 0), shape.rightLean, rightGap, 1);
        const fit = one({ ...taped(shape), leftGap, rightGap }, { ...shape, undercut });
        expect(apart(left.wall, left.nose)).toBeCloseTo(leftGap, 9);
        expect(fit.back).toBeCloseTo(right.back[0] - left.back[0], 8);
        expect(fit.front).toBeCloseTo(right.nose[0] - left.nose[0], 8);
        expect(Math.abs(fit.leftTilt)).toBeCloseTo(between(left.sawn, left.plumb), 7);
        expect(Math.abs(fit.rightTilt)).toBeCloseTo(between(right.sawn, right.plumb), 7);
        // The blank holds face and underside of every end.
        const places = (side: typeof left): number[] => [0, depth].flatMap((y) => [0, face].map((z) => meets(side.sawn, y, z)[0]));
        expect(fit.length).toBeCloseTo(Math.max(...places(right)) - Math.min(...places(left)), 8);
        // It clears the skirts by no less than asked anywhere, and an undercut makes no blank longer.
        expect(fit.length).toBeLessThanOrEqual(one({ ...taped(shape), leftGap, rightGap }, { ...shape, undercut: 0 }).length + 1e-9);
      }),
    );
  });

  test("back and both angles, a bar of a template, and lengths with both angles give the piece two diagonals give", () => {
    fc.assert(
      fc.property(shapes, fc.double({ min: 0.5, max: 12, noNaN: true }), (shape, at) => {
        const { back, run, leftLean, rightLean, front } = taped(shape);
        if (run === undefined || front === undefined) throw new Error("a shape has both");
        const gauge = {
          leftAngle: Math.atan2(-shape.farLeft, run) / RADIANS,
          rightAngle: Math.atan2(shape.farRight - shape.nearRight, run) / RADIANS,
        };
        const bare = { run, leftLean, rightLean, ...gauge };
        const side = (far: number, near: number) => pointOn(corner(near, 0, 0), corner(far, run, 0), 0);
        const bar = side(shape.farRight, shape.nearRight)(at) - side(shape.farLeft, 0)(at);
        const whole = one(taped(shape), shape);
        for (const [reading, note] of [
          [{ ...bare, back }, "unchecked: a length along the other line would check this step"],
          [{ ...bare, back: bar, at }, "unchecked: a length along the other line would check this step"],
          [{ ...bare, back, front }, ""],
        ] as const) {
          const fit = one(reading, shape);
          expect(fit.back).toBeCloseTo(whole.back, 8);
          expect(fit.front).toBeCloseTo(whole.front, 8);
          expect(fit.leftAngle).toBeCloseTo(whole.leftAngle, 8);
          expect(fit.rightAngle).toBeCloseTo(whole.rightAngle, 8);
          expect(fit.note).toBe(note);
        }
      }),
    );
  });

  test("lengths and both angles close within two quarter degrees and a division", () => {
    // By hand: 10 x tan 0.25 x sqrt 2 = 0.0617, and 1/16: 0.1242. With square angles the closure is front less back.
    const square: TreadReading = { run: 10, back: 36, front: 36.12, leftAngle: 0, rightAngle: 0, leftLean: 0, rightLean: 0 };
    expect(one(square)).toMatchObject({ closure: expect.closeTo(0.12, 9), note: "", back: 36 });
    expect(one({ ...square, front: 36.13 }).note).toBe("the lengths and the angles disagree: read this step again");
  });

  test("what an open end does not meet is set aside and said; so is what angles and diagonals make needless", () => {
    const square: TreadReading = { run: 10, back: 36, front: 36, leftOffset: 0, leftLean: 0, rightLean: 2, rightGap: 0.125 };
    expect(one(square, { openEnd: "right" }).note).toBe(
      "right lean not used, the right end is open; right gap not used, the right end is open; unchecked: one more diagonal would " +
        "check this step",
    );
    const long = Math.hypot(36, 10);
    expect(
      one({ run: 10, back: 36, front: 36, diagonal: long, secondDiagonal: long, leftAngle: 3, rightAngle: 3, leftLean: 0, rightLean: 0 })
        .note,
    ).toBe("left angle not used, the end is fixed without it; right angle not used, the end is fixed without it");
    expect(one({ run: 10, back: 36, leftAngle: 0, rightAngle: 0, diagonal: long, leftOffset: 1, leftLean: 0, rightLean: 0 }).note).toBe(
      "diagonal not used, the length it runs to is missing; left offset not used, both angles fix the end; unchecked: a length " +
        "along the other line would check this step",
    );
  });
});

describe("a quarter of the closure on both edges", () => {
  /** Least squares of back, front and both diagonals, read alike, by Gauss and Newton on the three unknowns. */
  const leastSquares = (
    m: number,
    read: readonly [back: number, front: number, diagonal: number, second: number],
  ): readonly [number, number] => {
    let [back, front, s] = [read[0], read[1], 0];
    for (let round = 0; round < 20; round += 1) {
      const [d1, d2] = [Math.hypot(s + front, m), Math.hypot(back - s, m)];
      const slopes = [
        [1, 0, 0],
        [0, 1, 0],
        [0, (s + front) / d1, (s + front) / d1],
        [(back - s) / d2, 0, -(back - s) / d2],
      ];
      const off = [read[0] - back, read[1] - front, read[2] - d1, read[3] - d2];
      const column = (k: number): Point =>
        [0, 1, 2].map((row) => slopes.reduce((sum, slope) => sum + (slope[row] ?? 0) * (slope[k] ?? 0), 0)) as unknown as Point;
      const right = [0, 1, 2].map((row) => slopes.reduce((sum, slope, line) => sum + (slope[row] ?? 0) * (off[line] ?? 0), 0));
      const plane = (row: 0 | 1 | 2): Plane => ({ normal: [column(0)[row], column(1)[row], column(2)[row]], constant: right[row] ?? 0 });
      const [db, df, ds] = threePlanes(plane(0), plane(1), plane(2));
      [back, front, s] = [back + db, front + df, s + ds];
    }
    return [back, front];
  };

  test("is the least-squares answer to one step, to within a hair, and nothing where the diagonals agree", () => {
    const slip = fc.double({ min: -1 / 32, max: 1 / 32, noNaN: true });
    fc.assert(
      fc.property(shapes, fc.tuple(slip, slip, slip, slip), (shape, [onBack, onFront, onFirst, onSecond]) => {
        const { run = 0, back, front = 0, diagonal = 0, secondDiagonal = 0 } = taped(shape);
        const read = [back + onBack, front + onFront, diagonal + onFirst, secondDiagonal + onSecond] as const;
        // Nosing 0 and no lean: back and front are the lines themselves.
        const fit = one(
          { run, back: read[0], front: read[1], diagonal: read[2], secondDiagonal: read[3], leftLean: 0, rightLean: 0 },
          { nosing: 0, closure: { most: 1, alike: 1, division: 1 } },
        );
        const [exactBack, exactFront] = leastSquares(run, read);
        // A diagonal pulls its leg d/leg times as hard, 1.094 at most here, so an edge takes 4 / (2 + 2 x 1.094²) = 0.91 of a quarter at
        // least; a quarter of the greatest closure, (2 + 2 x 1.094) / 32, is 0.033, and 9 % of that 0.003.
        expect(Math.abs(fit.back - exactBack)).toBeLessThan(0.0035);
        expect(Math.abs(fit.front - exactFront)).toBeLessThan(0.0035);
      }),
    );
  });

  test("stops where the closure is over its limit: a misread tape is not shared out", () => {
    const long = Math.hypot(36, 10);
    const off = { run: 10, back: 36, front: 36, diagonal: long + 0.2, secondDiagonal: long, leftLean: 0, rightLean: 0 };
    expect(one(off).back).toBe(36);
    expect(one({ ...off, diagonal: long + 0.05 }).back).toBeGreaterThan(36.01);
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

  test("a step deeper at one end is refused, and what squares it is said", () => {
    const { run: _, ...withoutRun } = { ...bare, leftOffset: 0 };
    const [fit] = treadFits([{ ...withoutRun, leftRun: 9.5, rightRun: 10.25 }], PIECE);
    expect(fit).toMatchObject({ bad: { problem: "tapered", details: { left: 9.5, right: 10.25, more: 0.75, end: "right" } } });
    expect(problemOf({ ...bare, leftOffset: 0, rightRun: 10.25 })).toBe("tapered");
    expect(problemOf({ ...withoutRun, leftRun: 10 })).toBe("no-distance");
    expect(problemOf({ ...bare, leftOffset: 0, leftRun: 9.5, rightRun: 9.5 })).toBe("runs-disagree");
    expect(one({ ...withoutRun, leftRun: 10, rightRun: 10 }).depth).toBe(11.25);
  });

  test("angles and gaps that leave nothing are told apart", () => {
    const { front: _, ...gauge } = bare;
    expect(problemOf(gauge)).toBe("nothing-gives-the-far-line");
    expect(problemOf({ ...bare, at: 5, leftOffset: 0 })).toBe("bar-without-angles");
    expect(problemOf({ ...gauge, back: 10, leftAngle: -40, rightAngle: -40 })).toBe("angles-leave-no-length");
    expect(problemOf({ ...bare, leftOffset: 0, backGap: 12 })).toBe("no-depth-left");
    expect(problemOf({ ...bare, leftOffset: 0 }, { openEnd: "right", returnWidth: 12 })).toBe("return-too-wide");
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

/** Five steps of an invented flight, run 10, read with a 1/16 tape. */
const FLIGHT: readonly TreadReading[] = (
  [
    [36, 35.9375, 37.125, 37.5625],
    [36.0625, 35.9375, 37.125, 37.625],
    [36.0625, 36, 37.125, 37.625],
    [36.0625, 36, 37.1875, 37.625],
    [36.125, 36, 37.1875, 37.6875],
  ] as const
).map(([back, front, diagonal, secondDiagonal], row) => ({
  step: row + 1, run: 10, back, front, diagonal, secondDiagonal, leftLean: 0, rightLean: 0,
}));

const notesOf = (readings: readonly TreadReading[], piece: Partial<TreadPiece> = { unit: "in" }): readonly string[] =>
  treadFits(readings, { ...PIECE, ...piece }).map((fit) => ("note" in fit ? fit.note : "no fit"));

const withStep = (step: number, change: Partial<TreadReading>): readonly TreadReading[] =>
  FLIGHT.map((one) => (one.step === step ? { ...one, ...change } : one));

describe("a flight whose skirts name a doubtful reading", () => {
  test("an honest flight has no such note", () => {
    expect(notesOf(FLIGHT)).toEqual(["", "", "", "", ""]);
  });

  test("the value it should have, beside what the closure says", () => {
    // By hand: the front of step 4 is 36, read an inch longer, so that its diagonals disagree by an inch too.
    const both = "the diagonals disagree: read this step again; front likely 36 in: read again (MISREAD)";
    expect(notesOf(withStep(4, { front: 37 }))[3]).toBe(both);
    expect(notesOf(withStep(5, { secondDiagonal: 37.4375 }))[4]).toMatch(/second diagonal likely 37 11\/16 in: read again \(MISREAD\)$/);
  });

  test("exchanged lengths, which no closure sees", () => {
    expect(notesOf(withStep(3, { diagonal: 37.625, secondDiagonal: 37.125 }))).toEqual([
      "", "", "diagonal and second diagonal likely exchanged: read again (MISREAD)", "", "",
    ]);
  });

  test("exchanged steps, at both", () => {
    // Each step an inch narrower than the one below, square: only steps 2 and 3 stand the other way round.
    const flight = [35, 33, 34, 32, 31].map((width, row): TreadReading => ({
      step: row + 1, run: 10, back: width, front: width, diagonal: Math.hypot(width, 10), secondDiagonal: Math.hypot(width, 10),
      leftLean: 0, rightLean: 0,
    }));
    expect(notesOf(flight)).toEqual([
      "", "likely exchanged with step 3: read again (MISREAD)", "likely exchanged with step 2: read again (MISREAD)", "", "",
    ]);
  });

  test("millimetres are said in millimetres", () => {
    const metric = withStep(4, { front: 37 }).map((one) => ({
      ...one, run: 254, back: one.back * 25.4, front: (one.front ?? 0) * 25.4, diagonal: (one.diagonal ?? 0) * 25.4,
      secondDiagonal: (one.secondDiagonal ?? 0) * 25.4,
    }));
    const closure = { most: 2.4, alike: 3.2, division: 1 };
    // By hand: 36 in are 914.4 mm, 914 to the millimetre.
    expect(notesOf(metric, { unit: "mm", closure })[3]).toMatch(/front likely 914 mm: read again \(MISREAD\)$/);
  });

  test("three steps are no flight, nor are more rows than a flight has, nor a step in two rows", () => {
    const wrong = withStep(4, { front: 37 });
    const disagree = "the diagonals disagree: read this step again";
    expect(notesOf(wrong.slice(1, 4))).toEqual(["", "", disagree]);
    const many = Array.from({ length: 9 }, (_, flight) => wrong.map((one, row) => ({ ...one, step: 5 * flight + row + 1 }))).flat();
    const everyStep = "every step is off by the same amount: is run the distance between the lines you measured?";
    expect(new Set(notesOf(many))).toEqual(new Set(["", everyStep]));
    expect(notesOf([...wrong, FLIGHT[0]!])[3]).toBe(disagree);
  });

  test("nothing is said of two explanations that nothing tells apart", () => {
    const square = (diagonal: number, step: number): TreadReading => ({
      step, run: 12, back: 35, front: 35, diagonal, secondDiagonal: diagonal, leftLean: 0, rightLean: 0,
    });
    expect(notesOf([37, 37, 37.1, 37, 37].map((diagonal, row) => square(diagonal, row + 1)))[2]).not.toMatch(/MISREAD/);
  });
});
