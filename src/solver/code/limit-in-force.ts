import { Exact } from "../length/exact";
import { lengthIn, type Unit } from "../length/length";
import { type Problem, problem } from "../problem";
import { nearestOrAll, nearestSaid } from "../nearest-word";
import { wordKey } from "../word-key";
import { coverage, limitsOn, TOPIC_NAMES, TOPICS } from "./coverage";
import { namedLimit } from "./named-limit";
import { type CodeProfile, type Figure, type Rule, sizeOf, type SourceStatus } from "./profile";

export type LimitProblem = "unknown-item" | "limit-not-on-file" | "limit-is-no-figure" | "limit-depends";

/** What a limit comes to: one size with its kind, or two as text. */
export type LimitValue =
  | { readonly kind: "length"; readonly value: Exact }
  | { readonly kind: "number"; readonly value: Exact }
  | { readonly kind: "text"; readonly value: string };

/** A limit, and how well it is founded. */
export type LimitInForce = LimitValue & { readonly status: SourceStatus };

const LENGTH_UNITS: readonly string[] = ["in", "mm", "cm"];

const ofFigure = (printed: Figure): LimitValue =>
  LENGTH_UNITS.includes(printed.unit) ? { kind: "length", value: sizeOf(printed) } : { kind: "number", value: printed.value };

/** Decimals of a limit in a cell: holds every 1/64 in in full. */
const CELL_DECIMALS = 6;

const ofRange = (min: Figure, max: Figure, unit: Unit): LimitValue => {
  const number = (printed: Figure): string =>
    (LENGTH_UNITS.includes(printed.unit) ? lengthIn(sizeOf(printed), unit) : printed.value).toDecimalPlaces(CELL_DECIMALS).toString();
  return { kind: "text", value: `${number(min)} to ${number(max)}` };
};

const figureOf = (rule: Rule): Figure | undefined => {
  switch (rule.comparator) {
    case "min":
      return rule.min;
    case "max":
      return rule.max;
    case "sphere":
      return rule.sphere;
    case "uniformity":
      return rule.tolerance;
    case "exempt-when":
      return rule.atLeast;
    case "required-when":
      return rule.or === undefined ? ("atLeast" in rule.from ? rule.from.atLeast : rule.from.moreThan) : undefined;
    case "equals":
      return rule.values.length === 1 ? rule.values[0] : undefined;
    default:
      return undefined;
  }
};

/** The topic an item answers, in this code or another. */
const topicOf = (item: string) =>
  TOPIC_NAMES.find(
    (topic) => wordKey(topic) === wordKey(item) || (TOPICS[topic] as readonly string[]).some((one) => wordKey(one) === wordKey(item)),
  );

const NONE = "none in this code";

/** The rule that gives a clause of several its limit: the first of them. */
const mainRule = (rule: Rule): Rule => ("parts" in rule ? mainRule(rule.parts[0]) : rule);

/**
 * The limit of a code on one item as it is published, without amendment, conditions and exceptions aside; two limits as text in `unit`. A
 * table or a relation has no one figure and is refused with the way to read it.
 */
export const limitInForce = (profile: CodeProfile, item: string, unit: Unit = "in"): LimitInForce | Problem<LimitProblem> => {
  const found = namedLimit(profile, item);
  const topic = topicOf(item);
  if (found === undefined && topic !== undefined && profile.isCode !== false && coverage(topic, profile) === "not on file") {
    return problem("limit-not-on-file", { item, code: profile.id });
  }
  if (found === undefined) {
    const ofTopic = topic === undefined || profile.isCode === false ? [] : limitsOn(topic, profile).map((limit) => limit.item);
    const items = profile.limits.map((limit) => limit.item);
    const nearest = ofTopic[0] === undefined ? nearestOrAll(item, items) : nearestSaid(ofTopic[0], ofTopic);
    return problem("unknown-item", { item, code: profile.id, nearest });
  }
  const { text, clause, status } = found;
  const rule = mainRule(found.rule);
  if (rule.comparator === "shown" && topic !== undefined && coverage(topic, profile) === NONE) return { kind: "text", value: NONE, status };
  if (rule.comparator === "range") return { ...ofRange(rule.min, rule.max, unit), status };
  if (rule.comparator === "slope") return { kind: "number", value: new Exact(rule.rise).div(rule.run), status };
  const printed = figureOf(rule);
  if (printed !== undefined) return { ...ofFigure(printed), status };
  const isShown = ["shown", "alike", "person", "prohibited", "required"].includes(rule.comparator);
  return problem(isShown ? "limit-is-no-figure" : "limit-depends", { item: found.item, code: profile.id, text, clause });
};
