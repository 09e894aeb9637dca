import { conditionLabels, conditionTruth, openPart, type Truth } from "../../../src/solver/code/condition";
import type { CodeFacts } from "../../../src/solver/code/fact-labels";
import { type Condition, figure } from "../../../src/solver/code/profile";
import { inches, millimetres } from "./stair-check";

/** Three questions, answered so that each is one truth. */
const FACTS: CodeFacts = { egress: "yes", outside: "no" };
const YES: Condition = { fact: "egress", is: ["yes"] };
const NO: Condition = { fact: "outside", is: ["yes"] };
const UNKNOWN: Condition = { fact: "dwelling", is: ["yes"] };

const never = (): Truth => "unknown";
const truthOf = (condition: Condition, facts: CodeFacts = FACTS): Truth => conditionTruth(condition, facts, never);

// Strong three-valued logic, Kleene 1952, section 64: what an unknown part could still change is unknown, and nothing else is.
describe("parts of a condition of which some are not known", () => {
  test.each<readonly [string, readonly Condition[], Truth, Truth]>([
    ["yes", [YES], "yes", "yes"],
    ["no", [NO], "no", "no"],
    ["unknown", [UNKNOWN], "unknown", "unknown"],
    ["yes, yes", [YES, YES], "yes", "yes"],
    ["yes, no", [YES, NO], "no", "yes"],
    ["no, no", [NO, NO], "no", "no"],
    ["yes, unknown", [YES, UNKNOWN], "unknown", "yes"],
    ["no, unknown", [NO, UNKNOWN], "no", "unknown"],
    ["unknown, unknown", [UNKNOWN, UNKNOWN], "unknown", "unknown"],
    ["unknown, no, yes", [UNKNOWN, NO, YES], "no", "yes"],
  ])("%s", (_says, parts, all, any) => {
    expect([truthOf({ all: parts }), truthOf({ any: parts })]).toEqual([all, any]);
  });

  test("the opposite of yes is no, and of what is not known nothing", () => {
    expect([YES, NO, UNKNOWN].map((not) => truthOf({ not }))).toEqual(["no", "yes", "unknown"]);
  });
});

// By definition of the four words: more than and less than leave their figure out, at least and at most take it in. 300 mm is 30 cm.
test.each<readonly [string, Condition, readonly Truth[]]>([
  ["more than 300 mm", { fact: "width", moreThan: figure("300", "mm") }, ["no", "no", "yes"]],
  ["at least 300 mm", { fact: "width", atLeast: figure("300", "mm") }, ["no", "yes", "yes"]],
  ["less than 30 cm", { fact: "width", lessThan: figure("30", "cm") }, ["yes", "no", "no"]],
  ["at most 30 cm", { fact: "width", atMost: figure("30", "cm") }, ["yes", "yes", "no"]],
])("%s at 299, 300 and 301 mm, and of a width nobody gave", (_says, condition, expected) => {
  expect([299, 300, 301].map((width) => truthOf(condition, { width: millimetres(width) }))).toEqual(expected);
  expect(truthOf(condition, {})).toBe("unknown");
});

test("a fact is given or it is not, whatever it is", () => {
  expect([truthOf({ given: "width" }, { width: inches(1) }), truthOf({ given: "width" }, {})]).toEqual(["yes", "no"]);
});

test("an answer nobody gave is what the condition takes it for, and one that was given is not", () => {
  const condition: Condition = { fact: "use", is: ["private", "service"], otherwise: "private" };
  const answers = [undefined, "private", "service", "public"] as const;
  expect(answers.map((use) => truthOf(condition, use === undefined ? {} : { use }))).toEqual(["yes", "yes", "yes", "no"]);
});

test("whether another limit is reached is what that limit says", () => {
  const asked: string[] = [];
  const reached = (item: string): Truth => {
    asked.push(item);
    return "no";
  };
  expect(conditionTruth({ reached: "guard required drop" }, {}, reached)).toBe("no");
  expect(asked).toEqual(["guard required drop"]);
});

describe("what a person is asked for", () => {
  test("only the parts that are open, at any depth", () => {
    const condition: Condition = { all: [YES, { any: [NO, UNKNOWN] }, { not: { all: [YES, UNKNOWN] } }] };
    expect(openPart(condition, FACTS, never)).toEqual({ all: [{ any: [UNKNOWN] }, { not: { all: [UNKNOWN] } }] });
  });

  test("the labels of every part, those of another limit by what it is compared with", () => {
    const condition: Condition = {
      all: [
        YES, { any: [UNKNOWN, { given: "clearWidth" }] }, { not: { fact: "risers", atMost: figure("2", "count") } }, { reached: "drop" },
      ],
    };
    const behind = (item: string) => (item === "drop" ? ["fall height"] : []);
    expect(conditionLabels(condition, behind)).toEqual(["egress", "dwelling", "clear width", "risers", "fall height"]);
  });
});
