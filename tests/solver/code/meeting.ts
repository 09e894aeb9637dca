import { type CodeFacts, FACT_LABELS, type MeasuredFact } from "../../../src/solver/code/fact-labels";
import type { CodeProfile, Condition, Figure, Limit, Rule } from "../../../src/solver/code/profile";
import { Exact } from "../../../src/solver/length/exact";
import { sizeIn } from "./printed-text";

/** Facts that answer every condition of a limit, so that its own rule and no exception decides its row. */

const sized = (fact: MeasuredFact, figure: Figure, marks: number): CodeFacts => {
  const size = sizeIn(figure.printed ?? "", figure.unit).plus(marks);
  return { [fact]: FACT_LABELS[fact].kind === "length" ? new Exact(size.toString()) : size.toNumber() } as CodeFacts;
};

const GIVEN: Readonly<Record<string, unknown>> = { length: new Exact(1000), count: 3, ratio: 0.001, angle: 10 };

/** Facts under which a condition holds or not; undefined where none were found. `taken` are facts that stand already. */
const meeting = (condition: Condition, holds: boolean, profile: CodeProfile, taken: CodeFacts): CodeFacts | undefined => {
  if ("not" in condition) return meeting(condition.not, !holds, profile, taken);
  if ("all" in condition || "any" in condition) {
    const parts = "all" in condition ? condition.all : condition.any;
    if (("all" in condition) === holds) {
      return parts.reduce<CodeFacts | undefined>((found, part) => {
        const next = found === undefined ? undefined : meeting(part, holds, profile, found);
        return next === undefined ? undefined : { ...found, ...next };
      }, taken);
    }
    const found = parts.flatMap((part) => meeting(part, holds, profile, taken) ?? []);
    const size = (facts: CodeFacts): number => Object.keys(facts).length;
    return found.sort((one, other) => size(one) - size(other))[0];
  }
  if ("given" in condition) {
    if ((taken[condition.given] !== undefined) === holds) return taken;
    return holds && FACT_LABELS[condition.given].kind !== "choice"
      ? { ...taken, [condition.given]: GIVEN[FACT_LABELS[condition.given].kind] }
      : undefined;
  }
  if ("reached" in condition) {
    const rule = profile.limits.find(({ item }) => item === condition.reached)?.rule;
    if (rule?.comparator === "required-when" && typeof rule.of === "string") {
      if (taken[rule.of] !== undefined) return taken;
      const figure = "atLeast" in rule.from ? rule.from.atLeast : rule.from.moreThan;
      return { ...taken, ...sized(rule.of, figure, holds ? 1 : -1) };
    }
    if (rule?.comparator === "exempt-when" && typeof rule.of === "string")
      return { ...taken, ...sized(rule.of, rule.atLeast, holds ? 1 : -1) };
    return undefined;
  }
  if ("is" in condition) {
    const now = taken[condition.fact];
    if (now !== undefined) return condition.is.includes(now as string) === holds ? taken : undefined;
    const choice = (FACT_LABELS[condition.fact].choices ?? []).find((one) => condition.is.includes(one) === holds);
    return choice === undefined ? undefined : { ...taken, [condition.fact]: choice };
  }
  const above = "moreThan" in condition ? condition.moreThan : "atLeast" in condition ? condition.atLeast : undefined;
  const below = "lessThan" in condition ? condition.lessThan : "atMost" in condition ? condition.atMost : undefined;
  if (taken[condition.fact] !== undefined) return taken;
  if (above !== undefined) return { ...taken, ...sized(condition.fact, above, holds ? 1 : -1) };
  return below === undefined ? undefined : { ...taken, ...sized(condition.fact, below, holds ? -1 : 1) };
};

/** Facts that keep the other parts of a clause. */
const keeping = (rule: Rule, profile: CodeProfile, taken: CodeFacts): CodeFacts | undefined => {
  switch (rule.comparator) {
    case "min":
      return typeof rule.of === "string" && taken[rule.of] === undefined ? { ...taken, ...sized(rule.of, rule.min, 1) } : taken;
    case "max":
      return typeof rule.of === "string" && taken[rule.of] === undefined ? { ...taken, ...sized(rule.of, rule.max, -1) } : taken;
    case "range":
      return typeof rule.of === "string" && taken[rule.of] === undefined ? { ...taken, ...sized(rule.of, rule.min, 1) } : taken;
    case "required":
      return meeting(rule.provided, true, profile, taken);
    case "prohibited":
      return meeting(rule.present, false, profile, taken);
    case "relation":
      return rule.sense === "at least" ? { [rule.than[0]]: new Exact(1), ...taken } : { [rule.than[0]]: new Exact(900), ...taken };
    default:
      return taken;
  }
};

const others = (rule: Rule): readonly Rule[] => ("parts" in rule ? [...others(rule.parts[0]), ...rule.parts.slice(1)] : []);

/** A stair on which a limit's own rule decides, beside the facts it is compared with; undefined where no such stair was found. */
export const stairFor = (limit: Limit, profile: CodeProfile, held: CodeFacts): CodeFacts | undefined => {
  const conditions: readonly (readonly [Condition, boolean])[] = [
    ...limit.applies.map(({ when }) => [when, true] as const), ...limit.exceptions.map(({ when }) => [when, false] as const),
  ];
  const met = conditions.reduce<CodeFacts | undefined>(
    (found, [condition, holds]) => (found === undefined ? undefined : meeting(condition, holds, profile, found)),
    held,
  );
  return others(limit.rule).reduce<CodeFacts | undefined>(
    (found, rule) => (found === undefined ? undefined : keeping(rule, profile, found)),
    met,
  );
};

