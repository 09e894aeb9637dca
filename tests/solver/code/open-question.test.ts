import type { CheckRow } from "../../../src/solver/code/check";
import { type CodeFacts, FACT_LABELS, type FactName } from "../../../src/solver/code/fact-labels";
import { answeredAsTaken, openQuestions, waysToAnswer } from "../../../src/solver/code/open-question";
import { PROFILES } from "../../../src/solver/code/profiles";
import { choices } from "../../../src/solver/layout/choices";
import { isProblem } from "../../../src/solver/problem";
import { inches, millimetres, profileOf, rowsAsTyped } from "./stair-check";

const CODES = PROFILES.map(({ id }) => id);

const asTyped = (id: string, item: string, facts: CodeFacts): CheckRow => {
  const found = rowsAsTyped(facts, [], [], profileOf(id)).find((one) => one.item === item);
  if (found === undefined) throw new Error(item);
  return found;
};

/** Sizes of a stair with a handrail and a guard, and no word about the building: 7 3/4 by 10, as the IRC has it. */
const SIZES: CodeFacts = {
  unit: "in",
  totalRise: inches(108.5),
  risers: 14,
  stairRisers: 14,
  riserHeight: inches(7.75),
  treadDepth: inches(10),
  nosing: inches(1),
  headroom: inches(80),
  width: inches(36),
  clearWidth: inches(36),
  handrails: "one",
  handrailHeight: inches(36),
  fallHeight: inches(100),
  guard: "yes",
  guardHeight: inches(36),
  guardGap: inches(3.5),
};

describe("an answer nobody gave neither passes nor fails a stair", () => {
  // NBC 2020 Tables 9.8.4.1. and 9.8.4.2.: private 125 to 200 mm of riser and 255 to 355 of run, public 125 to 180 and 280. By hand 7 3/4
  // in is 196.85 mm.
  test("Canada without use: what a private stair passes and a public one fails is assumed, with the label to give", () => {
    const row = asTyped("nbc-ca-2020", "riser height", SIZES);
    expect(row).toMatchObject({ verdict: "assumed: would pass", given: 196.85, limit: "125 to 200" });
    expect(row.note).toContain("assumes use private; enter use to change");
    const other = asTyped("nbc-ca-2020", "riser height public", SIZES);
    expect(other).toMatchObject({ verdict: "assumed: would fail", given: 196.85, limit: "125 to 180" });
    expect(other.note).toContain("only where the stair is public; enter use to decide");
    expect([
      asTyped("nbc-ca-2020", "riser height", { ...SIZES, use: "private" }).verdict,
      asTyped("nbc-ca-2020", "riser height public", { ...SIZES, use: "private" }).verdict,
    ]).toEqual(["pass", "does not apply"]);
    expect([
      asTyped("nbc-ca-2020", "riser height", { ...SIZES, use: "public" }).verdict,
      asTyped("nbc-ca-2020", "riser height public", { ...SIZES, use: "public" }).verdict,
    ]).toEqual(["does not apply", "fail"]);
  });

  // ADA 504.2: risers of 4 to 7 in, of stairs that are part of a required way out.
  test("ADA without egress", () => {
    expect(asTyped("ada-2010", "riser height", SIZES)).toMatchObject({ verdict: "assumed: would fail", limit: "4 to 7" });
    expect(asTyped("ada-2010", "riser height", SIZES).note).toContain("assumes egress yes; enter egress to change");
    expect(asTyped("ada-2010", "riser height", { ...SIZES, egress: "yes" }).verdict).toBe("fail");
    expect(asTyped("ada-2010", "riser height", { ...SIZES, egress: "no" }).verdict).toBe("does not apply");
  });

  // IBC 1011.5.2: 7 in and 11 in, in a dwelling 7 3/4 and 10 (Exc. 3); 1011.3: 80 in of headroom in either.
  test("IBC without dwelling: what no answer changes stays pass or fail", () => {
    const verdicts = (facts: CodeFacts) =>
      ["riser height", "tread depth", "riser height dwelling", "tread depth dwelling", "headroom", "flight vertical rise"].map(
        (item) => asTyped("ibc-2021", item, facts).verdict,
      );
    expect(verdicts(SIZES)).toEqual([
      "assumed: would fail",
      "assumed: would fail",
      "assumed: would pass",
      "assumed: would pass",
      "pass",
      "pass",
    ]);
    expect(verdicts({ ...SIZES, headroom: inches(79) })[4]).toBe("fail");
    expect(verdicts({ ...SIZES, dwelling: "yes" })).toEqual(["pass", "does not apply", "pass", "pass", "pass", "pass"]);
  });

  // Approved Document K: 2000 mm of headroom, in a loft conversion with little room 1900 mm at the centre.
  test("an exception nobody claimed leaves what it would excuse assumed, and what it would not a failure", () => {
    const at = (headroom: number, facts: CodeFacts = {}) =>
      asTyped("uk-adk-private", "headroom", { headroom: millimetres(headroom), ...facts }).verdict;
    expect([at(2000), at(1999), at(1900), at(1899), at(1950, { loft: "no" }), at(1950, { loft: "yes" })]).toEqual([
      "pass", "assumed: would fail", "assumed: would fail", "fail", "fail", "pass",
    ]);
  });

  // NBC 2020 9.8.7.1.: from three risers of one dwelling indoors, four outdoors.
  test("two questions at once: each that matters is named", () => {
    const row = asTyped("nbc-ca-2020", "handrail required risers", { risers: 3, stairRisers: 3, handrails: "none", use: "private" });
    expect(row.verdict).toBe("assumed: would fail");
    expect(row.note).toContain("assumes outside no; enter outside to change");
    expect(
      asTyped("nbc-ca-2020", "handrail required risers", { risers: 4, stairRisers: 4, handrails: "none", use: "private" }).verdict,
    ).toBe("fail");
  });

  test.each(["irc-2018", "irc-2021", "irc-2024", "ibc-2018", "ibc-2021", "uk-adk-private", "au-ncc-2022-class1"])(
    "%s: risers nobody called open or closed are not given",
    (id) => {
      const row = asTyped(id, "open riser opening", SIZES);
      expect([row.verdict, row.given]).toEqual(["not given", ""]);
      expect(row.note).toContain("enter open risers");
      expect(asTyped(id, "open riser opening", { ...SIZES, openRisers: "no" }).verdict).toBe("does not apply");
    },
  );

  test("ADA forbids open risers, and does not know of these either", () => {
    expect(asTyped("ada-2010", "open riser", SIZES)).toMatchObject({ verdict: "not given", given: "" });
    expect(asTyped("ada-2010", "open riser", { ...SIZES, openRisers: "no", egress: "yes" }).verdict).toBe("pass");
  });

  test("a stair without winders has none unless the table says so, and the kind of stair is the usual one", () => {
    for (const item of ["winder tread depth walkline", "winder tread depth any point", "walkline offset"])
      expect(asTyped("irc-2021", item, SIZES).verdict).toBe("does not apply");
    expect(asTyped("irc-2021", "riser height", SIZES).verdict).toBe("pass");
    expect(asTyped("irc-2021", "assumed", SIZES).note).toContain("stair kind standard, without winders");
    expect(asTyped("irc-2021", "assumed", SIZES).note).toContain("open risers no");
    const said: CodeFacts = { ...SIZES, openRisers: "no", landing: "turn", stairKind: "standard" };
    expect(rowsAsTyped(said).some(({ item }) => item === "assumed")).toBe(false);
  });
});

