import { amendedProfile } from "../../../src/solver/code/amended-profile";
import type { CodeFacts } from "../../../src/solver/code/fact-labels";
import { figure, type Limit, type Rule } from "../../../src/solver/code/profile";
import { isProblem } from "../../../src/solver/problem";
import { codeOf, limitOf } from "./invented-code";
import { flight, inches, millimetres as mm, rowOf } from "./stair-check";

type Kind = Rule["comparator"];
type Held = Pick<Limit, "unit" | "rule">;

const HANDRAIL = { requires: "a handrail", provided: { fact: "handrails", is: ["one", "both"] } } as const;

/** One limit of each kind that an authority may write anew, with figures that none of the amendments below has. */
const KINDS = {
  min: { unit: "in", rule: { comparator: "min", of: "headroom", min: figure("80", "in") } },
  max: { unit: "in", rule: { comparator: "max", of: "riserHeight", max: figure("7", "in") } },
  range: { unit: "in", rule: { comparator: "range", of: "handrailHeight", min: figure("34", "in"), max: figure("38", "in") } },
  equals: { unit: "mm", rule: { comparator: "equals", of: "walkline", values: [figure("270", "mm"), figure("300", "mm")] } },
  slope: { unit: "ratio", rule: { comparator: "slope", of: "treadSlope", rise: 1, run: 48 } },
  uniformity: { unit: "in", rule: { comparator: "uniformity", of: "rise", within: "flight", tolerance: figure("0.375", "in") } },
  sphere: { unit: "in", rule: { comparator: "sphere", of: "guardGap", sphere: figure("4", "in") } },
  "exempt-when": { unit: "in", rule: { comparator: "exempt-when", of: "treadDepth", atLeast: figure("11", "in"), frees: "the nosing" } },
  "required-when": {
    unit: "count", rule: { comparator: "required-when", of: "risers", from: { atLeast: figure("4", "count") }, ...HANDRAIL },
  },
} as const satisfies Partial<Record<Kind, Held>>;

const amending = (limit: string | number) => [{ item: "held", limit, authority: "Alder County (invented)" }];

const amendedRow = (limit: Held, written: string | number, facts: CodeFacts, steps = flight("rise", [])) =>
  rowOf("held", facts, steps, amending(written), codeOf(limitOf({ item: "held", ...limit })));

const refused = (limit: Held, written: string | number) => {
  const found = amendedProfile(codeOf(limitOf({ item: "held", ...limit })), amending(written), "in");
  return isProblem(found) ? found.problem : "taken";
};

// Each figure written anew, and the sizes beside it, by the words of each kind.
test.each<readonly [keyof typeof KINDS, string | number, string | number, readonly (readonly [CodeFacts, string])[]]>([
  ["min", 82, 82, [[{ headroom: inches(82) }, "pass"], [{ headroom: inches(81.5) }, "fail"]]],
  ["max", "8 1/4", 8.25, [[{ riserHeight: inches(8.25) }, "pass"], [{ riserHeight: inches(8.3) }, "fail"]]],
  ["range", "30 to 36", "30 to 36", [
    [{ handrailHeight: inches(30) }, "pass"], [{ handrailHeight: inches(36) }, "pass"], [{ handrailHeight: inches(29) }, "fail"],
    [{ handrailHeight: inches(37) }, "fail"],
  ]],
  ["range", "762 mm..36 in", "30 to 36", [[{ handrailHeight: inches(30) }, "pass"], [{ handrailHeight: inches(29.9) }, "fail"]]],
  ["equals", "305 mm", 305, [[{ walkline: mm(305) }, "pass"], [{ walkline: mm(300) }, "fail"], [{ walkline: mm(270) }, "fail"]]],
  ["slope", "1:20", "1:20", [[{ treadSlope: 0.05 }, "pass"], [{ treadSlope: 0.051 }, "fail"]]],
  ["slope", "1.5 : 30", "1.5:30", [[{ treadSlope: 0.05 }, "pass"], [{ treadSlope: 0.051 }, "fail"]]],
  ["slope", 0.05, "0.05:1", [[{ treadSlope: 0.05 }, "pass"], [{ treadSlope: 0.051 }, "fail"]]],
  ["sphere", "5", 5, [[{ guardGap: inches(4.9) }, "pass"], [{ guardGap: inches(5) }, "judge"], [{ guardGap: inches(5.1) }, "fail"]]],
  ["exempt-when", 10, "10 or more", [[{ treadDepth: inches(10) }, "pass"], [{ treadDepth: inches(9.9) }, "does not apply"]]],
  ["required-when", "3 or more", "3 or more", [[{ risers: 3, handrails: "none" }, "fail"], [{ risers: 2 }, "does not apply"]]],
  ["required-when", "3 risers", "3 or more", [[{ risers: 3, handrails: "none" }, "fail"], [{ risers: 2 }, "does not apply"]]],
  ["required-when", 3, "3 or more", [[{ risers: 3, handrails: "none" }, "fail"], [{ risers: 2 }, "does not apply"]]],
])("%s, %p: %p", (kind, written, cell, cases) => {
  for (const [facts, verdict] of cases) expect([facts, amendedRow(KINDS[kind], written, facts)]).toEqual([
    facts, expect.objectContaining({ verdict, limit: cell, sourceStatus: "amended by Alder County (invented)" }),
  ]);
});

