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
    says: "One row a code.",
    columns: {
      code: { kind: "label", says: "What CHECK, LIMIT and CHOICES take." },
      title: { kind: "text", says: "Title of the code." },
      edition: { kind: "text", says: "Edition." },
      region: { kind: "text", says: "Where it counts, where adopted." },
      limits: { kind: "count", says: "Records of the code held here." },
      seenInASource: { kind: "count", says: "Of them read in a source; the others are from memory." },
      checked: { kind: "count", says: "Held against the stair." },
      shown: { kind: "count", says: "Shown without a verdict." },
      outOfScope: { kind: "count", says: "Not of an ordinary stair's sizes: spiral, ship's and alternating stairs, loads, doors, lifts." },
    },
  },
  problems: {},
  examples: [
    {
      given: {},
      shows: [
        { code: "irc-2021", edition: "2021", limits: 45, seenInASource: 43, checked: 37, shown: 0, outOfScope: 8 },
        { code: "ada-2010", limits: 16, seenInASource: 16 },
      ],
      from: "by hand, record by record of IRC 2021: 37 limits, 5 spiral rows and 3 loads; two loads were not seen; of ADA 2010 all 16 were seen",
    },
  ],
  source: "Counted from the profiles themselves; a test holds the counts against numbers counted by hand.",
  caution: CAUTION,
  solve: () => PROFILES.map((profile) => ({ code: profile.id, title: profile.title, edition: profile.edition, region: profile.region, ...profileCounts(profile) })),
});
