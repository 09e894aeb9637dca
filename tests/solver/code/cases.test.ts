import type { CodeFacts, Step } from "../../../src/solver/code/fact-labels";
import { type CodeProfile, figure, type Limit } from "../../../src/solver/code/profile";
import { PROFILES } from "../../../src/solver/code/profiles";
import { flight, inches, millimetres, rowOf } from "./stair-check";

const shipped = (id: string): CodeProfile => {
  const found = PROFILES.find((one) => one.id === id);
  if (found === undefined) throw new Error(id);
  return found;
};

/** A code that is not shipped, with the one limit a case turns on. */
const built = (id: string, limit: Pick<Limit, "item" | "rule" | "unit" | "text" | "clause">): CodeProfile => ({
  id,
  title: id,
  edition: "for this case",
  region: "as the case",
  outOfScope: [],
  limits: [
    {
      ...limit,
      measured: "as the case has it",
      applies: [],
      exceptions: [],
      advisory: false,
      status: "checked against the code's text",
      sources: [{ title: "the case" }],
      remark: "",
    },
  ],
});

const mm = (value: string) => figure(value, "mm");
const verdict = (code: CodeProfile, item: string, facts: CodeFacts, steps: readonly Step[] = []) =>
  rowOf(item, facts, steps, [], code).verdict;

describe("published rulings", () => {
  test("OSHA interpretation letter of 17 June 2025: 9 1/2 in riser, 9 1/2 in board of which 1 1/2 in is nosing", () => {
    const osha = shipped("osha-1910.25");
    const facts = { riserHeight: inches(9.5), treadDepth: inches(8), nosing: inches(1.5) };
    expect(verdict(osha, "tread depth", facts)).toBe("fail");
    expect(verdict(osha, "riser height", facts)).toBe("pass");
    const pitch = rowOf("pitch", facts, [], [], osha);
    expect(pitch.verdict).toBe("pass");
    expect(pitch.given).toBeCloseTo(49.899, 3);
  });

  test("OSHA letter of 10 February 2006: stairs at 60 degrees, by the rule of the time (30 to 50 degrees)", () => {
    const legacy = built("osha-1910.24", {
      item: "pitch",
      clause: "1910.24(e)",
      unit: "deg",
      text: "30 to 50",
      rule: { comparator: "range", of: { formula: "pitch" }, min: figure("30", "deg"), max: figure("50", "deg") },
    });
    // tan 60 = 1.7320508.
    expect(verdict(legacy, "pitch", { riserHeight: inches(17.320508), treadDepth: inches(10) })).toBe("fail");
    expect(verdict(legacy, "pitch", { riserHeight: inches(10), treadDepth: inches(10) })).toBe("pass");
  });

  test("BC Building Code Appeal Board 853: a variation of 5 mm is uniform enough", () => {
    const code = built("bc-1985", {
      item: "riser uniformity",
      clause: "BCAB 853",
      unit: "mm",
      text: "5",
      rule: { comparator: "uniformity", of: "rise", within: "flight", tolerance: mm("5") },
    });
    const steps = [190, 195, 192].map((rise, index) => ({ step: index + 1, rise: millimetres(rise) }));
    expect(verdict(code, "riser uniformity", {}, steps)).toBe("pass");
    expect(verdict(code, "riser uniformity", {}, [...steps, { step: 4, rise: millimetres(196) }])).toBe("fail");
  });

  test("BCAB 1384: winders on an outside stair, where winders are for inside a dwelling only", () => {
    const code = built("bc-1992", {
      item: "winders allowed",
      clause: "BCAB 1384",
      unit: "count",
      text: "inside a dwelling",
      rule: {
        comparator: "prohibited",
        thing: "winders outside a dwelling are",
        present: { all: [{ given: "winders" }, { fact: "outside", is: ["yes"] }] },
      },
    });
    expect(verdict(code, "winders allowed", { winders: 3, outside: "yes" })).toBe("fail");
    expect(verdict(code, "winders allowed", { winders: 3, outside: "no" })).toBe("pass");
  });

  test("BCAB 1448: triangular landings that turn 45 degrees, where a winder turns 30", () => {
    const code = built("bc-1992", {
      item: "winder tread turn",
      clause: "BCAB 1448",
      unit: "deg",
      text: "30",
      rule: { comparator: "equals", of: "winderTurn", values: [figure("30", "deg")] },
    });
    expect(verdict(code, "winder tread turn", { winderTurn: 45 })).toBe("fail");
    expect(verdict(code, "winder tread turn", { winderTurn: 30 })).toBe("pass");
  });

  test("BCAB 1616: an outside stair of up to four risers needs no bottom landing", () => {
    const code = built("bc-1998", {
      item: "bottom landing required",
      clause: "BCAB 1616",
      unit: "count",
      text: "more than 4",
      rule: {
        comparator: "required-when",
        of: "risers",
        from: { moreThan: figure("4", "count") },
        requires: "a bottom landing",
        provided: { given: "landingDepth" },
      },
    });
    expect(verdict(code, "bottom landing required", { risers: 4 })).toBe("does not apply");
    expect(verdict(code, "bottom landing required", { risers: 5, landingDepth: millimetres(900) })).toBe("pass");
  });

  test("Ontario Building Code Commission 95-09-429: 208 mm against 200", () => {
    const code = built("obc-1990", {
      item: "riser height",
      clause: "BCC 95-09-429",
      unit: "mm",
      text: "200",
      rule: { comparator: "max", of: "riserHeight", max: mm("200") },
    });
    expect(rowOf("riser height", { riserHeight: millimetres(208) }, [], [], code)).toMatchObject({ verdict: "fail", margin: -8 });
  });

  test("US Access Board: a closed riser may have holes up to 1/2 in", () => {
    const facts = { egress: "yes", riserPerforation: inches(0.5) } as const;
    expect(verdict(shipped("ada-2010"), "perforated riser opening", facts)).toBe("pass");
    expect(verdict(shipped("ada-2010"), "perforated riser opening", { ...facts, riserPerforation: inches(0.515625) })).toBe("fail");
  });
});

