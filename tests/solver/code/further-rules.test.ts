import type { CodeFacts } from "../../../src/solver/code/fact-labels";
import { limitInForce } from "../../../src/solver/code/limit-in-force";
import { flight, inches, millimetres as mm, profileOf, row, verdict } from "./stair-check";


// One mark of the tape beside each limit: 1/64 in.
const MARK = 1 / 64;

describe("kinds of stair", () => {
  // IRC R311.7.10.1 (2018, 2021), R318.7.11.1 (2024): a spiral stair has its own width, headroom, riser and tread; open risers of one are
  // not limited.
  test.each(["irc-2018", "irc-2021", "irc-2024"])("%s leaves a spiral stair to its own limits", (id) => {
    const spiral: CodeFacts = {
      stairKind: "spiral",
      clearWidth: inches(26),
      widthAtHandrails: inches(26),
      handrails: "one",
      headroom: inches(78),
      riserHeight: inches(9.5),
      treadDepth: inches(6.75),
      openRisers: "yes",
      openRiserGap: inches(8),
      openRiserHeight: inches(90),
      winders: 12,
      winderDepth: inches(6.75),
    };
    for (const item of [
      "clear width above handrail",
      "clear width at handrail one side",
      "headroom",
      "riser height",
      "tread depth",
      "open riser opening",
      "winder tread depth walkline",
    ]) {
      expect([item, row(id, item, spiral)]).toEqual([
        item,
        expect.objectContaining({ verdict: "does not apply", note: expect.stringContaining("a spiral stair has limits of its own") }),
      ]);
      expect([item, verdict(id, item, { ...spiral, stairKind: "standard" })]).toEqual([item, "fail"]);
    }
    const { stairKind: _kind, ...unsaid } = spiral;
    expect(verdict(id, "riser height", unsaid)).toBe("fail");
  });

  // IBC 1011.5.2, exceptions: spiral stairs, alternating tread devices, ship's ladders, aisles; 1011.11: one handrail on a spiral stair.
  test.each(["ibc-2018", "ibc-2021"])("%s 1011.5.2 is no rule for special stairs and aisles, and a spiral stair has one handrail", (id) => {
    for (const stairKind of ["spiral", "ship", "alternating", "aisle"] as const) {
      for (const dwelling of ["yes", "no"] as const) {
        const facts: CodeFacts = { stairKind, dwelling, riserHeight: inches(9), treadDepth: inches(8) };
        for (const item of ["riser height", "tread depth", "riser height dwelling", "tread depth dwelling"]) {
          expect([stairKind, item, verdict(id, item, facts)]).toEqual([stairKind, item, "does not apply"]);
        }
      }
    }
    expect(verdict(id, "headroom", { stairKind: "spiral", headroom: inches(78) })).toBe("does not apply");
    expect(verdict(id, "handrail sides", { stairKind: "spiral", handrails: "one", risers: 12 })).toBe("pass");
    expect(verdict(id, "handrail sides", { stairKind: "spiral", handrails: "none", risers: 12 })).toBe("fail");
    expect(verdict(id, "handrail sides", { stairKind: "ship", handrails: "one", risers: 12 })).toBe("fail");
  });

  // 29 CFR 1910.25(c) is of standard stairs, (b)(2) sends spiral stairs to (d)(3).
  test("29 CFR 1910.25: standard stairs alone have the limits of (c)", () => {
    const steep: CodeFacts = { riserHeight: inches(12), treadDepth: inches(6), width: inches(18), headroom: inches(78) };
    for (const stairKind of ["spiral", "ship", "alternating"] as const) {
      expect(
        ["pitch", "riser height", "tread depth", "stair width"].map((item) => verdict("osha-1910.25", item, { ...steep, stairKind })),
      ).toEqual(Array(4).fill("does not apply"));
    }
    expect(["pitch", "riser height", "tread depth", "stair width"].map((item) => verdict("osha-1910.25", item, steep))).toEqual(
      Array(4).fill("fail"),
    );
    expect(verdict("osha-1910.25", "headroom", { ...steep, stairKind: "spiral" })).toBe("does not apply");
  });

  // Alberta's NBC 2020 9.8.4.7., Ontario 9.8.4.5A., Housing Provisions Table 11.2.2a (Class 1, other than spiral).
  test.each([
    ["nbc-ca-2020", ["riser height", "run", "headroom", "stair width"]], ["obc-part9", ["riser height", "run", "headroom", "stair width"]],
    ["au-ncc-2022-class1", ["riser height", "going", "two r plus g"]],
  ] as const)("%s leaves a spiral stair to its own limits", (id, items) => {
    const spiral: CodeFacts = { riserHeight: mm(240), treadDepth: mm(190), headroom: mm(1940), clearWidth: mm(660) };
    expect(items.map((item) => verdict(id, item, { ...spiral, stairKind: "spiral" }))).toEqual(items.map(() => "does not apply"));
    expect(items.slice(0, 2).map((item) => verdict(id, item, spiral))).toEqual(["fail", "fail"]);
  });

  test("where the limits of such a stair were not read, its sizes neither pass nor fail", () => {
    const facts: CodeFacts = {
      riserHeight: inches(7),
      treadDepth: inches(11),
      headroom: inches(79),
      clearWidth: inches(36),
      guardHeight: inches(33),
      fallHeight: inches(60),
    };
    for (const [id, stairKind, item] of [
      ["irc-2021", "ship", "riser height"],
      ["irc-2021", "ship", "headroom"],
      ["bc-2024-part9", "spiral", "riser height"],
      ["uk-adk-private", "spiral", "pitch"],
      ["nbc-ca-2020", "alternating", "run"],
      ["ibc-2018", "ship", "headroom"],
    ] as const) {
      expect([id, item, row(id, item, { ...facts, stairKind })]).toEqual([
        id,
        item,
        expect.objectContaining({
          verdict: "judge",
          note: expect.stringContaining("may have limits of its own, which were not read here"),
        }),
      ]);
    }
    // What is no size of the stair itself is held as ever.
    expect(verdict("irc-2021", "guard height stair open side", { ...facts, stairKind: "ship" })).toBe("fail");
  });
});

