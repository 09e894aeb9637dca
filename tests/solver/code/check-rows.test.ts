import type { CodeFacts, Step } from "../../../src/solver/code/fact-labels";
import {
  type CodeProfile, type Condition, figure, type Limit, type LimitException, type Measure, type OutOfScope, type Rule,
} from "../../../src/solver/code/profile";
import { codeOf, limitOf } from "./invented-code";
import { flight, inches, millimetres as mm, profileOf, rowOf, rowsAsTyped, rowsOf } from "./stair-check";

type Parts = Partial<Limit> & Pick<Limit, "rule">;

const held = (parts: Parts, facts: CodeFacts, steps: readonly Step[] = []) =>
  rowOf("held", facts, steps, [], codeOf(limitOf({ item: "held", unit: "in", ...parts })));

const least = (of: Measure, inchesAtLeast: string): Rule => ({ comparator: "min", of, min: figure(inchesAtLeast, "in") });
const most = (of: Measure, inchesAtMost: string): Rule => ({ comparator: "max", of, max: figure(inchesAtMost, "in") });

// By hand: 36 in is 914.4 mm, 34 and 38 in are 863.6 and 965.2, 7 3/4 is 196.85, 3/8 is 9.525, 4 is 101.6; each is printed with the whole
// or half millimetre beside it.
describe("millimetres printed beside an inch never decide, and where they would decide otherwise the row says so", () => {
  const range: Rule = { comparator: "range", of: "handrailHeight", min: figure("34", "in"), max: figure("38", "in") };
  const spread: Rule = { comparator: "uniformity", of: "rise", within: "flight", tolerance: figure("0.375", "in") };
  const clause: Rule = { comparator: "every", needs: "any", parts: [most("riserHeight", "7.75"), least("treadDepth", "10")] };
  const ball: Rule = { comparator: "sphere", of: "guardGap", sphere: figure("4", "in") };
  const rises = (...sizes: readonly string[]) => sizes.map((size, index) => ({ step: index + 1, rise: mm(size) }));
  type Sized = (size: string) => readonly [CodeFacts, readonly Step[]];
  type Told = readonly [size: string, verdict: string, isSaid: boolean];
  const at = (fact: keyof CodeFacts): Sized => (size) => [{ [fact]: mm(size) } as CodeFacts, []];
  const OF_A_RISER: readonly Told[] = [["196.5", "pass", true], ["196", "pass", false], ["197", "fail", false]];

  test.each<readonly [string, Rule, readonly string[], Sized, readonly Told[]]>([
    [
      "a least", least("clearWidth", "36"), ["914"], at("clearWidth"),
      [["914.2", "fail", true], ["914.4", "pass", false], ["913.9", "fail", false]],
    ],
    ["a greatest", most("riserHeight", "7.75"), ["196"], at("riserHeight"), OF_A_RISER],
    [
      "a range", range, ["864", "965"], at("handrailHeight"),
      [["863.8", "pass", true], ["965.1", "pass", true], ["900", "pass", false], ["863", "fail", false], ["966", "fail", false]],
    ],
    [
      "a spread", spread, ["9.5"], (size) => [{}, rises("180", size)],
      [["189.51", "pass", true], ["189.5", "pass", false], ["189.6", "fail", false]],
    ],
    ["a clause of two rules by its first", clause, ["196"], at("riserHeight"), OF_A_RISER],
    ["a ball, which has no rounded one", ball, ["102"], at("guardGap"), [["101.8", "fail", false], ["101", "pass", false]]],
  ])("%s", (_says, rule, printedMillimetres, stair, cases) => {
    for (const [size, verdict, isSaid] of cases) {
      const row = held({ rule, printedMillimetres }, ...stair(size));
      const note = `decided in inches, as published: the rounded ${printedMillimetres.join(" to ")} mm beside it would say otherwise`;
      expect([size, row.verdict, row.note.includes(note), row.note.includes("decided in")]).toEqual([size, verdict, isSaid, isSaid]);
    }
  });

  test("nothing is said where none are printed, where the size is not given, and where an exception's own figure stands", () => {
    const rule = most("riserHeight", "7.75");
    const other: LimitException = { when: { fact: "dwelling", is: ["yes"] }, words: "in a dwelling", then: most("riserHeight", "7.74") };
    expect(held({ rule }, { riserHeight: mm("196.5") }).note).not.toContain("decided in");
    expect(held({ rule, printedMillimetres: ["196"] }, {}).note).not.toContain("decided in");
    expect(held({ rule, printedMillimetres: ["196"], exceptions: [other] }, { riserHeight: mm("196.5"), dwelling: "yes" }).note).toBe(
      "at most 7.74 in; exception: in a dwelling",
    );
  });
});

