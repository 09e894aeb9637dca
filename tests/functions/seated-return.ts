import { distance, type Point, shifted } from "../solver/fit/space";
import type { sawn } from "./simulated-saw";

const minus = ([a, b, c]: Point, [d, e, f]: Point): Point => [a - d, b - e, c - f];
const times = ([a, b, c]: Point, by: number): Point => [a * by, b * by, c * by];

/** What was sawn at an open end: its marks, and the corners of the return seated in it, heel to heel along the sawn line. */
export const openEndOf = (piece: ReturnType<typeof sawn>, side: "left" | "right") => {
  const [line, mitre, strip] = [piece.returnLines.get(side), piece.mitres.get(side), piece.returns.get(side)];
  if (line === undefined || mitre === undefined || strip === undefined) throw new Error(`the ${side} end is not finished`);
  expect(mitre.heel).toEqual(line.heel);
  const along = times(minus(line.back, line.heel), 1 / distance(line.back, line.heel));
  // Square to the line, away from the tread.
  const out: Point = side === "right" ? [-along[1], along[0], 0] : [along[1], -along[0], 0];
  const outward: Point = (side === "right") === out[0] > 0 ? out : times(out, -1);
  const seated = (lengthwise: number, fromOuter: number): Point =>
    shifted(line.heel, shifted(times(along, lengthwise - strip.innerFrom), times(outward, strip.width - fromOuter)));
  // Whoever has the outer edge toward them looks inward: the nose end, where the mitre is, lies at their left on a right-hand return.
  expect(strip.mitreAt).toBe(side === "right" ? "left" : "right");
  return {
    back: line.back,
    heel: line.heel,
    toe: mitre.toe,
    longPoint: seated(0, 0),
    freeOuter: seated(strip.outerTo, 0),
    freeInner: seated(strip.innerTo, strip.width),
    isSquare: strip.innerTo === strip.outerTo,
  };
};