describe("exceptions read in the IRC of 2024 only", () => {
  const EXCUSED: readonly (readonly [string, CodeFacts, string])[] = [
    ["nosing projection", { treadDepth: inches(10), nosing: inches(2), openRisers: "yes" }, "pass"],
    ["landing depth straight run", { landingDepth: inches(30), landing: "exterior door", risers: 2, doorSwing: "no" }, "does not apply"],
  ];
  /** Read in the texts of 2018, 2021 and 2024 alike: R311.7.2 and R311.7.8.2, R318.7.2 and R320.3. */
  const ALIKE: readonly (readonly [string, CodeFacts, string])[] = [
    ["headroom", { headroom: inches(79), openingOverlap: inches(4.75) }, "does not apply"],
    ["handrail projection each side", { handrailProjection: inches(6.5), handrailPassesNosing: "yes" }, "pass"],
  ];

  test.each(["irc-2018", "irc-2021", "irc-2024", "crc-2025"])("%s: what all editions excuse needs no leave of the authority", (id) => {
    for (const [item, facts, excused] of ALIKE) expect([item, verdict(id, item, facts)]).toEqual([item, excused]);
  });

  // R311.7.7: 1:20 to shed water is read in 2021 and 2024, not in 2018.
  test("a landing that drains is open in 2018 only", () => {
    const wet: CodeFacts = { landingSlope: 0.05, landingDrains: "yes" };
    expect(verdict("irc-2018", "walking surface slope", { ...wet, laterExceptions: "no" })).toBe("fail");
    expect(["irc-2018", "irc-2021", "irc-2024"].map((id) => verdict(id, "walking surface slope", wet))).toEqual(["judge", "pass", "pass"]);
  });

  test.each(["irc-2018", "irc-2021"])("%s: open until it is said whether the authority grants them", (id) => {
    for (const [item, facts, excused] of EXCUSED) {
      expect([item, row(id, item, facts)]).toEqual([
        item,
        expect.objectContaining({ verdict: "judge", note: expect.stringContaining("give later exceptions to decide") }),
      ]);
      expect([item, verdict(id, item, { ...facts, laterExceptions: "yes" })]).toEqual([item, excused]);
      expect([item, verdict(id, item, { ...facts, laterExceptions: "no" })]).toEqual([item, "fail"]);
      expect([item, verdict("irc-2024", item, facts)]).toEqual([item, excused]);
    }
  });

  test.each(["irc-2018", "irc-2021"])("%s: what the exception itself would fail is failed without asking", (id) => {
    // 6 1/2 in and a mark; 1:19 over 1:20; under 3/4 in; 4 3/4 in and a mark; a third riser.
    expect(verdict(id, "handrail projection each side", { handrailProjection: inches(6.5 + MARK), handrailPassesNosing: "yes" })).toBe(
      "fail",
    );
    expect(verdict(id, "walking surface slope", { landingSlope: 1 / 19, landingDrains: "yes" })).toBe("fail");
    expect(verdict(id, "nosing projection", { treadDepth: inches(10), nosing: inches(0.75 - MARK), openRisers: "yes" })).toBe("fail");
    expect(verdict(id, "headroom", { headroom: inches(79), openingOverlap: inches(4.75 + MARK) })).toBe("fail");
    expect(
      verdict(id, "landing depth straight run", { landingDepth: inches(30), landing: "exterior door", risers: 3, doorSwing: "no" }),
    ).toBe("fail");
  });

  test.each(["irc-2018", "irc-2021", "irc-2024"])("%s: a landing that is not a rectangle is left to a person, in words", (id) => {
    const wide: CodeFacts = { landingWidth: inches(36), clearWidth: inches(36) };
    expect(verdict(id, "landing width", wide)).toBe("pass");
    expect(verdict(id, "landing width", { ...wide, landingWidth: inches(36 - MARK) })).toBe("fail");
    expect(row(id, "landing width", { ...wide, landingShape: "other" })).toMatchObject({
      verdict: "judge",
      note: expect.stringContaining("quarter circle"),
    });
    expect(row(id, "landing width", wide).note).toContain("give landing shape if so");
  });
});