describe("the unit of a row is said where the stair is in another", () => {
  test.each<readonly [Limit["unit"], CodeFacts["unit"], string]>([
    ["in", "mm", "given, limit and margin in inches"],
    ["in", "in", ""],
    ["mm", "in", "given, limit and margin in millimetres"],
    ["mm", "mm", ""],
    ["cm", "mm", "given, limit and margin in centimetres"],
    ["in", undefined, ""],
  ])("a row in %s of a stair in %s", (unit, own, note) => {
    const facts: CodeFacts = { riserHeight: inches(1), ...(own === undefined ? {} : { unit: own }) };
    const row = held({ unit, rule: { comparator: "max", of: "riserHeight", max: figure("100", unit) } }, facts);
    expect(row.note.split("; ").slice(1)).toEqual(note === "" ? [] : [note]);
  });

  test("nor of a count, nor where nothing was given", () => {
    const risers: Rule = { comparator: "max", of: "risers", max: figure("16", "count") };
    expect(held({ unit: "count", rule: risers }, { unit: "mm", risers: 3 }).note).toBe("at most 16");
    expect(held({ rule: most("riserHeight", "8"), measured: "nosing to nosing" }, { unit: "mm" }).note).toBe(
      "give unit rise to check this: at most 8 in; nosing to nosing",
    );
  });
});

describe("a limit for some stairs only", () => {
  const DROP = { when: { fact: "fallHeight", moreThan: figure("30", "in") }, words: "a guard is required" } as const;
  const rule = least("guardHeight", "36");

  test.each<readonly [CodeFacts, string, string]>([
    [{ guardHeight: inches(35), fallHeight: inches(31) }, "fail", "at least 36 in"],
    [{ guardHeight: inches(35), fallHeight: inches(30) }, "does not apply", "only where a guard is required"],
    [{ guardHeight: inches(35) }, "judge", "at least 36 in; fails only where a guard is required; give fall height to decide"],
    [{ guardHeight: inches(36) }, "pass", "at least 36 in"],
    [{}, "not given", "give guard height to check this: at least 36 in; "],
  ])("%j: %s", (facts, verdict, note) => {
    expect(held({ rule, applies: [DROP] }, facts)).toMatchObject({ verdict, note });
  });

  test("one that turns on a limit which is not there, or is no threshold, is in doubt without a label to give", () => {
    const needing = (item: string) => ({ rule, applies: [{ when: { reached: item }, words: "it is" }] }) as const;
    expect(held(needing("nowhere"), { guardHeight: inches(35) })).toMatchObject({
      verdict: "judge", note: "at least 36 in; fails only where it is",
    });
    const alike: Rule = { comparator: "uniformity", of: "rise", within: "flight", tolerance: figure("1", "in") };
    const code = codeOf(
      limitOf({ item: "held", unit: "in", ...needing("alike") }), limitOf({ item: "alike", unit: "in", rule: alike }),
      limitOf({ item: "other", unit: "in", ...needing("drop") }),
      limitOf({
        item: "drop", unit: "in", rule: { comparator: "exempt-when", of: "fallHeight", atLeast: figure("30", "in"), frees: "it" },
      }),
    );
    const noteOf = (item: string) => rowOf(item, { guardHeight: inches(35) }, [], [], code).note;
    expect(noteOf("held")).toBe("at least 36 in; fails only where it is");
    expect(noteOf("other")).toBe("at least 36 in; fails only where it is; give fall height to decide");
  });

  test("where it does not apply there is no margin, and the size still stands there", () => {
    expect(held({ rule, applies: [DROP] }, { guardHeight: inches(35), fallHeight: inches(30) })).toMatchObject({
      given: 35, limit: 36, margin: "",
    });
  });
});

