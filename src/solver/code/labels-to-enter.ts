import { LABEL_TOPICS } from "../stair-labels";
import { conditionTruth, openPart } from "./condition";
import { type CodeFacts, FACT_LABELS, FACT_NAMES, type FactName } from "./fact-labels";
import { conditionsIn } from "./open-question";
import type { Condition, Limit, Measure, Rule } from "./profile";

const factsOf = (measure: Measure): readonly FactName[] => {
  if (typeof measure === "string") return [measure];
  if ("formula" in measure) return ["riserHeight", "treadDepth"];
  return "inner" in measure ? [measure.inner] : measure;
};

const factsIn = (condition: Condition): readonly FactName[] => {
  if ("all" in condition) return condition.all.flatMap(factsIn);
  if ("any" in condition) return condition.any.flatMap(factsIn);
  if ("not" in condition) return factsIn(condition.not);
  if ("given" in condition) return [condition.given];
  return "reached" in condition ? [] : [condition.fact];
};

/** What a condition turns on, as far as it is open. */
const openFacts = (condition: Condition, facts: CodeFacts): readonly FactName[] => {
  const whatever = () => "unknown" as const;
  return conditionTruth(condition, facts, whatever) === "unknown" ? factsIn(openPart(condition, facts, whatever)) : [];
};

/** What a rule is compared with. */
const heldAgainst = (rule: Rule, facts: CodeFacts): readonly FactName[] => {
  if ("parts" in rule) return rule.parts.flatMap((part) => heldAgainst(part, facts));
  switch (rule.comparator) {
    case "table": return rule.rows.flatMap(({ when, rule: part }) => [...openFacts(when, facts), ...heldAgainst(part, facts)]);
    case "uniformity": return typeof rule.of === "string" ? [] : [rule.of.spread];
    case "relation": return [...factsOf(rule.of), ...rule.than];
    case "required-when": return [...factsOf(rule.of), ...factsIn(rule.provided)];
    case "required": case "prohibited": return conditionsIn(rule).flatMap(factsIn);
    case "alike": return [];
    default: return "of" in rule ? factsOf(rule.of) : [];
  }
};

/**
 * Labels that were not given and would matter for limits that are open, by what they are asked for: `width: clear width; handrail: grip`.
 * Questions that were named already are left out.
 */
export const labelsToEnter = (open: readonly Limit[], facts: CodeFacts, named: readonly FactName[]): string => {
  const wanted = new Set(open.flatMap(({ rule, applies, exceptions }) => [
    ...heldAgainst(rule, facts),
    ...[...applies, ...exceptions].flatMap(({ when }) => openFacts(when, facts)),
  ]));
  const missing = FACT_NAMES.filter((fact) =>
    wanted.has(fact) && !named.includes(fact) && (facts[fact] === undefined || facts.assumed?.[fact] !== undefined));
  return LABEL_TOPICS.flatMap((topic) => {
    const labels = missing.map((fact) => FACT_LABELS[fact]).filter((one) => one.topic === topic).map(({ label }) => label);
    return labels.length === 0 ? [] : [`${topic}: ${labels.join(", ")}`];
  }).join("; ");
};
