/** @jest-environment ./tests/workbook/engine-environment.cjs */
import fc from "fast-check";
import type { Workbook } from "../../src/workbook/workbook";
import { closeWorkbooks, openedWorkbook } from "./opened-workbook";

afterEach(closeWorkbooks);

const twice = async (book: Workbook, changes: Readonly<Record<string, number>>): Promise<void> => {
  for (const [address, value] of Object.entries(changes)) book.setCell("Bench", address, value);
  await book.settled();
  book.recalculate();
  await book.settled();
};

const stock = { A1: 11, B1: 1, A2: 12, B2: 0, A3: 13, B3: 2 };

test("what a formula makes of cells is compared by its own values, at the second calculation as at the first", async () => {
  const book = await openedWorkbook({
    Bench: {
      ...stock,
      D1: "=CHOOSECOLS(A1:B3,2)>0",
      F1: "=FILTER(A1:B3,CHOOSECOLS(A1:B3,2)>0)",
      I1: "=FILTER(VSTACK(A1:A2,A3),VSTACK(B1:B2,B3)>0)",
      K1: "=SORTBY(A1:A3,B1:B3)>11",
      M1: "=SUM((TAKE(A1:B3,,-1)=0)*1)",
    },
  });
  const expectRows = (d1: readonly boolean[], kept: readonly number[], sorted: readonly boolean[], zeros: number) => {
    expect(book.spill("Bench", "D1")).toEqual(d1.map((one) => [one]));
    expect(book.spill("Bench", "F1").map(([first]) => first)).toEqual(kept);
    expect(book.spill("Bench", "I1").map(([first]) => first)).toEqual(kept);
    expect(book.spill("Bench", "K1")).toEqual(sorted.map((one) => [one]));
    expect(book.value("Bench", "M1")).toBe(zeros);
  };
  // Hand: 1 and 2 are over 0; by B the order is 12, 11, 13.
  expectRows([true, false, true], [11, 13], [true, false, true], 1);
  await twice(book, {});
  expectRows([true, false, true], [11, 13], [true, false, true], 1);
  // Hand: now 0, 3, 0, so one row passes; by B the order is 11, 13, 12.
  await twice(book, { B1: 0, B2: 3, B3: 0 });
  expectRows([false, true, false], [12], [false, true, true], 2);
});

test("a text is no number, an empty text no 0, however often a column is asked", async () => {
  const ask = ["=SUM((A1:A5=12)*1)", '=SUM((A1:A5="")*1)', "=SUM((A1:A5=TRUE)*1)", "=SUM((A1:A5<>1)*1)", '=SUM((A1:A5="2*4")*1)'];
  const cells: Record<string, string | number | boolean> = { A1: "12", A2: 12, A3: 0, A4: true, A5: "2x4" };
  for (const column of ["D", "E", "F"]) for (const [row, formula] of ask.entries()) cells[`${column}${row + 1}`] = formula;
  const book = await openedWorkbook({ Bench: cells });
  await twice(book, { A3: 0 });
  // Hand: one number 12; no empty cell; one TRUE; none of the five is 1; 2x4 is not 2*4.
  for (const column of ["D", "E", "F"])
    expect([column, ...ask.map((_, row) => book.value("Bench", `${column}${row + 1}`))]).toEqual([column, 1, 0, 1, 5, 0]);
});

type Plain = number | string | boolean | null;

/** Microsoft, Sort data in a range or table: numbers, text, FALSE, TRUE in that order; text in either case is one. = < > go by it too. */
const KINDS: readonly string[] = ["number", "string", "boolean"];
const asLike = (cell: Plain, other: Plain): Plain => {
  if (cell !== null) return cell;
  return typeof other === "string" ? "" : typeof other === "boolean" ? false : 0;
};
const order = (one: Plain, other: Plain): number => {
  const [a, b] = [asLike(one, other), asLike(other, one)];
  if (typeof a !== typeof b) return KINDS.indexOf(typeof a) - KINDS.indexOf(typeof b);
  const [x, y] = [a, b].map((each) => (typeof each === "string" ? each.toLowerCase() : Number(each))) as [number, number];
  return x < y ? -1 : x > y ? 1 : 0;
};
const OPERATORS: Readonly<Record<string, (order: number) => boolean>> = {
  "=": (by) => by === 0, "<>": (by) => by !== 0, "<": (by) => by < 0, "<=": (by) => by <= 0, ">": (by) => by > 0, ">=": (by) => by >= 0,
};

const ROWS = 6;
const anything: fc.Arbitrary<Plain> = fc.oneof(
  fc.constantFrom(0, 1, 12, -3, 7.625),
  fc.constantFrom("12", "7 5/8", "oak", "OAK", "2x4", "2*4", "o?k", "a"),
  fc.boolean(),
  fc.constant(null),
);

const CASES = 12;
const columnName = (place: number): string => String.fromCharCode("A".charCodeAt(0) + place);

test("law: a column compared with a value answers as each of its cells would, the first time and the third", async () => {
  const operators = Object.entries(OPERATORS);
  const heights = Array.from({ length: 3 }, (_, time) => operators.map((__, at) => 2 * ROWS + (time * operators.length + at) * (ROWS + 1)));
  const cells: Record<string, string> = {};
  for (let place = 0; place < CASES; place += 1) {
    const column = columnName(place);
    const range = `${column}2:${column}${ROWS + 1}`;
    for (const rows of heights)
      for (const [at, row] of rows.entries()) cells[`${column}${row}`] = `=${range}${operators[at]?.[0] ?? ""}${column}1`;
  }
  const book = await openedWorkbook({ Bench: cells });
  const oneCase = fc.tuple(anything.filter((one) => one !== null), fc.array(anything, { minLength: ROWS, maxLength: ROWS }));
  await fc.assert(
    fc.asyncProperty(fc.array(oneCase, { minLength: CASES, maxLength: CASES }), async (cases) => {
      const filled = cases.flatMap(([asked, held], place) =>
        [asked, ...held].map((value, row) => [`${columnName(place)}${row + 1}`, { value }]),
      );
      book.put("Bench", Object.fromEntries(filled) as Parameters<Workbook["put"]>[1]);
      await book.settled();
      for (const [place, [asked, held]] of cases.entries())
        for (const rows of heights)
          for (const [at, [operator, is]] of operators.entries())
            expect([operator, asked, held, book.spill("Bench", `${columnName(place)}${rows[at] ?? 0}`).flat()]).toEqual([
              operator, asked, held, held.map((cell) => is(order(cell, asked))),
            ]);
    }),
    { numRuns: 4 },
  );
});

test("a list that many cells look up in is compared afresh when one of its cells changes", async () => {
  const cells: Record<string, string | number> = {};
  for (let row = 1; row <= 9; row += 1)
    Object.assign(cells, {
      [`A${row}`]: `part ${row}`,
      [`B${row}`]: row * 10,
      [`D${row}`]: `=XLOOKUP("PART ${row}",$A$1:$A$9,$B$1:$B$9,0)+COUNTIF($A$1:$A$9,"part ${row}")`,
    });
  const book = await openedWorkbook({ Bench: cells });
  const found = () => Array.from({ length: 9 }, (_, row) => book.value("Bench", `D${row + 1}`));
  // Hand: ten times the row, and one of each.
  expect(found()).toEqual([11, 21, 31, 41, 51, 61, 71, 81, 91]);
  book.setCell("Bench", "A2", "part 5");
  await book.settled();
  // Hand: no part 2 is left; part 5 is found in row 2 first, and there are two.
  expect(found()).toEqual([11, 0, 31, 41, 22, 61, 71, 81, 91]);
});
