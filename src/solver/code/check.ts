import { CAUTION } from "../caution";
import { Exact } from "../length/exact";
import { isProblem, type Problem } from "../problem";
import { type Amendment, amendedProfile, type AmendmentProblem } from "./amended-profile";
import { conditionLabels, conditionTruth, isTakenAsSo, openPart, type Truth } from "./condition";
import { type CodeFacts, FACT_LABELS, type FactName, type Step } from "./fact-labels";
import { type Finding, finding, isReached, type Outcome } from "./finding";
import { type CodeProfile, type Condition, type Figure, figure, type Limit, type Measure, type OutOfScope, type PublishedUnit, type Rule } from "./profile";
import { labelsOf } from "./reading";

export type Verdict = "pass" | "fail" | "caution" | "not given" | "does not apply" | "judge";

/** One row of a check. Given, limit and margin are in `unit`, the unit the code is printed in; the margin is positive inside. */
export interface CheckRow {
  readonly item: string;
  readonly given: number | "";
  readonly limit: number | string;
  readonly margin: number | "";
  readonly unit: PublishedUnit | "";
  /** Empty for rows that are only shown: limits without a figure, and the last row. */
  readonly verdict: Verdict | "";
  readonly clause: string;
  readonly sourceStatus: string;
  readonly note: string;
}

const VERDICT_OF: Readonly<Record<Outcome, Verdict | "">> = {
  holds: "pass",
  breaks: "fail",
  touches: "judge",
  "not given": "not given",
  "does not apply": "does not apply",
  "no verdict": "",
  "left to a person": "judge",
};

const UNIT_NAMES: Partial<Record<PublishedUnit, string>> = { in: "inches", mm: "millimetres", cm: "centimetres", "sq in": "square inches" };

const numberOf = (value: Exact | undefined): number | "" => (value === undefined ? "" : value.isZero() ? 0 : value.toNumber());

/** Asks a condition of the stair, and which labels it turns on. */
type Ask = (condition: Condition) => { readonly truth: Truth; readonly labels: string; readonly takenAsSo: boolean };

/** What is settled of a limit before its rule is asked. */
interface Setting {
  readonly rule: Rule;
  /** Why the limit does not apply; empty where it does, or may. */
  readonly outside: string;
  readonly notes: readonly string[];
  /** What could still excuse a failure, and so makes it a matter of judgement. */
  readonly doubts: readonly string[];
}

const factsOf = (measure: Measure): readonly string[] => {
  if (typeof measure === "string") return [measure];
  if ("formula" in measure) return ["riserHeight", "treadDepth"];
  return "inner" in measure ? [measure.inner] : measure;
};

/** The facts a rule is held against. */
const heldAgainst = (rule: Rule): readonly string[] => {
  if ("parts" in rule) return [...new Set(rule.parts.flatMap(heldAgainst))];
  return !("of" in rule) || rule.comparator === "uniformity" || rule.comparator === "alike" ? [] : factsOf(rule.of);
};

/** Sizes for which codes give spiral stairs, ship's stairs, alternating treads and aisles limits of their own. */
const SIZES_BY_KIND: readonly string[] = ["riserHeight", "treadDepth", "headroom", "width", "clearWidth", "widthAtHandrails"];

const KIND_NAMES: Readonly<Record<string, string>> = {
  spiral: "a spiral stair", ship: "a ship's stair", alternating: "a stair of alternating treads", aisle: "an aisle",
};

/** A limit of an ordinary stair neither passes nor fails a stair of another kind whose own limits were not read. */
const ruleForKind = (rule: Rule, { stairKind }: CodeFacts): Rule => {
  const name = stairKind === undefined ? undefined : KIND_NAMES[stairKind];
  if (name === undefined || !heldAgainst(rule).some((fact) => SIZES_BY_KIND.includes(fact))) return rule;
  return { comparator: "person", sense: `${name} may have limits of its own, which were not read here` };
};

