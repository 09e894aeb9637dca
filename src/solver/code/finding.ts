import { Exact, exact } from "../length/exact";
import { conditionLabels, conditionTruth, type Reached } from "./condition";
import { FACT_LABELS, type CodeFacts, type Step } from "./fact-labels";
import { sizeText } from "./size-text";
import {
  type Figure, type Limit, type Measure, type PublishedUnit, type RequiredRule, type Rule, sizeOf, UNIT_SIZE, type UniformityRule,
} from "./profile";
import { labelsOf, ofColumn, type Reading, readings, worst } from "./reading";

/** `touches`: the opening is exactly as wide as the sphere. */
export type Outcome = "holds" | "breaks" | "touches" | "not given" | "does not apply" | "no verdict" | "left to a person";

/** What one rule says of one stair; given and margin in the limit's published unit, margin positive inside. */
export interface Finding {
  readonly outcome: Outcome;
  readonly given?: Exact;
  readonly limit: Exact | string;
  readonly margin?: Exact;
  readonly notes: readonly string[];
}

interface Stair {
  readonly facts: CodeFacts;
  readonly steps: readonly Step[];
  readonly reached: Reached;
  readonly behind: (item: string) => readonly string[];
}

/** Uniformity is a matter of at least two steps. */
const LEAST_STEPS = 2;

const inUnit = (size: Exact, unit: PublishedUnit): Exact => size.div(UNIT_SIZE[unit]);

const least = (one: Exact, other: Exact): Exact => (one.lt(other) ? one : other);

const holding = (margin: Exact): Outcome => (margin.isNegative() && !margin.isZero() ? "breaks" : "holds");

const missing = (labels: string, limit: Exact | string): Finding => ({ outcome: "not given", limit, notes: [`give ${labels} to check this`] });

const numberOf = (printed: Figure, unit: PublishedUnit): Exact => inUnit(sizeOf(printed), unit);

/** A figure as the limit's own unit has it, whatever unit an amendment came in. */
const said = (printed: Figure, unit: PublishedUnit): string => sizeText(sizeOf(printed), unit);

/** A range as it stands in a cell: two numbers in the unit of the row. */
const rangeCell = (min: Figure, max: Figure, unit: PublishedUnit): string =>
  `${numberOf(min, unit).toDecimalPlaces(CELL_DECIMALS).toString()} to ${numberOf(max, unit).toDecimalPlaces(CELL_DECIMALS).toString()}`;

/** Holds every 1/64 in in full. */
const CELL_DECIMALS = 6;

const whereOf = (reading: Reading, all: readonly Reading[]): readonly string[] =>
  all.length > 1 ? [`worst of ${all.length} readings is ${reading.where}`] : [];

/** The worst reading held against a margin. */
const held = (
  stair: Stair, measure: Measure, unit: PublishedUnit, limit: Exact | string, words: string, margin: (size: Exact) => Exact,
): Finding => {
  const all = readings(measure, stair.facts, stair.steps);
  const reading = worst(all, margin);
  if (reading === undefined) return missing(labelsOf(measure), limit);
  const inside = margin(reading.size);
  return {
    outcome: holding(inside), given: inUnit(reading.size, unit), limit, margin: inUnit(inside, unit), notes: [words, ...whereOf(reading, all)],
  };
};

