import type { OutOfScope, Source } from "../profile";
import { edition } from "../record/edition";
import { HALF, limitRecord, type LimitRecord, outsideRecord } from "../record/limit-record";
import { printed, span } from "../record/printed-figure";
import {
  BOTH_HANDRAILS, flightWidth, GUARD_NEEDED, HANDRAIL_PROVIDED, HAS_GUARD, HAS_HANDRAIL, HAS_WINDERS, OUTSIDE, RISERS_OPEN, WINDERS,
} from "../record/stair-conditions";

const ADK_2013: Source = { title: "Approved Document K, 2013 edition" };
const ADK_1998: Source = { title: "Approved Document K, 1998 edition" };
const ADK_UNNAMED: Source = { title: "Approved Document K, edition not named" };
const HSE: Source = {
  title: "Health and Safety Executive, handrails",
  address:
    "https://www.hse.gov.uk/SLIPS/step/general/advanced/8E7F777B-3B84-49FE-A3D6-D0324E25A801/HSLCourseTemplate/28531/slidetype1_261324.htm",
};

const limit = limitRecord({ unit: "mm", status: "checked against the code's text", sources: [ADK_2013] });

const RECORDS: readonly LimitRecord[] = [
  limit({
    item: "riser height", clause: "1.3 Table 1.1", text: "150 to 220",
    measured: "plumb, tread to tread",
    rule: { comparator: "range", of: "riserHeight" },
  }),
  limit({
    item: "going", clause: "1.3 Table 1.1", text: "220 to 300",
    measured: "level, nosing to nosing",
    rule: { comparator: "range", of: "treadDepth" },
    exceptions: [{
      when: { all: [OUTSIDE, HAS_WINDERS] },
      words: "outdoor steps with tapered treads: a going of 280 to 300 mm",
      then: { comparator: "range", of: "treadDepth", ...span("280 to 300 mm") },
    }],
  }),
  limit({
    item: "two r plus g", clause: "1.3 Table 1.1 note *", text: "550 to 700",
    measured: "twice the riser plus the going",
    rule: { comparator: "range", of: { formula: "two risers plus run" } },
    advisory: true,
    remark: "named as what is usual, so it cautions and never fails",
  }),
  limit({
    item: "headroom", clause: "1.11 Diagram 1.3", text: "2000",
    measured: "plumb above the pitch line",
    rule: { comparator: "min", of: "headroom" },
    exceptions: [{
      when: { fact: "loft", is: ["yes"], otherwise: "no" },
      words: "a loft conversion with little room: 1900 mm at the centre, 1800 mm at the side (not yet checked)",
      then: {
        comparator: "every", needs: "any",
        parts: [
          { comparator: "min", of: "headroom", min: printed("1900 mm") },
          { comparator: "min", of: "headroomAtSide", min: printed("1800 mm") },
        ],
      },
    }],
    status: "not yet checked", sources: [ADK_UNNAMED],
    remark: "clause number not yet checked",
  }),
  limit({
    item: "tapered tread going", clause: "1.25-1.27", text: "all alike, and at least the straight going",
    measured: "going of the tapered treads at the measuring point",
    rule: {
      comparator: "every", needs: "all",
      parts: [
        { comparator: "relation", of: "winderDepth", sense: "at least", than: ["treadDepth"] },
        { comparator: "uniformity", of: { spread: "winderSpread" }, within: "flight", tolerance: printed("0 mm") },
      ],
    },
    applies: [WINDERS],
    remark: "give winders alike, yes, where they were measured and do not differ",
  }),
  limit({
    item: "tapered going measure point", clause: "Diagram 1.9", text: "270 mm from each side; under 1 m wide the middle",
    measured: "from the side to where the going of tapered treads is measured",
    rule: {
      comparator: "table",
      rows: [
        {
          when: flightWidth({ atLeast: printed("1 m") }),
          words: "a flight 1 m wide or wider: 270 mm in from each side",
          rule: { comparator: "equals", of: "walkline", values: [printed("270 mm")] },
        },
        {
          when: { any: [{ given: "clearWidth" }, { given: "width" }] },
          words: "a flight under 1 m wide: in the middle",
          rule: { comparator: "relation", of: "walkline", sense: "exactly", than: ["clearWidth", "width"], part: HALF },
        },
      ],
    },
    applies: [WINDERS],
    status: "checked against another edition", sources: [ADK_1998],
  }),
  limit({
    item: "tapered going narrow end", clause: "Diagram 1.9", text: "50",
    measured: "at the narrow end of the tread",
    rule: { comparator: "min", of: "winderNarrowEnd" },
    applies: [WINDERS],
    status: "checked against another edition", sources: [ADK_1998],
  }),
  limit({
    item: "pitch", clause: "1.3 Table 1.1 note 1", unit: "deg", text: "42",
    measured: "from level",
    rule: { comparator: "max", of: { formula: "pitch" } },
    remark: "holds beside the limits of rise and going: 220 on 220 keeps both and is 45 degrees",
  }),
  limit({
    item: "riser uniformity", clause: "1.3", text: "alike, no figure",
    measured: "rise and going of the steps of a flight",
    rule: {
      comparator: "alike", of: ["rise", "run"],
      sense: "every step of a flight is to have the same rise and the same going; no figure is given",
    },
  }),
  limit({
    item: "open riser tread overlap", clause: "Diagram 1.1", text: "16",
    measured: "how far a tread laps over the one below",
    rule: { comparator: "min", of: "nosing" },
    applies: [RISERS_OPEN],
  }),
  limit({
    item: "open riser opening", clause: "1.9b", text: "100",
    measured: "clear opening between two treads",
    rule: { comparator: "sphere", of: "openRiserGap" },
    applies: [
      RISERS_OPEN, { when: { fact: "children", is: ["yes"], otherwise: "yes" }, words: "children under five are likely to use it" },
    ],
    status: "not yet checked", sources: [ADK_UNNAMED],
  }),
  limit({
    item: "consecutive risers before turn", clause: "1.17", unit: "count", text: "36", counts: "stair",
    measured: "risers one after another without a turn",
    rule: { comparator: "max", of: "risersBeforeTurn" },
    status: "not yet checked", sources: [ADK_UNNAMED],
    remark: "beyond that the stair turns by at least 30 degrees (not yet checked)",
  }),
  limit({
    item: "door clearance at bottom", clause: "1.24", text: "400",
    measured: "landing left clear of the swing of the door",
    rule: { comparator: "min", of: "doorClearance" },
    applies: {
      when: { any: [{ fact: "doorSwing", is: ["yes"], otherwise: "no" }, { given: "doorClearance" }] },
      words: "a door swings over the bottom landing",
    },
  }),
  limit({
    item: "landing depth", clause: "1.20", text: "the least width of the flight",
    measured: "width and going of the landing",
    rule: { comparator: "relation", of: ["landingDepth", "landingWidth"], sense: "at least", than: ["clearWidth", "width"] },
    status: "checked against another edition", sources: [ADK_UNNAMED],
  }),
  limit({
    item: "handrail height", clause: "1.34-1.36", text: "900 to 1000",
    measured: "plumb above the pitch line",
    rule: { comparator: "range", of: "handrailHeight" },
    applies: [HAS_HANDRAIL],
    status: "checked against another edition", sources: [HSE, ADK_UNNAMED],
    remark: "clause number not yet checked",
  }),
  limit({
    item: "handrail required", clause: "1.34", unit: "count", text: "every stair",
    measured: "whether there is a handrail, however few the risers",
    rule: { comparator: "required", requires: "a handrail on one side at least", provided: HANDRAIL_PROVIDED },
    status: "checked against another edition", sources: [HSE],
    remark: "the two bottom steps are free by the text of 1998; whether by this one was not read",
  }),
  limit({
    item: "handrail sides", clause: "1.34", unit: "count", text: "both sides if 1000 mm wide or wider, else one",
    measured: "sides of the flight with a handrail",
    rule: {
      comparator: "table",
      rows: [
        {
          when: flightWidth({ atLeast: printed("1000 mm") }), words: "1000 mm wide or wider",
          rule: { comparator: "required", requires: "a handrail on both sides", provided: BOTH_HANDRAILS },
        },
        {
          when: { any: [{ given: "clearWidth" }, { given: "width" }] }, words: "under 1000 mm wide",
          rule: { comparator: "required", requires: "a handrail on one side at least", provided: HANDRAIL_PROVIDED },
        },
      ],
    },
    status: "checked against another edition", sources: [HSE, ADK_UNNAMED],
  }),
  limit({
    item: "guard required drop", clause: "1.41", text: "more than 600",
    measured: "drop from the open side",
    rule: {
      comparator: "required-when", of: "fallHeight", requires: "a guard along the open side",
      provided: HAS_GUARD,
    },
  }),
  limit({
    item: "guard height stair", clause: "3.2 Diagram 3.1", text: "900",
    measured: "top of the guard above the pitch line",
    rule: { comparator: "min", of: "guardHeight" },
    applies: [GUARD_NEEDED],
  }),
  limit({
    item: "guard height landing", clause: "3.2 Diagram 3.1", text: "900",
    measured: "landings and edges of floors, indoors",
    rule: { comparator: "min", of: "landingGuardHeight" },
    applies: [GUARD_NEEDED],
    exceptions: [{
      when: OUTSIDE, words: "balconies and edges of roofs outdoors: 1100 mm",
      then: { comparator: "min", of: "landingGuardHeight", min: printed("1100 mm") },
    }],
  }),
  limit({
    item: "guard opening", clause: "3.3", text: "100",
    measured: "largest opening in the guard",
    rule: { comparator: "sphere", of: ["guardGap", "landingGuardGap"] },
    applies: [
      GUARD_NEEDED, { when: { fact: "children", is: ["yes"], otherwise: "yes" }, words: "children under five are likely to use it" },
    ],
  }),
];

const outside = outsideRecord({ status: "checked against the code's text", sources: [ADK_2013] });

const OUT_OF_SCOPE: readonly OutOfScope[] = [
  outside({
    item: "handrail grip", clause: "1.35", unit: "in words",
    text: "firm support and a firm grip; no size for dwellings",
    reason: "not in the stair table", status: "checked against another edition", sources: [HSE],
  }),
  outside({
    item: "alternating tread", clause: "1.30 Diagram 1.10", unit: "mm",
    text: "rise at most 220, going at least 220, headroom at least 2000", reason: "alternating stair",
  }),
];

/** Approved Document K, 2013 edition: private stairs. */
export const ukAdkPrivate = edition({
  id: "uk-adk-private",
  title: "Approved Document K, private stair",
  edition: "2013",
  region: "England",
  family: "UK ADK",
  isOneKind: true,
  untypedNosing: "none",
  records: RECORDS,
  outOfScope: OUT_OF_SCOPE,
});
