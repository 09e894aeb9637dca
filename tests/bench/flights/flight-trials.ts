import { closureLimits } from "../../../src/solver/fit/closure-limits";
import { type Flight, flightReadings, type Observed, type PieceReading } from "../../../src/solver/fit/skirt-surface/flight-readings";
import type { Repair } from "../../../src/solver/fit/skirt-surface/repairs";
import { surfaceVerdict } from "../../../src/solver/fit/skirt-surface/surface-verdict";
import { closuresOf } from "../../../src/solver/fit/skirt-surface/tape-variance";
import { isProblem } from "../../../src/solver/problem";
import { type Draws, draws } from "./draws";
import { type Crookedness, madeUpFlight, readFlight, type Tape, type TrueStep, USUAL_CROOKEDNESS } from "./made-up-flight";

export const MISTAKES = ["nothing", "1 or 1/2", "1/4", "1/8", "diagonals", "back and front", "steps"] as const;
export type MistakeKind = (typeof MISTAKES)[number];

export interface TrialRow {
  readonly says: string;
  readonly steps: number;
  readonly tape: Tape;
  readonly crooked?: Partial<Crookedness>;
  readonly risers?: true;
}

/** What came of the trials of one cell, in counts. */
export interface TrialCount {
  readonly flights: number;
  readonly found: number;
  readonly named: number;
  /** Named, and the value right to one division. */
  readonly valued: number;
  readonly byClosure: number;
}

/** What was planted: which readings, and what would put them right. */
interface Planted {
  readonly kind: Repair["kind"];
  readonly readings: readonly string[];
  /** Of a value: what it was before. */
  readonly was?: number;
}

interface Readings {
  readonly treads: readonly PieceReading[];
  readonly risers: readonly PieceReading[];
}

/** Exchanges count where the two differ by so much: a smaller one harms nobody. */
const HARMFUL = 3 / 16;

const readingsOf = (steps: readonly TrueStep[], withRisers: boolean): Readings => ({
  treads: steps.map(({ run, back, front, diagonal, secondDiagonal }, row) => ({
    step: row + 1, distance: run, near: back, far: front, diagonal, secondDiagonal,
  })),
  risers: withRisers
    ? steps.map(({ height, top, bottom, riserDiagonal, riserSecondDiagonal }, row) => ({
        step: row + 1, distance: height, near: top, far: bottom, diagonal: riserDiagonal, secondDiagonal: riserSecondDiagonal,
      }))
    : [],
});

const PLACES = ["near", "far", "diagonal", "secondDiagonal"] as const;
const SIZES: Partial<Record<MistakeKind, readonly number[]>> = { "1 or 1/2": [1, 0.5], "1/4": [0.25], "1/8": [0.125] };

const name = (kind: "tread" | "riser", row: number, place: string): string => `${kind} ${row} ${place}`;

const withRow = (rows: readonly PieceReading[], row: number, changed: Partial<PieceReading>): readonly PieceReading[] =>
  rows.map((one, at) => (at === row ? { ...one, ...changed } : one));

const offBy = (draw: Draws, { treads, risers }: Readings, sizes: readonly number[]): readonly [Readings, Planted] => {
  const piece = draw.one(treads.length + risers.length);
  const [kind, row] = piece < treads.length ? (["tread", piece] as const) : (["riser", piece - treads.length] as const);
  const place = PLACES[draw.one(PLACES.length)]!;
  const by = sizes[draw.one(sizes.length)]! * (draw.even() < 0.5 ? -1 : 1);
  const table = kind === "tread" ? treads : risers;
  const was = table[row]![place]!;
  const changed = withRow(table, row, { [place]: was + by });
  const planted = { kind: "off", readings: [name(kind, row, place)], was } as const;
  return [kind === "tread" ? { treads: changed, risers } : { treads, risers: changed }, planted];
};

const swapped = (
  draw: Draws, { treads, risers }: Readings, one: "near" | "diagonal", other: "far" | "secondDiagonal",
): readonly [Readings, Planted] | undefined => {
  const row = draw.one(treads.length);
  const { [one]: first = 0, [other]: second = 0 } = treads[row]!;
  if (Math.abs(first - second) < HARMFUL) return undefined;
  return [
    { treads: withRow(treads, row, { [one]: second, [other]: first }), risers },
    { kind: "exchanged", readings: [name("tread", row, one), name("tread", row, other)] },
  ];
};

