import type { PublishedUnit, Rule } from "../../../../src/solver/code/profile";
import { builtLimit } from "../../../../src/solver/code/record/built-limit";
import { limitRecord, type RuleRecord } from "../../../../src/solver/code/record/limit-record";
import { figuresIn, printed, slope, span } from "../../../../src/solver/code/record/printed-figure";

const built = (text: string, unit: PublishedUnit, rule: RuleRecord): Rule =>
  builtLimit(limitRecord({ unit, status: "not yet checked", sources: [] })({ item: "held", clause: "1", measured: "", text, rule })).rule;

/** Every figure of a rule, in its order, with its unit. */
const figures = (node: unknown): readonly string[] => {
  if (typeof node !== "object" || node === null) return [];
  if ("value" in node && "unit" in node) return [`${String(node.value)} ${String(node.unit)}`];
  return Object.values(node).flatMap(figures);
};

const WIDTH: RuleRecord = { comparator: "min", of: "width" };
const HANDRAIL = { requires: "a handrail", provided: { given: "handrailHeight" } } as const;

// The figure is that of the text, in the unit of the record: 7 3/4 is 7.75, 6 ft 8 in are 80 in.
test.each<readonly [string, PublishedUnit, RuleRecord, readonly string[]]>([
  ["6 ft 8 in", "in", { comparator: "min", of: "headroom" }, ["80 in"]],
  ["7 3/4", "in", { comparator: "max", of: "riserHeight" }, ["7.75 in"]],
  ["4", "in", { comparator: "sphere", of: "guardGap" }, ["4 in"]],
  ["34 to 38", "in", { comparator: "range", of: "handrailHeight" }, ["34 in", "38 in"]],
  ["30 or 45", "deg", { comparator: "equals", of: "winderTurn" }, ["30 deg", "45 deg"]],
  ["3/8", "in", { comparator: "uniformity", of: "rise", within: "flight" }, ["0.375 in"]],
  ["11 or more", "in", { comparator: "exempt-when", of: "treadDepth", frees: "the nosing" }, ["11 in"]],
  ["4 or more risers", "count", { comparator: "required-when", of: "risers", ...HANDRAIL }, ["4 count"]],
  [
    "36, in words", "in", { comparator: "every", needs: "any", parts: [WIDTH, { comparator: "max", of: "width", max: printed("60 in") }] },
    ["36 in", "60 in"],
  ],
  ["36", "in", { comparator: "either", parts: [WIDTH, { comparator: "min", of: "clearWidth" }] }, ["36 in", "36 in"]],
])("%p in %s", (text, unit, rule, expected) => {
  expect(figures(built(text, unit, rule))).toEqual(expected);
});

test("a threshold leaves its figure out or takes it in as the text has it", () => {
  const threshold = (text: string) => built(text, "in", { comparator: "required-when", of: "fallHeight", ...HANDRAIL });
  expect(threshold("more than 30")).toMatchObject({ from: { moreThan: { printed: "30" } } });
  expect(threshold("30 or more")).toMatchObject({ from: { atLeast: { printed: "30" } } });
});

test("a slope, and what is only shown, as printed", () => {
  expect(built("1:48", "ratio", { comparator: "slope", of: "treadSlope" })).toMatchObject({ rise: 1, run: 48 });
  expect(built("no least width", "in", { comparator: "shown" })).toEqual({ comparator: "shown", text: "no least width" });
});

describe("a rule that says its own figure keeps it", () => {
  test.each<readonly [RuleRecord]>([
    [{ comparator: "min", of: "width", min: printed("36 in") }],
    [{ comparator: "max", of: "width", max: printed("36 in") }],
    [{ comparator: "sphere", of: "guardGap", sphere: printed("4 in") }],
    [{ comparator: "range", of: "handrailHeight", ...span("34 to 38 in") }],
    [{ comparator: "equals", of: "winderTurn", values: [printed("30 degrees")] }],
    [{ comparator: "slope", of: "treadSlope", ...slope("1:20") }],
    [{ comparator: "uniformity", of: "rise", within: "flight", tolerance: printed("5 mm") }],
    [{ comparator: "exempt-when", of: "treadDepth", atLeast: printed("11 in"), frees: "" }],
    [{ comparator: "required-when", of: "risers", from: { atLeast: printed("4 risers") }, ...HANDRAIL }],
    [{ comparator: "relation", of: "landingDepth", sense: "at least", than: ["width"] }],
  ])("%j", (rule) => {
    expect(built("99 to 100 of 101", "mm", rule)).toEqual(rule);
  });
});

describe("a text that is not what its rule needs is a mistake of ours", () => {
  test.each<readonly [string, RuleRecord, string]>([
    ["as the flight", { comparator: "min", of: "width" }, "one figure"],
    ["36 or 44", { comparator: "min", of: "width" }, "one figure"],
    ["34", { comparator: "range", of: "handrailHeight" }, "two figures"],
    ["34 to 38 of 40", { comparator: "range", of: "handrailHeight" }, "two figures"],
    ["as wide", { comparator: "range", of: "handrailHeight" }, "two figures"],
    ["4 risers", { comparator: "required-when", of: "risers", ...HANDRAIL }, "a threshold"],
    ["no more than 4", { comparator: "required-when", of: "risers", ...HANDRAIL }, "a threshold"],
  ])("%p", (text, rule, wanted) => {
    expect(() => built(text, "in", rule)).toThrow(`held: "${text}" is not ${wanted}; say in the rule which words are the figure.`);
  });
});

describe("figures as codes print them", () => {
  // A foot has 12 in: 12 ft are 144, 6 ft 8 3/8 in are 80.375.
  test.each([
    ["34 to 38", "in", ["34", "38"]], ["more than 30", "in", ["30"]], ["4 or more risers", "count", ["4"]], ["12 ft", "in", ["144"]],
    ["6 ft 8 3/8 in", "in", ["80.375"]], ["1.6 to 14.3", "mm", ["1.6", "14.3"]], ["at any height", "in", []],
    ["3/8 or 7 3/4", "in", ["0.375", "7.75"]],
  ] as const)("%p in %s", (text, unit, values) => {
    expect(figuresIn(text, unit).map(({ value }) => value.toString())).toEqual(values);
    expect(figuresIn(text, unit).every((one) => one.unit === unit)).toBe(true);
  });

  test("a figure keeps what was printed, its unit where it is not the record's", () => {
    const read = ["36 in", "2 m", "3 risers", "12 ft"].map(printed);
    expect(read.map((one) => [one.value.toString(), one.unit, one.printed])).toEqual([
      ["36", "in", "36"], ["2000", "mm", "2 m"], ["3", "count", "3"], ["144", "in", "12 ft"],
    ]);
  });

  test.each(["34 in", "to 38 in", "34 to x"])("%p is no span", (text) => {
    expect(() => span(text)).toThrow("No figure can be read in");
  });

  test.each(["1 to 20", "1:", "a 1:20", "1:20 or less"])("%p is no slope", (text) => {
    expect(() => slope(text)).toThrow(`No figure can be read in "${text}".`);
  });
});