/** Plain verdicts, which nothing assumed may decide. */
const DECIDED: readonly string[] = ["pass", "fail", "does not apply"];

describe("every code", () => {
  test.each(CODES)("%s: pass, fail and does not apply stand whatever the open questions are answered", (id) => {
    const { limits } = profileOf(id);
    for (const facts of [
      SIZES,
      {},
      {
        ...SIZES,
        riserHeight: inches(7),
        treadDepth: inches(11),
        handrails: "both",
        openRiserGap: inches(3),
        openRiserHeight: inches(40),
      } as const,
    ]) {
      const rows = rowsAsTyped(facts, [], [], profileOf(id));
      for (const limit of limits) {
        const verdict = rows.find(({ item }) => item === limit.item)?.verdict ?? "";
        const questions = openQuestions(limit, facts);
        if (!DECIDED.includes(verdict) || questions.length === 0) continue;
        for (const answers of waysToAnswer(questions)) {
          expect([limit.item, answers, asTyped(id, limit.item, { ...facts, ...answers }).verdict]).toEqual([limit.item, answers, verdict]);
        }
      }
    }
  });

  test.each(CODES)("%s: an assumed verdict becomes the plain one once the answer that was assumed is typed", (id) => {
    const answered = answeredAsTaken(profileOf(id).limits, SIZES);
    for (const { item, verdict, note } of rowsAsTyped(SIZES, [], [], profileOf(id)).filter(
      (row) => row.note.includes("; enter ") && row.verdict.startsWith("assumed"),
    )) {
      const plain = note.includes("to decide") ? "does not apply" : verdict.replace("assumed: would ", "");
      expect([item, asTyped(id, item, answered).verdict]).toEqual([item, plain]);
    }
  });

  test.each(CODES)("%s takes one answer to one question as so", (id) => {
    const questions = profileOf(id).limits.flatMap((limit) => openQuestions(limit, {}));
    const taken = new Map<FactName, string>();
    for (const { fact, taken: answer } of questions) {
      expect([fact, FACT_LABELS[fact].choices?.includes(answer)]).toEqual([fact, true]);
      expect([fact, taken.get(fact) ?? answer]).toEqual([fact, answer]);
      taken.set(fact, answer);
    }
  });
});

describe("workable numbers of risers", () => {
  const verdicts = (id: string, totalRise: number, run: number) => {
    const found = choices(inches(totalRise), inches(run), profileOf(id), "in");
    if (isProblem(found)) throw new Error(found.problem);
    return found.map(({ risers, verdict, note }) => [risers, verdict, note] as const);
  };

  // By hand: 30 over 4, 5 and 6 risers; 33 over 3, 4 and 5 treads is 11, 8 1/4 and 6.6. IBC 1011.5.2: riser at most 7, tread at least 11;
  // in a dwelling 7 3/4 and 10.
  test("a choice that another kind of building would change is assumed, one that none would change is not", () => {
    expect(verdicts("ibc-2021", 30, 33).map(([risers, verdict]) => [risers, verdict])).toEqual([
      [4, "assumed: would fail"],
      [5, "assumed: would fail"],
      [6, "assumed: would fail"],
    ]);
    expect(verdicts("irc-2021", 30, 33).map(([risers, verdict]) => [risers, verdict])).toEqual([[4, "pass"], [5, "fail"], [6, "fail"]]);
    for (const [, , note] of verdicts("ibc-2021", 30, 33)) expect(note).toContain("assumes dwelling no");
  });
});
