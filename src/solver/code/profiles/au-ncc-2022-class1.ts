import type { OutOfScope, Source } from "../profile";
import { edition } from "../record/edition";
import { HALF, limitRecord, type LimitRecord, outsideRecord } from "../record/limit-record";
import { printed } from "../record/printed-figure";
import {
  flightWidth, FREED_IF_INFREQUENT, GUARD_NEEDED, HANDRAIL_PROVIDED, HAS_GUARD, HAS_HANDRAIL, INFREQUENT, RISERS_OPEN, SPIRAL, WINDERS,
  WINDERS_AMONG_STEPS,
} from "../record/stair-conditions";

const HOUSING_PROVISIONS_2022: Source = { title: "ABCB Housing Provisions Standard, 2022 (1 May 2023)" };
const ABCB_FAQ: Source = {
  title: "ABCB, questions on stairways, barriers and handrails",
  address: "https://codemark.abcb.gov.au/faq/stairways-barriers-and-handrails",
};

const limit = limitRecord({ unit: "mm", status: "checked against the code's text", sources: [HOUSING_PROVISIONS_2022] });

const RECORDS: readonly LimitRecord[] = [
  limit({
    item: "riser height", clause: "Housing Provisions Table 11.2.2a", text: "115 to 190",
    measured: "plumb, tread to tread",
    rule: { comparator: "range", of: "riserHeight" },
    exceptions: [SPIRAL, FREED_IF_INFREQUENT],
  }),
  limit({
    item: "going", clause: "Housing Provisions Table 11.2.2a", text: "240 to 355",
    measured: "level, nosing to nosing",
    rule: { comparator: "range", of: "treadDepth" },
    exceptions: [SPIRAL, FREED_IF_INFREQUENT],
  }),
  limit({
    item: "two r plus g", clause: "Housing Provisions Table 11.2.2a", text: "550 to 700",
    measured: "twice the riser plus the going",
    rule: { comparator: "range", of: { formula: "two risers plus run" } },
    exceptions: [SPIRAL, FREED_IF_INFREQUENT],
    remark: "binding, unlike the usual rule of thumb",
  }),
  limit({
    item: "flight risers", clause: "Housing Provisions 11.2.2", unit: "count", text: "2 to 18", counts: "flight",
    measured: "risers of one flight, winders among them",
    rule: { comparator: "range", of: "risers" },
  }),
  limit({
    item: "open riser opening", clause: "Housing Provisions 11.2.2(1)(d)", text: "125",
    measured: "clear opening between two treads",
    rule: { comparator: "sphere", of: "openRiserGap" },
    applies: [RISERS_OPEN],
    exceptions: [{
      when: { fact: "infrequent", is: ["yes"], otherwise: "no" },
      words: "a stair that serves only rooms nobody lives in or uses daily is free",
      then: "does not apply",
    }],
  }),
  limit({
    item: "riser uniformity adjacent", clause: "Housing Provisions 11.2.2", text: "5",
    measured: "between neighbouring risers",
    rule: { comparator: "uniformity", of: "rise", within: "neighbours" },
    remark: "each riser still keeps to the limits of the table",
  }),
  limit({
    item: "riser uniformity", clause: "Housing Provisions 11.2.2", text: "10",
    measured: "largest less smallest riser of the flight",
    rule: { comparator: "uniformity", of: "rise", within: "flight" },
  }),
  limit({
    item: "headroom", clause: "Housing Provisions Part 10.3", text: "2000",
    measured: "plumb above the line of the nosings or the landing",
    rule: { comparator: "min", of: "headroom" },
  }),
  limit({
    item: "handrail height", clause: "Housing Provisions 11.3.5", text: "865",
    measured: "plumb above the line of the nosings",
    rule: { comparator: "min", of: "handrailHeight" },
    applies: [HAS_HANDRAIL],
    exceptions: [{
      when: { not: { reached: "handrail required rise" } },
      words: "a climb of less than 1 m needs no handrail",
      then: "does not apply",
    }, {
      when: { fact: "handrailPlace", is: ["landing", "newel winders"], otherwise: "flight" },
      words: "landings, and winders with a newel post, need no handrail",
      then: "does not apply",
    }],
  }),
  limit({
    item: "guard required drop", clause: "Housing Provisions 11.3.3", text: "1000 or more",
    measured: "fall from the open side",
    rule: {
      comparator: "required-when", of: "fallHeight", requires: "a barrier along the open side",
      provided: HAS_GUARD,
    },
    remark: "the text says 1 m or more, which counts; the labels of its figures say more than 1 m",
  }),
  limit({
    item: "guard height stair", clause: "Housing Provisions 11.3.4", text: "865",
    measured: "plumb above the line of the nosings",
    rule: { comparator: "min", of: "guardHeight" },
    applies: [GUARD_NEEDED],
  }),
  limit({
    item: "guard opening", clause: "Housing Provisions 11.3.4", text: "125",
    measured: "largest opening in the barrier, on stairs above the line of the nosings",
    rule: { comparator: "sphere", of: ["guardGap", "landingGuardGap"] },
    applies: [GUARD_NEEDED],
    exceptions: [FREED_IF_INFREQUENT],
  }),
  limit({
    item: "stair width", clause: "NCC Volume Two", text: "no least width",
    measured: "width of the flight",
    rule: { comparator: "shown" },
    status: "checked against another edition", sources: [ABCB_FAQ],
  }),
  limit({
    item: "landing depth", clause: "Housing Provisions 11.2.5", text: "750",
    measured: "in the direction of travel; on a turn, 500 mm from the inside edge",
    rule: { comparator: "min", of: "landingDepth" },
    exceptions: [FREED_IF_INFREQUENT],
  }),
  limit({
    item: "winders in place of landing", clause: "Housing Provisions 11.2.2", unit: "count",
    text: "3 for a quarter landing, 6 for a half landing", counts: "flight",
    measured: "winders one after another",
    rule: {
      comparator: "table",
      rows: [
        {
          when: { fact: "winderSetTurn", atMost: printed("90 degrees") },
          words: "in place of a quarter landing, a turn of at most 90 degrees: 3 winders",
          rule: { comparator: "max", of: "winders", max: printed("3 winders") },
        },
        {
          when: { fact: "winderSetTurn", moreThan: printed("90 degrees") },
          words: "in place of a half landing, a turn of more than 90 degrees: 6 winders",
          rule: { comparator: "max", of: "winders", max: printed("6 winders") },
        },
      ],
    },
    applies: [WINDERS],
  }),
  limit({
    item: "riser height infrequent", clause: "Housing Provisions Table 11.2.2b", text: "130 to 225",
    measured: "plumb, tread to tread",
    rule: { comparator: "range", of: "riserHeight" },
    applies: [INFREQUENT],
  }),
  limit({
    item: "going infrequent", clause: "Housing Provisions Table 11.2.2b", text: "215 to 355",
    measured: "level, nosing to nosing",
    rule: {
      comparator: "every", needs: "first",
      parts: [
        { comparator: "range", of: "treadDepth" },
        { comparator: "max", of: "treadGap", max: printed("30 mm") },
      ],
    },
    applies: [INFREQUENT],
    remark: "the going is at most the tread and a gap of 30 mm",
  }),
  limit({
    item: "two r plus g infrequent", clause: "Housing Provisions Table 11.2.2b", text: "540 to 700",
    measured: "twice the riser plus the going",
    rule: { comparator: "range", of: { formula: "two risers plus run" } },
    applies: [INFREQUENT],
  }),
  limit({
    item: "going uniformity adjacent", clause: "Housing Provisions 11.2.2(1)(c)(i)", text: "5",
    measured: "between neighbouring goings",
    rule: { comparator: "uniformity", of: "run", within: "neighbours" },
    exceptions: [WINDERS_AMONG_STEPS],
  }),
  limit({
    item: "going uniformity", clause: "Housing Provisions 11.2.2(1)(c)(ii)", text: "10",
    measured: "largest less smallest going of the flight",
    rule: { comparator: "uniformity", of: "run", within: "flight" },
    exceptions: [WINDERS_AMONG_STEPS],
  }),
  limit({
    item: "tapered going measure point", clause: "Housing Provisions 11.2.2(4)(a)(ii)",
    text: "400 mm from each side; up to 1 m wide the middle",
    measured: "from the side of the clear width to where the going of tapered treads is measured",
    rule: {
      comparator: "table",
      rows: [
        {
          when: flightWidth({ moreThan: printed("1 m") }),
          words: "a stair more than 1 m wide: 400 mm in from each side",
          rule: { comparator: "equals", of: "walkline", values: [printed("400 mm")] },
        },
        {
          when: { any: [{ given: "clearWidth" }, { given: "width" }] },
          words: "a stair of 1 m or less: in the middle",
          rule: { comparator: "relation", of: "walkline", sense: "exactly", than: ["clearWidth", "width"], part: HALF },
        },
      ],
    },
    applies: [WINDERS],
  }),
  limit({
    item: "solid treads required height", clause: "Housing Provisions 11.2.2(1)(e)", text: "more than 10000 mm, or more than 3 storeys",
    counts: "storeys",
    measured: "whole climb of the stair, or storeys it joins",
    rule: {
      comparator: "required-when", of: "stairHeight", from: { moreThan: printed("10000 mm") },
      or: { of: "storeysJoined", from: { moreThan: printed("3 storeys") } },
      requires: "a stair with solid treads", provided: { fact: "solidTreads", is: ["yes"] },
    },
  }),
  limit({
    item: "landing depth infrequent", clause: "Housing Provisions 11.2.5(2)", text: "600",
    measured: "in the direction of travel",
    rule: { comparator: "min", of: "landingDepth" },
    applies: [INFREQUENT],
  }),
  limit({
    item: "threshold landing required", clause: "Housing Provisions 11.2.5(1)(c)", text: "more than 570 mm, or more than 3 risers",
    counts: "flight",
    measured: "sill of a doorway that opens on the stair, above the surface outside",
    rule: {
      comparator: "required-when", of: "threshold", from: { moreThan: printed("570 mm") },
      or: { of: "risers", from: { moreThan: printed("3 risers") } },
      requires: "a landing at the doorway", provided: { given: "landingDepth" },
    },
    applies: { when: { given: "threshold" }, words: "a doorway opens on the stair" },
  }),
  limit({
    item: "landing slope", clause: "Housing Provisions 11.2.5(1)(b)", unit: "ratio", text: "1:50",
    measured: "rise over run of the landing, the steepest way",
    rule: { comparator: "slope", of: "landingSlope" },
  }),
  limit({
    item: "threshold step required", clause: "Housing Provisions 11.2.6", text: "more than 230",
    measured: "sill of a doorway above the surface outside",
    rule: {
      comparator: "required-when", of: "threshold", requires: "a flight of steps",
      provided: { given: "risers" },
    },
    applies: { when: { given: "threshold" }, words: "there is a doorway" },
  }),
  limit({
    item: "guard height", clause: "Housing Provisions 11.3.4(2)(b)(i)", text: "1000",
    measured: "above landings, balconies, decks and the like",
    rule: { comparator: "min", of: "landingGuardHeight" },
    applies: [GUARD_NEEDED],
    exceptions: [{
      when: { fact: "insideEdgeGuard", is: ["yes"], otherwise: "no" },
      words: "on the inside edge of a landing, for up to 500 mm: 865 mm",
      then: { comparator: "min", of: "landingGuardHeight", min: printed("865 mm") },
    }],
  }),
  limit({
    item: "guard side gap", clause: "Housing Provisions 11.3.4(5)", text: "40",
    measured: "between the barrier and the edge it is fixed beside",
    rule: { comparator: "max", of: "guardSideGap" },
    applies: { when: { given: "guardSideGap" }, words: "the barrier is fixed to the face of the stair or landing" },
  }),
  limit({
    item: "guard opening infrequent", clause: "Housing Provisions 11.3.4(7)(a)", text: "300",
    measured: "largest opening in the barrier",
    rule: { comparator: "sphere", of: ["guardGap", "landingGuardGap"] },
    applies: [GUARD_NEEDED, INFREQUENT],
    exceptions: [{
      when: { fact: "guardRails", is: ["yes"], otherwise: "no" },
      words: "a top and a middle rail: openings of at most 460 mm",
      then: { comparator: "max", of: ["guardGap", "landingGuardGap"], max: printed("460 mm") },
    }],
  }),
  limit({
    item: "handrail required rise", clause: "Housing Provisions 11.3.5(2)(a)", text: "1000 or more",
    measured: "climb of the flight",
    rule: {
      comparator: "required-when", of: "totalRise", requires: "a handrail",
      provided: HANDRAIL_PROVIDED,
    },
  }),
  limit({
    item: "handrail sides", clause: "Housing Provisions 11.3.5(1)(a)", unit: "count", text: "one side",
    measured: "sides of the flight with a handrail",
    rule: { comparator: "required", requires: "a handrail on one side at least", provided: HANDRAIL_PROVIDED },
    exceptions: [{
      when: { not: { reached: "handrail required rise" } },
      words: "a climb of less than 1 m needs no handrail",
      then: "does not apply",
    }],
  }),
];

