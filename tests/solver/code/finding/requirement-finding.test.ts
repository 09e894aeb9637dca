import type { CodeFacts } from "../../../../src/solver/code/fact-labels";
import { isReached } from "../../../../src/solver/code/finding/requirement-finding";
import { type Condition, figure, type Rule } from "../../../../src/solver/code/profile";
import { codeOf, limitOf } from "../invented-code";
import { flight, inches, row, rowOf } from "../stair-check";

const HANDRAIL: Condition = { fact: "handrails", is: ["one", "both"] };
const GUARD: Condition = { fact: "guard", is: ["yes"] };

const rowUnder = (rule: Rule, unit: "in" | "count", facts: CodeFacts, steps: Parameters<typeof rowOf>[2] = []) =>
  rowOf("asked", facts, steps, [], codeOf(limitOf({ item: "asked", unit, rule, text: "as printed" })));

// 29 CFR 1926.1052(c)(1): four risers or more, or more than 30 in of rise, whichever comes first.
describe("two thresholds, one of a count and one of a length", () => {
  const at = (facts: CodeFacts) => row("osha-1926.1052", "handrail required", { handrails: "none", openSides: "none", ...facts });

  test.each<readonly [string, CodeFacts, string, number | ""]>([
    ["both under", { risers: 3, totalRise: inches(30) }, "does not apply", 3],
    ["the count reached", { risers: 4, totalRise: inches(28) }, "fail", 4],
    ["the rise passed", { risers: 3, totalRise: inches(31) }, "fail", 31],
    ["both passed: the first is shown", { risers: 5, totalRise: inches(35) }, "fail", 5],
    ["the count reached, the rise not given", { risers: 4 }, "fail", 4],
    ["the rise passed, the count not given", { totalRise: inches(31) }, "fail", 31],
    ["the count under, the rise not given", { risers: 3 }, "not given", ""],
    ["the rise under, the count not given", { totalRise: inches(30) }, "not given", ""],
    ["neither given", {}, "not given", ""],
  ])("%s", (_says, facts, verdict, given) => {
    expect(at(facts)).toMatchObject({ verdict, given, limit: "4 or more, or more than 30 in" });
  });

  test("only what is missing is asked for", () => {
    expect(at({ risers: 3 }).note).toContain("give total rise to check this");
    expect(at({ totalRise: inches(30) }).note).toContain("give risers to check this");
    expect(at({}).note).toContain("give risers and total rise to check this");
  });

  test("under both, the note says from where on it is asked for", () => {
    expect(at({ risers: 3, totalRise: inches(30) }).note).toContain("is required only for 4 or more, or more than 30 in");
  });
});

test("a threshold is compared with the largest reading, a size that frees with the smallest", () => {
  const readings = flight("rise", [7, 9, 8]);
  const required: Rule = {
    comparator: "required-when", of: "riserHeight", from: { moreThan: figure("8.5", "in") },
    requires: "a handrail", provided: HANDRAIL,
  };
  expect(rowUnder(required, "in", { handrails: "none" }, readings)).toMatchObject({ verdict: "fail", given: 9 });
  const freed: Rule = { comparator: "exempt-when", of: "riserHeight", atLeast: figure("7.5", "in"), frees: "the nosing" };
  expect(rowUnder(freed, "in", {}, readings)).toMatchObject({ verdict: "does not apply", given: 7 });
  expect(rowUnder(freed, "in", {}, flight("rise", [7.5, 9]))).toMatchObject({ verdict: "pass", given: 7.5, margin: 0 });
  expect(rowUnder(freed, "in", {})).toMatchObject({ verdict: "not given", given: "", limit: "7.5 or more" });
});

describe("whether another limit is reached", () => {
  const drop: Rule = {
    comparator: "required-when", of: "fallHeight", from: { moreThan: figure("30", "in") },
    or: { of: "risers", from: { atLeast: figure("4", "count") } }, requires: "a guard", provided: GUARD,
  };

  // Reached by either; not reached only where both are known and neither is.
  test.each<readonly [CodeFacts, boolean | undefined]>([
    [{ fallHeight: inches(30), risers: 3 }, false],
    [{ fallHeight: inches(30.5), risers: 3 }, true],
    [{ fallHeight: inches(30), risers: 4 }, true],
    [{ fallHeight: inches(31) }, true],
    [{ risers: 4 }, true],
    [{ fallHeight: inches(30) }, undefined],
    [{ risers: 3 }, undefined],
    [{}, undefined],
  ])("%j", (facts, reached) => {
    expect(isReached(drop, facts, [])).toBe(reached);
  });

  test("a size that frees is reached from its figure on, at the smallest step", () => {
    const exempt: Rule = { comparator: "exempt-when", of: "treadDepth", atLeast: figure("11", "in"), frees: "the nosing" };
    const at = (runs: readonly number[]) => isReached(exempt, {}, flight("run", runs));
    expect([at([11, 12]), at([11.5, 10.5]), at([])]).toEqual([true, false, undefined]);
  });

  test("a limit that is no threshold tells nothing", () => {
    expect(isReached({ comparator: "min", of: "treadDepth", min: figure("10", "in") }, { treadDepth: inches(11) }, [])).toBeUndefined();
  });
});

describe("what is required or not permitted, with the answers that show it", () => {
  const required: Rule = { comparator: "required", requires: "a handrail on one side and a guard", provided: { all: [HANDRAIL, GUARD] } };
  const prohibited: Rule = { comparator: "prohibited", thing: "open risers are", present: { fact: "openRisers", is: ["yes"] } };

  test.each<readonly [Rule, CodeFacts, string, string]>([
    [required, { handrails: "one", guard: "yes" }, "pass", "a handrail on one side and a guard is required and is there"],
    [required, { handrails: "none", guard: "yes" }, "fail", "a handrail on one side and a guard is required and is not there"],
    [required, { handrails: "none" }, "fail", "a handrail on one side and a guard is required and is not there"],
    [required, { handrails: "one" }, "not given", "give handrails or guard to show that it is there"],
    [prohibited, { openRisers: "yes" }, "fail", "open risers are not permitted"],
    [prohibited, { openRisers: "no" }, "pass", "open risers are not permitted"],
    [prohibited, {}, "not given", "give open risers to check this"],
  ])("%j, %j: %s", (rule, facts, verdict, note) => {
    const found = rowUnder(rule, "count", facts);
    expect(found.verdict).toBe(verdict);
    expect(found.note).toContain(note);
    expect(found.limit).toBe(rule === required ? "as printed" : "not permitted");
  });

  test("a label that shows two things is asked for once", () => {
    const twice: Rule = { comparator: "required", requires: "a handrail", provided: { any: [HANDRAIL, { not: HANDRAIL }] } };
    expect(rowUnder(twice, "count", {}).note).toContain("give handrails to show");
  });
});
