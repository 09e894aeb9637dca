import { type Draw, draws, shareOf } from "./draws";

/**
 * Cutting jobs of the trade's sizes, invented and seeded, for the yield benchmark. They do not change: figures of different days
 * are figures of the same jobs. Lengths are whole marks of the unit, 64ths of an inch or tenths of a millimetre; prices whole cents.
 */
export interface GeneratedJob {
  readonly name: string;
  readonly unit: "in" | "mm";
  readonly kerf: number;
  /** Off each end of every stick. */
  readonly trim: number;
  readonly pieces: readonly { readonly length: number; readonly quantity: number }[];
  readonly stock: readonly { readonly length: number; readonly cents: number; readonly available: number; readonly owned: boolean }[];
}

const INCH = 64;
const SIXTEENTH = 4;
const FOOT = 12 * INCH;
const KERF = INCH / 8;
const TRIM = INCH / 4;

const CARPENTER_SEED = 61_000;
const CARPENTER_PIECES = 30;
const ESTIMATOR_SEED = 83_000;
const ESTIMATOR_PIECES = 2_000;
const ESTIMATOR_LENGTHS = 60;
const MEASURED_SEED = 9_000;

const wholeOf = (draw: Draw, least: number, below: number): number => least + Math.floor(draw() * (below - least));

/** A length in whole sixteenths of an inch. */
const lengthOf = (draw: Draw, leastInches: number, spanInches: number): number =>
  Math.round((leastInches + draw() * spanInches) * (INCH / SIXTEENTH)) * SIXTEENTH;

/** Half treads, a quarter short parts, a quarter long ones. */
const partLength = (
  draw: Draw,
  treads: readonly [number, number],
  short: readonly [number, number],
  long: readonly [number, number],
): number => {
  const share = draw();
  const [least, span] = share < 0.5 ? treads : share < 0.75 ? short : long;
  return lengthOf(draw, least, span);
};

/** Cents for a stick: longer ones cost a little more to the foot, and prices scatter by 3 %. */
const priceOf = (draw: Draw, feet: number, centsPerFoot: number): number =>
  Math.round(feet * centsPerFoot * (1 + 0.012 * Math.max(0, feet - 8)) * (0.97 + 0.06 * draw()));

const bought = (draw: Draw, feet: number, centsPerFoot: number) => ({
  length: feet * FOOT,
  cents: priceOf(draw, feet, centsPerFoot),
  available: Infinity,
  owned: false,
});

const counted = (lengths: readonly number[]): GeneratedJob["pieces"] => {
  const quantities = new Map<number, number>();
  for (const length of lengths) quantities.set(length, (quantities.get(length) ?? 0) + 1);
  return [...quantities].map(([length, quantity]) => ({ length, quantity }));
};

/** One stair: 30 pieces of 5 to 13 lengths, from two to six stock lengths; `number` from 1. */
export const carpenterJob = (number: number): GeneratedJob => {
  const draw = draws(CARPENTER_SEED + number);
  const feet = [8, 10, 12, 14, 16, 20].filter(() => draw() < 0.75);
  const offered = feet.length < 2 ? [8, 16] : feet;
  const centsPerFoot = wholeOf(draw, 180, 1_080);
  const stock = offered.map((each) => bought(draw, each, centsPerFoot));
  const lengths = Array.from({ length: wholeOf(draw, 5, 14) }, () => partLength(draw, [30, 18], [8, 24], [50, 45]));
  const pieces = Array.from({ length: CARPENTER_PIECES }, () => lengths[wholeOf(draw, 0, lengths.length)]!);
  return { name: `carpenter ${number}`, unit: "in", kerf: KERF, trim: TRIM, pieces: counted(pieces), stock };
};

/**
 * A house of stairs: 2,000 pieces of 60 lengths, eight stock lengths; every second job with two of them short and five kinds of offcuts on
 * hand.
 */
