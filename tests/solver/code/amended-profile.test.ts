import fc from "fast-check";
import { amendedProfile } from "../../../src/solver/code/amended-profile";
import type { CheckRow } from "../../../src/solver/code/check";
import type { CodeFacts } from "../../../src/solver/code/fact-labels";
import { irc2021 } from "../../../src/solver/code/profiles/irc-2021";
import { flight, inches, rowOf, rowsOf } from "./stair-check";

const amend = (item: string, limit: string | number, authority = "Alder County (invented)") => [{ item, limit, authority }];

test("a looser limit of the local authority lets an 8 in riser pass, and the authority is shown", () => {
  const row = rowOf("riser height", { riserHeight: inches(8) }, [], amend("Riser-Height", "8 1/4"));
  expect(row).toMatchObject({ verdict: "pass", limit: 8.25, margin: 0.25, sourceStatus: "amended by Alder County (invented)" });
  expect(row.note).toContain("in place of 7 3/4 in");
});

test("a tighter limit fails what the code passes", () => {
  expect(rowOf("tread depth", { treadDepth: inches(10) }, [], amend("tread depth", 11))).toMatchObject({ verdict: "fail", margin: -1 });
});

test("an amended limit is exact in the unit it is written in: 200 mm is reached by 200 mm and passed by no more", () => {
  const at = (value: string) =>
    rowOf("riser height", { unit: "in", riserHeight: inches(value) }, [], amend("riser height", "200 mm")).verdict;
  // 200 mm = 7.874015748031496… in.
  expect(at("7.87401574803149")).toBe("pass");
  expect(at("7.87401574803150")).toBe("fail");
});

test("a bare number is in the stair's unit", () => {
  expect(rowOf("headroom", { unit: "mm", headroom: inches(80) }, [], amend("headroom", 2000))).toMatchObject({ verdict: "pass" });
  expect(rowOf("headroom", { unit: "mm", headroom: inches(80) }, [], amend("headroom", 2033))).toMatchObject({ verdict: "fail" });
});

test("ranges, slopes and counts are amended in their own way of writing", () => {
  expect(rowOf("handrail height", { handrailHeight: inches(33) }, [], amend("handrail height", "30 to 34"))).toMatchObject({
    verdict: "pass",
    limit: "30 to 34",
  });
  expect(rowOf("walking surface slope", { treadSlope: 0.05 }, [], amend("walking surface slope", "1:20"))).toMatchObject({
    verdict: "pass",
    limit: "1:20",
  });
  expect(rowOf("handrail required risers", { risers: 3, handrails: "none" }, [], amend("handrail required risers", 3))).toMatchObject({
    verdict: "fail",
  });
  expect(rowOf("riser slope from vertical", { riserSlope: 25 }, [], amend("riser slope from vertical", "20 degrees"))).toMatchObject({
    verdict: "fail",
  });
});

test("what the code allows in a special case stays allowed under a looser limit, and not under a tighter one", () => {
  // IRC 2021 R311.7.8: a rail stands off 4 1/2 in at most, 6 1/2 where it passes a nosing.
  const projection = (limit: number, found: number): string =>
    rowOf(
      "handrail projection each side",
      { handrailProjection: inches(found), handrailPassesNosing: "yes" },
      [],
      amend("handrail projection each side", limit),
    ).verdict;
  expect([projection(5, 6.5), projection(5, 6.5625), projection(4, 4), projection(4, 4.5)]).toEqual(["pass", "fail", "pass", "fail"]);
  // IRC R311.7.5.3, exceptions of 2024: a nosing of 3/4 to 1 1/4 in; of open risers 3/4 or more, without a greatest.
  const nosing = (limit: string, found: number): string =>
    rowOf(
      "nosing projection",
      { treadDepth: inches(10), nosing: inches(found), openRisers: "yes", laterExceptions: "yes" },
      [],
      amend("nosing projection", limit),
    ).verdict;
  expect([nosing("1/2 to 1 1/2", 2), nosing("1/2 to 1 1/8", 2), nosing("7/8 to 1 1/2", 2)]).toEqual(["pass", "fail", "fail"]);
  // IRC 2021 R312.1.2: a guard on the open side of stairs is 34 in high; where it is the handrail too, 34 to 38.
  const guard = (limit: number, found: number): string =>
    rowOf(
      "guard height stair open side",
      { fallHeight: inches(60), guardHeight: inches(found), guardIsHandrail: "yes" },
      [],
      amend("guard height stair open side", limit),
    ).verdict;
  expect([guard(36, 39), guard(36, 35)]).toEqual(["pass", "fail"]);
});