describe("an exception", () => {
  const rule = least("headroom", "80");
  const withThen = (then: LimitException["then"]) => (headroom: number, loft?: "yes" | "no") =>
    held({ rule, exceptions: [{ when: { fact: "loft", is: ["yes"] }, words: "a loft", then }] }, {
      headroom: inches(headroom), ...(loft === undefined ? {} : { loft }),
    });

  // 80 in by the rule; the exception frees altogether, leaves it to a person, or asks 76 in instead.
  test.each<readonly [string, LimitException["then"], readonly (readonly [number, "yes" | "no" | undefined, string])[]]>([
    ["frees", "does not apply", [
      [79, "yes", "does not apply"], [79, "no", "fail"], [79, undefined, "judge"], [80, undefined, "pass"], [81, "yes", "does not apply"],
    ]],
    ["leaves it to a person", "judge", [
      [79, "yes", "judge"], [79, "no", "fail"], [79, undefined, "judge"], [80, "yes", "pass"],
    ]],
    ["has a figure of its own", least("headroom", "76"), [
      [76, "yes", "pass"], [75, "yes", "fail"], [76, "no", "fail"],
      [79, undefined, "judge"], [75, undefined, "fail"], [80, undefined, "pass"],
    ]],
  ])("%s", (_says, then, cases) => {
    for (const [headroom, loft, verdict] of cases)
      expect([headroom, loft, withThen(then)(headroom, loft).verdict]).toEqual([headroom, loft, verdict]);
  });

  test("is named where it decides, with the label to give where it is open, and nowhere else", () => {
    expect(withThen("does not apply")(79, "yes").note).toBe("exception: a loft");
    expect(withThen("judge")(79, "yes").note).toBe("at least 80 in; exception: a loft");
    expect(withThen("judge")(80, "yes").note).toBe("at least 80 in");
    expect(withThen(least("headroom", "76"))(76, "yes").note).toBe("at least 76 in; exception: a loft");
    expect(withThen("does not apply")(79).note).toBe("at least 80 in; exception: a loft; give loft to decide");
    expect(withThen(least("headroom", "76"))(75).note).toBe("at least 80 in");
  });
});

test("an advisory limit cautions, and where it is in doubt is for a person", () => {
  const rule = most("riserHeight", "7");
  const doubt: LimitException = { when: { fact: "loft", is: ["yes"] }, words: "a loft", then: "judge" };
  expect(held({ rule, advisory: true }, { riserHeight: inches(8) }).verdict).toBe("caution");
  expect(held({ rule, advisory: true, exceptions: [doubt] }, { riserHeight: inches(8), loft: "yes" }).verdict).toBe("judge");
  expect(held({ rule, advisory: true }, { riserHeight: inches(7) }).verdict).toBe("pass");
});

