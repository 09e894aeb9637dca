import { amendedProfile } from "../../../src/solver/code/amended-profile";
import { coverage, limitsOn, TOPIC_NAMES, TOPICS } from "../../../src/solver/code/coverage";
import { facts } from "../../../src/solver/code/facts";
import { limitInForce } from "../../../src/solver/code/limit-in-force";
import { namedLimit } from "../../../src/solver/code/named-limit";
import { foundCode, PROFILES } from "../../../src/solver/code/profiles";
import { choices } from "../../../src/solver/layout/choices";
import { isProblem } from "../../../src/solver/problem";
import { COUNTED } from "./counted-by-hand";
import { inches, millimetres, profileOf, row, rowsOf, verdict } from "./stair-check";

const CODES = PROFILES.filter(({ isCode }) => isCode !== false);

const known = (given: Parameters<typeof facts>[0], marks: Parameters<typeof facts>[2] = {}) => {
  const found = facts(given, "in", marks);
  if (isProblem(found)) throw new Error(found.problem);
  return found;
};

/** A stair without a handrail, with an open side and winders, of which nothing else is given. */
const BARE = {
  handrails: "none",
  winders: 3,
  winderDepth: inches(9),
  totalRise: inches(108.5),
  risers: 14,
  riserHeight: inches(7.75),
  treadDepth: inches(10),
} as const;

describe("every topic of every code", () => {
  test.each(CODES.map((profile) => [profile.id, profile] as const))(
    "%s has a limit, none in this code, or is listed as not on file",
    (id, profile) => {
      const missing = TOPIC_NAMES.filter((topic) => limitsOn(topic, profile).length === 0);
      expect(COUNTED[id]?.notOnFile).toEqual(missing);
      for (const topic of TOPIC_NAMES) expect(["limit", "none in this code", "not on file"]).toContain(coverage(topic, profile));
    },
  );

  test("the rules of the trade are no code and have no topics", () => {
    expect(COUNTED["trade-rules"]?.notOnFile).toBeUndefined();
    expect(rowsOf(BARE, [], [], profileOf("trade-rules")).some((one) => one.verdict === "not on file")).toBe(false);
  });

  test("a code is said to have no limit only with a clause and a source", () => {
    const none = CODES.flatMap((profile) =>
      TOPIC_NAMES.filter((topic) => coverage(topic, profile) === "none in this code").map((topic) => ({ profile, topic })),
    );
    expect(none.map(({ profile, topic }) => `${profile.id}, ${topic}`)).toEqual(
      ["au-ncc-2022-class1", "nz-d1as1", "nz-d1as1-secondary", "nz-d1as1-minor", "nz-d1as1-accessible"].map((id) => `${id}, width`),
    );
    for (const { profile, topic } of none) {
      for (const { clause, status } of limitsOn(topic, profile))
        expect([clause !== "", status !== "not yet checked"]).toEqual([true, true]);
    }
  });

  test.each(CODES.map(({ id }) => id))("CHECK of %s has a row for every topic", (id) => {
    const rows = rowsOf(BARE, [], [], profileOf(id));
    for (const topic of TOPIC_NAMES) {
      const answers = rows.filter(({ item }) => item === topic || (TOPICS[topic] as readonly string[]).includes(item));
      expect([
        topic,
        answers.length > 0 || ((COUNTED[id]?.notOnFile ?? []).length < TOPIC_NAMES.length && limitsOn(topic, profileOf(id)).length > 0),
      ]).toEqual([topic, true]);
    }
    expect(rows.filter((one) => one.verdict === "not on file").map(({ item }) => item)).toEqual(COUNTED[id]?.notOnFile);
  });

  test.each(CODES.map(({ id }) => id))("no handrail at all never reads as approval in %s", (id) => {
    const profile = profileOf(id);
    const wanted = [...limitsOn("handrail required", profile).map(({ item }) => item), "handrail required"];
    const rows = rowsOf({ ...BARE, egress: "yes", width: inches(34) }, [], [], profile).filter(({ item }) => wanted.includes(item));
    expect(rows.length).toBeGreaterThan(0);
    for (const one of rows)
      expect([id, one.item, ["fail", "not given", "judge", "not on file"].includes(one.verdict)]).toEqual([id, one.item, true]);
  });

  test("limits that are for another kind of stair leave the topic not on file", () => {
    // NBC 2015: the headroom on file is that of a private stair.
    expect(verdict("nbc-ca-2015", "headroom", { use: "public", headroom: millimetres(1900) })).toBe("does not apply");
    const rows = rowsOf({ use: "public", headroom: millimetres(1900) }, [], [], profileOf("nbc-ca-2015")).filter(
      ({ item }) => item === "headroom",
    );
    expect(rows.map(({ verdict: word, limit }) => [word, limit])).toEqual([["does not apply", 1950], ["not on file", "not on file"]]);
    expect(rowsOf({ use: "private" }, [], [], profileOf("nbc-ca-2015")).some((one) => one.verdict === "not on file")).toBe(false);
    expect(row("irc-2021", "rise", { stairKind: "spiral", riserHeight: inches(9) }).verdict).toBe("not on file");
  });

  test("a width the code leaves free has no limit, with its clause", () => {
    expect(row("au-ncc-2022-class1", "stair width", { width: millimetres(700) })).toMatchObject({ verdict: "no limit" });
  });
});

