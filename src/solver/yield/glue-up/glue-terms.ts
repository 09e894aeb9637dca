import { type Length, lengthOf } from "../../length/length";

export const GLUE_LENGTHS = [
  "joint", "roughLength", "roughWidth", "leastStrip", "greatestStrip", "plane", "kerf", "trim",
] as const;
export const GLUE_LABELS = [...GLUE_LENGTHS, "strips", "together"] as const;
export type GlueLength = (typeof GLUE_LENGTHS)[number];
export type GlueLabel = (typeof GLUE_LABELS)[number];

/** `any`: strips of one panel may be of several boards. */
export const TOGETHER = ["any", "board"] as const;

/** How panels are glued up. */
export interface GlueTerms extends Readonly<Record<GlueLength, Length>> {
  /** The most strips in a panel; Infinity for any. */
  readonly strips: number;
  readonly together: (typeof TOGETHER)[number];
}

const inches = (value: number): Length => lengthOf(value, "in");

/**
 * Common practice, no source: an inch longer, a quarter wider, a sixteenth off each edge at the jointer. A teaching page leaves an inch
 * each way; shops glue strips as wide as their jointer, 6 to 8 in.
 */
export const GLUE_DEFAULTS: GlueTerms = {
  joint: inches(0.0625), roughLength: inches(1), roughWidth: inches(0.25), leastStrip: inches(2), greatestStrip: inches(5.5),
  plane: inches(0), kerf: inches(0.125), trim: inches(0), strips: Infinity, together: "any",
};