describe("a handrail of Type II, with finger recesses", () => {
  // R311.7.8.5, R320.6, IBC 1014.3.2: 5/16 deep, starting within 3/4, full within 7/8, for 3/8, down to 1 3/4; 1 1/4 to 2 3/4 wide above.
  const RAIL: CodeFacts = {
    handrails: "one",
    dwelling: "yes",
    gripPerimeter: inches(7),
    gripRecess: inches(5 / 16),
    recessStart: inches(0.75),
    recessReach: inches(0.875),
    recessHeight: inches(0.375),
    recessFoot: inches(1.75),
    widthAboveRecess: inches(2.75),
  };
  const ITEM = "handrail grip type2 recess depth";

  test.each(["irc-2018", "irc-2021", "irc-2024", "ibc-2018"])("%s: each measure passes at its limit and fails a mark beyond", (id) => {
    expect(verdict(id, ITEM, RAIL)).toBe("pass");
    expect(verdict(id, ITEM, { ...RAIL, widthAboveRecess: inches(1.25) })).toBe("pass");
    for (const beyond of [
      { gripRecess: inches(5 / 16 - MARK) },
      { recessStart: inches(0.75 + MARK) },
      { recessReach: inches(0.875 + MARK) },
      { recessHeight: inches(0.375 - MARK) },
      { recessFoot: inches(1.75 - MARK) },
      { widthAboveRecess: inches(2.75 + MARK) },
      { widthAboveRecess: inches(1.25 - MARK) },
    ])
      expect([beyond, verdict(id, ITEM, { ...RAIL, ...beyond })]).toEqual([beyond, "fail"]);
  });

  test("without the depth of the recess nothing passes", () => {
    const { gripRecess: _depth, ...rest } = RAIL;
    expect(verdict("irc-2021", ITEM, rest)).toBe("not given");
  });
});

