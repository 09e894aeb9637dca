import type { Flight, Observed, PieceKind } from "./flight-readings";
import { type Repair, type Repairs, repairsOf } from "./repairs";
import { SKIRT_KINDS } from "./skirt-kinds";
import { type SkirtModel, skirtModel } from "./skirt-model";
import { tapeVariance } from "./tape-variance";

/** A repair is named from this gain on. By trial on made-up flights. */
const NAMED_FROM = 7;
/** A second explanation within this of the best is as likely as not. */
const AS_LIKELY = 3;
/** Mistakes looked for one after the other. */
const MOST_MISTAKES = 4;
/** Steps with both lengths and a diagonal without which nothing is said. */
export const LEAST_STEPS = 4;
/** Steps a flight has at most: with more, a table is no single flight. */
export const MOST_STEPS = 40;

export interface Mistake {
  readonly repair: Repair;
  /** Another repair that explains the readings nearly as well. */
  readonly rival?: Repair;
}

export interface SurfaceVerdict {
  readonly mistakes: readonly Mistake[];
  /** Greatest gain of any repair in the last look. */
  readonly gain: number;
  /** Lengths in inches with every mistake put right on paper. */
  readonly lengths: Float64Array;
  readonly model: SkirtModel;
}

/** Pieces of a kind whose both lengths and a diagonal were read. */
export const stepsWithDiagonals = ({ observed }: Flight, kind: PieceKind): number => {
  const rows = (isOne: (one: Observed) => boolean): ReadonlySet<number> =>
    new Set(observed.filter((one) => one.kind === kind && isOne(one)).map(({ row }) => row));
  const [near, far] = [rows(({ place }) => place === "near"), rows(({ place }) => place === "far")];
  return [...rows(({ turn }) => turn !== 0)].filter((row) => near.has(row) && far.has(row)).length;
};

interface Look extends Repairs {
  readonly model: SkirtModel;
  readonly score: number;
}

/** The kind of skirt that is likeliest once the best repair is granted: restricted likelihood, less twice its constant. */
const look = (flight: Flight, models: readonly SkirtModel[], lengths: Float64Array, settled: ReadonlySet<number>): Look =>
  models
    .map((model): Look => {
      const found = repairsOf(flight, model.projection, lengths, settled);
      const gain = found.repairs[0]?.gain ?? 0;
      return { ...found, model, score: -(model.logSpread + found.sum - Math.max(0, gain)) / 2 };
    })
    .reduce((one, other) => (other.score > one.score ? other : one));

const isOneOf = (repair: Repair, rival: Repair | undefined): boolean =>
  rival !== undefined && rival.changes.length === repair.changes.length &&
  repair.changes.every(({ reading }) => rival.changes.some((other) => other.reading === reading));

/** What was as likely as an earlier mistake and turns out to be one itself was no other explanation of it: both are wrong. */
const dropRival = (mistakes: Mistake[], named: Repair): void => {
  for (const [at, { repair, rival }] of mistakes.entries()) if (isOneOf(named, rival)) mistakes[at] = { repair };
};

/**
 * Which readings of a flight do not lie on two slowly bending skirts. Each mistake found is put right on paper and the readings are looked
 * at again; the readings themselves are never changed.
 */
export const surfaceVerdict = (flight: Flight, divisionsOfAnInch: number): SurfaceVerdict => {
  const tape = tapeVariance(flight, divisionsOfAnInch);
  const models = SKIRT_KINDS.map((kind) => skirtModel(flight, kind, tape));
  const lengths = Float64Array.from(flight.observed, ({ length }) => length);
  const settled = new Set<number>();
  const mistakes: Mistake[] = [];
  for (;;) {
    const { repairs, model } = look(flight, models, lengths, settled);
    const [best, second] = repairs;
    if (best === undefined || best.gain <= NAMED_FROM || mistakes.length === MOST_MISTAKES)
      return { mistakes, gain: best?.gain ?? 0, lengths, model };
    dropRival(mistakes, best);
    mistakes.push({ repair: best, ...(second !== undefined && best.gain - second.gain < AS_LIKELY ? { rival: second } : {}) });
    for (const { reading, to } of best.changes) {
      lengths[reading] = to;
      settled.add(reading);
    }
  }
};
