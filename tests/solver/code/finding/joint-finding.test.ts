import type { Finding, Outcome } from "../../../../src/solver/code/finding/compared";
import { eitherPart, everyPart } from "../../../../src/solver/code/finding/joint-finding";
import { Exact } from "../../../../src/solver/length/exact";

const part = (outcome: Outcome, note = "", margin?: number): Finding => ({
  outcome, limit: "", notes: note === "" ? [] : [note], ...(margin === undefined ? {} : { margin: new Exact(margin) }),
});

const everyOf = (needs: "all" | "first" | "any", ...outcomes: readonly Outcome[]) =>
  everyPart(outcomes.map((outcome) => part(outcome)), needs)?.outcome;

// By the words of each: with "all" every part has to be known, with "first" the first one, with "any" what is known decides; a broken part
// breaks the clause whatever else is known of it.
test.each<readonly [readonly Outcome[], Outcome, Outcome, Outcome]>([
  [["holds", "holds"], "holds", "holds", "holds"],
  [["holds", "breaks"], "breaks", "breaks", "breaks"],
  [["not given", "holds"], "not given", "not given", "holds"],
  [["holds", "not given"], "not given", "holds", "holds"],
  [["not given", "not given"], "not given", "not given", "not given"],
  [["not given", "breaks"], "breaks", "breaks", "breaks"],
  [["breaks", "not given"], "breaks", "breaks", "breaks"],
  [["holds", "not given", "holds"], "not given", "holds", "holds"],
  [["not given", "holds", "not given"], "not given", "not given", "holds"],
  [["does not apply", "not given"], "not given", "does not apply", "does not apply"],
])("of a clause of which the parts read %j, with all, first and any needed: %s, %s, %s", (outcomes, all, first, any) => {
  expect([everyOf("all", ...outcomes), everyOf("first", ...outcomes), everyOf("any", ...outcomes)]).toEqual([all, first, any]);
});

// What is left to settle comes before what is settled, and what holds before what is not asked.
const GRAVEST_FIRST: readonly Outcome[] = [
  "breaks", "not given", "touches", "left to a person", "holds", "does not apply", "no verdict",
];
const EASIEST_FIRST: readonly Outcome[] = [
  "does not apply", "holds", "no verdict", "touches", "left to a person", "not given", "breaks",
];
const pairs = (order: readonly Outcome[]) => order.flatMap((one, place) => order.slice(place + 1).map((other) => [one, other] as const));

test.each(pairs(GRAVEST_FIRST))("where every part is to hold, %s weighs more than %s, in whatever order they stand", (graver, lighter) => {
  expect([everyOf("all", graver, lighter), everyOf("all", lighter, graver)]).toEqual([graver, graver]);
});

test.each(pairs(EASIEST_FIRST))("where one of several is enough, %s does for %s, in whatever order they stand", (easier, harder) => {
  const either = (...outcomes: readonly Outcome[]) => eitherPart(outcomes.map((outcome) => part(outcome)))?.outcome;
  expect([either(easier, harder), either(harder, easier)]).toEqual([easier, easier]);
});

describe("of parts that read alike the one nearest to its limit stands in the row, and the others in its note", () => {
  const margins = (...all: readonly (number | undefined)[]) =>
    everyPart(all.map((margin, place) => part("holds", `part ${place + 1}`, margin)), "all");

  test.each<readonly [readonly (number | undefined)[], number | undefined, readonly string[]]>([
    [[3, 1, 2], 1, ["part 2", "part 1", "part 3"]],
    [[1, 1], 1, ["part 1", "part 2"]],
    [[undefined, 2], 2, ["part 2", "part 1"]],
    [[2, undefined], 2, ["part 1", "part 2"]],
    [[undefined, undefined], undefined, ["part 1", "part 2"]],
    [[-1, -3], -3, ["part 2", "part 1"]],
  ])("margins of %j", (all, margin, notes) => {
    const found = margins(...all);
    expect([found?.margin?.toNumber(), found?.notes]).toEqual([margin, notes]);
  });

  test("the note of a part that was not given stands there only where the row waits for it", () => {
    const parts = [part("holds", "at least 4 in", 1), part("not given", "give grip"), part("not given", "give recess")];
    expect(everyPart(parts, "any")?.notes).toEqual(["at least 4 in"]);
    expect(everyPart(parts, "all")?.notes).toEqual(["give grip", "give recess"]);
  });

  test("the same note is said once", () => {
    expect(everyPart([part("holds", "both", 1), part("holds", "both", 2)], "all")?.notes).toEqual(["both"]);
  });
});
