import type { MeasuredFact, CodeFacts } from "../../../src/solver/code/fact-labels";
import { irc2021 } from "../../../src/solver/code/profiles/irc-2021";
import { figure } from "../../../src/solver/code/profile";
import { codeOf, limitOf } from "./invented-code";
import { flight, inches, millimetres, rowOf, rowsOf } from "./stair-check";

/**
 * Limits of the International Residential Code 2021, typed here from texts that name the edition or, where marked, from another one:
 * [1] IRC 2018 R311.7.5.1, [2] IRC 2018 R311.7.5.2.1, [3] IRC R311.7.5.3, edition not named, [4] IRC R311.7.5.3, as quoted in 2017,
 * [5] IRC R311.5.6, 2006 numbering, [6] Camden County, North Carolina, ordinance of 2019-08-01, Guards.
 */
type Side = "least" | "greatest";
const SIXTY_FOURTH = 1 / 64;
const WITH_GUARD: CodeFacts = { fallHeight: inches(31) };

const SIDED: readonly [item: string, clause: string, fact: MeasuredFact, side: Side, limit: number, context: CodeFacts][] = [
  ["clear width above handrail", "R311.7.1", "clearWidth", "least", 36, {}],
  ["clear width at handrail one side", "R311.7.1", "widthAtHandrails", "least", 31.5, { handrails: "one" }],
  ["clear width at handrail two sides", "R311.7.1", "widthAtHandrails", "least", 27, { handrails: "both" }],
  ["headroom", "R311.7.2", "headroom", "least", 6 * 12 + 8, {}],
  ["flight vertical rise", "R311.7.3", "totalRise", "greatest", 12 * 12 + 7, {}],
  ["riser height", "R311.7.5.1", "riserHeight", "greatest", 7 + 3 / 4, {}],
  ["tread depth", "R311.7.5.2", "treadDepth", "least", 10, {}],
  ["winder tread depth walkline", "R311.7.5.2.1", "winderDepth", "least", 10, {}],
  ["winder tread depth any point", "R311.7.5.2.1", "winderNarrowEnd", "least", 6, {}],
  ["winder uniformity walkline", "R311.7.5.2.1", "winderSpread", "greatest", 3 / 8, {}], // [2]
  ["nosing radius", "R311.7.5.3", "nosingRadius", "greatest", 9 / 16, {}], // [3]
  ["nosing bevel", "R311.7.5.3", "nosingBevel", "greatest", 1 / 2, {}], // [4]
  ["nosing projection", "R311.7.5.3", "nosing", "least", 3 / 4, { treadDepth: inches(10) }],
  ["nosing projection", "R311.7.5.3", "nosing", "greatest", 1 + 1 / 4, { treadDepth: inches(10) }],
  ["landing depth straight run", "R311.7.6", "landingDepth", "least", 36, {}],
  ["landing width", "R311.7.6", "landingWidth", "least", 42, { clearWidth: inches(42) }],
  ["handrail height", "R311.7.8.1", "handrailHeight", "least", 34, {}],
  ["handrail height", "R311.7.8.1", "handrailHeight", "greatest", 38, {}],
  ["handrail projection each side", "R311.7.8.2", "handrailProjection", "greatest", 4.5, {}],
  ["handrail wall clearance", "R311.7.8.3", "handrailClearance", "least", 1.5, {}],
  ["handrail grip type1 diameter", "R311.7.8.5", "grip", "least", 1.25, {}],
  ["handrail grip type1 diameter", "R311.7.8.5", "grip", "greatest", 2, {}],
  ["handrail grip type1 perimeter", "R311.7.8.5", "gripPerimeter", "least", 4, {}],
  ["handrail grip type1 perimeter", "R311.7.8.5", "gripPerimeter", "greatest", 6.25, {}],
  ["handrail grip type1 cross section", "R311.7.8.5", "gripCrossSection", "greatest", 2.25, {}], // [5]
  ["handrail grip type2 recess depth", "R311.7.8.5", "gripRecess", "least", 5 / 16, {}], // [5]
  ["guard height", "R312.1.2", "landingGuardHeight", "least", 36, WITH_GUARD],
  ["guard height stair open side", "R312.1.2", "guardHeight", "least", 34, WITH_GUARD],
];

