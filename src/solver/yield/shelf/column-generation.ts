import { type Filling } from "./bundles";
import { provenLeast, wholeUnits, worthSteps } from "./certificate";
import { type Effort, isSpent } from "./effort";
import { type Knapsack } from "./knapsack";
import { type Limits, type LinearAnswer, type Master, type MasterMaker } from "./master";
import { type Pattern, patternKey } from "./pattern";
import { piecesWanted, type Shelf, takesKind } from "./shelf";

export interface Generated {
  readonly answer: LinearAnswer;
  /** Worths that prove the most, in steps of money, and what they prove. */
  readonly worth: readonly number[];
  readonly least: number;
  readonly patterns: readonly Pattern[];
  /** No further pattern can make the linear plan cheaper. */
  readonly isComplete: boolean;
}

/** Reduced costs below this share of a price are none; the master's own arithmetic is no finer. */
const PRICE_DUST = 1e-9;
/** Keeps a scaled worth on the safe side of its rounding. */
const SAFE_SHARE = 1 - 1e-12;
const TIMES_DUST = 1e-6;
/** Kinds from which a round looks for patterns of different pieces, and how often. */
const MANY_KINDS = 40;
const MOST_PASSES = 10;

/** For each kind of piece the stick kind that gives it at least cost, filled with as many as are wanted. */
const firstPatterns = (shelf: Shelf, limits: Limits): Pattern[] =>
  shelf.kinds.flatMap(({ width, wanted }, kind) => {
    let best: Pattern | undefined;
    let least = Infinity;
    for (const [stick, { holds, price }] of shelf.sticks.entries()) {
      const count = Math.min(wanted, Math.floor(holds / width));
      if (count === 0 || limits.most[stick] === 0 || price / count >= least || !takesKind(shelf, stick, kind)) continue;
      least = price / count;
      best = { stick, kinds: [kind], counts: [count] };
    }
    return best === undefined ? [] : [best];
  });

/** Worths made smaller by one share, so that no stick of which any number can be had holds more than its price. */
const scaled = (
  shelf: Shelf,
  limits: Limits,
  steps: number,
  worth: Float64Array,
  held: readonly number[],
  pieces: number,
): { worth: Float64Array; held: number[] } => {
  let share = 1;
  for (const [stick, { price }] of shelf.sticks.entries()) {
    if (limits.most[stick]! >= pieces && held[stick]! > price * steps) share = Math.min(share, (price * steps) / held[stick]!);
  }
  if (share === 1) return { worth, held: [...held] };
  return { worth: worth.map((each) => Math.floor(each * share * SAFE_SHARE)), held: held.map((each) => Math.ceil(each * share)) };
};

/** What worths prove, made smaller as far as the sticks ask for it, and what each stick holds of them as they were given. */
export const provenBy = (
  shelf: Shelf,
  limits: Limits,
  knapsack: Knapsack,
  given: readonly number[],
  effort: Effort,
): Pick<Generated, "worth" | "least"> & { readonly fillings: readonly Filling[] } => {
  const steps = worthSteps(shelf);
  const fillings = knapsack.fill(
    given,
    shelf.kinds.map((kind) => kind.wanted),
    effort,
  );
  const safe = scaled(
    shelf,
    limits,
    steps,
    Float64Array.from(given),
    fillings.map((filling) => filling.worth),
    piecesWanted(shelf),
  );
  return {
    worth: [...safe.worth],
    least: provenLeast(
      shelf,
      limits,
      steps,
      safe.worth,
      safe.held.map((each) => ({ worth: each })),
    ),
    fillings,
  };
};

/** The patterns of a linear plan, each once. */
interface Known {
  readonly patterns: Pattern[];
  readonly add: (pattern: Pattern) => boolean;
}

const knownTo = (master: Master): Known => {
  const seen = new Set<string>();
  const patterns: Pattern[] = [];
  const add = (pattern: Pattern): boolean => {
    const key = patternKey(pattern);
    if (seen.has(key)) return false;
    seen.add(key);
    patterns.push(pattern);
    master.add(pattern);
    return true;
  };
  return { patterns, add };
};