describe("IBC, further rules", () => {
  // 1011.5.4.1: the riser at sloping ground may be less than 4 in; the others keep 4 to 7.
  test.each(["ibc-2018", "ibc-2021"])(
    "%s: of the ends one may run out at sloping ground, which one is for a person; the others keep 4 to 7 in",
    (id) => {
      const sloping: CodeFacts = { endRiserSlope: 1 / 12 };
      const at = (...rises: number[]) => verdict(id, "riser height", sloping, flight("rise", rises));
      expect(at(4, 7, 7, 7)).toBe("pass");
      expect([at(4 - MARK, 7, 7, 7), at(7, 7, 7, 3)]).toEqual(["judge", "judge"]);
      expect([at(3, 7, 7 + MARK, 7), at(7, 4 - MARK, 7, 7)]).toEqual(["fail", "fail"]);
      expect(verdict(id, "riser height", {}, flight("rise", [4 - MARK, 7, 7, 7]))).toBe("fail");
    },
  );

  // 1014.6 and ADA 505.10.2, 505.10.3: 12 in at the top; at the foot one tread depth.
  test.each(["ibc-2018", "ibc-2021", "ada-2010"])("%s: the handrail runs on 12 in at the top and one tread depth at the foot", (id) => {
    const rail = (top: number, foot?: number): CodeFacts => ({
      egress: "yes",
      treadDepth: inches(11),
      handrails: "both",
      handrailExtension: inches(top),
      ...(foot === undefined ? {} : { handrailFootExtension: inches(foot) }),
    });
    const at = (facts: CodeFacts) => verdict(id, "handrail top extension", facts);
    expect([at(rail(12)), at(rail(12 - MARK)), at(rail(12, 11)), at(rail(12, 11 - MARK))]).toEqual(["pass", "fail", "pass", "fail"]);
    const { handrailExtension: _top, ...footOnly } = rail(12, 11);
    expect(at(footOnly)).toBe("not given");
  });

  // 1014.3.1, read in the 2018 text: 4 to 6 1/4 in around, 1 to 2 1/4 in across.
  test("IBC 2021: a rail that is not round by its perimeter and its width", () => {
    const item = ({ gripPerimeter, gripCrossSection }: CodeFacts) =>
      gripPerimeter === undefined && gripCrossSection === undefined
        ? "diameter"
        : gripPerimeter?.eq(inches(5)) === true
          ? "cross section"
          : "perimeter";
    const at = (facts: CodeFacts) => verdict("ibc-2021", `handrail grip type1 ${item(facts)}`, { handrails: "both", ...facts });
    const round = [1.25, 2, 1.25 - MARK, 2 + MARK].map((grip) => at({ grip: inches(grip) }));
    expect(round).toEqual(["pass", "pass", "fail", "fail"]);
    const around = [4, 6.25, 4 - MARK, 6.25 + MARK].map((perimeter) =>
      at({ gripPerimeter: inches(perimeter), gripCrossSection: inches(2) }),
    );
    expect(around).toEqual(["pass", "pass", "fail", "fail"]);
    const across = [1, 2.25, 1 - MARK, 2.25 + MARK].map((width) => at({ gripPerimeter: inches(5), gripCrossSection: inches(width) }));
    expect(across).toEqual(["pass", "pass", "fail", "fail"]);
    expect([at({}), at({ gripRecess: inches(0.5) })]).toEqual(["not given", "does not apply"]);
  });

  // 1011.4: the walkline is 12 in from the narrow side.
  test("IBC 2021: a winder is measured 12 in from the narrow side where that is given", () => {
    const item = ({ walkline, dwelling }: CodeFacts) =>
      walkline === undefined ? `winder tread depth walkline${dwelling === undefined ? "" : " dwelling"}` : "walkline offset";
    const at = (facts: CodeFacts) => verdict("ibc-2021", item(facts), { winders: 3, ...facts });
    expect([at({ winderDepth: inches(11) }), at({ winderDepth: inches(11 - MARK) })]).toEqual(["pass", "fail"]);
    expect([at({ winderDepth: inches(11), walkline: inches(12) }), at({ winderDepth: inches(11), walkline: inches(12 + MARK) })]).toEqual([
      "pass",
      "fail",
    ]);
    expect([at({ winderDepth: inches(10), dwelling: "yes" }), at({ winderDepth: inches(10 - MARK), dwelling: "yes" }), at({})]).toEqual([
      "pass",
      "fail",
      "not given",
    ]);
  });
});