test("a spread of the steps", () => {
  const at = (highest: number) => amendedRow(KINDS.uniformity, "3/16", {}, flight("rise", [7, highest]));
  expect([at(7.1875).verdict, at(7.25).verdict, at(7.25).limit]).toEqual(["pass", "fail", 0.1875]);
});

test("degrees, with and without their sign or word", () => {
  const lean: Held = { unit: "deg", rule: { comparator: "max", of: "riserSlope", max: figure("30", "deg") } };
  for (const written of [20, "20", "20°", "20 deg", "20 degrees", "20 Degrees"])
    expect([20, 21].map((riserSlope) => amendedRow(lean, written, { riserSlope }).verdict)).toEqual(["pass", "fail"]);
});

test("a threshold that leaves its figure out still does", () => {
  const drop: Held = {
    unit: "in",
    rule: {
      comparator: "required-when", of: "fallHeight", from: { moreThan: figure("30", "in") }, requires: "a guard",
      provided: { fact: "guard", is: ["yes"] },
    },
  };
  const at = (fall: number) => amendedRow(drop, 24, { fallHeight: inches(fall), guard: "no" });
  expect([at(24).verdict, at(24.5).verdict, at(24).limit]).toEqual(["does not apply", "fail", "more than 24"]);
});

describe("a limit that turns on another size becomes one figure of the same sense", () => {
  test.each<readonly ["at least" | "at most" | "exactly", readonly string[]]>([
    ["at least", ["fail", "pass", "pass"]], ["at most", ["pass", "pass", "fail"]], ["exactly", ["fail", "pass", "fail"]],
  ])("%s 36 in", (sense, verdicts) => {
    const landing: Held = { unit: "in", rule: { comparator: "relation", of: "landingDepth", sense, than: ["width"] } };
    const rows = [35, 36, 37].map((depth) => amendedRow(landing, 36, { landingDepth: inches(depth), width: inches(44) }));
    expect(rows.map(({ verdict }) => verdict)).toEqual(verdicts);
    expect(rows.map(({ limit }) => limit)).toEqual([36, 36, 36]);
  });
});

describe("of several rules", () => {
  const riser = { comparator: "max", of: "riserHeight", max: figure("7", "in") } as const satisfies Rule;
  const tread: Rule = { comparator: "min", of: "treadDepth", min: figure("11", "in") };
  const stair = (rise: number, run: number): CodeFacts => ({ riserHeight: inches(rise), treadDepth: inches(run) });

  test("the first of a clause is written anew, the others stay", () => {
    const clause = { unit: "in", rule: { comparator: "every", needs: "all", parts: [riser, tread] } } as const;
    const at = (rise: number, run: number) => amendedRow(clause, 8, stair(rise, run)).verdict;
    expect([at(8, 11), at(8.1, 11), at(8, 10.9)]).toEqual(["pass", "fail", "fail"]);
  });

  test("the first of two of which one is enough", () => {
    const clause = { unit: "in", rule: { comparator: "either", parts: [riser, tread] } } as const;
    const at = (rise: number, run: number) => amendedRow(clause, 8, stair(rise, run)).verdict;
    expect([at(8, 10), at(8.1, 11), at(8.1, 10)]).toEqual(["pass", "pass", "fail"]);
  });

  test("every row of a table", () => {
    const table = {
      unit: "in",
      rule: {
        comparator: "table",
        rows: [
          { when: { fact: "use", is: ["public"] }, words: "public", rule: riser },
          { when: { fact: "use", is: ["private"] }, words: "private", rule: { ...riser, max: figure("7.75", "in") } },
        ],
      },
    } as const;
    const at = (use: "public" | "private", rise: number) => amendedRow(table, 6, { use, riserHeight: inches(rise) });
    expect([at("public", 6).verdict, at("public", 6.5).verdict, at("private", 6).verdict, at("private", 6.5).verdict]).toEqual([
      "pass", "fail", "pass", "fail",
    ]);
    expect(at("private", 6).note).toContain("private");
    expect(amendedRow(table, "none", { use: "private", riserHeight: inches(9) }).verdict).toBe("does not apply");
  });
});