const slope = (rise: number, run: number): string => `${rise}:${run}`;

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
      `worst neighbours are ${pair.lower.where} (${sizeText(pair.lower.size, unit)}) and ${pair.upper.where} (${sizeText(pair.upper.size, unit)})`,
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
const uniformity = (rule: UniformityRule, stair: Stair, unit: PublishedUnit): Finding => {
  const tolerance = sizeOf(rule.tolerance);
  const limit = inUnit(tolerance, unit);
  const verdict = (spread: Exact, notes: readonly string[]): Finding => ({
    outcome: holding(tolerance.minus(spread)),
    given: inUnit(spread, unit),
    limit,
    margin: inUnit(tolerance.minus(spread), unit),
    notes: [`at most ${said(rule.tolerance, unit)} apart`, ...notes],
  });
  if (typeof rule.of !== "string") {
    const spread = stair.facts[rule.of.spread];
    return spread === undefined ? missing(FACT_LABELS[rule.of.spread].label, limit) : verdict(exact(spread), []);
  }
  const all = ofColumn(rule.of, stair.steps);
  if (all.length < LEAST_STEPS) {
    const notes = [`told only by measured steps: give a steps table with ${rule.of} of at least two steps`];
    return { outcome: "not given", limit, notes };
  }
  if (rule.within === "design") {
    const design = stair.facts[DESIGN_FACT[rule.of]];
    if (design === undefined) return missing(FACT_LABELS[DESIGN_FACT[rule.of]].label, limit);
    const { spread, notes } = deviationFromDesign(all, design, unit);
    return verdict(spread, notes);
  }
  const { spread, notes } = rule.within === "flight" ? spreadOfFlight(all, unit) : spreadOfNeighbours(all, unit);
  return verdict(spread, notes);
};

const TOUCHING = "the opening equals the ball, which touches both sides and passes if anything gives: make it smaller";

/**
 * A sphere that fits with room to spare is kept out by nothing. One exactly as wide as the opening touches both sides: whether it
 * goes through turns on how far the parts give, so that case is left to a person instead of passing at the boundary.
 */
const sphere = (of: Measure, printed: Figure, stair: Stair, unit: PublishedUnit): Finding => {
  const size = sizeOf(printed);
  const found = held(stair, of, unit, inUnit(size, unit), `a ball of ${said(printed, unit)} must not pass`, (gap) => size.minus(gap));
  return found.margin?.isZero() === true ? { ...found, outcome: "touches", notes: [...found.notes, TOUCHING] } : found;
};

const thresholdOf = ({ from }: RequiredRule): { figure: Figure; beyond: (size: Exact) => boolean; text: (number: string) => string } =>
  "atLeast" in from
    ? { figure: from.atLeast, beyond: (size) => size.gte(sizeOf(from.atLeast)), text: (number) => `${number} or more` }
    : { figure: from.moreThan, beyond: (size) => size.gt(sizeOf(from.moreThan)), text: (number) => `more than ${number}` };

const largestOf = (measure: Measure, stair: Pick<Stair, "facts" | "steps">): Reading | undefined =>
  worst(readings(measure, stair.facts, stair.steps), (size) => size.neg());
const smallestOf = (measure: Measure, stair: Pick<Stair, "facts" | "steps">): Reading | undefined =>
  worst(readings(measure, stair.facts, stair.steps), (size) => size);

/** Whether the threshold of a required-when or exempt-when rule is reached; undefined where nothing tells. */
export const isReached = (rule: Rule, facts: CodeFacts, steps: readonly Step[]): boolean | undefined => {
  if (rule.comparator === "required-when") {
    const reading = largestOf(rule.of, { facts, steps });
    return reading === undefined ? undefined : thresholdOf(rule).beyond(reading.size);
  }
  if (rule.comparator === "exempt-when") return smallestOf(rule.of, { facts, steps })?.size.gte(sizeOf(rule.atLeast));
  return undefined;
};

const required = (rule: RequiredRule, stair: Stair, unit: PublishedUnit): Finding => {
  const threshold = thresholdOf(rule);
  const limit = threshold.text(numberOf(threshold.figure, unit).toString());
  const reading = largestOf(rule.of, stair);
  if (reading === undefined) return missing(labelsOf(rule.of), limit);
  const given = inUnit(reading.size, unit);
  if (!threshold.beyond(reading.size)) {
    const words = threshold.text(said(threshold.figure, unit));
    return { outcome: "does not apply", given, limit, notes: [`${rule.requires} is required only for ${words}`] };
  }
  const provided = conditionTruth(rule.provided, stair.facts, stair.reached);
  if (provided === "unknown") {
    const labels = [...new Set(conditionLabels(rule.provided, stair.behind))].join(" or ");
    return { outcome: "not given", given, limit, notes: [`${rule.requires} is required; give ${labels} to show that it is there`] };
  }
  return {
    outcome: provided === "yes" ? "holds" : "breaks", given, limit,
    notes: [`${rule.requires} is required and ${provided === "yes" ? "is there" : "is not there"}`],
  };
};