describe("ADA 2010, further rules", () => {
  // 504.3 and the Access Board's guide: an open riser fails at any height; holes that keep out a ball of more than 1/2 in count as closed.
  test("a riser is open by its gap, closed by holes of 1/2 in", () => {
    const at = (facts: CodeFacts) => verdict("ada-2010", "open riser", { egress: "yes", ...facts });
    expect([at({}), at({ openRisers: "no" }), at({ openRisers: "yes" }), at({ openRiserGap: inches(0.25) })]).toEqual([
      "not given",
      "pass",
      "fail",
      "fail",
    ]);
    expect([
      at({ openRisers: "yes", riserPerforation: inches(0.5) }),
      at({ openRisers: "yes", riserPerforation: inches(0.5 + MARK) }),
    ]).toEqual(["pass", "fail"]);
    expect(at({ openRiserGap: inches(4), riserPerforation: inches(0.5) })).toBe("fail");
  });

  // 504.5: at most 1 1/2 in, the underside of one that projects curved or bevelled.
  test("a nosing that projects is curved or bevelled underneath", () => {
    const at = (facts: CodeFacts) => verdict("ada-2010", "nosing projection", { egress: "yes", ...facts });
    expect([at({ nosing: inches(1.5) }), at({ nosing: inches(1.5 + MARK) })]).toEqual(["pass", "fail"]);
    expect((["curved", "bevelled", "square"] as const).map((nosingUnderside) => at({ nosing: inches(1.5), nosingUnderside }))).toEqual([
      "pass",
      "pass",
      "fail",
    ]);
    expect([at({ nosing: inches(0), nosingUnderside: "square" }), at({ nosingUnderside: "curved" })]).toEqual(["pass", "not given"]);
  });
});

describe("29 CFR 1926.1052(c)(1)", () => {
  test("a handrail, and a rail on each open side, each of them shown", () => {
    const at = (facts: CodeFacts) => verdict("osha-1926.1052", "handrail required", { risers: 4, totalRise: inches(28), ...facts });
    expect([
      at({ handrails: "one", openSides: "none" }),
      at({ handrails: "one", openSides: "one", guard: "yes" }),
      at({ handrails: "one", openSides: "both", guardHeight: inches(36) }),
    ]).toEqual(["pass", "pass", "pass"]);
    expect([at({ handrails: "none", openSides: "none" }), at({ handrails: "one", openSides: "one", guard: "no" })]).toEqual([
      "fail",
      "fail",
    ]);
    expect([at({ handrails: "one" }), at({ handrails: "one", guard: "no" }), at({ openSides: "none" })]).toEqual([
      "not given",
      "not given",
      "not given",
    ]);
  });
});