describe("a limit passes at the boundary and 1/64 in inside it, and fails 1/64 in outside", () => {
  test.each(SIDED)("%s, %s: %s at %s %d in", (item, clause, fact, side, limit, context) => {
    const inward = side === "least" ? SIXTY_FOURTH : -SIXTY_FOURTH;
    const at = (value: number) => rowOf(item, { ...context, [fact]: inches(value) });
    expect(at(limit)).toMatchObject({ verdict: "pass", margin: 0, given: limit, clause });
    expect(at(limit + inward)).toMatchObject({ verdict: "pass", margin: SIXTY_FOURTH });
    expect(at(limit - inward)).toMatchObject({ verdict: "fail", margin: -SIXTY_FOURTH });
  });
});

const SPHERES: readonly [item: string, clause: string, fact: MeasuredFact, ball: number, context: CodeFacts][] = [
  ["open riser opening", "R311.7.5.1", "openRiserGap", 4, { openRiserHeight: inches(31) }], // [1]
  ["guard opening", "R312.1.3", "landingGuardGap", 4, WITH_GUARD], // [6]
  ["guard opening stair side", "R312.1.3", "guardGap", 4 + 3 / 8, WITH_GUARD], // [6]
  ["guard opening stair triangle", "R312.1.3", "triangleGap", 6, WITH_GUARD], // [6]
];

describe("an opening keeps the ball out when smaller, lets it through when larger, and is for a person to judge when equal", () => {
  test.each(SPHERES)("%s, %s: %s and a ball of %d in", (item, clause, fact, ball, context) => {
    const at = (value: number) => rowOf(item, { ...context, [fact]: inches(value) });
    expect(at(ball - SIXTY_FOURTH)).toMatchObject({ verdict: "pass", margin: SIXTY_FOURTH, clause });
    expect(at(ball)).toMatchObject({ verdict: "judge", margin: 0 });
    expect(at(ball).note).toContain("gap equals the limit; make it smaller");
    expect(at(ball + SIXTY_FOURTH)).toMatchObject({ verdict: "fail", margin: -SIXTY_FOURTH });
  });
});

// IRC 2021 R311.7.5.1, R311.7.5.2 and R311.7.5.3 print 3/8 in for all three; for the nosing the source is [4].
const UNIFORM: readonly [item: string, clause: string, column: "rise" | "run" | "nosing", low: number][] = [
  ["riser uniformity", "R311.7.5.1", "rise", 7.25],
  ["tread uniformity", "R311.7.5.2", "run", 10],
  ["nosing projection uniformity", "R311.7.5.3", "nosing", 0.75],
];

describe("steps may be 3/8 in apart and not 1/64 in more", () => {
  test.each(UNIFORM)("%s, %s", (item, clause, column, low) => {
    const apart = (spread: number) => rowOf(item, {}, flight(column, [low, low + spread / 2, low + spread]));
    expect(apart(3 / 8)).toMatchObject({ verdict: "pass", given: 3 / 8, limit: 3 / 8, margin: 0, clause });
    expect(apart(3 / 8 - SIXTY_FOURTH)).toMatchObject({ verdict: "pass", margin: SIXTY_FOURTH });
    expect(apart(3 / 8 + SIXTY_FOURTH)).toMatchObject({ verdict: "fail", margin: -SIXTY_FOURTH });
  });

  test.each(UNIFORM)("%s, %s is never told by a drawing, nor by a single step", (item, _clause, column, low) => {
    const design = { riserHeight: inches(7.5), treadDepth: inches(10), nosing: inches(1), totalRise: inches(105), risers: 14 };
    expect(rowOf(item, design)).toMatchObject({ verdict: "not given", given: "", margin: "" });
    expect(rowOf(item, design, flight(column, [low]))).toMatchObject({ verdict: "not given" });
  });
});

