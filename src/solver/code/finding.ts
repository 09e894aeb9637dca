import { Exact, exact } from "../length/exact";
import { conditionLabels, conditionTruth, type Reached } from "./condition";
import { FACT_LABELS, type CodeFacts, type Step } from "./fact-labels";
import { sizeText } from "./size-text";
import {
  type Figure,
  type Limit,
  type Measure,
  type PublishedUnit,
  type RelationRule,
  type RequiredRule,
  type Rule,
  sizeOf,
  type TableRow,
  type Threshold,
  UNIT_SIZE,
  type UniformityRule,
} from "./profile";
import { DESIGN, labelsOf, ofColumn, type Reading, readings, worst } from "./reading";

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

const isLengthUnit = (unit: PublishedUnit): boolean => unit === "in" || unit === "mm" || unit === "cm";

const inUnit = (size: Exact, unit: PublishedUnit): Exact => size.div(UNIT_SIZE[unit]);

const least = (one: Exact, other: Exact): Exact => (one.lt(other) ? one : other);

const holding = (margin: Exact): Outcome => (margin.isNegative() && !margin.isZero() ? "breaks" : "holds");

const missing = (labels: string, limit: Exact | string): Finding => ({
  outcome: "not given",
  limit,
  notes: [`give ${labels} to check this`],
});

/** A figure of another kind than the limit's unit, such as a rise beside a count of risers, stays in its own. */
const unitFor = (printed: Figure, unit: PublishedUnit): PublishedUnit =>
  isLengthUnit(printed.unit) === isLengthUnit(unit) ? unit : printed.unit;

const numberOf = (printed: Figure, unit: PublishedUnit): Exact => inUnit(sizeOf(printed), unitFor(printed, unit));

/** A figure as the limit's own unit has it, whatever unit an amendment came in. */
const said = (printed: Figure, unit: PublishedUnit): string => sizeText(sizeOf(printed), unitFor(printed, unit));

/** A range as it stands in a cell: two numbers in the unit of the row. */
const rangeCell = (min: Figure, max: Figure, unit: PublishedUnit): string =>
  `${numberOf(min, unit).toDecimalPlaces(CELL_DECIMALS).toString()} to ${numberOf(max, unit).toDecimalPlaces(CELL_DECIMALS).toString()}`;

/** Holds every 1/64 in in full. */
const CELL_DECIMALS = 6;

const whereOf = (reading: Reading, all: readonly Reading[]): readonly string[] => {
  if (all.length < 2) return [];
  const steps = all.filter(({ where }) => where !== DESIGN).length;
  const of = steps === all.length ? `${steps} readings` : `${steps} ${steps === 1 ? "step" : "steps"} and ${DESIGN}`;
  return [`worst is ${reading.where}, of ${of}`];
};

