import type { Source } from "../profile";
import { edition } from "../record/edition";
import { limitRecord, type LimitRecord } from "../record/limit-record";
import { printed } from "../record/printed-figure";
import { GUARD_TOPPED_BY_HANDRAIL, HANDRAIL_PROVIDED, HAS_GUARD, HAS_HANDRAIL, WINDERS, WITH_GUARD } from "../record/stair-conditions";

const WASHINGTON_155_477: Source = { title: "Washington Administrative Code 296-155-477, the state twin of 29 CFR 1926.1052" };
const OSHA_1999: Source = {
  title: "OSHA standard interpretation, 8 March 1999",
  address: "https://www.osha.gov/laws-regs/standardinterpretations/1999-03-08-0",
};
const OSHA_2004: Source = {
  title: "OSHA standard interpretation, 28 October 2004",
  address: "https://www.osha.gov/laws-regs/standardinterpretations/2004-10-28",
};
const CFR_1926: Source = { title: "29 CFR 1926.1052" };

const limit = limitRecord({ unit: "in", status: "not yet checked", sources: [CFR_1926] });

const RECORDS: readonly LimitRecord[] = [
  limit({
    item: "temporary landing depth", clause: "1926.1052(a)(1)", text: "30",
    measured: "in the direction of travel",
    rule: { comparator: "min", of: "landingDepth" },
    applies: { when: { fact: "temporary", is: ["yes"], otherwise: "yes" }, words: "the stair will not stay as part of the structure" },
    status: "checked against another edition", sources: [WASHINGTON_155_477],
  }),
  limit({
    item: "temporary landing width", clause: "1926.1052(a)(1)", text: "22",
    measured: "across the direction of travel",
    rule: { comparator: "min", of: "landingWidth" },
    applies: { when: { fact: "temporary", is: ["yes"], otherwise: "yes" }, words: "the stair will not stay as part of the structure" },
    status: "checked against another edition", sources: [WASHINGTON_155_477],
  }),
  limit({
    item: "flight vertical rise", clause: "1926.1052(a)(1)", text: "12 ft",
    measured: "between landings",
    rule: { comparator: "max", of: "totalRise" },
    applies: { when: { fact: "temporary", is: ["yes"], otherwise: "yes" }, words: "the stair will not stay as part of the structure" },
    status: "checked against another edition", sources: [WASHINGTON_155_477],
  }),
  limit({
    item: "pitch", clause: "1926.1052(a)(2)", unit: "deg", text: "30 to 50",
    measured: "from level",
    rule: { comparator: "range", of: { formula: "pitch" } },
  }),
  limit({
    item: "riser uniformity", clause: "1926.1052(a)(3)", text: "1/4",
    measured: "largest less smallest riser of the whole stairway, steps at the foundation among them",
    rule: { comparator: "uniformity", of: "rise", within: "flight" },
  }),
  limit({
    item: "tread uniformity", clause: "1926.1052(a)(3)", text: "1/4",
    measured: "largest less smallest tread depth of the whole stairway",
    rule: { comparator: "uniformity", of: "run", within: "flight" },
  }),
  limit({
    item: "door platform depth", clause: "1926.1052(a)(4)", text: "20",
    measured: "platform left clear of the swing of the door",
    rule: { comparator: "min", of: "doorPlatform" },
    applies: {
      when: { any: [{ fact: "doorSwing", is: ["yes"], otherwise: "no" }, { given: "doorPlatform" }] },
      words: "a door or gate opens on the stair",
    },
  }),
  limit({
    item: "handrail required", clause: "1926.1052(c)(1)", unit: "count", text: "4 or more risers, or more than 30 in", counts: "stair",
    measured: "risers and rise of the stairway",
    rule: {
      comparator: "required-when", of: "risers", from: { atLeast: printed("4 risers") },
      or: { of: "totalRise", from: { moreThan: printed("30 in") } },
      requires: "a handrail, and a stair rail on each open side,",
      provided: { all: [HANDRAIL_PROVIDED, { any: [{ fact: "openSides", is: ["none"] }, HAS_GUARD] }] },
    },
    status: "checked against the code's text",
    remark: "an older memorandum says 30 in or more: at exactly 30 in ask",
  }),
  limit({
    item: "winder handrail offset tread", clause: "1926.1052(c)(2)", text: "no walking where a tread is under 6 in",
    measured: "shallowest part of a winder that the handrail lets anyone walk on",
    rule: { comparator: "min", of: "winderNarrowEnd" },
    applies: [WINDERS],
    status: "checked against the code's text",
  }),
  limit({
    item: "stair rail height", clause: "1926.1052(c)(3)", text: "36",
    measured: "top of the stair rail above the tread, at the face of the riser",
    rule: { comparator: "min", of: "guardHeight" },
    applies: [
      WITH_GUARD,
      { when: { not: { fact: "installed", is: ["before 1991"], otherwise: "new" } }, words: "the rail was put in after 15 March 1991" },
    ],
    status: "checked against the code's text", sources: [OSHA_1999],
  }),
  limit({
    item: "guard required", clause: "1926.1052(c)(1)(ii)", unit: "count", text: "4 or more risers, or more than 30 in", counts: "stair",
    measured: "risers and rise of the stairway",
    rule: {
      comparator: "required-when", of: "risers", from: { atLeast: printed("4 risers") },
      or: { of: "totalRise", from: { moreThan: printed("30 in") } },
      requires: "a stair rail along each open side",
      provided: { any: [{ fact: "openSides", is: ["none"] }, HAS_GUARD] },
    },
    sources: [],
  }),
  limit({
    item: "guard opening", clause: "1926.1052(c)(4)(iii)", text: "19",
    measured: "between upright parts of a stair rail",
    rule: { comparator: "max", of: "guardGap" },
    applies: [WITH_GUARD],
    sources: [],
    remark: "a middle rail stands half way up",
  }),
  limit({
    item: "guard height landing", clause: "1926.1052(c)(12)", text: "39 to 45",
    measured: "guards of landings, to subpart M",
    rule: { comparator: "range", of: "landingGuardHeight" },
    applies: [WITH_GUARD],
    sources: [],
  }),
  limit({
    item: "handrail wall clearance", clause: "1926.1052(c)(11)", text: "3",
    measured: "free space between a handrail that will not stay and the wall",
    rule: { comparator: "min", of: "handrailClearance" },
    applies: [HAS_HANDRAIL],
    sources: [],
  }),
  limit({
    item: "handrail height", clause: "1926.1052(c)(6)", text: "30 to 37",
    measured: "above the tread, at the face of the riser",
    rule: { comparator: "range", of: "handrailHeight" },
    applies: [HAS_HANDRAIL],
    status: "checked against the code's text", sources: [OSHA_2004],
  }),
  limit({
    item: "stair rail as handrail height", clause: "1926.1052(c)(7)", text: "36 to 37",
    measured: "above the tread, at the face of the riser",
    rule: { comparator: "range", of: "guardHeight" },
    applies: [WITH_GUARD, { when: GUARD_TOPPED_BY_HANDRAIL, words: "the top of the stair rail is the handrail too" }],
    status: "checked against the code's text", sources: [OSHA_2004],
  }),
];

/** Stairways of construction sites: 29 CFR 1926.1052. */
export const osha19261052 = edition({
  id: "osha-1926.1052",
  title: "OSHA construction, stairways, 29 CFR 1926.1052",
  edition: "current",
  region: "United States, construction sites",
  family: "OSHA",
  isOneKind: true,
  records: RECORDS,
});