describe("a size nobody gave", () => {
  const ASSUMED = { headroom: "headroom assumed: a wish", treadDepth: "run assumed: worked out" };
  const low: CodeFacts = { headroom: inches(79), assumed: ASSUMED };
  const enough: CodeFacts = { headroom: inches(80), assumed: ASSUMED };
  const rule = least("headroom", "80");
  const doubt: LimitException = { when: { fact: "loft", is: ["yes"] }, words: "a loft", then: "judge" };

  test.each<readonly [string, Parts, CodeFacts, string]>([
    ["would pass", { rule }, enough, "assumed: would pass"],
    ["would fail", { rule }, low, "assumed: would fail"],
    ["cautions all the same", { rule, advisory: true }, low, "caution"],
    ["is for a person all the same", { rule, exceptions: [doubt] }, { ...low, loft: "yes" }, "judge"],
    ["decides nothing beside one that fails", { rule: { comparator: "every", needs: "any", parts: [rule, least("clearWidth", "36")] } }, {
      ...enough, clearWidth: inches(35),
    }, "fail"],
  ])("%s", (_says, parts, facts, verdict) => {
    expect(held(parts, facts).verdict).toBe(verdict);
  });

  test("one that alone brings a limit into play, or beside which a question decides, is assumed", () => {
    const withHeadroom = { when: { given: "headroom" }, words: "a headroom is known" } as const;
    expect(held({ rule, applies: [withHeadroom] }, enough).verdict).toBe("assumed: would pass");
    expect(held({ rule, applies: [withHeadroom] }, { clearWidth: inches(36), assumed: ASSUMED }).verdict).toBe("does not apply");
    const asked = { when: { fact: "use", is: ["private"], otherwise: "private" }, words: "private" } as const;
    const rows = rowsAsTyped(low, [], [], codeOf(limitOf({ item: "held", unit: "in", rule, applies: [asked] })));
    expect(rows[0]?.verdict).toBe("assumed: would fail");
  });

  test("one that was built is measured, and decides", () => {
    const facts: CodeFacts = { treadDepth: inches(11), assumed: ASSUMED };
    expect(held({ rule: least("treadDepth", "10") }, facts, flight("run", [10, 10.5])).verdict).toBe("pass");
    expect(held({ rule: least("treadDepth", "10") }, facts, flight("run", [9.5, 10.5])).verdict).toBe("fail");
  });

  // What each rule is compared with: one size, either of two, rise and run, all but the end steps, several rules, the rows of a table.
  test.each<readonly [string, Rule]>([
    ["a size", rule],
    ["the worst of several", least(["headroom", "clearWidth"], "80")],
    ["several rules", { comparator: "every", needs: "any", parts: [rule, least("headroom", "79")] }],
    ["one of several rules", { comparator: "either", parts: [rule, least("headroom", "81")] }],
    ["all but the ends", least({ inner: "headroom" }, "80")],
    ["a table", { comparator: "table", rows: [{ when: { given: "headroom" }, words: "always", rule }] }],
  ])("is said once in the note of %s", (_says, one) => {
    expect(held({ rule: one }, enough).note.split("; ").filter((part) => part === ASSUMED.headroom)).toHaveLength(1);
  });

  test("is said of a figure worked out of it, and not of a row that is not compared with it", () => {
    const comfort: Rule = { comparator: "max", of: { formula: "two risers plus run" }, max: figure("25", "in") };
    const facts: CodeFacts = { riserHeight: inches(7), treadDepth: inches(11), assumed: ASSUMED };
    expect(held({ rule: comfort }, facts)).toMatchObject({ verdict: "assumed: would pass", note: `at most 25 in; ${ASSUMED.treadDepth}` });
    expect(held({ rule: most("riserHeight", "8") }, facts)).toMatchObject({ verdict: "pass", note: "at most 8 in" });
    const alike: Rule = { comparator: "uniformity", of: "run", within: "flight", tolerance: figure("1", "in") };
    expect(held({ rule: alike }, facts, flight("run", [10, 10.5])).note).not.toContain("assumed");
  });
});

