import type { Source } from "../profile";
import { edition } from "../record/edition";
import { limitRecord, type LimitRecord, outsideRecord } from "../record/limit-record";
import { printed } from "../record/printed-figure";
import {
  BOTH_HANDRAILS, flightWidth, GUARD_NEEDED, HANDRAIL_PROVIDED, HAS_GUARD, HAS_HANDRAIL, PUBLIC,
  RISERS_OPEN, ROUND_HANDRAIL, WINDERS,
} from "../record/stair-conditions";

const D1_AS1: Source = { title: "New Zealand Building Code, Acceptable Solution D1/AS1, edition not named" };
const F4: Source = { title: "New Zealand Building Code, clause F4 and Acceptable Solution F4/AS1, edition not named" };

const limit = limitRecord({ unit: "mm", status: "checked against another edition", sources: [D1_AS1] });

const RECORDS: readonly LimitRecord[] = [
  limit({
    item: "riser height", clause: "D1/AS1 Table 6", text: "190",
    measured: "plumb, tread to tread",
    rule: { comparator: "max", of: "riserHeight" },
  }),
  limit({
    item: "tread depth", clause: "D1/AS1 Table 6", text: "280",
    measured: "level, nosing to nosing",
    rule: { comparator: "min", of: "treadDepth" },
  }),
  limit({
    item: "pitch", clause: "D1/AS1 Table 6", unit: "deg", text: "37",
    measured: "from level",
    rule: { comparator: "max", of: { formula: "pitch" } },
  }),
  limit({
    item: "riser deviation from nominal", clause: "D1/AS1 4.1", text: "5",
    measured: "risers and treads of one flight as built, more or less than the size they are meant to have",
    rule: {
      comparator: "every", needs: "any",
      parts: [
        { comparator: "uniformity", of: "rise", within: "design" },
        { comparator: "uniformity", of: "run", within: "design", tolerance: printed("5 mm") },
      ],
    },
  }),
  limit({
    item: "nosing projection", clause: "D1/AS1 4.1", text: "15 to 25",
    measured: "how far the tread stands out over the riser below",
    rule: { comparator: "range", of: "nosing" },
    status: "not yet checked", sources: [],
    remark: "one text prints 15 to 20 mm",
  }),
  limit({
    item: "stair width", clause: "D1/AS1", text: "no least width for private stairs",
    measured: "width of the flight",
    rule: { comparator: "shown" },
  }),
  limit({
    item: "headroom", clause: "D1/AS1 1.3.4", text: "2100",
    measured: "plumb above the line of the nosings",
    rule: { comparator: "min", of: "headroom" },
    status: "not yet checked", sources: [],
    remark: "2000 mm may be enough within a household unit, which is not certain either",
  }),
  limit({
    item: "flight vertical rise", clause: "D1/AS1 4.3", text: "4.0 m",
    measured: "between landings, on a private stair",
    rule: { comparator: "max", of: "totalRise", max: printed("4.0 m") },
    exceptions: [{
      when: PUBLIC.when, words: "a common stair: 2500 mm",
      then: { comparator: "max", of: "totalRise", max: printed("2500 mm") },
    }],
  }),
  limit({
    item: "landing depth", clause: "D1/AS1 4.3", text: "the width of the stair; 900 mm on a common one",
    measured: "in the direction of travel",
    rule: { comparator: "relation", of: "landingDepth", sense: "at least", than: ["clearWidth", "width"] },
    exceptions: [{
      when: PUBLIC.when, words: "a common stair: 900 mm",
      then: { comparator: "min", of: "landingDepth", min: printed("900 mm") },
    }],
    status: "not yet checked", sources: [],
  }),
  limit({
    item: "open riser opening", clause: "D1/AS1 4.1", text: "100",
    measured: "clear opening between two treads, where children under six are likely",
    rule: { comparator: "sphere", of: "openRiserGap" },
    applies: [RISERS_OPEN],
    status: "not yet checked", sources: [],
  }),
  limit({
    item: "winder tread depth any point", clause: "D1/AS1 5.0", text: "50",
    measured: "at the narrow end of a winder of a private stair",
    rule: { comparator: "min", of: "winderNarrowEnd" },
    applies: [WINDERS],
    status: "not yet checked", sources: [],
  }),
  limit({
    item: "handrail sides", clause: "D1/AS1 6.0", unit: "count", text: "one side; both sides if wider than 2000 mm",
    measured: "sides of the flight with a handrail, however few its risers",
    rule: {
      comparator: "table",
      rows: [
        {
          when: flightWidth({ moreThan: printed("2000 mm") }), words: "wider than 2000 mm",
          rule: { comparator: "required", requires: "a handrail on both sides", provided: BOTH_HANDRAILS },
        },
        {
          when: { any: [{ given: "clearWidth" }, { given: "width" }] }, words: "up to 2000 mm wide",
          rule: { comparator: "required", requires: "a handrail on one side", provided: HANDRAIL_PROVIDED },
        },
      ],
    },
    remark: "wider than 4000 mm also one in the middle",
  }),
  limit({
    item: "handrail height", clause: "D1/AS1 6.0", text: "900 to 1000",
    measured: "plumb above the pitch line",
    rule: { comparator: "range", of: "handrailHeight" },
    applies: [HAS_HANDRAIL],
  }),
  limit({
    item: "handrail wall clearance", clause: "D1/AS1 6.0", text: "45 to 60",
    measured: "free space between handrail and wall",
    rule: { comparator: "range", of: "handrailClearance" },
    applies: [HAS_HANDRAIL],
  }),
  limit({
    item: "handrail grip circular diameter", clause: "D1/AS1 6.0", text: "32 to 50",
    measured: "diameter of a round handrail",
    rule: { comparator: "range", of: "grip" },
    applies: ROUND_HANDRAIL,
    status: "not yet checked", sources: [],
  }),
  limit({
    item: "guard required drop", clause: "F4.3.1", text: "1000 or more",
    measured: "fall from the open side",
    rule: { comparator: "required-when", of: "fallHeight", requires: "a barrier along the open side", provided: HAS_GUARD },
    sources: [F4],
  }),
  limit({
    item: "guard height stair", clause: "F4/AS1 Table 1", text: "900",
    measured: "above the pitch line, and on the landings of the stair, within a household unit",
    rule: { comparator: "min", of: "guardHeight" },
    applies: [GUARD_NEEDED],
    sources: [F4],
  }),
  limit({
    item: "guard height", clause: "F4/AS1 Table 1", text: "1000",
    measured: "balconies, decks and edges of floors, within a household unit",
    rule: { comparator: "min", of: "landingGuardHeight" },
    applies: [GUARD_NEEDED],
    sources: [F4],
    remark: "common areas and other buildings 1100 mm (from memory); the landings of a stair in a household unit 900 mm",
  }),
  limit({
    item: "guard opening", clause: "F4/AS1 1.2", text: "100",
    measured: "largest opening in the barrier, in housing and where children under six are likely",
    rule: { comparator: "sphere", of: ["guardGap", "landingGuardGap"] },
    applies: [GUARD_NEEDED],
    sources: [F4],
  }),
  limit({
    item: "guard opening stair triangle", clause: "F4/AS1 1.2", text: "150",
    measured: "triangle between riser, tread and bottom rail",
    rule: { comparator: "sphere", of: "triangleGap" },
    applies: [GUARD_NEEDED],
    sources: [F4],
  }),
];

const outside = outsideRecord({ status: "checked against another edition", sources: [D1_AS1] });

/** Common and main private stairs of New Zealand: the Acceptable Solutions D1/AS1 and F4/AS1. */
export const nzD1as1 = edition({
  id: "nz-d1as1",
  title: "New Zealand D1/AS1 and F4/AS1, common and main private stair",
  edition: "not named",
  region: "New Zealand",
  family: "NZ",
  isOneKind: true,
  records: RECORDS,
  outOfScope: [
    outside({
      item: "handrail start", clause: "D1/AS1 6.0", unit: "in words", text: "starts no further than riser 2 from the lower end",
      reason: "not in the stair table",
    }),
  ],
});
