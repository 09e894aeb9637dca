import type { Applicability, Source } from "../profile";
import { edition } from "../record/edition";
import { type LimitRecord, limitRecord, outsideRecord } from "../record/limit-record";
import { printed } from "../record/printed-figure";
import { BOTH_HANDRAILS, HAS_HANDRAIL, OTHER_HANDRAIL, ROUND_HANDRAIL } from "../record/stair-conditions";

const ADA_2010: Source = { title: "ADA Standards for Accessible Design, 2010, section 504" };

const limit = limitRecord({ unit: "in", status: "checked against the code's text", sources: [ADA_2010] });

const WAY_OUT: Applicability = {
  when: { fact: "egress", is: ["yes"], otherwise: "yes" }, words: "the stair is part of a required way out",
};

const outside = outsideRecord({ status: "checked against the code's text", sources: [ADA_2010] });

const RECORDS: readonly LimitRecord[] = [
  limit({
    item: "riser height", clause: "504.2", text: "4 to 7",
    printedMillimetres: ["100", "180"],
    measured: "plumb, tread to tread",
    rule: { comparator: "range", of: "riserHeight" },
    applies: [WAY_OUT],
    remark: "decided in inches, the unit of this code; the millimetres printed beside it are rounded",
  }),
  limit({
    item: "tread depth", clause: "504.2", text: "11",
    printedMillimetres: ["280"],
    measured: "level from nosing to nosing: the run, not the board",
    rule: { comparator: "min", of: "treadDepth" },
    applies: [WAY_OUT],
    remark: "decided in inches, the unit of this code; the millimetres printed beside it are rounded",
  }),
  limit({
    item: "riser uniformity", clause: "504.2", text: "uniform, no figure",
    measured: "risers and tread depths of the flight",
    rule: {
      comparator: "alike", of: ["rise", "run"],
      sense: "risers and tread depths are to be uniform, within what the trade holds as usual; no figure is given",
    },
    applies: [WAY_OUT],
  }),
  limit({
    item: "open riser", clause: "504.3", text: "not permitted",
    measured: "whether the risers are open",
    rule: {
      comparator: "prohibited", thing: "open risers are",
      present: { any: [{ fact: "openRisers", is: ["yes"] }, { given: "openRiserGap" }] },
    },
    applies: [WAY_OUT],
    exceptions: [{
      when: { all: [{ given: "riserPerforation" }, { not: { given: "openRiserGap" } }] },
      words: "a riser with holes that keep out a ball of more than 1/2 in counts as closed",
      then: { comparator: "max", of: "riserPerforation", max: printed("1/2 in") },
    }],
  }),
  limit({
    item: "walking surface slope", clause: "504.4", unit: "ratio", text: "1:48",
    measured: "rise over run of the treads, the steepest way",
    rule: { comparator: "slope", of: "treadSlope" },
    applies: [WAY_OUT],
  }),
  limit({
    item: "nosing radius", clause: "504.5", text: "1/2",
    printedMillimetres: ["13"],
    measured: "rounding of the leading edge",
    rule: { comparator: "max", of: "nosingRadius" },
    applies: [WAY_OUT],
    remark: "decided in inches, the unit of this code; the millimetres printed beside it are rounded",
  }),
  limit({
    item: "nosing projection", clause: "504.5", text: "1 1/2",
    printedMillimetres: ["38"],
    measured: "how far the tread stands out over the riser below",
    rule: {
      comparator: "every", needs: "first",
      parts: [
        { comparator: "max", of: "nosing" },
        {
          comparator: "table",
          rows: [{
            when: { fact: "nosing", moreThan: printed("0 in") },
            words: "the nosing projects",
            rule: {
              comparator: "required", requires: "a nosing curved or bevelled underneath",
              provided: { fact: "nosingUnderside", is: ["curved", "bevelled"] },
            },
          }],
        },
      ],
    },
    applies: [WAY_OUT],
    remark: "the underside is to be curved or bevelled; decided in inches, the unit of this code; the millimetres printed beside it are "
      + "rounded",
  }),
  limit({
    item: "riser slope from vertical", clause: "504.5", unit: "deg", text: "30",
    measured: "lean of a riser under the tread above it",
    rule: { comparator: "max", of: "riserSlope" },
    applies: [WAY_OUT, { when: { given: "riserSlope" }, words: "a riser is not plumb" }],
  }),
  limit({
    item: "handrail sides", clause: "504.6 / 505.2", unit: "count", text: "both sides",
    measured: "sides of the flight with a handrail, however few its risers",
    rule: { comparator: "required", requires: "a handrail on both sides", provided: BOTH_HANDRAILS },
    applies: [WAY_OUT],
  }),
  limit({
    item: "handrail height", clause: "505.4", text: "34 to 38",
    printedMillimetres: ["865", "965"],
    measured: "plumb above the nosings",
    rule: { comparator: "range", of: "handrailHeight" },
    applies: [WAY_OUT, HAS_HANDRAIL],
    remark: "decided in inches, the unit of this code; the millimetres printed beside it are rounded",
  }),
  limit({
    item: "handrail wall clearance", clause: "505.5", text: "1 1/2",
    printedMillimetres: ["38"],
    measured: "free space between handrail and wall",
    rule: { comparator: "min", of: "handrailClearance" },
    applies: [WAY_OUT, HAS_HANDRAIL],
    remark: "decided in inches, the unit of this code; the millimetres printed beside it are rounded",
  }),
  limit({
    item: "handrail grip circular diameter", clause: "505.7.1", text: "1 1/4 to 2",
    printedMillimetres: ["32", "51"],
    measured: "diameter of a round handrail",
    rule: { comparator: "range", of: "grip" },
    applies: [WAY_OUT, ...ROUND_HANDRAIL],
    remark: "decided in inches, the unit of this code; the millimetres printed beside it are rounded",
  }),
  limit({
    item: "handrail grip noncircular perimeter", clause: "505.7.2", text: "4 to 6 1/4",
    printedMillimetres: ["100", "160"],
    measured: "perimeter of a handrail that is not round",
    rule: { comparator: "range", of: "gripPerimeter" },
    applies: [WAY_OUT, ...OTHER_HANDRAIL],
    remark: "decided in inches, the unit of this code; the millimetres printed beside it are rounded",
  }),
  limit({
    item: "handrail grip noncircular cross section", clause: "505.7.2", text: "2 1/4",
    printedMillimetres: ["57"],
    measured: "largest dimension across a handrail that is not round",
    rule: { comparator: "max", of: "gripCrossSection" },
    applies: [WAY_OUT, ...OTHER_HANDRAIL],
    remark: "decided in inches, the unit of this code; the millimetres printed beside it are rounded",
  }),
  limit({
    item: "handrail top extension", clause: "505.10.2", text: "12",
    printedMillimetres: ["305"],
    measured: "level, beyond the top riser",
    rule: {
      comparator: "every", needs: "first",
      parts: [
        { comparator: "min", of: "handrailExtension" },
        { comparator: "relation", of: "handrailFootExtension", sense: "at least", than: ["treadDepth"] },
      ],
    },
    applies: [WAY_OUT, HAS_HANDRAIL],
    remark: "at the foot it runs on at the slope for one tread depth (505.10.3), held where handrail foot extension is given; decided in "
      + "inches, the unit of this code; the millimetres printed beside it are rounded",
  }),
  limit({
    item: "perforated riser opening", clause: "302.3", text: "1/2",
    printedMillimetres: ["13"],
    measured: "largest hole in a riser",
    rule: { comparator: "max", of: "riserPerforation" },
    applies: [WAY_OUT, { when: { given: "riserPerforation" }, words: "the risers have holes" }],
    remark: "a ball of more than 1/2 in is kept out, so 1/2 in itself passes; decided in inches, the unit of this code; the millimetres "
      + "printed beside it are rounded",
  }),
  limit({
    item: "headroom", clause: "307.4", text: "80",
    printedMillimetres: ["2030"],
    measured: "plumb above the way people walk",
    rule: { comparator: "min", of: "headroom" },
    applies: [WAY_OUT],
    remark: "a rule for every way people walk; below it a barrier is required; decided in inches, the unit of this code; the millimetres "
      + "printed beside it are rounded",
  }),
];

/** Stairs of the 2010 ADA Standards, sections 504 and 505. */
export const ada2010 = edition({
  id: "ada-2010",
  title: "ADA Standards for Accessible Design, sections 504 and 505",
  edition: "2010",
  region: "United States, places open to the public",
  family: "ADA",
  records: RECORDS,
  outOfScope: [
    outside({
      item: "handrail continuity", clause: "505.3", unit: "in words",
      text: "over the full length of each flight; the inside rail runs on between flights",
      reason: "not in the stair table",
    }),
  ],
});
