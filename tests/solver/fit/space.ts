/** Points, planes and lines of the space a stair stands in, by linear algebra alone: the fit's own formulas are not used here. */

export type Point = readonly [number, number, number];

export const distance = ([a, b, c]: Point, [d, e, f]: Point): number => Math.hypot(d - a, e - b, f - c);

export const shifted = ([a, b, c]: Point, [d, e, f]: Point): Point => [a + d, b + e, c + f];

/** n · p = c */
export interface Plane {
  readonly normal: Point;
  readonly constant: number;
}

const minus = ([a, b, c]: Point, [d, e, f]: Point): Point => [a - d, b - e, c - f];
const cross = ([a, b, c]: Point, [d, e, f]: Point): Point => [b * f - c * e, c * d - a * f, a * e - b * d];
const dot = ([a, b, c]: Point, [d, e, f]: Point): number => a * d + b * e + c * f;

export const planeThrough = (one: Point, two: Point, three: Point): Plane => {
  const normal = cross(minus(two, one), minus(three, one));
  return { normal, constant: dot(normal, one) };
};

/** Where three planes meet, by Cramer's rule. */
export const threePlanes = (a: Plane, b: Plane, c: Plane): Point => {
  const determinant = dot(a.normal, cross(b.normal, c.normal));
  const sum = [
    [a.constant, cross(b.normal, c.normal)],
    [b.constant, cross(c.normal, a.normal)],
    [c.constant, cross(a.normal, b.normal)],
  ] as const;
  const at = (index: 0 | 1 | 2): number => sum.reduce((total, [constant, way]) => total + constant * way[index], 0) / determinant;
  return [at(0), at(1), at(2)];
};

/** The line through two points of the floor moved `aside` square to itself, to the right of someone walking from the first to the second: its x at each y. */
export const pointOn = (from: Point, to: Point, aside: number): ((y: number) => number) => {
  const [dx, dy] = [to[0] - from[0], to[1] - from[1]];
  const long = Math.hypot(dx, dy);
  const [x, y] = [from[0] + (dy / long) * aside, from[1] - (dx / long) * aside];
  return (at) => x + ((at - y) * dx) / dy;
};
