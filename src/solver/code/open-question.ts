import { type ChoiceFact, type CodeFacts, FACT_LABELS } from "./fact-labels";
import type { Condition, Limit, Rule } from "./profile";

/** A question a limit turns on and nobody answered, with the answer that is taken as so. */
export interface OpenQuestion {
  readonly fact: ChoiceFact;
  readonly taken: string;
}

/** Answers to questions, by the fact they settle. */
export type Answers = Readonly<Record<string, string>>;

/**
 * Facts that are as usual unless the table says otherwise, as there are no winders unless it names some: the kind of stair and the shape
 * of its landing, and where a size was taken. Each takes the size as it stands for the ordinary place; none makes a limit easier by
 * silence.
 */
const isAsUsual = (fact: ChoiceFact): boolean => FACT_LABELS[fact].usual !== undefined;

const ofCondition = (condition: Condition): readonly OpenQuestion[] => {
  if ("all" in condition) return condition.all.flatMap(ofCondition);
  if ("any" in condition) return condition.any.flatMap(ofCondition);
  if ("not" in condition) return ofCondition(condition.not);
  if (!("is" in condition) || condition.otherwise === undefined || isAsUsual(condition.fact)) return [];
  // An `otherwise` that is no answer only says that the fact is not known.
  const isAnswer = FACT_LABELS[condition.fact].choices?.includes(condition.otherwise) === true;
  return isAnswer ? [{ fact: condition.fact, taken: condition.otherwise }] : [];
};

/** The conditions inside a rule. */
export const conditionsIn = (rule: Rule): readonly Condition[] => {
  if ("parts" in rule) return rule.parts.flatMap(conditionsIn);
  switch (rule.comparator) {
    case "table": return rule.rows.flatMap((row) => [row.when, ...conditionsIn(row.rule)]);
    case "prohibited": return [rule.present];
    case "required": case "required-when": return [rule.provided];
    default: return [];
  }
};

/** The questions of a limit, its exceptions and their rules, that nobody answered. */
export const openQuestions = ({ rule, applies, exceptions }: Limit, facts: CodeFacts): readonly OpenQuestion[] => {
  const conditions = [
    ...applies.map(({ when }) => when),
    ...exceptions.flatMap(({ when, then }) => [when, ...(typeof then === "string" ? [] : conditionsIn(then))]),
    ...conditionsIn(rule),
  ];
  const byFact = new Map(conditions.flatMap(ofCondition).map((question) => [question.fact, question]));
  return [...byFact.values()].filter(({ fact }) => facts[fact] === undefined);
};

/** Every way to answer the questions together; what is taken as so comes first. */
export const waysToAnswer = (questions: readonly OpenQuestion[]): readonly Answers[] =>
  questions.reduce<readonly Answers[]>(
    (ways, { fact, taken }) =>
      [taken, ...(FACT_LABELS[fact].choices ?? []).filter((choice) => choice !== taken)].flatMap((choice) =>
        ways.map((way) => ({ ...way, [fact]: choice })),
      ),
    [{}],
  );

/** The questions whose answer alone, whatever the others are, changes what is found. */
export const decidingQuestions = <Found,>(
  questions: readonly OpenQuestion[],
  ways: readonly (readonly [Answers, Found])[],
): readonly OpenQuestion[] => {
  const keyOf = (answers: Answers): string => questions.map(({ fact }) => answers[fact]).join("|");
  const found = new Map(ways.map(([answers, what]) => [keyOf(answers), what]));
  return questions.filter(({ fact, taken }) => ways.some(([answers, what]) => found.get(keyOf({ ...answers, [fact]: taken })) !== what));
};

/** What is taken as so, in the labels and words of a stair table. */
export const takenWords = (questions: readonly OpenQuestion[]): readonly string[] =>
  [...new Set(questions.map(({ fact, taken }) => `${FACT_LABELS[fact].label} ${taken}`))];

/** Every question of a code that nobody answered, answered as it is taken. */
export const answeredAsTaken = (limits: readonly Limit[], facts: CodeFacts): CodeFacts => ({
  ...facts, ...Object.fromEntries(limits.flatMap((limit) => openQuestions(limit, facts)).map(({ fact, taken }) => [fact, taken])),
});
