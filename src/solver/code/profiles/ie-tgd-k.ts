import type { Source } from "../profile";
import { edition } from "../record/edition";
import { limitRecord, type LimitRecord, outsideRecord } from "../record/limit-record";
import { printed, span } from "../record/printed-figure";
import {
  BOTH_HANDRAILS, flightWidth, GUARD_NEEDED, HANDRAIL_PROVIDED, HAS_GUARD, HAS_HANDRAIL, RISERS_OPEN,
} from "../record/stair-conditions";

const TGD_K: Source = { title: "Technical Guidance Document K, Ireland, 2014, as given by a secondary text" };
const TGD_K_UNNAMED: Source = { title: "Technical Guidance Document K, Ireland, edition not named" };

const limit = limitRecord({ unit: "mm", status: "checked against the code's text", sources: [TGD_K] });

const RECORDS: readonly LimitRecord[] = [
  limit({
    item: "riser height", clause: "1.1.3 Table 1", text: "220",
    measured: "plumb, tread to tread",
    rule: { comparator: "max", of: "riserHeight" },
  }),
  limit({
    item: "going", clause: "1.1.3 Table 1", text: "220",
    measured: "level, nosing to nosing",
    rule: { comparator: "min", of: "treadDepth" },
  }),
  limit({
    item: "pitch", clause: "1.1.3 Table 1", unit: "deg", text: "42",
    measured: "from level",
    rule: { comparator: "max", of: { formula: "pitch" } },
    remark: "holds beside the limits of rise and going",
  }),
  limit({
    item: "two r plus g", clause: "1.1.3 Table 1", text: "550 to 700",
    measured: "twice the riser plus the going",
    rule: { comparator: "range", of: { formula: "two risers plus run" } },
    advisory: true,
    status: "not yet checked", sources: [],
  }),
  limit({
    item: "riser uniformity", clause: "1.1.4(b)", text: "alike, no figure",
    measured: "risers of the flight",
    rule: { comparator: "alike", of: ["rise"], sense: "every step is to have the same rise; no figure is given" },
    status: "checked against another edition", sources: [TGD_K_UNNAMED],
  }),
  limit({
    item: "headroom", clause: "1.1.10", text: "2000",
    measured: "plumb above the pitch line",
    rule: { comparator: "min", of: "headroom" },
  }),
  limit({
    item: "stair width", clause: "1.1.11", text: "800",
    measured: "clear width",
    rule: { comparator: "min", of: ["clearWidth", "width"] },
    status: "not yet checked", sources: [],
  }),
  limit({
    item: "flight risers", clause: "1.1.13", unit: "count", text: "16", counts: "flight",
    measured: "risers of one flight",
    rule: { comparator: "max", of: "risers" },
    status: "not yet checked", sources: [],
  }),
  limit({
    item: "landing depth", clause: "1.1.14", text: "the least width of the flight",
    measured: "in the direction of travel",
    rule: { comparator: "relation", of: "landingDepth", sense: "at least", than: ["clearWidth", "width"] },
    status: "not yet checked", sources: [],
  }),
  limit({
    item: "door clearance at bottom", clause: "1.1.16", text: "400",
    measured: "landing left clear of the swing of the door",
    rule: { comparator: "min", of: "doorClearance" },
    applies: {
      when: { any: [{ fact: "doorSwing", is: ["yes"], otherwise: "no" }, { given: "doorClearance" }] },
      words: "a door swings over the bottom landing",
    },
  }),
  limit({
    item: "open riser opening", clause: "1.1.7", text: "100",
    measured: "clear opening between two treads",
    rule: { comparator: "sphere", of: "openRiserGap" },
    applies: [RISERS_OPEN],
  }),
  limit({
    item: "handrail sides", clause: "1.1.22", unit: "count", text: "both sides if wider than 1000 mm, else one",
    measured: "sides of the flight with a handrail",
    rule: {
      comparator: "table",
      rows: [
        {
          when: flightWidth({ moreThan: printed("1000 mm") }), words: "wider than 1000 mm",
          rule: { comparator: "required", requires: "a handrail on both sides", provided: BOTH_HANDRAILS },
        },
        {
          when: { any: [{ given: "clearWidth" }, { given: "width" }] }, words: "up to 1000 mm wide",
          rule: { comparator: "required", requires: "a handrail on one side at least", provided: HANDRAIL_PROVIDED },
        },
      ],
    },
    remark: "none is needed beside the two bottom steps",
  }),
  limit({
    item: "handrail height", clause: "1.1.22", text: "900 to 1000",
    measured: "plumb above the pitch line; on landings 900 to 1100 mm",
    rule: { comparator: "range", of: "handrailHeight" },
    applies: [HAS_HANDRAIL],
    exceptions: [{
      when: { fact: "handrailPlace", is: ["landing"], otherwise: "flight" }, words: "on a landing 900 to 1100 mm",
      then: { comparator: "range", of: "handrailHeight", ...span("900 to 1100 mm") },
    }],
  }),
  limit({
    item: "guard required drop", clause: "1.1.23", text: "more than 600",
    measured: "drop from the open side, in a dwelling",
    rule: { comparator: "required-when", of: "fallHeight", requires: "a guard along the open side", provided: HAS_GUARD },
    status: "not yet checked", sources: [],
  }),
  limit({
    item: "guard height stair", clause: "Table 2", text: "900",
    measured: "above the pitch line, within one dwelling",
    rule: { comparator: "min", of: "guardHeight" },
    applies: [GUARD_NEEDED],
    status: "not yet checked", sources: [],
  }),
  limit({
    item: "guard opening", clause: "1.1.24", text: "100",
    measured: "largest opening in the guard",
    rule: { comparator: "sphere", of: ["guardGap", "landingGuardGap"] },
    applies: [GUARD_NEEDED],
    status: "not yet checked", sources: [],
  }),
];

const outside = outsideRecord({ status: "checked against the code's text", sources: [TGD_K] });

/** Private stairs of Ireland: Technical Guidance Document K. */
export const ieTgdK = edition({
  id: "ie-tgd-k",
  title: "Technical Guidance Document K, private stair",
  edition: "2014",
  region: "Ireland",
  family: "IE TGD K",
  untypedNosing: "none",
  records: RECORDS,
  outOfScope: [
    outside({
      item: "handrail exempt bottom steps", clause: "1.1.22", unit: "count", text: "none beside the 2 bottom steps",
      reason: "not in the stair table",
    }),
  ],
});