describe("published rulings of Canada and Ireland", () => {
  // British Columbia Building Code Appeal Board 1936: 890 mm of width where 860 are asked, a handrail 90 mm into it where 100 are allowed.
  test("BCAB 1936: what stands up to 100 mm into the width does not narrow the stair", () => {
    const facts: CodeFacts = { use: "private", clearWidth: millimetres(890), handrails: "one", handrailProjection: millimetres(90) };
    for (const id of ["nbc-ca-2015", "nbc-ca-2020", "bc-2024-part9"]) {
      expect([verdict(shipped(id), "stair width", facts), verdict(shipped(id), "handrail projection each side", facts)]).toEqual([
        "pass",
        "pass",
      ]);
      expect(verdict(shipped(id), "stair width", { ...facts, clearWidth: millimetres(859) })).toBe("fail");
    }
  });

  // BCAB 1217 counted the actual width, from 1100 mm on. Today's Table 9.8.7.1. asks one side in a house at any width.
  test("BCAB 1217: a stair 1100 mm wide by choice has handrails on both sides, but today not in a house", () => {
    const at = (use: "private" | "public", width: number) =>
      verdict(shipped("nbc-ca-2020"), "handrail sides", { use, width: millimetres(width), handrails: "one", risers: 5, stairRisers: 5 });
    expect([at("public", 1100), at("public", 1099), at("private", 1100)]).toEqual(["fail", "pass", "pass"]);
  });

  test("BCAB 1289: a volute 1045 mm above the first tread, where 800 to 920 mm are asked and volutes are not exempt", () => {
    const code = built("bc-1992", {
      item: "handrail height",
      clause: "BCAB 1289",
      unit: "mm",
      text: "800 to 920",
      rule: { comparator: "range", of: "handrailHeight", min: mm("800"), max: mm("920") },
    });
    expect(rowOf("handrail height", { handrailHeight: millimetres(1045) }, [], [], code)).toMatchObject({ verdict: "fail", margin: -125 });
  });

  // BCAB 928: four tapered treads, 150 mm at the narrow end and 200 mm on average. Today 255 mm are asked 300 mm from the handrail.
  test("BCAB 928: tapered treads that do not run to a point keep 150 mm at the narrow end", () => {
    const code = built("bc-1985", {
      item: "narrow end",
      clause: "BCAB 928",
      unit: "mm",
      text: "150",
      rule: { comparator: "min", of: "winderNarrowEnd", min: mm("150") },
    });
    const facts: CodeFacts = {
      turnTreads: "tapered",
      winders: 4,
      winderNarrowEnd: millimetres(150),
      winderDepth: millimetres(200),
      use: "private",
    };
    expect(verdict(code, "narrow end", facts)).toBe("pass");
    expect(verdict(shipped("nbc-ca-2020"), "tapered tread run narrow end", facts)).toBe("fail");
  });

  test("BCAB 1263: tapered treads that differ by more than 5 mm between neighbours", () => {
    const at = (spread: number) =>
      verdict(shipped("bc-2024-part9"), "tapered run uniformity", { turnTreads: "tapered", winders: 4, winderSpread: millimetres(spread) });
    expect([at(5), at(6), at(10), at(11)]).toEqual(["pass", "judge", "judge", "fail"]);
  });

  test("BCAB 1595, 1408M and 1526: rails to climb on, and places that need no guard, are named as not checked", () => {
    for (const id of ["nbc-ca-2020", "obc-2024-part9", "bc-2024-part9"]) {
      const items = shipped(id).outOfScope.map(({ item }) => item);
      expect(items).toEqual(expect.arrayContaining(["guard climb zone", "guard exempt"]));
    }
    const deck: CodeFacts = { outside: "yes", use: "private", fallHeight: millimetres(1800), landingGuardHeight: millimetres(900) };
    expect(verdict(shipped("bc-2024-part9"), "guard height", deck)).toBe("pass");
  });

  // Ontario Building Code Commission 00-14-746: a landing 1093 by 915 mm on a stair 1093 mm wide that turns there; as long as the stair is
  // wide.
  test("BCC 00-14-746: a landing is as long as the stair is wide", () => {
    const facts: CodeFacts = { width: millimetres(1093), landing: "turn", landingDepth: millimetres(915), landingWidth: millimetres(1093) };
    expect(rowOf("landing depth", facts, [], [], shipped("obc-2024-part9"))).toMatchObject({ verdict: "fail", limit: 1093, margin: -178 });
    expect(verdict(shipped("obc-2024-part9"), "landing width", facts)).toBe("pass");
  });

  test("Ireland: a first riser of 175 mm under others of 200 is not the same rise, for which the document prints no tolerance", () => {
    const steps = [175, 200, 200, 200].map((rise, index) => ({ step: index + 1, rise: millimetres(rise) }));
    expect(rowOf("riser uniformity", {}, steps, [], shipped("ie-tgd-k"))).toMatchObject({ verdict: "judge", given: 25 });
  });
});

