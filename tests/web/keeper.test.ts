import { keeper } from "../../src/web/keeper";
import { memoryRecords } from "../../src/web/memory-records";
import type { WorkbookChange } from "../../src/web/workbook-change";
import { oneSheet, shelfOf, slowStore } from "./shelf";

const typed = (value: string): WorkbookChange => ({ sheets: [{ name: "Job", cells: { A1: { value } } }] });
const holding = (value: string) => oneSheet({ A1: { value } });

/** A workbook opened in a tab of a browser that takes its time, and what other tabs find there. */
const slowTab = async () => {
  const records = memoryRecords();
  const quick = shelfOf(records);
  const id = await quick.add("Stair", holding("as opened"));
  const slow = slowStore(records);
  const { known } = await quick.open(id);
  return { tab: keeper(shelfOf(slow.store), known), quick, id, let: slow.let, begun: slow.begun };
};

test("a change while an earlier one is still being kept is kept after it, not taken for another tab's", async () => {
  const slow = await slowTab();
  let sheets = "first change";
  await slow.tab.note(typed(sheets));
  const first = slow.tab.keep(() => holding(sheets));
  await slow.let();
  sheets = "second change";
  await slow.tab.note(typed(sheets));
  const second = slow.tab.keep(() => holding(sheets));
  sheets = "third change";
  await slow.tab.note(typed(sheets));
  const third = slow.tab.keep(() => holding(sheets));
  await slow.let();
  await slow.let();
  expect(await Promise.all([first, second, third])).toEqual([{ kind: "kept" }, { kind: "kept" }, { kind: "unchanged" }]);
  const { data, known } = await slow.quick.open(slow.id);
  expect([data, known.revision]).toEqual([holding("third change"), 2]);
});

test("two that begin at once are both kept in turn, and what was not changed is not kept", async () => {
  const slow = await slowTab();
  await slow.tab.note(typed("one"));
  const both = Promise.all([slow.tab.keep(() => holding("one")), slow.tab.keep(() => holding("one"))]);
  await slow.let();
  expect(await both).toEqual([{ kind: "kept" }, { kind: "unchanged" }]);
});

test("an edit made while the sheets are being kept whole outlives a tab that is killed then", async () => {
  const slow = await slowTab();
  await slow.tab.note(typed("one"));
  void slow.tab.keep(() => holding("one"));
  await slow.begun();
  await slow.tab.note(typed("two"));
  // Killed before the sheets were kept, and after.
  expect((await slow.quick.open(slow.id)).data).toEqual(holding("two"));
  await slow.let();
  expect((await slow.quick.open(slow.id)).data).toEqual(holding("two"));
});

test("a tab that another overtook goes on as a copy, with what was typed while that came out", async () => {
  const slow = await slowTab();
  const other = await slow.quick.open(slow.id);
  await slow.quick.append(other.known, 1, typed("theirs"));
  await slow.quick.keep(other.known, 1, holding("theirs"));
  await slow.tab.note(typed("mine"));
  let mine = "mine";
  const refused = slow.tab.keep(() => holding(mine));
  await slow.begun();
  mine = "mine, later";
  await slow.tab.note(typed(mine));
  await slow.let();
  await slow.let();
  expect(await refused).toEqual({ kind: "overtaken", copy: "Stair 2" });
  await slow.tab.note(typed("mine, last"));
  expect((await slow.quick.open(slow.id)).data).toEqual(holding("theirs"));
  expect((await slow.quick.open(slow.tab.known().book)).data).toEqual(holding("mine, last"));
  expect((await slow.quick.list()).kept.map(({ name }) => name).sort()).toEqual(["Stair", "Stair 2"]);
});

test("a store that fails once is asked again with the next change", async () => {
  const records = memoryRecords();
  const shelf = shelfOf(records);
  const id = await shelf.add("Stair", holding("as opened"));
  let fails = true;
  const failing = shelfOf({
    ...records,
    append: (edit) => (fails ? Promise.reject(new Error("the disk is full")) : records.append(edit)),
    change: (step) => (fails ? Promise.reject(new Error("the disk is full")) : records.change(step)),
  });
  const tab = keeper(failing, (await shelf.open(id)).known);
  expect(await tab.keep(() => holding("as opened"))).toEqual({ kind: "unchanged" });
  await expect(tab.note(typed("changed"))).rejects.toThrow("the disk is full");
  await expect(tab.keep(() => holding("changed"))).rejects.toThrow("the disk is full");
  fails = false;
  await tab.note(typed("changed again"));
  expect(await tab.keep(() => holding("changed again"))).toEqual({ kind: "kept" });
  expect((await shelf.open(id)).data).toEqual(holding("changed again"));
});
