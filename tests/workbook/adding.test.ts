/** @jest-environment ./tests/workbook/engine-environment.cjs */
import { demo } from "../../src/sheets/demo/demo";
import { closeWorkbooks, openedData, openedWorkbook } from "./opened-workbook";

afterEach(closeWorkbooks);

test("cells are put as they are: texts stay texts, formulas work, formats are set, and null empties", async () => {
  const workbook = await openedWorkbook({ Mine: { A1: "there", C1: 5 } });
  workbook.put("Mine", {
    A1: { value: null },
    A2: { value: "1/2", format: "@" },
    A3: { value: 10 },
    B3: { formula: "=A3*2", format: "0.00" },
  });
  await workbook.settled();
  expect(["A1", "A2", "A3", "B3", "C1"].map((address) => workbook.value("Mine", address))).toEqual([null, "1/2", 10, 20, 5]);
  expect(["A2", "B3", "C1"].map((address) => workbook.format("Mine", address))).toEqual(["@", "0.00", "General"]);
  expect(workbook.shown("Mine", "B3")).toBe("20.00");
});

test("a cell put back is stored as it was before", async () => {
  const workbook = await openedWorkbook({ Mine: { A1: { value: "1/2", format: "@" }, B1: { value: 3 } } });
  const before = workbook.data();
  workbook.put("Mine", { A1: { formula: "=B1*2", format: "0.00" }, B1: { value: "three", format: "@" }, C1: { value: 4, format: "0.0" } });
  workbook.put("Mine", { A1: { value: "1/2", format: "@" }, B1: { value: 3, format: "General" }, C1: { value: null, format: "General" } });
  expect(workbook.data()).toEqual(before);
});

test("sheets are added after the last one, work, and leave what is there alone", async () => {
  const workbook = await openedWorkbook({ Mine: { A1: "7 5/8", B1: "=STAIR.TOINCHES(A1)" } });
  const before = workbook.data().sheets[0];
  workbook.addSheets([...demo].reverse());
  await workbook.settled();
  expect(workbook.sheetNames()).toEqual(["Mine", ...[...demo].reverse().map(({ name }) => name)]);
  expect(workbook.data().sheets[0]).toEqual(before);
  expect(workbook.data().sheets.slice(1)).toEqual([...demo].reverse());
  // The demo's own total rise, and what its blanks cost: the values of the loaded demo in tests/browser/index.test.ts, by hand there.
  expect(workbook.value("Survey", "A4")).toBe(106.125);
  expect(workbook.value("Order", "C4")).toBe(721.5);
});

test("added sheets come to what the loaded demo comes to", async () => {
  const loaded = await openedData({ version: 1, sheets: demo });
  const added = await openedWorkbook({ Mine: { A1: 1 } });
  added.addSheets(demo);
  await added.settled();
  for (const { name, cells } of demo) {
    for (const [address, { formula }] of Object.entries(cells))
      if (formula !== undefined) expect([name, address, added.spill(name, address)]).toEqual([name, address, loaded.spill(name, address)]);
  }
});

test("the blocks that spilled are told, and everything is worked out once more when asked", async () => {
  const workbook = await openedWorkbook({ Mine: { B2: "=STAIR.STORYPOLE(31,4,,,,FALSE)", A1: "=1+1" } });
  // By hand: 4 risers, a row each; riser, height, mark, rise between marks, note.
  expect(workbook.spills("Mine")).toEqual([{ row: 1, column: 1, rows: 4, columns: 5 }]);
  workbook.recalculate();
  await workbook.settled();
  expect(workbook.value("Mine", "C5")).toBe(31);
});