describe("worked examples", () => {
  test("design note, 7 in riser with 11 in tread: 25 keeps one rule of thumb, 77 breaks the other, which only cautions", () => {
    const facts = { riserHeight: inches(7), treadDepth: inches(11) };
    expect(rowOf("two r plus t", facts, [], [], shipped("trade-rules"))).toMatchObject({ given: 25, verdict: "pass" });
    expect(rowOf("r times t", facts, [], [], shipped("trade-rules"))).toMatchObject({ given: 77, verdict: "caution" });
  });

  test("German house, 3.20 m in 16 risers of 20 cm with 23 cm treads: step measure 63 cm passes DIN 18065 for dwellings", () => {
    const facts = { totalRise: millimetres(3200), risers: 16, riserHeight: millimetres(200), treadDepth: millimetres(230) };
    const din = shipped("din-18065-dwelling");
    for (const item of ["riser height", "tread depth", "two r plus g"]) expect(verdict(din, item, facts)).toBe("pass");
    expect(rowOf("two r plus g", facts, [], [], din).given).toBe(63);
  });
});

describe("boundaries worked out of the tables", () => {
  test("a flight of 151 in passes the IRC of 2018, 2021 and 2024, and fails the 147 in of 2015", () => {
    const facts = { totalRise: inches(151) };
    for (const id of ["irc-2018", "irc-2021", "irc-2024"]) expect(verdict(shipped(id), "flight vertical rise", facts)).toBe("pass");
    const earlier = built("irc-2015", {
      item: "flight vertical rise",
      clause: "R311.7.3",
      unit: "in",
      text: "147",
      rule: { comparator: "max", of: "totalRise", max: figure("147", "in") },
    });
    expect(verdict(earlier, "flight vertical rise", facts)).toBe("fail");
  });

  test("7 1/2 by 10 1/2 passes the IRC and fails the IBC", () => {
    const facts = { riserHeight: inches(7.5), treadDepth: inches(10.5) };
    for (const item of ["riser height", "tread depth"]) {
      expect(verdict(shipped("irc-2021"), item, facts)).toBe("pass");
      expect(verdict(shipped("ibc-2021"), item, facts)).toBe("fail");
    }
  });

  test("180, 185, 190, 195 mm pass neighbour by neighbour and fail over the flight", () => {
    const steps = [180, 185, 190, 195].map((rise, index) => ({ step: index + 1, rise: millimetres(rise) }));
    expect(verdict(shipped("obc-part9"), "riser uniformity adjacent", {}, steps)).toBe("pass");
    expect(rowOf("riser uniformity", {}, steps, [], shipped("obc-part9"))).toMatchObject({ verdict: "fail", given: 15, margin: -5 });
  });

  test("a riser of 180 mm passes the printed millimetres and fails the inches, which decide", () => {
    expect(verdict(shipped("ada-2010"), "riser height", { egress: "yes", riserHeight: millimetres(180) })).toBe("fail");
    expect(verdict(shipped("ada-2010"), "riser height", { egress: "yes", riserHeight: millimetres("177.8") })).toBe("pass");
  });

  test("fifteen risers of 7 1/2 with a last one of 7 1/16", () => {
    expect(verdict(shipped("irc-2021"), "riser uniformity", {}, flight("rise", [...Array.from({ length: 14 }, () => 7.5), 7.0625]))).toBe(
      "fail",
    );
  });

  test("Approved Document K: 220 by 220 keeps rise and going and breaks the pitch of 42 degrees", () => {
    const facts = { riserHeight: millimetres(220), treadDepth: millimetres(220) };
    const adk = shipped("uk-adk-private");
    expect(verdict(adk, "riser height", facts)).toBe("pass");
    expect(verdict(adk, "going", facts)).toBe("pass");
    expect(verdict(adk, "pitch", facts)).toBe("fail");
  });

  test("Australia has a second table for stairs to rooms used infrequently", () => {
    const steep = { riserHeight: millimetres(220), treadDepth: millimetres(220) };
    const au = shipped("au-ncc-2022-class1");
    expect(verdict(au, "riser height", steep)).toBe("fail");
    expect(verdict(au, "riser height", { ...steep, infrequent: "yes" })).toBe("does not apply");
  });
});