test("an amended threshold is the one the other rows turn on", () => {
  const facts = { treadDepth: inches(10.5), nosing: inches(0) };
  expect(rowOf("nosing projection", facts).verdict).toBe("fail");
  expect(rowOf("nosing projection", facts, [], amend("nosing exempt tread depth", 10)).verdict).toBe("does not apply");
  const low = { fallHeight: inches(28), guardHeight: inches(30) };
  expect(rowOf("guard height stair open side", low).verdict).toBe("does not apply");
  expect(rowOf("guard height stair open side", low, [], amend("guard required drop", 24)).verdict).toBe("fail");
});

test("36 in guards on stairs, where the model code says 34: an amended limit also stands where the guard is the handrail", () => {
  const facts = { fallHeight: inches(60), guardHeight: inches(35), guardIsHandrail: "yes" } as const;
  expect(rowOf("guard height stair open side", facts).verdict).toBe("pass");
  expect(rowOf("guard height stair open side", facts, [], amend("guard height stair open side", 36)).verdict).toBe("fail");
});

test("a limit taken off does not apply, and a guard not required anywhere is asked for nowhere", () => {
  expect(rowOf("flight vertical rise", { totalRise: inches(200) }, [], amend("flight vertical rise", "none"))).toMatchObject({
    verdict: "does not apply",
  });
  expect(
    rowOf("guard opening stair side", { guardGap: inches(5), fallHeight: inches(90) }, [], amend("guard required drop", "none")).verdict,
  ).toBe("does not apply");
});

test("an amendment without an authority says so, and one is named without the spaces typed around it", () => {
  expect(rowOf("riser height", {}, [], amend("riser height", 8, " ")).sourceStatus).toBe("amended by authority not given");
  expect(rowOf("riser height", {}, [], amend("riser height", 8, " Alder County ")).sourceStatus).toBe("amended by Alder County");
});

// IRC 2021 R311.7.2 lets the edge of the opening stand in by 4 3/4 in; R311.7.8.1 excuses a volute; R311.7.5.2 compares winders with
// winders.
test("where a code excuses a limit altogether, or leaves it to a person, it does so of an amended one too", () => {
  const verdicts = (item: string, limit: string, facts: CodeFacts, steps: Parameters<typeof rowOf>[2] = []) =>
    [limit, "none"].map((one) => rowOf(item, facts, steps, amend(item, one)).verdict);
  const overlapped: CodeFacts = { headroom: inches(79), openingOverlap: inches(4.75) };
  expect(verdicts("headroom", "84 in", overlapped)).toEqual(["does not apply", "does not apply"]);
  expect(verdicts("headroom", "84 in", { headroom: inches(79) })).toEqual(["fail", "does not apply"]);
  expect(verdicts("handrail height", "30 to 36", { handrailHeight: inches(40), handrailFitting: "yes" })[0]).toBe("does not apply");
  expect(verdicts("tread uniformity", "1/4", { winders: 3 }, flight("run", [10, 10.5]))[0]).toBe("judge");
});

test.each([
  [
    "an item that is not in the code, with the nearest one named",
    amend("riser hight", 8),
    "unknown-amendment",
    { item: "riser hight", nearest: '; nearest is "riser height"' },
  ],
  ["the same item twice", [...amend("riser height", 8), ...amend("Riser Height", 9)], "amended-twice", { item: "Riser Height" }],
  ["words that are no length", amend("riser height", "eight"), "amended-limit-unreadable", { item: "riser height", given: "eight" }],
  ["a limit of 0", amend("tread depth", 0), "amended-limit-not-positive", { item: "tread depth" }],
  ["one figure where the code has two", amend("handrail height", 36), "amended-range-needed", { item: "handrail height" }],
  ["a range the wrong way round", amend("handrail height", "38 to 34"), "amended-range-reversed", { item: "handrail height" }],
  ["a slope in words", amend("walking surface slope", "flat"), "amended-limit-unreadable", { item: "walking surface slope" }],
])("refused: %s", (_says, amendments, code, details) => {
  expect(amendedProfile(irc2021, amendments, "in")).toMatchObject({ problem: code, details });
});

/** Limits that loosen upwards and downwards; 1/16 in is the grid of the figures drawn. */
const LOOSER_UP = [
  "flight vertical rise", "riser height", "riser uniformity", "open riser opening", "tread uniformity", "winder uniformity walkline",
  "nosing radius", "nosing bevel", "nosing projection uniformity", "handrail projection each side", "handrail grip type1 cross section",
  "guard required drop", "guard opening", "guard opening stair side", "guard opening stair triangle",
];
const LOOSER_DOWN = [
  "clear width above handrail", "clear width at handrail one side", "clear width at handrail two sides", "headroom", "tread depth",
  "winder tread depth walkline", "winder tread depth any point", "nosing exempt tread depth", "landing depth straight run", "landing width",
  "handrail wall clearance", "handrail grip type2 recess depth", "guard height", "guard height stair open side",
];

