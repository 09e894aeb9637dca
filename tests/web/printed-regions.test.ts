import { printedRegions, type PrintedCell } from "../../src/web/printed-regions";

/** A sheet as text: = before a heading, - before a line; cells are parted by |, and an empty one has nothing to print. */
const cellsOf = (rows: readonly string[]): ReadonlyMap<number, ReadonlyMap<number, PrintedCell>> =>
  new Map(rows.map((row, index) => [
    index,
    new Map(row.split("|").flatMap((text, column): [number, PrintedCell][] =>
      text === ""
        ? []
        : [[column, { text, covers: text.length > 9 ? 3 : 1, isLine: text.startsWith("-"), isHeading: text.startsWith("=") }]])),
  ]));

const regionsOf = (rows: readonly string[]) =>
  printedRegions(cellsOf(rows), rows.map((_, index) => index), { from: 0, to: 9 });

test("an empty sheet has nothing to print", () => {
  expect(regionsOf(["", ""])).toBeUndefined();
});

test("a line stands for itself, tables beside one another keep their own headings, and empty rows and columns are left out", () => {
  expect(regionsOf(["-title of it all", "=step|=rise||=label", "1|7|x|spread", "2|8", "", "total|15"])).toEqual({
    kind: "under",
    parts: [
      { kind: "line", row: 0, column: 0 },
      { kind: "table", rows: [1, 2, 3], columns: [0, 1, 2, 3], headings: 1 },
      { kind: "table", rows: [5], columns: [0, 1], headings: 0 },
    ],
  });
  expect(regionsOf(["=step|=rise||=label", "1|7||spread", "2|8"])).toEqual({
    kind: "beside",
    parts: [
      { kind: "table", rows: [0, 1, 2], columns: [0, 1], headings: 1 },
      { kind: "table", rows: [0, 1], columns: [3], headings: 1 },
    ],
  });
});

test("a label over the headings goes with them on every page, and a text that runs on takes the columns that it covers", () => {
  expect(regionsOf(["Finished rises, as found", "=step|=rise|=on the tape", "1|7|7"])).toEqual({
    kind: "table", rows: [0, 1, 2], columns: [0, 1, 2], headings: 2,
  });
});
