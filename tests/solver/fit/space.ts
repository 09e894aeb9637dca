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

/**
 * The line through two points of the floor moved `aside` square to itself, to the right of someone walking from the first to the second:
 * its x at each y.
 */
export const pointOn = (from: Point, to: Point, aside: number): ((y: number) => number) => {
  const [dx, dy] = [to[0] - from[0], to[1] - from[1]];
  const long = Math.hypot(dx, dy);
  const [x, y] = [from[0] + (dy / long) * aside, from[1] - (dx / long) * aside];
  return (at) => x + ((at - y) * dx) / dy;
};

const times = ([a, b, c]: Point, by: number): Point => [a * by, b * by, c * by];
const unit = (way: Point): Point => times(way, 1 / Math.hypot(...way));
const RADIANS = Math.PI / 180;

export const level = (z: number): Plane => planeThrough([0, 0, z], [1, 0, z], [0, 1, z]);
/** A plumb plane along the nose. */
export const upright = (y: number): Plane => planeThrough([0, y, 0], [1, y, 0], [0, y, 1]);

/** The plane moved `by` square to itself, to the side on which `toward` lies. */
export const movedToward = (plane: Plane, by: number, toward: Point): Plane => {
  const size = Math.hypot(...plane.normal);
  const side = Math.sign(dot(plane.normal, toward) - plane.constant);
  return { normal: plane.normal, constant: plane.constant + side * by * size };
};

/** The plane turned by so many degrees about a line that lies in it, the right-handed way round `along` (Rodrigues). */
export const turnedAbout = (plane: Plane, on: Point, along: Point, degrees: number): Plane => {
  const axis = unit(along);
  const [cos, sin] = [Math.cos(degrees * RADIANS), Math.sin(degrees * RADIANS)];
  const { normal } = plane;
  const turned = shifted(shifted(times(normal, cos), times(cross(axis, normal), sin)), times(axis, dot(axis, normal) * (1 - cos)));
  return { normal: turned, constant: dot(turned, on) };
};

/** Degrees between two planes, 0 to 90. */
export const between = (one: Plane, other: Plane): number => {
  const [a, b] = [unit(one.normal), unit(other.normal)];
  return Math.atan2(Math.hypot(...cross(a, b)), Math.abs(dot(a, b))) / RADIANS;
};

/** How far a point lies from a plane. */
export const from = (plane: Plane, at: Point): number => Math.abs(dot(plane.normal, at) - plane.constant) / Math.hypot(...plane.normal);
