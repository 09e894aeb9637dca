import type { CodeFacts, Step } from "../../../src/solver/code/fact-labels";
import { limitInForce } from "../../../src/solver/code/limit-in-force";
import { profileCounts } from "../../../src/solver/code/profile-counts";
import { PROFILES } from "../../../src/solver/code/profiles";
import { COUNTED } from "./counted-by-hand";
import { flight, inches, millimetres, profileOf, row, rowOf, rowsOf, verdict } from "./stair-check";

const mm = millimetres;
const rises = (...values: number[]): Step[] => values.map((value, index) => ({ step: index + 1, rise: mm(value) }));
const runs = (...values: number[]): Step[] => values.map((value, index) => ({ step: index + 1, run: mm(value) }));

describe("uniformity in its four kinds, from measured steps only", () => {
  test("within a flight: IBC 1011.5.4, 3/8 in between the largest and the smallest", () => {
    expect(verdict("ibc-2018", "riser uniformity", {}, flight("rise", [6.625, 7, 6.75]))).toBe("pass");
    expect(row("ibc-2018", "riser uniformity", {}, flight("rise", [6.609375, 7, 6.75]))).toMatchObject({
      verdict: "fail",
      margin: -0.015625,
    });
    // 29 CFR 1926.1052(a)(3): 1/4 in.
    expect(verdict("osha-1926.1052", "riser uniformity", {}, flight("rise", [7, 7.25]))).toBe("pass");
    expect(verdict("osha-1926.1052", "tread uniformity", {}, flight("run", [10, 10.265625]))).toBe("fail");
  });

  test.each([
    ["obc-part9", "run uniformity adjacent", "run uniformity"], ["obc-2024-part9", "run uniformity adjacent", "run uniformity"],
    ["nbc-ca-2015", "run uniformity adjacent", "run uniformity"], ["nbc-ca-2020", "run uniformity adjacent", "run uniformity"],
    ["au-ncc-2022-class1", "going uniformity adjacent", "going uniformity"],
  ])("%s: neighbours 5 mm apart and a flight 10 mm apart, rises and runs alike (9.8.4.4., 11.2.2)", (id, adjacent, whole) => {
    expect(verdict(id, "riser uniformity adjacent", {}, rises(180, 185, 180))).toBe("pass");
    expect(row(id, "riser uniformity adjacent", {}, rises(180, 186, 180))).toMatchObject({ verdict: "fail", given: 6, margin: -1 });
    expect(verdict(id, "riser uniformity", {}, rises(180, 185, 190))).toBe("pass");
    expect(row(id, "riser uniformity", {}, rises(180, 185, 190, 191))).toMatchObject({ verdict: "fail", given: 11, margin: -1 });
    expect(verdict(id, adjacent, {}, runs(255, 260))).toBe("pass");
    expect(verdict(id, adjacent, {}, runs(255, 261))).toBe("fail");
    expect(verdict(id, whole, {}, runs(255, 260, 265))).toBe("pass");
    expect(verdict(id, whole, {}, runs(255, 260, 265, 266))).toBe("fail");
  });

  test("from the design value: DIN 18065 lets a step be 5 mm off, and the bottom riser of a house 15 mm", () => {
    const design = { riserHeight: mm(180), treadDepth: mm(270) };
    expect(verdict("din-18065-general", "riser deviation from nominal", design, rises(175, 185))).toBe("pass");
    expect(row("din-18065-general", "riser deviation from nominal", design, rises(175, 186))).toMatchObject({
      verdict: "fail",
      given: 0.6,
      margin: -0.1,
    });
    expect(verdict("din-18065-general", "riser deviation from nominal", design, runs(270, 264))).toBe("fail");
    expect(verdict("din-18065-dwelling", "first riser deviation", design, rises(165, 180, 160))).toBe("pass");
    expect(verdict("din-18065-dwelling", "first riser deviation", design, rises(164, 180, 180))).toBe("fail");
  });

  test.each(["ada-2010", "osha-1910.25"])(
    "%s gives no figure: a person judges the measured steps, and without them nothing is said",
    (id) => {
      const drawn = row(id, "riser uniformity", { riserHeight: inches(7), treadDepth: inches(11) });
      expect(drawn).toMatchObject({ verdict: "not given" });
      expect(drawn.note).toMatch(/^Needs measured steps: enter the rise.* of two steps or more in the steps table/);
      const measured = row(id, "riser uniformity", {}, flight("rise", [7, 7.25, 7]));
      expect(measured).toMatchObject({ verdict: "judge", given: 0.25 });
      expect(measured.note).toMatch(/uniform.*no figure.*worst is step 2/s);
    },
  );

  test("no drawing ever passes a rule of uniformity, in any code", () => {
    const drawn: CodeFacts = { riserHeight: inches(7), treadDepth: inches(11), nosing: inches(1), totalRise: inches(98), risers: 14 };
    for (const one of PROFILES) {
      const rows = rowsOf(drawn, [], [], one).filter(
        ({ item, clause }) => clause !== "" && /uniformity|deviation/.test(item) && item !== "winder tread turn deviation",
      );
      for (const { item, verdict: found } of rows)
        expect([one.id, item, ["not given", "does not apply"].includes(found)]).toEqual([one.id, item, true]);
    }
  });
});

