import type { Exact } from "../../length/exact";
import type { Reached } from "../condition";
import type { CodeFacts, Step } from "../fact-labels";
import { type Figure, type Measure, type PublishedUnit, type Rule, sizeOf, UNIT_SIZE } from "../profile";
import { DESIGN, labelsOf, type Reading, readings, worst } from "../reading";
import { sizeText } from "../size-text";

/** `touches`: the opening is exactly as wide as the sphere. */
export type Outcome = "holds" | "breaks" | "touches" | "not given" | "does not apply" | "no verdict" | "left to a person";

/** What one rule says of one stair; given and margin in the limit's published unit, margin positive inside. */
export interface Finding {
  readonly outcome: Outcome;
  readonly given?: Exact;
  readonly limit: Exact | string;
  readonly margin?: Exact;
  readonly notes: readonly string[];
}

/** A rule of one kind. */
export type RuleOf<Comparator extends Rule["comparator"]> = Extract<Rule, { readonly comparator: Comparator }>;

/** The stair a rule is compared with. */
export interface Stair {
  readonly facts: CodeFacts;
  readonly steps: readonly Step[];
  readonly reached: Reached;
  readonly behind: (item: string) => readonly string[];
}

const isLengthUnit = (unit: PublishedUnit): boolean => unit === "in" || unit === "mm" || unit === "cm";

export const inUnit = (size: Exact, unit: PublishedUnit): Exact => size.div(UNIT_SIZE[unit]);

export const holding = (margin: Exact): Outcome => (margin.isNegative() && !margin.isZero() ? "breaks" : "holds");

/** What to give, and in `words` what it is held against: a limit alone does not say whether more or less of it is wrong. */
export const missing = (labels: string, limit: Exact | string, words = ""): Finding => ({
  outcome: "not given",
  limit,
  notes: [`give ${labels} to check this${words === "" ? "" : `: ${words}`}`],
});

/** A figure of another kind than the limit's unit, such as a rise beside a count of risers, stays in its own. */
export const unitFor = (printed: Figure, unit: PublishedUnit): PublishedUnit =>
  isLengthUnit(printed.unit) === isLengthUnit(unit) ? unit : printed.unit;

export const numberOf = (printed: Figure, unit: PublishedUnit): Exact => inUnit(sizeOf(printed), unitFor(printed, unit));

/** A figure as the limit's own unit has it, whatever unit an amendment came in. */
export const sizeWords = (printed: Figure, unit: PublishedUnit): string => sizeText(sizeOf(printed), unitFor(printed, unit));

const whereOf = (reading: Reading, all: readonly Reading[]): readonly string[] => {
  if (all.length < 2) return [];
  const steps = all.filter(({ where }) => where !== DESIGN).length;
  const of = steps === all.length ? `${steps} readings` : `${steps} ${steps === 1 ? "step" : "steps"} and ${DESIGN}`;
  return [`worst is ${reading.where}, of ${of}`];
};

/** The worst reading compared with a margin. */
export const compared = (
  stair: Stair, measure: Measure, unit: PublishedUnit, limit: Exact | string, words: string, margin: (size: Exact) => Exact,
): Finding => {
  const all = readings(measure, stair.facts, stair.steps);
  const reading = worst(all, margin);
  if (reading === undefined) return missing(labelsOf(measure), limit, words);
  const inside = margin(reading.size);
  return {
    outcome: holding(inside),
    given: inUnit(reading.size, unit),
    limit,
    margin: inUnit(inside, unit),
    notes: [words, ...whereOf(reading, all)],
  };
};
