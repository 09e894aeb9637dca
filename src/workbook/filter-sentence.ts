import type { FilteredTable } from "./workbook";

/** So many values of a column are named, the rest is counted. */
const MOST_NAMED = 4;

const anyOf = (texts: readonly string[]): string => {
  const named = texts.slice(0, MOST_NAMED).map((text) => (text.trim() === "" ? "empty" : text.trim()));
  const others = texts.length - named.length;
  const all = others > 0 ? [...named, `${others} more`] : named;
  const last = all.at(-1) ?? "";
  return all.length < 2 ? last : `${all.slice(0, -1).join(", ")} or ${last}`;
};

/** What a filter shows of its table, and why. */
export const filterSentence = ({ shown, rows, by }: FilteredTable): string =>
  `Filtered: ${shown} of ${rows} rows shown, by ${by.map(({ heading, keeps }) => `${heading} = ${anyOf(keeps)}`).join(" and ")}.`;

/** What a sum over the table comes to, and what has changed under the filter; for whoever looks at the sheet. */
export const filterCaution = ({ changed }: FilteredTable): string =>
  "SUM counts the hidden rows too, SUBTOTAL does not." +
  (changed === 0 ? "" : ` ${changed} ${changed === 1 ? "row has" : "rows have"} changed since.`);
