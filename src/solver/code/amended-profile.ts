import { Exact, exact } from "../length/exact";
import { lengthOf, type Unit } from "../length/length";
import { parseLength } from "../length/parse-length";
import { isProblem, type Problem, problem } from "../problem";
import { nearestOrAll } from "../nearest-word";
import { wordKey } from "../word-key";
import { namedLimit } from "./named-limit";
import { type CodeProfile, type Figure, type Limit, type Rule, sizeOf } from "./profile";

/** A limit the local authority has changed, as typed: a number, a length in words, `1:20`, `34 to 38`, or `none`. */
export interface Amendment {
  readonly item: string;
  readonly limit: string | number;
  readonly authority: string;
}

export type AmendmentProblem =
  | "unknown-amendment" | "amended-twice" | "amended-limit-unreadable" | "amended-limit-not-positive" | "amended-range-needed"
  | "amended-range-reversed" | "not-amendable";

const RANGE = /^(.+?)\s*(?:\bto\b|\.\.)\s*(.+)$/i;
const SLOPE = /^(\d+(?:\.\d+)?)\s*:\s*(\d+(?:\.\d+)?)$/;
const NUMBER = /^\d+(?:\.\d+)?$/;
/** Taken off the limit altogether. */
const NO_LIMIT = "none";

const isLengthUnit = (limit: Limit): boolean => limit.unit === "in" || limit.unit === "mm" || limit.unit === "cm";

const unreadable = ({ item }: Limit, given: string | number): Problem<AmendmentProblem> =>
  problem("amended-limit-unreadable", { item, given });

/** Only the lower end of a range may be 0, as it is for a nosing of 0 to 25 mm. */
type Least = "positive" | "zero";

const inRange = (value: Exact, least: Least, limit: Limit, given: string | number): Exact | Problem<AmendmentProblem> =>
  value.gt(0) || (least === "zero" && value.isZero()) ? value : problem("amended-limit-not-positive", { item: limit.item, given });

/** One figure as typed: a length in the unit it is typed in, otherwise a bare number in the unit of the code. */
const typed = (given: string | number, limit: Limit, unit: Unit, least: Least = "positive"): Figure | Problem<AmendmentProblem> => {
  if (!isLengthUnit(limit)) {
    const number = String(given).trim().replace(/\s*(?:°|deg|degrees|risers|or more)$/i, "");
    if (!NUMBER.test(number)) return unreadable(limit, given);
    const value = inRange(typeof given === "number" ? exact(given) : new Exact(number), least, limit, given);
    return isProblem(value) ? value : { value, unit: limit.unit };
  }
  // Kept in millimetres, where an inch is exact too.
  const length = typeof given === "number" ? lengthOf(given, unit) : parseLength(given, unit);
  if (isProblem(length)) return unreadable(limit, given);
  const value = inRange(length, least, limit, given);
  return isProblem(value) ? value : { value, unit: "mm" };
};

const typedRange = (given: string | number, limit: Limit, unit: Unit): { min: Figure; max: Figure } | Problem<AmendmentProblem> => {
  const parts = typeof given === "string" ? RANGE.exec(given.trim()) : null;
  if (parts === null) return problem("amended-range-needed", { item: limit.item, given });
  const min = typed(parts[1] ?? "", limit, unit, "zero");
  if (isProblem(min)) return min;
  const max = typed(parts[2] ?? "", limit, unit);
  if (isProblem(max)) return max;
  return min.value.gt(max.value) ? problem("amended-range-reversed", { item: limit.item, given }) : { min, max };
};

const typedSlope = (given: string | number, limit: Limit): { rise: number; run: number } | Problem<AmendmentProblem> => {
  const parts = typeof given === "string" ? SLOPE.exec(given.trim()) : [];
  const [rise, run] = typeof given === "number" ? [given, 1] : [Number(parts?.[1]), Number(parts?.[2])];
  if (!Number.isFinite(rise) || !Number.isFinite(run)) return unreadable(limit, given);
  return rise > 0 && run > 0 ? { rise, run } : problem("amended-limit-not-positive", { item: limit.item, given });
};