const setting = (limit: Limit, ask: Ask, evaluate: (rule: Rule) => Finding, facts: CodeFacts): Setting => {
  const doubts: string[] = [];
  const notes: string[] = [];
  const toDecide = (labels: string): string => (labels === "" ? "" : `; give ${labels} to decide`);
  for (const { when, words } of limit.applies) {
    const { truth, labels, takenAsSo } = ask(when);
    if (truth === "no") return { rule: limit.rule, outside: `only where ${words}${takenAsSo ? `; give ${labels} if so` : ""}`, notes: [], doubts: [] };
    if (truth === "yes" && takenAsSo) notes.push(`taken that ${words}; give ${labels} if not`);
    if (truth === "unknown") doubts.push(`fails only where ${words}${toDecide(labels)}`);
  }
  let { rule } = limit;
  for (const { when, words, then } of limit.exceptions) {
    const { truth, labels } = ask(when);
    // An exception whose own rule would fail the stair too excuses nothing.
    if (truth === "unknown" && (typeof then === "string" || evaluate(then).outcome !== "breaks")) doubts.push(`exception: ${words}${toDecide(labels)}`);
    else if (truth === "yes" && then === "judge") doubts.push(`exception: ${words}`);
    else if (truth === "yes" && then === "does not apply") return { rule, outside: `exception: ${words}`, notes: [], doubts: [] };
    else if (truth === "yes" && typeof then !== "string") {
      notes.push(`exception: ${words}`);
      rule = then;
    }
  }
  if (limit.amendment !== undefined && rule.comparator === "shown") return { rule, outside: "no limit", notes: [], doubts: [] };
  return { rule: ruleForKind(rule, facts), outside: "", notes, doubts };
};

/** The rule with the rounded millimetres printed beside it in place of its figures. */
const roundedRule = (rule: Rule, printed: readonly string[]): Rule | undefined => {
  const [first, last] = [printed[0], printed[printed.length - 1]];
  if (first === undefined || last === undefined) return undefined;
  const [low, high]: [Figure, Figure] = [figure(first, "mm"), figure(last, "mm")];
  switch (rule.comparator) {
    case "min": return { ...rule, min: low };
    case "max": return { ...rule, max: high };
    case "range": return { ...rule, min: low, max: high };
    case "uniformity": return { ...rule, tolerance: high };
    case "every": {
      const [main, ...others] = rule.parts;
      const rounded = roundedRule(main, printed);
      return rounded === undefined ? undefined : { ...rule, parts: [rounded, ...others] };
    }
    default: return undefined;
  }
};

/** Says where the rounded millimetres would decide otherwise: they never decide. */
const roundedNote = (limit: Limit, rule: Rule, found: Finding, evaluate: (rule: Rule) => Finding): readonly string[] => {
  const printed = limit.printedMillimetres ?? [];
  const rounded = rule === limit.rule ? roundedRule(rule, printed) : undefined;
  if (rounded === undefined || found.margin === undefined || evaluate(rounded).outcome === found.outcome) return [];
  const unitName = UNIT_NAMES[limit.unit] ?? limit.unit;
  return [`decided in ${unitName}, as published: the rounded ${printed.join(" to ")} mm beside it would say otherwise`];
};

const verdictOf = (limit: Limit, found: Finding, doubts: readonly string[]): Verdict | "" => {
  if (found.outcome !== "breaks") return VERDICT_OF[found.outcome];
  if (doubts.length > 0) return "judge";
  return limit.advisory ? "caution" : "fail";
};

/** Says which of the facts a rule is held against were not given as they stand. */
const assumedNotes = (rule: Rule, assumed: CodeFacts["assumed"] = {}): readonly string[] =>
  [...new Set(heldAgainst(rule).flatMap((fact) => assumed[fact] ?? []))];

