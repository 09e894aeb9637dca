import { memoryRecords } from "../../src/web/memory-records";
import type { WorkbookChange } from "../../src/web/workbook-change";
import type { CellData } from "../../src/workbook/workbook-data";
import { DEMO, oneSheet, shelfOf } from "./shelf";

const typed = (address: string, value: string): WorkbookChange => ({ sheets: [{ name: "Job", cells: { [address]: { value } } }] });
const holding = (cells: Readonly<Record<string, string>>) =>
  oneSheet(Object.fromEntries(Object.entries(cells).map(([address, value]) => [address, { value }])));

const names = async (shelf: ReturnType<typeof shelfOf>) => {
  const { kept, deleted } = await shelf.list();
  return [kept.map(({ name }) => name).sort(), deleted.map(({ name }) => name)];
};

test("edits kept one by one are there when the workbook is opened again, over the sheets kept whole last", async () => {
  const shelf = shelfOf();
  const id = await shelf.add("Stair", holding({ A1: "first" }));
  const { known } = await shelf.open(id);
  for (let row = 1; row <= 25; row += 1) await shelf.append(known, row, typed(`B${row}`, `row ${row}`));
  const rows = Object.fromEntries(Array.from({ length: 25 }, (_, index) => [`B${index + 1}`, `row ${index + 1}`]));
  expect((await shelf.open(id)).data).toEqual(holding({ A1: "first", ...rows }));
  // Opening alone changes nothing: a second look finds the same.
  expect((await shelf.open(id)).data).toEqual(holding({ A1: "first", ...rows }));
});

test("a tab that opens a workbook in which another is typing goes on from what it found", async () => {
  const shelf = shelfOf();
  const id = await shelf.add("Stair", holding({}));
  const one = await shelf.open(id);
  await shelf.append(one.known, 1, typed("A1", "one"));
  const other = await shelf.open(id);
  expect(other.data).toEqual(holding({ A1: "one" }));
  await shelf.append(other.known, 1, typed("A2", "two"));
  expect((await shelf.open(id)).data).toEqual(holding({ A1: "one", A2: "two" }));
  expect(await shelf.keep(other.known, 1, holding({ A1: "one", A2: "two" }))).toEqual({ revision: 1 });
  expect((await shelf.open(id)).data).toEqual(holding({ A1: "one", A2: "two" }));
  expect(await shelf.isOvertaken(one.known)).toBe(true);
});

test("of two tabs that went on from one state the first has the workbook; the other's edits become a workbook of their own", async () => {
  const shelf = shelfOf();
  const id = await shelf.add("Stair", holding({ A1: "first" }));
  const [one, other] = [await shelf.open(id), await shelf.open(id)];
  await shelf.append(one.known, 1, typed("A2", "one"));
  await shelf.append(other.known, 1, typed("A3", "other"));
  await shelf.append(other.known, 2, typed("A4", "other"));
  // Both are killed before they hear of each other.
  expect((await shelf.open(id)).data).toEqual(holding({ A1: "first", A2: "one" }));
  expect(await names(shelf)).toEqual([["Stair", "Stair 2"], []]);
  const copy = (await shelf.list()).kept.find(({ name }) => name === "Stair 2")?.id ?? "";
  expect((await shelf.open(copy)).data).toEqual(holding({ A1: "first", A3: "other", A4: "other" }));
});

test("a tab that lives to hear of the other goes on in the copy that was already made of its edits", async () => {
  const shelf = shelfOf();
  const id = await shelf.add("Stair", holding({}));
  const [one, other] = [await shelf.open(id), await shelf.open(id)];
  await shelf.append(one.known, 1, typed("A1", "one"));
  await shelf.append(other.known, 1, typed("A1", "other"));
  await shelf.open(id);
  await shelf.append(other.known, 2, typed("A2", "other"));
  const kept = await shelf.keep(other.known, 2, holding({ A1: "other", A2: "other" }));
  expect(kept).toMatchObject({ copy: "Stair 2", known: { book: other.known.opening } });
  await shelf.open(id);
  expect(await names(shelf)).toEqual([["Stair", "Stair 2"], []]);
  expect((await shelf.open(other.known.opening)).data).toEqual(holding({ A1: "other", A2: "other" }));
});

