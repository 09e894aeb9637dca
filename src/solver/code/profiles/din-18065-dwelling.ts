import type { Source } from "../profile";
import { edition } from "../record/edition";
import { limitRecord, type LimitRecord } from "../record/limit-record";
import { span } from "../record/printed-figure";

const DIN_18065: Source = { title: "DIN 18065, edition not named" };

const limit = limitRecord({ unit: "cm", status: "not yet checked", sources: [DIN_18065] });

const RECORDS: readonly LimitRecord[] = [
  limit({
    item: "riser height", clause: "DIN 18065 (clause not known)", text: "20",
    measured: "plumb, tread to tread",
    rule: { comparator: "max", of: "riserHeight" },
    remark: "a least riser of 14 cm is not yet checked and not held",
  }),
  limit({
    item: "tread depth", clause: "DIN 18065 (clause not known)", text: "23 to 37",
    measured: "level, nosing to nosing, without what lies under the nosing",
    rule: { comparator: "range", of: "treadDepth" },
    exceptions: [{
      when: { fact: "egress", is: ["no"], otherwise: "yes" },
      words: "a stair that is not a necessary one: 21 to 37 cm",
      then: { comparator: "range", of: "treadDepth", ...span("21 to 37 cm") },
    }],
  }),
  limit({
    item: "stair width", clause: "DIN 18065 (clause not known)", text: "80",
    measured: "usable width",
    rule: { comparator: "min", of: ["clearWidth", "width"] },
  }),
  limit({
    item: "headroom", clause: "DIN 18065 (clause not known)", text: "200",
    measured: "plumb clearance",
    rule: { comparator: "min", of: "headroom" },
  }),
  limit({
    item: "first riser deviation", clause: "DIN 18065 (clause not known)", text: "1.5",
    measured: "bottom riser as built against the riser as designed",
    rule: { comparator: "uniformity", of: "rise", within: "bottom step" },
  }),
  limit({
    item: "two r plus g", clause: "DIN 18065 (clause not known)", text: "59 to 65",
    measured: "twice the riser plus the tread",
    rule: { comparator: "range", of: { formula: "two risers plus run" } },
    advisory: true,
    remark: "the step measure; 18 on 27 cm is the ideal",
  }),
];

/** Stairs of houses with up to two dwellings: DIN 18065. */
export const din18065Dwelling = edition({
  id: "din-18065-dwelling",
  title: "DIN 18065, stairs in buildings with up to two dwellings",
  edition: "2011-06 and 2015",
  region: "Germany",
  family: "DIN 18065",
  isOneKind: true,
  records: RECORDS,
});
