import type { LimitException, Source } from "../profile";
import { edition } from "../record/edition";
import { limitRecord, type LimitRecord, outsideRecord } from "../record/limit-record";
import { printed } from "../record/printed-figure";
import { GUARD_NEEDED, HAS_GUARD, HAS_HANDRAIL, RISERS_OPEN } from "../record/stair-conditions";

const DIN_18065: Source = { title: "DIN 18065, edition not named" };
const THURINGIA: Source = { title: "Thuringian Building Code, section 38, after section 38 of the Model Building Code; edition not named" };

const OVER_12_METRES: LimitException = {
  when: { fact: "fallHeight", moreThan: printed("12 m") }, words: "a fall of more than 12 m: 110 cm",
  then: { comparator: "min", of: "guardHeight", min: printed("110 cm") },
};

const limit = limitRecord({ unit: "cm", status: "not yet checked", sources: [DIN_18065] });

const outside = outsideRecord({ status: "checked against another edition", sources: [DIN_18065] });

const RECORDS: readonly LimitRecord[] = [
  limit({
    item: "riser height", clause: "DIN 18065 (clause not known)", text: "14 to 19",
    measured: "plumb, tread to tread",
    rule: { comparator: "range", of: "riserHeight" },
    status: "checked against another edition",
  }),
  limit({
    item: "tread depth", clause: "DIN 18065 (clause not known)", text: "26 to 37",
    measured: "level, nosing to nosing, without what lies under the nosing",
    rule: { comparator: "range", of: "treadDepth" },
    status: "checked against another edition",
  }),
  limit({
    item: "stair width", clause: "DIN 18065 (clause not known)", text: "100",
    measured: "usable width",
    rule: { comparator: "min", of: ["clearWidth", "width"] },
    status: "checked against another edition",
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
  limit({
    item: "guard required drop", clause: "Thuringian Building Code (building law of the state), section 38(1)", unit: "mm",
    text: "more than 1000",
    measured: "fall from the free side of a flight, a landing or a stairwell",
    rule: { comparator: "required-when", of: "fallHeight", requires: "a guard along the open side", provided: HAS_GUARD },
    status: "checked against another edition", sources: [THURINGIA],
    remark: "building law of the state, not the standard; Thuringia names the free sides of flights and landings without a height",
  }),
  limit({
    item: "guard height stair", clause: "DIN 18065 (clause not known)", text: "90",
    measured: "plumb above the front edges of the steps",
    rule: { comparator: "min", of: "guardHeight" },
    applies: [GUARD_NEEDED],
    exceptions: [OVER_12_METRES],
    status: "checked against another edition",
    remark: "100 cm at workplaces",
  }),
  limit({
    item: "guard height", clause: "Thuringian Building Code (building law of the state), section 38(4)", unit: "mm", text: "900",
    measured: "level guards: above the floor or landing",
    rule: { comparator: "min", of: "landingGuardHeight" },
    applies: [GUARD_NEEDED],
    exceptions: [{
      when: { fact: "fallHeight", moreThan: printed("12 m") }, words: "a fall of more than 12 m: 1100 mm",
      then: { comparator: "min", of: "landingGuardHeight", min: printed("1100 mm") },
    }],
    status: "checked against another edition", sources: [THURINGIA],
    remark: "building law of the state, not the standard",
  }),
  limit({
    item: "guard opening", clause: "DIN 18065 (clause not known)", text: "12",
    measured: "clear distance between parts of the guard, in one direction, where small children may be alone",
    rule: { comparator: "max", of: ["guardGap", "landingGuardGap"] },
    applies: [GUARD_NEEDED],
    status: "checked against another edition",
  }),
  limit({
    item: "handrail height", clause: "DIN 18065 (clause not known)", text: "80 to 115",
    measured: "plumb above the front edge of the step",
    rule: { comparator: "range", of: "handrailHeight" },
    applies: [HAS_HANDRAIL],
    status: "checked against another edition",
  }),
  limit({
    item: "handrail wall clearance", clause: "DIN 18065 (clause not known)", text: "5",
    measured: "free space between handrail and wall",
    rule: { comparator: "min", of: "handrailClearance" },
    applies: [HAS_HANDRAIL],
    status: "checked against another edition",
  }),
  limit({
    item: "nosing overlap", clause: "DIN 18065 (clause not known)", text: "3",
    measured: "how far a tread laps over the one below, on a stair with open risers",
    rule: { comparator: "min", of: "nosing" },
    applies: [RISERS_OPEN],
    status: "checked against another edition",
    remark: "with closed risers tread and nosing together are at least 26 cm",
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
  outOfScope: [
    outside({
      item: "tread depth with nosing", clause: "DIN 18065 (clause not known)", unit: "cm",
      text: "tread and nosing together at least 26, with closed risers",
      reason: "not in the stair table",
    }),
    outside({
      item: "side gap", clause: "DIN 18065 (clause not known)", unit: "cm", text: "at most 6 between a step and the wall or guard",
      reason: "not in the stair table",
    }),
    outside({
      item: "riser height not necessary", clause: "DIN 18065 (clause not known)", unit: "cm",
      text: "at most 21, with a tread of 21 and a width of 50, on stairs that are not necessary",
      reason: "not in the stair table",
    }),
  ],
});
