import { backward, cholesky, forward, squareMatrix } from "./cholesky";
import type { Flight, Observed, PieceKind } from "./flight-readings";
import { type Repair, type Repairs, repairsOf } from "./repairs";
import { SKIRT_KINDS } from "./skirt-kinds";
import { type SkirtModel, skirtModel, times } from "./skirt-model";
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
export const MOST_STEPS = 30;

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
  /** The kinds of skirt it may be, and how likely each is; none where the readings hold no planes. */
  readonly skirts: readonly { readonly model: SkirtModel; readonly share: number }[];
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

/** The readings seen against each kind of skirt, with its restricted likelihood, in logarithms, once the best repair is granted. */
const looks = (flight: Flight, models: readonly SkirtModel[], lengths: Float64Array, settled: ReadonlySet<number>): readonly Look[] =>
  models.map((model): Look => {
    const found = repairsOf(flight, model.projection, lengths, settled);
    const gain = found.repairs[0]?.gain ?? 0;
    return { ...found, model, score: -(model.logSpread + found.sum - Math.max(0, gain)) / 2 };
  });

const likeliest = (seen: readonly Look[]): Look => seen.reduce((one, other) => (other.score > one.score ? other : one));

/** Each kind of skirt with its share of what they are all likely to be. */
const shares = (seen: readonly Look[]): SurfaceVerdict["skirts"] => {
  const most = likeliest(seen).score;
  const weights = seen.map(({ score }) => Math.exp(score - most));
  const all = weights.reduce((sum, weight) => sum + weight, 0);
  return seen.map(({ model }, at) => ({ model, share: weights[at]! / all }));
};

const isOneOf = (repair: Repair, rival: Repair | undefined): boolean =>
  rival !== undefined && rival.changes.length === repair.changes.length &&
  repair.changes.every(({ reading }) => rival.changes.some((other) => other.reading === reading));

/** What was as likely as an earlier mistake and turns out to be one itself was no other explanation of it: both are wrong. */
const dropRival = (mistakes: Mistake[], named: Repair): void => {
  for (const [at, { repair, rival }] of mistakes.entries()) if (isOneOf(named, rival)) mistakes[at] = { repair };
};

/** Values that are off are found together, each as if none of the others had been read: the first was found beside a wrong one. */
const freeTogether = ({ projection }: SkirtModel, lengths: Float64Array, off: readonly number[]): void => {
  const residual = times(projection, lengths);
  const lower = cholesky(squareMatrix(off.length, (one, other) => projection.at[off[one]! * projection.size + off[other]!]!));
  const shift = backward(lower, forward(lower, off.map((reading) => residual[reading]!)));
  for (const [at, reading] of off.entries()) lengths[reading]! -= shift[at]!;
};

const asSettled = (mistake: Mistake, lengths: ArrayLike<number>): Mistake => ({
  ...mistake,
  repair: { ...mistake.repair, changes: mistake.repair.changes.map(({ reading }) => ({ reading, to: lengths[reading]! })) },
});

/**
 * Which readings of a flight do not lie on two slowly bending skirts. Each mistake found is put right on paper and the readings are looked
 * at again; the readings themselves are never changed.
 */
export const surfaceVerdict = (flight: Flight, divisionsOfAnInch: number): SurfaceVerdict => {
  const tape = tapeVariance(flight, divisionsOfAnInch);
  // Runs of next to nothing leave planes that nothing holds.
  const models = SKIRT_KINDS.map((kind) => skirtModel(flight, kind, tape)).filter(({ logSpread }) => Number.isFinite(logSpread));
  const lengths = Float64Array.from(flight.observed, ({ length }) => length);
  const settled = new Set<number>();
  const mistakes: Mistake[] = [];
  if (models.length === 0) return { mistakes, gain: 0, lengths, skirts: [] };
  for (;;) {
    const seen = looks(flight, models, lengths, settled);
    const { repairs, model } = likeliest(seen);
    const [best, second] = repairs;
    if (best === undefined || best.gain <= NAMED_FROM || mistakes.length === MOST_MISTAKES)
      return { mistakes: mistakes.map((one) => asSettled(one, lengths)), gain: best?.gain ?? 0, lengths, skirts: shares(seen) };
    dropRival(mistakes, best);
    mistakes.push({ repair: best, ...(second !== undefined && best.gain - second.gain < AS_LIKELY ? { rival: second } : {}) });
    for (const { reading, to } of best.changes) {
      lengths[reading] = to;
      settled.add(reading);
    }
    const off = mistakes.filter(({ repair }) => repair.kind === "off").flatMap(({ repair }) => repair.changes);
    freeTogether(model, lengths, off.map(({ reading }) => reading));
  }
};
