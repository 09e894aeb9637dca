import { CAUTION } from "../caution";
import { Exact } from "../length/exact";
import { isProblem, type Problem } from "../problem";
import { type Amendment, amendedProfile, type AmendmentProblem } from "./amended-profile";
import { conditionLabels, conditionTruth, openPart, type Truth } from "./condition";
import { coverage, limitsOn, TOPIC_NAMES, TOPICS } from "./coverage";
import { type CodeFacts, FACT_LABELS, type FactName, type Step } from "./fact-labels";
import { finding } from "./finding/finding";
import type { Finding, Outcome } from "./finding/compared";
import { isReached } from "./finding/requirement-finding";
import { conditionsIn, decidingQuestions, type OpenQuestion, openQuestions, takenWords, waysToAnswer } from "./open-question";
import {
  type CodeProfile,
  type Condition,
  type Figure,
  figure,
  type Limit,
  type Measure,
  type OutOfScope,
  type PublishedUnit,
  type Rule,
} from "./profile";
import { labelsToEnter } from "./labels-to-enter";
import { labelsOf } from "./reading";
import { HAS_WINDERS } from "./record/stair-conditions";

/** Hardest first, as they are counted in one of the last rows. What nobody gave, a size or an answer, neither passes nor fails a stair. */
export const VERDICTS = [
  "fail",
  "judge",
  "assumed: would fail",
  "not on file",
  "not given",
  "caution",
  "assumed: would pass",
  "pass",
  "no limit",
  "does not apply",
] as const;

export type Verdict = (typeof VERDICTS)[number];

