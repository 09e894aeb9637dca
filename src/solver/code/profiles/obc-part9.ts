import type { OutOfScope, Rule, Source } from "../profile";
import { edition, readInAnother } from "../record/edition";
import { limitRecord, type LimitRecord, outsideRecord } from "../record/limit-record";
import { printed, span } from "../record/printed-figure";
import {
  EXIT, FREE_IN_DWELLING, HAS_HANDRAIL, NOT_PRIVATE, OUTSIDE, POINTED_WINDERS, PRIVATE, PUBLIC, SERVICE, SPIRAL, TAPERED_TREADS,
  WINDERS_AMONG_STEPS,
} from "../record/stair-conditions";
import { obc2024Part9 } from "./obc-2024-part9";

const OBC_2012: Source = { title: "O. Reg. 332/12, Division B Part 9" };
const OBC_UNNAMED: Source = { title: "O. Reg. 332/12, Division B Part 9, edition not named" };
const OBC_2024: Source = { title: "Ontario Building Code, 2024, Division B Part 9" };

const limit = limitRecord({ unit: "mm", status: "checked against another edition", sources: [OBC_UNNAMED] });

const AT_HANDRAIL: Rule = { comparator: "equals", of: "walklineFromHandrail", values: [printed("300 mm")] };

const RECORDS: readonly LimitRecord[] = [
  limit({
    item: "stair width", clause: "9.8.2.1.(2),(4)", text: "860",
    measured: "between wall faces or guards",
    rule: { comparator: "min", of: ["clearWidth", "width"] },
    applies: [PRIVATE],
    exceptions: [SPIRAL],
  }),
  limit({
    item: "stair width other", clause: "9.8.2.1.(1)", text: "900",
    measured: "between wall faces or guards",
    rule: { comparator: "min", of: ["clearWidth", "width"] },
    applies: [PUBLIC],
  }),
  limit({
    item: "headroom", clause: "9.8.2.2.(3)", text: "1950",
    measured: "plumb above a line along the nosings",
    rule: { comparator: "min", of: "headroom" },
    applies: [PRIVATE],
    exceptions: [SPIRAL],
  }),
  limit({
    item: "headroom other", clause: "9.8.2.2.(2)", text: "2050",
    measured: "plumb above a line along the nosings",
    rule: { comparator: "min", of: "headroom" },
    applies: [NOT_PRIVATE],
  }),
  limit({
    item: "flight risers", clause: "9.8.3.2.(1)", unit: "count", text: "3", counts: "flight",
    measured: "risers of an interior flight",
    rule: { comparator: "min", of: "risers" },
    applies: { when: { not: OUTSIDE }, words: "the flight is indoors" },
    exceptions: [FREE_IN_DWELLING],
  }),
  limit({
    item: "flight vertical rise", clause: "9.8.3.3.(1)", text: "3700",
    measured: "between floors or landings",
    rule: { comparator: "max", of: "totalRise" },
  }),
  limit({
    item: "riser height", clause: "Table 9.8.4.1. item 1", text: "125 to 200",
    measured: "plumb, nosing to nosing",
    rule: { comparator: "range", of: "riserHeight" },
    applies: [PRIVATE],
    exceptions: [SPIRAL],
  }),
  limit({
    item: "run", clause: "Table 9.8.4.1. item 1", text: "255 to 355",
    measured: "level, nosing to nosing",
    rule: { comparator: "range", of: "treadDepth" },
    applies: [PRIVATE],
    exceptions: [SPIRAL],
  }),
  limit({
    item: "riser height public", clause: "Table 9.8.4.1. item 2", text: "125 to 180",
    measured: "plumb, nosing to nosing",
    rule: { comparator: "range", of: "riserHeight" },
    applies: [PUBLIC],
  }),
  limit({
    item: "run public", clause: "Table 9.8.4.1. item 2", text: "280",
    measured: "level, nosing to nosing",
    rule: { comparator: "min", of: "treadDepth" },
    applies: [PUBLIC],
    remark: "there is no greatest run",
  }),
  limit({
    item: "riser height service", clause: "Table 9.8.4.1. items 3-6", text: "125",
    measured: "plumb, nosing to nosing; the run is at most 355 mm",
    rule: {
      comparator: "every", needs: "any",
      parts: [
        { comparator: "min", of: "riserHeight" },
        { comparator: "max", of: "treadDepth", max: printed("355 mm") },
      ],
    },
    applies: [SERVICE],
    remark: "no greatest rise and no least run",
  }),
  limit({
    item: "tread depth over run", clause: "9.8.4.2.(2)", text: "0 to 25",
    measured: "depth of the tread less its run, which is the nosing",
    rule: { comparator: "range", of: "nosing" },
    status: "checked against the code's text", sources: [OBC_2012],
  }),
  limit({
    item: "tapered tread run narrow end", clause: "9.8.4.3.(1)", text: "150",
    measured: "run at the narrow end; 300 mm from the centre line of the inside handrail the run of a straight tread, 255 to 355 mm",
    rule: {
      comparator: "every", needs: "first",
      parts: [
        { comparator: "min", of: "winderNarrowEnd" },
        { comparator: "range", of: "winderDepth", ...span("255 to 355 mm") },
        AT_HANDRAIL,
      ],
    },
    applies: TAPERED_TREADS,
    exceptions: [{
      when: { not: { fact: "use", is: ["private"], otherwise: "private" } },
      words: "the stair is not private: a run of at least 280 mm at 300 mm from the handrail, and 150 mm at the narrow end",
      then: {
        comparator: "every", needs: "first",
        parts: [
          { comparator: "min", of: "winderNarrowEnd", min: printed("150 mm") },
          { comparator: "min", of: "winderDepth", min: printed("280 mm") },
          AT_HANDRAIL,
        ],
      },
    }],
    status: "checked against the code's text", sources: [OBC_2012],
  }),
  limit({
    item: "riser uniformity adjacent", clause: "9.8.4.4.(1)(a)", text: "5",
    measured: "between neighbouring treads or landings",
    rule: { comparator: "uniformity", of: "rise", within: "neighbours" },
    status: "checked against the code's text", sources: [OBC_2012],
  }),
  limit({
    item: "riser uniformity", clause: "9.8.4.4.(1)(b)", text: "10",
    measured: "tallest less shortest riser of the flight",
    rule: { comparator: "uniformity", of: "rise", within: "flight" },
    status: "checked against the code's text", sources: [OBC_2012],
  }),
  limit({
    item: "run uniformity adjacent", clause: "9.8.4.4.(3)(a)", text: "5",
    measured: "between neighbouring treads",
    rule: { comparator: "uniformity", of: "run", within: "neighbours" },
    exceptions: [WINDERS_AMONG_STEPS],
    status: "checked against the code's text", sources: [OBC_2012],
  }),
  limit({
    item: "run uniformity", clause: "9.8.4.4.(3)(b)", text: "10",
    measured: "deepest less shallowest run of the flight",
    rule: { comparator: "uniformity", of: "run", within: "flight" },
    exceptions: [WINDERS_AMONG_STEPS],
    status: "checked against the code's text", sources: [OBC_2012],
  }),
  limit({
    item: "end riser cross slope", clause: "9.8.4.4.(2)", unit: "ratio", text: "1:12",
    measured: "slope across the width of the stair along that riser",
    rule: { comparator: "slope", of: "endRiserSlope" },
    applies: { when: { given: "endRiserSlope" }, words: "a top or bottom riser meets a sloping floor, drive or walk" },
    exceptions: [{
      when: EXIT,
      words: "a required exit stair has no such riser",
      then: { comparator: "prohibited", thing: "a riser that runs out on sloping ground is", present: { given: "endRiserSlope" } },
    }],
    status: "checked against the code's text", sources: [OBC_2012],
  }),
  limit({
    item: "walking surface slope", clause: "9.8.4.4.(5)", unit: "ratio", text: "1:50",
    measured: "rise over run of treads and landings, the steepest way",
    rule: { comparator: "slope", of: ["treadSlope", "landingSlope"] },
    status: "checked against the code's text", sources: [OBC_2012],
  }),
  limit({
    item: "winder set turn", clause: "9.8.4.5.(1)", unit: "deg", text: "90",
    measured: "turn of all winders of one set together",
    rule: { comparator: "max", of: "winderSetTurn" },
    applies: [...POINTED_WINDERS, PRIVATE],
  }),
  limit({
    item: "winder tread turn", clause: "9.8.4.5.(1)", unit: "deg", text: "30 to 45",
    measured: "turn of one winder",
    rule: {
      comparator: "every", needs: "first",
      parts: [
        { comparator: "range", of: "winderTurn" },
        { comparator: "required", requires: "one angle for neighbouring winders", provided: { fact: "winderTurnsAlike", is: ["yes"] } },
      ],
    },
    applies: [...POINTED_WINDERS, PRIVATE],
    remark: "neighbouring winders turn alike; they may come to a point",
  }),
  limit({
    item: "winder sets separation", clause: "9.8.4.5.(2)", text: "1200",
    measured: "in plan, between two sets of winders",
    rule: { comparator: "min", of: "winderSetsApart" },
    applies: {
      when: { any: [{ given: "winderSetsApart" }, { all: [{ given: "winderSets" }, { fact: "winderSets", moreThan: printed("1 set") }] }] },
      words: "there is more than one set of winders between two floors",
    },
  }),
  limit({
    item: "handrail height", clause: "9.8.7.4.(2)", text: "865 to 1070",
    measured: "plumb above a line along the nosings",
    rule: { comparator: "range", of: "handrailHeight" },
    applies: [HAS_HANDRAIL],
    status: "checked against the code's text", sources: [OBC_2012],
  }),
  limit({
    item: "nosing bevel reduction", clause: "9.8.4.6.(1)", text: "15",
    measured: "what a bevelled or rounded edge takes off the tread depth; it reaches back at most 25 mm",
    rule: {
      comparator: "every", needs: "any",
      parts: [
        { comparator: "max", of: "bevelLoss" },
        { comparator: "max", of: "bevelReach", max: printed("25 mm") },
      ],
    },
  }),
  limit({
    item: "nosing bevel part3", clause: "3.4.6.8.(8)", text: "6 to 13",
    measured: "rounding or bevel of the edge",
    rule: { comparator: "range", of: ["nosingRadius", "nosingBevel"] },
    applies: { when: { fact: "partThree", is: ["yes"], otherwise: "no" }, words: "the building falls under Part 3" },
    status: "checked against the code's text", sources: [OBC_2012],
    remark: "clause number not yet checked",
  }),
];

