import fc from "fast-check";
import { isProblem } from "../../../src/solver/problem";
import { type RiserFit, riserFits, type RiserPiece, type RiserReading } from "../../../src/solver/fit/riser-fit";
import { notch } from "../../../src/solver/fit/notch";
import { lengthOf, measure } from "../../../src/solver/length/length";
import { distance, planeThrough, type Point, shifted, threePlanes } from "./space";

const PIECE: RiserPiece = { openEnd: "none", runPast: 0.25, thickness: 0.75, closure: { most: 0.125, alike: 0.125 } };
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
  leftLean: fc.double({ min: -4, max: 4, noNaN: true }),
  rightLean: fc.double({ min: -4, max: 4, noNaN: true }),
  thickness: fc.double({ min: 0.5, max: 1, noNaN: true }),
  runPast: fc.double({ min: 0, max: 0.5, noNaN: true }),
}).map((shape) => ({ ...shape, bottomRight: shape.topRight + shape.bottomRight }));

test("risers built as corners in space come back, with skirts at an angle in plan and an end run past", () => {
  fc.assert(
    fc.property(shapes, fc.constantFrom("none", "right"), (shape, openEnd) => {
      const [tl, tr, bl, br]: readonly Point[] = [[0, 0, 0], [shape.topRight, 0, 0], [shape.bottomLeft, 0, -shape.height], [shape.bottomRight, 0, -shape.height]] as const;
      if (!tl || !tr || !bl || !br) throw new Error("four corners");
      const reading: RiserReading = {
        step: 1, height: shape.height, cutHeight: shape.cutHeight, top: distance(tl, tr), bottom: distance(bl, br),
        diagonal: distance(tl, br), secondDiagonal: distance(tr, bl), leftLean: shape.leftLean, rightLean: shape.rightLean,
      };
      const isOpen = openEnd === "right";
      const left = planeThrough(tl, bl, shifted(tl, [-Math.tan(shape.leftLean * RADIANS), 1, 0]));
      const right = planeThrough(tr, br, shifted(tr, [isOpen ? 0 : Math.tan(shape.rightLean * RADIANS), 1, 0]));
      const at = (side: typeof left, y: number, z: number): number =>
        threePlanes(side, planeThrough([0, y, 0], [1, y, 0], [0, y, 1]), planeThrough([0, 0, z], [1, 0, z], [0, 1, z]))[0];
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

test("a riser cut lower than the opening is cut from the top down", () => {
  // By hand: the end runs out 1/2 over 8, so 3/8 at 6 down.
  expect(one({ height: 8, cutHeight: 6, top: 36, bottom: 36.5, leftOffset: 0, leftLean: 0, rightLean: 0 })).toMatchObject({ top: 36, bottom: 36.375, height: 6 });
});

test("readings that fit no riser are told apart", () => {
  const bare: RiserReading = { height: 8, top: 36, bottom: 36, leftLean: 0, rightLean: 0 };
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
