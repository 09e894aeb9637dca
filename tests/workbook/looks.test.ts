/** @jest-environment ./tests/workbook/engine-environment.cjs */
import type { OwnLook } from "../../src/sheets/own-look";
import type { Workbook } from "../../src/workbook/workbook";
import type { WorkbookData } from "../../src/workbook/workbook-data";
import { closeWorkbooks, openedData } from "./opened-workbook";

afterEach(closeWorkbooks);

const thin = { line: "thin", ink: "#000000" } as const;

const data: WorkbookData = {
  version: 1,
  sheets: [
    {
      name: "Bid",
      cells: {
        A1: { value: "title", style: "title" },
        A2: { value: "title in the middle", style: "title", look: { across: "center", down: "middle" } },
        A3: { value: 7.5, format: "0.00", style: "input", look: { borders: { bottom: { line: "double", ink: "#7a4a1e" } } } },
        A4: { value: "mine", style: "label", look: { underline: true, strike: true, font: "Arial", size: 13, ink: "#345", fill: "#eee" } },
        A5: { value: "turned", look: { italic: true, wrap: true, turned: 45, across: "left", down: "top" } },
        B5: { formula: "=A3*2", look: { clip: true, across: "left", down: "bottom" } },
        C7: { look: { fill: "#ffff00", borders: { top: thin, right: thin, bottom: thin, left: thin } } },
      },
      columnWidths: { A: 150, C: 40 },
      frozenRows: 2,
      frozenColumns: 1,
      rowHeights: { 2: 44, 9: 60 },
      hiddenRows: [4, 9],
      hiddenColumns: ["C", "E"],
      merged: ["A1:C1", "D3:D6"],
      hidesGridLines: true,
      tabColour: "#7a4a1e",
    },
    { name: "Hidden", cells: { A1: { value: "down", look: { stacked: true } } }, isHidden: true },
    { name: "Plain", cells: { A1: { value: 1 } } },
  ],
};

test("looks, borders, alignment, heights, what is hidden and what is merged are stored as they were set", async () => {
  const book = await openedData(data);
  expect(book.data()).toEqual(data);
  // By hand: twice 7.5.
  expect(book.value("Bid", "B5")).toBe(15);
});

test("sheets that are added keep them too, and a value typed over a look leaves it", async () => {
  const book = await openedData({ version: 1, sheets: [{ name: "First", cells: {} }] });
  book.addSheets(data.sheets);
  book.setCell("Bid", "A4", "typed over");
  await book.settled();
  const [, bid, hidden, plain] = book.data().sheets;
  const before = data.sheets[0]?.cells;
  expect(bid).toEqual({ ...data.sheets[0], cells: { ...before, A4: { ...before?.["A4"], value: "typed over" } } });
  expect([hidden, plain]).toEqual(data.sheets.slice(1));
});

test("a sheet has room for what is merged and frozen, also where no cell is", async () => {
  const book = await openedData({ version: 1, sheets: [{ name: "Far", cells: {}, merged: ["CZ3000:DA3001"], frozenRows: 1500 }] });
  book.setCell("Far", "DA3002", 7);
  await book.settled();
  expect([book.value("Far", "DA3002"), book.data().sheets[0]?.merged]).toEqual([7, ["CZ3000:DA3001"]]);
});

const fails: OwnLook = { bold: true, ink: "#8c1d18", fill: "#fbe3df" };
const passes: OwnLook = { ink: "#1f5a2d", fill: "#e4f1e3" };
const rules = [
  { cells: "A2:B5", when: '=LEFT($A2,1)="✗"', look: fails },
  { cells: "A2:B5", when: '=OR(LEFT($A2,1)="✓",$A2=$D$1)', look: passes },
  { cells: "C2", when: "=C1>Other!A1", look: { italic: true } },
] as const;
const lists = [{ cells: "D2:D9", options: ["left", "right", "both"] }, { cells: "E2", options: ["IRC 2021"] }] as const;
const spilled = '=VSTACK("✗ FAIL","✓ pass","✓ pass","neither")';
const ruled: WorkbookData = {
  version: 1,
  sheets: [
    { name: "Check", cells: { A2: { formula: spilled }, C1: { value: 1 }, D1: { value: "neither" } }, rules, lists },
    { name: "Other", cells: { A1: { value: 5 } } },
  ],
};

const looksOf = (book: Workbook, ...addresses: readonly string[]) => addresses.map((address) => book.look("Check", address));