const outside = outsideRecord({ status: "checked against the code's text", sources: [HOUSING_PROVISIONS_2022] });

const OUT_OF_SCOPE: readonly OutOfScope[] = [
  outside({
    item: "handrail continuity", clause: "Housing Provisions 11.3.5(1)(b),(d)", unit: "in words",
    text: "over the full length of the flight, nothing on or above it but newel posts and the like",
    reason: "not in the stair table",
  }),
  outside({
    item: "handrail grip", clause: "Housing Provisions 11.3.5", unit: "in words",
    text: "able to be grasped by hand; no size",
    reason: "not in the stair table",
  }),
  outside({
    item: "guard climb zone", clause: "Housing Provisions 11.3.4(8)", unit: "mm",
    text: "nothing to climb on from 150 to 760 up, over a fall of more than 4 m",
    reason: "not in the stair table",
  }),
  outside({
    item: "spiral riser height", clause: "Housing Provisions Table 11.2.2a", unit: "mm", text: "140 to 220", reason: "spiral stair",
  }),
  outside({
    item: "spiral going", clause: "Housing Provisions Table 11.2.2a", unit: "mm", text: "210 to 370", reason: "spiral stair",
  }),
  outside({
    item: "spiral two r plus g", clause: "Housing Provisions Table 11.2.2a", unit: "mm", text: "590 to 680", reason: "spiral stair",
  }),
];

/** Stairs of houses (Class 1): the ABCB Housing Provisions of 2022, both tables. */
export const auNcc2022Class1 = edition({
  id: "au-ncc-2022-class1",
  title: "National Construction Code, Housing Provisions, Class 1",
  edition: "2022",
  region: "Australia, houses",
  family: "AU NCC",
  isOneKind: true,
  records: RECORDS,
  outOfScope: OUT_OF_SCOPE,
});