export const estimatorJob = (number: number): GeneratedJob => {
  const draw = draws(ESTIMATOR_SEED + number);
  const centsPerFoot = wholeOf(draw, 180, 1_080);
  const sold = [6, 8, 10, 12, 14, 16, 18, 20].map((feet) => bought(draw, feet, centsPerFoot));
  const isShort = number % 2 === 0;
  const short = sold.map((stick, index) => (index === 5 ? { ...stick, available: 60 } : index === 7 ? { ...stick, available: 25 } : stick));
  const offcuts = Array.from({ length: 5 }, () => ({
    length: lengthOf(draw, 24, 96),
    cents: 0,
    available: wholeOf(draw, 1, 7),
    owned: true,
  }));
  const weights = Array.from({ length: ESTIMATOR_LENGTHS }, () => 0.2 + draw());
  const weight = weights.reduce((sum, each) => sum + each, 0);
  const lengths = new Set<number>();
  while (lengths.size < ESTIMATOR_LENGTHS) lengths.add(partLength(draw, [28, 22], [7, 30], [50, 120]));
  let left = ESTIMATOR_PIECES;
  const pieces = [...lengths].map((length, index) => {
    const quantity = shareOf(left, ESTIMATOR_LENGTHS - index - 1, (ESTIMATOR_PIECES * weights[index]!) / weight);
    left -= quantity;
    return { length, quantity };
  });
  return { name: `estimator ${number}`, unit: "in", kerf: KERF, trim: TRIM, pieces, stock: isShort ? [...short, ...offcuts] : sold };
};

/** What is read off a tape, in its marks: how many an inch has, the kerf, the trim, and the lengths sold with their feet. */
interface Tape {
  readonly unit: GeneratedJob["unit"];
  readonly inch: number;
  readonly kerf: number;
  readonly trim: number;
  readonly sold: readonly { readonly length: number; readonly feet: number }[];
}

const TAPES: Readonly<Record<GeneratedJob["unit"], Tape>> = {
  in: { unit: "in", inch: INCH, kerf: KERF, trim: TRIM, sold: [8, 10, 12, 14, 16].map((feet) => ({ length: feet * FOOT, feet })) },
  mm: {
    unit: "mm",
    inch: 254,
    kerf: 32,
    trim: 60,
    sold: [2.4, 3, 3.6, 4.2, 4.8].map((metres) => ({ length: Math.round(metres * 10_000), feet: metres / 0.3048 })),
  },
};

/** Steps between walls, measured one by one and no two alike: treads 1 1/4 in longer than risers, walls that wander from step to step. */
const measuredJob = (unit: GeneratedJob["unit"], count: number, number: number): GeneratedJob => {
  const { inch, kerf, trim, sold } = TAPES[unit];
  const draw = draws(MEASURED_SEED + 100 * count + number);
  const centsPerFoot = wholeOf(draw, 180, 1_080);
  const some = sold.filter(() => draw() < 0.8);
  const stock = (some.length < 2 ? [sold[0]!, sold[2]!] : some).map(({ length, feet }) => ({
    length, cents: priceOf(draw, feet, centsPerFoot), available: Infinity, owned: false,
  }));
  let between = 34 + 10 * draw();
  const lengths = new Set<number>();
  for (let step = 0; lengths.size < count; step += 1) {
    // another stair every thirty pieces
    between = step % CARPENTER_PIECES === 0 ? 34 + 10 * draw() : between + 0.25 * (draw() - 0.5);
    lengths.add(Math.round((between + (step % 2 === 0 ? 1.25 : 0) + 0.2 * (draw() - 0.5)) * inch));
  }
  return { name: `measured ${count} ${unit} ${number}`, unit, kerf, trim, pieces: counted([...lengths]), stock };
};

export const measuredJobs =
  (unit: GeneratedJob["unit"], count: number) =>
  (number: number): GeneratedJob =>
    measuredJob(unit, count, number);