/** What the linear plan says of the sticks: by how much a filling is worth more than its stick, as a share of its price. */
const gainOf =
  ({ sticks }: Shelf, limits: Limits, { stickWorth }: LinearAnswer, steps: number) =>
  (filling: Filling, stick: number): number => {
    const { price } = sticks[stick]!;
    if (limits.most[stick] === 0 || filling.kinds.length === 0) return 0;
    return (filling.worth / steps + stickWorth[stick]! - price) / Math.max(1, price);
  };

/**
 * Adds the fillings that are worth more than their sticks, if there are any that are new. Of many kinds one filling tells little: then also
 * those of the pieces that the best one leaves, and so on, so that every piece meets new patterns.
 */
const addWorthy = (
  { add }: Known, { kinds }: Shelf, knapsack: Knapsack, first: readonly Filling[], worth: Float64Array,
  gain: (filling: Filling, stick: number) => number, effort: Effort,
): boolean => {
  const left = kinds.map((kind) => kind.wanted);
  let fillings = first;
  let isNew = false;
  for (let pass = 0; pass < (kinds.length < MANY_KINDS ? 1 : MOST_PASSES); pass += 1) {
    if (pass > 0) fillings = knapsack.fill(worth, left, effort);
    let best: Filling | undefined;
    let most = PRICE_DUST;
    for (const [stick, filling] of fillings.entries()) {
      const each = gain(filling, stick);
      if (each > PRICE_DUST && add({ stick, kinds: filling.kinds, counts: filling.counts })) isNew = true;
      if (each <= most) continue;
      most = each;
      best = filling;
    }
    if (best === undefined || isSpent(effort)) break;
    for (const [place, kind] of best.kinds.entries()) left[kind]! -= best.counts[place]!;
  }
  return isNew;
};

/**
 * The linear plan by column generation: patterns enter while the knapsack finds one that is worth more than its price (Gilmore and
 * Gomory 1961, 1963, from memory). Each round's worths, in whole steps, prove a least cost; the best of them is kept. Ends early where
 * `isEnough`.
 */
export const columnsGenerated = (
  shelf: Shelf,
  limits: Limits,
  knapsack: Knapsack,
  carried: readonly Pattern[],
  masterOf: MasterMaker,
  effort: Effort,
  isEnough: (least: number, answer: LinearAnswer) => boolean,
): Generated => {
  const { kinds } = shelf;
  const steps = worthSteps(shelf);
  const pieces = piecesWanted(shelf);
  const wanted = kinds.map((kind) => kind.wanted);
  const master: Master = masterOf(shelf, limits);
  const known = knownTo(master);
  for (const pattern of [...firstPatterns(shelf, limits), ...carried]) known.add(pattern);

  let best: Float64Array = new Float64Array(kinds.length);
  let least = 0;
  let answer: LinearAnswer;
  let isComplete = false;
  for (;;) {
    answer = master.solve(effort);
    const { worth: linear } = answer;
    const worth = Float64Array.from(kinds, (_, kind) => Math.max(0, Math.floor(linear[kind]! * steps + TIMES_DUST)));
    const fillings = knapsack.fill(worth, wanted, effort);
    const safe = scaled(shelf, limits, steps, worth, fillings.map((filling) => filling.worth), pieces);
    const proven = provenLeast(shelf, limits, steps, safe.worth, safe.held.map((each) => ({ worth: each })));
    if (proven > least) {
      least = proven;
      best = safe.worth;
    }
    if (!addWorthy(known, shelf, knapsack, fillings, worth, gainOf(shelf, limits, answer, steps), effort)) {
      isComplete = true;
      break;
    }
    if (isSpent(effort) || isEnough(least, answer)) break;
  }
  master.close();
  return { answer, worth: [...best], least, patterns: known.patterns, isComplete };
};

/** Enough where the proven cost, in whole units of money, is that of the linear plan: no round can prove more. */
export const meetsLinearCost =
  (shelf: Shelf) =>
  (least: number, { cost, shortage }: LinearAnswer): boolean =>
    shortage < TIMES_DUST && wholeUnits(least, worthSteps(shelf)) >= Math.ceil(cost - PRICE_DUST * Math.max(1, cost));
