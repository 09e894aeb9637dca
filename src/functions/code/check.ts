import { codeCheck } from "../../solver/code/check";
import { facts } from "../../solver/code/facts";
import { codeProfile, PROFILES } from "../../solver/code/profiles";
import { isProblem } from "../../solver/problem";
import { CAUTION } from "../caution";
import { CODE_PROBLEMS } from "../code-problems";
import { declare, headings } from "../declare";
import { STAIR_PROBLEMS } from "../stair-problems";
import { amendments, steps } from "../tables";

/** Published units that are said; a slope and a count have none. */
const MEASURED: readonly string[] = ["in", "mm", "cm", "sq in", "deg"];

const STAIR = [["total rise", 108.5], ["risers", 14], ["run", 10], ["nosing", 1.25]] as const;

export const CHECK = declare({
  id: "CHECK",
  group: "Code check",
  says: "Every limit of a building code compared with a stair, with clause, margin and verdict.",
  parameters: {
    stair: {
      kind: "stair",
      says:
        "Labels as known; the more is given, of the building too (use, dwelling, egress, open risers), the fewer rows say `not " +
        "given` or `assumed`. A layout goes in as it stands.",
    },
    code: { kind: "text", says: "The code and its edition, such as irc-2021; without its edition, such as IRC, the newest on file." },
    steps: {
      kind: "table",
      table: steps,
      badRows: "refuse",
      optional: true,
      says: "The steps as built; only they tell how alike the steps are, and the worst of them decides.",
      without: "Left out: uniformity is `not given`.",
    },
    amendments: {
      kind: "table",
      table: amendments,
      badRows: "refuse",
      optional: true,
      says:
        "Limits the local authority has changed: the item as it stands in the result, the limit in force (34 to 38, 1:20, or " +
        "none), and who changed it.",
      without: "Left out: the code as printed. The page of codes, from About in the pane, has tables of eight states, ready to copy.",
    },
    headings,
  },
  result: {
    kind: "table",
    says:
      "One row per limit of the code, in the unit the code is printed in; then topics that are not on file, what is not checked, " +
      "what is assumed of the building, which labels to enter for the open rows, how many rows have " +
      "each verdict, the code, and the caution.",
    columns: {
      item: { kind: "label", says: "What the code limits." },
      given: { kind: "value", says: "The value compared with the limit, the worst where there are several." },
      limit: { kind: "value", says: "The limit in force." },
      margin: { kind: "value", says: "How far inside the limit; negative outside." },
      verdict: {
        kind: "text",
        says:
          "pass, fail, caution, not given, does not apply, judge where a person has to, assumed: would pass and assumed: would " +
          "fail where a value or an answer nobody gave decides, no limit where the code has none, not on file where that is not " +
          "known here.",
      },
      clause: { kind: "text", says: "Clause of the code." },
      sourceStatus: {
        kind: "text",
        says: "checked against the code's text, checked against another edition, or not yet checked; or who amended it.",
      },
      note: { kind: "text", says: "The limit in words, the worst step, conditions and exceptions, what else to give." },
      unit: { kind: "text", says: "Unit of given, limit and margin, in which the code is printed; empty for slopes, counts and words." },
    },
  },
  problems: {
    ...STAIR_PROBLEMS,
    ...CODE_PROBLEMS,
  },
  examples: [
    {
      given: { stair: STAIR, code: "IRC 2021" },
      shows: [
        {
          item: "riser height",
          given: 7.75,
          limit: 7.75,
          margin: 0,
          verdict: "pass",
          clause: "R311.7.5.1",
          sourceStatus: "checked against the code's text",
          unit: "in",
        },
        { item: "tread depth", given: 10, limit: 10, margin: 0, verdict: "pass", clause: "R311.7.5.2" },
        { item: "open riser opening", given: "", verdict: "not given" },
        { item: "flight vertical rise", given: 108.5, limit: 151, margin: 42.5, verdict: "pass", clause: "R311.7.3" },
        { item: "nosing projection", given: 1.25, limit: "0.75 to 1.25", margin: 0, verdict: "pass" },
        { item: "riser uniformity", given: "", limit: 0.375, margin: "", verdict: "not given" },
        { item: "handrail required risers", given: 14, limit: "4 or more", verdict: "not given", unit: "" },
      ],
      from:
        "IRC 2021 R311.7.3 (12 ft 7 in), R311.7.5.1 (7 3/4), R311.7.5.2 (10), R311.7.5.3 (3/4 to 1 1/4), R311.7.8 (4 risers); by " +
        "hand 108 1/2 / 14 = 7 3/4, 151 - 108 1/2 = 42 1/2",
    },
    {
      given: {
        stair: STAIR,
        code: "irc-2021",
        steps: [
          ["step", "rise"],
          [1, 7.5],
          [2, 7.5],
          [3, 7.0625],
        ],
      },
      shows: [{ item: "riser uniformity", given: 0.4375, limit: 0.375, margin: -0.0625, verdict: "fail", clause: "R311.7.5.1" }],
      from: "IRC 2021 R311.7.5.1, 3/8 in within a flight; by hand 7 1/2 - 7 1/16 = 7/16, 1/16 over",
    },
    {
      given: {
        stair: [
          ["unit", "mm"],
          ["unit rise", 196.85],
          ["run", 250],
        ],
        code: "irc-2021",
        amendments: [
          ["item", "limit", "authority"],
          ["tread depth", "9 in", "Alder County (invented)"],
        ],
      },
      shows: [
        { item: "riser height", given: 7.75, limit: 7.75, margin: 0, verdict: "pass" },
        { item: "tread depth", limit: 9, verdict: "pass", sourceStatus: "amended by Alder County (invented)" },
      ],
      from: "by hand: 196.85 / 25.4 = 7 3/4, which passes though 196 mm is printed beside it; 250 mm is 9.84 in",
    },
    {
      given: {
        stair: [
          ["total rise", 99],
          ["risers", 12],
          ["run", 9],
        ],
        code: "irc-2021",
        amendments: [
          ["item", "limit", "authority", "clause"],
          ["riser height", "8 1/4 in", "New Jersey", "R311.7.5.1"],
          ["tread depth", "9 in", "New Jersey", "R311.7.5.2"],
        ],
      },
      shows: [
        { item: "riser height", given: 8.25, limit: 8.25, margin: 0, verdict: "pass", sourceStatus: "amended by New Jersey" },
        { item: "tread depth", given: 9, limit: 9, margin: 0, verdict: "pass" },
      ],
      from:
        "IRC 2021 as adopted by New Jersey, R311.7.5.1 (8 1/4) and R311.7.5.2 (9), as " +
        "codes.html has the table; by hand 99 / 12 = 8 1/4",
    },
    {
      given: {
        stair: [
          ["total rise", 84],
          ["risers", 12],
          ["run", 10],
        ],
        code: "obc-2024-part9",
      },
      shows: [{ item: "tread depth over run", given: 0, limit: "0 to 25", verdict: "assumed: would pass" }],
      from: "by hand: nobody gave a nosing, and the code asks for none, so it is taken as 0, within 0 to 25 mm",
    },
    {
      given: {
        stair: [
          ["total rise", 84],
          ["risers", 12],
          ["run", 10],
        ],
        code: "osha-1926.1052",
      },
      shows: [
        { item: "rise", verdict: "not on file" },
        { item: "headroom", verdict: "not on file" },
      ],
      from: "by hand: no row of 29 CFR 1926.1052 gives a riser or a headroom, and that it has none was not read",
    },
    {
      given: { stair: STAIR, code: "nbc-ca-2020" },
      shows: [
        { item: "riser height", given: 196.85, limit: "125 to 200", verdict: "assumed: would pass" },
        { item: "riser height public", given: 196.85, limit: "125 to 180", verdict: "assumed: would fail" },
      ],
      from:
        "NBC 2020 Table 9.8.4.1.: private 125 to 200 mm, public 125 to 180 mm; by hand 7 3/4 x 25.4 = 196.85; nobody gave use, so " +
        "neither passes nor fails",
    },
    {
      given: { stair: [...STAIR, ["use", "public"]], code: "nbc-ca-2020" },
      shows: [
        { item: "riser height", verdict: "does not apply" },
        { item: "riser height public", given: 196.85, limit: "125 to 180", margin: -16.85, verdict: "fail" },
      ],
      from: "NBC 2020 Table 9.8.4.1.: public 125 to 180 mm; by hand 180 - 196.85 = -16.85",
    },
    {
      given: { stair: STAIR, code: "irc-2012" },
      fails: "#N/A",
      says: `code: "irc-2012" is not known; nearest is "irc-2018"; known are ${PROFILES.map(({ id }) => id).join(", ")}`,
      from: "by hand: irc-2018 is one digit away; the ids are those of CODES",
    },
  ],
  source:
    "The limits of the code, each with its clause and source; compared in the unit they are published in, the boundary passing. " +
    "An opening equal to the ball of a guard rule is for a person to judge.",
  caution: CAUTION,
  solve: ({ stair, code, steps: asBuilt, amendments: local }) => {
    const profile = codeProfile(code);
    if (isProblem(profile)) return profile;
    const known = facts(stair.given, stair.unit, stair.assumed);
    if (isProblem(known)) return known;
    const rows = codeCheck(
      known,
      profile,
      (asBuilt ?? []).map((row, index) => ({ ...row, step: row.step ?? index + 1 })),
      (local ?? []).map((row) => ({ item: String(row.item), limit: row.limit, authority: row.authority })),
    );
    return isProblem(rows) ? rows : rows.map((row) => ({ ...row, unit: MEASURED.includes(row.unit) ? row.unit : "" }));
  },
});