const sixteenths = (most: number) => fc.integer({ min: 1, max: most * 16 }).map((count) => inches(count / 16));
const anyStair: fc.Arbitrary<CodeFacts> = fc.record(
  {
    riserHeight: sixteenths(12), treadDepth: sixteenths(16), nosing: sixteenths(3), totalRise: sixteenths(200), headroom: sixteenths(100),
    openingOverlap: sixteenths(8), clearWidth: sixteenths(48), widthAtHandrails: sixteenths(48),
    handrails: fc.constantFrom("none", "one", "both"), handrailHeight: sixteenths(48), handrailProjection: sixteenths(8),
    handrailPassesNosing: fc.constantFrom("yes", "no"), handrailClearance: sixteenths(3), grip: sixteenths(3), gripPerimeter: sixteenths(9),
    gripCrossSection: sixteenths(4), gripRecess: sixteenths(1), fallHeight: sixteenths(60), guard: fc.constantFrom("yes", "no"),
    guardHeight: sixteenths(48), guardIsHandrail: fc.constantFrom("yes", "no"), guardGap: sixteenths(8), triangleGap: sixteenths(8),
    landingGuardHeight: sixteenths(48), landingGuardGap: sixteenths(8), nosingRadius: sixteenths(1), nosingBevel: sixteenths(1),
    openRisers: fc.constantFrom("yes", "no"), openRiserGap: sixteenths(8), openRiserHeight: sixteenths(60), landingDepth: sixteenths(48),
    landingWidth: sixteenths(48), winders: fc.integer({ min: 0, max: 4 }), winderDepth: sixteenths(14), winderNarrowEnd: sixteenths(10),
    winderSpread: sixteenths(1), risers: fc.integer({ min: 1, max: 18 }),
  },
  { requiredKeys: [] },
) as fc.Arbitrary<CodeFacts>;

const anySteps = fc.array(fc.integer({ min: 7 * 16, max: 8 * 16 }), { maxLength: 5 }).map((counts) =>
  flight(
    "rise",
    counts.map((count) => count / 16),
  ),
);

const passing = (rows: readonly CheckRow[]): string[] => rows.filter(({ verdict }) => verdict === "pass").map(({ item }) => item);

test("loosening a limit by amendment never turns a pass into a fail, in its own row or another", () => {
  const figures = fc
    .tuple(fc.integer({ min: 1, max: 160 * 16 }), fc.integer({ min: 0, max: 40 * 16 }))
    .map(([low, more]) => [low / 16, (low + more) / 16] as const);
  fc.assert(
    fc.property(anyStair, anySteps, fc.constantFrom(...LOOSER_UP, ...LOOSER_DOWN), figures, (facts, steps, item, [low, high]) => {
      const [tight, loose] = LOOSER_UP.includes(item) ? [low, high] : [high, low];
      const before = passing(rowsOf(facts, steps, amend(item, tight)));
      const after = rowsOf(facts, steps, amend(item, loose));
      expect(after.filter((row) => row.verdict === "fail" && before.includes(row.item)).map((row) => row.item)).toEqual([]);
    }),
    { numRuns: 300 },
  );
});

test("widening a range by amendment never turns a pass into a fail", () => {
  const ranges = fc.constantFrom("nosing projection", "handrail height", "handrail grip type1 diameter", "handrail grip type1 perimeter");
  const ends = fc
    .uniqueArray(fc.integer({ min: 1, max: 48 * 16 }), { minLength: 4, maxLength: 4 })
    .map((four) => four.sort((a, b) => a - b).map((end) => end / 16));
  fc.assert(
    fc.property(anyStair, ranges, ends, (facts, item, [outerLow, innerLow, innerHigh, outerHigh]) => {
      const before = passing(rowsOf(facts, [], amend(item, `${innerLow} to ${innerHigh}`)));
      const after = rowsOf(facts, [], amend(item, `${outerLow} to ${outerHigh}`));
      expect(after.filter((row) => row.verdict === "fail" && before.includes(row.item)).map((row) => row.item)).toEqual([]);
    }),
    { numRuns: 200 },
  );
});

test("the verdict of a limit that was not amended is the one it had", () => {
  fc.assert(
    fc.property(anyStair, sixteenths(12), (facts, limit) => {
      const others = (rows: readonly CheckRow[]) => rows.filter(({ item }) => item !== "riser height" && item !== "verdicts");
      expect(others(rowsOf(facts, [], amend("riser height", limit.div("25.4").toNumber())))).toEqual(others(rowsOf(facts)));
    }),
    { numRuns: 100 },
  );
});
