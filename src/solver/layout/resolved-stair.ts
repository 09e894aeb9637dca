import { type Length, lengthOf } from "../length/length";
import type { RiserOn } from "../fit/riser-on";
import { isProblem, type Problem, problem } from "../problem";
import { riserCount } from "./riser-count";
import { STAIR_DEFAULTS } from "./stair-defaults";
import type { OpenEnd, StairFacts } from "./stair-facts";

/** Labels that were left out and why their defaults are what they are, in words; for risers, that of the greatest rise they were counted from. */
export type Assumed = ReadonlyMap<string, string>;

/** A stair with every default in place. Rise and run stay unknown where the facts do not give them. */
export interface Stair {
  readonly totalRise: Length | undefined;
  readonly risers: number | undefined;
  readonly unitRise: Length | undefined;
  readonly treads: number | undefined;
  readonly run: Length | undefined;
  readonly totalRun: Length | undefined;
  readonly topTread: "floor" | "flush";
  readonly nosing: Length;
  readonly treadThickness: Length;
  readonly riserThickness: Length;
  readonly width: Length | undefined;
  readonly openEnd: OpenEnd;
  readonly overhang: Length;
  readonly returnWidth: Length;
  readonly runPast: Length;
  readonly lap: Length;
  readonly riserOn: RiserOn;
  readonly lowerBuildUp: Length;
  readonly upperBuildUp: Length;
  readonly stringers: number;
  readonly stringerBoard: Length;
  readonly skirtShows: Length;
  readonly skirtFoot: Length;
  readonly skirtHead: Length;
  readonly handrailHeight: Length | undefined;
  readonly trimLength: Length;
  readonly trimDepth: Length;
  readonly landingNosing: boolean;
  readonly headroom: Length | undefined;
  readonly opening: Length | undefined;
  readonly floorThickness: Length | undefined;
  readonly assumed: Assumed;
}

export type StairProblem = "labels-disagree" | "treads-disagree" | "rise-over-greatest" | "run-without-treads" | "available-run-short";

/** Labels may differ by this much and still say the same: a mark on the finest tape. */
export const AGREEMENT = lengthOf(0.015625, "in");

/** Two lengths that say the same. */
export const isWithinAgreement = (one: Length, other: Length): boolean => one.minus(other).abs().lte(AGREEMENT);

interface Said {
  readonly label: string;
  readonly value: Length | undefined;
}

/** The first value said, or the two that disagree. */
const agreed = (...said: readonly Said[]): Length | undefined | Problem<StairProblem> => {
  const known = said.filter((one): one is { label: string; value: Length } => one.value !== undefined);
  const [first] = known;
  if (first === undefined) return undefined;
  const other = known.find(({ value }) => !isWithinAgreement(first.value, value));
  return other === undefined
    ? first.value
    : problem("labels-disagree", { label: first.label, value: first.value, other: other.label, otherValue: other.value, within: AGREEMENT });
};

const times = (length: Length | undefined, count: number | undefined): Length | undefined =>
  length === undefined || count === undefined ? undefined : length.times(count);

const over = (length: Length | undefined, count: number | undefined): Length | undefined =>
  length === undefined || count === undefined || count === 0 ? undefined : length.div(count);

const FOLLOWS_FROM_RISERS = "it follows from the risers assumed";

/** Risers by count, by rise, or the fewest the greatest rise allows. */
const risersOf = (facts: StairFacts, totalRise: Length | undefined, assumed: Map<string, string>): number | undefined => {
  if (facts.risers !== undefined) return facts.risers;
  if (totalRise === undefined) return undefined;
  if (facts.unitRise !== undefined) return totalRise.div(facts.unitRise).toDecimalPlaces(0).toNumber();
  if (facts.maxRise === undefined) {
    assumed.set("risers", STAIR_DEFAULTS.maxRise.because);
    assumed.set("unitRise", FOLLOWS_FROM_RISERS);
  }
  return riserCount(totalRise, facts.maxRise ?? STAIR_DEFAULTS.maxRise.value);
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

/**
 * A stair from what is known of it: rises from the total rise and a count or a greatest rise, runs from the run, the total run or the
 * room there is. More facts than are needed must agree within 1/64 in.
 */
export const resolvedStair = (facts: StairFacts): Stair | Problem<StairProblem> => {
  const assumed = new Map<string, string>();
  const filled = <Key extends keyof typeof STAIR_DEFAULTS & keyof StairFacts>(key: Key): NonNullable<StairFacts[Key]> => {
    const given = facts[key];
    if (given !== undefined) return given as NonNullable<StairFacts[Key]>;
    assumed.set(key, STAIR_DEFAULTS[key].because);
    return STAIR_DEFAULTS[key].value as unknown as NonNullable<StairFacts[Key]>;
  };
  const topTread = filled("topTread");
  const nosing = filled("nosing");
  const totalRise = facts.totalRise ?? times(facts.unitRise, facts.risers);
  const risers = risersOf(facts, totalRise, assumed);
  const unitRise = agreed({ label: "unit rise", value: facts.unitRise }, { label: "total rise over the risers", value: over(totalRise, risers) });
  if (isProblem(unitRise)) return unitRise;
  const exactRise = over(totalRise, risers) ?? unitRise;
  if (exactRise !== undefined && facts.maxRise !== undefined && exactRise.minus(facts.maxRise).gt(AGREEMENT)) {
    return problem("rise-over-greatest", { risers: risers ?? 1, rise: exactRise, greatest: facts.maxRise });
  }
  const treads = risers === undefined ? undefined : topTread === "floor" ? risers - 1 : risers;
  if (treads !== undefined && facts.treads !== undefined && facts.treads !== treads) {
    return problem("treads-disagree", { given: facts.treads, found: treads, risers: risers ?? 0, topTread });
  }
  const run = runOf(facts, treads, nosing);
  if (isProblem(run)) return run;
  assumeRun(facts, assumed);
  const overhang = facts.overhang ?? nosing;
  if (facts.overhang === undefined) assumed.set("overhang", "as much as the nosing");
  if (facts.returnWidth === undefined) assumed.set("returnWidth", "as wide as the overhang");
  return {
    totalRise,
    risers,
    unitRise: exactRise,
    treads,
    run,
    totalRun: times(run, treads),
    topTread,
    nosing,
    treadThickness: filled("treadThickness"),
    riserThickness: filled("riserThickness"),
    width: facts.width,
    openEnd: filled("openEnd"),
    overhang,
    returnWidth: facts.returnWidth ?? overhang,
    runPast: filled("runPast"),
    lap: filled("lap"),
    riserOn: filled("riserOn"),
    lowerBuildUp: filled("lowerBuildUp"),
    upperBuildUp: filled("upperBuildUp"),
    stringers: filled("stringers"),
    stringerBoard: filled("stringerBoard"),
    skirtShows: filled("skirtShows"),
    skirtFoot: filled("skirtFoot"),
    skirtHead: filled("skirtHead"),
    handrailHeight: facts.handrailHeight,
    trimLength: filled("trimLength"),
    trimDepth: filled("trimDepth"),
    landingNosing: filled("landingNosing"),
    headroom: facts.headroom,
    opening: facts.opening,
    floorThickness: facts.floorThickness,
    assumed,
  };
};