/** What a rule says of a stair, with its margin in the published unit. */
export const finding = (rule: Rule, limit: Limit, stair: Stair): Finding => {
  const { unit } = limit;
  switch (rule.comparator) {
    case "min": {
      const min = sizeOf(rule.min);
      return held(stair, rule.of, unit, inUnit(min, unit), `at least ${said(rule.min, unit)}`, (size) => size.minus(min));
    }
    case "max": {
      const max = sizeOf(rule.max);
      return held(stair, rule.of, unit, inUnit(max, unit), `at most ${said(rule.max, unit)}`, (size) => max.minus(size));
    }
    case "range": {
      const [min, max] = [sizeOf(rule.min), sizeOf(rule.max)];
      const words = `${said(rule.min, unit)} to ${said(rule.max, unit)}`;
      return held(stair, rule.of, unit, rangeCell(rule.min, rule.max, unit), words, (size) => least(size.minus(min), max.minus(size)));
    }
    case "equals": {
      const values = rule.values.map(sizeOf);
      const off = (size: Exact): Exact => values.map((value) => size.minus(value).abs()).reduce(least).neg();
      const words = rule.values.map((value) => said(value, unit)).join(" or ");
      const cell = values.length === 1 && values[0] !== undefined ? inUnit(values[0], unit) : words;
      return held(stair, rule.of, unit, cell, `exactly ${words}`, off);
    }
    case "slope": {
      // A sheet holds 1/48 at 15 digits, so the limit is read at as many.
      const max = exact(rule.rise / rule.run);
      return held(stair, rule.of, unit, slope(rule.rise, rule.run), `at most ${slope(rule.rise, rule.run)}`, (size) => max.minus(size));
    }
    case "uniformity":
      return uniformity(rule, stair, unit);
    case "sphere":
      return sphere(rule.of, rule.sphere, stair, unit);
    case "required-when":
      return required(rule, stair, unit);
    case "exempt-when": {
      const limitText = `${numberOf(rule.atLeast, unit).toString()} or more`;
      const reading = smallestOf(rule.of, stair);
      if (reading === undefined) return missing(labelsOf(rule.of), limitText);
      const given = inUnit(reading.size, unit);
      const margin = reading.size.minus(sizeOf(rule.atLeast));
      return holding(margin) === "holds"
        ? { outcome: "holds", given, limit: limitText, margin: inUnit(margin, unit), notes: [`exempt: ${rule.frees} is free`] }
        : { outcome: "does not apply", given, limit: limitText, notes: [`no exemption: ${rule.frees} is held in its own row`] };
    }
    case "relation": {
      const other = rule.than.find((fact) => stair.facts[fact] !== undefined);
      const value = other === undefined ? undefined : stair.facts[other];
      if (other === undefined || value === undefined) {
        return missing([labelsOf(rule.of), ...rule.than.map((fact) => FACT_LABELS[fact].label).slice(0, 1)].join(" and "), limit.text);
      }
      const size = exact(value);
      const margin = (reading: Exact): Exact => (rule.sense === "at least" ? reading.minus(size) : size.minus(reading));
      return held(stair, rule.of, unit, inUnit(size, unit), `${rule.sense} the ${FACT_LABELS[other].label}, ${sizeText(size, unit)}`, margin);
    }
    case "prohibited": {
      const present = conditionTruth(rule.present, stair.facts, stair.reached);
      if (present === "unknown") return missing(conditionLabels(rule.present, stair.behind).join(" or "), "not permitted");
      return { outcome: present === "yes" ? "breaks" : "holds", limit: "not permitted", notes: [`${rule.thing} not permitted`] };
    }
    case "shown":
      return { outcome: "no verdict", limit: rule.text, notes: [] };
    case "words":
      return { outcome: "left to a person", limit: rule.text, notes: [] };
  }
};
