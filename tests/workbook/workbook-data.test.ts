import { cellLooks } from "../../src/sheets/cell-looks";
import { workbookData } from "../../src/workbook/workbook-data";

const cellsOf = (cells: unknown) => ({ version: 1, sheets: [{ name: "Layout", cells }] });

const sheetOf = (settings: object) => ({ version: 1, sheets: [{ name: "Bid", cells: {}, ...settings }] });

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
  [sheetOf({ frozenRows: -1 }), 'sheet "Bid", frozenRows: must be a whole number from 0 up and below 1048576, got -1'],
  [
    { version: 1, sheets: [{ name: "Bid", cells: {}, columnWidths: { A: 0 } }] },
    'sheet "Bid", columnWidths, A: must be a number of pixels over 0 and up to 10000, got 0',
  ],
  ...["1A", "a1", "$A$1", "A01", "A1048577", "A1000000000", "ZZZ1", "XFE1", "A1:B2", "__proto__", "A1\n"].map(
    (address): [unknown, string] => [
      JSON.parse(`{"version":1,"sheets":[{"name":"Layout","cells":{${JSON.stringify(address)}:{}}}]}`),
      `sheet "Layout", cells: an address is written A1 to XFD1048576, in capitals, got ${JSON.stringify(address)}`,
    ],
  ),
  [cellsOf([]), 'sheet "Layout", cells: must be an object, got []'],
  [cellsOf({ A1: 7 }), 'sheet "Layout", A1: must be an object, got 7'],
  [cellsOf({ A1: { value: { deep: [1] } } }), 'sheet "Layout", A1, value: must be text, a number, true or false, got {"deep":[1]}'],
  [cellsOf({ A1: { format: 1 } }), 'sheet "Layout", A1, format: must be text, got 1'],
  [sheetOf({ frozenRows: 1e9 }), 'sheet "Bid", frozenRows: must be a whole number from 0 up and below 1048576, got 1000000000'],
  [sheetOf({ columnWidths: { A: 1e9 } }), "columnWidths, A: must be a number of pixels over 0 and up to 10000, got 1000000000"],
  [sheetOf({ columnWidths: { ZZZ: 9 } }), 'sheet "Bid", columnWidths: a column is written A to XFD, in capitals, got "ZZZ"'],
  [cellsOf({ A1: { look: { bold: false } } }), 'sheet "Layout", A1, look: bold: must be true, got false'],
  [cellsOf({ A1: { look: { glow: 1 } } }), 'sheet "Layout", A1, look: there is no "glow"; there are bold, italic, underline,'],
  [cellsOf({ A1: { look: { fill: "url(https://example.com)" } } }), "look: fill: must be a colour such as #7a4a1e, got"],
  [cellsOf({ A1: { look: { size: 1e9 } } }), "look: size: must be a number from 1 to 409, got 1000000000"],
  [cellsOf({ A1: { look: { borders: { up: { line: "thin", ink: "#000000" } } } } }), "look: borders: must be of top, right, bottom, left,"],
  [sheetOf({ rowHeights: { "0": 9 } }), 'sheet "Bid", rowHeights: a row is a whole number from 1 to 1048576, got "0"'],
  [sheetOf({ hiddenRows: [1, 2e9] }), 'sheet "Bid", hiddenRows: a row is a whole number from 1 to 1048576, got 2000000000'],
  [sheetOf({ hiddenColumns: "A" }), 'sheet "Bid", hiddenColumns: must be a list, got "A"'],
  [sheetOf({ merged: ["A1:B2:C3"] }), 'sheet "Bid", merged: a block is written A1:C2, in capitals, got "A1:B2:C3"'],
  [sheetOf({ merged: ["B2:A1"] }), 'sheet "Bid", merged: a block begins at its top left, got "B2:A1"'],
  [sheetOf({ merged: ["A1:B2", "B2:C3"] }), 'sheet "Bid", merged: "A1:B2" and "B2:C3" have cells in common'],
  [sheetOf({ isHidden: true }), "workbook, sheets: every sheet is hidden; one must be shown"],
  [sheetOf({ tabColour: 7 }), 'sheet "Bid", tabColour: must be a colour such as #7a4a1e, got 7'],
  [{ version: 1, sheets: "none" }, "workbook, sheets: must be a list of one sheet or more"],
  [{ version: 1, sheets: [null] }, "sheet 1: must be an object, got null"],
  [cellsOf({ A1: { value: 1, formula: "=1" } }), 'sheet "Layout", A1: has a value and a formula; it may have one of them'],
  [cellsOf({ A1: { value: null } }), 'sheet "Layout", A1, value: must be text, a number, true or false, got null'],
  [cellsOf({ A1: { formula: "1+1" } }), 'sheet "Layout", A1, formula: must be text that starts with =, got "1+1"'],
  [cellsOf({ A1: { colour: "red" } }), 'sheet "Layout", A1: has no "colour"; it may have value, formula, format, style, look'],
  [
    cellsOf({ A1: { style: "fancy" } }),
    'sheet "Layout", A1, style: must be one of title, says, heading, headingRight, input, inputText, label, total, caution, name, ' +
      'answer, answerText, answerUnit, strip, part, right, middle, link, byHand, got "fancy"',
  ],
])("%j is refused with the place and what would do", (raw, says) => {
  expect(() => workbookData(raw)).toThrow(says);
});

// "Excel specifications and limits": 8,192 characters, 64 levels of nesting. Chains of signs: the engine's stack, see formula-limits.ts.
test.each([
  [
    "30,000 calls within each other",
    `=${"ABS(".repeat(30_000)}1${")".repeat(30_000)}`,
    "must have at most 8,192 characters, as in Excel, this one has 150,002",
  ],
  [
    "65 brackets",
    `=${"(".repeat(65)}1${")".repeat(65)}`,
    "must have at most 64 calls or brackets within each other, as in Excel, this one has 65",
  ],
  ["4,000 sums", `=${"1+".repeat(4000)}1`, "must have at most 500 signs such as + and :, this one has 4,000; use SUM over a range"],
  ["4,000 signs before a number", `=${"-".repeat(4000)}1`, "must have at most 500 signs"],
  ["a range of ranges", `=${"A1:".repeat(2000)}A1`, "must have at most 500 signs"],
])("a formula with %s is refused before the engine sees it, by its sheet and cell", (_, formula, says) => {
  const cells = { A1: { value: 1 }, B7: { formula } };
  expect(() => workbookData(cellsOf(cells))).toThrow(`sheet "Layout", B7, formula: ${says}`);
});

test("a formula at the limits is read, and brackets and signs in its texts and sheet names do not count", () => {
  for (const formula of [
    `=${"ABS(".repeat(64)}1${")".repeat(64)}`,
    `=${"1+".repeat(500)}1`,
    `="${"(".repeat(1000)}${"+".repeat(1000)}"&'a-(b'!A1`,
  ])
    expect(() => workbookData(cellsOf({ A1: { formula } }))).not.toThrow();
  expect(() => workbookData(cellsOf({ XFD1048576: { value: 1 } }))).not.toThrow();
});

test("no two looks are alike, so that a style is found again by its look", () => {
  const looks = Object.values(cellLooks).map((look) => JSON.stringify(Object.entries(look).sort()));
  expect(new Set(looks).size).toBe(looks.length);
});