/** All a person writes down of a step stands under the next one, and the other way round. */
const stepsExchanged = (draw: Draws, { treads, risers }: Readings): readonly [Readings, Planted] | undefined => {
  const row = draw.one(treads.length - 1);
  const [lower, upper] = [treads[row]!, treads[row + 1]!];
  if (PLACES.every((place) => Math.abs(lower[place]! - upper[place]!) < HARMFUL)) return undefined;
  const changed = withRow(withRow(treads, row, { ...upper, step: row + 1 }), row + 1, { ...lower, step: row + 2 });
  const readings = PLACES.flatMap((place) =>
    lower[place] === upper[place] ? [] : [name("tread", row, place), name("tread", row + 1, place)],
  );
  return [{ treads: changed, risers }, { kind: "steps exchanged", readings }];
};

const planted = (draw: Draws, read: Readings, kind: MistakeKind): readonly [Readings, Planted | undefined] | undefined => {
  const sizes = SIZES[kind];
  if (sizes !== undefined) return offBy(draw, read, sizes);
  if (kind === "diagonals") return swapped(draw, read, "diagonal", "secondDiagonal");
  if (kind === "back and front") return swapped(draw, read, "near", "far");
  return kind === "steps" ? stepsExchanged(draw, read) : [read, undefined];
};

const nameOf = ({ kind, row, place }: Observed): string => name(kind, row, place);

const isRight = (repair: Repair, wanted: Planted, { observed }: Flight): boolean => {
  const readings = repair.changes.map(({ reading }) => nameOf(observed[reading]!));
  const isSame = readings.length === wanted.readings.length && wanted.readings.every((one) => readings.includes(one));
  return repair.kind === wanted.kind && isSame;
};

/** Right to one division of the tape, once it is rounded to the tape; an exchange that is named has its values. */
const isValued = ({ changes }: Repair, { was }: Planted, { observed }: Flight, { divisions }: Tape): boolean => {
  const [{ reading, to } = { reading: 0, to: 0 }] = changes;
  const likely = Math.round(Math.hypot(to, observed[reading]!.across) * divisions) / divisions;
  return was === undefined || Math.abs(likely - was) <= 1 / divisions + 1e-9;
};

type Outcome = Readonly<Record<Exclude<keyof TrialCount, "flights">, boolean>>;

const outcome = ({ treads, risers }: Readings, wanted: Planted | undefined, tape: Tape): Outcome => {
  const flight = flightReadings(treads, risers, "in");
  if (isProblem(flight)) throw new Error("a made-up flight has each step once");
  const { mistakes } = surfaceVerdict(flight, tape.divisions);
  const right = wanted === undefined ? undefined : mistakes.find(({ repair }) => isRight(repair, wanted, flight))?.repair;
  const closures = closuresOf(flight, flight.observed.map(({ length }) => length));
  return {
    found: mistakes.length > 0,
    named: right !== undefined,
    valued: right !== undefined && wanted !== undefined && isValued(right, wanted, flight, tape),
    byClosure: [...closures.values()].some((closure) => Math.abs(closure) > closureLimits(tape.divisions, "in").most),
  };
};

/** A cell is given up after so many flights for each one wanted. */
const MOST_DRAWN = 20;

/** So many flights of a row, each with one mistake of a kind; flights whose exchange would harm nobody are left out and made up for. */
export const trials = ({ steps, tape, crooked, risers }: TrialRow, mistake: MistakeKind, flights: number, seed: number): TrialCount => {
  const draw = draws(seed);
  const outcomes: Outcome[] = [];
  for (let drawn = 0; outcomes.length < flights && drawn < MOST_DRAWN * flights; drawn += 1) {
    const read = readFlight(draw, madeUpFlight(draw, steps, { ...USUAL_CROOKEDNESS, ...crooked }), tape);
    const given = planted(draw, readingsOf(read, risers === true), mistake);
    if (given !== undefined) outcomes.push(outcome(given[0], given[1], tape));
  }
  const count = (key: keyof Outcome): number => outcomes.filter((one) => one[key]).length;
  return {
    flights: outcomes.length, found: count("found"), named: count("named"), valued: count("valued"), byClosure: count("byClosure"),
  };
};
