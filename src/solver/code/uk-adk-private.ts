import { Exact } from "../length/exact";
import { count, degrees, limitRow, millimetres, outsideRow } from "./limit-row";
import type { CodeProfile, Limit, OutOfScope, Source } from "./profile";
import { BOTH_HANDRAILS, flightWidth, GUARD_NEEDED, HANDRAIL_PROVIDED, HAS_GUARD, HAS_WINDERS, OUTSIDE, RISERS_OPEN, WINDERS } from "./stair-conditions";

const ADK_2013: Source = { title: "Approved Document K, 2013 edition" };
const ADK_1998: Source = { title: "Approved Document K, 1998 edition" };
const ADK_UNNAMED: Source = { title: "Approved Document K, edition not named" };
const HSE: Source = {
  title: "Health and Safety Executive, handrails",
  address: "https://www.hse.gov.uk/SLIPS/step/general/advanced/8E7F777B-3B84-49FE-A3D6-D0324E25A801/HSLCourseTemplate/28531/slidetype1_261324.htm",
};

const limit = limitRow({ unit: "mm", status: "checked against the code's text", sources: [ADK_2013] });

const LIMITS: readonly Limit[] = [
  limit({
    item: "riser height", clause: "1.3 Table 1.1", text: "150 to 220",
    measured: "plumb, tread to tread",
    rule: { comparator: "range", of: "riserHeight", min: millimetres("150"), max: millimetres("220") },
  }),
  limit({
    item: "going", clause: "1.3 Table 1.1", text: "220 to 300",
    measured: "level, nosing to nosing",
    rule: { comparator: "range", of: "treadDepth", min: millimetres("220"), max: millimetres("300") },
    exceptions: [{
      when: { all: [OUTSIDE, HAS_WINDERS] },
      words: "outdoor steps with tapered treads: a going of at least 280 mm",
      then: { comparator: "range", of: "treadDepth", min: millimetres("280"), max: millimetres("300") },
    }],
  }),
  limit({
    item: "two r plus g", clause: "1.3 Table 1.1 note *", text: "550 to 700",
    measured: "twice the riser plus the going",
    rule: { comparator: "range", of: { formula: "two risers plus run" }, min: millimetres("550"), max: millimetres("700") },
    advisory: true,
    remark: "named as what is usual, so it cautions and never fails",
  }),
  limit({
    item: "headroom", clause: "1.11 Diagram 1.3", text: "2000",
    measured: "plumb above the pitch line",
    rule: { comparator: "min", of: "headroom", min: millimetres("2000") },
    exceptions: [{
      when: { fact: "loft", is: ["yes"], otherwise: "no" },
      words: "a loft conversion with little room: 1900 mm at the centre, 1800 mm at the side (not yet checked)",
      then: {
        comparator: "every", needs: "any",
        parts: [
          { comparator: "min", of: "headroom", min: millimetres("1900") },
          { comparator: "min", of: "headroomAtSide", min: millimetres("1800") },
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
        { comparator: "uniformity", of: { spread: "winderSpread" }, within: "flight", tolerance: millimetres("0") },
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
          when: flightWidth({ atLeast: millimetres("1000") }),
          words: "a flight 1 m wide or wider: 270 mm in from each side",
          rule: { comparator: "equals", of: "walkline", values: [millimetres("270")] },
        },
        {
          when: { any: [{ given: "clearWidth" }, { given: "width" }] },
          words: "a flight under 1 m wide: in the middle",
          rule: { comparator: "relation", of: "walkline", sense: "exactly", than: ["clearWidth", "width"], part: { of: "half", times: new Exact("0.5") } },
        },
      ],
    },
    applies: [WINDERS],
    status: "checked against another edition", sources: [ADK_1998],
  }),
  limit({
    item: "tapered going narrow end", clause: "Diagram 1.9", text: "50",
    measured: "at the narrow end of the tread",
    rule: { comparator: "min", of: "winderNarrowEnd", min: millimetres("50") },
    applies: [WINDERS],
    status: "checked against another edition", sources: [ADK_1998],
  }),
  limit({
    item: "pitch", clause: "1.3 Table 1.1 note 1", unit: "deg", text: "42",
    measured: "from level",
    rule: { comparator: "max", of: { formula: "pitch" }, max: degrees("42") },
    remark: "holds beside the limits of rise and going: 220 on 220 keeps both and is 45 degrees",
  }),
  limit({
    item: "open riser tread overlap", clause: "Diagram 1.1", text: "16",
    measured: "how far a tread laps over the one below",
    rule: { comparator: "min", of: "nosing", min: millimetres("16") },
    applies: [RISERS_OPEN],
  }),
  limit({
    item: "open riser opening", clause: "1.9b", text: "100",
    measured: "clear opening between two treads",
    rule: { comparator: "sphere", of: "openRiserGap", sphere: millimetres("100") },
    applies: [RISERS_OPEN, { when: { fact: "children", is: ["yes"], otherwise: "yes" }, words: "children under five are likely to use it" }],
    status: "not yet checked", sources: [ADK_UNNAMED],
  }),
  limit({
    item: "consecutive risers before turn", clause: "1.17", unit: "count", text: "36",
    measured: "risers one after another without a turn",
    rule: { comparator: "max", of: "risersBeforeTurn", max: count("36") },
    status: "not yet checked", sources: [ADK_UNNAMED],
    remark: "beyond that the stair turns by at least 30 degrees (not yet checked)",
  }),
  limit({
    item: "door clearance at bottom", clause: "1.24", text: "400",
    measured: "landing left clear of the swing of the door",
    rule: { comparator: "min", of: "doorClearance", min: millimetres("400") },
    applies: { when: { any: [{ fact: "doorSwing", is: ["yes"], otherwise: "no" }, { given: "doorClearance" }] }, words: "a door swings over the bottom landing" },
  }),
  limit({
    item: "handrail height", clause: "1.34-1.36", text: "900 to 1000",
    measured: "plumb above the pitch line",
    rule: {
      comparator: "every", needs: "first",
      parts: [
        { comparator: "range", of: "handrailHeight", min: millimetres("900"), max: millimetres("1000") },
        {
          comparator: "table",
          rows: [
            {
              when: flightWidth({ moreThan: millimetres("1000") }),
              words: "a flight more than 1 m wide",
              rule: { comparator: "required", requires: "a handrail on both sides", provided: BOTH_HANDRAILS },
            },
            {
              when: { any: [{ given: "clearWidth" }, { given: "width" }] },
              words: "a flight up to 1 m wide",
              rule: { comparator: "required", requires: "a handrail on one side", provided: HANDRAIL_PROVIDED },
            },
          ],
        },
      ],
    },
    status: "checked against another edition", sources: [HSE, ADK_UNNAMED],
    remark: "one side under 1 m wide, both sides if wider, held where width and handrails are given; clause number not yet checked",
  }),
  limit({
    item: "guard required drop", clause: "1.41", text: "more than 600",
    measured: "drop from the open side",
    rule: {
      comparator: "required-when", of: "fallHeight", from: { moreThan: millimetres("600") }, requires: "a guard along the open side",
      provided: HAS_GUARD,
    },
  }),
  limit({
    item: "guard height stair", clause: "3.2 Diagram 3.1", text: "900",
    measured: "top of the guard above the pitch line",
    rule: { comparator: "min", of: "guardHeight", min: millimetres("900") },
    applies: [GUARD_NEEDED],
  }),
  limit({
    item: "guard opening", clause: "3.3", text: "100",
    measured: "largest opening in the guard",
    rule: { comparator: "sphere", of: ["guardGap", "landingGuardGap"], sphere: millimetres("100") },
    applies: [GUARD_NEEDED, { when: { fact: "children", is: ["yes"], otherwise: "yes" }, words: "children under five are likely to use it" }],
  }),
];

const outside = outsideRow({ status: "checked against the code's text", sources: [ADK_2013] });

const OUT_OF_SCOPE: readonly OutOfScope[] = [
  outside({
    item: "alternating tread", clause: "1.30 Diagram 1.10", unit: "mm", text: "rise at most 220, going at least 220, headroom at least 2000", reason: "alternating stair",
  }),
];

/** Approved Document K, 2013 edition: private stairs. */
export const ukAdkPrivate: CodeProfile = {
  id: "uk-adk-private",
  title: "Approved Document K, private stair (more than a third of the limits not confirmed)",
  edition: "2013",
  region: "England",
  untypedNosing: "none",
  limits: LIMITS,
  outOfScope: OUT_OF_SCOPE,
};