/** The worst reading held against a margin. */
const held = (
  stair: Stair, measure: Measure, unit: PublishedUnit, limit: Exact | string, words: string, margin: (size: Exact) => Exact,
): Finding => {
  const all = readings(measure, stair.facts, stair.steps);
  const reading = worst(all, margin);
  if (reading === undefined) return missing(labelsOf(measure), limit);
  const inside = margin(reading.size);
  return {
    outcome: holding(inside),
    given: inUnit(reading.size, unit),
    limit,
    margin: inUnit(inside, unit),
    notes: [words, ...whereOf(reading, all)],
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
  if (rule.within === "design" || rule.within === "bottom step") {
    const design = stair.facts[DESIGN_FACT[rule.of]];
    if (design === undefined) return missing(FACT_LABELS[DESIGN_FACT[rule.of]].label, limit);
    const { spread, notes } = deviationFromDesign(rule.within === "design" ? all : all.slice(0, 1), design, unit);
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

const thresholdOf = (from: Threshold): { figure: Figure; beyond: (size: Exact) => boolean; text: (number: string) => string } =>
  "atLeast" in from
    ? { figure: from.atLeast, beyond: (size) => size.gte(sizeOf(from.atLeast)), text: (number) => `${number} or more` }
    : { figure: from.moreThan, beyond: (size) => size.gt(sizeOf(from.moreThan)), text: (number) => `more than ${number}` };

const largestOf = (measure: Measure, stair: Pick<Stair, "facts" | "steps">): Reading | undefined =>
  worst(readings(measure, stair.facts, stair.steps), (size) => size.neg());
const smallestOf = (measure: Measure, stair: Pick<Stair, "facts" | "steps">): Reading | undefined =>
  worst(readings(measure, stair.facts, stair.steps), (size) => size);

/** The thresholds of a rule, each with the reading it is held against. */
const thresholds = (rule: RequiredRule, stair: Pick<Stair, "facts" | "steps">) =>
  [{ of: rule.of, from: rule.from }, ...(rule.or === undefined ? [] : [rule.or])].map(({ of, from }) => ({
    of, threshold: thresholdOf(from), reading: largestOf(of, stair),
  }));

/** Whether the threshold of a required-when or exempt-when rule is reached; undefined where nothing tells. */
export const isReached = (rule: Rule, facts: CodeFacts, steps: readonly Step[]): boolean | undefined => {
  if (rule.comparator === "required-when") {
    const all = thresholds(rule, { facts, steps });
    if (all.some(({ threshold, reading }) => reading !== undefined && threshold.beyond(reading.size))) return true;
    return all.every(({ reading }) => reading !== undefined) ? false : undefined;
  }
  if (rule.comparator === "exempt-when") return smallestOf(rule.of, { facts, steps })?.size.gte(sizeOf(rule.atLeast));
  return undefined;
};

/** Whether what is required is there. */
const provision = (
  { requires, provided }: Pick<RequiredRule, "requires" | "provided">, stair: Stair, limit: string, given: Pick<Finding, "given">,
): Finding => {
  const is = conditionTruth(provided, stair.facts, stair.reached);
  if (is === "unknown") {
    const labels = [...new Set(conditionLabels(provided, stair.behind))].join(" or ");
    return { outcome: "not given", ...given, limit, notes: [`${requires} is required; give ${labels} to show that it is there`] };
  }
  return {
    outcome: is === "yes" ? "holds" : "breaks", ...given, limit,
    notes: [`${requires} is required and ${is === "yes" ? "is there" : "is not there"}`],
  };
};

const required = (rule: RequiredRule, stair: Stair, unit: PublishedUnit): Finding => {
  const all = thresholds(rule, stair);
  const limit = [...new Set(all.map(({ threshold }) => threshold.text(
    unitFor(threshold.figure, unit) === unit ? numberOf(threshold.figure, unit).toString() : said(threshold.figure, unit),
  )))].join(", or ");
  const beyond = all.find(({ threshold, reading }) => reading !== undefined && threshold.beyond(reading.size));
  const shown = beyond ?? all[0];
  const given = shown?.reading === undefined ? {} : { given: inUnit(shown.reading.size, unitFor(shown.threshold.figure, unit)) };
  if (beyond !== undefined) return provision(rule, stair, limit, given);
  const unknown = all.filter(({ reading }) => reading === undefined);
  if (unknown.length > 0) return missing(unknown.map(({ of }) => labelsOf(of)).join(" and "), limit);
  const words = [...new Set(all.map(({ threshold }) => threshold.text(said(threshold.figure, unit))))].join(", or ");
  return { outcome: "does not apply", ...given, limit, notes: [`${rule.requires} is required only for ${words}`] };
};

const relation = (rule: RelationRule, stair: Stair, limit: Limit): Finding => {
  const { unit } = limit;
  const other = rule.than.find((fact) => stair.facts[fact] !== undefined);
  const value = other === undefined ? undefined : stair.facts[other];
  if (other === undefined || value === undefined) {
    return missing([labelsOf(rule.of), FACT_LABELS[rule.than[0]].label].join(" and "), limit.text);
  }
  const whole = exact(value).times(rule.part?.times ?? 1);
  const isCapped = rule.capped !== undefined && whole.gt(sizeOf(rule.capped));
  const size = rule.capped !== undefined && isCapped ? sizeOf(rule.capped) : whole;
  const margin = (reading: Exact): Exact => {
    if (rule.sense === "exactly") return reading.minus(size).abs().neg();
    return rule.sense === "at least" ? reading.minus(size) : size.minus(reading);
  };
  const what = isCapped
    ? "which is asked for at most"
    : `${rule.part === undefined ? "" : `${rule.part.of} `}the ${FACT_LABELS[other].label}`;
  const words = isCapped ? `${rule.sense} ${sizeText(size, unit)}, ${what}` : `${rule.sense} ${what}, ${sizeText(size, unit)}`;
  return held(stair, rule.of, unit, inUnit(size, unit), words, margin);
};

/** Of findings alike in outcome, the one with the least margin. */
const tightest = (found: readonly Finding[]): Finding | undefined =>
  found.reduce<Finding | undefined>((least, next) => {
    if (least === undefined) return next;
    return next.margin !== undefined && (least.margin === undefined || next.margin.lt(least.margin)) ? next : least;
  }, undefined);

/** The order in which the parts of a rule decide for all of them. */
const GRAVITY: readonly Outcome[] = ["breaks", "not given", "touches", "left to a person", "holds", "does not apply", "no verdict"];

const everyPart = (parts: readonly Finding[], needs: "all" | "first" | "any"): Finding | undefined => {
  const known = parts.filter(({ outcome }, index) => outcome !== "not given" || (needs === "first" && index === 0));
  const considered = needs === "all" || known.length === 0 ? parts : known;
  const gravest = GRAVITY.find((outcome) => considered.some((part) => part.outcome === outcome));
  const alike = considered.filter(({ outcome }) => outcome === gravest);
  const found = tightest(alike);
  if (found === undefined) return undefined;
  const decided = considered.filter((part) => part !== found && part.outcome !== "not given");
  const others = gravest === "not given" ? alike.filter((part) => part !== found) : decided;
  return { ...found, notes: [...new Set([...found.notes, ...others.flatMap(({ notes }) => notes)])] };
};

/** The order in which one of several rules is enough. */
const EASE: readonly Outcome[] = ["does not apply", "holds", "no verdict", "touches", "left to a person", "not given", "breaks"];

const eitherPart = (parts: readonly Finding[]): Finding | undefined => {
  const easiest = EASE.find((outcome) => parts.some((part) => part.outcome === outcome));
  return parts.find(({ outcome }) => outcome === easiest);
};

const tableRow = (rows: readonly TableRow[], stair: Stair, limit: Limit): Finding => {
  for (const { when, words, rule } of rows) {
    const is = conditionTruth(when, stair.facts, stair.reached);
    if (is === "unknown") return missing([...new Set(conditionLabels(when, stair.behind))].join(" or "), limit.text);
    if (is === "yes") {
      const found = finding(rule, limit, stair);
      return { ...found, notes: [words, ...found.notes] };
    }
  }
  return { outcome: "does not apply", limit: limit.text, notes: [`only where ${rows.map(({ words }) => words).join(", or ")}`] };
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
    case "relation":
      return relation(rule, stair, limit);
    case "required":
      return provision(rule, stair, limit.text, {});
    case "every":
      return everyPart(rule.parts.map((part) => finding(part, limit, stair)), rule.needs) ?? finding(rule.parts[0], limit, stair);
    case "either":
      return eitherPart(rule.parts.map((part) => finding(part, limit, stair))) ?? finding(rule.parts[0], limit, stair);
    case "table":
      return tableRow(rule.rows, stair, limit);
    case "alike": {
      const measured = rule.of.filter((column) => ofColumn(column, stair.steps).length >= LEAST_STEPS);
      const spreads = measured.map((column) => {
        const { spread, notes } = spreadOfFlight(ofColumn(column, stair.steps), unit);
        return { spread, notes: [`${column}: ${sizeText(spread, unit)} apart`, ...notes] };
      });
      if (spreads.length === 0) {
        return {
          outcome: "not given",
          limit: limit.text,
          notes: [`told only by measured steps: give a steps table with ${rule.of.join(" and ")} of at least two steps`],
        };
      }
      const widest = spreads.map(({ spread }) => spread).reduce((one, other) => (one.gt(other) ? one : other));
      return {
        outcome: "left to a person",
        given: inUnit(widest, unit),
        limit: limit.text,
        notes: [rule.sense, ...spreads.flatMap(({ notes }) => notes)],
      };
    }
    case "prohibited": {
      const present = conditionTruth(rule.present, stair.facts, stair.reached);
      if (present === "unknown") return missing(conditionLabels(rule.present, stair.behind).join(" or "), "not permitted");
      return { outcome: present === "yes" ? "breaks" : "holds", limit: "not permitted", notes: [`${rule.thing} not permitted`] };
    }
    case "person":
      return { outcome: "left to a person", limit: limit.text, notes: [rule.sense] };
    case "shown":
      return { outcome: "no verdict", limit: rule.text, notes: [] };
  }
};