test("winder depth is measured exactly 12 in from the narrow side (R311.7.4)", () => {
  const at = (value: number) => rowOf("walkline offset", { winders: 3, walkline: inches(value) });
  expect(at(12)).toMatchObject({ verdict: "pass", margin: 0, clause: "R311.7.4" });
  expect(at(12 + SIXTY_FOURTH)).toMatchObject({ verdict: "fail", margin: -SIXTY_FOURTH });
  expect(at(12 - SIXTY_FOURTH)).toMatchObject({ verdict: "fail", margin: -SIXTY_FOURTH });
});

test("a closed riser may lean in 30 degrees (R311.7.5.1), and one that is plumb is not asked", () => {
  const at = (riserSlope: number) => rowOf("riser slope from vertical", { riserSlope });
  expect(at(30)).toMatchObject({ verdict: "pass", margin: 0, clause: "R311.7.5.1" });
  expect(at(30.1)).toMatchObject({ verdict: "fail" });
  expect(at(29.9)).toMatchObject({ verdict: "pass" });
  expect(rowOf("riser slope from vertical", {})).toMatchObject({ verdict: "does not apply" });
});

test("treads and landings slope at most 1:48 (R311.7.7), which is more than the 2 percent printed beside it", () => {
  const at = (treadSlope: number) => rowOf("walking surface slope", { treadSlope }).verdict;
  expect(at(1 / 48)).toBe("pass");
  expect(at(0.0208)).toBe("pass");
  // 1/64 in more in 48 in: (1 + 1/64)/48.
  expect(at((1 + SIXTY_FOURTH) / 48)).toBe("fail");
  expect(rowOf("walking surface slope", { treadSlope: 0.01, landingSlope: 0.03 })).toMatchObject({
    verdict: "fail",
    given: 0.03,
    clause: "R311.7.7",
  });
});

test("four risers need a handrail and three do not (R311.7.8)", () => {
  const at = (risers: number, facts: CodeFacts = {}) => rowOf("handrail required risers", { risers, ...facts });
  expect(at(3, { handrails: "none" })).toMatchObject({ verdict: "does not apply", clause: "R311.7.8" });
  expect(at(4, { handrails: "none" })).toMatchObject({ verdict: "fail" });
  expect(at(4, { handrails: "one" })).toMatchObject({ verdict: "pass" });
  expect(at(4)).toMatchObject({ verdict: "not given" });
  expect(at(4).note).toContain("handrails");
});

test("a drop of 30 in exactly needs no guard, 1/64 in more does (R312.1.1)", () => {
  const at = (fallHeight: number, facts: CodeFacts = {}) => rowOf("guard required drop", { fallHeight: inches(fallHeight), ...facts });
  expect(at(30, { guard: "no" })).toMatchObject({ verdict: "does not apply", limit: "more than 30", clause: "R312.1.1" });
  expect(at(30, { guard: "no" }).note).toMatch(/guard .* required only for .*more than 30 in/);
  expect(at(30 + SIXTY_FOURTH, { guard: "no" })).toMatchObject({ verdict: "fail" });
  expect(at(30 + SIXTY_FOURTH, { guardHeight: inches(30) })).toMatchObject({ verdict: "pass" });
  expect(at(30 + SIXTY_FOURTH)).toMatchObject({ verdict: "not given" });
  expect(rowOf("guard height stair open side", { fallHeight: inches(30), guardHeight: inches(20) })).toMatchObject({
    verdict: "does not apply",
  });
});

test("a tread of 11 in needs no nosing, 1/64 in less does (R311.7.5.3)", () => {
  const at = (depth: number) => rowsOf({ treadDepth: inches(depth), nosing: inches(0) });
  const verdict = (depth: number, item: string) => at(depth).find((row) => row.item === item)?.verdict;
  expect(verdict(11, "nosing exempt tread depth")).toBe("pass");
  expect(verdict(11, "nosing projection")).toBe("does not apply");
  expect(verdict(11 - SIXTY_FOURTH, "nosing exempt tread depth")).toBe("does not apply");
  expect(verdict(11 - SIXTY_FOURTH, "nosing projection")).toBe("fail");
  expect(verdict(11 + SIXTY_FOURTH, "nosing projection")).toBe("does not apply");
});