describe("a stair of another kind, whose own limits were not read", () => {
  const SIZES: CodeFacts = {
    riserHeight: inches(7), treadDepth: inches(11), headroom: inches(80), width: inches(40), clearWidth: inches(40),
    widthAtHandrails: inches(40), handrailHeight: inches(40),
  };

  const KINDS = [
    ["spiral", "a spiral stair"], ["ship", "a ship's stair"], ["alternating", "a stair of alternating treads"], ["aisle", "an aisle"],
  ] as const;

  test.each(["riserHeight", "treadDepth", "headroom", "width", "clearWidth", "widthAtHandrails"] as const)("%s is for a person", (fact) => {
    for (const [stairKind, name] of KINDS)
      expect(held({ rule: least(fact, "1") }, { ...SIZES, stairKind })).toMatchObject({
        verdict: "judge", given: "", note: `${name} may have limits of its own, which were not read here`,
      });
    expect(held({ rule: least(fact, "1") }, { ...SIZES, stairKind: "standard" }).verdict).toBe("pass");
  });

  test("as is any rule with such a size in it, and no other", () => {
    const spiral: CodeFacts = { ...SIZES, stairKind: "spiral" };
    const pitch: Rule = { comparator: "max", of: { formula: "pitch" }, max: figure("45", "deg") };
    const clause: Rule = { comparator: "every", needs: "any", parts: [least("handrailHeight", "34"), least("headroom", "80")] };
    const table: Rule = { comparator: "table", rows: [{ when: { given: "width" }, words: "", rule: least("clearWidth", "36") }] };
    for (const rule of [pitch, clause, table, least({ inner: "riserHeight" }, "4")]) expect(held({ rule }, spiral).verdict).toBe("judge");
    expect(held({ rule: least("handrailHeight", "34") }, spiral).verdict).toBe("pass");
    const alike: Rule = { comparator: "uniformity", of: "rise", within: "flight", tolerance: figure("1", "in") };
    expect(held({ rule: alike }, spiral, flight("rise", [7, 7.5])).verdict).toBe("pass");
  });
});

describe("what stands below the rows of a code", () => {
  const outside = (item: string, clause: string, reason: OutOfScope["reason"]): OutOfScope => ({
    item, clause, unit: "in", text: "", reason, status: "not yet checked", sources: [],
  });
  const noteOf = (item: string, code: CodeProfile, facts: CodeFacts = {}) =>
    rowsAsTyped(facts, [], [], code).find((row) => row.item === item)?.note;

  test("what is not checked, by reason, with each clause once", () => {
    const code: CodeProfile = {
      ...codeOf(limitOf({ item: "held", unit: "in", rule: least("headroom", "80") })),
      outOfScope: [
        outside("spiral width", "10.1", "spiral stair"), outside("load", "3", "live load"), outside("spiral riser", "10.1", "spiral stair"),
        outside("spiral headroom", "10.2", "spiral stair"),
      ],
    };
    expect(noteOf("not checked", code)).toBe("spiral stair (10.1, 10.2); live load (3)");
    expect(noteOf("not checked", codeOf())).toBeUndefined();
  });

  test("how many rows read what", () => {
    const code = codeOf(
      limitOf({ item: "one", unit: "in", rule: least("headroom", "80") }),
      limitOf({ item: "two", unit: "in", rule: least("headroom", "84") }),
      limitOf({ item: "three", unit: "in", rule: least("clearWidth", "36") }),
    );
    expect(noteOf("verdicts", code, { headroom: inches(82) })).toBe(
      "fail 1; judge 0; assumed: would fail 0; not on file 0; not given 1; caution 0; assumed: would pass 0; pass 1; no limit 0; " +
        "does not apply 0",
    );
  });

  test("which labels would settle rows that are open, and none where all is settled", () => {
    const code = codeOf(
      limitOf({ item: "one", unit: "in", rule: least("headroom", "80") }),
      limitOf({ item: "two", unit: "in", rule: least("clearWidth", "36") }),
    );
    const said = (facts: CodeFacts) => noteOf("labels to enter", code, facts);
    expect(said({ headroom: inches(79) })).toBe("these settle rows that read not given, judge or assumed; width: clear width");
    expect(said({ clearWidth: inches(35) })).toBe("these settle rows that read not given, judge or assumed; headroom: headroom found");
    expect(said({ headroom: inches(79), clearWidth: inches(36) })).toBeUndefined();
  });

  test("the usual stair is taken as so unless its kind or its winders are given", () => {
    const usual = "the usual stair: stair kind standard, without winders, unless stair kind or winders say otherwise";
    const stairs: readonly CodeFacts[] = [{}, { winders: 0 }, { stairKind: "standard" }, { winders: 3 }, { winderDepth: inches(9) }];
    expect(stairs.map((facts) => noteOf("assumed", codeOf(), facts))).toEqual([usual, usual, undefined, undefined, undefined]);
  });

  test("each question nobody answered, and one that no row turns on is none", () => {
    const asked = (...facts: readonly ("dwelling" | "egress")[]) => codeOf(...facts.map((fact) => limitOf({
      item: fact, unit: "in", rule: least("headroom", "80"), applies: [{ when: { fact, is: ["yes"], otherwise: "no" }, words: fact }],
    })));
    const low: CodeFacts = { headroom: inches(79), stairKind: "standard" };
    const until = "a row that turns on it reads assumed or not given until its label is given";
    expect(noteOf("assumed", asked("dwelling"), low)).toBe(`dwelling no: nobody gave this; ${until}`);
    expect(noteOf("assumed", asked("dwelling", "egress"), low)).toBe(`dwelling no, egress no: nobody gave these; ${until}`);
    expect(noteOf("assumed", asked("dwelling", "egress"), { ...low, egress: "yes" })).toBe(`dwelling no: nobody gave this; ${until}`);
    expect(noteOf("assumed", asked("dwelling"), { headroom: inches(79) })).toMatch(/^dwelling no: nobody gave this; .*; the usual stair: /);
    expect(noteOf("assumed", asked("dwelling"), { ...low, dwelling: "no" })).toBeUndefined();
  });
});

