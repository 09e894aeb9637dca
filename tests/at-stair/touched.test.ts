import { readAt, type State, unreadAt } from "../../src/at-stair/taking";
import { afterTouches, type Touch } from "../../src/at-stair/touched";
import { begin, DAY, onward, reads, sixteenths } from "./touches";

const after = (...touches: readonly (Touch | readonly Touch[])[]): State => afterTouches(touches.flat(), "in");

/** Where the tape is, or what is shown. */
const shown = ({ screen }: State): string =>
  screen.shows === "reading" ? `${screen.at.piece} ${screen.at.step} ${screen.at.reading}`
    : screen.shows === "step" ? `${screen.at.piece} ${screen.at.step}` : screen.shows;

test("treads are read run, back, front and both diagonals, then said; the run once", () => {
  const order = [after(begin())];
  for (const count of [1, 2, 3, 4, 5]) order.push(after(begin(), reads(...[10, 36, 36, 37.375, 37.375].slice(0, count))));
  expect(order.map(shown)).toEqual([
    "tread 1 run", "tread 1 back", "tread 1 front", "tread 1 diagonal", "tread 1 secondDiagonal", "tread 1",
  ]);
  const second = after(begin(), reads(10, 36, 36, 37.375, 37.375), onward(1));
  expect(shown(second)).toBe("tread 2 back");
  expect(readAt(second, { piece: "tread", step: 2 })).toEqual({ run: 10 });
});

test("risers are read height, top, bottom and both diagonals, each with its height", () => {
  const flight = begin({ piece: "riser", first: 3, last: 4, across: 7.5 });
  expect(shown(after(flight))).toBe("riser 3 height");
  const second = after(flight, reads(7.5, 36, 36, 36.75, 36.75), onward(3, "riser"));
  expect(shown(second)).toBe("riser 4 height");
});

test("Next is dead until a whole and a part were touched", () => {
  const whole = after(begin(), { key: "whole", whole: 10 }, { key: "next", day: DAY });
  expect([shown(whole), whole.steps]).toEqual(["tread 1 run", []]);
  const part = after(begin(), { key: "part", part: 3 }, { key: "next", day: DAY });
  expect([shown(part), part.steps]).toEqual(["tread 1 run", []]);
  const both = after(begin(), { key: "part", part: 3 }, { key: "whole", whole: 10 }, { key: "next", day: DAY });
  expect([shown(both), both.steps, both.day]).toEqual([
    "tread 1 back", [{ piece: "tread", step: 1, read: { run: 10.1875 }, isKept: false }], DAY,
  ]);
});

test("a part brings the whole the screen showed, and a whole that was touched stays", () => {
  const follows = after(begin(), { key: "part", part: 15, whole: 9 });
  expect(follows.screen).toMatchObject({ entry: { whole: 9, part: 15, isChosen: false } });
  const chosen = after(begin(), { key: "whole", whole: 11 }, { key: "part", part: 15 });
  expect(chosen.screen).toMatchObject({ entry: { whole: 11, part: 15, isChosen: true } });
});

test("taking a touch away leads back to the screen before it, key by key", () => {
  const touches: readonly Touch[] = [
    begin(), ...reads(10, 36), ...sixteenths(36.5), { key: "half", half: 1 }, { key: "pad" }, { key: "digit", digit: 4 }, { key: "back" },
    { key: "next", day: DAY }, { key: "back" }, { key: "list" },
  ];
  const screens = touches.map((_, count) => JSON.stringify(afterTouches(touches.slice(0, count), "in")));
  // Undo shows what was there before the touch: another screen than the one after it.
  for (let count = 1; count < touches.length; count += 1) expect(screens[count]).not.toBe(screens[count - 1]);
  expect(shown(afterTouches(touches, "in"))).toBe("list");
  expect(shown(afterTouches(touches.slice(0, -2), "in"))).toBe("tread 1 diagonal");
});

test("Back shows the former reading with its keys, then the step below", () => {
  const back = after(begin(), reads(10, 36.1875), { key: "back" });
  expect(back.screen).toMatchObject({ at: { reading: "back" }, entry: { whole: 36, part: 3, half: 0 } });
  expect(shown(after(begin(), reads(10, 36, 36, 37.375, 37.375), onward(1), { key: "back" }))).toBe("tread 1");
  // Before the first reading there is nothing to go back to.
  expect(shown(after(begin(), { key: "back" }))).toBe("tread 1 run");
});

const FIRST = reads(10, 36, 36, 37.375, 37.375);

test("a reading read again comes back to the step that asked for it, and takes the place of the former", () => {
  const again = after(begin(), FIRST, onward(1), reads(36, 37, 37.375, 37.375), {
    key: "read", at: { piece: "tread", step: 1, reading: "front" },
  });
  expect(again.screen).toMatchObject({
    at: { step: 1, reading: "front" }, backTo: { piece: "tread", step: 2 }, entry: { isChosen: false },
  });
  const read = afterTouches([begin(), ...FIRST, onward(1), ...reads(36, 37, 37.375, 37.375),
    { key: "read", at: { piece: "tread", step: 1, reading: "front" } }, ...reads(36.5)], "in");
  expect([shown(read), readAt(read, { piece: "tread", step: 1 })["front"]]).toEqual(["tread 2", 36.5]);
});

test("a run read anew holds from its step up, and one put right at the first step holds for all that took it from there", () => {
  const second = [begin(), ...FIRST, onward(1), { key: "read", at: { piece: "tread", step: 2, reading: "run" } } as const, ...reads(11)];
  const state = after(second, onward(1), reads(36, 36, 37.375, 37.375), onward(2), reads(36));
  expect([1, 2, 3].map((step) => readAt(state, { piece: "tread", step })["run"])).toEqual([10, 11, 11]);
  const mended = after(begin(), FIRST, onward(1), reads(36), { key: "step", at: { piece: "tread", step: 1 } }, {
    key: "read", at: { piece: "tread", step: 1, reading: "run" },
  }, reads(10.25));
  expect([1, 2].map((step) => readAt(mended, { piece: "tread", step })["run"])).toEqual([10.25, 10.25]);
});

test("a step is kept as read until something of it is read again", () => {
  const kept = [begin(), ...FIRST, { key: "keep", steps: [{ piece: "tread", step: 1 }] } as const];
  expect(after(kept).steps[0]?.isKept).toBe(true);
  expect(after(kept, { key: "read", at: { piece: "tread", step: 1, reading: "back" } }, reads(36)).steps[0]?.isKept).toBe(false);
});

test("what was left out is asked before the list", () => {
  const two = begin({ last: 2 });
  const skipped = after(two, reads(10, 36), { key: "step", at: { piece: "tread", step: 2 } }, reads(36, 36, 37.375, 37.375), onward(2));
  expect(shown(skipped)).toBe("tread 1 front");
  const done = after(two, FIRST, onward(1), reads(36, 36, 37.375, 37.375), onward(2));
  expect([shown(done), unreadAt(done, "tread")]).toEqual(["list", undefined]);
  const more = after(two, FIRST, onward(1), reads(36, 36, 37.375, 37.375), onward(2), { key: "more", piece: "tread" });
  expect(shown(more)).toBe("tread 3 back");
});