describe("boundary cases worked out from the limits by hand", () => {
  test("a riser of 7 7/8 in fails, 1/8 in over", () => {
    expect(rowOf("riser height", { riserHeight: inches(7.875) })).toMatchObject({ verdict: "fail", margin: -0.125 });
  });

  test("a flight from 7 3/8 to 7 3/4 in, exactly 3/8 apart, passes", () => {
    expect(rowOf("riser uniformity", {}, flight("rise", [7.375, 7.5, 7.75]))).toMatchObject({ verdict: "pass", given: 0.375, margin: 0 });
  });

  test("fourteen risers of 7 1/2 and a top one of 7 1/16 in fail by 1/16, and the top one is named", () => {
    const row = rowOf("riser uniformity", {}, flight("rise", [...Array<number>(14).fill(7.5), 7.0625]));
    expect(row).toMatchObject({ verdict: "fail", given: 0.4375, margin: -0.0625 });
    expect(row.note).toContain("worst is step 15");
  });

  test("fourteen measured steps are fourteen, and the value of the design is named beside them", () => {
    const steps = flight("rise", [...Array<number>(13).fill(7.5), 7.625]);
    expect(rowOf("riser height", { riserHeight: inches(7.5) }, steps).note).toContain("worst is step 14, of 14 steps and the design value");
    expect(rowOf("riser height", { riserHeight: inches(7.6875) }, steps).note).toContain(
      "worst is the design value, of 14 steps and the design value",
    );
    expect(rowOf("riser height", {}, steps).note).toContain("worst is step 14, of 14 readings");
  });

  test("an 11 in tread without a nosing is not required to have one", () => {
    expect(rowOf("nosing projection", { treadDepth: inches(11), nosing: inches(0) }).verdict).toBe("does not apply");
  });

  test("a 10 15/16 in tread without a nosing fails", () => {
    expect(rowOf("nosing projection", { treadDepth: inches(10.9375), nosing: inches(0) })).toMatchObject({
      verdict: "fail",
      margin: -0.75,
    });
  });

  test("a flight that rises exactly 151 in passes", () => {
    expect(rowOf("flight vertical rise", { totalRise: inches(151) })).toMatchObject({ verdict: "pass", margin: 0 });
  });

  test("a 7 1/2 in riser on a 10 1/2 in tread passes", () => {
    const rows = rowsOf({ riserHeight: inches(7.5), treadDepth: inches(10.5) });
    const verdicts = rows.filter(({ item }) => item === "riser height" || item === "tread depth").map(({ verdict }) => verdict);
    expect(verdicts).toEqual(["pass", "pass"]);
  });
});

