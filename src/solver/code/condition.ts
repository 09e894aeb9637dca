import { exact } from "../length/exact";
import { FACT_LABELS, type FactName, type CodeFacts } from "./fact-labels";
import { type Condition, type Figure, sizeOf } from "./profile";

/** `unknown` where a fact it turns on was not given. */
export type Truth = "yes" | "no" | "unknown";

/** Answers whether a required-when or exempt-when limit of the profile is reached. */
export type Reached = (item: string) => Truth;

const truth = (is: boolean): Truth => (is ? "yes" : "no");

const opposite: Readonly<Record<Truth, Truth>> = { yes: "no", no: "yes", unknown: "unknown" };

const every = (parts: readonly Truth[]): Truth =>
  parts.includes("no") ? "no" : parts.includes("unknown") ? "unknown" : "yes";

const threshold = (condition: Condition): { figure: Figure; holds: (order: number) => boolean } | undefined => {
  if ("moreThan" in condition) return { figure: condition.moreThan, holds: (order) => order > 0 };
  if ("atLeast" in condition) return { figure: condition.atLeast, holds: (order) => order >= 0 };
  if ("lessThan" in condition) return { figure: condition.lessThan, holds: (order) => order < 0 };
  if ("atMost" in condition) return { figure: condition.atMost, holds: (order) => order <= 0 };
  return undefined;
};

/** Whether a condition holds of the stair, as far as its facts tell. */
export const conditionTruth = (condition: Condition, facts: CodeFacts, reached: Reached): Truth => {
  if ("all" in condition) return every(condition.all.map((part) => conditionTruth(part, facts, reached)));
  if ("any" in condition) {
    return opposite[every(condition.any.map((part) => opposite[conditionTruth(part, facts, reached)]))];
  }
  if ("not" in condition) return opposite[conditionTruth(condition.not, facts, reached)];
  if ("given" in condition) return truth(facts[condition.given] !== undefined);
  if ("reached" in condition) return reached(condition.reached);
  if ("is" in condition) {
    const value = facts[condition.fact] ?? condition.otherwise;
    return value === undefined ? "unknown" : truth(condition.is.includes(value));
  }
  const value = facts[condition.fact];
  const limit = threshold(condition);
  if (value === undefined || limit === undefined) return "unknown";
  return truth(limit.holds(exact(value).cmp(sizeOf(limit.figure))));
};

/** What of a condition is still open, where its truth is unknown. */
export const openPart = (condition: Condition, facts: CodeFacts, reached: Reached): Condition => {
  const open = (parts: readonly Condition[]): Condition[] =>
    parts.filter((part) => conditionTruth(part, facts, reached) === "unknown").map((part) => openPart(part, facts, reached));
  if ("all" in condition) return { all: open(condition.all) };
  if ("any" in condition) return { any: open(condition.any) };
  return "not" in condition ? { not: openPart(condition.not, facts, reached) } : condition;
};

/** The labels of the stair table a condition turns on; `behind` gives those of another limit's reading. */
export const conditionLabels = (condition: Condition, behind: (item: string) => readonly string[]): readonly string[] => {
  const label = (fact: FactName): string => FACT_LABELS[fact].label;
  if ("all" in condition) return condition.all.flatMap((part) => conditionLabels(part, behind));
  if ("any" in condition) return condition.any.flatMap((part) => conditionLabels(part, behind));
  if ("not" in condition) return conditionLabels(condition.not, behind);
  if ("given" in condition) return [label(condition.given)];
  if ("reached" in condition) return behind(condition.reached);
  return [label(condition.fact)];
};
