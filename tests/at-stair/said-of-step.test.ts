import { saidOfStep } from "../../src/at-stair/said-of-step";
import type { State, Taking } from "../../src/at-stair/taking";
import { afterTouches, type Touch } from "../../src/at-stair/touched";
import { FIVE_STEPS } from "../solver/fit/skirt-surface/flight-in-space";
import { begin, onward, reads } from "./touches";

const TAKING: Taking = { job: "Invented", unit: "in", tape: 16 };
const treadAt = (step: number) => ({ piece: "tread", step }) as const;

/** The invented flight, with a reading of one step so much longer. */
const steps = (count: number, step = 0, reading = 0, more = 0): State => {
  const touches = FIVE_STEPS.slice(0, count).flatMap(({ near, far, diagonal, secondDiagonal }, place): readonly Touch[] => [
    ...reads(...[near, far, diagonal, secondDiagonal].map((length, at) =>
      (length ?? 0) + (place + 1 === step && at === reading ? more : 0))),
    onward(place + 1),
  ]);
  return afterTouches([begin(), ...reads(10), ...touches], "in");
};

test("of four treads and more MISREAD names the reading and what it likely is; nothing goes on before it is read again or kept", () => {
  // By hand: an inch was added to a front of 36.
  const said = saidOfStep(steps(4, 4, 1, 1), TAKING, treadAt(4));
  expect(said.heading).toBe("step 4 does not close");
  expect(said.doubts).toEqual([
    { at: { ...treadAt(4), reading: "front" }, read: "37", likely: "36", why: "a whole inch too long" },
  ]);
  expect(said.again).toEqual({ ...treadAt(4), reading: "front" });
  expect(said.toKeep).toEqual([treadAt(4)]);
  // The least of one more than 2/16 is what two divisions of the tape allow.
  expect(said.lines[0]).toMatch(/^The diagonals disagree by .*; 1\/8 is the most\.$/);
});

test("a doubtful reading of a step below is asked for from where one stands", () => {
  const said = saidOfStep(steps(5, 2, 1, 1), TAKING, treadAt(5));
  expect(said.again).toEqual({ ...treadAt(2), reading: "front" });
  expect([said.heading, said.toKeep]).toEqual(["step 5 closes, but a reading is doubtful", [treadAt(2)]]);
});

test("kept as read, it is doubtful and asked no more", () => {
  const state = { ...steps(4, 4, 1, 1) };
  const kept = { ...state, steps: state.steps.map((step) => ({ ...step, isKept: step.step === 4 })) };
  const said = saidOfStep(kept, TAKING, treadAt(4));
  expect([said.again, said.doubts, said.toKeep, said.lines[0]]).toEqual([undefined, [], [], "Kept as read: doubtful."]);
  expect(said.struck).toEqual([{ ...treadAt(4), reading: "front" }]);
});

test("of an honest flight nothing stands out, and NEXTSTEP's lengths of the next tread are said", () => {
  const said = saidOfStep(steps(5), TAKING, treadAt(5));
  expect([said.heading, said.again, said.doubts]).toEqual(["step 5 closes", undefined, []]);
  expect(said.lines[1]).toBe("Nothing stands out.");
  // Backs of 36 to 36 1/8 and fronts of 35 15/16 to 36 run on: 36 1/8 and 36 or a sixteenth more.
  const next = /^Step 6 will read back 36( 1\/16| 3\/32| 1\/8| 5\/32| 3\/16), front 36( 1\/32| 1\/16| 3\/32)?, give or take /;
  expect(said.lines[2]).toMatch(next);
});

test("under four treads the fit says whether a step closes, and what differs most from the step below", () => {
  const said = saidOfStep(steps(2, 2, 1, 1), TAKING, treadAt(2));
  expect(said.heading).toBe("step 2 does not close");
  // By hand: 35 15/16 and an inch.
  expect(said.lines).toContain("Differs most from step 1: front 36 15/16, there 35 15/16.");
  expect(said.lines).toContain("No verdict on lengths: it takes 4 treads with back, front and a diagonal, got 2.");
  expect(said.again).toEqual({ ...treadAt(2), reading: "front" });
  const first = saidOfStep(steps(1, 1, 2, 1), TAKING, treadAt(1));
  // Nothing lies below the first: the tape is still on the last.
  expect([first.heading, first.again?.reading]).toEqual(["step 1 does not close", "secondDiagonal"]);
});

test("a diagonal that no step can have is told in the fit's own sentence", () => {
  const state = afterTouches([begin(), ...reads(10, 36, 36, 9, 37.375)], "in");
  // As the fit declares it.
  expect(saidOfStep(state, TAKING, treadAt(1)).lines).toContain(
    'Diagonal: 9" is no longer than the 10" between the two lines; read it again.',
  );
});

test("risers alone have the verdict of their fit", () => {
  const risers = (more: number): State =>
    afterTouches([begin({ piece: "riser", across: 7.5 }), ...[0, 0, 0, more, 0].flatMap((add, place): readonly Touch[] => [
      // 7 1/2 by 36: the diagonal is 36.77, to the sixteenth 36 3/4.
      ...reads(7.5, 36, 36 + add, 36.75, 36.75), onward(place + 1, "riser"),
    ])], "in");
  const said = saidOfStep(risers(1), TAKING, { piece: "riser", step: 4 });
  expect([said.heading, said.again]).toEqual(["riser 4 does not close", { piece: "riser", step: 4, reading: "bottom" }]);
  expect(said.lines.join(" ")).toContain("Bottom likely 36 in: read again");
  expect(saidOfStep(risers(0), TAKING, { piece: "riser", step: 4 })).toMatchObject({ heading: "riser 4 closes", doubts: [], toKeep: [] });
});

test("a step that is not all read says so and asks for the rest", () => {
  const state = afterTouches([begin(), ...reads(10, 36)], "in");
  expect(saidOfStep(state, TAKING, treadAt(1))).toMatchObject({
    heading: "step 1 is not all read", again: { ...treadAt(1), reading: "front" }, toKeep: [],
  });
});
