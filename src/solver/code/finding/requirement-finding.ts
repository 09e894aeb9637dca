import type { Exact } from "../../length/exact";
import { conditionLabels, conditionTruth } from "../condition";
import type { CodeFacts, Step } from "../fact-labels";
import { type Figure, type Measure, type PublishedUnit, type RequiredRule, type Rule, sizeOf, type Threshold } from "../profile";
import { labelsOf, type Reading, readings, worst } from "../reading";
import { type Finding, holding, inUnit, missing, numberOf, type RuleOf, sizeWords, type Stair, unitFor } from "./compared";

const thresholdOf = (from: Threshold): { figure: Figure; beyond: (size: Exact) => boolean; text: (number: string) => string } =>
  "atLeast" in from
    ? { figure: from.atLeast, beyond: (size) => size.gte(sizeOf(from.atLeast)), text: (number) => `${number} or more` }
    : { figure: from.moreThan, beyond: (size) => size.gt(sizeOf(from.moreThan)), text: (number) => `more than ${number}` };

const largestOf = (measure: Measure, stair: Pick<Stair, "facts" | "steps">): Reading | undefined =>
  worst(readings(measure, stair.facts, stair.steps), (size) => size.neg());
const smallestOf = (measure: Measure, stair: Pick<Stair, "facts" | "steps">): Reading | undefined =>
  worst(readings(measure, stair.facts, stair.steps), (size) => size);

/** The thresholds of a rule, each with the reading it is compared with. */
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
export const provision = (
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

export const required = (rule: RequiredRule, stair: Stair, unit: PublishedUnit): Finding => {
  const all = thresholds(rule, stair);
  const limit = [...new Set(all.map(({ threshold }) => threshold.text(
    unitFor(threshold.figure, unit) === unit ? numberOf(threshold.figure, unit).toString() : sizeWords(threshold.figure, unit),
  )))].join(", or ");
  const beyond = all.find(({ threshold, reading }) => reading !== undefined && threshold.beyond(reading.size));
  const shown = beyond ?? all[0];
  const given = shown?.reading === undefined ? {} : { given: inUnit(shown.reading.size, unitFor(shown.threshold.figure, unit)) };
  if (beyond !== undefined) return provision(rule, stair, limit, given);
  const unknown = all.filter(({ reading }) => reading === undefined);
  if (unknown.length > 0) return missing(unknown.map(({ of }) => labelsOf(of)).join(" and "), limit);
  const words = [...new Set(all.map(({ threshold }) => threshold.text(sizeWords(threshold.figure, unit))))].join(", or ");
  return { outcome: "does not apply", ...given, limit, notes: [`${rule.requires} is required only for ${words}`] };
};

/** A size from which something else is free of its own limit. */
export const exempt = (rule: RuleOf<"exempt-when">, stair: Stair, unit: PublishedUnit): Finding => {
  const limit = `${numberOf(rule.atLeast, unit).toString()} or more`;
  const reading = smallestOf(rule.of, stair);
  if (reading === undefined) return missing(labelsOf(rule.of), limit);
  const given = inUnit(reading.size, unit);
  const margin = reading.size.minus(sizeOf(rule.atLeast));
  return holding(margin) === "holds"
    ? { outcome: "holds", given, limit, margin: inUnit(margin, unit), notes: [`exempt: ${rule.frees} is free`] }
    : { outcome: "does not apply", given, limit, notes: [`no exemption: ${rule.frees} is compared in its own row`] };
};

export const prohibited = ({ present, thing }: RuleOf<"prohibited">, stair: Stair): Finding => {
  const is = conditionTruth(present, stair.facts, stair.reached);
  if (is === "unknown") return missing(conditionLabels(present, stair.behind).join(" or "), "not permitted");
  return { outcome: is === "yes" ? "breaks" : "holds", limit: "not permitted", notes: [`${thing} not permitted`] };
};
