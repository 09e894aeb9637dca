import fc from "fast-check";
import { isProblem } from "../../../src/solver/problem";
import { type RiserFit, riserFits, type RiserPiece } from "../../../src/solver/fit/riser-fit";
import type { RiserReading } from "../../../src/solver/fit/riser-reading";
import { treadFits } from "../../../src/solver/fit/tread-fit";
import { notch } from "../../../src/solver/fit/notch";
import { lengthOf, measure } from "../../../src/solver/length/length";
import {
  between,
  distance,
  level,
  movedToward,
  planeThrough,
  type Plane,
  type Point,
  shifted,
  threePlanes,
  turnedAbout,
  upright,
} from "./space";

const PIECE: RiserPiece = {
  openEnd: "none",
  unit: "in",
  runPast: 0.25,
  thickness: 0.75,
  gap: 0,
  undercut: 0,
  closure: { most: 0.125, alike: 0.125, division: 1 / 16 },
};
const RADIANS = Math.PI / 180;

const one = (reading: RiserReading, piece: Partial<RiserPiece> = {}): RiserFit => {
  const [fit] = riserFits([reading], { ...PIECE, ...piece });
  if (fit === undefined || "bad" in fit) throw new Error(JSON.stringify(fit));
  return fit;
};

/** A riser opening: top line at z = 0, bottom line at z = -height, both at y = 0 (the riser's back); its face at y = thickness. */
const shapes = fc.record({
  height: fc.double({ min: 6, max: 8, noNaN: true }),
  cutHeight: fc.double({ min: 5, max: 8, noNaN: true }),
  topRight: fc.double({ min: 28, max: 60, noNaN: true }),
  bottomLeft: fc.double({ min: -0.8, max: 0.8, noNaN: true }),
  bottomRight: fc.double({ min: -0.8, max: 0.8, noNaN: true }),
  leftFlare: fc.double({ min: -4, max: 4, noNaN: true }),
  rightFlare: fc.double({ min: -4, max: 4, noNaN: true }),
  thickness: fc.double({ min: 0.5, max: 1, noNaN: true }),
  runPast: fc.double({ min: 0, max: 0.5, noNaN: true }),
}).map((shape) => ({ ...shape, bottomRight: shape.topRight + shape.bottomRight }));

test("risers built as corners in space come back, with skirts that flare in plan and an end run past", () => {
  fc.assert(
    fc.property(shapes, fc.constantFrom("none", "right"), (shape, openEnd) => {
      const [tl, tr, bl, br]: readonly Point[] = [
        [0, 0, 0],
        [shape.topRight, 0, 0],
        [shape.bottomLeft, 0, -shape.height],
        [shape.bottomRight, 0, -shape.height],
      ] as const;
      if (!tl || !tr || !bl || !br) throw new Error("four corners");
      const reading: RiserReading = {
        step: 1, height: shape.height, cutHeight: shape.cutHeight, top: distance(tl, tr), bottom: distance(bl, br),
        diagonal: distance(tl, br), secondDiagonal: distance(tr, bl), leftFlare: shape.leftFlare, rightFlare: shape.rightFlare,
      };
      const isOpen = openEnd === "right";
      const left = planeThrough(tl, bl, shifted(tl, [-Math.tan(shape.leftFlare * RADIANS), 1, 0]));
      const right = planeThrough(tr, br, shifted(tr, [isOpen ? 0 : Math.tan(shape.rightFlare * RADIANS), 1, 0]));
      const at = (side: typeof left, y: number, z: number): number =>
        threePlanes(side, upright(y), level(z))[0];
      const past = isOpen ? shape.runPast : 0;
      const face = shape.thickness;
      const [topLeft, topRight] = [at(left, face, 0), at(right, face, 0) + past];
      const [lowLeft, lowRight] = [at(left, face, -shape.cutHeight), at(right, face, -shape.cutHeight) + past];
      const fit = one(reading, { thickness: shape.thickness, runPast: shape.runPast, openEnd });
      expect(fit.top).toBeCloseTo(topRight - topLeft, 8);
      expect(fit.bottom).toBeCloseTo(lowRight - lowLeft, 8);
      expect(fit.longPoint).toBeCloseTo(Math.max(topRight, lowRight) - Math.min(topLeft, lowLeft), 8);
      expect(fit.shortPoint).toBeCloseTo(Math.min(topRight, lowRight) - Math.max(topLeft, lowLeft), 8);
      expect(fit.leftAngle).toBeCloseTo(Math.atan2(topLeft - lowLeft, shape.cutHeight) / RADIANS, 8);
      expect(fit.rightAngle).toBeCloseTo(Math.atan2(lowRight - topRight, shape.cutHeight) / RADIANS, 8);
      const places = [0, face].flatMap((y) => [0, -shape.cutHeight].flatMap((z) => [at(left, y, z), at(right, y, z) + past]));
      expect(fit.length).toBeCloseTo(Math.max(...places) - Math.min(...places), 8);
      expect(fit.closure).toBeCloseTo(0, 9);
    }),
  );
});

