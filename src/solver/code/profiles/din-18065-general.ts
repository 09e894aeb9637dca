import type { Source } from "../profile";
import { edition } from "../record/edition";
import { limitRecord, type LimitRecord } from "../record/limit-record";
import { printed } from "../record/printed-figure";

const DIN_18065: Source = { title: "DIN 18065, edition not named" };

const limit = limitRecord({ unit: "cm", status: "not yet checked", sources: [DIN_18065] });

const RECORDS: readonly LimitRecord[] = [
  limit({
    item: "riser height", clause: "DIN 18065 (clause not known)", text: "14 to 19",
    measured: "plumb, tread to tread",
    rule: { comparator: "range", of: "riserHeight" },
  }),
  limit({
    item: "tread depth", clause: "DIN 18065 (clause not known)", text: "26 to 37",
    measured: "level, nosing to nosing, without what lies under the nosing",
    rule: { comparator: "range", of: "treadDepth" },
  }),
  limit({
    item: "stair width", clause: "DIN 18065 (clause not known)", text: "100",
    measured: "usable width",
    rule: { comparator: "min", of: ["clearWidth", "width"] },
  }),
  limit({
    item: "headroom", clause: "DIN 18065 (clause not known)", text: "200",
    measured: "plumb clearance",
    rule: { comparator: "min", of: "headroom" },
  }),
  limit({
    item: "flight risers", clause: "DIN 18065 (clause not known)", unit: "count", text: "18", counts: "flight",
    measured: "steps up to a landing",
    rule: { comparator: "max", of: "risers" },
  }),
  limit({
    item: "riser deviation from nominal", clause: "DIN 18065 (clause not known)", text: "0.5",
    measured: "risers and tread depths as built against those as designed",
    rule: {
      comparator: "every", needs: "any",
      parts: [
        { comparator: "uniformity", of: "rise", within: "design" },
        { comparator: "uniformity", of: "run", within: "design", tolerance: printed("0.5 cm") },
      ],
    },
  }),
  limit({
    item: "riser uniformity adjacent", clause: "DIN 18065 (clause not known)", text: "0.5",
    measured: "between neighbouring steps",
    rule: { comparator: "uniformity", of: "rise", within: "neighbours" },
    remark: "the tolerance does not stretch the least and greatest sizes",
  }),
  limit({
    item: "walking surface slope", clause: "DIN 18065 (clause not known)", unit: "ratio", text: "1:100",
    measured: "out of level, treads and landings",
    rule: { comparator: "slope", of: ["treadSlope", "landingSlope"] },
  }),
  limit({
    item: "two r plus g", clause: "DIN 18065 (clause not known)", text: "59 to 65",
    measured: "twice the riser plus the tread",
    rule: { comparator: "range", of: { formula: "two risers plus run" } },
    advisory: true,
  }),
  limit({
    item: "comfort rule", clause: "DIN 18065 (clause not known)", text: "12",
    measured: "tread less riser",
    rule: { comparator: "equals", of: { formula: "run less riser" } },
    advisory: true,
    sources: [],
    remark: "beside it stands the safety rule, tread and riser together 46 cm",
  }),
];

/** Necessary stairs of buildings in general: DIN 18065. */
export const din18065General = edition({
  id: "din-18065-general",
  title: "DIN 18065, necessary stairs in buildings in general",
  edition: "2011-06 and 2015",
  region: "Germany",
  family: "DIN 18065",
  isOneKind: true,
  records: RECORDS,
});