describe("what no limit can be read from is refused, and says what is wrong", () => {
  const count = KINDS["required-when"];
  test.each<readonly [string, Held, string | number, string]>([
    ["a length in words", KINDS.min, "eighty", "amended-limit-unreadable"],
    ["a count in words", count, "three", "amended-limit-unreadable"],
    ["a count of nothing", count, "0 risers", "amended-limit-not-positive"],
    ["a count of 0", count, 0, "amended-limit-not-positive"],
    ["a count below 0", count, -3, "amended-limit-unreadable"],
    ["a length of 0", KINDS.min, 0, "amended-limit-not-positive"],
    ["a length below 0", KINDS.min, -1, "amended-limit-not-positive"],
    ["one figure for a range", KINDS.range, 36, "amended-range-needed"],
    ["one figure for a range, as text", KINDS.range, "36", "amended-range-needed"],
    ["a range whose least is no length", KINDS.range, "low to 36", "amended-limit-unreadable"],
    ["a range whose greatest is no length", KINDS.range, "30 to high", "amended-limit-unreadable"],
    ["a range the wrong way round", KINDS.range, "36 to 30", "amended-range-reversed"],
    ["a range up to 0", KINDS.range, "0 to 0", "amended-limit-not-positive"],
    ["a range from below 0", KINDS.range, "-1 to 36", "amended-limit-not-positive"],
    ["a slope in words", KINDS.slope, "flat", "amended-limit-unreadable"],
    ["a slope of half a text", KINDS.slope, "1:", "amended-limit-unreadable"],
    ["a slope of nothing", KINDS.slope, "0:48", "amended-limit-not-positive"],
    ["a slope over nothing", KINDS.slope, "1:0", "amended-limit-not-positive"],
    ["a slope of 0", KINDS.slope, 0, "amended-limit-not-positive"],
    ["a slope below 0", KINDS.slope, -0.05, "amended-limit-not-positive"],
  ])("%s", (_says, limit, written, problem) => {
    expect(refused(limit, written)).toBe(problem);
  });

  // A range may begin at 0, as a nosing of 0 to 25 mm does, and may be of one figure.
  test.each([
    ["0 to 1", KINDS.range], ["36 to 36", KINDS.range], [" 30 TO 36 ", KINDS.range], [" 1:20 ", KINDS.slope],
  ])("%p is taken", (written, limit) => {
    expect(refused(limit, written)).toBe("taken");
  });

  const WITHOUT_A_FIGURE: readonly Rule[] = [
    { comparator: "prohibited", thing: "open risers are", present: { fact: "openRisers", is: ["yes"] } },
    { comparator: "shown", text: "no least width" },
    { comparator: "required", ...HANDRAIL },
    { comparator: "alike", of: ["rise"], sense: "uniform" },
    { comparator: "person", sense: "as the officer sees fit" },
  ];
  test.each(WITHOUT_A_FIGURE.map((rule) => [rule.comparator, rule] as const))("a figure for what has none: %s", (_kind, rule) => {
    expect(refused({ unit: "count", rule }, 3)).toBe("not-amendable");
    expect(refused({ unit: "count", rule }, "None")).toBe("taken");
  });

  test("it names the item and what was written", () => {
    expect(amendedProfile(codeOf(limitOf({ item: "held", ...KINDS.slope })), amending("0:48"), "in")).toMatchObject({
      problem: "amended-limit-not-positive", details: { item: "held", given: "0:48" },
    });
  });
});