test("a mirrored riser is cut mirrored", () => {
  const gaps = fc.record({ left: fc.double({ min: 0, max: 0.125, noNaN: true }), right: fc.double({ min: 0, max: 0.125, noNaN: true }) });
  fc.assert(
    fc.property(shapes, gaps, fc.double({ min: 0, max: 6, noNaN: true }), (shape, gap, undercut) => {
      const [tl, tr] = [[0, 0], [shape.topRight, 0]] as const;
      const [bl, br] = [[shape.bottomLeft, -shape.height], [shape.bottomRight, -shape.height]] as const;
      const apart = (from: readonly [number, number], to: readonly [number, number]) =>
        Math.hypot(to[0] - from[0], to[1] - from[1]);
      const seen: RiserReading = {
        height: shape.height, cutHeight: shape.cutHeight, top: apart(tl, tr), bottom: apart(bl, br), diagonal: apart(tl, br),
        secondDiagonal: apart(tr, bl), leftFlare: shape.leftFlare, rightFlare: shape.rightFlare, leftGap: gap.left, rightGap: gap.right,
      };
      const inMirror: RiserReading = {
        ...seen, diagonal: apart(tr, bl), secondDiagonal: apart(tl, br), leftFlare: shape.rightFlare, rightFlare: shape.leftFlare,
        leftGap: gap.right, rightGap: gap.left,
      };
      for (const [openEnd, other] of [["none", "none"], ["right", "left"], ["both", "both"]] as const) {
        const piece = { thickness: shape.thickness, runPast: shape.runPast, undercut };
        const [straight, mirrored] = [one(seen, { ...piece, openEnd }), one(inMirror, { ...piece, openEnd: other })];
        for (const size of ["length", "longPoint", "shortPoint", "top", "bottom"] as const) {
          expect(mirrored[size]).toBeCloseTo(straight[size], 8);
        }
        expect(mirrored.leftAngle).toBeCloseTo(straight.rightAngle, 8);
        expect(mirrored.rightAngle).toBeCloseTo(straight.leftAngle, 8);
        expect(mirrored.leftTilt).toBeCloseTo(straight.rightTilt, 8);
        expect(mirrored.rightTilt).toBeCloseTo(straight.leftTilt, 8);
      }
    }),
  );
});

test("gaps and an undercut on purpose, met in space; the words say which side is longer", () => {
  const extras = fc.record({
    leftGap: fc.double({ min: 0, max: 0.125, noNaN: true }),
    rightGap: fc.double({ min: 0, max: 0.125, noNaN: true }),
    undercut: fc.double({ min: 0, max: 6, noNaN: true }),
  });
  fc.assert(
    fc.property(shapes, extras, (shape, { leftGap, rightGap, undercut }) => {
      const face = shape.thickness;
      const middle: Point = [shape.topRight / 2, face / 2, -shape.height / 2];
      const meets = (plane: Plane, y: number, z: number): Point => threePlanes(plane, upright(y), level(z));
      const cut = (top: Point, bottom: Point, flare: number, gap: number, side: -1 | 1) => {
        const skirt = planeThrough(top, bottom, shifted(top, [side * Math.tan(flare * RADIANS), 1, 0]));
        const clear = movedToward(skirt, gap, middle);
        const [high, low] = [meets(clear, face, 0), meets(clear, face, -shape.cutHeight)];
        // Turned about the face's edge so that the back comes in: the other way round at the other end.
        const sawn = turnedAbout(clear, high, shifted(low, [-high[0], -high[1], -high[2]]), side * undercut);
        return { high, low, sawn, square: planeThrough(high, low, shifted(high, [0, 1, 0])) };
      };
      const left = cut([0, 0, 0], [shape.bottomLeft, 0, -shape.height], shape.leftFlare, leftGap, -1);
      const right = cut([shape.topRight, 0, 0], [shape.bottomRight, 0, -shape.height], shape.rightFlare, rightGap, 1);
      const tl: Point = [0, 0, 0];
      const [tr, bl, br]: Point[] = [[shape.topRight, 0, 0], [shape.bottomLeft, 0, -shape.height], [shape.bottomRight, 0, -shape.height]];
      if (!tr || !bl || !br) throw new Error("four corners");
      const { height, cutHeight, leftFlare, rightFlare, thickness } = shape;
      const reading: RiserReading = {
        height,
        cutHeight,
        top: distance(tl, tr),
        bottom: distance(bl, br),
        diagonal: distance(tl, br),
        secondDiagonal: distance(tr, bl),
        leftFlare,
        rightFlare,
        leftGap,
        rightGap,
      };
      const fit = one(reading, { thickness, undercut });
      expect(fit.top).toBeCloseTo(right.high[0] - left.high[0], 8);
      expect(fit.bottom).toBeCloseTo(right.low[0] - left.low[0], 8);
      expect(Math.abs(fit.leftTilt)).toBeCloseTo(between(left.sawn, left.square), 7);
      expect(Math.abs(fit.rightTilt)).toBeCloseTo(between(right.sawn, right.square), 7);
      const places = (side: typeof left): number[] => [0, face].flatMap((y) => [0, -cutHeight].map((z) => meets(side.sawn, y, z)[0]));
      expect(fit.length).toBeCloseTo(Math.max(...places(right)) - Math.min(...places(left)), 8);
      const over = right.high[0] - meets(right.sawn, 0, 0)[0];
      if (Math.abs(over) > 0.001) expect(fit.rightSet).toContain(over > 0 ? "face longer" : "back longer");
      expect(fit.leftSet + fit.rightSet).not.toMatch(/-/);
    }),
  );
});

