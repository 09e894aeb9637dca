import type { Length } from "../length/length";
import { STAIR_LABELS } from "../stair-labels";
import type { StairLabelName } from "./stair-facts";

/** One line of a stair table: the key of its label, its value with kind, and what was assumed for it. */
export interface LayoutLine {
  readonly key: StairLabelName;
  readonly kind: "length" | "count" | "angle" | "number" | "text";
  readonly value: Length | number | string | undefined;
  readonly assumed: string;
}

const KINDS = {
  length: "length", count: "count", number: "number", ratio: "number", angle: "angle", choice: "text", flag: "text", text: "text",
} as const satisfies Readonly<Record<(typeof STAIR_LABELS)[StairLabelName]["kind"] | "number", LayoutLine["kind"]>>;

/** A label's value as it is printed; a flag is yes or no. */
export const layoutLine = (key: StairLabelName, value: LayoutLine["value"] | boolean, assumed = ""): LayoutLine => ({
  key, kind: KINDS[STAIR_LABELS[key].kind], value: typeof value === "boolean" ? (value ? "yes" : "no") : value, assumed,
});