const amendedRule = (rule: Rule, limit: Limit, given: string | number, unit: Unit): Rule | Problem<AmendmentProblem> => {
  if (typeof given === "string" && wordKey(given) === NO_LIMIT) return { comparator: "shown", text: "no limit" };
  if (rule.comparator === "range") {
    const range = typedRange(given, limit, unit);
    return isProblem(range) ? range : { ...rule, ...range };
  }
  if (rule.comparator === "slope") {
    const slope = typedSlope(given, limit);
    return isProblem(slope) ? slope : { ...rule, ...slope };
  }
  if (rule.comparator === "every" || rule.comparator === "either") {
    const [main, ...others] = rule.parts;
    const amended = amendedRule(main, limit, given, unit);
    return isProblem(amended) ? amended : { ...rule, parts: [amended, ...others] };
  }
  if (rule.comparator === "table") {
    const [first, ...others] = rule.rows;
    const amended = amendedRule(first.rule, limit, given, unit);
    return isProblem(amended)
      ? amended
      : { ...rule, rows: [{ ...first, rule: amended }, ...others.map((row) => ({ ...row, rule: amended }))] };
  }
  if (
    rule.comparator === "prohibited" ||
    rule.comparator === "shown" ||
    rule.comparator === "required" ||
    rule.comparator === "alike" ||
    rule.comparator === "person"
  ) {
    return problem("not-amendable", { item: limit.item, given });
  }
  const value = typed(given, limit, unit);
  if (isProblem(value)) return value;
  switch (rule.comparator) {
    case "min": return { ...rule, min: value };
    case "max": return { ...rule, max: value };
    case "equals": return { ...rule, values: [value] };
    case "uniformity": return { ...rule, tolerance: value };
    case "sphere": return { ...rule, sphere: value };
    case "exempt-when": return { ...rule, atLeast: value };
    case "required-when": return { ...rule, from: "atLeast" in rule.from ? { atLeast: value } : { moreThan: value } };
    case "relation":
      if (rule.sense === "exactly") return { comparator: "equals", of: rule.of, values: [value] };
      return rule.sense === "at least" ? { comparator: "min", of: rule.of, min: value } : { comparator: "max", of: rule.of, max: value };
  }
};

const isAtMost = (one: Figure, other: Figure): boolean => sizeOf(one).lte(sizeOf(other));

/** Whether whatever keeps the first rule keeps the second: the second is looser, or the same. */
const isLooser = (rule: Rule, amended: Rule): boolean => {
  if (rule.comparator === "min" && amended.comparator === "min") return isAtMost(amended.min, rule.min);
  if (rule.comparator === "max" && amended.comparator === "max") return isAtMost(rule.max, amended.max);
  if (rule.comparator === "range" && amended.comparator === "range")
    return isAtMost(amended.min, rule.min) && isAtMost(rule.max, amended.max);
  if (rule.comparator === "slope" && amended.comparator === "slope") return rule.rise * amended.run <= amended.rise * rule.run;
  if (rule.comparator === "uniformity" && amended.comparator === "uniformity") return isAtMost(rule.tolerance, amended.tolerance);
  if (rule.comparator === "sphere" && amended.comparator === "sphere") return isAtMost(rule.sphere, amended.sphere);
  if (rule.comparator === "every" && amended.comparator === "every") return isLooser(rule.parts[0], amended.parts[0]);
  return false;
};

/**
 * What is left of the figures a code puts in place of a limit in some cases. A tighter limit of the authority stands alone; where it is
 * looser, what the code allows in such a case is still allowed.
 */
const exceptionsInForce = (limit: Limit, amended: Rule): Limit["exceptions"] =>
  limit.exceptions.flatMap((exception) => {
    const { then } = exception;
    if (typeof then === "string") return [exception];
    return isLooser(limit.rule, amended) ? [{ ...exception, then: { comparator: "either", parts: [amended, then] } } as const] : [];
  });

const NO_AUTHORITY = "authority not given";

const printedText = (limit: Limit): string =>
  NUMBER.test(limit.text) || /^[\d /]+$/.test(limit.text) ? `${limit.text} ${limit.unit}` : limit.text;

/**
 * A code with the local authority's limits in place of its own, tighter or looser, each marked with the authority. Bare numbers are in
 * `unit`.
 */
export const amendedProfile = (
  profile: CodeProfile, amendments: readonly Amendment[], unit: Unit,
): CodeProfile | Problem<AmendmentProblem> => {
  const items = profile.limits.map(({ item }) => item);
  const byItem = new Map<string, Amendment>();
  for (const amendment of amendments) {
    const named = namedLimit(profile, amendment.item);
    if (named === undefined) {
      return problem("unknown-amendment", { item: amendment.item, nearest: nearestOrAll(amendment.item, items), code: profile.id });
    }
    if (byItem.has(named.item)) return problem("amended-twice", { item: amendment.item });
    byItem.set(named.item, amendment);
  }
  const limits: Limit[] = [];
  for (const limit of profile.limits) {
    const amendment = byItem.get(limit.item);
    if (amendment === undefined) {
      limits.push(limit);
      continue;
    }
    const rule = amendedRule(limit.rule, limit, amendment.limit, unit);
    if (isProblem(rule)) return rule as Problem<AmendmentProblem>;
    const { printedMillimetres: _rounded, ...rest } = limit;
    limits.push({
      ...rest,
      rule,
      exceptions: exceptionsInForce(limit, rule),
      amendment: {
        authority: amendment.authority.trim() === "" ? NO_AUTHORITY : amendment.authority.trim(),
        insteadOf: printedText(limit),
      },
    });
  }
  return { ...profile, limits };
};

