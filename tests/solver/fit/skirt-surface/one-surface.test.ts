import { disagreements } from "../../../../src/solver/fit/skirt-surface/one-surface";
import type { RiserReading } from "../../../../src/solver/fit/riser-reading";
import type { TreadReading } from "../../../../src/solver/fit/tread-reading";

/** A skirt that leans away going up by 0.14 in 8 is nearer at the bottom: atan(0.14 / 8) is 1.0026 degrees, the riser's angle negative. */
const LEAN = 1.0026;
const tread = (step: number, leftLean: number, extra: Partial<TreadReading> = {}): TreadReading => ({
  step, run: 10, back: 36, front: 36, leftOffset: 0, leftLean, rightLean: 0, ...extra,
});
/** Bottom left corner 0.14 right of the top left one, so that the left end's angle is -1.0026. */
const riser = (step: number, extra: Partial<RiserReading> = {}): RiserReading => ({
  step, height: 8, top: 36, bottom: 35.86, leftOffset: 0.14, leftFlare: 0, rightFlare: 0, ...extra,
});

test("a lean is the angle of the riser's same end with the other sign", () => {
  expect(disagreements([tread(1, LEAN)], [riser(1)])).toEqual([]);
  expect(disagreements([tread(1, LEAN + 0.4)], [riser(1)])).toEqual([]);
  const [found] = disagreements([tread(1, -LEAN)], [riser(1)]);
  expect(found).toMatchObject({ tread: 0, riser: 0, side: "left", about: "lean", lean: -LEAN });
  expect(found!.angle).toBeCloseTo(-LEAN, 4);
  expect(found!.by).toBeCloseTo(-2 * LEAN, 4);
});

test("a flare is the angle of the tread's same end", () => {
  // By hand: the front left corner 0.2 left of the back one, 10 in front of it: atan(0.02) is 1.1458.
  const open = tread(1, 0, { front: 36.2, leftOffset: -0.2 });
  expect(disagreements([open], [riser(1, { leftFlare: 1.1 })])).toEqual([]);
  expect(disagreements([open], [riser(1, { leftFlare: -1.1 })])).toMatchObject([{ about: "flare", side: "left", lean: -1.1 }]);
});

test("steps are matched by name, and where neither has one by place", () => {
  expect(disagreements([tread(2, 3)], [riser(1)])).toEqual([]);
  const { step: _, ...bare } = tread(2, 3);
  expect(disagreements([bare], [riser(1)])).toHaveLength(1);
});

test("a hand that reads leans coarsely is not told so at every step, but a wrong one still is", () => {
  // By hand: off by 0.6, -0.6, 0.6, -0.6 and 4: the middle of all is 0.6, of what is off it 1.2 x 1.48 = 1.8, three times that is 5.3.
  const coarse = [0.6, -0.6, 0.6, -0.6].map((off, at) => tread(at + 1, LEAN + off));
  const risers = [1, 2, 3, 4, 5].map((step) => riser(step));
  expect(disagreements(coarse, risers)).toEqual([]);
  expect(disagreements([...coarse, tread(5, LEAN + 6)], risers)).toMatchObject([{ tread: 4 }]);
  // All leans with the wrong sign lie together, and far from the risers.
  expect(disagreements([1, 2, 3, 4].map((step) => tread(step, -LEAN)), risers)).toHaveLength(4);
});
