import type { Length } from "../length/length";
import type { STAIR_LABELS, StairLabel } from "../stair-labels";

type Labels = typeof STAIR_LABELS;

export type StairLabelName = keyof Labels;

interface ValueOf {
  readonly length: Length;
  readonly count: number;
  readonly number: number;
  readonly angle: number;
  readonly ratio: number;
  readonly flag: boolean;
  readonly text: string;
}

/** What stands beside a label. */
export type LabelValue<Label extends StairLabel> = Label["kind"] extends keyof ValueOf
  ? ValueOf[Label["kind"]]
  : Label extends { readonly options: readonly (infer Option)[] }
    ? Option
    : never;

/** What is known of a stair, by the labels of the stair table. Everything may be unknown. */
export type StairFacts = { readonly [Name in Exclude<StairLabelName, "unit">]?: LabelValue<Labels[Name]> };

export type OpenEnd = LabelValue<Labels["openEnd"]>;

export const isOpen = (side: "left" | "right", openEnd: OpenEnd): boolean => openEnd === side || openEnd === "both";