describe("limits are held in the unit they are published in, exactly", () => {
  test("7 3/4 in is 196.85 mm and passes, though 196 mm is printed beside it; 197 mm is over", () => {
    const row = rowOf("riser height", { unit: "mm", riserHeight: millimetres("196.85") });
    expect(row).toMatchObject({ verdict: "pass", given: 7.75, limit: 7.75, margin: 0, unit: "in" });
    expect(row.note).toContain("rounded 196 mm");
    expect(row.note).toContain("in inches");
    expect(rowOf("riser height", { unit: "mm", riserHeight: millimetres(197) }).verdict).toBe("fail");
  });

  test("31 1/2 in is decided in inches: 790 mm (31.1 in) is over the 787 mm printed and still fails", () => {
    const row = rowOf("clear width at handrail one side", { unit: "mm", handrails: "one", widthAtHandrails: millimetres(790) });
    expect(row.verdict).toBe("fail");
    expect(row.note).toContain("rounded 787 mm");
  });

  test("27 in is 685.8 mm: 690 mm passes, though 698 mm is printed", () => {
    expect(rowOf("clear width at handrail two sides", { handrails: "both", widthAtHandrails: millimetres(690) }).verdict).toBe("pass");
  });

  test("a riser that a sheet adds up out of tenths to a hair over 7 3/4 in passes", () => {
    const added = 1.6 + 1.6 + 1.6 + 2.95;
    expect(added).toBeGreaterThan(7.75);
    expect(rowOf("riser height", { riserHeight: inches(added) })).toMatchObject({ verdict: "pass", margin: 0 });
  });

  test("a total of 155 times 0.7 in, with dust beyond 15 digits, over 14 risers is 7 3/4 in", () => {
    const total = Array<number>(155).fill(0.7).reduce((sum, each) => sum + each, 0);
    expect(total).toBeGreaterThan(108.5);
    expect(rowOf("riser height", { riserHeight: inches(total).div(14) })).toMatchObject({ verdict: "pass", given: 7.75, margin: 0 });
  });

  test("a thirteenth of a total that does not come out even is held exactly: 100 3/4 / 13 is 7 3/4, a hair more is not", () => {
    expect(rowOf("riser height", { riserHeight: inches(100.75).div(13) })).toMatchObject({ verdict: "pass", margin: 0 });
    expect(rowOf("riser height", { riserHeight: inches("100.7500000001").div(13) }).verdict).toBe("fail");
  });

  test("a board 11 1/4 in deep is no tread depth: the run is what is held", () => {
    // Run 9 1/2 + nosing 1 1/4 + what lies under the riser: the code measures nosing to nosing.
    expect(rowOf("tread depth", { treadDepth: inches(9.5), nosing: inches(1.25) })).toMatchObject({
      verdict: "fail",
      given: 9.5,
      margin: -0.5,
    });
  });
});

describe("measured steps", () => {
  test("the worst step decides, and is named", () => {
    const row = rowOf("riser height", { riserHeight: inches(7.5) }, flight("rise", [7.5, 7.8125, 7.625]));
    expect(row).toMatchObject({ verdict: "fail", given: 7.8125, margin: -0.0625 });
    expect(row.note).toContain("step 2");
  });

  test("a design worse than every step decides, and is named", () => {
    const row = rowOf("tread depth", { treadDepth: inches(9.75) }, flight("run", [10, 10.125]));
    expect(row).toMatchObject({ verdict: "fail", given: 9.75 });
    expect(row.note).toContain("the design value");
  });

  test("steps alone are enough", () => {
    expect(rowOf("clear width above handrail", {}, flight("width", [36.5, 36, 37]))).toMatchObject({ verdict: "pass", given: 36 });
  });

  test("one shallow step among deep ones brings the need of a nosing back", () => {
    const steps = [{ step: 1, run: inches(11) }, { step: 2, run: inches(10.5) }];
    expect(rowOf("nosing projection", { treadDepth: inches(11), nosing: inches(0.25) }, steps).verdict).toBe("fail");
  });

  test("treads of unlike depth in a flight with winders are for a person to judge", () => {
    const steps = flight("run", [10, 10, 10.5]);
    expect(rowOf("tread uniformity", {}, steps).verdict).toBe("fail");
    expect(rowOf("tread uniformity", { winders: 3 }, steps).verdict).toBe("judge");
  });

  test("a step keeps the name it has in the table", () => {
    const steps = [{ step: "top", rise: inches(8) }, { step: "foot", rise: inches(7) }, { step: "second", rise: inches(7) }];
    expect(rowOf("riser uniformity", {}, steps).note).toContain("worst is top");
  });
});