describe("Canada, further rules", () => {
  // NBC 2020 9.8.8.3.(2) prints 900; 1 070 elsewhere is printed in Ontario 9.8.8.3.(1).
  test.each(["nbc-ca-2020", "obc-2024-part9"])("%s: guards of 900 mm in a dwelling, 1070 mm in other places", (id) => {
    const at = (height: number, facts: CodeFacts = {}) =>
      verdict(id, "guard height", { fallHeight: mm(1000), guardHeight: mm(height), ...facts });
    expect([at(900), at(899), at(1070, { use: "public" }), at(1069, { use: "public" })]).toEqual(["pass", "fail", "pass", "fail"]);
    // Whether a service stair stands in a dwelling is told by no label.
    expect(at(950, { use: "service" })).toBe("does not apply");
  });

  // 9.8.9.4.(1)(c): 25 mm supported along the length, 38 mm not.
  test("stringers 25 mm thick where supported, 38 mm where not, and nothing said where that is not given", () => {
    const nbc = (thickness: number, stringerSupported?: "yes" | "no") =>
      verdict("nbc-ca-2020", "stringer thickness supported", {
        stringerThickness: mm(thickness),
        ...(stringerSupported === undefined ? {} : { stringerSupported }),
      });
    expect([nbc(25, "yes"), nbc(24, "yes"), nbc(38, "no"), nbc(37, "no"), nbc(30)]).toEqual(["pass", "fail", "pass", "fail", "not given"]);
    expect(limitInForce(profileOf("nbc-ca-2020"), "stringer thickness supported")).toMatchObject({ problem: "limit-depends" });
    const obc = (thickness: number, facts: CodeFacts = {}) =>
      verdict("obc-2024-part9", "stringer thickness unsupported", { stringerThickness: mm(thickness), ...facts });
    expect([obc(38), obc(37), obc(24), obc(25, { stringerSupported: "yes" }), obc(37, { stringerSupported: "no" })]).toEqual([
      "pass",
      "judge",
      "fail",
      "pass",
      "fail",
    ]);
  });

  // 9.8.9.4.(1)(d), (2): 900 mm in a dwelling, 1 200 where risers carry the front, 600 in other stairs.
  test("stringers 900 mm apart in a dwelling, 600 mm in other stairs", () => {
    const at = (spacing: number, facts: CodeFacts = {}) =>
      verdict("nbc-ca-2020", "stringer spacing", { stringerSpacing: mm(spacing), ...facts });
    expect([at(900), at(901), at(1200, { risersSupportTreads: "yes" }), at(1201, { risersSupportTreads: "yes" })]).toEqual([
      "pass",
      "fail",
      "pass",
      "fail",
    ]);
    expect([at(600, { use: "public" }), at(601, { use: "public" }), at(700, { use: "service" })]).toEqual([
      "pass",
      "fail",
      "does not apply",
    ]);
  });

  // 9.8.4.5.(1), 9.8.4.6.(1)(c): neighbouring winders turn through the same angle.
  test.each(["obc-part9", "obc-2024-part9"])("%s: neighbouring winders turn alike", (id) => {
    const at = (facts: CodeFacts) => verdict(id, "winder tread turn", { winders: 3, ...facts });
    expect([
      at({ winderTurn: 30 }),
      at({ winderTurn: 30, winderTurnsAlike: "yes" }),
      at({ winderTurn: 30, winderTurnsAlike: "no" }),
      at({ winderTurnsAlike: "yes" }),
    ]).toEqual(["pass", "pass", "fail", "not given"]);
  });

  // 9.8.4.3.(1): 150 mm at the narrow end; the run of a straight tread 300 mm from the centre line of the inside handrail.
  test("Ontario: tapered treads by their narrow end and by their run 300 mm from the handrail", () => {
    const at = (facts: CodeFacts) => verdict("obc-part9", "tapered tread run narrow end", { turnTreads: "tapered", winders: 3, ...facts });
    const good: CodeFacts = { winderNarrowEnd: mm(150), winderDepth: mm(255), walklineFromHandrail: mm(300) };
    expect([
      at(good),
      at({ ...good, winderNarrowEnd: mm(149) }),
      at({ ...good, winderDepth: mm(254) }),
      at({ ...good, walklineFromHandrail: mm(301) }),
    ]).toEqual(["pass", "fail", "fail", "fail"]);
    expect(at({ walklineFromHandrail: mm(300) })).toBe("not given");
  });
});

describe("Australia, further rules", () => {
  // Housing Provisions 11.3.5(2): none on a landing or at winders with a newel post.
  test("no handrail is asked for on a landing or at winders with a newel post", () => {
    const low: CodeFacts = { totalRise: mm(2000), handrailHeight: mm(864) };
    const at = (facts: CodeFacts) => verdict("au-ncc-2022-class1", "handrail height", { ...low, ...facts });
    expect([at({}), at({ handrailPlace: "flight" }), at({ handrailPlace: "landing" }), at({ handrailPlace: "newel winders" })]).toEqual([
      "fail",
      "fail",
      "does not apply",
      "does not apply",
    ]);
    expect(at({ handrailHeight: mm(865) })).toBe("pass");
  });

  // Table 11.2.2b: the going is at most the tread and a gap of 30 mm.
  test("treads of a stair seldom used stand at most 30 mm apart", () => {
    const at = (facts: CodeFacts) => verdict("au-ncc-2022-class1", "going infrequent", { infrequent: "yes", ...facts });
    expect([
      at({ treadDepth: mm(215) }),
      at({ treadDepth: mm(215), treadGap: mm(30) }),
      at({ treadDepth: mm(215), treadGap: mm(31) }),
      at({ treadGap: mm(30) }),
    ]).toEqual(["pass", "pass", "fail", "not given"]);
  });

  // 11.3.4(2)(b)(i): 1 m on landings; 865 mm on the inside edge of one for up to 500 mm.
  test("the guard of a landing is 1 m high, 865 mm on its inside edge", () => {
    const at = (height: number, facts: CodeFacts = {}) =>
      verdict("au-ncc-2022-class1", "guard height", { fallHeight: mm(1500), landingGuardHeight: mm(height), ...facts });
    expect([at(1000), at(999), at(865, { insideEdgeGuard: "yes" }), at(864, { insideEdgeGuard: "yes" })]).toEqual([
      "pass",
      "fail",
      "pass",
      "fail",
    ]);
  });
});

