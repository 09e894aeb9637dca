import type { OutOfScope, Source } from "../profile";
import { edition } from "../record/edition";
import { limitRecord, type LimitRecord, outsideRecord } from "../record/limit-record";
import { printed } from "../record/printed-figure";
import { HANDRAIL_PROVIDED, HAS_GUARD, HAS_HANDRAIL, SPECIAL_STAIR, SPIRAL, WITH_GUARD } from "../record/stair-conditions";

const OSHA_2025: Source = {
  title: "OSHA standard interpretation, 17 June 2025",
  address: "https://www.osha.gov/laws-regs/standardinterpretations/2025-06-17",
};
const OSHA_NEVADA: Source = {
  title: "29 CFR 1910.25, as given by Nevada OSHA, walking-working surfaces",
  address:
    "https://www.4safenv.state.nv.us/news/new-walking-working-surfaces-subpart-d-standard-updates-when-can-alternating-tread-type-spiral",
};
const OSHA_GUIDE: Source = { title: "29 CFR 1910.28, 2016 rule, as given by a secondary text" };
const CFR_1910: Source = { title: "29 CFR 1910, subpart D" };

const limit = limitRecord({ unit: "in", status: "not yet checked", sources: [CFR_1910] });

const RECORDS: readonly LimitRecord[] = [
  limit({
    item: "pitch", clause: "1910.25(c)(1)", unit: "deg", text: "30 to 50",
    measured: "from level",
    rule: { comparator: "range", of: { formula: "pitch" } },
    exceptions: [SPECIAL_STAIR],
    status: "checked against the code's text", sources: [OSHA_2025],
  }),
  limit({
    item: "riser height", clause: "1910.25(c)(2)", text: "9 1/2",
    measured: "plumb, tread to tread",
    rule: { comparator: "max", of: "riserHeight" },
    exceptions: [SPECIAL_STAIR],
    status: "checked against the code's text", sources: [OSHA_2025],
    remark: "decided in inches; the centimetres beside it are rounded",
  }),
  limit({
    item: "tread depth", clause: "1910.25(c)(3)", text: "9 1/2",
    measured: "level from nosing to nosing: the run, not the board",
    rule: { comparator: "min", of: "treadDepth" },
    exceptions: [SPECIAL_STAIR, {
      when: { fact: "installed", is: ["before 2017", "before 1991"], otherwise: "new" },
      words: "a stair put in before 17 January 2017 has a row of its own",
      then: "does not apply",
    }],
    status: "checked against the code's text", sources: [OSHA_2025],
    remark: "decided in inches; the centimetres beside it are rounded",
  }),
  limit({
    item: "stair width", clause: "1910.25(c)(4)", text: "22",
    measured: "between the barriers at the sides",
    rule: { comparator: "min", of: ["clearWidth", "width"] },
    exceptions: [SPECIAL_STAIR],
  }),
  limit({
    item: "tread depth pre 2017", clause: "1910.25(c)(5)", text: "8",
    measured: "level from nosing to nosing",
    rule: { comparator: "min", of: "treadDepth" },
    applies: {
      when: { fact: "installed", is: ["before 2017", "before 1991"], otherwise: "new" },
      words: "the stair was put in before 17 January 2017",
    },
    status: "checked against the code's text", sources: [OSHA_2025],
    remark: "the figure is from the background of an interpretation, not from the clause",
  }),
  limit({
    item: "headroom", clause: "1910.25(b)(2)", text: "6 ft 8 in",
    measured: "from the leading edge of the tread to whatever is above",
    rule: { comparator: "min", of: "headroom" },
    exceptions: [SPIRAL],
  }),
  limit({
    item: "riser uniformity", clause: "1910.25(b)(3)", text: "uniform, no figure",
    measured: "risers and tread depths between landings",
    rule: {
      comparator: "alike", of: ["rise", "run"],
      sense: "risers and tread depths are to be uniform between landings; the rule gives no figure",
    },
  }),
  limit({
    item: "landing depth", clause: "1910.25(b)(4)", text: "30",
    measured: "in the direction of travel; the landing is at least as wide as the stair",
    rule: {
      comparator: "every", needs: "any",
      parts: [
        { comparator: "min", of: "landingDepth" },
        { comparator: "relation", of: "landingWidth", sense: "at least", than: ["clearWidth", "width"] },
      ],
    },
  }),
  limit({
    item: "door platform depth", clause: "1910.25(b)(5)", text: "22",
    measured: "platform left clear of the swing of the door",
    rule: { comparator: "min", of: "doorPlatform" },
    applies: {
      when: { any: [{ fact: "doorSwing", is: ["yes"], otherwise: "no" }, { given: "doorPlatform" }] },
      words: "a door or gate opens on the stair",
    },
    exceptions: [{
      when: { fact: "installed", is: ["before 2017", "before 1991"], otherwise: "new" },
      words: "a platform put in before 17 January 2017: 20 in",
      then: { comparator: "min", of: "doorPlatform", min: printed("20 in") },
    }],
    sources: [],
  }),
  limit({
    item: "handrail required risers", clause: "1910.28(b)(11)(ii)", unit: "count", text: "3 treads and 4 risers", counts: "flight",
    measured: "risers of the flight; four risers make at least three treads",
    rule: {
      comparator: "required-when", of: "risers", from: { atLeast: printed("4 risers") }, requires: "a handrail",
      provided: HANDRAIL_PROVIDED,
    },
  }),
  limit({
    item: "handrail height", clause: "1910.29(f)(1)(i)", text: "30 to 38",
    measured: "from the leading edge of the tread",
    rule: { comparator: "range", of: "handrailHeight" },
    applies: [HAS_HANDRAIL],
  }),
  limit({
    item: "stair rail height", clause: "1910.29(f)(1)(ii)", text: "42",
    measured: "top of the stair rail above the leading edge of the tread",
    rule: { comparator: "min", of: "guardHeight" },
    applies: [WITH_GUARD],
    exceptions: [{
      when: { fact: "installed", is: ["before 2017", "before 1991"], otherwise: "new" },
      words: "a stair rail put in before 17 January 2017: 30 in",
      then: { comparator: "min", of: "guardHeight", min: printed("30 in") },
    }],
  }),
  limit({
    item: "guard required drop", clause: "1910.28(b)(11)(i)", text: "48 or more",
    measured: "unprotected side of a landing above the level below",
    rule: { comparator: "required-when", of: "fallHeight", requires: "a guard along the open side", provided: HAS_GUARD },
    status: "checked against the code's text", sources: [OSHA_GUIDE],
    remark: "a flight needs stair rails from 3 treads and 4 risers on, whatever the drop",
  }),
  limit({
    item: "guard opening", clause: "1910.29(f)(4)", text: "19",
    measured: "least dimension of an opening in a stair rail",
    rule: { comparator: "max", of: "guardGap" },
    applies: [WITH_GUARD],
    sources: [],
  }),
  limit({
    item: "handrail wall clearance", clause: "1910.29(f)(2)", text: "2 1/4",
    measured: "free space between handrail and wall",
    rule: { comparator: "min", of: "handrailClearance" },
    applies: [HAS_HANDRAIL],
    sources: [],
  }),
];