/** One row of a check. Given, limit and margin are in `unit`, the unit the code is printed in; the margin is positive inside. */
export interface CheckRow {
  readonly item: string;
  readonly given: number | "";
  readonly limit: number | string;
  readonly margin: number | "";
  readonly unit: PublishedUnit | "";
  /** Empty for rows that are only shown: limits without a figure, and the last rows. */
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

/** Asks a condition of the stair, and of one that is open which labels would decide it, in words behind its own. */
interface Ask {
  readonly truth: (condition: Condition) => Truth;
  readonly toDecide: (condition: Condition) => string;
}

/** What is settled of a limit before its rule is asked. */
interface Setting {
  readonly rule: Rule;
  /** Why the limit does not apply; empty where it does, or may. */
  readonly outside: string;
  /** Whether it does not apply because the stair is of another kind than the limit is for. */
  readonly elsewhere: boolean;
  readonly notes: readonly string[];
  /** What could still excuse a failure, and so makes it a matter of judgement. */
  readonly doubts: readonly string[];
}

const factsOf = (measure: Measure): readonly string[] => {
  if (typeof measure === "string") return [measure];
  if ("formula" in measure) return ["riserHeight", "treadDepth"];
  return "inner" in measure ? [measure.inner] : measure;
};

/** The facts a rule is compared with. */
const heldAgainst = (rule: Rule): readonly string[] => {
  if ("parts" in rule) return [...new Set(rule.parts.flatMap(heldAgainst))];
  if (rule.comparator === "table") return [...new Set(rule.rows.flatMap(({ rule: part }) => heldAgainst(part)))];
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

/** Facts that say what kind of stair it is, and so which of a code's limits are for it. */
const KIND_OF_STAIR: readonly string[] = ["use", "dwelling", "infrequent", "stairKind", "partThree"];

/** Whether a condition turns on the kind of stair alone. */
const isOfKind = (condition: Condition): boolean => {
  if ("all" in condition) return condition.all.every(isOfKind);
  if ("any" in condition) return condition.any.every(isOfKind);
  if ("not" in condition) return isOfKind(condition.not);
  return "fact" in condition && KIND_OF_STAIR.includes(condition.fact);
};

const setting = (limit: Limit, ask: Ask, evaluate: (rule: Rule) => Finding, facts: CodeFacts): Setting => {
  const doubts: string[] = [];
  const notes: string[] = [];
  const outside = (why: string) => ({ rule: limit.rule, outside: why, elsewhere: false, notes: [], doubts: [] });
  for (const { when, words } of limit.applies) {
    const truth = ask.truth(when);
    if (truth === "no") return { ...outside(`only where ${words}`), elsewhere: isOfKind(when) };
    if (truth === "unknown") doubts.push(`fails only where ${words}${ask.toDecide(when)}`);
  }
  let { rule } = limit;
  for (const { when, words, then } of limit.exceptions) {
    const truth = ask.truth(when);
    // An exception whose own rule would fail the stair too excuses nothing.
    if (truth === "unknown" && (typeof then === "string" || evaluate(then).outcome !== "breaks"))
      doubts.push(`exception: ${words}${ask.toDecide(when)}`);
    else if (truth === "yes" && then === "judge") doubts.push(`exception: ${words}`);
    else if (truth === "yes" && then === "does not apply") return { ...outside(`exception: ${words}`), elsewhere: isOfKind(when) };
    else if (truth === "yes" && typeof then !== "string") {
      notes.push(`exception: ${words}`);
      rule = then;
    }
  }
  if (limit.amendment !== undefined && rule.comparator === "shown") return outside("no limit");
  return { rule: ruleForKind(rule, facts), outside: "", elsewhere: false, notes, doubts };
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

/** Says which of the facts a rule is compared with were not given as they stand. */
const assumedNotes = (rule: Rule, assumed: CodeFacts["assumed"] = {}): readonly string[] =>
  [...new Set(heldAgainst(rule).flatMap((fact) => assumed[fact] ?? []))];

interface Judged extends Omit<CheckRow, "note"> {
  readonly notes: readonly string[];
  /** The unit of the row where it is not that of the stair. */
  readonly inUnit: readonly string[];
  readonly elsewhere: boolean;
  /** Questions nobody answered, on which this row turns. */
  readonly open: readonly OpenQuestion[];
}

const judgedRow = (limit: Limit, ask: Ask, evaluate: (rule: Rule) => Finding, facts: CodeFacts, unlimited: readonly Limit[]): Judged => {
  const { rule, outside, elsewhere, notes, doubts } = setting(limit, ask, evaluate, facts);
  const found = evaluate(rule);
  const verdict = outside !== "" ? "does not apply" : unlimited.includes(limit) ? "no limit" : verdictOf(limit, found, doubts);
  const unitName = UNIT_NAMES[limit.unit];
  const amended =
    limit.amendment === undefined ? [] : [`amended by ${limit.amendment.authority}, in place of ${limit.amendment.insteadOf}`];
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
    elsewhere,
    open: [],
    item: limit.item,
    given: numberOf(found.given),
    limit: typeof found.limit === "string" ? found.limit : found.limit.toNumber(),
    margin: verdict === "does not apply" ? "" : numberOf(found.margin),
    unit: limit.unit,
    verdict,
    clause: limit.clause,
    sourceStatus: limit.amendment === undefined ? limit.status : `amended by ${limit.amendment.authority}`,
    notes: [...amended, ...(outside === "" ? judged : [outside])],
    inUnit: inOtherUnit ? [`given, limit and margin in ${unitName}`] : [],
  };
};

/** Of rows under other answers, the one that weighs most where the limit would not be asked at all. */
const WEIGHT: readonly (Verdict | "")[] = ["fail", "not given", "judge", "caution", "pass"];

const ASSUMED: Readonly<Partial<Record<Verdict | "", Verdict>>> = { pass: "assumed: would pass", fail: "assumed: would fail" };

/**
 * A row that reads otherwise under another answer to a question nobody answered neither passes nor fails: it says what is assumed and
 * which label to give. Where the limit is not asked at all but for another answer, it stands as that answer has it, and without a size it
 * is not given.
 */
const weighed = (taken: Judged, questions: readonly OpenQuestion[], under: (answers: Partial<CodeFacts>) => Judged): Judged => {
  if (questions.length === 0) return taken;
  const ways = waysToAnswer(questions).map((answers) => [answers, under(answers)] as const);
  const open = decidingQuestions(questions, ways.map(([answers, { verdict }]) => [answers, verdict] as const));
  if (open.length === 0) return taken;
  const labels = open.map(({ fact }) => FACT_LABELS[fact].label).join(" or ");
  if (taken.verdict !== "does not apply") {
    const assumes = `assumes ${takenWords(open).join(" and ")}; enter ${labels} to change`;
    return { ...taken, open, verdict: ASSUMED[taken.verdict] ?? taken.verdict, notes: [...taken.notes, assumes] };
  }
  const asked = ways.map(([, row]) => row);
  const heaviest = WEIGHT.flatMap((verdict) => asked.filter((row) => row.verdict === verdict))[0];
  if (heaviest === undefined) return taken;
  return {
    ...heaviest, open, verdict: (heaviest.given === "" ? undefined : ASSUMED[heaviest.verdict]) ?? "not given",
    notes: [...taken.notes, `enter ${labels} to decide`, ...heaviest.notes],
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

/** A value that nobody gave decides nothing: what holds without it stands, and what only it decides is marked assumed. */
const withoutAssumed = (known: Judged, full: Judged): Judged => {
  if (known.verdict !== "not given" && known.verdict !== "does not apply") return known;
  if (full.verdict === "pass") return { ...full, verdict: "assumed: would pass" };
  if (full.verdict === "fail") return { ...full, verdict: "assumed: would fail" };
  return full.verdict === "caution" || full.verdict === "judge" || full.verdict.startsWith("assumed") ? full : known;
};

const WINDER_LABELS = "the flight has winders or tapered treads";

/** A row for each topic of which this code has nothing on file, or nothing for a stair of this kind. */
const notOnFile = (profile: CodeProfile, rows: readonly Judged[], hasWinders: boolean): readonly CheckRow[] =>
  profile.isCode === false ? [] : TOPIC_NAMES.flatMap((topic) => {
    if (topic === "winders" && !hasWinders) return [];
    const items: readonly string[] = TOPICS[topic];
    const found = rows.filter(({ item }) => items.includes(item));
    if (coverage(topic, profile) !== "not on file" && !(found.length > 0 && found.every(({ elsewhere }) => elsewhere))) return [];
    const why = found.length === 0
      ? `whether ${profile.title.replace(/ \(.*\)$/, "")}, ${profile.edition}, limits this is not on file`
      : "the limits on file are for another kind of stair";
    return [
      {
        item: topic,
        given: "",
        limit: "not on file",
        margin: "",
        unit: "",
        verdict: "not on file",
        clause: "",
        sourceStatus: "not yet checked",
        note: `${why}; look it up in the code${topic === "winders" ? `, as ${WINDER_LABELS}` : ""}`,
      } as const,
    ];
  });

/** A row as it stands in the table, without repeated notes. */
const rowOf = ({ elsewhere: _elsewhere, open: _open, notes, inUnit, ...row }: Judged): CheckRow => ({
  ...row,
  note: [...new Set([...notes, ...inUnit])].join("; "),
});

const NOBODY: Readonly<Partial<Record<string, string>>> = {};

/** The facts somebody gave. */
const givenOnly = (facts: CodeFacts): CodeFacts => {
  const { assumed = NOBODY } = facts;
  return Object.fromEntries(Object.entries(facts).filter(([fact]) => fact !== "assumed" && assumed[fact] === undefined));
};

/** In a code that asks for no nosing, one that nobody gave is none. */
const withoutNosing = (facts: CodeFacts, { untypedNosing }: CodeProfile): CodeFacts =>
  untypedNosing === undefined || facts.assumed?.["nosing"] === undefined ? facts
    : { ...facts, nosing: new Exact(0), assumed: { ...facts.assumed, nosing: "nosing assumed: none, as this code asks for none" } };

/** Rows that another label would decide. */
const OPEN: readonly (Verdict | "")[] = ["not given", "judge", "assumed: would pass", "assumed: would fail"];

/** The labels to give for rows that are open, in one row. */
const toEnter = (judged: readonly Judged[], { limits }: CodeProfile, facts: CodeFacts): readonly CheckRow[] => {
  const open = limits.filter((_, index) => OPEN.includes(judged[index]?.verdict ?? ""));
  const labels = labelsToEnter(open, facts, judged.flatMap((row) => row.open.map(({ fact }) => fact)));
  return labels === "" ? [] : [shownOnly("labels to enter", `these settle rows that read not given, judge or assumed; ${labels}`)];
};

const counted = (rows: readonly CheckRow[]): string =>
  VERDICTS.map((verdict) => `${verdict} ${rows.filter((row) => row.verdict === verdict).length}`).join("; ");

/** Every limit of a code in force, compared with the facts. */
const judgedRows = (facts: CodeFacts, inForce: CodeProfile, steps: readonly Step[]): readonly Judged[] => {
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
  const given = new Set(
    (Object.keys(FACT_LABELS) as FactName[]).filter((fact) => facts[fact] !== undefined).map((fact) => FACT_LABELS[fact].label),
  );
  const unlimited = TOPIC_NAMES.flatMap((topic) => (coverage(topic, inForce) === "none in this code" ? limitsOn(topic, inForce) : []));
  return inForce.limits.map((limit) => {
    // A rule without conditions finds the same whatever the answers are.
    const unconditional = new Map<Rule, Finding>();
    const under = (answers: Partial<CodeFacts>): Judged => {
      const answered = { ...facts, ...answers };
      const ask: Ask = {
        truth: (condition) => conditionTruth(condition, answered, reached),
        toDecide: (condition) => {
          const labels = new Set(conditionLabels(openPart(condition, answered, reached), behind));
          const missing = [...labels].filter((label) => !given.has(label)).join(" or ");
          return missing === "" ? "" : `; give ${missing} to decide`;
        },
      };
      const evaluate = (rule: Rule): Finding => {
        const known = unconditional.get(rule);
        if (known !== undefined) return known;
        const found = finding(rule, limit, { facts: answered, steps, reached, behind });
        if (conditionsIn(rule).length === 0) unconditional.set(rule, found);
        return found;
      };
      return judgedRow(limit, ask, evaluate, answered, unlimited);
    };
    return weighed(under({}), openQuestions(limit, facts), under);
  });
};

const USUAL = "the usual stair: stair kind standard, without winders, unless stair kind or winders say otherwise";

/** What the check takes as so, in one row: the questions on which rows turn, and what is usual. */
const taken = (judged: readonly Judged[], { stairKind }: CodeFacts, hasWinders: boolean): readonly CheckRow[] => {
  const words = takenWords(judged.flatMap((row) => row.open)).join(", ");
  const open =
    words === ""
      ? ""
      : `${words}: nobody gave ${words.includes(",") ? "these" : "this"}; a row that turns on it reads assumed or not given until ` +
        `its label is given`;
  const usual = stairKind === undefined && !hasWinders ? USUAL : "";
  return open === "" && usual === "" ? [] : [shownOnly("assumed", [open, usual].filter((part) => part !== "").join("; "))];
};

/**
 * Every limit of a code compared with a stair and its measured steps, in the unit the code is printed in, exactly, the boundary passing.
 * A value known both as designed and as built is held at its worst reading; one that nobody gave decides nothing, nor does an answer to a
 * question nobody answered. A row for each topic that is not on file; the last rows say what is not checked, what is taken as so, which
 * labels would tell more, how many rows have which verdict, which code it is and what a check is worth.
 */
export const codeCheck = (
  known: CodeFacts, profile: CodeProfile, steps: readonly Step[] = [], amendments: readonly Amendment[] = [],
): readonly CheckRow[] | Problem<AmendmentProblem> => {
  const facts = withoutNosing(known.windersAlike === "yes" ? { winderSpread: new Exact(0), ...known } : known, profile);
  const inForce = amendedProfile(profile, amendments, facts.unit ?? "in");
  if (isProblem(inForce)) return inForce;
  const full = judgedRows(facts, inForce, steps);
  const sure = Object.keys(facts.assumed ?? NOBODY).length === 0 ? full : judgedRows(givenOnly(facts), inForce, steps);
  const judged = full.map((row, index) => withoutAssumed(sure[index] ?? row, row));
  const hasWinders = conditionTruth(HAS_WINDERS, facts, () => "unknown") === "yes";
  const rows = [...judged.map(rowOf), ...notOnFile(inForce, judged, hasWinders)];
  return [
    ...rows,
    ...leftAlone(inForce),
    ...taken(judged, facts, hasWinders),
    ...toEnter(judged, inForce, facts),
    shownOnly("verdicts", counted(rows)),
    shownOnly("code", `${inForce.id}: ${inForce.title}, ${inForce.edition}`),
    shownOnly("caution", CAUTION),
  ];
};
