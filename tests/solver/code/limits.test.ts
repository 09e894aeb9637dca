import fc from "fast-check";
import type { CodeFacts, FactName } from "../../../src/solver/code/fact-labels";
import type { CodeProfile, Limit } from "../../../src/solver/code/profile";
import { PROFILES } from "../../../src/solver/code/profiles";
import { profileCounts } from "../../../src/solver/code/profile-counts";
import { limitInForce } from "../../../src/solver/code/limit-in-force";
import { isProblem } from "../../../src/solver/problem";
import { inches, millimetres, rowOf } from "./stair-check";

const profile = (id: string): CodeProfile => {
  const found = PROFILES.find((one) => one.id === id);
  if (found === undefined) throw new Error(id);
  return found;
};

type Sense = "at most" | "at least";
type Typed = readonly [
  id: string,
  item: string,
  fact: FactName,
  sense: Sense,
  limit: number,
  unit: "in" | "mm",
  clause: string,
  others?: CodeFacts,
];

const EXIT: CodeFacts = { egress: "yes" };
const PUBLIC: CodeFacts = { use: "public" };

// Typed from the published texts, clause by clause; DIN is printed in centimetres.
const LIMITS: readonly Typed[] = [
  ["irc-2024", "riser height", "riserHeight", "at most", 7.75, "in", "R318.7.5.1"],
  ["irc-2024", "tread depth", "treadDepth", "at least", 10, "in", "R318.7.5.2"],
  ["irc-2024", "headroom", "headroom", "at least", 80, "in", "R318.7.2"],
  ["irc-2024", "flight vertical rise", "totalRise", "at most", 151, "in", "R318.7.3"],
  ["irc-2024", "clear width above handrail", "clearWidth", "at least", 36, "in", "R318.7.1"],
  ["irc-2021", "riser height", "riserHeight", "at most", 7.75, "in", "R311.7.5.1"],
  ["irc-2018", "riser height", "riserHeight", "at most", 7.75, "in", "R311.7.5.1"],
  ["irc-2018", "tread depth", "treadDepth", "at least", 10, "in", "R311.7.5.2"],
  ["irc-2018", "flight vertical rise", "totalRise", "at most", 151, "in", "R311.7.3"],
  ["ibc-2021", "riser height", "riserHeight", "at most", 7, "in", "1011.5.2"],
  ["ibc-2021", "riser height", "riserHeight", "at least", 4, "in", "1011.5.2"],
  ["ibc-2021", "tread depth", "treadDepth", "at least", 11, "in", "1011.5.2"],
  ["ibc-2021", "headroom", "headroom", "at least", 80, "in", "1011.3"],
  ["ibc-2021", "flight vertical rise", "totalRise", "at most", 144, "in", "1011.8"],
  ["ibc-2018", "riser height", "riserHeight", "at most", 7, "in", "1011.5.2"],
  ["ibc-2018", "tread depth", "treadDepth", "at least", 11, "in", "1011.5.2"],
  ["ibc-2018", "nosing projection", "nosing", "at most", 1.25, "in", "1011.5.5.1"],
  ["osha-1910.25", "riser height", "riserHeight", "at most", 9.5, "in", "1910.25(c)(2)"],
  ["osha-1910.25", "tread depth", "treadDepth", "at least", 9.5, "in", "1910.25(c)(3)"],
  ["osha-1910.25", "stair width", "clearWidth", "at least", 22, "in", "1910.25(c)(4)"],
  ["osha-1910.25", "headroom", "headroom", "at least", 80, "in", "1910.25(b)(2)"],
  ["osha-1926.1052", "temporary landing depth", "landingDepth", "at least", 30, "in", "1926.1052(a)(1)", { temporary: "yes" }],
  ["osha-1926.1052", "temporary landing width", "landingWidth", "at least", 22, "in", "1926.1052(a)(1)", { temporary: "yes" }],
  ["ada-2010", "riser height", "riserHeight", "at most", 7, "in", "504.2", EXIT],
  ["ada-2010", "riser height", "riserHeight", "at least", 4, "in", "504.2", EXIT],
  ["ada-2010", "tread depth", "treadDepth", "at least", 11, "in", "504.2", EXIT],
  ["ada-2010", "nosing projection", "nosing", "at most", 1.5, "in", "504.5", EXIT],
  ["uk-adk-private", "riser height", "riserHeight", "at most", 220, "mm", "1.3 Table 1.1"],
  ["uk-adk-private", "riser height", "riserHeight", "at least", 150, "mm", "1.3 Table 1.1"],
  ["uk-adk-private", "going", "treadDepth", "at least", 220, "mm", "1.3 Table 1.1"],
  ["uk-adk-private", "headroom", "headroom", "at least", 2000, "mm", "1.11 Diagram 1.3"],
  ["uk-adk-utility", "riser height", "riserHeight", "at most", 190, "mm", "1.3 Table 1.1"],
  ["uk-adk-general", "riser height", "riserHeight", "at most", 170, "mm", "1.3 Table 1.1"],
  ["uk-adk-general", "going", "treadDepth", "at least", 250, "mm", "1.3 Table 1.1"],
  ["obc-part9", "riser height", "riserHeight", "at most", 200, "mm", "Table 9.8.4.1. item 1"],
  ["obc-part9", "run", "treadDepth", "at least", 255, "mm", "Table 9.8.4.1. item 1"],
  ["obc-part9", "headroom", "headroom", "at least", 1950, "mm", "9.8.2.2.(3)"],
  ["obc-2024-part9", "flight vertical rise", "totalRise", "at most", 3700, "mm", "9.8.3.3."],
  ["nbc-ca-2020", "riser height", "riserHeight", "at most", 200, "mm", "Table 9.8.4.1."],
  ["nbc-ca-2020", "run", "treadDepth", "at least", 255, "mm", "Table 9.8.4.2."],
  ["nbc-ca-2020", "riser height public", "riserHeight", "at most", 180, "mm", "Table 9.8.4.1.", PUBLIC],
  ["nbc-ca-2020", "run public", "treadDepth", "at least", 280, "mm", "Table 9.8.4.2.", PUBLIC],
  ["au-ncc-2022-class1", "riser height", "riserHeight", "at most", 190, "mm", "Housing Provisions Table 11.2.2a"],
  ["au-ncc-2022-class1", "riser height", "riserHeight", "at least", 115, "mm", "Housing Provisions Table 11.2.2a"],
  ["au-ncc-2022-class1", "going", "treadDepth", "at least", 240, "mm", "Housing Provisions Table 11.2.2a"],
  ["din-18065-dwelling", "riser height", "riserHeight", "at most", 200, "mm", "DIN 18065 (clause not known)"],
  ["din-18065-dwelling", "tread depth", "treadDepth", "at least", 230, "mm", "DIN 18065 (clause not known)"],
  ["din-18065-general", "riser height", "riserHeight", "at most", 190, "mm", "DIN 18065 (clause not known)"],
];

