import { expected, outlier } from "../../src/at-stair/expected";
import type { Taking } from "../../src/at-stair/taking";
import { afterTouches, type Touch } from "../../src/at-stair/touched";
import { flightInSpace, skirts } from "../solver/fit/skirt-surface/flight-in-space";
import { begin, onward, reads } from "./touches";

const TAKING: Taking = { job: "Invented", unit: "in", tape: 16 };
const at = (step: number, reading: string) => ({ piece: "tread", step, reading }) as const;

test("before anything is read the keys stand round what was said at the start, and nobody says it", () => {
  const state = afterTouches([begin({ across: 12, width: 35 })], "in");
  expect(expected(state, TAKING, at(1, "run"))).toEqual({ value: 12 });
  expect(expected(state, TAKING, at(1, "front"))).toEqual({ value: 35 });
  // 12, 35, 37.
  expect(expected(state, TAKING, at(1, "secondDiagonal"))).toEqual({ value: 37 });
});

test("then the same reading of the step below says it, or of the one above", () => {
  const touches: readonly Touch[] = [begin(), ...reads(10, 36, 36.0625, 37.375, 37.4375), onward(1)];
  expect(expected(afterTouches(touches, "in"), TAKING, at(2, "front"))).toEqual({ value: 36.0625, from: "step 1" });
  const fromTheSecond: readonly Touch[] = [begin(), { key: "step", at: { piece: "tread", step: 2 } }, ...reads(36.5)];
  expect(expected(afterTouches(fromTheSecond, "in"), TAKING, at(1, "back"))).toEqual({ value: 36.5, from: "step 2" });
});

test("from the fourth tread on the two skirts say it, within a sixteenth of where they are", () => {
  // Planes in space, each corner where two lines and a skirt meet; read to the nearest sixteenth.
  const planes = skirts(36, { along: 0.4, up: 0.3 }, { along: -0.5, up: 0.2 });
  const { treads } = flightInSpace(planes, [10, 10, 10, 10, 10], [7.5, 7.5, 7.5, 7.5, 7.5]);
  const sixteenth = (length: number | undefined): number => Math.round((length ?? 0) * 16) / 16;
  const touches = treads.slice(0, 4).flatMap(({ step, near, far, diagonal, secondDiagonal }): readonly Touch[] => [
    ...reads(...[near, far, diagonal, secondDiagonal].map(sixteenth)), onward(Number(step)),
  ]);
  const state = afterTouches([begin(), ...reads(10), ...touches], "in");
  const fifth = treads[4]!;
  for (const [reading, there] of Object.entries({
    back: fifth.near, front: fifth.far, diagonal: fifth.diagonal, secondDiagonal: fifth.secondDiagonal,
  })) {
    const found = expected(state, TAKING, at(5, reading));
    expect(found.from).toBe("the steps below");
    expect(Math.abs(found.value - (there ?? 0))).toBeLessThan(1 / 16);
    expect(found.giveOrTake).toBeGreaterThan(0);
  }
});

test("a reading more than a quarter from the steps below is asked again, in words", () => {
  const below = { value: 37, from: "the steps below", giveOrTake: 0.125 };
  expect(outlier(35.9375, below, "in")).toBe("1 1/16 less than the steps below say (37, give or take 1/8).");
  expect(outlier(37.25, below, "in")).toBeUndefined();
  expect(outlier(37.28125, below, "in")).toBe("9/32 more than the steps below say (37, give or take 1/8).");
  expect(outlier(38, { value: 37, from: "step 3" }, "in")).toBe("1 more than step 3 says (37).");
  // Where the steps below do not know it to a quarter, what they know it to is the limit.
  expect(outlier(37.375, { ...below, giveOrTake: 0.5 }, "in")).toBeUndefined();
  expect(outlier(906, { value: 913.5, from: "step 3" }, "mm")).toBe("7.5 less than step 3 says (913.5).");
  expect(outlier(908, { value: 913.5, from: "step 3" }, "mm")).toBeUndefined();
  // What was only guessed says nothing.
  expect(outlier(40, { value: 36 }, "in")).toBeUndefined();
});