describe("winders at the code's own point", () => {
  test.each(["irc-2018", "irc-2021", "irc-2024", "ibc-2018"])("%s: 12 in from the narrow side", (id) => {
    expect(verdict(id, "walkline offset", { winders: 3, walkline: inches(12) })).toBe("pass");
    expect(verdict(id, "walkline offset", { winders: 3, walkline: mm(305) })).toBe("fail");
  });

  test(
    "National Building Code of Canada 2020, 9.8.4.3.: 300 mm from the handrail, 150 mm at the narrow end, on tapered treads and " +
      "not on winders",
    () => {
      const tapered: CodeFacts = { turnTreads: "tapered", winderNarrowEnd: mm(150), winderDepth: mm(255), walklineFromHandrail: mm(300) };
      expect(verdict("nbc-ca-2020", "tapered tread measure point", tapered)).toBe("pass");
      expect(verdict("nbc-ca-2020", "tapered tread measure point", { ...tapered, walklineFromHandrail: mm(301) })).toBe("fail");
      expect(verdict("nbc-ca-2020", "tapered tread run narrow end", tapered)).toBe("pass");
      expect(verdict("nbc-ca-2020", "tapered tread run narrow end", { ...tapered, winderNarrowEnd: mm(149) })).toBe("fail");
      expect(verdict("nbc-ca-2020", "tapered tread run narrow end", { ...tapered, winderDepth: mm(254) })).toBe("fail");
      expect(verdict("nbc-ca-2020", "tapered tread run narrow end", { ...tapered, turnTreads: "winders" })).toBe("does not apply");
    },
  );

  test("winders turn exactly 30 or 45 degrees in Canada (2020), anything between in Ontario, and 90 in a set", () => {
    const at = (id: string, winderTurn: number) => verdict(id, "winder tread turn", { winderTurn });
    expect([30, 45, 36, 31].map((turn) => at("nbc-ca-2020", turn))).toEqual(["pass", "pass", "fail", "fail"]);
    for (const id of ["obc-part9", "obc-2024-part9"])
      expect([30, 45, 36, 29, 46].map((turn) => at(id, turn))).toEqual(["pass", "pass", "pass", "fail", "fail"]);
    expect(verdict("obc-part9", "winder set turn", { winderSetTurn: 90 })).toBe("pass");
    expect(verdict("obc-part9", "winder set turn", { winderSetTurn: 91 })).toBe("fail");
  });

  test(
    "Approved Document K: 270 mm in on a flight 1 m wide, the middle of a narrower one; goings " +
      "alike and no less than the straight ones",
    () => {
      const point = (width: number, walkline: number) =>
        verdict("uk-adk-private", "tapered going measure point", { winders: 3, clearWidth: mm(width), walkline: mm(walkline) });
      expect([point(1000, 270), point(1000, 500), point(999, 499.5), point(900, 270)]).toEqual(["pass", "fail", "pass", "fail"]);
      const going = (facts: CodeFacts) =>
        verdict("uk-adk-private", "tapered tread going", { treadDepth: mm(225), winderDepth: mm(225), ...facts });
      expect(going({})).toBe("not given");
      expect(going({ windersAlike: "yes" })).toBe("pass");
      expect(going({ winderSpread: mm(1) })).toBe("fail");
      expect(going({ windersAlike: "yes", winderDepth: mm(224) })).toBe("fail");
    },
  );

  test("Australia, 11.2.2: 400 mm in over 1 m of width, the middle up to it; three winders for a quarter landing, six for a half", () => {
    const point = (width: number, walkline: number) =>
      verdict("au-ncc-2022-class1", "tapered going measure point", { winders: 3, clearWidth: mm(width), walkline: mm(walkline) });
    expect([point(1001, 400), point(1000, 500), point(1000, 400)]).toEqual(["pass", "pass", "fail"]);
    const winders = (count: number, turn: number) =>
      verdict("au-ncc-2022-class1", "winders in place of landing", { winders: count, winderSetTurn: turn });
    expect([winders(3, 90), winders(4, 90), winders(6, 180), winders(7, 180)]).toEqual(["pass", "fail", "pass", "fail"]);
    expect(verdict("au-ncc-2022-class1", "winders in place of landing", { winders: 4 })).toBe("not given");
  });
});