describe("a question nobody answered, where the limit is asked only under one of its answers", () => {
  const PUBLIC = { when: { fact: "use", is: ["public"], otherwise: "private" }, words: "the stair is public" } as const;
  const row = (parts: Parts, facts: CodeFacts, item = "held") =>
    rowsAsTyped(facts, [], [], codeOf(limitOf({ item: "held", unit: "in", ...parts }))).find((one) => one.item === item);
  const rule = least("headroom", "80");

  test.each<readonly [CodeFacts, string, number | ""]>([
    [{ headroom: inches(79) }, "assumed: would fail", 79],
    [{ headroom: inches(80) }, "assumed: would pass", 80],
    [{}, "not given", ""],
    [{ headroom: inches(79), use: "public" }, "fail", 79],
    [{ headroom: inches(79), use: "private" }, "does not apply", 79],
  ])("%j: %s", (facts, verdict, given) => {
    expect(row({ rule, applies: [PUBLIC] }, facts)).toMatchObject({ verdict, given });
  });

  test("the label to give stands before what the limit says", () => {
    expect(row({ rule, applies: [PUBLIC] }, { headroom: inches(79) })?.note).toBe(
      "only where the stair is public; enter use to decide; at least 80 in",
    );
  });

  test("an advisory one, which would only caution, is not given", () => {
    expect(row({ rule, applies: [PUBLIC], advisory: true }, { headroom: inches(79) })?.verdict).toBe("not given");
  });

  test("what has no size to show is not given, and words alone are not asked", () => {
    const prohibited: Rule = { comparator: "prohibited", thing: "open risers are", present: { fact: "openRisers", is: ["yes"] } };
    expect(row({ rule: prohibited, applies: [PUBLIC] }, { openRisers: "yes" })).toMatchObject({ verdict: "not given", given: "" });
    expect(row({ rule: { comparator: "shown", text: "as built" }, applies: [PUBLIC] }, {})).toMatchObject({ verdict: "does not apply" });
  });

  test("two questions at once are both named, and one that changes nothing is not", () => {
    const inside = { when: { fact: "outside", is: ["no"], otherwise: "no" }, words: "indoors" } as const;
    const loft: LimitException = { when: { fact: "loft", is: ["yes"], otherwise: "no" }, words: "a loft", then: least("headroom", "76") };
    const both = row({ rule, applies: [inside], exceptions: [loft] }, { headroom: inches(78) });
    expect(both).toMatchObject({ verdict: "assumed: would fail" });
    expect(both?.note).toContain("assumes outside no and loft no; enter outside or loft to change");
    const one = row({ rule, applies: [inside], exceptions: [loft] }, { headroom: inches(75) });
    expect(one?.note).toContain("assumes outside no; enter outside to change");
  });

  // Of public and service, the answer under which it would fail weighs more than one under which it would pass.
  test("of two other answers the one that would fail stands there", () => {
    const table: Rule = {
      comparator: "table",
      rows: [
        { when: { fact: "use", is: ["public"], otherwise: "private" }, words: "public", rule: least("headroom", "76") },
        { when: { fact: "use", is: ["service"], otherwise: "private" }, words: "service", rule: least("headroom", "80") },
      ],
    };
    expect(row({ rule: table }, { headroom: inches(78) })).toMatchObject({ verdict: "assumed: would fail", limit: 80 });
    expect(row({ rule: table }, { headroom: inches(80) })).toMatchObject({ verdict: "assumed: would pass" });
    expect(row({ rule: table }, { headroom: inches(70), use: "private" })).toMatchObject({
      verdict: "does not apply", note: "only where public, or service",
    });
  });
});

