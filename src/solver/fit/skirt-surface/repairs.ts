import { dot, type SquareMatrix } from "./cholesky";
import { type Flight, type Observed, type Place, PLACES } from "./flight-readings";
import { times } from "./skirt-model";

/** A reading, by its place among those of the flight, and the length in inches that it would have if the repair is right. */
interface Change {
  readonly reading: number;
  readonly to: number;
}

/** One thing that may be wrong with the readings, and how much better they would lie on two skirts without it. */
export interface Repair {
  readonly kind: "off" | "exchanged" | "steps exchanged";
  readonly changes: readonly Change[];
  /** Fall of the weighted sum of squares, less what the freedom to choose the repair buys by itself. */
  readonly gain: number;
}

/** What any reading, or any exchange, buys by chance: by trial on made-up flights, so that one honest flight in twenty is named at most. */
const BOUGHT_BY_A_VALUE = 6.5;
const BOUGHT_BY_AN_EXCHANGE = 1.5;

const PAIRS: readonly (readonly [Place, Place])[] = [["diagonal", "secondDiagonal"], ["near", "far"]];

type At = (kind: Observed["kind"], row: number, place: Place) => number | undefined;

const indexOf = ({ observed }: Flight): At => {
  const places = new Map(observed.map(({ kind, row, place }, at) => [`${kind} ${row} ${place}`, at]));
  return (kind, row, place) => places.get(`${kind} ${row} ${place}`);
};

/** Changes that put two readings in each other's place; none where one was not taken or both are alike. */
const exchange = (one: number | undefined, other: number | undefined, lengths: ArrayLike<number>): readonly Change[] =>
  one === undefined || other === undefined || lengths[one] === lengths[other]
    ? []
    : [{ reading: one, to: lengths[other]! }, { reading: other, to: lengths[one]! }];

/** Pieces of each table from the bottom up, with the one above each. */
const neighbours = ({ observed, corners }: Flight) =>
  (["tread", "riser"] as const).flatMap((kind) => {
    const rows = new Map(observed.filter((one) => one.kind === kind).map((one) => [one.row, corners[one.right]!.along]));
    const upward = [...rows].sort(([, one], [, other]) => one - other).map(([row]) => row);
    return upward.map((row, place) => ({ kind, row, above: upward[place + 1] }));
  });

/** Every exchange that a pencil makes: two lengths of one piece, or the readings of two pieces one above the other. */
const exchanges = (flight: Flight, lengths: ArrayLike<number>): readonly Omit<Repair, "gain">[] => {
  const at = indexOf(flight);
  return neighbours(flight).flatMap(({ kind, row, above }) => [
    ...PAIRS.map(([one, other]) => ({
      kind: "exchanged" as const,
      changes: exchange(at(kind, row, one), at(kind, row, other), lengths),
    })),
    {
      kind: "steps exchanged" as const,
      changes: above === undefined ? [] : PLACES.flatMap((place) => exchange(at(kind, row, place), at(kind, above, place), lengths)),
    },
  ]);
};

/** How much the sum of squares about the skirts falls when readings change: only the changed ones count in it. */
const fallBy = (
  { size, at }: SquareMatrix, residual: ArrayLike<number>, lengths: ArrayLike<number>, changes: readonly Change[],
): number => {
  let fall = 0;
  for (const one of changes) {
    const step = one.to - lengths[one.reading]!;
    fall -= 2 * step * residual[one.reading]!;
    for (const other of changes) fall -= step * (other.to - lengths[other.reading]!) * at[one.reading * size + other.reading]!;
  }
  return fall;
};

/** Gains that differ by floating-point dust are alike, so that every engine puts them in one order. */
const atGrain = (gain: number): number => Math.round(gain * 1e6);

export interface Repairs {
  /** The weighted sum of squares of the readings as they stand. */
  readonly sum: number;
  /** Best first. */
  readonly repairs: readonly Repair[];
}

/** Everything that one mistake may have done to the readings, except to those settled already. */
export const repairsOf = (
  flight: Flight, projection: SquareMatrix, lengths: ArrayLike<number>, settled: ReadonlySet<number>,
): Repairs => {
  const residual = times(projection, lengths);
  const values = flight.observed.map((_, reading): Repair => {
    const weight = projection.at[reading * projection.size + reading]!;
    const isTold = weight > 0;
    const off = isTold ? residual[reading]! / weight : 0;
    return {
      kind: "off",
      changes: [{ reading, to: lengths[reading]! - off }],
      gain: off * residual[reading]! - BOUGHT_BY_A_VALUE,
    };
  });
  const swaps = exchanges(flight, lengths)
    .filter(({ changes }) => changes.length > 0)
    .map((one): Repair => ({ ...one, gain: fallBy(projection, residual, lengths, one.changes) - BOUGHT_BY_AN_EXCHANGE }));
  return {
    sum: dot(lengths, residual),
    repairs: [...values, ...swaps]
      .filter(({ changes }) => !changes.some(({ reading }) => settled.has(reading)))
      .sort((one, other) => atGrain(other.gain) - atGrain(one.gain)),
  };
};