describe("Approved Document K, further rules", () => {
  // 1.34-1.36: a handrail on one side under 1 m of width, on both from 1 m on.
  test("a private stair has handrails by its width", () => {
    const at = (facts: CodeFacts) => verdict("uk-adk-private", "handrail height", { handrailHeight: mm(900), ...facts });
    expect([at({}), at({ handrailHeight: mm(899) }), at({ handrailHeight: mm(1000) }), at({ handrailHeight: mm(1001) })]).toEqual([
      "pass",
      "fail",
      "pass",
      "fail",
    ]);
    const sides = (width: number, handrails: "none" | "one" | "both") =>
      verdict("uk-adk-private", "handrail sides", { clearWidth: mm(width), handrails });
    expect([sides(999, "one"), sides(1000, "one"), sides(1001, "one"), sides(1001, "both")]).toEqual(["pass", "fail", "fail", "pass"]);
    const { verdict: none } = row("uk-adk-private", "handrail sides", { clearWidth: mm(900), handrails: "none" });
    const { verdict: unmeasured } = row("uk-adk-private", "handrail height", { clearWidth: mm(900), handrails: "one" });
    expect([none, unmeasured]).toEqual(["fail", "not given"]);
  });

  // 1.15: over 2 m wide the flight is divided; 1.18: no single steps, 12 risers, 16 in small premises.
  test("a general stair over 2 m wide is divided, and has no single step", () => {
    const wide = (width: number, facts: CodeFacts = {}) => verdict("uk-adk-general", "stair width", { clearWidth: mm(width), ...facts });
    expect([
      wide(1200),
      wide(1199),
      wide(2000),
      wide(2001),
      wide(2001, { dividedFlight: "yes" }),
      wide(2001, { dividedFlight: "no" }),
    ]).toEqual(["pass", "fail", "pass", "not given", "pass", "fail"]);
    const risers = (count: number, facts: CodeFacts = {}) => verdict("uk-adk-general", "flight risers", { risers: count, ...facts });
    expect([risers(1), risers(2), risers(12), risers(13)]).toEqual(["fail", "pass", "pass", "fail"]);
    expect([risers(1, { smallPremises: "yes" }), risers(16, { smallPremises: "yes" }), risers(17, { smallPremises: "yes" })]).toEqual([
      "fail",
      "pass",
      "fail",
    ]);
  });
});

describe("Canada, further rules of 2020 and 2024", () => {
  // 9.8.7.1.(3): in a house a stair indoors of at most 2 risers, outdoors of at most 3, needs no handrail.
  test.each(["nbc-ca-2020", "obc-2024-part9", "bc-2024-part9"])("%s: a short stair of a house needs no handrail", (id) => {
    const at = (count: number, outside: "yes" | "no") =>
      verdict(id, "handrail sides", { use: "private", risers: count, stairRisers: count, outside, handrails: "none" });
    expect([at(2, "no"), at(3, "no"), at(3, "yes"), at(4, "yes")]).toEqual(["does not apply", "fail", "does not apply", "fail"]);
  });

  // Ontario, 9.8.4.6.(2): more than one set of winders stand 1200 mm apart.
  test.each(["obc-part9", "obc-2024-part9"])("%s: one set of winders stands apart from nothing", (id) => {
    const at = (winderSets: number) => verdict(id, "winder sets separation", { winders: 3, winderSets });
    expect([at(1), at(2)]).toEqual(["does not apply", "not given"]);
  });

  // British Columbia, 9.8.4.6.(3): 255 mm of run 200 mm from the narrow end.
  test("British Columbia: a winder keeps its run 200 mm from the narrow end", () => {
    const at = (depth: number, walkline: number) =>
      verdict("bc-2024-part9", "winder run at 200", { winders: 3, winderDepth: mm(depth), walkline: mm(walkline) });
    expect([at(255, 200), at(254, 200), at(255, 300)]).toEqual(["pass", "fail", "does not apply"]);
  });
});

// 29 CFR 1910.28(b)(11)(ii): 3 treads and 4 risers.
test("OSHA prints 3 treads and 4 risers", () => {
  expect(profileOf("osha-1910.25").limits.find(({ item }) => item === "handrail required risers")?.text).toBe("3 treads and 4 risers");
});
