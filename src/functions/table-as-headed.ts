import { folded, type GivenCells, isEmptyOrZero } from "./cells";
import type { RangeParameter } from "./declare";

/** The argument with the table it is read as: another than the usual one where a heading says so. */
export const asHeaded = (parameter: RangeParameter, given: ReadonlyMap<string, GivenCells>): RangeParameter => {
  if (parameter.kind !== "table" || parameter.instead === undefined) return parameter;
  const { table, argument, headings } = parameter.instead;
  const first = (given.get(argument) ?? []).find((row) => !row.every(isEmptyOrZero)) ?? [];
  const words: readonly string[] = headings.map(folded);
  const isMeant = first.some((cell) => typeof cell === "string" && words.includes(folded(cell)));
  return isMeant ? { ...parameter, table } : parameter;
};