// IRC 2021 R311.7.5.2.1: winders within 3/8 in of one another; alike they are by 0.
test("winders that are said to be alike differ by nothing, unless a difference was measured", () => {
  const spread = (facts: CodeFacts) => rowOf("winder uniformity walkline", { winders: 3, ...facts });
  expect(spread({ windersAlike: "yes" })).toMatchObject({ verdict: "pass", given: 0, margin: 0.375 });
  expect(spread({ windersAlike: "yes", winderSpread: inches(0.5) })).toMatchObject({ verdict: "fail", given: 0.5 });
  expect(spread({ windersAlike: "no" })).toMatchObject({ verdict: "not given" });
});

// NBC 2020 9.8.4.2.: a nosing of 0 to 25 mm. A nosing somebody gave, or one under a code that asks for one, stays as it is.
test("where a code asks for no nosing, one that nobody gave is none, and says so", () => {
  const ours: CodeFacts = { nosing: mm("31.75"), assumed: { nosing: "nosing assumed: common practice" } };
  const at = (id: string, item: string, facts: CodeFacts) => rowOf(item, facts, [], [], profileOf(id));
  const none = at("nbc-ca-2020", "tread depth over run", ours);
  expect(none).toMatchObject({ verdict: "assumed: would pass", given: 0 });
  expect(none.note).toContain("nosing assumed: none, as this code asks for none");
  expect(at("nbc-ca-2020", "tread depth over run", { nosing: mm("31.75") })).toMatchObject({ verdict: "fail", given: 31.75 });
  expect(at("irc-2021", "nosing projection", { ...ours, treadDepth: inches(10) })).toMatchObject({
    verdict: "assumed: would pass", given: 1.25,
  });
});