const READ_IN_2024: readonly LimitRecord[] = readInAnother(obc2024Part9, [OBC_2024], [
  "handrail required risers", "handrail sides", "handrail wall clearance", "handrail projection each side", "guard required drop",
  "guard height",
  "guard opening", "guard opening stair triangle", "landing width", "landing depth", "open riser",
]);

const outside = outsideRecord({ status: "checked against another edition", sources: [OBC_UNNAMED] });

const OUT_OF_SCOPE: readonly OutOfScope[] = [
  outside({
    item: "spiral clear width", clause: "9.8.4.5A.(1)", unit: "mm", text: "at least 660", reason: "spiral stair",
  }),
  outside({
    item: "spiral riser height", clause: "9.8.4.5A.(1)", unit: "mm", text: "at most 240", reason: "spiral stair",
  }),
  outside({
    item: "spiral tread depth", clause: "9.8.4.5A.(1)", unit: "mm", text: "at least 190", reason: "spiral stair",
  }),
  outside({
    item: "spiral headroom", clause: "9.8.4.5A.(1)", unit: "mm", text: "at least 1980", reason: "spiral stair",
  }),
  outside({
    item: "live load uniform stairs", clause: "9.4 / loads on stairs", unit: "kPa", text: "1.9", reason: "live load",
    status: "checked against the code's text", sources: [OBC_2012],
  }),
];

/** Stairs of Part 9 of the Ontario Building Code, O. Reg. 332/12. */
export const obcPart9 = edition({
  id: "obc-part9",
  title: "Ontario Building Code, Division B Part 9",
  edition: "2012, as amended",
  region: "Ontario, houses and small buildings",
  family: "OBC",
  untypedNosing: "none",
  records: [...RECORDS, ...READ_IN_2024],
  outOfScope: OUT_OF_SCOPE,
});
