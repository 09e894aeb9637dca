import { stairTable } from "../../../src/drawing/plans/stair-table";

const CELLS = [
  ["", "my stair", "", "", ""],
  ["", "label", "value", "unit", "x"],
  ["", "total rise", 98, "in", "x"],
  ["", "Going", 9.5, "", "x"],
  ["", "risres", 14, "", ""],
  ["", "", "", "", ""],
  ["", "width", 36, "", ""],
];

test("a stair table is found from its label, its value or the unit beside it, by labels in any spelling, up to an empty row", () => {
  // A misspelt label stays in it, so that whoever reads the table says so.
  const table = [["label", "value", "unit"], ["total rise", 98, "in"], ["Going", 9.5, ""], ["risres", 14, ""]];
  for (const [row, column] of [[2, 1], [2, 2], [2, 3], [3, 1], [1, 1]] as const) expect(stairTable(CELLS, row, column)).toEqual(table);
  expect(stairTable(CELLS, 6, 2)).toEqual([["width", 36, ""]]);
});

test("cells beside a table, or with no label before them, are in none", () => {
  for (const [row, column] of [[2, 4], [0, 1], [3, 4], [5, 1], [9, 9]] as const) expect(stairTable(CELLS, row, column)).toBeUndefined();
});
