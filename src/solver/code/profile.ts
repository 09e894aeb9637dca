import { Exact } from "../length/exact";
import { MILLIMETRES_PER_INCH } from "../length/length";
import type { ChoiceFact, FactName, MeasuredFact, StepColumn } from "./fact-labels";

/** A unit a code is printed in. */
export type PublishedUnit = "in" | "mm" | "cm" | "sq in" | "deg" | "ratio" | "count";

/** A printed figure in its own unit. */
export interface Figure {
  readonly value: Exact;
  readonly unit: PublishedUnit;
  /** The figure as the code prints it, where it was read from there. */
  readonly printed?: string;
}

export const figure = (value: string, unit: PublishedUnit): Figure => ({ value: new Exact(value), unit });

const MILLIMETRES_PER_CENTIMETRE = new Exact(10);

/** One published unit in millimetres, square millimetres, or as it is. */
export const UNIT_SIZE: Readonly<Record<PublishedUnit, Exact>> = {
  in: MILLIMETRES_PER_INCH,
  mm: new Exact(1),
  cm: MILLIMETRES_PER_CENTIMETRE,
  "sq in": MILLIMETRES_PER_INCH.times(MILLIMETRES_PER_INCH),
  deg: new Exact(1),
  ratio: new Exact(1),
  count: new Exact(1),
};

/** A figure in millimetres (lengths), square millimetres (areas) or as it is: exact, so figures of any two units meet. */
export const sizeOf = (printed: Figure): Exact => printed.value.times(UNIT_SIZE[printed.unit]);

/** How well a limit is founded; a text that names no edition counts as another one. */
export type SourceStatus = "checked against the code's text" | "checked against another edition" | "not yet checked";

/** Document and edition; an address only of the authority or of a public library of texts. */
export interface Source {
  readonly title: string;
  readonly address?: string;
}

/** What must be so of the stair, read off named facts. */
export type Condition =
  | { readonly fact: ChoiceFact; readonly is: readonly string[]; readonly otherwise?: string }
  | { readonly fact: MeasuredFact; readonly moreThan: Figure }
  | { readonly fact: MeasuredFact; readonly atLeast: Figure }
  | { readonly fact: MeasuredFact; readonly lessThan: Figure }
  | { readonly fact: MeasuredFact; readonly atMost: Figure }
  | { readonly given: FactName }
  /** The required-when or exempt-when limit of that quantity, as amended, is reached. */
  | { readonly reached: string }
  | { readonly all: readonly Condition[] }
  | { readonly any: readonly Condition[] }
  | { readonly not: Condition };

export type Formula = "two risers plus run" | "riser plus run" | "run less riser" | "riser times run" | "pitch";

/**
 * What a limit is compared with: a fact, the worst of several, a figure worked out of riser and run, or a fact without the bottom and top
 * step.
 */
export type Measure = MeasuredFact | readonly MeasuredFact[] | { readonly formula: Formula } | { readonly inner: MeasuredFact };

/** How a limit decides. The boundary passes, but for a sphere and for `moreThan`. */
export type Rule =
  | { readonly comparator: "min"; readonly of: Measure; readonly min: Figure }
  | { readonly comparator: "max"; readonly of: Measure; readonly max: Figure }
  | { readonly comparator: "range"; readonly of: Measure; readonly min: Figure; readonly max: Figure }
  | { readonly comparator: "equals"; readonly of: Measure; readonly values: readonly Figure[] }
  /** Rise over run, so that 1:48 is not rounded. */
  | { readonly comparator: "slope"; readonly of: Measure; readonly rise: number; readonly run: number; readonly printed?: string }
  | UniformityRule
  | { readonly comparator: "sphere"; readonly of: Measure; readonly sphere: Figure }
  | RequiredRule
  | { readonly comparator: "exempt-when"; readonly of: Measure; readonly atLeast: Figure; readonly frees: string }
  | RelationRule
  /** Something that is always required. */
  | { readonly comparator: "required"; readonly requires: string; readonly provided: Condition }
  | { readonly comparator: "prohibited"; readonly thing: string; readonly present: Condition }
  /** Steps that are to be alike, with no figure for how much: left to a person once there are measured steps. */
  | { readonly comparator: "alike"; readonly of: readonly StepColumn[]; readonly sense: string }
  /**
   * Several rules of one clause. With `any`, parts of which nothing is known take no part; with `first`, nor do they, but without the first
   * nothing passes; with `all`, each has to be known.
   */
  | { readonly comparator: "every"; readonly parts: readonly [Rule, ...Rule[]]; readonly needs: "all" | "first" | "any" }
  /** Kept when any of its parts is. */
  | { readonly comparator: "either"; readonly parts: readonly [Rule, ...Rule[]] }
  /** The rule of the first row whose condition holds. */
  | { readonly comparator: "table"; readonly rows: readonly [TableRow, ...TableRow[]] }
  /** What no label states: left to a person, in words. */
  | { readonly comparator: "person"; readonly sense: string }
  /** No figure, or a way of working: shown, without a verdict. */
  | { readonly comparator: "shown"; readonly text: string };