describe("topics of which a code has nothing on file", () => {
  const { isCode: _none, ...unnamed } = codeOf(limitOf({ item: "headroom", unit: "in", rule: least("headroom", "80") }));
  const code: CodeProfile = { ...unnamed, title: "Invented (none of the limits confirmed)" };
  const topics = (one: CodeProfile, facts: CodeFacts = {}) => rowsOf(facts, [], [], one).filter(({ verdict }) => verdict === "not on file");

  // Fourteen topics, of which headroom is on file; winders only where there are any.
  test("have a row each, which names code and edition and asks to look it up", () => {
    expect(topics(code).map(({ item }) => item)).toEqual([
      "rise", "run", "uniformity", "nosing", "width", "handrail required", "handrail height", "guard required", "guard height",
      "guard openings", "landing", "open risers",
    ]);
    expect(topics(code)[0]).toEqual({
      item: "rise", given: "", limit: "not on file", margin: "", unit: "", verdict: "not on file", clause: "",
      sourceStatus: "not yet checked",
      note: "whether Invented, 1, limits this is not on file; look it up in the code",
    });
    expect(topics(code, { winders: 3 }).find(({ item }) => item === "winders")?.note).toBe(
      "whether Invented, 1, limits this is not on file; look it up in the code, as the flight has winders or tapered treads",
    );
    expect(topics({ ...code, isCode: false })).toEqual([]);
  });

  const PUBLIC: Condition = { fact: "use", is: ["public"] };
  const DWELLING: Condition = { fact: "dwelling", is: ["yes"] };
  const OUTSIDE: Condition = { fact: "outside", is: ["yes"] };
  const forStairs = (when: Condition): Pick<Limit, "applies"> => ({ applies: [{ when, words: "" }] });
  const butFor = (when: Condition): Pick<Limit, "exceptions"> => ({ exceptions: [{ when, words: "", then: "does not apply" }] });
  const headroomOf = (parts: Partial<Limit>) => limitOf({ item: "headroom", unit: "in", rule: least("headroom", "80"), ...parts });
  const published = (...limits: readonly Limit[]): CodeProfile => {
    const { isCode: _none, ...one } = codeOf(...limits);
    return one;
  };

  // A limit for another kind of stair leaves the topic open; one that falls away for any other reason does not.
  test.each<readonly [string, Partial<Limit>, CodeFacts, boolean]>([
    ["for public stairs", forStairs(PUBLIC), { use: "private" }, true],
    ["for dwellings", forStairs(DWELLING), { dwelling: "no" }, true],
    ["for stairs not seldom used", forStairs({ not: { fact: "infrequent", is: ["yes"] } }), { infrequent: "yes" }, true],
    ["for two kinds at once", forStairs({ all: [PUBLIC, DWELLING] }), { use: "private" }, true],
    ["for either of two kinds", forStairs({ any: [PUBLIC, DWELLING] }), { use: "private", dwelling: "no" }, true],
    ["but for spiral stairs", butFor({ fact: "stairKind", is: ["spiral"] }), { stairKind: "spiral" }, true],
    ["but for lofts", butFor({ fact: "loft", is: ["yes"] }), { loft: "yes" }, false],
    ["for stairs outdoors", forStairs(OUTSIDE), { outside: "no" }, false],
    ["for a public stair outdoors", forStairs({ all: [PUBLIC, OUTSIDE] }), { use: "private" }, false],
    ["for public stairs or outdoors", forStairs({ any: [PUBLIC, OUTSIDE] }), { use: "private", outside: "no" }, false],
    ["where a width is given", forStairs({ given: "width" }), {}, false],
    ["for every stair", {}, {}, false],
  ])("a limit %s", (_says, parts, facts, isOpen) => {
    const found = topics(published(headroomOf(parts)), facts).find(({ item }) => item === "headroom");
    expect(found?.note).toBe(isOpen ? "the limits on file are for another kind of stair; look it up in the code" : undefined);
  });

  test("one limit that is for this stair is enough", () => {
    const other = limitOf({
      item: "headroom other", unit: "in", rule: least("headroom", "79"), ...forStairs({ fact: "use", is: ["private"] }),
    });
    expect(topics(published(headroomOf(forStairs(PUBLIC)), other), { use: "private" }).some(({ item }) => item === "headroom")).toBe(false);
  });
});
