import type { Figure, Limit, RequiredRule, Rule } from "../profile";
import type { LimitRecord, RuleRecord } from "./limit-record";
import { figuresIn, slope } from "./printed-figure";

type Printed = Pick<LimitRecord, "item" | "text" | "unit">;

const misread = ({ item, text }: Printed, wanted: string): never => {
  throw new Error(`${item}: "${text}" is not ${wanted}; say in the rule which words are the figure.`);
};

const oneFigure = (limit: Printed): Figure => {
  const [figure, ...others] = figuresIn(limit.text, limit.unit);
  return figure === undefined || others.length > 0 ? misread(limit, "one figure") : figure;
};

const twoFigures = (limit: Printed): { readonly min: Figure; readonly max: Figure } => {
  const [min, max, ...others] = figuresIn(limit.text, limit.unit);
  return min === undefined || max === undefined || others.length > 0 ? misread(limit, "two figures") : { min, max };
};

/** `more than 30` leaves out 30 itself, `4 or more` takes 4 in. */
const threshold = (limit: Printed): RequiredRule["from"] => {
  const figure = oneFigure(limit);
  if (/^more than /.test(limit.text)) return { moreThan: figure };
  return / or more\b/.test(limit.text) ? { atLeast: figure } : misread(limit, "a threshold");
};

const everyRule = (parts: readonly [RuleRecord, ...RuleRecord[]], limit: Printed): [Rule, ...Rule[]] => {
  const [first, ...others] = parts;
  return [builtRule(first, limit), ...others.map((part) => builtRule(part, limit))];
};

/** A rule with the figure its record leaves to the printed text. */
const builtRule = (rule: RuleRecord, limit: Printed): Rule => {
  switch (rule.comparator) {
    case "min": return "min" in rule ? rule : { ...rule, comparator: "min", min: oneFigure(limit) };
    case "max": return "max" in rule ? rule : { ...rule, comparator: "max", max: oneFigure(limit) };
    case "sphere": return "sphere" in rule ? rule : { ...rule, comparator: "sphere", sphere: oneFigure(limit) };
    case "range": return "min" in rule ? rule : { ...rule, comparator: "range", ...twoFigures(limit) };
    case "equals": return "values" in rule ? rule : { ...rule, comparator: "equals", values: figuresIn(limit.text, limit.unit) };
    case "slope": return "rise" in rule ? rule : { ...rule, comparator: "slope", ...slope(limit.text) };
    case "uniformity": return "tolerance" in rule ? rule : { ...rule, tolerance: oneFigure(limit) };
    case "required-when": return "from" in rule ? rule : { ...rule, from: threshold(limit) };
    case "exempt-when": return "atLeast" in rule ? rule : { ...rule, atLeast: oneFigure(limit) };
    case "shown": return { comparator: "shown", text: limit.text };
    case "every": return { ...rule, parts: everyRule(rule.parts, limit) };
    case "either": return { ...rule, parts: everyRule(rule.parts, limit) };
    default: return rule;
  }
};

/** A limit out of its record: its figure is read from the printed text. */
export const builtLimit = ({ rule, ...record }: LimitRecord): Limit => ({ ...record, rule: builtRule(rule, record) });
