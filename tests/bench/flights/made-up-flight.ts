import type { Draws } from "./draws";

/** How far from straight the skirts of a made-up flight are: root mean squares in inches and degrees. */
export interface Crookedness {
  readonly taper: number;
  readonly lean: number;
  readonly waves: number;
  /** Length over which the waves forget themselves. */
  readonly reach: number;
  /** How far a skirt's lean wanders along it, in inches an inch. */
  readonly twist: number;
  readonly roughness: number;
  /** How far each tread and riser is out of square by itself. */
  readonly square: number;
  /** How far runs and rises are off. */
  readonly sizes: number;
}

export const USUAL_CROOKEDNESS: Crookedness = {
  taper: 0.6, lean: 0.8, waves: 1 / 16, reach: 40, twist: 0.004, roughness: 0.01, square: 0.1, sizes: 1 / 16,
};

/** A tape of so many divisions an inch, in a hand that is off by so much. */
export interface Tape {
  readonly divisions: number;
  readonly hand: number;
}

export interface TrueStep {
  readonly run: number;
  readonly back: number;
  readonly front: number;
  readonly diagonal: number;
  readonly secondDiagonal: number;
  readonly height: number;
  readonly top: number;
  readonly bottom: number;
  readonly riserDiagonal: number;
  readonly riserSecondDiagonal: number;
}

interface Place {
  readonly y: number;
  readonly z: number;
}

const RISE = 7.7;
const RUN = 10;
const RADIANS = Math.PI / 180;
const COSINES = 24;

/** A wave along the slope whose places forget one another like a bell curve: cosines of that spectrum. */
const wave = (draw: Draws, height: number, reach: number): ((along: number) => number) => {
  const parts = Array.from({ length: COSINES }, () => ({ turns: draw.normal(1 / reach), from: draw.between(0, 2 * Math.PI) }));
  return (along) => height * Math.sqrt(2 / COSINES) * parts.reduce((sum, { turns, from }) => sum + Math.cos(turns * along + from), 0);
};

/** One skirt: where its face stands along the nose, at each place of the zig-zag. Each place is rough by itself, the same each time. */
const skirt = (draw: Draws, crooked: Crookedness): ((at: Place) => number) => {
  const [taper, lean] = [Math.tan(draw.normal(crooked.taper) * RADIANS), Math.tan(draw.normal(crooked.lean) * RADIANS)];
  const [waves, twist] = [wave(draw, crooked.waves, crooked.reach), wave(draw, crooked.twist, crooked.reach)];
  const rough = new Map<Place, number>();
  const slope = Math.hypot(RISE, RUN);
  return (at) => {
    const [along, up] = [(at.y * RUN + at.z * RISE) / slope, (at.z * RUN - at.y * RISE) / slope];
    const own = rough.get(at) ?? draw.normal(crooked.roughness);
    rough.set(at, own);
    return taper * at.y + lean * at.z + waves(along) + up * twist(along) + own;
  };
};

/** Every length of a flight as it is, by the places of its corners in plan and elevation: none of the fit's formulas is used. */
export const madeUpFlight = (draw: Draws, steps: number, crooked: Crookedness = USUAL_CROOKEDNESS): readonly TrueStep[] => {
  const [left, rightOut, width] = [skirt(draw, crooked), skirt(draw, crooked), draw.between(32, 44)];
  const right = (at: Place): number => width + rightOut(at);
  let foot: Place = { y: 0, z: 0 };
  return Array.from({ length: steps }, () => {
    const [run, height] = [RUN + draw.normal(crooked.sizes), RISE + draw.normal(crooked.sizes)];
    const below = foot;
    const front: Place = { y: foot.y, z: foot.z + height };
    const back: Place = { y: foot.y + run, z: front.z };
    foot = back;
    // A piece out of square: its far line is slid along the nose.
    const [slid, riserSlid] = [draw.normal(crooked.square) * RADIANS * run, draw.normal(crooked.square) * RADIANS * height];
    const apart = (one: number, other: number, between: number): number => Math.hypot(one - other, between);
    return {
      run,
      back: right(back) - left(back),
      front: right(front) - left(front),
      diagonal: apart(right(front) + slid, left(back), run),
      secondDiagonal: apart(right(back), left(front) + slid, run),
      height,
      top: right(front) - left(front),
      bottom: right(below) - left(below),
      riserDiagonal: apart(right(below) + riserSlid, left(front), height),
      riserSecondDiagonal: apart(right(front), left(below) + riserSlid, height),
    };
  });
};

/** The flight as a hand reads it. */
export const readFlight = (draw: Draws, steps: readonly TrueStep[], { divisions, hand }: Tape): readonly TrueStep[] =>
  steps.map((step) =>
    Object.fromEntries(
      Object.entries(step).map(([name, length]) => [name, Math.round((length + draw.normal(hand)) * divisions) / divisions]),
    ) as unknown as TrueStep,
  );