describe("a value that nobody gave neither passes nor fails a stair", () => {
  const stair = { totalRise: inches(105), risers: 15, run: inches(10.5) };
  // 1 1/4 in is 31.75 mm, over the 25 mm of these five codes.
  test.each([
    ["obc-part9", "tread depth over run"], ["obc-2024-part9", "tread depth over run"], ["nbc-ca-2020", "tread depth over run"],
    ["nbc-ca-2015", "tread depth over run"], ["uk-adk-general", "nosing overlap"],
  ])("%s: a nosing nobody gave is none, one of 1 1/4 in fails", (id, item) => {
    expect(row(id, item, known(stair))).toMatchObject({ verdict: "assumed: would pass", given: 0 });
    expect(row(id, item, known({ ...stair, nosing: inches(1.25) }))).toMatchObject({ verdict: "fail", given: 31.75 });
  });

  // By hand: 109 over 7 3/4 is 14.06, so 15 risers of 7.2667 and 14 treads; 135 over 14 is 9.643.
  test("a count that was found here, and what follows from it, is assumed", () => {
    const found = known({ totalRise: inches(109), totalRun: inches(135) });
    expect(row("irc-2021", "riser height", found).verdict).toBe("assumed: would pass");
    expect(row("irc-2021", "tread depth", found).verdict).toBe("assumed: would fail");
    expect(row("irc-2021", "flight vertical rise", found).verdict).toBe("pass");
    expect(row("irc-2021", "riser height", known({ totalRise: inches(109), totalRun: inches(135), risers: 15 })).verdict).toBe("pass");
  });

  test("measured steps decide, whatever was assumed of the design", () => {
    const steps = [1, 2].map((step) => ({ step, nosing: inches(1.5) }));
    expect(row("irc-2021", "nosing projection", known(stair), steps)).toMatchObject({ verdict: "fail", given: 1.5 });
  });

  test("a run that is the board depth less a nosing nobody gave is assumed", () => {
    expect(row("irc-2021", "tread depth", known({ totalRise: inches(105), risers: 15, boardDepth: inches(11.25) })).verdict).toBe(
      "assumed: would pass",
    );
  });

  test("what another table marks as assumed is assumed", () => {
    const laidOut = {
      totalRise: inches(105),
      risers: 15,
      run: inches(10),
      nosing: inches(1.25),
      treadThickness: inches(1),
      stringerBoard: inches(11.25),
    };
    const marks = {
      nosing: "common practice, no source",
      treadThickness: "common practice, no source",
      stringerBoard: "a dry 2x12, PS 20",
    };
    const found = known(laidOut, marks);
    expect(row("irc-2021", "nosing projection", found)).toMatchObject({ verdict: "assumed: would pass" });
    expect(row("irc-2021", "nosing projection", found).note).toContain("nosing assumed: common practice");
    expect([found.treadThickness, found.stringerBoard, found.throat]).toEqual([undefined, undefined, undefined]);
  });

  test("the last rows count them apart", () => {
    const counts = rowsOf(known(stair), [], [], profileOf("obc-part9")).find(({ item }) => item === "verdicts")?.note ?? "";
    expect(counts).toContain("assumed: would pass 1;");
    expect(counts).toContain("not on file 0;");
  });
});

