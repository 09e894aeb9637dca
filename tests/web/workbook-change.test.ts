import fc from "fast-check";
import { changeBetween, changed } from "../../src/web/workbook-change";
import type { SheetData, WorkbookData } from "../../src/workbook/workbook-data";

const cell = fc.oneof(
  fc.record({ value: fc.oneof(fc.string(), fc.integer(), fc.boolean()) }),
  fc.record({ formula: fc.constantFrom("=A1", "=SUM(A1:B2)") }),
  fc.record({ value: fc.integer(), format: fc.constantFrom("0.00", "# ?/16") }),
);
const sheet = (name: string): fc.Arbitrary<SheetData> =>
  fc.record(
    {
      name: fc.constant(name),
      cells: fc.dictionary(fc.constantFrom("A1", "A2", "B1", "B2", "C3"), cell, { noNullPrototype: true }),
      frozenRows: fc.integer({ min: 0, max: 3 }),
      columnWidths: fc.dictionary(fc.constantFrom("A", "B"), fc.integer({ min: 1, max: 200 }), { noNullPrototype: true }),
    },
    { requiredKeys: ["name", "cells"], noNullPrototype: true },
  );
const workbook: fc.Arbitrary<WorkbookData> = fc
  .shuffledSubarray(["Job", "Bid", "__proto__", "Layout"], { minLength: 1 })
  .chain((names) => fc.tuple(...names.map(sheet)))
  .map((sheets) => ({ version: 1, sheets }));

test("what is different between two workbooks, done to the one, gives the other", () => {
  fc.assert(
    fc.property(workbook, workbook, (before, after) => {
      const change = changeBetween(before, after);
      // As it comes back from a store.
      expect(change === undefined ? before : changed(before, structuredClone(change))).toEqual(after);
    }),
  );
});

test("a workbook as it was has no change", () => {
  fc.assert(fc.property(workbook, (data) => expect(changeBetween(data, structuredClone(data))).toBeUndefined()));
});

test("one cell typed is a change of that cell alone", () => {
  const holding = (value: number): WorkbookData => ({
    version: 1,
    sheets: [{ name: "Job", cells: { A1: { value }, B1: { formula: "=A1" }, C1: { value: "as it was" } } }],
  });
  expect(changeBetween(holding(1), holding(2))).toEqual({ sheets: [{ name: "Job", cells: { A1: { value: 2 } } }] });
});
