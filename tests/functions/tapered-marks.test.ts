import fc from "fast-check";
import { MARKS } from "../../src/functions/fit/marks";
import type { Unit } from "../../src/solver/length/length";
import { distance, from as apart, movedToward, type Plane, planeThrough, type Point, shifted } from "../solver/fit/space";
import { cellsOf, printed } from "./printed-rows";
import { type Printed, sawn, xAt } from "./simulated-saw";

const LIMIT_INCHES = 1 / 64;
const RADIANS = Math.PI / 180;
const inchesPer: Readonly<Record<Unit, number>> = { in: 1, mm: 25.4 };

/** A step whose riser in front is not parallel to the one behind; x along the nose, y from the nose back, z up from the sub-tread. */
interface Shape {
  readonly front: number;
  readonly backLeft: number;
  readonly backRight: number;
  readonly leftDeep: number;
  readonly rightDeep: number;
  readonly leftLean: number;
  readonly rightLean: number;
  readonly nosing: number;
  readonly thickness: number;
  readonly overhang: number;
  readonly returnWidth: number;
}

const among = (min: number, max: number) => fc.double({ min, max, noNaN: true });

/** Sizes the shop chooses are those of its tape, 32nds or whole millimetres; the opening is as it is found. */
const shapesIn = (unit: Unit): fc.Arbitrary<Shape> => {
  const inch = inchesPer[unit];
  const found = (min: number, max: number) => among(min * inch, max * inch);
  const chosen = (min: number, max: number) => {
    const step = unit === "in" ? 1 / 32 : 1;
    return fc.integer({ min: Math.ceil((min * inch) / step), max: Math.floor((max * inch) / step) }).map((parts) => parts * step);
  };
  return fc.record({
    front: found(28, 56), backLeft: found(-0.8, 0.8), backRight: found(-0.8, 0.8), leftDeep: found(8, 12), rightDeep: found(8, 12),
    leftLean: among(-4, 4), rightLean: among(-4, 4), nosing: chosen(0.75, 1.5), thickness: found(0.75, 1.5),
    overhang: chosen(0.5, 1.5), returnWidth: chosen(0.75, 2),
  });
};

type Open = "none" | "left" | "right" | "both";

const isOpen = (side: "left" | "right", open: Open): boolean => open === side || open === "both";

const built = (shape: Shape, open: Open) => {
  const { front, nosing, leftDeep, rightDeep } = shape;
  const [frontLeft, frontRight]: readonly [Point, Point] = [[0, nosing, 0], [front, nosing, 0]];
  const backLeft: Point = [shape.backLeft, nosing + leftDeep, 0];
  const backRight: Point = [front + shape.backRight, nosing + rightDeep, 0];
  const side = (near: Point, far: Point, lean: number, way: -1 | 1): Plane =>
    planeThrough(near, far, shifted(near, [way * Math.tan(lean * RADIANS), 0, 1]));
  const left = side(frontLeft, backLeft, isOpen("left", open) ? 0 : shape.leftLean, -1);
  const right = side(frontRight, backRight, isOpen("right", open) ? 0 : shape.rightLean, 1);
  const riser = planeThrough(backLeft, backRight, shifted(backLeft, [0, 0, 1]));
  const readings = {
    "left run": apart(riser, frontLeft), "right run": apart(riser, frontRight),
    back: distance(backLeft, backRight), front,
    diagonal: distance(backLeft, frontRight), "second diagonal": distance(backRight, frontLeft),
    "left lean": shape.leftLean, "right lean": shape.rightLean,
  };
  return { left, right, riser, readings };
};

const rowsOf = (shape: Shape, open: Open, unit: Unit): readonly Printed[] => {
  const { readings } = built(shape, open);
  return printed(
    cellsOf(MARKS, {
      readings: [["step", ...Object.keys(readings)], [1, ...Object.values(readings)]],
      nosing: shape.nosing, openEnd: open, overhang: shape.overhang, returnWidth: shape.returnWidth, thickness: shape.thickness, unit,
    }),
  );
};