describe("codes by name", () => {
  test("a name without an edition is the newest on file", () => {
    expect(foundCode("IRC")).toMatchObject({ isNewest: true, profile: { id: "irc-2024" } });
    expect(foundCode("ibc")).toMatchObject({ isNewest: true, profile: { id: "ibc-2024" } });
    expect(foundCode("irc-2018")).toMatchObject({ isNewest: false, profile: { id: "irc-2018" } });
  });

  test("what is not known is answered with its own family or with none", () => {
    const hint = (code: string) => {
      const found = foundCode(code);
      return isProblem(found) ? found.details?.["hint"] : "found";
    };
    expect(hint("irc-2012")).toBe('; nearest is "irc-2018"');
    expect(hint("OSHA")).toBe("; say which: osha-1910.25 or osha-1926.1052");
    expect(hint("nfpa-101")).toBe("");
  });

  test("LIMIT says where nothing is on file and where there is no limit", () => {
    expect(limitInForce(profileOf("au-ncc-2022-vol1"), "headroom")).toMatchObject({ problem: "limit-not-on-file" });
    expect(limitInForce(profileOf("uk-adk-private"), "stair width")).toMatchObject({ problem: "limit-not-on-file" });
    expect(limitInForce(profileOf("au-ncc-2022-class1"), "stair width")).toMatchObject({ kind: "text", value: "none in this code" });
  });

  // One quantity in the words of several codes: IRC 2024 R318.7.5 (7 3/4 and 10 in), NBC 2020 Table 9.8.4.2. (280 mm), Approved Document K
  // Table 1.1.
  test.each([
    ["irc-2024", "going", "length", "254"],
    ["irc-2024", "run", "length", "254"],
    ["irc-2024", "rise", "length", "196.85"],
    ["irc-2024", "unit rise", "length", "196.85"],
    ["uk-adk-private", "tread depth", "text", "220 to 300"],
    ["nbc-ca-2020", "tread depth public", "length", "280"],
    ["nbc-ca-2020", "going", "text", "255 to 355"],
    ["au-ncc-2022-class1", "rise infrequent", "text", "130 to 225"],
    ["irc-2024", "going uniformity", "length", "9.525"],
    ["irc-2024", "rise uniformity", "length", "9.525"],
  ])("%s, %s", (id, item, kind, value) => {
    const found = limitInForce(profileOf(id), item, "mm");
    expect(isProblem(found) ? found.problem : [found.kind, found.value.toString()]).toEqual([kind, value]);
  });

  test("an amendment names its limit in those words too, and one limit by two of them is one twice", () => {
    const amended = (...items: string[]) =>
      amendedProfile(
        profileOf("irc-2021"),
        items.map((item) => ({ item, limit: "9 in", authority: "Alder County (invented)" })),
        "in",
      );
    const found = amended("going");
    if (isProblem(found)) throw new Error(found.problem);
    expect(limitInForce(found, "tread depth")).toMatchObject({ kind: "length", value: inches(9) });
    expect(amended("run", "tread depth")).toMatchObject({ problem: "amended-twice" });
  });

  test("what a code does not name is answered from its own topic, not with the word spelt most like it", () => {
    expect(limitInForce(profileOf("irc-2024"), "width")).toMatchObject({
      details: { nearest: '; nearest is "clear width above handrail"' },
    });
  });

  test.each(CODES.map((profile) => [profile.id, profile] as const))("%s: every item names its own limit", (_id, profile) => {
    for (const { item } of profile.limits) expect(namedLimit(profile, item)?.item).toBe(item);
  });

  // 29 CFR 1926.1052 limits the pitch (30 to 50 degrees) and gives no rise and run here.
  test("CHOICES does not pass what is not on file", () => {
    const found = choices(inches(105), undefined, profileOf("osha-1926.1052"), "in");
    if (isProblem(found)) throw new Error(found.problem);
    expect(found.map(({ verdict: word }) => word)).toContain("not on file");
    for (const { verdict: word } of found) expect(["not on file", "fail"]).toContain(word);
  });
});