describe("limits that depend on one another or on what the stair is for", () => {
  test("IBC 1011.5.2 Exc. 3 and 1011.2: a dwelling has rows of its own, 36 in of width serve fewer than 50", () => {
    const facts = { riserHeight: inches(7.75), treadDepth: inches(10) };
    expect(verdict("ibc-2018", "riser height", facts)).toBe("fail");
    expect(verdict("ibc-2018", "riser height", { ...facts, dwelling: "yes" })).toBe("pass");
    // The exception changes the greatest riser and the least tread; 4 in stays the least riser.
    expect(row("ibc-2018", "riser height", { riserHeight: inches(3.9375), dwelling: "yes" })).toMatchObject({ verdict: "fail", limit: 4 });
    expect(verdict("ibc-2018", "riser height dwelling", { ...facts, dwelling: "yes" })).toBe("pass");
    expect(verdict("ibc-2018", "tread depth dwelling", facts)).toBe("does not apply");
    expect(verdict("ibc-2018", "stair width", { width: inches(40), occupants: 50 })).toBe("fail");
    expect(verdict("ibc-2018", "stair width", { width: inches(40), occupants: 49 })).toBe("does not apply");
    expect(verdict("ibc-2018", "stair width under 50 occupants", { width: inches(36), occupants: 49 })).toBe("pass");
    expect(verdict("ibc-2018", "stair width", { width: inches(40) })).toBe("judge");
  });

  test.each(["ibc-2018", "ibc-2021"])("%s 1015.3: guards of 42 in, in a low dwelling 36 in and 34 in beside the stair", (id) => {
    const high: CodeFacts = { fallHeight: inches(60), guardHeight: inches(34), landingGuardHeight: inches(36) };
    expect(verdict(id, "guard height", high)).toBe("fail");
    expect(verdict(id, "guard height", { ...high, landingGuardHeight: inches(42), guardHeight: inches(42) })).toBe("pass");
    expect(["pass", "does not apply"]).toContain(verdict(id, "guard height", { ...high, dwelling: "yes", storeys: 3 }));
    expect(verdict(id, "guard height", { ...high, fallHeight: inches(30) })).toBe("does not apply");
  });

  test("IBC 1011.6: a landing as deep as the stair is wide, 48 in at most", () => {
    const at = (depth: number, width: number) => row("ibc-2018", "landing depth", { landingDepth: inches(depth), width: inches(width) });
    expect(at(44, 44).verdict).toBe("pass");
    expect(at(43.984375, 44).verdict).toBe("fail");
    expect(at(48, 60)).toMatchObject({ verdict: "pass", limit: 48 });
    expect(at(47.984375, 60).verdict).toBe("fail");
  });

  test("IBC 1011.5.5.3: open risers only where the code lists the stair, and then a ball of 4 in", () => {
    const open: CodeFacts = { openRisers: "yes", openRiserGap: inches(3.9375) };
    expect(verdict("ibc-2018", "open riser opening", open)).toBe("not given");
    expect(verdict("ibc-2018", "open riser opening", { ...open, openRisersAllowed: "no" })).toBe("fail");
    expect(verdict("ibc-2018", "open riser opening", { ...open, openRisersAllowed: "yes" })).toBe("pass");
    expect(verdict("ibc-2018", "open riser opening", { ...open, openRisersAllowed: "yes", openRiserGap: inches(4.0625) })).toBe("fail");
  });

  test("handrails on both sides: IBC 1011.11, on one in a dwelling, on none over three risers there; ADA 504.6 whatever the number", () => {
    const one: CodeFacts = { handrails: "one", risers: 12 };
    expect(verdict("ibc-2021", "handrail sides", one)).toBe("fail");
    expect(verdict("ibc-2021", "handrail sides", { ...one, handrails: "both" })).toBe("pass");
    expect(verdict("ibc-2021", "handrail sides", { ...one, dwelling: "yes" })).toBe("pass");
    expect(verdict("ibc-2021", "handrail sides", { handrails: "none", risers: 3, dwelling: "yes" })).toBe("does not apply");
    expect(verdict("ibc-2021", "handrail sides", { risers: 12 })).toBe("not given");
    expect(verdict("ada-2010", "handrail sides", { handrails: "one", risers: 1 })).toBe("fail");
  });

  test("29 CFR 1926.1052(c)(1): four risers or more than 30 in, whichever comes first", () => {
    const at = (risers: number, rise: number) =>
      verdict("osha-1926.1052", "handrail required", { risers, totalRise: inches(rise), handrails: "none" });
    expect([at(3, 30), at(4, 28), at(3, 30.015625)]).toEqual(["does not apply", "fail", "fail"]);
    expect(verdict("osha-1926.1052", "handrail required", { risers: 3, handrails: "none" })).toBe("not given");
    expect(verdict("osha-1926.1052", "handrail required", { risers: 4, handrails: "none" })).toBe("fail");
  });

  test("29 CFR 1910.25(c)(5), 1910.29(f): what was put in before 17 January 2017 keeps 8 in of tread and 30 in of rail", () => {
    const old: CodeFacts = { treadDepth: inches(8), guardHeight: inches(30) };
    expect(verdict("osha-1910.25", "tread depth", old)).toBe("fail");
    expect(verdict("osha-1910.25", "stair rail height", old)).toBe("fail");
    const before: CodeFacts = { ...old, installed: "before 2017" };
    expect(verdict("osha-1910.25", "tread depth", before)).toBe("does not apply");
    expect(verdict("osha-1910.25", "tread depth pre 2017", before)).toBe("pass");
    expect(verdict("osha-1910.25", "stair rail height", before)).toBe("pass");
  });

  test("29 CFR 1910.25(b)(4): 30 in of landing, as wide as the stair", () => {
    expect(verdict("osha-1910.25", "landing depth", { landingDepth: inches(30), landingWidth: inches(36), width: inches(36) })).toBe(
      "pass",
    );
    expect(verdict("osha-1910.25", "landing depth", { landingDepth: inches(30), landingWidth: inches(35), width: inches(36) })).toBe(
      "fail",
    );
    expect(verdict("osha-1910.25", "landing depth", { landingDepth: inches(29.984375) })).toBe("fail");
  });

  test("Canada: private and public stairs, handrails from three risers indoors and four outdoors (9.8.7.1.)", () => {
    const facts = { riserHeight: mm(200), treadDepth: mm(255) };
    expect(verdict("nbc-ca-2020", "riser height", facts)).toBe("pass");
    expect(verdict("nbc-ca-2020", "riser height public", facts)).toBe("does not apply");
    expect(verdict("nbc-ca-2020", "riser height public", { ...facts, use: "public" })).toBe("fail");
    const rail = (risers: number, outside: "yes" | "no") =>
      verdict("nbc-ca-2020", "handrail required risers", { risers, stairRisers: risers, outside, handrails: "none" });
    expect([rail(2, "no"), rail(3, "no"), rail(3, "yes"), rail(4, "yes")]).toEqual(["does not apply", "fail", "does not apply", "fail"]);
  });

  test("Canada: a nosing of 0 to 25 mm, which is tread depth less run (9.8.4.2.)", () => {
    for (const id of ["obc-part9", "obc-2024-part9", "nbc-ca-2015", "nbc-ca-2020"]) {
      expect([0, 25, 26].map((nosing) => verdict(id, "tread depth over run", { nosing: mm(nosing) }))).toEqual(["pass", "pass", "fail"]);
    }
  });

  test("Canada 2020, 9.8.9.4. and 9.8.9.5.: stringers and treads", () => {
    const at = (item: string, facts: CodeFacts) => verdict("nbc-ca-2020", item, facts);
    expect([at("stringer effective depth", { throat: mm(90) }), at("stringer effective depth", { throat: mm(89) })]).toEqual([
      "pass",
      "fail",
    ]);
    expect([at("stringer overall depth", { stringerBoard: mm(235) }), at("stringer overall depth", { stringerBoard: mm(234) })]).toEqual([
      "pass",
      "fail",
    ]);
    expect([
      at("stringer spacing", { stringerSpacing: mm(901) }),
      at("stringer spacing", { stringerSpacing: mm(1200), risersSupportTreads: "yes" }),
    ]).toEqual(["fail", "pass"]);
    const thin: CodeFacts = { treadThickness: mm(30), openRisers: "yes", stringerSpacing: mm(800) };
    expect([
      at("tread thickness", thin),
      at("tread thickness open riser", thin),
      at("tread thickness open riser", { ...thin, stringerSpacing: mm(750) }),
    ]).toEqual(["pass", "fail", "does not apply"]);
  });

  test(
    "Australia: the second table only by the label infrequent, fall of exactly 1 m asks for a " +
      "barrier, a climb under 1 m for no handrail",
    () => {
      const attic: CodeFacts = {
        infrequent: "yes",
        riserHeight: mm(225),
        treadDepth: mm(215),
        landingDepth: mm(600),
        fallHeight: mm(2000),
        guardGap: mm(299),
      };
      expect(
        [
          "riser height infrequent",
          "going infrequent",
          "two r plus g infrequent",
          "landing depth infrequent",
          "guard opening infrequent",
        ].map((item) => verdict("au-ncc-2022-class1", item, attic)),
      ).toEqual(Array(5).fill("pass"));
      expect(
        ["riser height", "going", "two r plus g", "landing depth", "guard opening"].map((item) =>
          verdict("au-ncc-2022-class1", item, attic),
        ),
      ).toEqual(Array(5).fill("does not apply"));
      expect(verdict("au-ncc-2022-class1", "guard required drop", { fallHeight: mm(1000), guard: "no" })).toBe("fail");
      expect(verdict("au-ncc-2022-class1", "guard required drop", { fallHeight: mm(999), guard: "no" })).toBe("does not apply");
      expect(verdict("au-ncc-2022-class1", "handrail height", { handrailHeight: mm(800), totalRise: mm(999) })).toBe("does not apply");
      expect(verdict("au-ncc-2022-class1", "handrail height", { handrailHeight: mm(864), totalRise: mm(1000) })).toBe("fail");
    },
  );

  // Read in all three: the edge of an opening (R311.7.2) and a passing nosing (R311.7.8.2) excuse in 2018 too; drainage from 2021 on, open
  // risers in 2024.
  test("IRC 2024 excuses by rule what earlier editions leave to a person", () => {
    const overlapped: CodeFacts = { headroom: inches(79), openingOverlap: inches(4.75) };
    expect([verdict("irc-2018", "headroom", overlapped), verdict("irc-2024", "headroom", overlapped)]).toEqual([
      "does not apply",
      "does not apply",
    ]);
    const open: CodeFacts = { treadDepth: inches(10), nosing: inches(2), openRisers: "yes" };
    expect([verdict("irc-2018", "nosing projection", open), verdict("irc-2024", "nosing projection", open)]).toEqual(["judge", "pass"]);
    const wet: CodeFacts = { landingSlope: 0.05, landingDrains: "yes" };
    expect(["irc-2018", "irc-2021", "irc-2024"].map((id) => verdict(id, "walking surface slope", wet))).toEqual(["judge", "pass", "pass"]);
    expect(verdict("irc-2024", "walking surface slope", { ...wet, treadSlope: 0.05 })).toBe("fail");
    const passing: CodeFacts = { handrailProjection: inches(6.5), handrailPassesNosing: "yes" };
    expect([
      verdict("irc-2018", "handrail projection each side", passing),
      verdict("irc-2024", "handrail projection each side", passing),
    ]).toEqual(["pass", "pass"]);
  });

  test("ADA rows of lengths decide in inches and say so", () => {
    const rail: CodeFacts = { grip: inches(1.5), handrailHeight: inches(36), riserPerforation: inches(0.5) };
    expect(row("ada-2010", "handrail grip noncircular perimeter", { gripPerimeter: inches(5) }).note).toContain("decided in inches");
    const lengths = rowsOf({ egress: "yes", ...rail }, [], [], profileOf("ada-2010")).filter(
      ({ unit, item }) => unit === "in" && !["riser uniformity", "open riser"].includes(item),
    );
    // Riser, tread, nosing (two), handrail height, clearance, extension, grip (three), holes in a riser, headroom; two grips are of a rail
    // that is not round.
    expect(lengths.length).toBe(12);
    for (const { note } of lengths.filter(({ item }) => !item.includes("noncircular"))) expect(note).toContain("decided in inches");
  });
});

