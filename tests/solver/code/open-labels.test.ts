import type { CodeFacts, FactName } from "../../../src/solver/code/fact-labels";
import { labelsToEnter } from "../../../src/solver/code/labels-to-enter";
import { conditionsIn, decidingQuestions, openQuestions, takenWords, waysToAnswer } from "../../../src/solver/code/open-question";
import { type Condition, figure, type Limit, type Rule } from "../../../src/solver/code/profile";
import { limitOf } from "./invented-code";
import { inches } from "./stair-check";

const held = (rule: Rule, parts: Partial<Limit> = {}) => limitOf({ item: "held", unit: "in", rule, ...parts });

const headroom: Rule = { comparator: "min", of: "headroom", min: figure("80", "in") };
const width: Rule = { comparator: "min", of: "clearWidth", min: figure("36", "in") };
const spread = { comparator: "uniformity", of: "rise", within: "flight", tolerance: figure("1", "in") } as const satisfies Rule;
const guarded: Condition = { any: [{ fact: "guard", is: ["yes"] }, { given: "guardHeight" }] };

/** Labels by topic, as the row has them, without the topics. */
const labels = (rule: Rule, facts: CodeFacts = {}, parts: Partial<Limit> = {}, named: readonly FactName[] = []) =>
  labelsToEnter([held(rule, parts)], facts, named)
    .split("; ")
    .flatMap((topic) => topic.replace(/^[^:]*: /, "").split(", "))
    .filter((one) => one !== "");

// By what each rule is compared with; the order is that of the stair table.
describe("labels that would settle a rule, kind by kind", () => {
  test.each<readonly [string, Rule, readonly string[]]>([
    ["a size", headroom, ["headroom found"]],
    ["either of two", { comparator: "slope", of: ["treadSlope", "landingSlope"], rise: 1, run: 48 }, ["tread slope", "landing slope"]],
    ["rise and run", { comparator: "max", of: { formula: "pitch" }, max: figure("42", "deg") }, ["unit rise", "run"]],
    ["all but the ends", { comparator: "min", of: { inner: "riserHeight" }, min: figure("4", "in") }, ["unit rise"]],
    ["a spread that is measured", { ...spread, of: { spread: "winderSpread" } }, ["winder spread"]],
    ["steps, which stand in a table of their own", spread, []],
    ["steps that are to be alike", { comparator: "alike", of: ["rise"], sense: "" }, []],
    ["another size", { comparator: "relation", of: "landingDepth", sense: "at least", than: ["clearWidth", "width"] },
      ["width", "clear width", "landing depth"]],
    ["what is required from a size on", {
      comparator: "required-when", of: "fallHeight", from: { moreThan: figure("30", "in") }, requires: "a guard", provided: guarded,
    }, ["guard", "fall height", "guard height"]],
    ["what is always required", { comparator: "required", requires: "a guard", provided: guarded }, ["guard", "guard height"]],
    ["what is not permitted", { comparator: "prohibited", thing: "", present: { not: { fact: "guard", is: ["no"] } } }, ["guard"]],
    ["a size that frees", { comparator: "exempt-when", of: "treadDepth", atLeast: figure("11", "in"), frees: "" }, ["run"]],
    ["every rule of a clause", { comparator: "every", needs: "all", parts: [headroom, width] }, ["clear width", "headroom found"]],
    ["what a person judges", { comparator: "person", sense: "" }, []],
  ])("%s", (_says, rule, expected) => {
    expect(labels(rule)).toEqual(expected);
  });

  const table: Rule = {
    comparator: "table",
    rows: [
      { when: { all: [{ fact: "use", is: ["public"] }, { fact: "outside", is: ["yes"] }] }, words: "", rule: headroom },
      { when: { fact: "use", is: ["private"] }, words: "", rule: width },
    ],
  };

  test("a table by its conditions, as far as they are open, and its rows", () => {
    expect(labels(table).sort()).toEqual(["clear width", "headroom found", "outside", "use"]);
    expect(labels(table, { use: "public" }).sort()).toEqual(["clear width", "headroom found", "outside"]);
    expect(labels(table, { use: "private" }).sort()).toEqual(["clear width", "headroom found"]);
  });

  test("conditions and exceptions that are open, and not those that are settled or turn on another limit", () => {
    const drop: Condition = { fact: "fallHeight", moreThan: figure("30", "in") };
    const loft: Condition = { any: [{ fact: "loft", is: ["yes"] }, { fact: "dwelling", is: ["yes"] }] };
    const parts: Partial<Limit> = {
      applies: [{ when: drop, words: "" }, { when: { reached: "guard required drop" }, words: "" }],
      exceptions: [{ when: loft, words: "", then: "judge" }],
    };
    expect(labels(headroom, {}, parts).sort()).toEqual(["dwelling", "fall height", "headroom found", "loft"]);
    expect(labels(headroom, { fallHeight: inches(31), dwelling: "no" }, parts).sort()).toEqual(["headroom found", "loft"]);
    expect(labels(headroom, { fallHeight: inches(31), dwelling: "yes" }, parts)).toEqual(["headroom found"]);
  });

  test("what was given is not asked for, what nobody gave is, and a question that was named already is not", () => {
    const two: Rule = { comparator: "every", needs: "all", parts: [headroom, { comparator: "required", requires: "", provided: guarded }] };
    expect(labels(two, { headroom: inches(80) })).toEqual(["guard", "guard height"]);
    expect(labels(two, { headroom: inches(80), assumed: { headroom: "a wish" } })).toEqual(["headroom found", "guard", "guard height"]);
    expect(labels(two, {}, {}, ["guard"])).toEqual(["headroom found", "guard height"]);
  });

  test("each topic once, with its labels behind it", () => {
    const all = [held(headroom), held({ comparator: "required", requires: "", provided: guarded }), held(headroom)];
    expect(labelsToEnter(all, {}, [])).toBe("headroom: headroom found; guard: guard, guard height");
    expect(labelsToEnter([], {}, [])).toBe("");
  });
});

