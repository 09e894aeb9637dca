/** @jest-environment ./tests/workbook/engine-environment.cjs */
import type { Workbook } from "../../src/workbook/workbook";
import { closeWorkbooks, openedWorkbook } from "./opened-workbook";

afterEach(closeWorkbooks);

const pole = (risers: number) => ({
  Bench: {
    A1: 108,
    B1: risers,
    C1: "=STAIR.STORYPOLE(A1,B1)",
    I1: "=SUM(C2:C99)",
    J1: "=COUNT(D2:D99)",
    K1: "=C9",
    L1: '=STAIR.PICK(C1:D99,8,"height")',
    M1: "=ROWS(C1#)",
  },
});

const values = (book: Workbook, ...cells: readonly string[]) => cells.map((cell) => book.value("Bench", cell));

/** Riser numbers 1 to n add up to n (n + 1) / 2; there is a row for each, and one of headings above. */
const expectPole = (book: Workbook, risers: number) => {
  expect(book.spill("Bench", "C1")).toHaveLength(risers + 1);
  expect(values(book, "I1", "J1", "M1")).toEqual([(risers * (risers + 1)) / 2, risers, risers + 1]);
};

test("what reads a spill is right after it grows and after it shrinks", async () => {
  const book = await openedWorkbook(pole(14));
  expectPole(book, 14);
  for (const risers of [8, 16, 3, 14]) {
    book.setCell("Bench", "B1", risers);
    await book.settled();
    expectPole(book, risers);
    // Row 9 is riser 8, where there is one.
    expect(book.value("Bench", "K1")).toBe(risers >= 8 ? 8 : 0);
  }
  // Hand: mark 8 of 14 over 108 in. is 8 x 108 / 14.
  expect(book.value("Bench", "L1")).toBeCloseTo((8 * 108) / 14, 9);
});

test("a spill that something stands in shows #SPILL!, its readers see no old value, and it comes back when the way is clear", async () => {
  const book = await openedWorkbook(pole(14));
  book.setCell("Bench", "D5", "in the way");
  await book.settled();
  expect(book.value("Bench", "C1")).toEqual({ error: "#SPILL!" });
  expect(book.errorMessage("Bench", "C1")).toBe("the result does not fit: D5 is in the way; clear it or move one of the two");
  expect(book.spill("Bench", "C1")).toEqual([[{ error: "#SPILL!" }]]);
  expect(values(book, "D5", "C2", "C15", "I1", "J1", "K1", "M1")).toEqual(["in the way", null, null, 0, 0, 0, { error: "#REF!" }]);

  book.setCell("Bench", "D5", "");
  await book.settled();
  expectPole(book, 14);
});

test("a spill that turns into an error leaves nothing behind for its readers", async () => {
  const book = await openedWorkbook(pole(14));
  book.setCell("Bench", "B1", -1);
  await book.settled();
  expect(values(book, "C1", "C2", "I1", "J1", "M1")).toEqual([{ error: "#VALUE!" }, null, 0, 0, { error: "#VALUE!" }]);
  book.setCell("Bench", "B1", 8);
  await book.settled();
  expectPole(book, 8);
});

test("readers on another sheet and readers of readers are right too", async () => {
  const book = await openedWorkbook({
    Bench: { A1: 15, C1: "=SEQUENCE(A1)", D1: "=FILTER(C1:C50,C1:C50>5)", E1: "=SUM(D1:D50)" },
    Bid: { A1: "=SUM(Bench!C1#)", A2: "=COUNT(Bench!D1:D50)" },
  });
  // Hand: 1 to 15 add up to 120, 6 to 15 to 105; 1 to 7 to 28, 6 and 7 to 13.
  expect([book.value("Bench", "E1"), book.value("Bid", "A1"), book.value("Bid", "A2")]).toEqual([105, 120, 10]);
  book.setCell("Bench", "A1", "7");
  await book.settled();
  expect([book.value("Bench", "E1"), book.value("Bid", "A1"), book.value("Bid", "A2")]).toEqual([13, 28, 2]);
});

