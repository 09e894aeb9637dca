import { RADIANS_PER_DEGREE } from "../degrees";
import { type Length, lengthOf } from "../length/length";
import { isProblem, type Problem, problem } from "../problem";
import { STAIR_LABELS } from "../stair-labels";
import { words } from "../words";
import { pitch } from "./pitch";
import { riserCount } from "./riser-count";
import { type DefaultedLabel, type FixedLabel, STAIR_DEFAULTS } from "./stair-defaults";
import type { LabelValue, StairFacts } from "./stair-facts";
import { throat } from "./throat";

/**
 * Labels that were left out and why their defaults are what they are, in words; for risers, that of the greatest rise they were counted
 * from.
 */
export type Assumed = ReadonlyMap<string, string>;

type Labels = typeof STAIR_LABELS;

interface ForTheCheck {
  readonly topic: string;
  readonly readBy: readonly ["CHECK", "ALTERNATES"];
  readonly fact?: never;
}

/** Labels that are not only for the check. */
type StairLabels = { [Name in keyof StairFacts]-?: Labels[Name] extends ForTheCheck ? never : Name }[keyof StairFacts];

/** A stair with every default in place and what follows from rise and run; what the facts do not give stays unknown. */
export type Stair = { readonly [Name in DefaultedLabel]: LabelValue<Labels[Name]> } & {
  readonly [Name in Exclude<StairLabels, DefaultedLabel>]: LabelValue<Labels[Name]> | undefined;
} & { readonly assumed: Assumed };

export type StairProblem = "labels-disagree" | "treads-disagree" | "rise-over-greatest" | "run-without-treads" | "available-run-short";

/** Labels may differ by this much and still say the same: a mark on the finest tape. */
export const AGREEMENT = lengthOf(0.015625, "in");

/** Two lengths that say the same. */
export const isWithinAgreement = (one: Length, other: Length): boolean => one.minus(other).abs().lte(AGREEMENT);

const disagreeing = (label: string, value: Length | number, other: string, otherValue: Length | number): Problem<StairProblem> =>
  problem("labels-disagree", { label, value, other, otherValue, within: AGREEMENT });

interface Labelled {
  readonly label: string;
  readonly value: Length | undefined;
}

/** The first value given, or the two that disagree. */
const agreed = (...values: readonly Labelled[]): Length | undefined | Problem<StairProblem> => {
  const known = values.filter((one): one is { label: string; value: Length } => one.value !== undefined);
  const [first] = known;
  if (first === undefined) return undefined;
  const other = known.find(({ value }) => !isWithinAgreement(first.value, value));
  return other === undefined
    ? first.value
    : disagreeing(first.label, first.value, other.label, other.value);
};

const times = (length: Length | undefined, count: number | undefined): Length | undefined =>
  length === undefined || count === undefined ? undefined : length.times(count);

const over = (length: Length | undefined, count: number | undefined): Length | undefined =>
  length === undefined || count === undefined || count === 0 ? undefined : length.div(count);

const FOLLOWS_FROM_RISERS = "it follows from the risers assumed";

/** The risers named, or those the treads named make. */
const risersNamed = ({ risers, treads }: StairFacts, topTread: Stair["topTread"]): number | undefined =>
  risers ?? (treads === undefined || topTread === "flush" ? treads : treads + 1);

/** Risers by count, by rise, by the treads, or the fewest the greatest rise allows. */
const risersOf = (
  facts: StairFacts, totalRise: Length | undefined, named: number | undefined, assumed: Map<string, string>,
): number | undefined => {
  if (facts.risers !== undefined) return facts.risers;
  if (totalRise === undefined) return named;
  if (facts.unitRise !== undefined) return totalRise.div(facts.unitRise).toDecimalPlaces(0).toNumber();
  if (named !== undefined) return named;
  if (facts.maxRise === undefined) {
    assumed.set("risers", STAIR_LABELS.maxRise.default.because);
    assumed.set("unitRise", FOLLOWS_FROM_RISERS);
  }
  return riserCount(totalRise, facts.maxRise ?? STAIR_DEFAULTS.maxRise);
};