describe("conditions and exceptions", () => {
  test("a guard too low is a failure only where a guard is required; without the drop that is for a person to judge", () => {
    const facts = { guardHeight: inches(33) };
    expect(rowOf("guard height stair open side", facts)).toMatchObject({ verdict: "judge", margin: -1 });
    expect(rowOf("guard height stair open side", facts).note).toContain("give fall height");
    expect(rowOf("guard height stair open side", { ...facts, fallHeight: inches(48) }).verdict).toBe("fail");
    expect(rowOf("guard height stair open side", { guardHeight: inches(35) }).verdict).toBe("pass");
  });

  test("a guard whose top is the handrail keeps to 34 to 38 in (R312.1.2)", () => {
    const facts = { guardHeight: inches(39), fallHeight: inches(48) };
    expect(rowOf("guard height stair open side", facts).verdict).toBe("pass");
    expect(rowOf("guard height stair open side", { ...facts, guardIsHandrail: "yes" })).toMatchObject({
      verdict: "fail",
      limit: "34 to 38",
      margin: -1,
    });
  });

  test("an open riser is limited only above 30 in, and exactly 30 in is not above (R311.7.5.1)", () => {
    const at = (height: number) => rowOf("open riser opening", { openRiserGap: inches(6), openRiserHeight: inches(height) }).verdict;
    expect(at(30)).toBe("does not apply");
    expect(at(30 + SIXTY_FOURTH)).toBe("fail");
    expect(rowOf("open riser opening", { openRiserGap: inches(6) }).verdict).toBe("judge");
    expect(rowOf("open riser opening", {}).verdict).toBe("does not apply");
  });

  // The exceptions for the edge of an opening, drainage and a passing nosing stand in the text of 2021 too.
  test("what only the 2024 text was seen to excuse is for a person to judge, never a pass", () => {
    const low = { headroom: inches(79) };
    expect(rowOf("headroom", low).verdict).toBe("fail");
    expect(rowOf("headroom", { ...low, openingOverlap: inches(4.75) }).verdict).toBe("does not apply");
    expect(rowOf("headroom", { ...low, openingOverlap: inches(5) }).verdict).toBe("fail");
    expect(rowOf("nosing projection", { treadDepth: inches(10), nosing: inches(2), openRisers: "yes" }).verdict).toBe("judge");
    expect(rowOf("landing depth straight run", { landing: "exterior door", landingDepth: inches(20) }).verdict).toBe("judge");
    expect(rowOf("walking surface slope", { landingSlope: 0.05, landingDrains: "yes" }).verdict).toBe("pass");
    expect(rowOf("handrail projection each side", { handrailProjection: inches(6), handrailPassesNosing: "yes" }).verdict).toBe("pass");
  });

  test("a handrail measured at a volute or fitting may leave the range", () => {
    // IRC R311.7.8.1, exceptions: a volute, turnout or starting easing over the lowest tread, and fittings at transitions.
    expect(rowOf("handrail height", { handrailHeight: inches(40), handrailFitting: "yes" }).verdict).toBe("does not apply");
    expect(rowOf("handrail height", { handrailHeight: inches(40) }).verdict).toBe("fail");
  });

  test("a landing with a turn on it has no least depth in the direction of travel", () => {
    expect(rowOf("landing depth straight run", { landing: "turn", landingDepth: inches(30) }).verdict).toBe("does not apply");
  });

  test("rows about handrails and winders do not apply where there are none", () => {
    const rows = rowsOf({ handrails: "none", risers: 3 });
    const verdict = (item: string) => rows.find((row) => row.item === item)?.verdict;
    expect(
      ["handrail height", "handrail wall clearance", "handrail grip type1 diameter", "winder tread depth walkline", "walkline offset"].map(
        verdict,
      ),
    ).toEqual(Array(5).fill("does not apply"));
  });

  test("a rail that is not round is held by perimeter and cross section, one with recesses by its recess", () => {
    const verdicts = (facts: CodeFacts) =>
      rowsOf(facts).filter(({ item }) => item.startsWith("handrail grip")).map(({ verdict }) => verdict);
    expect(verdicts({ grip: inches(1.5) })).toEqual(["pass", "does not apply", "does not apply", "does not apply"]);
    expect(verdicts({ gripPerimeter: inches(6), gripCrossSection: inches(2.25) })).toEqual([
      "does not apply",
      "pass",
      "pass",
      "does not apply",
    ]);
    expect(verdicts({ gripPerimeter: inches(7), gripRecess: inches(0.3125) })).toEqual([
      "does not apply",
      "does not apply",
      "does not apply",
      "pass",
    ]);
  });
});