describe("limits typed from the published texts, at the figure and one mark to either side", () => {
  test.each(LIMITS.map((row) => [row.slice(0, 7).join(", "), row] as const))(
    "%s",
    (_, [id, item, fact, sense, limit, unit, clause, others = {}]) => {
      // 1/64 in, or 1 mm.
      const mark = unit === "in" ? 1 / 64 : 1;
      const size = unit === "in" ? inches : millimetres;
      const verdict = (value: number) => rowOf(item, { ...others, [fact]: size(value) }, [], [], profile(id));
      expect(verdict(limit).clause).toBe(clause);
      expect(verdict(limit).verdict).toBe("pass");
      expect(verdict(limit).margin).toBe(0);
      expect(verdict(limit + (sense === "at most" ? -mark : mark)).verdict).toBe("pass");
      expect(verdict(limit + (sense === "at most" ? mark : -mark)).verdict).toBe("fail");
    },
  );
});

describe("every record has its place", () => {
  test("only spiral, ship's and alternating stairs, live loads, doors, lifts and what no label states are out of scope", () => {
    const reasons = new Set(PROFILES.flatMap(({ outOfScope }) => outOfScope.map(({ reason }) => reason)));
    for (const reason of reasons)
      expect(["spiral stair", "ship's stair", "alternating stair", "live load", "door", "lift", "not in the stair table"]).toContain(
        reason,
      );
  });

  test("a code with more than a third of its limits not confirmed says so in its title", () => {
    for (const one of PROFILES.filter(({ id }) => id !== "trade-rules")) {
      const { limits, confirmed } = profileCounts(one);
      expect([one.id, one.title.endsWith("confirmed)")]).toEqual([one.id, (limits - confirmed) * 3 > limits]);
    }
  });

  test("every limit has a clause, its printed text, how it is measured, and a source", () => {
    for (const one of PROFILES) {
      for (const { item, clause, text, measured, status, sources } of one.limits) {
        expect([one.id, item, clause !== "" && text !== "" && measured !== ""]).toEqual([one.id, item, true]);
        expect([one.id, item, sources.length > 0 || status === "not yet checked"]).toEqual([one.id, item, true]);
      }
    }
  });

  test("every condition and exception is a predicate over labels; none is left to words alone", () => {
    const names = (condition: unknown): boolean => JSON.stringify(condition).match(/"(fact|given|reached)":/) !== null;
    const loose = PROFILES.flatMap((one) =>
      one.limits.flatMap(({ item, applies, exceptions }) =>
        [...applies, ...exceptions].filter(({ when }) => !names(when)).map(({ words }) => `${one.id}, ${item}: ${words}`),
      ),
    );
    expect(loose).toEqual([]);
  });

  test("a limit without conditions on an everyday quantity gets a verdict once its label is given", () => {
    const CHECKED = ["min", "max", "range", "sphere", "slope", "equals"];
    for (const one of PROFILES) {
      for (const limit of one.limits) {
        if (
          limit.applies.length > 0 ||
          !CHECKED.includes(limit.rule.comparator) ||
          !("of" in limit.rule) ||
          typeof limit.rule.of !== "string"
        )
          continue;
        const fact = limit.rule.of as FactName;
        const value =
          fact === "risers" || fact === "risersBeforeTurn"
            ? 10
            : fact.toLowerCase().includes("slope") || fact.endsWith("Turn")
              ? 0.01
              : inches(10);
        expect([
          one.id,
          limit.item,
          ["pass", "fail", "caution", "judge", "does not apply"].includes(rowOf(limit.item, { [fact]: value }, [], [], one).verdict),
        ]).toEqual([one.id, limit.item, true]);
      }
    }
  });

  test("the trade's rules of thumb never fail a stair", () => {
    fc.assert(
      fc.property(fc.integer({ min: 60, max: 200 }), fc.integer({ min: 60, max: 300 }), (rise, run) => {
        for (const limit of profile("trade-rules").limits) {
          expect(
            rowOf(limit.item, { riserHeight: inches(rise / 16), treadDepth: inches(run / 16) }, [], [], profile("trade-rules")).verdict,
          ).not.toBe("fail");
        }
      }),
      { numRuns: 40 },
    );
  });
});