/** Says where the run follows from something nobody gave. */
const assumeRun = (facts: StairFacts, assumed: Map<string, string>): void => {
  if (facts.run !== undefined || facts.treadDepth !== undefined) return;
  if (facts.boardDepth !== undefined) {
    if (assumed.has("nosing")) assumed.set("run", "it is the board depth less the nosing assumed");
  } else if (assumed.has("risers")) assumed.set("run", FOLLOWS_FROM_RISERS);
};

const runOf = (facts: StairFacts, treads: number | undefined, nosing: Length): Length | undefined | Problem<StairProblem> => {
  const given = agreed(
    { label: "run", value: facts.run },
    { label: "tread depth", value: facts.treadDepth },
    { label: "board depth less nosing", value: facts.boardDepth?.minus(nosing) },
    { label: "total run over the treads", value: over(facts.totalRun, treads) },
  );
  if (isProblem(given)) return given;
  const spread = facts.totalRun ?? facts.availableRun;
  if (given === undefined && spread !== undefined && (treads ?? 0) === 0) {
    return treads === undefined ? undefined : problem("run-without-treads", { given: spread });
  }
  if (given !== undefined) {
    const needed = times(given, treads);
    if (facts.availableRun !== undefined && needed !== undefined && needed.minus(facts.availableRun).gt(AGREEMENT)) {
      return problem("available-run-short", { available: facts.availableRun, needed, run: given });
    }
    return given;
  }
  return over(facts.availableRun, treads);
};

/** Labels that follow from the others. */
type DerivedLabel = { [Name in StairLabels]: Labels[Name] extends { readonly follows: true } ? Name : never }[StairLabels];

/** What follows from the rise and the run of a stair. */
type Derived = Pick<Stair, DerivedLabel>;

type Filled = Pick<Stair, FixedLabel>;

const derived = (facts: StairFacts, filled: Filled, unitRise: Length, run: Length): Derived => {
  const { headroom, floorThickness, opening } = facts;
  const { treadThickness, lowerBuildUp, upperBuildUp, nosing, topTread, stringerBoard } = filled;
  const under = headroom === undefined || floorThickness === undefined ? undefined : headroom.plus(floorThickness);
  const needed = under?.times(run).div(unitRise);
  const plumb = opening?.times(unitRise).div(run);
  return {
    boardDepth: run.plus(nosing),
    pitch: pitch(unitRise.toNumber(), run.toNumber()),
    slopeLength: unitRise.pow(2).plus(run.pow(2)).sqrt(),
    throat: throat(stringerBoard, unitRise, run),
    drop: treadThickness.minus(lowerBuildUp),
    hang: topTread === "floor" ? unitRise.minus(upperBuildUp).plus(treadThickness) : treadThickness.minus(upperBuildUp),
    "2R+T": unitRise.times(2).plus(run),
    openingNeededFromTheLandingNosing: needed,
    openingNeededFromTheFace: needed?.plus(nosing),
    headroomFound: floorThickness === undefined ? undefined : plumb?.minus(floorThickness),
  };
};

/** Digits of a tangent that mean anything. */
const TANGENT_DIGITS = 15;

/** What follows from rise and run; labels of it that were given too must agree. */
const agreeing = (facts: StairFacts, filled: Filled, unitRise: Length, run: Length): Derived | Problem<StairProblem> => {
  const found = derived(facts, filled, unitRise, run);
  for (const key of Object.keys(found) as (keyof Derived)[]) {
    const [given, value] = [facts[key], found[key]];
    if (given === undefined || value === undefined) continue;
    if (typeof given === "number" || typeof value === "number") {
      const rise = run.times(Math.tan(Number(given) * RADIANS_PER_DEGREE).toPrecision(TANGENT_DIGITS));
      if (isWithinAgreement(rise, unitRise)) continue;
      return disagreeing("pitch", Number(given), "pitch of rise and run", Number(value));
    }
    if (isWithinAgreement(given, value)) continue;
    return disagreeing(words(key), given, `${words(key)} of the other labels`, value);
  }
  return found;
};

