import type { Rule, Source } from "../profile";
import { edition } from "../record/edition";
import { HALF, limitRecord, type LimitRecord } from "../record/limit-record";
import { printed, span } from "../record/printed-figure";
import {
  BOTH_HANDRAILS, flightWidth, HANDRAIL_PROVIDED, HAS_GUARD, HAS_HANDRAIL, IN_DWELLING, ROUND_HANDRAIL, WINDERS, WITH_GUARD,
} from "../record/stair-conditions";

const ADK_2013: Source = { title: "Approved Document K, 2013 edition" };
const ADK_1998: Source = { title: "Approved Document K, 1998 edition" };
const ADK_UNNAMED: Source = { title: "Approved Document K, edition not named" };

const limit = limitRecord({ unit: "mm", status: "checked against the code's text", sources: [ADK_2013] });

const NO_SINGLE_STEP: Rule = { comparator: "min", of: "risers", min: printed("2 risers") };

const RECORDS: readonly LimitRecord[] = [
  limit({
    item: "riser height", clause: "1.3 Table 1.1", text: "150 to 170",
    measured: "plumb, tread to tread",
    rule: { comparator: "range", of: "riserHeight" },
  }),
  limit({
    item: "going", clause: "1.3 Table 1.1", text: "250 to 400",
    measured: "level, nosing to nosing",
    rule: { comparator: "range", of: "treadDepth" },
  }),
  limit({
    item: "going school preferred", clause: "1.3 Table 1.1 note 3", text: "280",
    measured: "level, nosing to nosing, in a school; with a rise of 150 mm",
    rule: { comparator: "min", of: "treadDepth" },
    advisory: true,
    remark: "preferred in schools, so it cautions and never fails",
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
    item: "nosing overlap", clause: "Diagram 1.1", text: "25",
    measured: "how far a tread laps over the one below",
    rule: { comparator: "max", of: "nosing" },
    applies: [{ when: { not: IN_DWELLING }, words: "the building is no dwelling" }],
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
    item: "stair width", clause: "1.15", text: "1200",
    measured: "between walls or strings; 1000 mm between handrails",
    rule: {
      comparator: "every", needs: "any",
      parts: [
        { comparator: "min", of: ["clearWidth", "width"] },
        { comparator: "min", of: "widthAtHandrails", min: printed("1000 mm") },
      ],
    },
    exceptions: [{
      when: flightWidth({ moreThan: printed("2 m") }),
      words: "more than 2 m wide, 1000 mm clear between handrails",
      then: {
        comparator: "every", needs: "first",
        parts: [
          { comparator: "required", requires: "a division of the flight", provided: { fact: "dividedFlight", is: ["yes"] } },
          { comparator: "min", of: "widthAtHandrails", min: printed("1000 mm") },
        ],
      },
    }],
    applies: [{ when: { not: IN_DWELLING }, words: "the building is no dwelling" }],
    status: "not yet checked", sources: [ADK_UNNAMED],
    remark: "over 2 m wide the flight is divided; clause number not yet checked",
  }),
  limit({
    item: "flight risers", clause: "1.18", unit: "count", text: "12", counts: "flight",
    measured: "risers of one flight",
    rule: { comparator: "every", needs: "all", parts: [{ comparator: "max", of: "risers" }, NO_SINGLE_STEP] },
    exceptions: [{
      when: { fact: "smallPremises", is: ["yes"], otherwise: "no" },
      words: "small premises with a restricted plan: 2 to 16",
      then: { comparator: "every", needs: "all", parts: [{ comparator: "max", of: "risers", max: printed("16 risers") }, NO_SINGLE_STEP] },
    }],
    status: "not yet checked", sources: [ADK_UNNAMED],
    remark: "at least 2 risers: a single step is not allowed either",
  }),
  limit({
    item: "landing clear length", clause: "1.23", text: "1200",
    measured: "landing left clear, in the direction of travel",
    rule: { comparator: "min", of: "landingDepth" },
    applies: [{ when: { not: IN_DWELLING }, words: "the building is no dwelling" }],
  }),
  limit({
    item: "landing depth", clause: "1.20", text: "the least width of the flight",
    measured: "width and going of the landing",
    rule: { comparator: "relation", of: ["landingDepth", "landingWidth"], sense: "at least", than: ["clearWidth", "width"] },
    status: "checked against another edition", sources: [ADK_UNNAMED],
  }),
  limit({
    item: "handrail required", clause: "1.34", unit: "count", text: "every stair",
    measured: "whether there is a handrail, however few the risers",
    rule: { comparator: "required", requires: "a handrail on one side at least", provided: HANDRAIL_PROVIDED },
    status: "checked against another edition", sources: [ADK_UNNAMED],
  }),
  limit({
    item: "handrail sides", clause: "1.36", unit: "count", text: "both sides if 1000 mm wide or wider, else one",
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
    status: "checked against another edition", sources: [ADK_UNNAMED],
    remark: "in buildings that are no dwelling continuous on each side of flights and landings",
  }),
  limit({
    item: "handrail height", clause: "1.36", text: "900 to 1000",
    measured: "plumb above the pitch line; on landings 900 to 1100 mm",
    rule: { comparator: "range", of: "handrailHeight" },
    applies: [HAS_HANDRAIL],
    exceptions: [{
      when: { fact: "handrailPlace", is: ["landing"], otherwise: "flight" }, words: "on a landing 900 to 1100 mm",
      then: { comparator: "range", of: "handrailHeight", ...span("900 to 1100 mm") },
    }],
    status: "checked against another edition", sources: [ADK_UNNAMED],
  }),
  limit({
    item: "handrail top extension", clause: "1.36", text: "300",
    measured: "level, beyond the top and the bottom of the flight",
    rule: { comparator: "min", of: "handrailExtension" },
    applies: [HAS_HANDRAIL, { when: { not: IN_DWELLING }, words: "the building is no dwelling" }],
    status: "checked against another edition", sources: [ADK_UNNAMED],
  }),
  limit({
    item: "handrail grip circular diameter", clause: "Diagram 1.13", text: "32 to 50",
    measured: "diameter of a round handrail",
    rule: { comparator: "range", of: "grip" },
    applies: [...ROUND_HANDRAIL, { when: { not: IN_DWELLING }, words: "the building is no dwelling" }],
    status: "checked against another edition", sources: [ADK_UNNAMED],
  }),
  limit({
    item: "handrail wall clearance", clause: "Diagram 1.13", text: "50 to 75",
    measured: "free space between handrail and wall",
    rule: { comparator: "range", of: "handrailClearance" },
    applies: [HAS_HANDRAIL, { when: { not: IN_DWELLING }, words: "the building is no dwelling" }],
    status: "checked against another edition", sources: [ADK_UNNAMED],
  }),
  limit({
    item: "guard required risers", clause: "1.40", unit: "count", text: "2 or more", counts: "flight",
    measured: "risers of the flight",
    rule: {
      comparator: "required-when", of: "risers", requires: "a guard along the open side",
      provided: HAS_GUARD,
    },
    applies: [{ when: { not: IN_DWELLING }, words: "the building is no dwelling" }],
  }),
  limit({
    item: "guard height stair", clause: "3.2 Diagram 3.1", text: "900",
    measured: "top of the guard above the pitch line",
    rule: { comparator: "min", of: "guardHeight" },
    applies: [WITH_GUARD],
  }),
  limit({
    item: "guard height landing", clause: "3.2 Diagram 3.1", text: "1100",
    measured: "landings and edges of floors",
    rule: { comparator: "min", of: "landingGuardHeight" },
    applies: [WITH_GUARD],
    exceptions: [{
      when: IN_DWELLING, words: "in a dwelling for one family: 900 mm",
      then: { comparator: "min", of: "landingGuardHeight", min: printed("900 mm") },
    }],
    remark: "within 530 mm in front of fixed seats 800 mm is enough, which is not in the stair table",
  }),
  limit({
    item: "guard opening", clause: "3.3", text: "100",
    measured: "largest opening in the guard",
    rule: { comparator: "sphere", of: ["guardGap", "landingGuardGap"] },
    applies: [WITH_GUARD, { when: { fact: "children", is: ["yes"], otherwise: "yes" }, words: "children under five are likely to use it" }],
  }),
];

/** Approved Document K, 2013 edition: general access stairs. */
export const ukAdkGeneral = edition({
  id: "uk-adk-general",
  title: "Approved Document K, general access stair",
  edition: "2013",
  region: "England",
  family: "UK ADK",
  isOneKind: true,
  untypedNosing: "none",
  records: RECORDS,
});
