import type { Length } from "./length/length";

/** A state of the world in which there is no answer: a code, and the facts its sentence needs. Its wording stands in the declarations. */
export interface Problem<Code extends string = string> {
  readonly problem: Code;
  readonly details: Details;
}

/** A length among the facts is worded in the unit of the call. */
export type Details = Readonly<Record<string, string | number | Length>>;

export const problem = <const Code extends string>(code: Code, details: Details = {}): Problem<Code> => ({
  problem: code,
  details,
});

export const isProblem = <Value>(value: Value): value is Extract<Value, Problem> =>
  typeof value === "object" && value !== null && "problem" in value && "details" in value;