export interface TableRow {
  readonly when: Condition;
  readonly words: string;
  readonly rule: Rule;
}

/** Held against the first of these facts that is given, or a part of it, and never against more than `capped`. */
export interface RelationRule {
  readonly comparator: "relation";
  readonly of: Measure;
  readonly sense: "at least" | "at most" | "exactly";
  readonly than: readonly [MeasuredFact, ...MeasuredFact[]];
  readonly part?: { readonly of: "half"; readonly times: Exact };
  readonly capped?: Figure;
}

export interface UniformityRule {
  readonly comparator: "uniformity";
  /** A column of the measured steps, or a spread that was itself measured. */
  readonly of: StepColumn | { readonly spread: MeasuredFact };
  /** Largest less smallest of the flight, neighbours, distance from the design value, or that of the bottom step alone. */
  readonly within: "flight" | "neighbours" | "design" | "bottom step";
  readonly tolerance: Figure;
}

export type Threshold = { readonly atLeast: Figure } | { readonly moreThan: Figure };

export interface RequiredRule {
  readonly comparator: "required-when";
  readonly of: Measure;
  readonly from: Threshold;
  /** A second threshold, of something else, that asks for it too; in a unit of its own. */
  readonly or?: { readonly of: Measure; readonly from: Threshold };
  /** What is then required, and what shows that it is there. */
  readonly requires: string;
  readonly provided: Condition;
}

export interface Applicability {
  readonly when: Condition;
  readonly words: string;
}

export interface LimitException extends Applicability {
  /** The limit falls away, another rule takes its place, or a person judges what the limit would fail. */
  readonly then: "does not apply" | "judge" | Rule;
}

export interface Limit {
  /** The quantity, in words with spaces: the `item` of a check. */
  readonly item: string;
  readonly clause: string;
  /** Unit and text as printed; the text stands without its unit. */
  readonly unit: PublishedUnit;
  readonly text: string;
  /** The millimetres printed beside it, which are rounded and never decide. */
  readonly printedMillimetres?: readonly string[];
  /** What a count is taken over: steps of one flight, of the whole stair between two floors, or storeys. */
  readonly counts?: "flight" | "stair" | "storeys";
  /** Where and how it is measured. */
  readonly measured: string;
  readonly rule: Rule;
  readonly applies: readonly Applicability[];
  readonly exceptions: readonly LimitException[];
  /** A limit that may caution and never fail. */
  readonly advisory: boolean;
  readonly status: SourceStatus;
  readonly sources: readonly Source[];
  readonly remark: string;
  readonly amendment?: { readonly authority: string; readonly insteadOf: string };
}

/** A record of the code that no check of an ordinary stair's geometry can hold, or that no label of the stair table states. */
export interface OutOfScope {
  readonly item: string;
  readonly clause: string;
  readonly unit: string;
  readonly text: string;
  readonly reason: "spiral stair" | "ship's stair" | "alternating stair" | "live load" | "door" | "lift" | "not in the stair table";
  readonly status: SourceStatus;
  readonly sources: readonly Source[];
}

export interface CodeProfile {
  readonly id: string;
  readonly title: string;
  readonly edition: string;
  readonly region: string;
  /** What people call it without an edition; left out where it is called nothing else. */
  readonly family?: string;
  /** Others of the family are for other kinds of stair or work, and not other editions. */
  readonly isOneKind?: true;
  /** Left out for a code; rules of the trade are none. */
  readonly isCode?: false;
  /** A code that asks for no nosing: one that nobody gave is none there. */
  readonly untypedNosing?: "none";
  readonly limits: readonly Limit[];
  readonly outOfScope: readonly OutOfScope[];
}
