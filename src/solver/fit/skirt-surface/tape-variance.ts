import type { Flight, Observed } from "./flight-readings";

/** How far a careful hand, and the most careless one, is off beside the rounding to a division: root mean square in inches, by trial. */
const CAREFUL_HAND = 0.012;
const MOST_OFF = 0.05;
/** The middle closure, less its sign, for each inch a reading is off: four readings, two of them slanted, and 0.6745 of a normal. */
const MIDDLE_CLOSURE = 1.396;

/** What two diagonals of each piece that has both disagree by, in inches; `lengths` are those of the readings. */
export const closuresOf = ({ observed }: Flight, lengths: ArrayLike<number>): ReadonlyMap<string, number> => {
  const pieces = new Map<string, Partial<Record<Observed["place"], number>>>();
  for (const [place, { kind, row, place: name }] of observed.entries()) {
    const key = `${kind} ${row}`;
    pieces.set(key, { ...pieces.get(key), [name]: lengths[place]! });
  }
  return new Map(
    [...pieces].flatMap(([key, { near, far, diagonal, secondDiagonal }]) =>
      near === undefined || far === undefined || diagonal === undefined || secondDiagonal === undefined
        ? []
        : [[key, diagonal - far - near + secondDiagonal] as const],
    ),
  );
};

/**
 * Variance of one reading in square inches: rounding to a division, and the hand. A careless hand is learnt from its own closures, by their
 * middle one, which a single misreading does not move.
 */
export const tapeVariance = (flight: Flight, divisionsOfAnInch: number): number => {
  const rounding = 1 / (12 * divisionsOfAnInch * divisionsOfAnInch);
  const sizes = [...closuresOf(flight, flight.observed.map(({ length }) => length)).values()].map(Math.abs).sort((a, b) => a - b);
  const half = sizes.length / 2;
  const median = sizes.length === 0 ? 0 : (sizes[Math.ceil(half) - 1]! + sizes[Math.floor(half)]!) / 2;
  const seen = Math.min(MOST_OFF ** 2, (median / MIDDLE_CLOSURE) ** 2) - rounding;
  return rounding + Math.max(CAREFUL_HAND ** 2, seen);
};
