import type { CodeFacts } from "../../../../src/solver/code/fact-labels";
import { type Figure, figure, type Formula, type RelationRule, type Rule } from "../../../../src/solver/code/profile";
import { Exact } from "../../../../src/solver/length/exact";
import { codeOf, limitOf } from "../invented-code";
import { flight, inches, millimetres as mm, rowOf } from "../stair-check";

type Unit = "in" | "mm" | "cm" | "deg" | "ratio" | "count";

const rowUnder = (rule: Rule, unit: Unit, facts: CodeFacts, steps: Parameters<typeof rowOf>[2] = []) =>
  rowOf("held", facts, steps, [], codeOf(limitOf({ item: "held", unit, rule, text: "as printed" })));

const size = (value: string): Figure => figure(value, "mm");

describe("one of several figures", () => {
  const rule: Rule = { comparator: "equals", of: "walkline", values: [size("270"), size("300"), size("400")] };

  // The margin is how far the size is from the nearest of 270, 300 and 400.
  test.each([[270, 0], [300, 0], [400, 0], [290, -10], [280, -10], [269, -1], [360, -40], [401, -1]])("%d mm: %d", (walkline, margin) => {
    expect(rowUnder(rule, "mm", { walkline: mm(walkline) })).toMatchObject({ verdict: margin === 0 ? "pass" : "fail", margin });
  });

  test("the cell has them all in words, and one figure alone as a number", () => {
    expect(rowUnder(rule, "mm", { walkline: mm(300) })).toMatchObject({ limit: "270 mm or 300 mm or 400 mm" });
    const one: Rule = { comparator: "equals", of: "walkline", values: [size("300")] };
    expect(rowUnder(one, "mm", { walkline: mm(301) })).toMatchObject({ limit: 300, margin: -1, verdict: "fail" });
  });
});

describe("a range", () => {
  // The margin is that to the nearer end: of 34 to 38, 35 is 1 inside, 37.5 a half, 33 and 39 one outside.
  test.each([[34, 0], [35, 1], [36, 2], [37.5, 0.5], [38, 0], [33, -1], [39, -1]])("34 to 38 in, %d: %d", (height, margin) => {
    const rule: Rule = { comparator: "range", of: "handrailHeight", min: figure("34", "in"), max: figure("38", "in") };
    expect(rowUnder(rule, "in", { handrailHeight: inches(height) })).toMatchObject({
      verdict: margin < 0 ? "fail" : "pass", margin, limit: "34 to 38",
    });
  });

  // 7 53/64 in is 7.828125 in; in inches 200 mm is 7.874015748..., of which a cell holds six places.
  test("its cell holds a sixty-fourth in full, and a figure of another unit in the unit of the row", () => {
    const rule: Rule = { comparator: "range", of: "riserHeight", min: figure("7.828125", "in"), max: size("200") };
    expect(rowUnder(rule, "in", { riserHeight: inches("7.85") }).limit).toBe("7.828125 to 7.874016");
  });
});

// 1:48 is 0.0208333...; a sheet's 1/48 passes, a hair more does not.
test("a slope is rise over run", () => {
  const rule: Rule = { comparator: "slope", of: "treadSlope", rise: 1, run: 48 };
  const at = (treadSlope: number) => rowUnder(rule, "ratio", { treadSlope });
  expect([at(1 / 48).verdict, at(0.0208).verdict, at(0.0209).verdict]).toEqual(["pass", "pass", "fail"]);
  expect(at(0.01).limit).toBe("1:48");
});

describe("a size held against another of the stair", () => {
  const relation = (parts: Partial<RelationRule> & Pick<RelationRule, "sense">): Rule => ({
    comparator: "relation", of: "landingDepth", than: ["clearWidth", "width"], ...parts,
  });

  test.each<readonly [RelationRule["sense"], readonly number[]]>([
    ["at least", [-1, 0, 1]], ["at most", [1, 0, -1]], ["exactly", [-1, 0, -1]],
  ])("%s the width: 899, 900 and 901 mm beside 900", (sense, margins) => {
    const found = [899, 900, 901].map((depth) => rowUnder(relation({ sense }), "mm", { landingDepth: mm(depth), width: mm(900) }));
    expect(found.map(({ margin }) => margin)).toEqual(margins);
    expect(found.map(({ verdict }) => verdict)).toEqual(margins.map((margin) => (margin < 0 ? "fail" : "pass")));
    expect(found[0]).toMatchObject({ limit: 900 });
    expect(found[0]?.note).toContain(`${sense} the width, 900 mm`);
  });

  test("of two sizes it may be held against the first that was given counts", () => {
    const facts: CodeFacts = { landingDepth: mm(850), clearWidth: mm(840), width: mm(900) };
    const found = rowUnder(relation({ sense: "at least" }), "mm", facts);
    expect(found).toMatchObject({ verdict: "pass", limit: 840, margin: 10 });
    expect(found.note).toContain("at least the clear width, 840 mm");
  });

  test("never against more than its cap, and not against less", () => {
    const rule = relation({ sense: "at least", capped: size("1200") });
    const at = (width: number) => rowUnder(rule, "mm", { landingDepth: mm(1200), width: mm(width) });
    expect([at(1199), at(1200), at(1201), at(2000)].map(({ limit }) => limit)).toEqual([1199, 1200, 1200, 1200]);
    expect(at(1200).note).toContain("at least the width, 1200 mm");
    expect(at(1201).note).toContain("at least 1200 mm, which is asked for at most");
  });

  // The middle of 901 mm is 450.5.
  test("against the half of it", () => {
    const rule = relation({ sense: "exactly", part: { of: "half", times: new Exact("0.5") } });
    const found = rowUnder(rule, "mm", { landingDepth: mm("450.5"), width: mm(901) });
    expect(found).toMatchObject({ verdict: "pass", limit: 450.5 });
    expect(found.note).toContain("exactly half the width, 450.5 mm");
  });

  test("both are asked for where neither is given, and the other where one is", () => {
    const rule = relation({ sense: "at least" });
    expect(rowUnder(rule, "mm", {})).toMatchObject({ verdict: "not given", limit: "as printed" });
    expect(rowUnder(rule, "mm", {}).note).toContain("give landing depth and clear width to check this");
    expect(rowUnder(rule, "mm", { width: mm(900) })).toMatchObject({ verdict: "not given", limit: 900 });
    expect(rowUnder(rule, "mm", { width: mm(900) }).note).toContain("give landing depth to check this");
  });
});