test("looks by rule and lists of choices are stored as given, and shown on what spilled, the first rule that is true", async () => {
  const book = await openedData(ruled);
  expect(book.data()).toEqual(ruled);
  expect(looksOf(book, "A1", "A2", "B3", "A4", "A5", "A6", "C2")).toEqual([{}, fails, passes, passes, passes, {}, {}]);
  book.setCell("Check", "A2", '=VSTACK("✓ pass","✗ FAIL")');
  book.setCell("Check", "C1", 9);
  await book.settled();
  expect(looksOf(book, "A2", "A3", "A4", "C2")).toEqual([passes, fails, {}, { italic: true }]);
});

test("an inserted row moves them, one among their cells belongs to them, and undo brings back those of deleted rows in order", async () => {
  const book = await openedData(ruled);
  book.insertRows("Check", 1, 2);
  book.insertRows("Check", 6, 1);
  await book.settled();
  const moved = [
    { cells: "A4:B8", when: '=LEFT($A4,1)="✗"', look: fails },
    { cells: "A4:B8", when: '=OR(LEFT($A4,1)="✓",$A4=$D$3)', look: passes },
    { cells: "C4", when: "=C3>Other!A1", look: { italic: true } },
  ];
  const [check] = book.data().sheets;
  expect([check?.rules, check?.lists]).toEqual([moved, [{ ...lists[0], cells: "D4:D12" }, { ...lists[1], cells: "E4" }]]);
  expect(looksOf(book, "A4", "A5")).toEqual([fails, passes]);
  book.removeRows("Check", 3, 20);
  expect([book.data().sheets[0]?.rules, book.data().sheets[0]?.lists]).toEqual([undefined, undefined]);
  for (let step = 0; step < 3; step += 1) book.undo();
  await book.settled();
  expect(book.data()).toEqual(ruled);
  expect(looksOf(book, "A2", "A3", "A4", "A5")).toEqual([fails, passes, passes, passes]);
});

test("a sheet takes them along when it is added, copied, renamed or deleted, and undo brings them back", async () => {
  const book = await openedData({ version: 1, sheets: [{ name: "First", cells: {} }] });
  book.addSheets(ruled.sheets);
  await book.settled();
  expect(book.data().sheets.slice(1)).toEqual(ruled.sheets);
  expect(looksOf(book, "A2", "A3")).toEqual([fails, passes]);
  book.duplicateSheet("Check");
  book.renameSheet("Other", "An other");
  await book.settled();
  const [, check, copy] = book.data().sheets;
  const renamed = [...rules.slice(0, 2), { ...rules[2], when: "=C1>'An other'!A1" }];
  expect([check?.rules, copy?.rules, copy?.lists]).toEqual([renamed, renamed, lists]);
  book.removeSheet("Check");
  book.undo();
  book.undo();
  book.undo();
  await book.settled();
  expect(book.data().sheets.slice(1)).toEqual(ruled.sheets);
  expect(looksOf(book, "A2", "A3")).toEqual([fails, passes]);
  book.undo();
  expect(book.data().sheets).toEqual([{ name: "First", cells: {} }]);
});

test("the first rows under a look by rule are deleted, and it goes on reading its own cells", async () => {
  const book = await openedData(ruled);
  book.removeRows("Check", 1, 2);
  await book.settled();
  // By hand: of A2:B5 the last three rows are left, now from row 1 on; D1, which the second one reads, is gone.
  expect(book.data().sheets[0]?.rules).toEqual([
    { cells: "A1:B3", when: '=LEFT($A1,1)="✗"', look: fails }, { cells: "A1:B3", when: '=OR(LEFT($A1,1)="✓",$A1=#REF!)', look: passes },
  ]);
  // And a list its own: of D2:D9 the last seven.
  expect(book.data().sheets[0]?.lists).toEqual([{ ...lists[0], cells: "D1:D7" }]);
  book.undo();
  await book.settled();
  expect(book.data()).toEqual(ruled);
});