test("an item that no limit is near to is answered with those there are", () => {
  const code = codeOf(limitOf({ item: "headroom", ...KINDS.min }), limitOf({ item: "riser height", ...KINDS.max }));
  expect(amendedProfile(code, [{ item: "balcony", limit: 3, authority: "" }], "in")).toMatchObject({
    problem: "unknown-amendment", details: { item: "balcony", code: "invented", nearest: '; there are "headroom", "riser height"' },
  });
});

// By which figure a limit is looser: a least the smaller, a greatest, a spread and a ball the larger, a range at both ends, a slope the
// steeper. The same figure counts as looser: whatever keeps it keeps the code's.
describe("in a case that a code gives a figure of its own, a looser limit leaves that figure standing, a tighter one does not", () => {
  const LOFT = { when: { fact: "loft", is: ["yes"] }, words: "a loft" } as const;
  const { min, max, range, slope, sphere, uniformity } = KINDS;
  const least = { ...min.rule, min: figure("70", "in") };
  const greatest = { ...max.rule, max: figure("9", "in") };
  const clause: Held = { unit: "in", rule: { comparator: "every", needs: "any", parts: [max.rule] } };

  test.each<readonly [string, Held, Rule, CodeFacts, readonly string[], readonly string[]]>([
    ["a least of 80, in a loft 70; a stair with 70", min, least, { headroom: inches(70) }, ["78", "80"], ["82"]],
    ["a greatest of 7, in a loft 9; a stair with 9", max, greatest, { riserHeight: inches(9) }, ["8", "7"], ["6"]],
    ["a clause by its first rule", clause, greatest, { riserHeight: inches(9) }, ["8", "7"], ["6"]],
    [
      "34 to 38, in a loft 20 to 50; a stair with 45", range, { ...range.rule, min: figure("20", "in"), max: figure("50", "in") },
      { handrailHeight: inches(45) }, ["30 to 40", "34 to 38"], ["35 to 40", "30 to 37", "35 to 37"],
    ],
    ["1:48, in a loft 1:10; a stair with 1:10", slope, { ...slope.rule, run: 10 }, { treadSlope: 0.1 }, ["1:20", "1:48", "2:96"], ["1:60"]],
    [
      "a ball of 4, in a loft 6; a stair with 5", sphere, { ...sphere.rule, sphere: figure("6", "in") }, { guardGap: inches(5) },
      ["4 1/2", "4"], ["3 1/2"],
    ],
    [
      "a spread of 3/8, in a loft 1; a stair with 3/4", uniformity, { ...uniformity.rule, tolerance: figure("1", "in") }, {},
      ["1/2", "3/8"], ["1/4"],
    ],
  ])("%s", (_says, limit, then, facts, looser, tighter) => {
    const code = codeOf(limitOf({ item: "held", ...limit, exceptions: [{ ...LOFT, then }] }));
    const verdict = (written: string) =>
      rowOf("held", { ...facts, loft: "yes" }, flight("rise", [7, 7.75]), amending(written), code).verdict;
    expect(looser.map(verdict)).toEqual(looser.map(() => "pass"));
    expect(tighter.map(verdict)).toEqual(tighter.map(() => "fail"));
  });
});

// What stood there before is named as printed, with its unit where the text is a bare number.
test.each([
  ["36", "in", "36 in"], ["7 3/4", "in", "7 3/4 in"], ["4 or more", "count", "4 or more"], ["6 ft 8 in", "in", "6 ft 8 in"],
  ["1:48", "ratio", "1:48"],
] as const)("in place of %s", (text, unit, words) => {
  const code = codeOf(limitOf({ item: "held", unit, text, rule: { comparator: "min", of: "headroom", min: figure("36", unit) } }));
  const found = amendedProfile(code, amending(40), "in");
  expect(isProblem(found) ? found.problem : found.limits[0]?.amendment?.insteadOf).toBe(words);
});

// A sheet adds 0.1 and 0.2 to 0.30000000000000004.
test("a number that a sheet added up is the one it shows", () => {
  const lean: Held = { unit: "deg", rule: { comparator: "max", of: "riserSlope", max: figure("30", "deg") } };
  expect(amendedRow(lean, 0.1 + 0.2, { riserSlope: 0.3 })).toMatchObject({ verdict: "pass", limit: 0.3, margin: 0 });
});