describe("what is left to a person", () => {
  /** Whether a rule, or a part of one, is left to a person. */
  const isLeft = (rule: unknown): boolean => /"comparator":"(alike|person)"/.test(JSON.stringify(rule));

  test("only these rows, each for a reason that no label states", () => {
    for (const { id, limits } of PROFILES) {
      const judged = limits
        .filter(({ rule, exceptions }) => isLeft(rule) || exceptions.some(({ then }) => then === "judge" || isLeft(then)))
        .map(({ item }) => item);
      expect([id, judged]).toEqual([id, COUNTED[id]?.judged.map(([item]) => item)]);
    }
  });

  test("winders kept out of the steps, and said so, leave treads to be held as they are", () => {
    const steps = runs(255, 270);
    expect(verdict("obc-part9", "run uniformity", { winders: 3 }, steps)).toBe("judge");
    expect(verdict("obc-part9", "run uniformity", { winders: 3, windersInSteps: "no" }, steps)).toBe("fail");
  });
});

describe("every record has its place", () => {
  // Rows that are shown and never held: no least width (two), a way of wording, and two ways of counting risers.
  test("only what has no limit is shown without a verdict", () => {
    const shown = PROFILES.flatMap(({ id, limits }) =>
      limits.filter(({ rule }) => rule.comparator === "shown").map(({ item }) => `${id}: ${item}`),
    );
    expect(shown).toEqual([
      "nbc-ca-2020: winder tread turn deviation", "au-ncc-2022-class1: stair width",
      "nz-d1as1: stair width", "nz-d1as1-secondary: stair width", "nz-d1as1-minor: stair width", "nz-d1as1-accessible: stair width",
      "trade-rules: riser count start", "trade-rules: riser count divisor",
    ]);
  });

  test.each(Object.entries(COUNTED))("%s: checked, shown, out of scope and confirmed are as counted, and add up", (id, counted) => {
    const { checked, shown, outOfScope, confirmed } = counted;
    expect(profileCounts(profileOf(id))).toEqual({ checked, shown, outOfScope, confirmed, limits: checked + shown + outOfScope });
  });

  test("every code was counted, and none stands twice in itself", () => {
    expect(PROFILES.map(({ id }) => id)).toEqual(Object.keys(COUNTED));
    for (const { limits, outOfScope } of PROFILES) {
      const items = [...limits, ...outOfScope].map(({ item }) => item);
      expect(new Set(items).size).toBe(items.length);
    }
  });

  test("a limit that was checked names document and edition", () => {
    for (const { id, limits, outOfScope } of PROFILES) {
      for (const { item, sources, status } of [...limits, ...outOfScope]) {
        expect([id, item, status === "not yet checked" || sources.length > 0]).toEqual([id, item, true]);
        for (const { title } of sources) expect(title).toMatch(/\d{3,4}|edition not named|handrails/);
      }
    }
  });

  test("a profile is known by every clause in its own numbering: IRC 2024 moved stairs to R318, handrails to R320, guards to R321", () => {
    const clauses = (id: string) => [...new Set(profileOf(id).limits.map(({ clause }) => clause.slice(0, 4)))].sort();
    expect(clauses("irc-2024")).toEqual(["R318", "R320", "R321"]);
    expect(clauses("irc-2018")).toEqual(["R311", "R312"]);
    expect(clauses("irc-2021")).toEqual(["R311", "R312"]);
  });
});