test("where two blocks under one rule meet, or two rules that say the same, rows put in have their look", async () => {
  const look = { fill: "#e4f1e3" };
  const touching = [
    { cells: "A5:B7", when: "=A5>5", look }, { cells: "B9", when: "=B9>5", look: { fill: "#eeeeee" } },
    { cells: "A2:A4", when: "=A2>5", look }, { cells: "C5:C6", when: "=C5>5", look },
    { cells: "D2:D4", when: "=D2>5", look }, { cells: "D5:D7", when: "=D5>6", look },
  ];
  const met: WorkbookData = { version: 1, sheets: [{ name: "Met", cells: { A5: { value: 9 } }, rules: touching }] };
  const book = await openedData(met);
  book.insertRows("Met", 5, 2);
  await book.settled();
  // A2:A4 ends where A5:B7 begins and says the same of its own cell: the new A5:A6 are under it. D2:D4 and D5:D7 say different things.
  expect(book.data().sheets[0]?.rules).toEqual([
    { ...touching[0], cells: "A7:B9", when: "=A7>5" }, { ...touching[1], cells: "B11", when: "=B11>5" }, { ...touching[2], cells: "A2:A6" },
    { ...touching[3], cells: "C7:C8", when: "=C7>5" }, touching[4], { ...touching[5], cells: "D7:D9", when: "=D7>6" },
  ]);
  book.put("Met", { A6: { value: 8 } });
  await book.settled();
  expect([book.look("Met", "A5").fill, book.look("Met", "A6").fill]).toEqual([undefined, "#e4f1e3"]);
  book.undo();
  book.undo();
  expect(book.data()).toEqual(met);
  book.removeRows("Met", 5, 3);
  book.insertRows("Met", 4, 1);
  book.undo();
  book.undo();
  expect(book.data()).toEqual(met);
});

test("rows between two blocks of a rule are taken out, and one put in where they then meet has its look", async () => {
  const rule = { cells: "A2:A9", when: "=A2>5", look: { fill: "#e4f1e3" } };
  const cells = Object.fromEntries([3, 1, 2, 4, 5, 6, 7, 8].map((value, down) => [`A${down + 2}`, { value }]));
  const book = await openedData({ version: 1, sheets: [{ name: "Met", cells, rules: [rule] }] });
  book.insertRows("Met", 2, 1);
  expect(book.data().sheets[0]?.rules).toEqual([{ ...rule, cells: "A3:A10", when: "=A3>5" }]);
  const parted = [{ ...rule, cells: "A3:A5", when: "=A3>5" }, { ...rule, cells: "A8:A10", when: "=A8>5" }];
  book.load({ version: 1, sheets: [{ name: "Met", cells, rules: parted }] });
  book.removeRows("Met", 6, 2);
  book.insertRows("Met", 6, 2);
  expect(book.data().sheets[0]?.rules).toEqual([
    { ...rule, cells: "A3:A7", when: "=A3>5" }, { ...rule, cells: "A8:A10", when: "=A8>5" },
  ]);
});

test("rows that are sorted take their looks by rule and lists along, as one step; what is over all of them stays", async () => {
  const fill = { fill: "#e4f1e3" };
  const rows: WorkbookData = {
    version: 1,
    sheets: [
      {
        name: "Rows",
        cells: Object.fromEntries([1, 2, 3, 4].flatMap((value, at) => [[`A${at + 2}`, { value }], [`C${at + 2}`, { value: value * 10 }]])),
        rules: [
          { cells: "C2:C5", when: "=C2>25", look: fails },
          { cells: "C3", when: "=AND(C3>$F$1,A3<D9)", look: passes },
          { cells: "A4:C4", when: "=$A4=3", look: { italic: true } },
          { cells: "C2:C3", when: "=C2=A2*10", look: fill },
        ],
        lists: [{ cells: "B2:B5", options: ["left", "right"] }, { cells: "C3", options: ["20", "30"] }],
      },
    ],
  };
  const book = await openedData(rows);
  expect(book.sort("Rows", "A2:C5", "A", false)).toBeUndefined();
  await book.settled();
  // By hand: rows 2 and 5 change places, and 3 and 4.
  const [sorted] = book.data().sheets;
  expect([sorted?.rules, sorted?.lists, book.value("Rows", "C4")]).toEqual([
    [
      { cells: "C2:C5", when: "=C2>25", look: fails },
      { cells: "C4", when: "=AND(C4>$F$1,A4<D9)", look: passes },
      { cells: "A3:C3", when: "=$A3=3", look: { italic: true } },
      { cells: "C4:C5", when: "=C4=A4*10", look: fill },
    ],
    [{ cells: "B2:B5", options: ["left", "right"] }, { cells: "C4", options: ["20", "30"] }],
    20,
  ]);
  // A rule is worked out once a cell is asked for its look.
  book.look("Rows", "A3");
  book.look("Rows", "C5");
  await book.settled();
  expect([book.look("Rows", "A3"), book.look("Rows", "C5"), book.look("Rows", "C3")]).toEqual([{ italic: true }, fill, fails]);
  book.undo();
  await book.settled();
  expect(book.data()).toEqual(rows);
});

test("a workbook that takes the place of another has its own rules alone", async () => {
  const book = await openedData(ruled);
  book.load({ version: 1, sheets: [{ name: "Check", cells: { A2: { value: "✗ FAIL" } } }] });
  await book.settled();
  expect([book.look("Check", "A2"), book.data().sheets[0]?.rules]).toEqual([{}, undefined]);
});