test("top and both angles are a full reading, and a riser's angle is the tread's lean with the sign turned", () => {
  // By hand: 36 + 8 x (tan 1 + tan 2) = 36.4190 at the bottom; a tread between the same skirts leans by -1 and -2, one inch up 36 - 0.0524.
  const riser = one({ height: 8, top: 36, leftAngle: 1, rightAngle: 2, leftFlare: 0, rightFlare: 0 });
  expect(riser.bottom).toBeCloseTo(36.419, 4);
  expect(riser.note).toBe("unchecked: a length along the other line would check this step");
  const read = { run: 10, back: 36, leftAngle: 0, rightAngle: 0, leftLean: -1, rightLean: -2 };
  const piece = {
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
    closure: PIECE.closure,
    unit: "in",
  } as const;
  const [tread] = treadFits([read], piece);
  if (tread === undefined || "bad" in tread) throw new Error("a tread");
  expect([tread.leftTilt, tread.rightTilt]).toEqual([expect.closeTo(-riser.leftAngle, 9), expect.closeTo(-riser.rightAngle, 9)]);
  expect([tread.leftSet, riser.leftSet]).toEqual(["square, underside longer 1.00°", "left 1.00°, upright"]);
});

test("a riser cut lower than the opening is cut from the top down", () => {
  // By hand: the end runs out 1/2 over 8, so 3/8 at 6 down.
  expect(one({ height: 8, cutHeight: 6, top: 36, bottom: 36.5, leftOffset: 0, leftFlare: 0, rightFlare: 0 })).toMatchObject({
    top: 36,
    bottom: 36.375,
    height: 6,
  });
});

test("readings that fit no riser are told apart", () => {
  const bare: RiserReading = { height: 8, top: 36, bottom: 36, leftFlare: 0, rightFlare: 0 };
  const problemOf = (reading: RiserReading): string | undefined => {
    const [fit] = riserFits([reading], PIECE);
    return fit !== undefined && "bad" in fit && isProblem(fit.bad) ? fit.bad.problem : undefined;
  };
  expect(problemOf(bare)).toBe("nothing-fixes-the-end");
  expect(problemOf({ ...bare, diagonal: 7 })).toBe("diagonal-too-short");
  expect(problemOf({ ...bare, top: 2, bottom: 0.5, leftOffset: 1, cutHeight: 11 })).toBe("edges-cross");
});

test("a notch takes the skirt, the reveal and the lap, each with its clearance", () => {
  // By hand: 3/4 + 1/4 + 1/32 wide, 1/4 + 1/32 high; where only the return runs back, 1/4 + 1/32 wide.
  const inches = (value: number) => lengthOf(value, "in");
  const found = notch(inches(0.75), inches(0.25), inches(0.25), inches(0.03125));
  expect([measure(found.width, "in"), measure(found.height, "in")]).toEqual([1.03125, 0.28125]);
  expect(measure(notch(inches(0), inches(0.25), inches(0.25), inches(0.03125)).width, "in")).toBe(0.28125);
});

describe("a flight of risers whose skirts name a doubtful reading", () => {
  /** Square risers 35 by 7; each diagonal is the root of both squared. */
  const long = Math.hypot(35, 7);
  const flight = [1, 2, 3, 4, 5].map((step): RiserReading => ({
    step, height: 7, top: 35, bottom: 35, diagonal: long, secondDiagonal: long, leftFlare: 0, rightFlare: 0,
  }));
  const notesOf = (readings: readonly RiserReading[]): readonly string[] =>
    riserFits(readings, PIECE).map((fit) => ("note" in fit ? fit.note : "no fit"));

  test("square risers have no such note, and an inch is said with the value it should have", () => {
    expect(notesOf(flight)).toEqual(["", "", "", "", ""]);
    const wrong = flight.map((one) => (one.step === 2 ? { ...one, bottom: 36 } : one));
    expect(notesOf(wrong)).toEqual([
      "", "the diagonals disagree: read this step again; bottom likely 35 in: read again (MISREAD)", "", "", "",
    ]);
  });
});