describe("which reading is worst, and of how many", () => {
  const rule: Rule = { comparator: "max", of: "riserHeight", max: figure("7.75", "in") };
  const noteOf = (facts: CodeFacts, steps: Parameters<typeof rowOf>[2]) => rowUnder(rule, "in", facts, steps).note;

  test.each<readonly [string, CodeFacts, readonly number[], string]>([
    ["the design alone", { riserHeight: inches(7.5) }, [], ""],
    ["one step alone", {}, [7.5], ""],
    ["two steps", {}, [7.5, 7.625], "worst is step 2, of 2 readings"],
    ["one step and the design", { riserHeight: inches(7.5) }, [7.625], "worst is step 1, of 1 step and the design value"],
    [
      "two steps and the design", { riserHeight: inches(7.6875) }, [7.5, 7.625],
      "worst is the design value, of 2 steps and the design value",
    ],
    ["of equals the first", {}, [7.625, 7.5, 7.625], "worst is step 1, of 3 readings"],
  ])("%s", (_says, facts, rises, note) => {
    expect(noteOf(facts, flight("rise", rises))).toBe(["at most 7 3/4 in", note].filter((part) => part !== "").join("; "));
  });

  test("several labels are told by their names", () => {
    const slopes: Rule = { comparator: "slope", of: ["treadSlope", "landingSlope"], rise: 1, run: 48 };
    expect(rowUnder(slopes, "ratio", { treadSlope: 0.01, landingSlope: 0.02 })).toMatchObject({ given: 0.02 });
    expect(rowUnder(slopes, "ratio", { treadSlope: 0.01, landingSlope: 0.02 }).note).toContain("worst is landing slope, of 2 readings");
    expect(rowUnder(slopes, "ratio", {}).note).toContain("give tread slope or landing slope to check this");
  });
});

// Figures worked out of rise and run, by hand: 2 x 7 + 11 = 25; 7 + 11 = 18; 11 - 7 = 4; 7 x 11 = 77; atan(7/11) = 32.4712 degrees.
describe("figures worked out of rise and run", () => {
  const held = (formula: Formula, unit: Unit | "sq in") =>
    rowOf("held", { riserHeight: inches(7), treadDepth: inches(11) }, [], [], codeOf(limitOf({
      item: "held", unit, rule: { comparator: "max", of: { formula }, max: figure("100", unit) },
    })));

  test.each([
    ["two risers plus run", "in", 25], ["riser plus run", "in", 18], ["run less riser", "in", 4], ["riser times run", "sq in", 77],
  ] as const)("%s", (formula, unit, given) => {
    expect(held(formula, unit).given).toBe(given);
  });

  test("pitch", () => {
    expect(held("pitch", "deg").given).toBeCloseTo(32.4712, 4);
  });

  test("step by step, where both are known of a step", () => {
    const rule: Rule = { comparator: "max", of: { formula: "riser plus run" }, max: figure("18", "in") };
    const run = inches(11);
    const steps = [{ step: 1, rise: inches(7), run }, { step: 2, rise: inches(9) }, { step: 3, rise: inches(7.5), run }];
    const found = rowUnder(rule, "in", { riserHeight: inches(7) }, steps);
    expect(found).toMatchObject({ verdict: "fail", given: 18.5, margin: -0.5 });
    expect(found.note).toContain("worst is step 3, of 2 readings");
    expect(rowUnder(rule, "in", { riserHeight: inches(7) }).note).toContain("give unit rise and run to check this");
  });
});

// 645.16 mm2 is a square inch; a tape's finest mark is 1/64.
test("sizes in words: inches on a tape's mark as a fraction, all else in four decimals, each with its unit", () => {
  const said = (max: Figure, unit: Unit) =>
    rowUnder({ comparator: "max", of: "riserHeight", max }, unit, { riserHeight: inches(1) }).note;
  expect(said(figure("7.015625", "in"), "in")).toBe("at most 7 1/64 in");
  expect(said(figure("7.0078125", "in"), "in")).toBe("at most 7.0078 in");
  expect(said(figure("190.5", "mm"), "mm")).toBe("at most 190.5 mm");
  expect(said(figure("19.05", "cm"), "cm")).toBe("at most 19.05 cm");
  expect(said(size("200"), "in")).toBe("at most 7.874 in");
});
