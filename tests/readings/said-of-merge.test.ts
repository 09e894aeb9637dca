import type { MergedReading, MergedStep } from "../../src/readings/merged-readings";
import { isSameJob } from "../../src/readings/same-job";
import { counted, saidOfAll, saidOfDifference, saidOfKept, saidOfSet, saidOfTaking } from "../../src/readings/said-of-merge";

const reading = (name: string, becomes: MergedReading["becomes"]): MergedReading => ({
  heading: name, name, becomes, read: 36.75, now: "36 3/4", was: becomes === "new" ? "" : "36 5/8",
  says: becomes === "differs" ? "1/8 longer" : "",
});

const step = (number: number, readings: readonly MergedReading[], kept = false): MergedStep => ({
  part: "treads", step: number, row: number, isAppended: false, kept, readings,
});

test("a set says whose it is, of what and how it was read", () => {
  const treads = [{ step: 1, read: {}, kept: false }];
  const set = { job: "Invented", unit: "in", tape: 16, taken: "2026-03-04", treads, risers: [] } as const;
  expect(saidOfSet(set)).toBe("Invented: 1 tread, 0 risers. Last read 2026-03-04, in inches, on a tape in 1/16 in.");
  expect(saidOfSet({ ...set, job: "", unit: "mm", tape: 1 }))
    .toBe("No job named: 1 tread, 0 risers. Last read 2026-03-04, in millimetres, on a tape in 1 mm.");
});

test("readings are counted by what becomes of them", () => {
  const mixed = [
    step(1, [reading("back", "differs"), reading("front", "new"), reading("run", "same")]), step(2, [reading("run", "stays")]),
  ];
  expect(saidOfAll(mixed))
    .toBe("Of 4 readings 1 differs, 1 is new, 1 is the same and not listed, 1 cannot be taken in.");
  expect(saidOfAll([step(1, [reading("back", "new"), reading("front", "new")])])).toBe("All 2 readings are new.");
  expect(saidOfAll([step(1, [reading("back", "differs")])])).toBe("1 reading differs.");
  expect(saidOfAll([])).toBe("There is no reading in it.");
  expect([counted(1, "reading"), counted(2, "reading")]).toEqual(["1 reading", "2 readings"]);
});

test("what differs is said with what was, what is and by how much", () => {
  expect(saidOfDifference(reading("back", "differs"))).toBe("was 36 5/8, now 36 3/4: 1/8 longer");
});

test("steps that did not close are named, and nothing is said where all did", () => {
  expect(saidOfKept([step(1, []), step(4, [], true)]))
    .toBe("Did not close at the stair, kept as read: tread 4. Read again before cutting.");
  expect(saidOfKept([step(1, [])])).toBe("");
});

test("what was taken in names what changed, what was left out and what could not be taken in; of many the first four", () => {
  const changed = (number: number): MergedStep => step(number, [reading("back", "differs")]);
  const one = [step(1, [reading("back", "new"), reading("run", "same")])];
  expect(saidOfTaking("Fit", one, [])).toBe("Took 1 reading into Fit. Ctrl+Z takes all back.");
  const many = [...[1, 2, 3, 4, 5].map(changed), step(6, [reading("run", "stays")])];
  expect(saidOfTaking("Fit 2", many, [changed(7)])).toBe(
    "Took 5 readings into Fit 2. Ctrl+Z takes all back. Changed: tread 1, back was 36 5/8, now 36 3/4: 1/8 longer; " +
      "tread 2, back was 36 5/8, now 36 3/4: 1/8 longer; tread 3, back was 36 5/8, now 36 3/4: 1/8 longer; " +
      "tread 4, back was 36 5/8, now 36 3/4: 1/8 longer; and 1 more. Left out: tread 7. Not taken in: tread 6, run.",
  );
});

test("a job is the same whatever a message made of its marks", () => {
  expect(isSameJob("Baker's stair, back", "Baker’s stair – back")).toBe(true);
  expect(isSameJob("Front stair", "Back stair")).toBe(false);
});