test("A1# works typed and loaded, in both spellings, beside text and across sheets, and stays as it was typed", async () => {
  const book = await openedWorkbook({
    "Cut plan": { A1: "=SEQUENCE(3,2)" },
    Bench: { A1: "=SUM('Cut plan'!A1#)", A2: "=SUM(_xlfn.ANCHORARRAY('Cut plan'!A1))", A3: "=ROWS(F1#)", F1: 7, A4: '="see A1#"' },
  });
  book.setCell("Bench", "B1", "='Cut plan'!A1#");
  book.setCell("Bench", "D1", "=SUM(b1#)&\" in B1#\"");
  await book.settled();
  // Hand: 1 + 2 + ... + 6 = 21.
  expect(values(book, "A1", "A2", "A4", "D1", "C3")).toEqual([21, 21, "see A1#", "21 in B1#", 6]);
  // A cell that never spilled has no block.
  expect(book.value("Bench", "A3")).toEqual({ error: "#REF!" });
  expect(book.formula("Bench", "B1")).toBe("='Cut plan'!A1#");
  expect(book.data().sheets[1]?.cells["A1"]).toEqual({ formula: "=SUM('Cut plan'!A1#)" });
});

test("A1# of a spill that comes down to one cell is that cell", async () => {
  const book = await openedWorkbook({ Bench: { A1: 3, B1: "=SEQUENCE(A1)", C1: "=ROWS(B1#)", D1: "=SUM(B1#)" } });
  expect(values(book, "C1", "D1")).toEqual([3, 6]);
  book.setCell("Bench", "A1", 1);
  await book.settled();
  expect(values(book, "C1", "D1")).toEqual([1, 1]);
  book.setCell("Bench", "E1", "=SUM(B1#)+A1");
  await book.settled();
  expect(values(book, "E1")).toEqual([2]);
});

test("a spill that follows another by cells below its first hands on what comes in below, to the last reader", async () => {
  const book = await openedWorkbook({
    Bench: { A1: 10, B1: "=SEQUENCE(A1)", C1: "=FILTER(B5:B30,B5:B30>6)", D1: "=SUM(C2:C9)", E1: "=SEQUENCE(D1)", F1: "=SUM(E3:E99)" },
  });
  // Hand: 7 to 10 pass, all but the first add up to 8 + 9 + 10 = 27; 3 + 4 + ... + 27 = 378 - 3 = 375.
  expect(values(book, "D1", "F1")).toEqual([27, 375]);
  book.setCell("Bench", "A1", 12);
  await book.settled();
  // Hand: 8 + 9 + 10 + 11 + 12 = 50; 3 + 4 + ... + 50 = 1275 - 3 = 1272.
  expect(values(book, "D1", "F1")).toEqual([50, 1272]);
  book.setCell("Bench", "A1", 8);
  await book.settled();
  // Hand: 7 and 8 pass, so 8; 3 + 4 + ... + 8 = 33.
  expect(values(book, "D1", "F1")).toEqual([8, 33]);
});

const READERS: Readonly<Record<string, string>> = {
  D1: '=COUNTIF(A3#,">1")', D2: '=SUMIF(A3#,">1",B3#)', D3: '=SUMIFS(B3#,A3#,">1")', D4: '=AVERAGEIF(A3#,">1")', D5: "=SUBTOTAL(9,A3#)",
  D6: "=AGGREGATE(9,6,A3#)", D7: "=SUM(OFFSET(A3#,1,0))", D8: "=RANK(1,A3#)", D9: '=SUM(INDIRECT("A3#"))', D10: "=SUM(INDIRECT(F1))",
  D11: "=MAX(ROW(A3#))", D12: "=SUM(A3#:B3)", D13: "=SUM(A3#/2)", D14: "=COUNTIF('Cut plan'!A1#,2)", D15: "=SUM('Cut plan'!A1#:A9)",
};

test("A1# is the cells of the block: whatever asks for a range takes it, and follows it when it grows and shrinks", async () => {
  const book = await openedWorkbook({
    Bench: { A1: 3, A3: "=SEQUENCE(A1)", B3: "=SEQUENCE(A1,1,10,10)", C4: "=@A3#", F1: "'Cut plan'!A1#", ...READERS },
    "Cut plan": { A1: "=SEQUENCE(Bench!A1)" },
  });
  const read = () => [...values(book, "C4"), ...values(book, ...Object.keys(READERS))];
  // Hand, of 1 2 3 in rows 3 to 5 beside 10 20 30: C4 stands beside the 2; 2 and 3 are over 1, beside them 20 + 30; one row on 2 + 3.
  expect(read()).toEqual([2, 2, 50, 50, 2.5, 6, 6, 5, 3, 6, 6, 5, 66, 3, 1, 6]);
  book.setCell("Bench", "A1", 4);
  await book.settled();
  // Hand, of 1 to 4 beside 10 to 40: 90 beside 2 to 4, mean 3; 10 in all; 9 one row on; the 1 is fourth; to row 6; 10 + 100.
  expect(read()).toEqual([2, 3, 90, 90, 3, 10, 10, 9, 4, 10, 10, 6, 110, 5, 1, 10]);
  book.setCell("Bench", "A1", 2);
  await book.settled();
  // Hand, of 1 2 beside 10 20.
  expect(read()).toEqual([2, 1, 20, 20, 2, 3, 3, 2, 2, 3, 3, 4, 33, 1.5, 1, 3]);
});

