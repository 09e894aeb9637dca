import { call } from "../../src/functions/call";
import { isFailed } from "../../src/functions/cells";
import type { Declaration } from "../../src/functions/declare";
import { argumentsOf } from "../../src/functions/formula";
import type { Printed } from "./simulated-saw";

export type Cells = readonly (readonly unknown[])[];

/** What a function that spills answers, as cells. */
export const cellsOf = (declaration: unknown, given: Readonly<Record<string, unknown>>): Cells => {
  const declared = declaration as Declaration;
  const answer = call(declared, argumentsOf(declared, given as never).map((cell) => (cell === null ? undefined : cell)));
  if (!Array.isArray(answer)) throw new Error(isFailed(answer) ? answer.says : String(answer));
  return answer;
};

/** Rows as they are printed: words and numbers of acts; the exact distance is left out, so that nobody can read it. */
export const printed = (cells: Cells): readonly Printed[] => {
  const [headings = [], ...rows] = cells;
  const of = (row: readonly unknown[], heading: string): string => String(row[headings.indexOf(heading)]);
  return rows.map((row) => ({
    number: Number(of(row, "number")),
    act: of(row, "act"),
    hookOn: of(row, "hook on"),
    tape: of(row, "tape"),
    swing: of(row, "swing"),
    offset: of(row, "offset"),
    tilt: of(row, "tilt"),
    note: of(row, "note"),
  }));
};
