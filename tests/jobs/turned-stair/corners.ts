/** A face of a skirt in space: across = at + along x up the flight + up x height; millimetres, and slopes of the face. */
export interface SkirtFace {
  readonly at: number;
  readonly along: number;
  readonly up: number;
}

/** A flight between its two skirt faces; heights are over the finished floor or landing that it stands on. */
export interface FlightInSpace {
  readonly left: SkirtFace;
  readonly right: SkirtFace;
  /** Finished, once packed. */
  readonly rises: readonly number[];
  readonly run: number;
  readonly treadThickness: number;
  readonly riserThickness: number;
  readonly lowerBuildUp: number;
  readonly upperBuildUp: number;
}

type Point = readonly [across: number, along: number, height: number];

const tan = (degrees: number): number => Math.tan((degrees * Math.PI) / 180);

const BOTH = { run: 265, treadThickness: 27, riserThickness: 18 };

/** Both skirts run off to the left going up, 0.6 and 0.2 degrees; the left one leans in over the stair by half a degree. */
export const LOWER: FlightInSpace = {
  ...BOTH, rises: [181, 180, 181, 178, 182, 183, 180, 183], lowerBuildUp: 15, upperBuildUp: 20,
  left: { at: 0, along: -tan(0.6), up: tan(0.5) },
  right: { at: 900, along: -tan(0.2), up: 0 },
};

/** The wall skirt on the left runs off to the right by 0.4 degrees and leans away by 0.3; the open one by 0.1, and is plumb. */
export const UPPER: FlightInSpace = {
  ...BOTH, rises: [181, 179, 180, 184, 180, 180, 183], lowerBuildUp: 20, upperBuildUp: 22,
  left: { at: 0, along: tan(0.4), up: -tan(0.3) },
  right: { at: 920, along: tan(0.1), up: 0 },
};

const on = ({ at, along, up }: SkirtFace, y: number, z: number): Point => [at + along * y + up * z, y, z];

const apart = (one: Point, other: Point): number => Math.round(Math.hypot(...one.map((place, axis) => place - (other[axis] ?? 0))));

/** The four corners of a level or upright face, read with a tape to whole millimetres: far edge, near edge, both diagonals. */
const read = (flight: FlightInSpace, far: readonly [number, number], near: readonly [number, number]): readonly number[] => {
  const [farLeft, farRight] = [on(flight.left, ...far), on(flight.right, ...far)];
  const [nearLeft, nearRight] = [on(flight.left, ...near), on(flight.right, ...near)];
  return [apart(farLeft, farRight), apart(nearLeft, nearRight), apart(farLeft, nearRight), apart(farRight, nearLeft)];
};

/** Height of a finished tread, or of the floor the flight ends on. */
export const height = ({ rises }: FlightInSpace, step: number): number => rises.slice(0, step).reduce((sum, rise) => sum + rise, 0);

const subTread = (flight: FlightInSpace, step: number): number => height(flight, step) - flight.treadThickness;

/** Step, run, back, front, both diagonals: a tread lies from the riser face behind it to its own, at the sub-tread. */
export const treadReadings = (flight: FlightInSpace, steps: number): readonly (readonly number[])[] =>
  Array.from({ length: steps }, (_, index) => index + 1).map((step) => {
    const level = subTread(flight, step);
    return [step, flight.run, ...read(flight, [step * flight.run, level], [(step - 1) * flight.run, level])];
  });

/** The landing tread, as deep as said and a nosing more: it lies from the face of the last riser back over the landing. */
export const landingReadings = (flight: FlightInSpace, depth: number): readonly (string | number)[] => {
  const front = (flight.rises.length - 1) * flight.run;
  const level = subTread(flight, flight.rises.length);
  return ["landing", depth, ...read(flight, [front + depth, level], [front, level])];
};

/** Step, height, top, bottom, both diagonals: a riser is read at its back, from sub-tread to sub-tread or the bare floor. */
export const riserReadings = (flight: FlightInSpace): readonly (readonly number[])[] =>
  flight.rises.map((_, index) => index + 1).map((step) => {
    const { rises, run, riserThickness, lowerBuildUp, upperBuildUp } = flight;
    const bottom = step === 1 ? -lowerBuildUp : subTread(flight, step - 1);
    const top = step === rises.length ? height(flight, step) - upperBuildUp : subTread(flight, step);
    const back = (step - 1) * run + riserThickness;
    return [step, top - bottom, ...read(flight, [back, top], [back, bottom])];
  });