const rowOf = (limit: Limit, ask: Ask, evaluate: (rule: Rule) => Finding, facts: CodeFacts): CheckRow => {
  const { rule, outside, notes, doubts } = setting(limit, ask, evaluate, facts);
  const found = evaluate(rule);
  const verdict = outside === "" ? verdictOf(limit, found, doubts) : "does not apply";
  const unitName = UNIT_NAMES[limit.unit];
  const amended = limit.amendment === undefined ? [] : [`amended by ${limit.amendment.authority}, in place of ${limit.amendment.insteadOf}`];
  const judged = [
    ...found.notes,
    ...(found.given === undefined ? [] : assumedNotes(rule, facts.assumed)),
    ...notes,
    ...(found.outcome === "breaks" ? doubts : []),
    ...roundedNote(limit, rule, found, evaluate),
    ...(found.outcome === "not given" ? [limit.measured] : []),
    ...(limit.remark === "" ? [] : [limit.remark]),
  ];
  const inOtherUnit = found.given !== undefined && unitName !== undefined && facts.unit !== undefined && facts.unit !== limit.unit;
  return {
    item: limit.item,
    given: numberOf(found.given),
    limit: typeof found.limit === "string" ? found.limit : found.limit.toNumber(),
    margin: verdict === "does not apply" ? "" : numberOf(found.margin),
    unit: limit.unit,
    verdict,
    clause: limit.clause,
    sourceStatus: limit.amendment === undefined ? limit.status : `amended by ${limit.amendment.authority}`,
    note: [...amended, ...(outside === "" ? judged : [outside]), ...(inOtherUnit ? [`given, limit and margin in ${unitName}`] : [])].join("; "),
  };
};

const shownOnly = (item: string, note: string): CheckRow => ({
  item, given: "", limit: "", margin: "", unit: "", verdict: "", clause: "", sourceStatus: "", note,
});

/** What the code also rules on and this check leaves alone, by reason. */
const leftAlone = ({ outOfScope }: CodeProfile): readonly CheckRow[] => {
  if (outOfScope.length === 0) return [];
  const clausesOf = (reason: OutOfScope["reason"]): string =>
    [...new Set(outOfScope.filter((record) => record.reason === reason).map(({ clause }) => clause))].join(", ");
  const reasons = [...new Set(outOfScope.map(({ reason }) => reason))];
  return [shownOnly("not checked", reasons.map((reason) => `${reason} (${clausesOf(reason)})`).join("; "))];
};

/**
 * Every limit of a code held against a stair and its measured steps, in the unit the code is printed in, exactly, the boundary passing. A value known
 * both as designed and as built is held at its worst reading. The last rows say what is not checked and what a check is worth.
 */
export const codeCheck = (
  known: CodeFacts, profile: CodeProfile, steps: readonly Step[] = [], amendments: readonly Amendment[] = [],
): readonly CheckRow[] | Problem<AmendmentProblem> => {
  const facts: CodeFacts = known.windersAlike === "yes" ? { winderSpread: new Exact(0), ...known } : known;
  const inForce = amendedProfile(profile, amendments, facts.unit ?? "in");
  if (isProblem(inForce)) return inForce;
  const limitOf = (item: string): Limit | undefined => inForce.limits.find((limit) => limit.item === item);
  const reached = (item: string): Truth => {
    const limit = limitOf(item);
    if (limit?.rule.comparator === "shown") return "no";
    const is = limit === undefined ? undefined : isReached(limit.rule, facts, steps);
    return is === undefined ? "unknown" : is ? "yes" : "no";
  };
  const behind = (item: string): readonly string[] => {
    const rule = limitOf(item)?.rule;
    return rule !== undefined && "of" in rule && rule.comparator !== "uniformity" && rule.comparator !== "alike" ? [labelsOf(rule.of)] : [];
  };
  const given = new Set((Object.keys(FACT_LABELS) as FactName[]).filter((fact) => facts[fact] !== undefined).map((fact) => FACT_LABELS[fact].label));
  const ask: Ask = (condition) => {
    const truth = conditionTruth(condition, facts, reached);
    const open = truth === "unknown" ? openPart(condition, facts, reached) : condition;
    return {
      truth,
      takenAsSo: isTakenAsSo(condition, facts),
      labels: [...new Set(conditionLabels(open, behind))].filter((label) => !given.has(label)).join(" or "),
    };
  };
  const stair = { facts, steps, reached, behind };
  return [
    ...inForce.limits.map((limit) => rowOf(limit, ask, (rule) => finding(rule, limit, stair), facts)),
    ...leftAlone(inForce),
    shownOnly("caution", CAUTION),
  ];
};
