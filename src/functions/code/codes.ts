import { PROFILES } from "../../solver/code/profiles";
import { profileCounts } from "../../solver/code/profile-counts";
import { CAUTION } from "../caution";
import { declare } from "../declare";

export const CODES = declare({
  id: "CODES",
  group: "Code check",
  says: "The building codes that can be checked against, and how well each is founded.",
  parameters: {},
  result: {
    kind: "table",
    says: "One row per code.",
    columns: {
      code: { kind: "label", says: "What CHECK, LIMIT and CHOICES take." },
      title: { kind: "text", says: "Title of the code." },
      edition: { kind: "text", says: "Edition." },
      region: { kind: "text", says: "Where it applies; a model code only where it is adopted." },
      limits: { kind: "count", says: "Limits of the code on file." },
      confirmed: { kind: "count", says: "Limits checked against the text of that edition; CHECK names the source of each row." },
      checked: { kind: "count", says: "Limits that CHECK compares with the stair." },
      shown: { kind: "count", says: "Shown without a verdict." },
      outOfScope: {
        kind: "count",
        says: "Not checked: spiral, ship's and alternating stairs, loads, doors, lifts, and what no label of the stair table states.",
      },
    },
  },
  problems: {},
  examples: [
    {
      given: {},
      shows: [
        { code: "irc-2021", edition: "2021", limits: 48, confirmed: 48, checked: 37, shown: 0, outOfScope: 11 },
        { code: "ada-2010", limits: 18, confirmed: 18 },
      ],
      from:
        "by hand, limit by limit: IRC 2021 37 limits, 5 spiral rows, 3 loads and 3 rules in words, all in the text as adopted by " +
        "Texas; ADA 2010 all 18",
    },
  ],
  source: "Counted from the limits on file.",
  caution: CAUTION,
  solve: () =>
    PROFILES.map((profile) => ({
      code: profile.id,
      title: profile.title,
      edition: profile.edition,
      region: profile.region,
      ...profileCounts(profile),
    })),
});
