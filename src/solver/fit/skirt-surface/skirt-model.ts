import { backward, cholesky, dot, forward, logDeterminant, type SquareMatrix, squareMatrix } from "./cholesky";
import type { Corner, Flight, Observed } from "./flight-readings";
import type { SkirtKind } from "./skirt-kinds";

/** A difference of the skirts that a reading is, or would be: all that its expectation and covariance turn on. */
export interface Sighting extends Pick<Observed, "turn"> {
  readonly left: Corner;
  readonly right: Corner;
}

/** Generalised least squares over the readings of a flight, for one kind of skirt. */
export interface SkirtModel {
  /** P: y·P y is the weighted sum of squares about the best planes, and P y says how each reading stands out. */
  readonly projection: SquareMatrix;
  /** Logarithm of what the sum of squares is weighed against: |V| and |XᵀV⁻¹X|. */
  readonly logSpread: number;
  /** The best guess of a reading that was not taken, and its variance without the tape's. */
  guess(lengths: ArrayLike<number>, sighting: Sighting): { readonly value: number; readonly variance: number };
}

/** What two sightings share: corners near one another, and the squareness of their own piece. */
const covariance = ({ waves, reach, roughness, squareness }: SkirtKind) => {
  const near = (one: Corner, other: Corner): number => {
    const apart = (one.along - other.along) ** 2 + (one.high - other.high) ** 2;
    return waves * waves * Math.exp(-apart / (2 * reach * reach)) + (one === other ? roughness * roughness : 0);
  };
  return (one: Sighting, other: Sighting, isOnePiece: boolean): number =>
    near(one.left, other.left) +
    near(one.right, other.right) +
    (isOnePiece ? one.turn * other.turn * squareness * squareness : 0);
};

type Column = (at: Sighting) => number;

/**
 * The planes: width at the start, how the right skirt runs out along and up the stair, and the left one. Only a tread's diagonal tells one
 * skirt's run along the stair from the other's, only a riser's their lean; where there is none, what the two share cannot be told.
 */
const columnsOf = ({ observed }: Flight): readonly Column[] => {
  const hasDiagonal = (kind: Observed["kind"]): boolean => observed.some((one) => one.kind === kind && one.turn !== 0);
  return [
    () => 1,
    ({ right }) => right.along,
    ({ right }) => right.high,
    ...(hasDiagonal("tread") ? [({ left }: Sighting) => -left.along] : []),
    ...(hasDiagonal("riser") ? [({ left }: Sighting) => -left.high] : []),
  ];
};

/** V⁻¹ from its Cholesky triangle, less what the planes take up: V⁻¹ - V⁻¹X (XᵀV⁻¹X)⁻¹ XᵀV⁻¹. */
const projectionOf = (lower: SquareMatrix, weighted: readonly Float64Array[], planes: SquareMatrix): SquareMatrix => {
  const { size } = lower;
  const columns = Array.from({ length: size }, (_, at) => {
    const unit = new Float64Array(size);
    unit[at] = 1;
    return backward(lower, forward(lower, unit));
  });
  const taken = columns.map((_, at) => backward(planes, forward(planes, weighted.map((column) => column[at]!))));
  return squareMatrix(size, (row, column) => {
    let entry = columns[column]![row]!;
    for (const [at, each] of weighted.entries()) entry -= each[row]! * taken[column]![at]!;
    return entry;
  });
};

export const sightingsOf = ({ observed, corners }: Flight): readonly Sighting[] =>
  observed.map(({ left, right, turn }) => ({ left: corners[left]!, right: corners[right]!, turn }));

export const skirtModel = (flight: Flight, kind: SkirtKind, tape: number): SkirtModel => {
  const { observed } = flight;
  const sightings = sightingsOf(flight);
  const shared = covariance(kind);
  const isOnePiece = (one: number, other: number): boolean =>
    observed[one]!.kind === observed[other]!.kind && observed[one]!.row === observed[other]!.row;
  const lower = cholesky(
    squareMatrix(
      observed.length,
      (one, other) =>
        shared(sightings[one]!, sightings[other]!, isOnePiece(one, other)) + (one === other ? tape * observed[one]!.slant ** 2 : 0),
    ),
  );
  const columns = columnsOf(flight);
  const plane = columns.map((column) => Float64Array.from(sightings, column));
  const weighted = plane.map((column) => backward(lower, forward(lower, column)));
  const planes = cholesky(squareMatrix(columns.length, (one, other) => dot(plane[one]!, weighted[other]!)));
  const projection = projectionOf(lower, weighted, planes);
  return {
    projection,
    logSpread: logDeterminant(lower) + logDeterminant(planes),
    guess: (lengths, sighting) => {
      const toReadings = Float64Array.from(sightings, (each) => shared(sighting, each, false));
      const solved = backward(lower, forward(lower, toReadings));
      const here = columns.map((column) => column(sighting));
      const fitted = backward(planes, forward(planes, weighted.map((column) => dot(column, lengths))));
      const residual = times(projection, lengths);
      const beside = here.map((value, at) => value - dot(weighted[at]!, toReadings));
      return {
        value: dot(here, fitted) + dot(toReadings, residual),
        variance: shared(sighting, sighting, true) - dot(toReadings, solved) + dot(beside, backward(planes, forward(planes, beside))),
      };
    },
  };
};

/** A symmetric matrix times a column. */
export const times = ({ size, at }: SquareMatrix, column: ArrayLike<number>): Float64Array => {
  const found = new Float64Array(size);
  for (let row = 0; row < size; row += 1) {
    let sum = 0;
    for (let k = 0; k < size; k += 1) sum += at[row * size + k]! * column[k]!;
    found[row] = sum;
  }
  return found;
};
