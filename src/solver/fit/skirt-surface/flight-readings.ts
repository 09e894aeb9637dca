import { lengthOf, measure, type Unit } from "../../length/length";
import { type Problem, problem } from "../../problem";

/** A tread or riser as read, on two lines: the near one (its back, or its top) and the far one (its front, or its bottom). */
export interface PieceReading {
  readonly step?: string | number;
  /** Between the two lines; undefined where nobody read it. */
  readonly distance?: number;
  readonly near?: number;
  readonly far?: number;
  /** Near left to far right. */
  readonly diagonal?: number;
  /** Near right to far left. */
  readonly secondDiagonal?: number;
}

export type PieceKind = "tread" | "riser";

/** Lengths of one piece that are a reading each. */
export const PLACES = ["near", "far", "diagonal", "secondDiagonal"] as const;
export type Place = (typeof PLACES)[number];

/** A corner that both skirts have, in inches: how far up the stair, level, and how high. */
export interface Corner {
  readonly along: number;
  readonly high: number;
}

/**
 * One length of one piece, as a difference of the two skirts: the right skirt at one corner less the left one at another. A diagonal counts
 * as the leg that is left when the distance across is taken off it. In inches.
 */
export interface Observed {
  readonly kind: PieceKind;
  /** Place of the piece in its own table. */
  readonly row: number;
  readonly place: Place;
  readonly length: number;
  /** Distance between the two lines of a diagonal, 0 for a length along one of them. */
  readonly across: number;
  /** What the piece's being out of square adds: so much for each radian. */
  readonly turn: number;
  /** How much an error of the tape on a diagonal counts for on its leg. */
  readonly slant: number;
  readonly left: number;
  readonly right: number;
}

/** The readings of one flight as the two skirts are seen through them. */
export interface Flight {
  readonly observed: readonly Observed[];
  readonly corners: readonly Corner[];
  /** Where the next tread's front and back would stand, over the last one read. */
  readonly next: { readonly front: Corner; readonly back: Corner };
}

/** A rise nobody read, in inches: the highest of a dwelling, IRC 2021 R311.7.5.1. Places of corners hardly turn on it. */
const USUAL_RISE = 7.75;
/** A run nobody read, in inches: common practice, no source. */
const USUAL_RUN = 10;

const middle = (numbers: readonly number[], otherwise: number): number => {
  const sorted = [...numbers].sort((one, other) => one - other);
  return sorted[Math.floor(sorted.length / 2)] ?? otherwise;
};

const known = (values: readonly (number | undefined)[]): readonly number[] => values.filter((value) => value !== undefined);

const stepNumber = (step: string | number | undefined): number =>
  step === undefined || String(step).trim() === "" ? Number.NaN : Number(step);

/** Numbers further apart are no steps of one flight. */
const MOST_APART = 100;

const isNumbered = (steps: readonly number[]): boolean =>
  steps.every(Number.isInteger) && Math.max(...steps) - Math.min(...steps) <= MOST_APART;

/** Steps by number where every reading has a whole one; otherwise readings count from the bottom as they stand. */
const stepsOf = (tables: readonly (readonly PieceReading[])[]): readonly (readonly number[])[] | Problem<"step-twice"> => {
  const numbered = tables.map((readings) => readings.map(({ step }) => stepNumber(step)));
  if (!isNumbered(numbered.flat())) return tables.map((readings) => readings.map((_, row) => row + 1));
  for (const steps of numbered) {
    const twice = steps.find((step, row) => steps.indexOf(step) !== row);
    if (twice !== undefined) return problem("step-twice", { step: twice });
  }
  return numbered;
};

interface Stepped {
  readonly step: number;
  readonly run: number;
  readonly rise: number;
}

/** Feet of the risers by step, and the corners of a step from its foot; steps in between that nobody read are like the others. */
const placesOf = (steps: readonly Stepped[], run: number, rise: number) => {
  const feet = new Map<number, Corner>();
  let foot: Corner = { along: 0, high: 0 };
  let last: Stepped | undefined;
  for (const each of steps) {
    if (last !== undefined) {
      const between = each.step - last.step - 1;
      foot = { along: foot.along + last.run + between * run, high: foot.high + last.rise + between * rise };
    }
    feet.set(each.step, foot);
    last = each;
  }
  const front = (at: Corner, { rise: up }: Stepped): Corner => ({ along: at.along, high: at.high + up });
  const back = (at: Corner, { run: deep, rise: up }: Stepped): Corner => ({ along: at.along + deep, high: at.high + up });
  return { feet, front, back };
};