/** The labels that have a stand-in of their own, each as given or with its stand-in. */
const filledIn = (facts: StairFacts, assumed: Map<string, string>): Filled =>
  Object.fromEntries(
    (Object.keys(STAIR_DEFAULTS) as FixedLabel[]).map((key) => {
      // How the risers were counted says it of the greatest rise.
      if (facts[key] === undefined && key !== "maxRise") assumed.set(key, STAIR_LABELS[key].default.because);
      return [key, facts[key] ?? STAIR_DEFAULTS[key]];
    }),
  ) as Filled;

/** What fifteen digits in a cell may have lost of a length. */
const LOST_IN_A_CELL = lengthOf("0.00000001", "in");

/**
 * What a stair climbs. One flight of several, whose total rise came through a cell, climbs its share of the stair's height, so that the
 * rises of all flights are one number.
 */
const climbOf = (
  { stairHeight, stairRisers }: StairFacts, totalRise: Length | undefined, risers: number | undefined,
): Length | undefined => {
  const share = over(times(stairHeight, risers), stairRisers);
  return share !== undefined && totalRise !== undefined && share.minus(totalRise).abs().lt(LOST_IN_A_CELL) ? share : totalRise;
};

/** How many treads the risers make, where the treads given are as many. */
const treadsOf = (
  facts: StairFacts, risers: number | undefined, topTread: Stair["topTread"],
): number | undefined | Problem<StairProblem> => {
  if (risers === undefined) return undefined;
  const found = topTread === "floor" ? risers - 1 : risers;
  if (facts.treads === undefined || facts.treads === found) return found;
  return problem("treads-disagree", { given: facts.treads, found, risers, topTread });
};

/**
 * A stair from what is known of it: rises from the total rise and a count or a greatest rise, runs from the run, the total run or the
 * room there is. More facts than are needed must agree within 1/64 in.
 */
export const resolvedStair = (facts: StairFacts): Stair | Problem<StairProblem> => {
  const assumed = new Map<string, string>();
  const filled = filledIn(facts, assumed);
  const named = risersNamed(facts, filled.topTread);
  const given = facts.totalRise ?? times(facts.unitRise, named);
  const risers = risersOf(facts, given, named, assumed);
  const totalRise = climbOf(facts, given, risers);
  const unitRise = agreed(
    { label: "unit rise", value: facts.unitRise },
    { label: "total rise over the risers", value: over(totalRise, risers) },
  );
  if (isProblem(unitRise)) return unitRise;
  const exactRise = over(totalRise, risers) ?? unitRise;
  if (exactRise !== undefined && facts.maxRise !== undefined && exactRise.minus(facts.maxRise).gt(AGREEMENT)) {
    return problem("rise-over-greatest", { risers: risers ?? 1, rise: exactRise, greatest: facts.maxRise });
  }
  const treads = treadsOf(facts, risers, filled.topTread);
  if (isProblem(treads)) return treads;
  const run = runOf(facts, treads, filled.nosing);
  if (isProblem(run)) return run;
  assumeRun(facts, assumed);
  const found = exactRise === undefined || run === undefined ? undefined : agreeing(facts, filled, exactRise, run);
  if (isProblem(found)) return found;
  for (const key of ["overhang", "returnWidth"] as const) if (facts[key] === undefined) assumed.set(key, STAIR_LABELS[key].default.because);
  const overhang = facts.overhang ?? filled.nosing;
  return {
    ...(facts as Pick<Stair, Exclude<StairLabels, DefaultedLabel>>),
    ...filled,
    ...Object.fromEntries(Object.entries(found ?? {}).filter(([, value]) => value !== undefined)),
    totalRise,
    risers,
    unitRise: exactRise,
    treads,
    run,
    totalRun: times(run, treads),
    overhang,
    returnWidth: facts.returnWidth ?? overhang,
    assumed,
  };
};