/** How far the sawn places lie right of where they should, and the scribed back behind the riser. */
const measured = (shape: Shape, open: Open, unit: Unit) => {
  const { left, right, riser } = built(shape, open);
  const piece = sawn(rowsOf(shape, open, unit), { thickness: shape.thickness, unit });
  const { scribed } = piece;
  if (scribed === undefined) throw new Error("the back was not scribed");
  const behindNose = (y: number): number => piece.depth - y;
  const off = (["left", "right"] as const).flatMap((side): readonly number[] => {
    const wanted = side === "left" ? left : right;
    const sawnEnd = piece.ends.get(side);
    if (sawnEnd !== undefined && !isOpen(side, open)) {
      return [piece.depth, scribed[side][1]].flatMap((y) =>
        [0, shape.thickness].map((z) => xAt(sawnEnd, y, z) - xAt(wanted, behindNose(y), z)));
    }
    const [line, mitre] = [piece.returnLines.get(side), piece.mitres.get(side)];
    if (line === undefined || mitre === undefined) throw new Error(`the ${side} end is not sawn`);
    // The return's lines are the skirt moved square to itself.
    const middle: Point = [shape.front / 2, shape.nosing + 4, 0];
    const past = (by: number): Plane => movedToward(wanted, -by, middle);
    const [inner, outer] = [past(shape.overhang - shape.returnWidth), past(shape.overhang)];
    return [
      ...[line.back, line.heel, scribed[side]].map(([x, y]) => x - xAt(inner, behindNose(y), 0)),
      mitre.toe[0] - xAt(outer, behindNose(mitre.toe[1]), 0),
    ];
  });
  const slid = (Math.max(...off) + Math.min(...off)) / 2;
  const back = [scribed.left, scribed.right].map(([x, y]) => apart(riser, [x - slid, behindNose(y), 0]));
  const inch = inchesPer[unit];
  return { piece, worst: (Math.max(...off) - Math.min(...off)) / 2 / inch, back: Math.max(...back) / inch };
};

describe("tapered treads by a saw that follows the printed rows", () => {
  test.each((["in", "mm"] as const).flatMap((unit) => (["none", "left", "right", "both"] as const).map((open) => [open, unit] as const)))(
    "open %s: ends, marks and the scribed back come within 1/64 of the opening, %s",
    (open, unit) => {
      fc.assert(
        fc.property(shapesIn(unit), (shape) => {
          // Nearly square steps have nothing to scribe.
          fc.pre(Math.abs(shape.leftDeep - shape.rightDeep) > 0.1 * inchesPer[unit]);
          const { piece, worst, back } = measured(shape, open, unit);
          expect(piece.contradictions).toEqual([]);
          expect(worst).toBeLessThanOrEqual(LIMIT_INCHES);
          expect(back).toBeLessThanOrEqual(LIMIT_INCHES);
        }),
        { numRuns: 200 },
      );
    },
  );

  test("a worked step: ripped to the deep end, marked at the other, scribed between", () => {
    // Back 36, front 36.2578, runs 9 1/2 and 10 1/4, nosing 1 1/4. By hand: from the nose left -2.6927 and right 3.9780 degrees, depths
    // 10.7428 and 11.4875, nose 36.2859. Depth along the left end 10.7428 / cos 2.6927 = 10.7547. Along the ripped edge 36.2859 - 11.4875
    // x (tan -2.6927 + tan 3.9780) = 36.2859 - 11.4875 x 0.022509 = 36.0273.
    const cells = cellsOf(MARKS, {
      readings: [
        ["step", "left run", "right run", "back", "front", "diagonal", "second diagonal"],
        [1, 9.5, 10.25, 36, 36.2578, 37.9119, 36.9907],
      ],
    });
    const [headings = [], ...rows] = cells;
    const cell = (act: string, heading: string): unknown => rows.find((row) => row[2] === act)?.[headings.indexOf(heading)];
    expect(Number(cell("RIP", "distance"))).toBeCloseTo(11.4875, 3);
    expect(Number(cell("MARK RIGHT NOSE", "distance"))).toBeCloseTo(36.2859, 3);
    expect(Number(cell("MARK RIGHT BACK", "distance"))).toBeCloseTo(36.0273, 3);
    expect(Number(cell("MARK LEFT DEPTH", "distance"))).toBeCloseTo(10.7547, 3);
    expect(cell("MARK LEFT DEPTH", "hook on")).toBe("hook the left nose corner, along the left end");
    expect(cell("SAW LEFT END", "swing")).toBe("2.7°, near end of the cut to the right");
    expect(cell("SAW LEFT END", "offset")).toBe("nose in by 35/64");
    expect(cell("SCRIBE BACK", "note")).toBe("from mark 8 to the right back corner; saw outside the line, plane to the riser");
  });
});
