import { type PieceReading } from "../../../../src/solver/fit/skirt-surface/flight-readings";
import { distance, level, type Plane, planeThrough, type Point, threePlanes, upright } from "../space";

/**
 * Two skirts as planes, and every corner of the stair where one of them meets a level and an upright plane: lengths are distances of
 * points, and none of the fit's formulas is used. Seen facing the stair: x to the right, y toward the climber, z up.
 */
export interface Skirts {
  readonly left: Plane;
  readonly right: Plane;
}

/** Skirts `width` apart at the foot, each running to the right by so much in a hundred going along the stair, and going up it. */
export const skirts = (
  width: number, left: { readonly along: number; readonly up: number }, right: { readonly along: number; readonly up: number },
): Skirts => {
  const plane = (x: number, { along, up }: { readonly along: number; readonly up: number }): Plane =>
    planeThrough([x, 0, 0], [x + along, -100, 0], [x + up, 0, 100]);
  return { left: plane(0, left), right: plane(width, right) };
};

export interface SteppedFlight {
  readonly treads: readonly PieceReading[];
  readonly risers: readonly PieceReading[];
}

/** Readings of a flight between skirts, exact. */
export const flightInSpace = ({ left, right }: Skirts, runs: readonly number[], rises: readonly number[]): SteppedFlight => {
  const meets = (skirt: Plane, y: number, z: number): Point => threePlanes(skirt, upright(y), level(z));
  let [y, z] = [0, 0];
  const treads: PieceReading[] = [];
  const risers: PieceReading[] = [];
  const lines = (near: { y: number; z: number }, far: { y: number; z: number }) => {
    const [nearLeft, nearRight] = [meets(left, near.y, near.z), meets(right, near.y, near.z)];
    const [farLeft, farRight] = [meets(left, far.y, far.z), meets(right, far.y, far.z)];
    return {
      near: distance(nearLeft, nearRight),
      far: distance(farLeft, farRight),
      diagonal: distance(nearLeft, farRight),
      secondDiagonal: distance(nearRight, farLeft),
    };
  };
  for (const [place, run] of runs.entries()) {
    const rise = rises[place]!;
    risers.push({ step: place + 1, distance: rise, ...lines({ y, z: z + rise }, { y, z }) });
    z += rise;
    treads.push({ step: place + 1, distance: run, ...lines({ y: y - run, z }, { y, z }) });
    y -= run;
  }
  return { treads, risers };
};

/** A flight of five steps read with a 1/16 tape, run 10: invented. */
export const FIVE_STEPS: readonly PieceReading[] = (
  [
    [36, 35.9375, 37.125, 37.5625],
    [36.0625, 35.9375, 37.125, 37.625],
    [36.0625, 36, 37.125, 37.625],
    [36.0625, 36, 37.1875, 37.625],
    [36.125, 36, 37.1875, 37.6875],
  ] as const
).map(([near, far, diagonal, secondDiagonal], row) => ({ step: row + 1, distance: 10, near, far, diagonal, secondDiagonal }));

export const changed = (
  readings: readonly PieceReading[], step: number, change: (reading: PieceReading) => Partial<PieceReading>,
): readonly PieceReading[] => readings.map((one, row) => (row === step - 1 ? { ...one, ...change(one) } : one));