const outside = outsideRecord({ status: "checked against the code's text", sources: [OSHA_NEVADA] });

const OUT_OF_SCOPE: readonly OutOfScope[] = [
  outside({
    item: "design load", clause: "1910.25(b)(6)", unit: "lb", text: "5 times the live load, at least 1000 at one point",
    reason: "live load",
    status: "not yet checked", sources: [],
  }),
  outside({
    item: "special stairs only if infeasible", clause: "1910.25(b)(8)", unit: "text",
    text: "spiral, ship and alternating tread stairs only where a standard stair cannot be had", reason: "spiral stair",
  }),
  outside({
    item: "spiral clear width", clause: "1910.25(d)", unit: "in", text: "at least 26", reason: "spiral stair",
  }),
  outside({
    item: "spiral riser height", clause: "1910.25(d)", unit: "in", text: "at most 9 1/2", reason: "spiral stair",
  }),
  outside({
    item: "spiral headroom", clause: "1910.25(d)", unit: "in", text: "at least 6 ft 6 in", reason: "spiral stair",
  }),
  outside({
    item: "spiral tread depth", clause: "1910.25(d)", unit: "in", text: "at least 7 1/2", reason: "spiral stair",
  }),
  outside({
    item: "ship stair angle", clause: "1910.25(e)", unit: "deg", text: "50 to 70", reason: "ship's stair",
  }),
  outside({
    item: "ship stair riser", clause: "1910.25(e)", unit: "in", text: "6 1/2 to 12", reason: "ship's stair",
  }),
  outside({
    item: "ship stair tread depth", clause: "1910.25(e)", unit: "in", text: "at least 4", reason: "ship's stair",
  }),
  outside({
    item: "ship stair tread width", clause: "1910.25(e)", unit: "in", text: "at least 18", reason: "ship's stair",
  }),
  outside({
    item: "alternating stair angle", clause: "1910.25(f)", unit: "deg", text: "50 to 70", reason: "alternating stair",
  }),
  outside({
    item: "alternating handrail spacing", clause: "1910.25(f)", unit: "in", text: "17 to 24", reason: "alternating stair",
  }),
  outside({
    item: "alternating tread depth", clause: "1910.25(f)", unit: "in", text: "at least 8 1/2", reason: "alternating stair",
  }),
  outside({
    item: "alternating tread width", clause: "1910.25(f)", unit: "in", text: "at least 7", reason: "alternating stair",
  }),
];

/** Standard stairs of workplaces: 29 CFR 1910.25, with the handrails and stair rails of 1910.28 and 1910.29. */
export const osha191025 = edition({
  id: "osha-1910.25",
  title: "OSHA general industry, standard stairs, 29 CFR 1910.25",
  edition: "2016 final rule, in force from 17 January 2017",
  region: "United States, workplaces",
  family: "OSHA",
  isOneKind: true,
  records: RECORDS,
  outOfScope: OUT_OF_SCOPE,
});