/** A piece with the corners at the ends of its two lines. */
interface Placed {
  readonly kind: PieceKind;
  readonly row: number;
  readonly near: number;
  readonly far: number;
}

/** A length as a reading of the skirts; undefined where it was not read. */
const observedAt = (reading: PieceReading, place: Place, piece: Placed): Observed | undefined => {
  const { distance, near = 0, far = 0 } = reading;
  const read = reading[place];
  const { kind, row } = piece;
  if (read === undefined) return undefined;
  if (place === "near" || place === "far")
    return { kind, row, place, length: read, across: 0, turn: 0, slant: 1, left: piece[place], right: piece[place] };
  const level = Math.max(near, far);
  // Without the distance a diagonal says nothing; without a length beside it there is nothing to hold it against.
  if (distance === undefined || level <= 0) return undefined;
  const isFirst = place === "diagonal";
  return {
    kind, row, place,
    length: Math.sqrt(Math.max(0, read * read - distance * distance)),
    across: distance,
    turn: isFirst ? distance : -distance,
    slant: Math.hypot(level, distance) / level,
    left: isFirst ? piece.near : piece.far,
    right: isFirst ? piece.far : piece.near,
  };
};

const inInches = (reading: PieceReading, inch: number): PieceReading => ({
  ...reading,
  ...Object.fromEntries((["distance", ...PLACES] as const).flatMap((key) => {
    const value = reading[key];
    return value === undefined ? [] : [[key, value / inch]];
  })),
});

/** How many of a unit an inch is. */
export const inchIn = (unit: Unit): number => measure(lengthOf(1, "in"), unit);

/**
 * The corners run up the stair in a zig-zag: the front of tread k is the top of riser k, its back the foot of riser k + 1. Treads and
 * risers are taken as read at the same faces.
 */
export const flightReadings = (
  treads: readonly PieceReading[], risers: readonly PieceReading[], unit: Unit,
): Flight | Problem<"step-twice"> => {
  const inch = inchIn(unit);
  const tables = { tread: treads.map((one) => inInches(one, inch)), riser: risers.map((one) => inInches(one, inch)) };
  const found = stepsOf([treads, risers]);
  if ("problem" in found) return found;
  const steps = { tread: found[0]!, riser: found[1]! };
  const run = middle(known(tables.tread.map(({ distance }) => distance)), USUAL_RUN);
  const rise = middle(known(tables.riser.map(({ distance }) => distance)), USUAL_RISE);
  const distanceOf = (kind: PieceKind, step: number): number | undefined => tables[kind][steps[kind].indexOf(step)]?.distance;
  const stepped = [...new Set([...steps.tread, ...steps.riser])]
    .sort((one, other) => one - other)
    .map((step): Stepped => ({ step, run: distanceOf("tread", step) ?? run, rise: distanceOf("riser", step) ?? rise }));
  const { feet, front, back } = placesOf(stepped, run, rise);
  const backs = new Map<number, Corner>();
  const corners: Corner[] = [];
  const places = new Map<string, number>();
  // The first to name a corner says where it is; all that stand on it share it.
  const corner = (step: number, line: "front" | "back", at: Corner): number => {
    const key = `${line} ${step}`;
    const place = places.get(key) ?? corners.push(at) - 1;
    places.set(key, place);
    return place;
  };
  const observed = (["tread", "riser"] as const).flatMap((kind) =>
    tables[kind].flatMap((reading, row) => {
      const step = steps[kind][row]!;
      const size = stepped.find((one) => one.step === step)!;
      const foot = feet.get(step)!;
      if (kind === "tread") backs.set(step, back(foot, size));
      const top = corner(step, "front", front(foot, size));
      const other = kind === "tread" ? corner(step, "back", back(foot, size)) : corner(step - 1, "back", foot);
      const piece = { kind, row, ...(kind === "tread" ? { near: other, far: top } : { near: top, far: other }) };
      return PLACES.flatMap((place) => observedAt(reading, place, piece) ?? []);
    }),
  );
  const last = Math.max(...steps.tread);
  const usual = { step: last + 1, run, rise: distanceOf("riser", last + 1) ?? rise };
  const above = backs.get(last) ?? { along: 0, high: 0 };
  const next = [corner(last + 1, "front", front(above, usual)), corner(last + 1, "back", back(above, usual))] as const;
  return { observed, corners, next: { front: corners[next[0]]!, back: corners[next[1]]! } };
};