/** What is not checked, what is assumed, the counts, the code and the caution. */
const LAST_ROWS = 6;

describe("the table as a whole", () => {
  test("a stair of which nothing is known passes nothing and fails nothing", () => {
    const verdicts = new Set(rowsOf({}).map(({ verdict }) => verdict));
    expect([...verdicts].sort()).toEqual(["", "does not apply", "not given"]);
  });

  test("every limit has a row of its own with clause and source status, in the order of the code", () => {
    const rows = rowsOf({});
    expect(rows.slice(0, -LAST_ROWS).map(({ item }) => item)).toEqual(irc2021.limits.map(({ item }) => item));
    expect(rows.slice(0, -LAST_ROWS).every(({ clause, sourceStatus }) => clause !== "" && sourceStatus !== "")).toBe(true);
  });

  test("the last rows say what is not checked and what a check is worth", () => {
    const [before, assumed, toEnter, counts, code, last] = rowsOf({}).slice(-LAST_ROWS);
    expect(counts?.note.replace(/(not given|does not apply) \d+/g, "$1 some")).toBe(
      "fail 0; judge 0; assumed: would fail 0; not on file 0; not given some; caution 0; " +
        "assumed: would pass 0; pass 0; no limit 0; does not apply some",
    );
    expect(code?.note).toBe("irc-2021: International Residential Code, 2021");
    expect(before).toMatchObject({ item: "not checked", verdict: "" });
    expect(before?.note).toContain("spiral stair");
    expect(before?.note).toContain("live load");
    expect(assumed).toMatchObject({ item: "assumed", verdict: "" });
    expect(toEnter).toMatchObject({ item: "labels to enter", verdict: "" });
    expect(last).toMatchObject({ item: "caution", verdict: "" });
    expect(last?.note).toBe(
      "This is arithmetic, not approval. Follow your local code and building official. Ask a licensed engineer about anything " +
        "that carries load.",
    );
  });

  test("every limit of the code is tried at its boundary in this file", () => {
    const tried = [
      ...SIDED.map(([item]) => item), ...SPHERES.map(([item]) => item), ...UNIFORM.map(([item]) => item),
      "walkline offset", "riser slope from vertical", "walking surface slope", "handrail required risers", "guard required drop",
      "nosing exempt tread depth",
    ];
    expect([...new Set(tried)].sort()).toEqual(irc2021.limits.map(({ item }) => item).sort());
  });
});

const mm = (value: string) => figure(value, "mm");

