import { cellLooks } from "../../src/sheets/cell-looks";
import { workbookData } from "../../src/workbook/workbook-data";

const cellsOf = (cells: unknown) => ({ version: 1, sheets: [{ name: "Layout", cells }] });

test("what is stored is read as it stands", () => {
  const data = {
    version: 1,
    sheets: [
      {
        name: "Layout",
        cells: {
          A1: { value: "run", style: "heading" },
          B1: { value: 10, format: "# ?/16", style: "input" },
          C1: { formula: "=B1*2" },
          D1: { value: false },
          E1: {},
        },
        columnWidths: { A: 120 },
        frozenRows: 1,
      },
      { name: "Bid", cells: {} },
    ],
  };
  expect(workbookData(data)).toEqual(data);
});

test.each([
  [null, "workbook: must be an object, got null"],
  [{ sheets: [] }, "workbook, version: must be a whole number from 1 up, got undefined"],
  [
    { version: 2, sheets: [] },
    "workbook, version: this program reads workbooks up to version 1, this one is version 2; take a newer program",
  ],
  [{ version: 1, sheets: [] }, "workbook, sheets: must be a list of one sheet or more"],
  [{ version: 1, sheets: [{ name: "a/b", cells: {} }] }, 'sheet 1, name: must be 1 to 31 characters without \\ / ? * [ ] :, got "a/b"'],
  [
    {
      version: 1,
      sheets: [
        { name: "Bid", cells: {} },
        { name: "bid", cells: {} },
      ],
    },
    'workbook, sheets: two sheets are named "bid"',
  ],
  [{ version: 1, sheets: [{ name: "Bid" }] }, 'sheet "Bid", cells: must be an object, got undefined'],
  [{ version: 1, sheets: [{ name: "Bid", cells: {}, frozenRows: -1 }] }, 'sheet "Bid", frozenRows: must be a whole number, got -1'],
  [
    { version: 1, sheets: [{ name: "Bid", cells: {}, columnWidths: { A: 0 } }] },
    'sheet "Bid", columnWidths, A: must be a number of pixels over 0, got 0',
  ],
  [cellsOf({ "1A": {} }), 'address: must be one cell such as B7, got "1A"'],
  [cellsOf({ A1: { value: 1, formula: "=1" } }), 'sheet "Layout", A1: has a value and a formula; it may have one of them'],
  [cellsOf({ A1: { value: null } }), 'sheet "Layout", A1, value: must be text, a number, true or false, got null'],
  [cellsOf({ A1: { formula: "1+1" } }), 'sheet "Layout", A1, formula: must be text that starts with =, got "1+1"'],
  [cellsOf({ A1: { colour: "red" } }), 'sheet "Layout", A1: has no "colour"; it may have value, formula, format, style'],
  [
    cellsOf({ A1: { style: "fancy" } }),
    'sheet "Layout", A1, style: must be one of title, says, heading, input, label, total, caution, got "fancy"',
  ],
])("%j is refused with the place and what would do", (raw, says) => {
  expect(() => workbookData(raw)).toThrow(says);
});

test("no two looks are alike, so that a style is found again by its look", () => {
  const looks = Object.values(cellLooks).map((look) => JSON.stringify(Object.entries(look).sort()));
  expect(new Set(looks).size).toBe(looks.length);
});
