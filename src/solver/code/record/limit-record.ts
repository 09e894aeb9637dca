import { Exact } from "../../length/exact";
import type {
  Applicability, Limit, Measure, OutOfScope, PublishedUnit, RelationRule, RequiredRule, Rule, Source, SourceStatus, UniformityRule,
} from "../profile";

/** Rules without a figure of their own: it is the printed text of their limit. */
export type BareRule =
  | { readonly comparator: "min" | "max" | "range" | "equals" | "slope" | "sphere"; readonly of: Measure }
  | Omit<UniformityRule, "tolerance">
  | Omit<RequiredRule, "from">
  | { readonly comparator: "exempt-when"; readonly of: Measure; readonly frees: string }
  | { readonly comparator: "shown" }
  | { readonly comparator: "every"; readonly parts: readonly [RuleRecord, ...RuleRecord[]]; readonly needs: "all" | "first" | "any" }
  | { readonly comparator: "either"; readonly parts: readonly [RuleRecord, ...RuleRecord[]] };

/** A rule as a record has it: a figure that is left out is the printed text, one that is given says which words of the record it is. */
export type RuleRecord = Rule | BareRule;

/** The half of a width, from its side to its middle. */
export const HALF = { of: "half", times: new Exact("0.5") } as const satisfies RelationRule["part"];

/** What most records of a code have in common. */
export interface Common {
  readonly unit: PublishedUnit;
  readonly status: SourceStatus;
  readonly sources: readonly Source[];
}

/** A limit as the code prints it. */
export interface LimitRecord extends Omit<Limit, "rule" | "amendment"> {
  readonly rule: RuleRecord;
}

type Defaulted = "applies" | "exceptions" | "advisory" | "remark" | keyof Common;

/** A record with what is usual left out: no condition, binding, in the unit and from the source that most records of the code have. */
export type LimitRow = Omit<LimitRecord, Defaulted> & Partial<Pick<LimitRecord, Exclude<Defaulted, "applies">>> & {
  readonly applies?: Applicability | readonly Applicability[];
};

export const limitRecord = (common: Common) =>
  (row: LimitRow): LimitRecord => ({
    ...common, exceptions: [], advisory: false, remark: "", ...row, applies: "applies" in row ? [row.applies ?? []].flat() : [],
  });

/** Records of one code that no check of an ordinary stair's sizes can hold. */
export const outsideRecord = (common: Omit<Common, "unit">) =>
  (row: Omit<OutOfScope, keyof Omit<Common, "unit">> & Partial<Omit<Common, "unit">>): OutOfScope => ({ ...common, ...row });
