import type { Source } from "../profile";
import { edition } from "../record/edition";
import { limitRecord, type LimitRecord, outsideRecord } from "../record/limit-record";
import { printed } from "../record/printed-figure";
import { BOTH_HANDRAILS, flightWidth, HANDRAIL_PROVIDED, HAS_GUARD, HAS_HANDRAIL, WITH_GUARD } from "../record/stair-conditions";

const AS_1657: Source = { title: "AS 1657, 2018, as given by a secondary text" };

const limit = limitRecord({ unit: "mm", status: "checked against the code's text", sources: [AS_1657] });

const RECORDS: readonly LimitRecord[] = [
  limit({
    item: "pitch", clause: "7.3", unit: "deg", text: "20 to 45",
    measured: "from level",
    rule: { comparator: "range", of: { formula: "pitch" } },
    remark: "30 to 38 degrees are recommended",
  }),
  limit({
    item: "riser height", clause: "7.4", text: "130 to 225",
    measured: "plumb, tread to tread",
    rule: { comparator: "range", of: "riserHeight" },
    status: "not yet checked", sources: [],
    remark: "one text prints 130 to 255 mm",
  }),
  limit({
    item: "going", clause: "7.4", text: "215 to 355",
    measured: "level, nosing to nosing",
    rule: { comparator: "range", of: "treadDepth" },
    status: "not yet checked", sources: [],
    remark: "one text prints a least depth of 240 mm",
  }),
  limit({
    item: "two r plus g", clause: "7.4", text: "540 to 700",
    measured: "twice the riser plus the going",
    rule: { comparator: "range", of: { formula: "two risers plus run" } },
    status: "not yet checked", sources: [],
  }),
  limit({
    item: "riser deviation from nominal", clause: "7.4", text: "5",
    measured: "risers and goings of a flight as built, more or less than the size they are meant to have",
    rule: {
      comparator: "every", needs: "any",
      parts: [
        { comparator: "uniformity", of: "rise", within: "design" },
        { comparator: "uniformity", of: "run", within: "design", tolerance: printed("5 mm") },
      ],
    },
  }),
  limit({
    item: "stair width", clause: "7.3", text: "600",
    measured: "inside the stiles; 550 mm clear between the rails",
    rule: {
      comparator: "every", needs: "any",
      parts: [
        { comparator: "min", of: ["clearWidth", "width"] },
        { comparator: "min", of: "widthAtHandrails", min: printed("550 mm") },
      ],
    },
  }),
  limit({
    item: "headroom", clause: "7.3", text: "2000",
    measured: "plumb above the line of the nosings",
    rule: { comparator: "min", of: "headroom" },
  }),
  limit({
    item: "flight risers", clause: "7.3", unit: "count", text: "18", counts: "flight",
    measured: "risers of one flight",
    rule: { comparator: "max", of: "risers" },
  }),
  limit({
    item: "consecutive risers before turn", clause: "7.3", unit: "count", text: "36", counts: "stair",
    measured: "risers one after another without a turn",
    rule: { comparator: "max", of: "risersBeforeTurn" },
    remark: "then a barrier, a landing of 2 m, or a turn of 90 degrees",
  }),
  limit({
    item: "landing width", clause: "7.3", text: "600 mm, and the width of the stair",
    measured: "clear of cross traffic and of the swing of doors",
    rule: {
      comparator: "every", needs: "any",
      parts: [
        { comparator: "min", of: "landingWidth", min: printed("600 mm") },
        { comparator: "relation", of: "landingWidth", sense: "at least", than: ["clearWidth", "width"] },
      ],
    },
  }),
  limit({
    item: "handrail sides", clause: "7.5", unit: "count", text: "both sides if wider than 1000 mm, else one",
    measured: "sides of the stair with a handrail",
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
  }),
  limit({
    item: "handrail height", clause: "5 and 6", text: "900 to 1100",
    measured: "plumb above the line of the nosings",
    rule: { comparator: "range", of: "handrailHeight" },
    applies: [HAS_HANDRAIL],
    status: "not yet checked", sources: [],
  }),
  limit({
    item: "handrail wall clearance", clause: "7.5", text: "50",
    measured: "free space between handrail and wall",
    rule: { comparator: "min", of: "handrailClearance" },
    applies: [HAS_HANDRAIL],
    status: "not yet checked", sources: [],
  }),
  limit({
    item: "guard required", clause: "7.5", unit: "count", text: "along every exposed side",
    measured: "whether an open side has a guard",
    rule: { comparator: "required", requires: "a guard along the open side", provided: HAS_GUARD },
    applies: [{ when: { not: { fact: "openSides", is: ["none"] } }, words: "a side is open" }],
    remark: "none where something fixed stands within 100 mm of the stile",
  }),
  limit({
    item: "guard height", clause: "5", text: "900 to 1100",
    measured: "top rail",
    rule: { comparator: "range", of: ["guardHeight", "landingGuardHeight"] },
    applies: [WITH_GUARD],
    status: "not yet checked", sources: [],
  }),
];

const outside = outsideRecord({ status: "checked against the code's text", sources: [AS_1657] });

/** Stairs to plant and platforms in Australia: AS 1657, as far as it was read. */
export const as16572018 = edition({
  id: "as-1657-2018",
  title: "AS 1657, fixed platforms, walkways, stairways and ladders",
  edition: "2018",
  region: "Australia, workplaces and plant",
  family: "AS 1657",
  records: RECORDS,
  outOfScope: [
    outside({
      item: "tread board", clause: "7.4", unit: "mm", text: "a tread at least 185 deep, and at most 30 shallower than the going",
      reason: "not in the stair table",
    }),
  ],
});
