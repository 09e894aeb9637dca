import { lengthOf } from "../length/length";
import { parseLength } from "../length/parse-length";
import { isProblem } from "../problem";
import { type LabelDefault, STAIR_LABELS } from "../stair-labels";
import type { LabelValue, StairLabelName } from "./stair-facts";

type Labels = typeof STAIR_LABELS;

/** Labels that always have a value. */
export type DefaultedLabel = {
  [Name in StairLabelName]: Labels[Name] extends { readonly default: LabelDefault } ? Name : never;
}[StairLabelName];

/** Labels whose stand-in is a value of its own. */
export type FixedLabel = {
  [Name in DefaultedLabel]: Labels[Name]["default"] extends { readonly as: string } ? never : Name;
}[DefaultedLabel];

const valueOf = (standIn: LabelDefault): unknown => {
  if (!("inches" in standIn)) return "value" in standIn ? standIn.value : undefined;
  const length = typeof standIn.inches === "number" ? lengthOf(standIn.inches, "in") : parseLength(standIn.inches, "in");
  if (isProblem(length)) throw new Error(`no length: ${standIn.inches}`);
  return length;
};

/** What stands in for a label that was left out, each read once. */
export const STAIR_DEFAULTS = Object.fromEntries(
  Object.entries(STAIR_LABELS).flatMap(([name, label]) =>
    ("default" in label && !("as" in label.default) ? [[name, valueOf(label.default)]] : [])),
) as { readonly [Name in FixedLabel]: LabelValue<Labels[Name]> };