test("edits of a killed tab are rescued also when another keeps its own sheets whole meanwhile", async () => {
  const shelf = shelfOf();
  const id = await shelf.add("Stair", holding({ A1: "first" }));
  const [one, killed] = [await shelf.open(id), await shelf.open(id)];
  await shelf.append(one.known, 1, typed("A2", "one"));
  await shelf.append(killed.known, 1, typed("A3", "killed"));
  expect(await shelf.keep(one.known, 1, holding({ A1: "first", A2: "one" }))).toEqual({ revision: 1 });
  await shelf.append(killed.known, 2, typed("A4", "killed"));
  await shelf.open(id);
  expect(await names(shelf)).toEqual([["Stair", "Stair 2"], []]);
  expect((await shelf.open(killed.known.opening)).data).toEqual(holding({ A1: "first", A3: "killed", A4: "killed" }));
});

test("a workbook is renamed, duplicated, deleted and put back, under a name that no other has", async () => {
  const shelf = shelfOf();
  const id = await shelf.add("Stair", holding({ A1: "mine" }));
  expect(await shelf.rename(id, "  Kitchen: stair / back ")).toBe("Kitchen stair back");
  const copy = await shelf.duplicate(id);
  expect(await names(shelf)).toEqual([["Kitchen stair back", "Kitchen stair back 2"], []]);
  expect((await shelf.open(copy)).data).toEqual(holding({ A1: "mine" }));
  expect(await shelf.rename(copy, "KITCHEN STAIR BACK")).toBe("KITCHEN STAIR BACK 2");
  await shelf.remove(id);
  expect(await names(shelf)).toEqual([["KITCHEN STAIR BACK 2"], ["Kitchen stair back"]]);
  await shelf.add("Kitchen stair back", holding({}));
  await shelf.putBack(id);
  expect(await names(shelf)).toEqual([["KITCHEN STAIR BACK 2", "Kitchen stair back", "Kitchen stair back 3"], []]);
  expect((await shelf.open(id)).data).toEqual(holding({ A1: "mine" }));
});

test("a deleted workbook is there for 30 days; one that is still typed into in a tab comes back with the typing", async () => {
  const clock = { now: 0 };
  const shelf = shelfOf(memoryRecords(), clock);
  const [one, other] = [await shelf.add("One", holding({})), await shelf.add("Other", holding({}))];
  const { known } = await shelf.open(one);
  await shelf.remove(one);
  await shelf.remove(other);
  await shelf.append(known, 1, typed("A1", "typed"));
  await shelf.keep(known, 1, holding({ A1: "typed" }));
  expect(await names(shelf)).toEqual([["One"], ["Other"]]);
  clock.now += 29 * 86_400_000;
  expect(await names(shelf)).toEqual([["One"], ["Other"]]);
  clock.now += 2 * 86_400_000;
  expect(await names(shelf)).toEqual([["One"], []]);
  await expect(shelf.putBack(other)).rejects.toThrow("this workbook is no longer in this browser");
});

test("the demo that nobody has changed is opened again, and one that was changed is left as it is", async () => {
  const shelf = shelfOf();
  const first = await shelf.addDemo("Demo");
  expect(await shelf.addDemo("Demo")).toBe(first);
  const { known, data, isDemo } = await shelf.open(first);
  expect([data, isDemo]).toEqual([DEMO, true]);
  await shelf.append(known, 1, typed("A1", "mine"));
  const second = await shelf.addDemo("Demo");
  expect(second).not.toBe(first);
  expect(await names(shelf)).toEqual([["Demo", "Demo 2"], []]);
  expect((await shelf.open(first)).data).toEqual(holding({ A1: "mine" }));
});

test("sheets that this program cannot read are refused by a sentence, stay where they are, and go into a backup as they are", async () => {
  const records = memoryRecords();
  const shelf = shelfOf(records);
  const id = await shelf.add("Newer", holding({}));
  await records.change((found) => found.putSheets(id, { version: 99, sheets: [] } as never));
  await expect(shelf.open(id)).rejects.toThrow("this program reads workbooks up to version 1, this one is version 99");
  expect(await names(shelf)).toEqual([["Newer"], []]);
  expect(await shelf.all()).toEqual([{ name: "Newer", data: { version: 99, sheets: [] } }]);
});

test("an edit that would stop the page whenever the workbook is opened stays as text", async () => {
  const shelf = shelfOf();
  const id = await shelf.add("Stair", holding({}));
  const { known } = await shelf.open(id);
  const formula = `=${"ABS(".repeat(30_000)}1${")".repeat(30_000)}`;
  const cells: Record<string, CellData> = { A1: { formula }, B1: { formula: "=1+1" } };
  await shelf.append(known, 1, { sheets: [{ name: "Job", cells }] });
  expect((await shelf.open(id)).data).toEqual(oneSheet({ A1: { value: formula }, B1: { formula: "=1+1" } }));
});
