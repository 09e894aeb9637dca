import { folded, type GivenCells, isEmptyOrZero } from "./cells";
import type { RangeParameter } from "./declare";

/** The argument with the table it is read as: another than the usual one where a heading says so. */
export const asHeaded = (parameter: RangeParameter, given: ReadonlyMap<string, GivenCells>): RangeParameter => {
  if (parameter.kind !== "table" || parameter.instead === undefined) return parameter;
  const { table, argument, headings } = parameter.instead;
  const first = (given.get(argument) ?? []).find((row) => !row.every(isEmptyOrZero)) ?? [];
  const words: readonly string[] = headings.map(folded);
  const has = (isOne: (word: string) => boolean): boolean => first.some((cell) => typeof cell === "string" && isOne(folded(cell)));
  // A row without headings may hold such a word too: clear is a grade. Headings name the length.
  const isMeant = has((word) => words.includes(word)) && has((word) => word === "length");
  return isMeant ? { ...parameter, table } : parameter;
};
