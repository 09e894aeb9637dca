import type { CodeFacts, Step } from "../../../../src/solver/code/fact-labels";
import { figure, type Rule, type UniformityRule } from "../../../../src/solver/code/profile";
import { codeOf, limitOf } from "../invented-code";
import { millimetres as mm, rowOf } from "../stair-check";

const steps = (...rises: readonly (number | undefined)[]): readonly Step[] =>
  rises.map((rise, index) => ({ step: index + 1, ...(rise === undefined ? {} : { rise: mm(rise) }) }));

const rowUnder = (rule: Rule, measured: readonly Step[], facts: CodeFacts = {}) =>
  rowOf("alike", facts, measured, [], codeOf(limitOf({ item: "alike", unit: "mm", rule, text: "uniform", measured: "step by step" })));

const within = (way: UniformityRule["within"], of: UniformityRule["of"] = "rise"): Rule => ({
  comparator: "uniformity", of, within: way, tolerance: figure("5", "mm"),
});

describe("the largest less the smallest of a flight", () => {
  // Worst is the end of the spread that lies further from the mean: 180, 180, 186 have the mean 182; 180, 186, 186 have 184; of 180 and
  // 190, which lie alike from 185, the larger.
  test.each<readonly [readonly number[], number, string]>([
    [[180, 180, 186], 6, "largest 186 mm at step 3, smallest 180 mm at step 1; worst is step 3"],
    [[180, 186, 186], 6, "largest 186 mm at step 2, smallest 180 mm at step 1; worst is step 1"],
    [[186, 180, 186], 6, "largest 186 mm at step 1, smallest 180 mm at step 2; worst is step 2"],
    [[180, 190], 10, "largest 190 mm at step 2, smallest 180 mm at step 1; worst is step 2"],
    [[180, 180], 0, "all 2 are 180 mm"],
  ])("%j", (rises, spread, note) => {
    const row = rowUnder(within("flight"), steps(...rises));
    expect([row.given, row.note]).toEqual([spread, `at most 5 mm apart; ${note}`]);
    expect(row.margin).toBe(5 - spread);
  });

  test("two steps are the fewest that tell, and a step that was not measured is none", () => {
    expect(rowUnder(within("flight"), steps(180)).verdict).toBe("not given");
    expect(rowUnder(within("flight"), steps(180, undefined)).verdict).toBe("not given");
    expect(rowUnder(within("flight"), steps(180, undefined, 183))).toMatchObject({ verdict: "pass", given: 3 });
  });
});

describe("neighbours", () => {
  // By hand: the steps of 180, 184, 181, 188 are 4, 3 and 7 apart; of equals the lower pair is named.
  test.each<readonly [readonly number[], number, string]>([
    [[180, 184, 181, 188], 7, "worst neighbours are step 3 (181 mm) and step 4 (188 mm)"],
    [[188, 181, 184, 180], 7, "worst neighbours are step 1 (188 mm) and step 2 (181 mm)"],
    [[180, 184, 180], 4, "worst neighbours are step 1 (180 mm) and step 2 (184 mm)"],
    [[180, 180], 0, "worst neighbours are step 1 (180 mm) and step 2 (180 mm)"],
  ])("%j", (rises, spread, note) => {
    const row = rowUnder(within("neighbours"), steps(...rises));
    expect([row.given, row.note]).toEqual([spread, `at most 5 mm apart; ${note}`]);
  });
});

describe("from the design value", () => {
  const design: CodeFacts = { riserHeight: mm(180) };

  test.each<readonly [UniformityRule["within"], readonly number[], number, string]>([
    ["design", [178, 183, 181], 3, "worst is step 2, 183 mm where 180 mm is meant"],
    ["design", [174, 183, 181], 6, "worst is step 1, 174 mm where 180 mm is meant"],
    ["design", [177, 183], 3, "worst is step 1, 177 mm where 180 mm is meant"],
    ["bottom step", [178, 190, 170], 2, "worst is step 1, 178 mm where 180 mm is meant"],
  ])("%s of %j", (way, rises, off, note) => {
    const row = rowUnder(within(way), steps(...rises), design);
    expect([row.given, row.note]).toEqual([off, `at most 5 mm apart; ${note}`]);
  });

  test.each(["design", "bottom step"] as const)("%s: without one it is asked for by its label", (way) => {
    const row = rowUnder(within(way), steps(180, 181));
    expect([row.verdict, row.note]).toEqual(["not given", "give unit rise to check this: at most 5 mm apart; step by step"]);
  });
});

test("a spread that was itself measured needs no steps", () => {
  const rule = within("flight", { spread: "winderSpread" });
  expect(rowUnder(rule, [], { winderSpread: mm(5) })).toMatchObject({ verdict: "pass", given: 5, margin: 0, note: "at most 5 mm apart" });
  expect(rowUnder(rule, [], { winderSpread: mm(6) })).toMatchObject({ verdict: "fail", margin: -1 });
  expect(rowUnder(rule, steps(180, 190))).toMatchObject({
    verdict: "not given", note: "give winder spread to check this: at most 5 mm apart; step by step",
  });
});

describe("steps that are only to be alike", () => {
  const rule: Rule = { comparator: "alike", of: ["rise", "run"], sense: "the same rise and the same going" };
  const both = (...pairs: readonly (readonly [number, number])[]): readonly Step[] =>
    pairs.map(([rise, run], index) => ({ step: index + 1, rise: mm(rise), run: mm(run) }));

  test("the wider spread stands in the row, each column's in the note", () => {
    const row = rowUnder(rule, both([180, 250], [183, 251]));
    expect(row).toMatchObject({ verdict: "judge", given: 3, limit: "uniform" });
    expect(row.note).toBe(
      "the same rise and the same going; rise: 3 mm apart; largest 183 mm at step 2, smallest 180 mm at step 1; worst is step 2; " +
        "run: 1 mm apart; largest 251 mm at step 2, smallest 250 mm at step 1",
    );
    expect(rowUnder(rule, both([180, 250], [183, 257]))).toMatchObject({ given: 7 });
  });

  test("a column with one reading tells nothing, and none is asked for by both names", () => {
    const row = rowUnder(rule, [{ step: 1, rise: mm(180), run: mm(250) }, { step: 2, rise: mm(182) }]);
    expect(row).toMatchObject({ verdict: "judge", given: 2 });
    expect(row.note).not.toContain("run:");
    expect(rowUnder(rule, []).note).toBe(
      "Needs measured steps: enter the rise and run of two steps or more in the steps table; step by step",
    );
  });
});