test("INDIRECT refuses a # anywhere but at the end, and of a cell that did not spill", async () => {
  const book = await openedWorkbook({ Bench: { A1: "=SEQUENCE(3)", B1: 7, C1: '=INDIRECT("A1#:B3")', C2: '=SUM(INDIRECT("B1#"))' } });
  expect(values(book, "C1", "C2")).toEqual([{ error: "#REF!" }, { error: "#REF!" }]);
});

test("a sheet grows with what spills, down and to the right, and whoever reads it sees all of it", async () => {
  const book = await openedWorkbook({ Bench: { A1: 3, C3: "=SEQUENCE(A1,A1)", A2: "=SUM(C3#)", B1: "=SEQUENCE(2)" } });
  // Hand: 1 to n^2 add up to n^2 (n^2 + 1) / 2. A sheet begins with 1000 rows and 40 columns.
  expect(values(book, "A2")).toEqual([45]);
  book.setCell("Bench", "A1", 60);
  await book.settled();
  expect(values(book, "A2", "BJ62", "B2")).toEqual([(3600 * 3601) / 2, 3600, 2]);
  book.setCell("Bench", "C3", "=SEQUENCE(1500)");
  await book.settled();
  expect(values(book, "A2", "C1502", "D3")).toEqual([(1500 * 1501) / 2, 1500, null]);
});

test("what no sheet grows to is refused, and said", async () => {
  const book = await openedWorkbook({ Bench: { A1: "=EXPAND({1},30000,1,0)", B1: "=EXPAND({1},1,800,0)" } });
  expect(values(book, "A1", "B1")).toEqual([{ error: "#SPILL!" }, { error: "#SPILL!" }]);
  expect(book.errorMessage("Bench", "A1")).toBe("the result needs row 30000, the sheet ends at row 1000");
  // Hand: 801 columns from A: 801 = 30 x 26 + 21, the 30th letter pair is AD, the 21st letter U.
  expect(book.errorMessage("Bench", "B1")).toBe("the result needs column ADU, the sheet ends at column AN");
});

test("the sentence of #SPILL! names what is in the way, another result among them", async () => {
  const book = await openedWorkbook({
    Bench: {
      A1: "=SEQUENCE(3,2)",
      B2: 0,
      D1: "=SEQUENCE(9)",
      D3: 1,
      D4: "x",
      D6: "=1",
      D8: 7,
      D9: 8,
      F3: "=SEQUENCE(1,3)",
      G1: "=SEQUENCE(5)",
    },
  });
  expect(book.errorMessage("Bench", "A1")).toBe("the result does not fit: B2 is in the way; clear it or move one of the two");
  const many = "the result does not fit: D3, D4, D6 and 2 more are in the way; clear them or move the formula";
  expect(book.errorMessage("Bench", "D1")).toBe(many);
  const [blocked] = ["F3", "G1"].flatMap((cell) => book.errorMessage("Bench", cell) ?? []);
  expect(blocked).toMatch(/^the result does not fit: [FG]3 is in the way/);
});

test.each([
  ["from the last to the first", ["A1", "C1", "E1", "G1"]],
  ["from the first to the last", ["G1", "E1", "C1", "A1"]],
  ["in no order", ["C1", "G1", "A1", "E1"]],
] as const)("spills that wait for one another are there once a workbook is loaded, written %s", async (_, [last, third, second, first]) => {
  const book = await openedWorkbook({
    Bench: {
      [last]: `=FILTER(${third}#,${third}#>1)`, [third]: `=SORT(${second}#,1,1)`, [second]: `=SORT(${first}#,1,-1)`,
      [first]: "=SEQUENCE(4)",
      J1: `=SUM(${last}#)`, L1: `=TAKE(VSTACK(${last}#,${third}#),2)`, N1: "=SUM(L1#)",
    },
  });
  // By hand: 1 to 4 turned over and back again, without the 1: 2, 3, 4; their first two together 5.
  expect(book.spill("Bench", last)).toEqual([[2], [3], [4]]);
  expect(values(book, "J1", "N1")).toEqual([9, 5]);
});
