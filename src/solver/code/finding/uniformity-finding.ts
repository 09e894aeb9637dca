import { Exact, exact } from "../../length/exact";
import { FACT_LABELS, type StepColumn } from "../fact-labels";
import { type Limit, type PublishedUnit, sizeOf, type UniformityRule } from "../profile";
import { ofColumn, type Reading } from "../reading";
import { sizeText } from "../size-text";
import { type Finding, holding, inUnit, missing, type RuleOf, sizeWords, type Stair } from "./compared";

/** Uniformity is a matter of at least two steps. */
const LEAST_STEPS = 2;

const needsSteps = (columns: readonly StepColumn[]): string =>
  `Needs measured steps: enter the ${columns.join(" and ")} of two steps or more in the steps table`;

/** The end of a spread that lies further from the mean of all. */
const oddOne = (smallest: Reading, largest: Reading, all: readonly Reading[]): Reading => {
  const sum = Exact.sum(...all.map(({ size }) => size));
  const off = ({ size }: Reading): Exact => size.times(all.length).minus(sum).abs();
  return off(smallest).gt(off(largest)) ? smallest : largest;
};

const spreadOfFlight = (all: readonly Reading[], unit: PublishedUnit): { spread: Exact; notes: string[] } => {
  const smallest = all.reduce((found, reading) => (reading.size.lt(found.size) ? reading : found));
  const largest = all.reduce((found, reading) => (reading.size.gt(found.size) ? reading : found));
  const spread = largest.size.minus(smallest.size);
  if (spread.isZero()) return { spread, notes: [`all ${all.length} are ${sizeText(largest.size, unit)}`] };
  return {
    spread,
    notes: [
      `largest ${sizeText(largest.size, unit)} at ${largest.where}, smallest ${sizeText(smallest.size, unit)} at ${smallest.where}`,
      `worst is ${oddOne(smallest, largest, all).where}`,
    ],
  };
};

const spreadOfNeighbours = (all: readonly Reading[], unit: PublishedUnit): { spread: Exact; notes: string[] } => {
  const steps = all.slice(1).map((upper, index) => ({ upper, lower: all[index] ?? upper }));
  const apart = ({ upper, lower }: { upper: Reading; lower: Reading }): Exact => upper.size.minus(lower.size).abs();
  const pair = steps.reduce((found, next) => (apart(next).gt(apart(found)) ? next : found));
  return {
    spread: apart(pair),
    notes: [
      `worst neighbours are ${pair.lower.where} (${sizeText(pair.lower.size, unit)}) and ${pair.upper.where} ` +
        `(${sizeText(pair.upper.size, unit)})`,
    ],
  };
};

const deviationFromDesign = (all: readonly Reading[], design: Exact, unit: PublishedUnit): { spread: Exact; notes: string[] } => {
  const off = ({ size }: Reading): Exact => size.minus(design).abs();
  const furthest = all.reduce((found, reading) => (off(reading).gt(off(found)) ? reading : found));
  return {
    spread: off(furthest),
    notes: [`worst is ${furthest.where}, ${sizeText(furthest.size, unit)} where ${sizeText(design, unit)} is meant`],
  };
};

const DESIGN_FACT = { rise: "riserHeight", run: "treadDepth", width: "clearWidth", nosing: "nosing" } as const;

/** Only what was measured on the steps as built shows that they are alike; a drawing never does. */
export const uniformity = (rule: UniformityRule, stair: Stair, unit: PublishedUnit): Finding => {
  const tolerance = sizeOf(rule.tolerance);
  const limit = inUnit(tolerance, unit);
  const words = `at most ${sizeWords(rule.tolerance, unit)} apart`;
  const verdict = (spread: Exact, notes: readonly string[]): Finding => ({
    outcome: holding(tolerance.minus(spread)),
    given: inUnit(spread, unit),
    limit,
    margin: inUnit(tolerance.minus(spread), unit),
    notes: [words, ...notes],
  });
  if (typeof rule.of !== "string") {
    const spread = stair.facts[rule.of.spread];
    return spread === undefined ? missing(FACT_LABELS[rule.of.spread].label, limit, words) : verdict(exact(spread), []);
  }
  const all = ofColumn(rule.of, stair.steps);
  if (all.length < LEAST_STEPS) {
    return { outcome: "not given", limit, notes: [needsSteps([rule.of]), words] };
  }
  if (rule.within === "design" || rule.within === "bottom step") {
    const design = stair.facts[DESIGN_FACT[rule.of]];
    if (design === undefined) return missing(FACT_LABELS[DESIGN_FACT[rule.of]].label, limit, words);
    const { spread, notes } = deviationFromDesign(rule.within === "design" ? all : all.slice(0, 1), design, unit);
    return verdict(spread, notes);
  }
  const { spread, notes } = rule.within === "flight" ? spreadOfFlight(all, unit) : spreadOfNeighbours(all, unit);
  return verdict(spread, notes);
};

/** Where the code gives no figure, the spread is shown to a person. */
export const alike = (rule: RuleOf<"alike">, stair: Stair, limit: Limit): Finding => {
  const measured = rule.of.filter((column) => ofColumn(column, stair.steps).length >= LEAST_STEPS);
  const spreads = measured.map((column) => {
    const { spread, notes } = spreadOfFlight(ofColumn(column, stair.steps), limit.unit);
    return { spread, notes: [`${column}: ${sizeText(spread, limit.unit)} apart`, ...notes] };
  });
  if (spreads.length === 0) return { outcome: "not given", limit: limit.text, notes: [needsSteps(rule.of)] };
  const widest = spreads.map(({ spread }) => spread).reduce((one, other) => (one.gt(other) ? one : other));
  return {
    outcome: "left to a person",
    given: inUnit(widest, limit.unit),
    limit: limit.text,
    notes: [rule.sense, ...spreads.flatMap(({ notes }) => notes)],
  };
};
