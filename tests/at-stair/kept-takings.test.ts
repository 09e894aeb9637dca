import { allKept, close, keep, kept, type KeptTaking, keptOpen, passingStore, remove } from "../../src/at-stair/kept-takings";
import { readingSetOf } from "../../src/at-stair/reading-set-of";
import { afterTouches, type Touch } from "../../src/at-stair/touched";
import { begin, DAY, onward, reads } from "./touches";

const TOUCHES = [begin(), ...reads(10, 36, 36.0625, 37.375, 37.4375), onward(1), ...reads(36)];
const TAKING: KeptTaking = { id: "b", job: "Invented house", unit: "in", tape: 16, touches: TOUCHES };

test("what was kept after the last touch comes back to the same screen", () => {
  const at = passingStore();
  keep(at, TAKING);
  const found = keptOpen(at);
  expect(found).toEqual(TAKING);
  expect(afterTouches(found?.touches ?? [], "in")).toEqual(afterTouches(TOUCHES, "in"));
});

test("several stairs are kept beside each other, the last begun first; one that is left stays kept", () => {
  const at = passingStore();
  keep(at, { ...TAKING, id: "a", job: "First" });
  keep(at, TAKING);
  close(at);
  expect([keptOpen(at), allKept(at).map(({ job }) => job)]).toEqual([undefined, ["Invented house", "First"]]);
  remove(at, "b");
  expect([kept(at, "b"), allKept(at).map(({ job }) => job)]).toEqual([undefined, ["First"]]);
});

test("what is no stair of this page is left alone", () => {
  const at = passingStore();
  keep(at, TAKING);
  at.setItem("treadsheet at the stair/x", "{");
  at.setItem("treadsheet at the stair/y", '{"version":2,"touches":[]}');
  expect(allKept(at).map(({ id }) => id)).toEqual(["b"]);
});

test("a stair of many steps put on one by one, and of a wide landing, comes back", () => {
  const at = passingStore();
  const more = Array.from({ length: 300 }, (): Touch => ({ key: "more", piece: "tread" }));
  // 20,000 in is the longest length that is read anywhere.
  const last: Touch = { key: "read", at: { piece: "tread", step: 313, reading: "back" } };
  const touches = [begin(), ...more, last, ...reads(20_000)];
  keep(at, { ...TAKING, touches });
  expect(keptOpen(at)?.touches).toEqual(touches);
});

test("the readings leave with the run of every step, the day and what was kept", () => {
  const state = afterTouches([...TOUCHES, { key: "keep", steps: [{ piece: "tread", step: 1 }] }], "in");
  expect(readingSetOf(state, TAKING)).toEqual({
    job: "Invented house", unit: "in", tape: 16, taken: DAY,
    treads: [
      { step: 1, read: { run: 10, back: 36, front: 36.0625, diagonal: 37.375, secondDiagonal: 37.4375 }, kept: true },
      { step: 2, read: { run: 10, back: 36 }, kept: false },
    ],
    risers: [],
  });
});
