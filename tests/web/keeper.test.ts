import { keeper } from "../../src/web/keeper";
import type { SheetStore } from "../../src/web/sheet-store";

/** A store that takes its time: each keeping ends when it is let, and is refused where another was kept meanwhile, as the browser's is. */
const slowStore = () => {
  let revision = 7;
  const kept: unknown[] = [];
  const waiting: (() => void)[] = [];
  const store: SheetStore = {
    read: () => Promise.resolve(undefined),
    keep: (data, known) =>
      new Promise((resolve) => {
        waiting.push(() => {
          if (known !== revision) return resolve(undefined);
          revision += 1;
          kept.push(data);
          resolve(revision);
        });
      }),
  };
  const turn = (): Promise<void> => new Promise((resolve) => void setImmediate(resolve));
  return {
    store, kept,
    other: () => void (revision += 1),
    let: async (): Promise<void> => {
      await turn();
      waiting.shift()?.();
      await turn();
    },
  };
};

test("a change while an earlier one is still being kept is kept after it, not taken for another tab's", async () => {
  const slow = slowStore();
  let sheets = "as opened";
  const keep = keeper(slow.store, 7, sheets);
  sheets = "first change";
  const first = keep(() => sheets);
  await slow.let();
  sheets = "second change";
  const second = keep(() => sheets);
  sheets = "third change";
  const third = keep(() => sheets);
  await slow.let();
  await slow.let();
  expect(await Promise.all([first, second, third])).toEqual(["kept", "kept", "unchanged"]);
  expect(slow.kept).toEqual(["first change", "third change"]);
});

test("two that begin at once are both kept in turn", async () => {
  const slow = slowStore();
  const [one, two] = ["one", "two"];
  const keep = keeper(slow.store, 7, "");
  const both = Promise.all([keep(() => one), keep(() => two)]);
  await slow.let();
  await slow.let();
  expect(await both).toEqual(["kept", "kept"]);
});

test("what another tab kept is not overwritten, and nothing more is kept after that", async () => {
  const slow = slowStore();
  const keep = keeper(slow.store, 7, "as opened");
  slow.other();
  const refused = keep(() => "mine");
  await slow.let();
  expect(await refused).toBe("overtaken");
  expect(await keep(() => "mine again")).toBe("overtaken");
  expect(slow.kept).toEqual([]);
});

test("a store that fails once is asked again with the next change, and sheets as they were are not kept", async () => {
  const kept: unknown[] = [];
  let fails = true;
  const store: SheetStore = {
    read: () => Promise.resolve(undefined),
    keep: (data, known) => {
      if (fails) return Promise.reject(new Error("the disk is full"));
      kept.push(data);
      return Promise.resolve(known + 1);
    },
  };
  const keep = keeper(store, 0, "as opened");
  expect(await keep(() => "as opened")).toBe("unchanged");
  await expect(keep(() => "changed")).rejects.toThrow("the disk is full");
  fails = false;
  expect(await keep(() => "changed")).toBe("kept");
  expect(kept).toEqual(["changed"]);
});