describe("the kinds of limit other codes have", () => {
  test("neighbours may be 5 mm apart though the flight is 9 mm apart", () => {
    const rule = { comparator: "uniformity", of: "rise", within: "neighbours", tolerance: mm("5") } as const;
    const code = codeOf(limitOf({ item: "adjacent", unit: "mm", rule }));
    const steps = (values: number[]) => values.map((value, index) => ({ step: index + 1, rise: millimetres(value) }));
    expect(rowOf("adjacent", {}, steps([180, 185, 189]), [], code)).toMatchObject({ verdict: "pass", given: 5, margin: 0 });
    const drift = rowOf("adjacent", {}, steps([180, 184, 190]), [], code);
    expect(drift).toMatchObject({ verdict: "fail", given: 6, margin: -1 });
    expect(drift.note).toMatch(/step 2 .*and step 3/);
  });

  test("steps may be compared with the design value", () => {
    const rule = { comparator: "uniformity", of: "run", within: "design", tolerance: mm("5") } as const;
    const code = codeOf(limitOf({ item: "deviation", unit: "mm", rule }));
    const steps = [{ step: 1, run: millimetres(285) }, { step: 2, run: millimetres(274) }];
    expect(rowOf("deviation", { treadDepth: millimetres(280) }, steps, [], code)).toMatchObject({ verdict: "fail", given: 6 });
    expect(rowOf("deviation", {}, steps, [], code)).toMatchObject({ verdict: "not given" });
  });

  test("an advisory limit cautions and never fails", () => {
    const rule = { comparator: "range", of: { formula: "two risers plus run" }, min: figure("24", "in"), max: figure("25", "in") } as const;
    const code = codeOf(limitOf({ item: "rule of thumb", unit: "in", rule, advisory: true }));
    // 2 x 7 1/2 + 10 = 25; 2 x 7 3/4 + 10 = 25 1/2.
    expect(rowOf("rule of thumb", { riserHeight: inches(7.5), treadDepth: inches(10) }, [], [], code)).toMatchObject({
      verdict: "pass",
      given: 25,
      margin: 0,
    });
    expect(rowOf("rule of thumb", { riserHeight: inches(7.75), treadDepth: inches(10) }, [], [], code)).toMatchObject({
      verdict: "caution",
      margin: -0.5,
    });
  });

  test("pitch is worked out of rise and run: equal rise and run are 45 degrees exactly", () => {
    const rule = { comparator: "max", of: { formula: "pitch" }, max: figure("45", "deg") } as const;
    const code = codeOf(limitOf({ item: "pitch", unit: "deg", rule }));
    const at = (rise: number, run: number) =>
      rowOf("pitch", { riserHeight: millimetres(rise), treadDepth: millimetres(run) }, [], [], code);
    expect(at(220, 220)).toMatchObject({ verdict: "pass", given: 45, margin: 0 });
    expect(at(221, 220).verdict).toBe("fail");
  });

  test("riser times run is an area in square inches", () => {
    const rule = {
      comparator: "range",
      of: { formula: "riser times run" },
      min: figure("70", "sq in"),
      max: figure("75", "sq in"),
    } as const;
    const code = codeOf(limitOf({ item: "area", unit: "sq in", rule }));
    // 7 1/2 x 10 = 75.
    expect(rowOf("area", { riserHeight: inches(7.5), treadDepth: inches(10) }, [], [], code)).toMatchObject({
      verdict: "pass",
      given: 75,
      margin: 0,
    });
  });

  test("one of several figures, what is not permitted, steps that are only to be alike, and what is only shown", () => {
    const code = codeOf(
      limitOf({ item: "turn", unit: "mm", rule: { comparator: "equals", of: "walkline", values: [mm("270"), mm("300")] } }),
      limitOf({
        item: "open riser",
        unit: "count",
        rule: { comparator: "prohibited", thing: "open risers are", present: { fact: "openRisers", is: ["yes"] } },
      }),
      limitOf({ item: "uniform", unit: "mm", rule: { comparator: "alike", of: ["rise"], sense: "uniform in height" } }),
      limitOf({ item: "width", unit: "count", rule: { comparator: "shown", text: "no least width" } }),
      limitOf({
        item: "use",
        unit: "mm",
        rule: { comparator: "max", of: "riserHeight", max: mm("190") },
        applies: [{ when: { fact: "use", is: ["public"] }, words: "the stair is public" }],
      }),
    );
    const verdicts = (facts: CodeFacts) => rowsOf(facts, [], [], code).slice(0, code.limits.length).map(({ verdict }) => verdict);
    expect(verdicts({ walkline: millimetres(300), openRisers: "no", riserHeight: millimetres(191) })).toEqual([
      "pass",
      "pass",
      "not given",
      "",
      "judge",
    ]);
    expect(verdicts({ walkline: millimetres(290), openRisers: "yes", riserHeight: millimetres(190) })).toEqual([
      "fail",
      "fail",
      "not given",
      "",
      "pass",
    ]);
    expect(verdicts({})).toEqual(["not given", "not given", "not given", "", "not given"]);
    // A code that gives no number for how alike steps are is for a person once there are steps.
    expect(rowOf("uniform", {}, flight("rise", [7.5, 7.75]), [], code).verdict).toBe("judge");
  });
});
