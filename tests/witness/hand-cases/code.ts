import type { WorkedCase } from "../case-kind";

/** Columns of CODES. */
const [LIMITS, CONFIRMED, CHECKED, SHOWN, OUT_OF_SCOPE] = [4, 5, 6, 7, 8] as const;

export const codeCases: Readonly<Record<string, readonly WorkedCase[]>> = {
  CHECK: [
    {
      given: {
        stair: [
          ["unit rise", 7.5],
          ["run", 10],
        ],
        code: "irc-2021",
        steps: [
          ["step", "rise"],
          [1, 7.5],
          [2, 7.5],
          [3, 7.0625],
        ],
      },
      shows: [
        {
          item: "riser uniformity",
          note: "at most 3/8 in apart; largest 7 1/2 in at step 1, smallest 7 1/16 in at step 3; worst is step 3",
        },
      ],
      from: "IRC 2021 R311.7.5.1: 3/8 in; by hand the first of the two largest, and the step that is off from the others",
    },
    {
      given: {
        stair: [["unit rise", 7.5]],
        code: "irc-2021",
        steps: [
          ["step", "run", "width", "nosing"],
          [1, 10, 36.5, 1.25],
          [2, 9.5, 35.5, 0.75],
        ],
      },
      shows: [
        { item: "tread depth", given: 9.5, margin: -0.5, verdict: "fail" },
        { item: "tread uniformity", given: 0.5, limit: 0.375, verdict: "fail" },
        { item: "clear width above handrail", given: 35.5, limit: 36, margin: -0.5, verdict: "fail" },
        { item: "nosing projection uniformity", given: 0.5, limit: 0.375, verdict: "fail" },
      ],
      from: "IRC 2021 R311.7.5.2 (10, 3/8), R311.7.1 (36), R311.7.5.3 (3/8); by hand the second step is half an inch short of each",
    },
    {
      given: {
        stair: [
          ["unit rise", 7.5],
          ["run", 9.75],
          ["headroom found", 79],
        ],
        code: "irc-2021",
        amendments: [
          ["item", "limit"],
          ["tread depth", 9.5],
          ["headroom", 78],
        ],
      },
      shows: [
        { item: "tread depth", limit: 9.5, margin: 0.25, verdict: "pass" },
        { item: "headroom", limit: 78, margin: 1, verdict: "pass" },
      ],
      from: "by hand: amended to 9 1/2 and 78, each its own; 1/4 and 1 to spare",
    },
    {
      given: {
        stair: [
          ["unit rise", 7.5],
          ["run", 10],
          ["guard", "yes"],
          ["guard gap", 4.375],
        ],
        code: "irc-2021",
      },
      shows: [{ item: "guard opening stair side", given: 4.375, limit: 4.375, margin: 0, verdict: "judge" }],
      from: "IRC 2021 R312.1.3, exception 2: a ball of 4 3/8 in must not pass; by hand an opening of just that",
    },
    {
      given: {
        stair: [
          ["unit rise", 7.5],
          ["run", 10],
        ],
        code: "au-ncc-2022-class1",
      },
      shows: [{ item: "stair width", verdict: "no limit" }],
      from: "ABCB Housing Provisions Standard: no least width of a stair",
    },
    {
      given: {
        stair: [
          ["unit rise", 5],
          ["run", 10],
        ],
        code: "trade-rules",
      },
      shows: [{ item: "two r plus t", given: 20, limit: "24 to 25", margin: -4, verdict: "caution" }],
      from: "common practice, no source: two rises and a run make 24 to 25; by hand 20",
    },
  ],
  CODES: [
    {
      given: {},
      shows: [
        {
          code: "irc-2021",
          title: "International Residential Code",
          region: "United States, one- and two-family dwellings and townhouses, where adopted",
        },
        { code: "ibc-2021", title: "International Building Code", edition: "2021" },
      ],
      from:
        "the title pages: International Residential Code for one- and two-family dwellings, International Building Code; IRC 2021 " +
        "R101.2, scope: detached one- and two-family dwellings and townhouses",
    },
    {
      given: {},
      keeps: ([, ...codes]) =>
        codes.every(
          (code) =>
            code[LIMITS] === Number(code[CHECKED]) + Number(code[SHOWN]) + Number(code[OUT_OF_SCOPE]) &&
            Number(code[CONFIRMED]) <= Number(code[LIMITS]),
        ) &&
        codes.some((code) => Number(code[CONFIRMED]) < Number(code[LIMITS])) &&
        codes.some((code) => Number(code[SHOWN]) > 0),
      from:
        "law: a limit is compared with the stair, shown, or out of scope, and none is confirmed that is not there; some are not " +
        "confirmed yet",
    },
  ],
};
