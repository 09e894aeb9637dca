import { declare } from "../declare";
import { pickCell } from "../pick-cell";

const LAYOUT_PART = [
  ["label", "value", "unit"],
  ["total rise", 107.5, "in"],
  ["unit rise", 7.6785, "in"],
] as const;

export const PICK = declare({
  id: "PICK",
  group: "Notation",
  says: "One value out of a table, by its label and heading.",
  parameters: {
    table: { kind: "cells", says: "A table with labels in its first column; a result of these functions, or one of your own." },
    label: { kind: "text", says: "Label in the first column; case, spaces, punctuation, spelling and plural do not matter." },
    heading: { kind: "text", default: "", says: "Heading in the first row; left out, the second column." },
  },
  result: { kind: "cell", says: "The cell found." },
  problems: {},
  examples: [
    { given: { table: LAYOUT_PART, label: "Total Rise" }, gives: 107.5, from: "by hand: the second column of the row total rise" },
    {
      given: { table: LAYOUT_PART, label: "total rise", heading: "unit" },
      gives: "in",
      from: "by hand: the column unit of the row total rise",
    },
    {
      given: { table: LAYOUT_PART, label: "total raise" },
      fails: "#N/A",
      says: 'label: "total raise" is not known; nearest is "total rise"',
      from: "by hand: one letter from total rise",
    },
  ],
  source:
    "A name as it is written comes first, then by letters and digits alone, then in another spelling or number (labour for " +
    "labor, treads for tread).",
  solve: ({ table, label, heading }) => pickCell(table, label, heading),
});