describe("questions of a limit", () => {
  const asks = (fact: "dwelling" | "egress" | "outside", otherwise?: string): Condition =>
    ({ fact, is: ["yes"], ...(otherwise === undefined ? {} : { otherwise }) });
  const facts = (limit: Limit, given: CodeFacts = {}) => openQuestions(limit, given).map(({ fact, taken }) => `${fact} ${taken}`);

  test.each<readonly [string, Limit]>([
    ["a condition", held(headroom, { applies: [{ when: asks("dwelling", "no"), words: "" }] })],
    ["all of several", held(headroom, { applies: [{ when: { all: [{ given: "width" }, asks("dwelling", "no")] }, words: "" }] })],
    ["any of several", held(headroom, { applies: [{ when: { any: [{ given: "width" }, asks("dwelling", "no")] }, words: "" }] })],
    ["an opposite", held(headroom, { applies: [{ when: { not: asks("dwelling", "no") }, words: "" }] })],
    ["an exception", held(headroom, { exceptions: [{ when: asks("dwelling", "no"), words: "", then: "judge" }] })],
    ["an exception's own rule", held(headroom, {
      exceptions: [
        { when: { given: "width" }, words: "", then: { comparator: "required", requires: "", provided: asks("dwelling", "no") } },
      ],
    })],
    ["what is required", held({ comparator: "required", requires: "", provided: asks("dwelling", "no") })],
    ["what is required from a size on", held({
      comparator: "required-when", of: "risers", from: { atLeast: figure("4", "count") }, requires: "", provided: asks("dwelling", "no"),
    })],
    ["what is not permitted", held({ comparator: "prohibited", thing: "", present: asks("dwelling", "no") })],
    ["a row of a table", held({ comparator: "table", rows: [{ when: asks("dwelling", "no"), words: "", rule: headroom }] })],
    ["the rule of a row", held({
      comparator: "table",
      rows: [{ when: { given: "width" }, words: "", rule: { comparator: "prohibited", thing: "", present: asks("dwelling", "no") } }],
    })],
    ["a rule of a clause", held({
      comparator: "every", needs: "all", parts: [headroom, { comparator: "prohibited", thing: "", present: asks("dwelling", "no") }],
    })],
  ])("%s", (_says, limit) => {
    expect(facts(limit)).toEqual(["dwelling no"]);
    expect(facts(limit, { dwelling: "yes" })).toEqual([]);
  });

  test("each once, and none where nothing is taken as so, where that is no answer, or where it is the usual", () => {
    const limit = (...conditions: readonly Condition[]) => held(headroom, { applies: conditions.map((when) => ({ when, words: "" })) });
    expect(facts(limit(asks("dwelling", "no"), asks("egress", "yes"), asks("dwelling", "no")))).toEqual(["dwelling no", "egress yes"]);
    expect(facts(limit(asks("dwelling"), asks("egress", "unknown")))).toEqual([]);
    expect(facts(limit({ fact: "stairKind", is: ["spiral"], otherwise: "standard" }, { given: "width" }, { reached: "drop" }))).toEqual([]);
    expect(conditionsIn(headroom)).toEqual([]);
  });

  test("every way to answer two of them, what is taken first", () => {
    const questions = [{ fact: "dwelling", taken: "no" }, { fact: "use", taken: "public" }] as const;
    const ways = waysToAnswer(questions);
    // Two answers by three.
    expect(ways).toHaveLength(6);
    expect(ways[0]).toEqual({ dwelling: "no", use: "public" });
    expect(new Set(ways.map((way) => `${way["dwelling"] ?? ""} ${way["use"] ?? ""}`)).size).toBe(6);
    expect(waysToAnswer([])).toEqual([{}]);
    expect(takenWords([...questions, questions[0]])).toEqual(["dwelling no", "use public"]);
  });

  // By hand: what is found turns on the dwelling alone; on both together; on neither.
  test("those decide of which one alone, whatever the others are, changes what is found", () => {
    const questions = [{ fact: "dwelling", taken: "no" }, { fact: "egress", taken: "no" }] as const;
    const deciding = (found: (dwelling: string, egress: string) => string) => {
      const ways = waysToAnswer(questions).map((way) => [way, found(way["dwelling"] ?? "", way["egress"] ?? "")] as const);
      return decidingQuestions(questions, ways).map(({ fact }) => fact);
    };
    expect(deciding((dwelling) => dwelling)).toEqual(["dwelling"]);
    expect(deciding((_, egress) => egress)).toEqual(["egress"]);
    expect(deciding((dwelling, egress) => (dwelling === "yes" && egress === "yes" ? "fail" : "pass"))).toEqual(["dwelling", "egress"]);
    expect(deciding(() => "pass")).toEqual([]);
  });
});