describe("published cases without a size to fail", () => {
  // British Columbia Building Code Appeal Board 1305: two risers, a landing and 13 more are one stair of 15, so both flights need a
  // handrail.
  test("Canada counts the risers of the stair (BCAB 1305; NBC 2020 9.8.7.1.), the IRC those of the flight (IRC 2021 R311.7.8)", () => {
    const at = (facts: CodeFacts) => verdict("nbc-ca-2020", "handrail required risers", { handrails: "none", ...facts });
    expect([at({ risers: 2, stairRisers: 15 }), at({ risers: 13 }), at({ risers: 2, stairRisers: 2 })]).toEqual([
      "fail",
      "fail",
      "does not apply",
    ]);
    expect(at({ risers: 2 })).toBe("not given");
    expect(verdict("irc-2021", "handrail required risers", { risers: 2, stairRisers: 15, handrails: "none" })).toBe("does not apply");
  });

  // British Columbia appeal 1063 found a dwelling stair at fault in winders, tapered treads and front edges, without publishing sizes.
  test("the kinds of fault found by BCAB 1063 are each held by a row: winders, tapered treads, front edges", () => {
    const items = profileOf("nbc-ca-2020").limits.map(({ item }) => item);
    for (const item of [
      "winder tread turn",
      "winder set turn",
      "tapered tread run narrow end",
      "tapered tread measure point",
      "nosing bevel",
      "tread depth over run",
    ]) {
      expect(items).toContain(item);
    }
    const faulty: CodeFacts = { winderTurn: 25, nosingRadius: mm(20), nosing: mm(30) };
    expect(["winder tread turn", "nosing bevel", "tread depth over run"].map((item) => verdict("nbc-ca-2020", item, faulty))).toEqual([
      "fail",
      "fail",
      "fail",
    ]);
  });

  // Modern Carpentry 2008, page 604: 7 ft 10 in over 7 in is 13.43, so 13 risers; by hand 94 / 13 = 7.2308 in, and 7.2308 x 13 = 94.
  test("a total rise of 94 in over 7 in gives 13 risers of 7.2308 in, which the IRC passes (textbook case)", () => {
    expect(Number((94 / 7).toFixed(2))).toBe(13.43);
    const found = row("irc-2021", "riser height", { riserHeight: inches(94).div(13) });
    expect(found.verdict).toBe("pass");
    expect(found.given).toBeCloseTo(7.2308, 4);
    expect(row("trade-rules", "riser count divisor", {}).limit).toContain("over 7 in");
  });
});

describe("one limit by itself, in the unit asked for", () => {
  test("two limits, and a clause of several rules by its first", () => {
    expect(limitInForce(profileOf("irc-2021"), "handrail height", "mm")).toMatchObject({ kind: "text", value: "863.6 to 965.2" });
    expect(limitInForce(profileOf("obc-part9"), "riser height", "mm")).toMatchObject({ kind: "text", value: "125 to 200" });
    expect(limitInForce(profileOf("din-18065-dwelling"), "tread depth", "mm")).toMatchObject({
      kind: "text",
      value: "230 to 370",
      status: "checked against another edition",
    });
    expect(limitInForce(profileOf("ibc-2021"), "guard opening", "in")).toMatchObject({ kind: "length" });
  });
});

test("a nosing of 0 to 25 mm is amended in its own way of writing", () => {
  const amended = [{ item: "tread depth over run", limit: "0 to 30", authority: "Alder County (invented)" }];
  expect(rowOf("tread depth over run", { unit: "mm", nosing: mm(30) }, [], amended, profileOf("nbc-ca-2020"))).toMatchObject({
    verdict: "pass",
    limit: "0 to 30",
  });
});
