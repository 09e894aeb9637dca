import type { Length, Unit } from "../length/length";
import type { LabelValue, StairLabelName } from "../layout/stair-facts";
import { type LabelTopic, STAIR_LABELS, type StairLabel } from "../stair-labels";
import { words } from "../words";

type Labels = typeof STAIR_LABELS;

/** What the check calls the fact under a label: a name of its own where it is worked out of the stair, else the label's. */
type FactOf<Name extends StairLabelName> = Labels[Name] extends { readonly fact: infer Fact extends string }
  ? Fact
  : Labels[Name] extends { readonly topic: string } ? Name : never;

/** What is known of a stair for a code check; whatever is not known is left out. Slopes are rise over run, angles in degrees. */
export type CodeFacts = { readonly [Name in StairLabelName as FactOf<Name>]?: LabelValue<Labels[Name]> } & {
  readonly unit?: Unit;
  /** The note for a fact that was not given as it stands: a default, or a wish in place of a finding. */
  readonly assumed?: Readonly<Partial<Record<string, string>>>;
};

/** One step of a flight as built; the top riser of a stair that ends on a floor has no run. */
export interface Step {
  readonly step: string | number;
  readonly rise?: Length;
  readonly run?: Length;
  readonly width?: Length;
  readonly nosing?: Length;
}

export type StepColumn = Exclude<keyof Step, "step">;

export type FactName = Exclude<keyof CodeFacts, "unit" | "assumed">;
type NamesOf<Value> = { [Name in FactName]-?: NonNullable<CodeFacts[Name]> extends Value ? Name : never }[FactName];
export type ChoiceFact = NamesOf<string>;
export type MeasuredFact = Exclude<FactName, ChoiceFact>;

export interface FactLabel {
  /** As it stands in a stair table. */
  readonly label: string;
  readonly kind: Exclude<StairLabel["kind"], "number" | "flag" | "text">;
  readonly choices?: readonly string[];
  readonly topic: LabelTopic;
  /** What every code takes it for where nobody says so. */
  readonly usual?: string;
}

const labels: readonly (readonly [string, StairLabel])[] = Object.entries(STAIR_LABELS);

/** The label of every fact in a stair table, in the order of the labels. */
export const FACT_LABELS = Object.fromEntries(
  labels.flatMap(([name, { kind, options, topic, fact = name, usual }]) =>
    topic === undefined
      ? []
      : [[fact, { label: words(name), kind, topic, ...(options && { choices: options }), ...(usual !== undefined && { usual }) }]]),
) as Readonly<Record<FactName, FactLabel>>;

export const FACT_NAMES = Object.keys(FACT_LABELS) as FactName[];

/** Facts that are held as they stand under their label; the others are worked out of the stair. */
type HeldAsGiven = {
  [Name in StairLabelName]: Labels[Name] extends { readonly fact: string } ? never : FactOf<Name>;
}[StairLabelName];

export const HELD_AS_GIVEN = labels.flatMap(([name, { topic, fact }]) =>
  (topic !== undefined && fact === undefined ? [name] : [])) as HeldAsGiven[];
