/** @jest-environment ./tests/workbook/engine-environment.cjs */
import { closeWorkbooks, openedWorkbook } from "./opened-workbook";

afterEach(closeWorkbooks);

test.each(["=SUM(T1:T2!A2)", "=SUM('Cut plan:Bid'!A2)", "=MAX('Cut plan':Bid!$A$2:$B9)+1", "=COUNT(Bench:Bid!A:A)", "=Bid:Bench!A1#"])(
  "%s is refused by a sentence, whether the sheets are there or not",
  async (formula) => {
    const book = await openedWorkbook({ Bench: { C1: formula, A2: 1 }, "Cut plan": { A2: 2 }, Bid: { A2: 3 } });
    expect(book.value("Bench", "C1")).toEqual({ error: "#REF!" });
    expect(book.errorMessage("Bench", "C1")).toMatch(/^\S.*!\S+: a range over several sheets is not read here; name each sheet/);
    expect(book.formula("Bench", "C1")).toBe(formula);
  },
);

test("a text made into such a range is refused too", async () => {
  const book = await openedWorkbook({ Bench: { A1: '=SUM(INDIRECT("Bench:Bid!A2"))' }, Bid: { A2: 3 } });
  expect(book.value("Bench", "A1")).toEqual({ error: "#REF!" });
});

test("ranges of one sheet and texts that look so are left alone", async () => {
  const book = await openedWorkbook({
    Bench: {
      A1: "=SUM('Cut plan'!A1:A2)",
      A2: "=SUM('Cut plan'!A1:'Cut plan'!A2)",
      A3: '="Bench:Bid!A2"&1',
      A4: "=SUM(B1:B2,'Cut plan'!A:A)",
      B1: 10,
      B2: 20,
    },
    "Cut plan": { A1: 2, A2: 3 },
  });
  // Hand: 2 + 3 = 5; 10 + 20 + 5 = 35.
  expect(["A1", "A2", "A3", "A4"].map((cell) => book.value("Bench", cell))).toEqual([5, 5, "Bench:Bid!A21", 35]);
});