test("loosening a limit never turns a pass into a fail, in any code", () => {
  const plain = (limit: Limit): boolean =>
    limit.applies.length === 0 &&
    (limit.rule.comparator === "min" || limit.rule.comparator === "max") &&
    ["in", "mm"].includes(limit.unit) &&
    typeof limit.rule.of === "string";
  const rows = PROFILES.flatMap((one) => one.limits.filter(plain).map((limit) => ({ one, limit })));
  expect(rows.length).toBeGreaterThan(20);
  fc.assert(
    fc.property(
      fc.constantFrom(...rows),
      fc.integer({ min: 1, max: 4000 }),
      fc.integer({ min: 1, max: 60 }),
      ({ one, limit }, sixteenths, more) => {
        const { rule } = limit;
        if (rule.comparator !== "min" && rule.comparator !== "max") return;
        const fact = rule.of as FactName;
        const figure = rule.comparator === "min" ? rule.min : rule.max;
        const value = fact === "risers" || fact === "risersBeforeTurn" ? Math.ceil(sixteenths / 16) : inches(sixteenths / 16);
        const loosened = figure.value.times(rule.comparator === "min" ? 1 - more / 100 : 1 + more / 100);
        const amended = [{ item: limit.item, limit: `${loosened.toFixed(6)} ${limit.unit}`, authority: "Alder County (invented)" }];
        const before = rowOf(limit.item, { [fact]: value }, [], [], one).verdict;
        if (before === "pass") expect(rowOf(limit.item, { [fact]: value }, [], amended, one).verdict).toBe("pass");
      },
    ),
    { numRuns: 200 },
  );
});

describe("one limit by itself", () => {
  const read = (id: string, item: string) => limitInForce(profile(id), item);
  test("a length, two limits, a slope, a count", () => {
    expect(read("ada-2010", "riser height")).toEqual({ kind: "text", value: "4 to 7", status: "checked against the code's text" });
    const tread = read("uk-adk-private", "headroom");
    if (isProblem(tread) || tread.kind !== "length") throw new Error("a length");
    expect(tread.value.toNumber()).toBe(2000);
    const slope = read("obc-part9", "walking surface slope");
    if (isProblem(slope) || slope.kind !== "number") throw new Error("a slope");
    expect(slope.value.toNumber()).toBe(0.02);
  });

  test("a table, a relation and what has no figure are refused with the way to read them", () => {
    expect(read("nbc-ca-2020", "handrail required risers")).toMatchObject({ problem: "limit-depends" });
    expect(read("irc-2021", "landing width")).toMatchObject({ problem: "limit-depends" });
    expect(read("ada-2010", "riser uniformity")).toMatchObject({ problem: "limit-is-no-figure" });
    expect(read("irc-2021", "riser hight")).toMatchObject({ problem: "unknown-item", details: { nearest: '; nearest is "riser height"' } });
  });
});
