import { type Amendment } from "../../../src/solver/code/amended-profile";
import { type CheckRow, codeCheck } from "../../../src/solver/code/check";
import type { CodeFacts, Step } from "../../../src/solver/code/fact-labels";
import { irc2021 } from "../../../src/solver/code/profiles/irc-2021";
import { answeredAsTaken } from "../../../src/solver/code/open-question";
import type { CodeProfile } from "../../../src/solver/code/profile";
import { PROFILES } from "../../../src/solver/code/profiles";
import { type Length, lengthOf } from "../../../src/solver/length/length";
import { isProblem } from "../../../src/solver/problem";

export const inches = (value: number | string): Length => lengthOf(value, "in");
export const millimetres = (value: number | string): Length => lengthOf(value, "mm");

/** Rows of a check that has an answer, every question about the building left as the stair has it: see open-question.test.ts. */
export const rowsAsTyped = (
  facts: CodeFacts, steps: readonly Step[] = [], amendments: readonly Amendment[] = [], profile: CodeProfile = irc2021,
): readonly CheckRow[] => {
  const rows = codeCheck(facts, profile, steps, amendments);
  if (isProblem(rows)) throw new Error(`no answer: ${rows.problem}`);
  return rows;
};

/**
 * The same of a stair for which every question that a test leaves out is answered as usual: private, no dwelling, closed risers and so on.
 */
export const rowsOf = (
  facts: CodeFacts, steps: readonly Step[] = [], amendments: readonly Amendment[] = [], profile: CodeProfile = irc2021,
): readonly CheckRow[] => rowsAsTyped(answeredAsTaken(profile.limits, facts), steps, amendments, profile);

export const rowOf = (
  item: string, facts: CodeFacts, steps: readonly Step[] = [], amendments: readonly Amendment[] = [], profile: CodeProfile = irc2021,
): CheckRow => {
  const row = rowsOf(facts, steps, amendments, profile).find((one) => one.item === item);
  if (row === undefined) throw new Error(`no row ${item}`);
  return row;
};

export const profileOf = (id: string): CodeProfile => {
  const found = PROFILES.find((one) => one.id === id);
  if (found === undefined) throw new Error(id);
  return found;
};

/** One row, and its verdict alone, by the profile's id. */
export const row = (id: string, item: string, facts: CodeFacts, steps: readonly Step[] = []): CheckRow =>
  rowOf(item, facts, steps, [], profileOf(id));
export const verdict = (id: string, item: string, facts: CodeFacts, steps: readonly Step[] = []) => row(id, item, facts, steps).verdict;

/** A flight of these rises (or runs), counted from the bottom. */
export const flight = (column: "rise" | "run" | "nosing" | "width", values: readonly (number | string)[]): Step[] =>
  values.map((value, index) => ({ step: index + 1, [column]: inches(value) }));
