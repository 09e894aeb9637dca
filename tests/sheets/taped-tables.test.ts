import { ownJob } from "../../src/sheets/job/own-job";
import { columnUnder, tapedTables } from "../../src/sheets/job/taped-tables";
import type { CellData, SheetData } from "../../src/sheets/sheet-data";
import { demo } from "../../src/sheets/demo/demo";

const fitOf = (sheets: readonly SheetData[]): SheetData => {
  const found = sheets.find(({ name }) => name === "Fit");
  if (found === undefined) throw new Error("no Fit");
  return found;
};

const asked = { job: "Mine", code: "irc-2021", totalRise: 2700, run: 260, width: 900, openEnd: "none" } as const;

test.each([["in", "in"], ["mm", "mm"]] as const)("a job's own Fit in %s has 24 rows of each under its headings", (unit, said) => {
  const found = tapedTables(fitOf(ownJob({ ...asked, unit })));
  expect(found?.unit).toBe(said);
  // Headings in row 8, readings from row 9: 9 + 24 - 1 = 32. The risers begin four rows below: 36 to 59. Rows here count from 0.
  expect(found?.tables.treads).toMatchObject({ firstRow: 8, lastRow: 31 });
  expect(found?.tables.risers).toMatchObject({ firstRow: 35, lastRow: 58 });
});

test("the demo's Fit has five treads and six risers", () => {
  const { treads, risers } = tapedTables(fitOf(demo))?.tables ?? {};
  expect(treads).toMatchObject({ firstRow: 8, lastRow: 12 });
  // Four rows below the last tread: row 17.
  expect(risers?.firstRow).toBe(16);
});

test("no other ready sheet has tables of readings", () => {
  expect(demo.filter((sheet) => tapedTables(sheet) !== undefined).map(({ name }) => name)).toEqual(["Fit"]);
});

const headings = (row: number, ...texts: readonly string[]): Readonly<Record<string, CellData>> =>
  Object.fromEntries(texts.map((value, place) => [`${"CDEFGH".charAt(place)}${row}`, { value }]));

test("a table that a person moved and widened is found by its headings", () => {
  const found = tapedTables({
    name: "Mine",
    cells: {
      ...headings(20, "step", "left offset", "Back", "second diagonals"), A1: { formula: '=IF(A2:B9="","",STAIR.TREADFIT($C$20:$F$30,1))' },
      A2: { value: "Treads as taped, mm" },
    },
  });
  expect(found).toMatchObject({ unit: "mm", tables: { treads: { firstRow: 20, lastRow: 29 } } });
  const treads = found?.tables.treads;
  if (treads === undefined) throw new Error("no treads");
  // Columns from 0: C is 2.
  expect([columnUnder(treads, "step"), columnUnder(treads, "back"), columnUnder(treads, "secondDiagonal"), columnUnder(treads, "run")])
    .toEqual([2, 4, 5, undefined]);
});

test("a table that another sheet has, or that stands in a text, is none of this one", () => {
  const cells = headings(20, "step", "back");
  expect(tapedTables({ name: "Mine", cells: { ...cells, A1: { formula: "=STAIR.TREADFIT(Fit!C20:D30)" } } })).toBeUndefined();
  expect(tapedTables({ name: "Mine", cells: { ...cells, A1: { formula: '=STAIR.TREADFIT("C20:D30")' } } })).toBeUndefined();
  expect(tapedTables({ name: "Mine", cells })).toBeUndefined();
});
