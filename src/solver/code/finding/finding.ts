import { conditionLabels, conditionTruth } from "../condition";
import type { Limit, Rule, TableRow } from "../profile";
import { type Finding, missing, type Stair } from "./compared";
import { eitherPart, everyPart } from "./joint-finding";
import { exempt, prohibited, provision, required } from "./requirement-finding";
import { sizeFinding } from "./size-finding";
import { alike, uniformity } from "./uniformity-finding";

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
  switch (rule.comparator) {
    case "min": case "max": case "range": case "equals": case "slope": case "sphere": case "relation":
      return sizeFinding(rule, stair, limit);
    case "uniformity":
      return uniformity(rule, stair, limit.unit);
    case "alike":
      return alike(rule, stair, limit);
    case "required-when":
      return required(rule, stair, limit.unit);
    case "required":
      return provision(rule, stair, limit.text, {});
    case "exempt-when":
      return exempt(rule, stair, limit.unit);
    case "prohibited":
      return prohibited(rule, stair);
    case "every":
      return everyPart(rule.parts.map((part) => finding(part, limit, stair)), rule.needs) ?? finding(rule.parts[0], limit, stair);
    case "either":
      return eitherPart(rule.parts.map((part) => finding(part, limit, stair))) ?? finding(rule.parts[0], limit, stair);
    case "table":
      return tableRow(rule.rows, stair, limit);
    case "person":
      return { outcome: "left to a person", limit: limit.text, notes: [rule.sense] };
    case "shown":
      return { outcome: "no verdict", limit: rule.text, notes: [] };
  }
};
