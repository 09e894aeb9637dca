import { count, degrees, limitRow, millimetres, outsideRow } from "./limit-row";
import type { CodeProfile, Limit, OutOfScope, Source } from "./profile";
import {
  EXIT, GUARD_NEEDED, HANDRAIL_PROVIDED, HAS_GUARD, HAS_HANDRAIL, NOT_PRIVATE, NOT_SERVICE, OUTSIDE, POINTED_WINDERS, PRIVATE, PUBLIC,
  RISERS_OPEN, SPIRAL, TAPERED_TREADS, WINDERS_AMONG_STEPS,
} from "./stair-conditions";

const ALBERTA_2023: Source = { title: "National Building Code, 2023 Alberta Edition, section 9.8, which adopts the 2020 code" };

const limit = limitRow({ unit: "mm", status: "checked against the code's text", sources: [ALBERTA_2023] });

const LIMITS: readonly Limit[] = [
  limit({
    item: "riser height", clause: "Table 9.8.4.1.", text: "125 to 200",
    measured: "plumb, nosing to nosing",
    rule: { comparator: "range", of: "riserHeight", min: millimetres("125"), max: millimetres("200") },
    applies: [PRIVATE],
    exceptions: [SPIRAL],
  }),
  limit({
    item: "run", clause: "Table 9.8.4.2.", text: "255 to 355",
    measured: "level, nosing to nosing",
    rule: { comparator: "range", of: "treadDepth", min: millimetres("255"), max: millimetres("355") },
    applies: [PRIVATE],
    exceptions: [SPIRAL],
  }),
  limit({
    item: "riser height public", clause: "Table 9.8.4.1.", text: "125 to 180",
    measured: "plumb, nosing to nosing",
    rule: { comparator: "range", of: "riserHeight", min: millimetres("125"), max: millimetres("180") },
    applies: [PUBLIC],
  }),
  limit({
    item: "run public", clause: "Table 9.8.4.2.", text: "280",
    measured: "level, nosing to nosing",
    rule: { comparator: "min", of: "treadDepth", min: millimetres("280") },
    applies: [PUBLIC],
    remark: "there is no greatest run",
  }),
  limit({
    item: "tread depth over run", clause: "9.8.4.2.", text: "0 to 25",
    measured: "depth of the tread less its run, which is the nosing",
    rule: { comparator: "range", of: "nosing", min: millimetres("0"), max: millimetres("25") },
  }),
  limit({
    item: "riser uniformity adjacent", clause: "9.8.4.4.", text: "5",
    measured: "between neighbouring treads or landings",
    rule: { comparator: "uniformity", of: "rise", within: "neighbours", tolerance: millimetres("5") },
  }),
  limit({
    item: "riser uniformity", clause: "9.8.4.4.", text: "10",
    measured: "tallest less shortest riser of the flight",
    rule: { comparator: "uniformity", of: "rise", within: "flight", tolerance: millimetres("10") },
  }),
  limit({
    item: "run uniformity adjacent", clause: "9.8.4.4.", text: "5",
    measured: "between neighbouring treads",
    rule: { comparator: "uniformity", of: "run", within: "neighbours", tolerance: millimetres("5") },
    exceptions: [WINDERS_AMONG_STEPS],
  }),
  limit({
    item: "run uniformity", clause: "9.8.4.4.", text: "10",
    measured: "deepest less shallowest run of the flight",
    rule: { comparator: "uniformity", of: "run", within: "flight", tolerance: millimetres("10") },
    exceptions: [WINDERS_AMONG_STEPS],
  }),
  limit({
    item: "headroom", clause: "9.8.2.2.", text: "1950",
    measured: "plumb above a line along the nosings",
    rule: { comparator: "min", of: "headroom", min: millimetres("1950") },
    applies: [PRIVATE],
    exceptions: [SPIRAL, {
      when: { fact: "underBeam", is: ["yes"], otherwise: "no" },
      words: "under beams and ducts of a secondary suite a row of its own counts",
      then: "does not apply",
    }],
  }),
  limit({
    item: "stair width", clause: "9.8.2.1.", text: "860",
    measured: "between wall faces or guards",
    rule: { comparator: "min", of: ["clearWidth", "width"], min: millimetres("860") },
    applies: [PRIVATE],
    exceptions: [SPIRAL],
  }),
  limit({
    item: "winder tread turn", clause: "9.8.4.6.", unit: "deg", text: "30 or 45",
    measured: "turn of one winder",
    rule: { comparator: "equals", of: "winderTurn", values: [degrees("30"), degrees("45")] },
    applies: [...POINTED_WINDERS, PRIVATE],
    remark: "exactly 30 or exactly 45 degrees, nothing between",
  }),
  limit({
    item: "winder set turn", clause: "9.8.4.6.", unit: "deg", text: "90",
    measured: "turn of all winders of one set together",
    rule: { comparator: "max", of: "winderSetTurn", max: degrees("90") },
    applies: [...POINTED_WINDERS, PRIVATE],
  }),
  limit({
    item: "nosing bevel", clause: "9.8.4.8.", text: "6 to 14",
    measured: "rounding or bevel of the edge",
    rule: { comparator: "range", of: ["nosingRadius", "nosingBevel"], min: millimetres("6"), max: millimetres("14") },
    exceptions: [{
      when: { fact: "resilientCovering", is: ["yes"], otherwise: "no" },
      words: "a resilient covering: from 3 mm",
      then: { comparator: "range", of: ["nosingRadius", "nosingBevel"], min: millimetres("3"), max: millimetres("14") },
    }],
  }),
  limit({
    item: "handrail height", clause: "9.8.7.4.", text: "865 to 1070",
    measured: "plumb above a line along the nosings",
    rule: { comparator: "range", of: "handrailHeight", min: millimetres("865"), max: millimetres("1070") },
    applies: [HAS_HANDRAIL],
  }),
  limit({
    item: "guard opening", clause: "9.8.8.5.", text: "100",
    measured: "largest opening in the guard",
    rule: { comparator: "sphere", of: ["guardGap", "landingGuardGap"], sphere: millimetres("100") },
    applies: [GUARD_NEEDED],
  }),
  limit({
    item: "stair width other", clause: "9.8.2.1.(1)", text: "900",
    measured: "between wall faces or guards",
    rule: { comparator: "min", of: ["clearWidth", "width"], min: millimetres("900") },
    applies: [PUBLIC],
  }),
  limit({
    item: "headroom other", clause: "9.8.2.2.(2)", text: "2050",
    measured: "plumb above a line along the nosings",
    rule: { comparator: "min", of: "headroom", min: millimetres("2050") },
    applies: [NOT_PRIVATE],
  }),
  limit({
    item: "headroom secondary suite beams", clause: "9.8.2.2.(4)", text: "1850",
    measured: "under the beam or duct",
    rule: { comparator: "min", of: "headroom", min: millimetres("1850") },
    applies: { when: { fact: "underBeam", is: ["yes"], otherwise: "no" }, words: "headroom was taken under a beam or duct of a secondary suite" },
  }),
  limit({
    item: "flight vertical rise", clause: "9.8.3.3.", text: "3700",
    measured: "between floors or landings",
    rule: { comparator: "max", of: "totalRise", max: millimetres("3700") },
  }),
  limit({
    item: "tapered tread run narrow end", clause: "9.8.4.3.(1)(a)", text: "150",
    measured: "run at the narrow end; 300 mm from the centre line of the inside handrail the run of a straight tread",
    rule: {
      comparator: "every", needs: "any",
      parts: [
        { comparator: "min", of: "winderNarrowEnd", min: millimetres("150") },
        { comparator: "range", of: "winderDepth", min: millimetres("255"), max: millimetres("355") },
      ],
    },
    applies: TAPERED_TREADS,
    exceptions: [{
      when: { not: { fact: "use", is: ["private"], otherwise: "private" } },
      words: "the stair is not private: a run of at least 280 mm",
      then: {
        comparator: "every", needs: "any",
        parts: [
          { comparator: "min", of: "winderNarrowEnd", min: millimetres("150") },
          { comparator: "min", of: "winderDepth", min: millimetres("280") },
        ],
      },
    }],
  }),
  limit({
    item: "tapered tread measure point", clause: "9.8.4.3.(1)(b)", text: "300",
    measured: "from the centre line of the handrail at the narrow end",
    rule: { comparator: "equals", of: "walklineFromHandrail", values: [millimetres("300")] },
    applies: TAPERED_TREADS,
  }),
  limit({
    item: "winder tread turn deviation", clause: "9.8.4.6.(1)", unit: "deg", text: "one of two angles, with no deviation",
    measured: "turn of one winder",
    rule: { comparator: "shown", text: "one of two angles, with no deviation" },
    remark: "a range from 30 to 45 degrees is Ontario's",
  }),
  limit({
    item: "winder sets", clause: "9.8.3.1.(3)", unit: "count", text: "1",
    measured: "sets of winders between two floors",
    rule: { comparator: "max", of: "winderSets", max: count("1") },
    applies: POINTED_WINDERS,
  }),
  limit({
    item: "end riser cross slope", clause: "9.8.4.4.(2)", unit: "ratio", text: "1:12",
    measured: "slope across the width of the stair along that riser",
    rule: { comparator: "slope", of: "endRiserSlope", rise: 1, run: 12 },
    applies: { when: { given: "endRiserSlope" }, words: "a top or bottom riser meets a sloping floor, drive or walk" },
    exceptions: [{
      when: EXIT,
      words: "a required exit stair has no such riser",
      then: { comparator: "prohibited", thing: "a riser that runs out on sloping ground is", present: { given: "endRiserSlope" } },
    }],
  }),
  limit({
    item: "walking surface slope", clause: "9.8.4.4.(5)", unit: "ratio", text: "1:50",
    measured: "rise over run of treads and landings, the steepest way",
    rule: { comparator: "slope", of: ["treadSlope", "landingSlope"], rise: 1, run: 50 },
  }),
  limit({
    item: "handrail required risers", clause: "9.8.7.1.(3)", unit: "count", text: "indoors 3 or more, outdoors 4 or more",
    measured: "risers of the whole stair, all its flights together",
    rule: {
      comparator: "table",
      rows: [
        {
          when: { not: OUTSIDE }, words: "indoors",
          rule: {
            comparator: "required-when", of: "risers", from: { atLeast: count("3") }, or: { of: "stairRisers", from: { atLeast: count("3") } },
            requires: "a handrail",
            provided: HANDRAIL_PROVIDED,
          },
        },
        {
          when: OUTSIDE, words: "outdoors",
          rule: {
            comparator: "required-when", of: "risers", from: { atLeast: count("4") }, or: { of: "stairRisers", from: { atLeast: count("4") } },
            requires: "a handrail",
            provided: HANDRAIL_PROVIDED,
          },
        },
      ],
    },
    applies: [PRIVATE],
    remark: "the exemption counts the risers of the stair, not of one flight (BC Building Code Appeal Board 1305)",
  }),
  limit({
    item: "handrail wall clearance", clause: "9.8.7.5.(1)", text: "50",
    measured: "free space between handrail and wall",
    rule: { comparator: "min", of: "handrailClearance", min: millimetres("50") },
    applies: [HAS_HANDRAIL],
    exceptions: [{
      when: { fact: "roughWall", is: ["yes"], otherwise: "no" },
      words: "a rough or abrasive wall: 60 mm",
      then: { comparator: "min", of: "handrailClearance", min: millimetres("60") },
    }],
  }),
  limit({
    item: "handrail projection each side", clause: "9.8.7.6.(1)", text: "100",
    measured: "how far handrails, their supports and stringers stand into the required width",
    rule: { comparator: "max", of: "handrailProjection", max: millimetres("100") },
    applies: [HAS_HANDRAIL],
  }),
  limit({
    item: "guard required drop", clause: "9.8.8.1.(1)", text: "more than 600",
    measured: "drop to the surface within 1.2 m of the open side",
    rule: {
      comparator: "required-when", of: "fallHeight", from: { moreThan: millimetres("600") }, requires: "a guard along the open side",
      provided: HAS_GUARD,
    },
  }),
  limit({
    item: "guard height", clause: "9.8.8.3.(2)", text: "900",
    measured: "above the floor, landing or line of nosings",
    rule: { comparator: "min", of: ["guardHeight", "landingGuardHeight"], min: millimetres("900") },
    applies: [GUARD_NEEDED, NOT_SERVICE],
    exceptions: [{
      when: { all: [OUTSIDE, { fact: "fallHeight", moreThan: millimetres("1800") }] },
      words: "outdoors, over a drop of more than 1800 mm: 1070 mm",
      then: { comparator: "min", of: ["guardHeight", "landingGuardHeight"], min: millimetres("1070") },
    }, {
      when: PUBLIC.when,
      words: "other places than a dwelling: 1070 mm (the figure is that of Ontario)",
      then: { comparator: "min", of: ["guardHeight", "landingGuardHeight"], min: millimetres("1070") },
    }],
    remark: "give use if the stair is not private",
  }),
  limit({
    item: "guard opening stair triangle", clause: "9.8.8.5.(2)", text: "150",
    measured: "triangle between riser, tread and bottom rail",
    rule: { comparator: "sphere", of: "triangleGap", sphere: millimetres("150") },
    applies: [GUARD_NEEDED],
  }),
  limit({
    item: "stringer effective depth", clause: "9.8.9.4.(1)(a)", text: "90",
    measured: "square to the bottom of the stringer at its least section",
    rule: { comparator: "min", of: "throat", min: millimetres("90") },
  }),
  limit({
    item: "stringer overall depth", clause: "9.8.9.4.(1)(a)", text: "235",
    measured: "width of the board the stringer is cut from",
    rule: { comparator: "min", of: "stringerBoard", min: millimetres("235") },
  }),
  limit({
    item: "stringer thickness supported", clause: "9.8.9.4.(1)(c)", text: "25",
    measured: "actual thickness",
    rule: {
      comparator: "table",
      rows: [
        {
          when: { fact: "stringerSupported", is: ["yes"] },
          words: "supported along their length",
          rule: { comparator: "min", of: "stringerThickness", min: millimetres("25") },
        },
        {
          when: { fact: "stringerSupported", is: ["no"] },
          words: "not supported along their length: 38 mm (the figure is that of Ontario, 2024)",
          rule: { comparator: "min", of: "stringerThickness", min: millimetres("38") },
        },
      ],
    },
  }),
  limit({
    item: "stringer spacing", clause: "9.8.9.4.(1)(d)", text: "900",
    measured: "between stringers",
    rule: { comparator: "max", of: "stringerSpacing", max: millimetres("900") },
    applies: [NOT_SERVICE],
    exceptions: [{
      when: { fact: "risersSupportTreads", is: ["yes"], otherwise: "no" },
      words: "risers carry the front of the treads: 1200 mm",
      then: { comparator: "max", of: "stringerSpacing", max: millimetres("1200") },
    }, {
      when: PUBLIC.when,
      words: "other stairs than those of a dwelling: 600 mm",
      then: { comparator: "max", of: "stringerSpacing", max: millimetres("600") },
    }],
    remark: "give use if the stair is not private",
  }),
  limit({
    item: "tread thickness", clause: "9.8.9.5.(1)", text: "25",
    measured: "actual thickness of treads of lumber, plywood or OSB",
    rule: { comparator: "min", of: "treadThickness", min: millimetres("25") },
    applies: [PRIVATE],
  }),
  limit({
    item: "tread thickness open riser", clause: "9.8.9.5.(1)", text: "38",
    measured: "actual thickness",
    rule: { comparator: "min", of: "treadThickness", min: millimetres("38") },
    applies: [RISERS_OPEN, { when: { fact: "stringerSpacing", moreThan: millimetres("750") }, words: "the stringers are more than 750 mm apart" }],
  }),
];

const outside = outsideRow({ status: "checked against the code's text", sources: [ALBERTA_2023] });

const OUT_OF_SCOPE: readonly OutOfScope[] = [
  outside({
    item: "spiral clear width", clause: "9.8.4.7.(1)(b)", unit: "mm", text: "at least 660", reason: "spiral stair",
  }),
  outside({
    item: "spiral riser height", clause: "9.8.4.7.(1)(c)", unit: "mm", text: "at most 240", reason: "spiral stair",
  }),
  outside({
    item: "spiral tread depth", clause: "9.8.4.7.(1)(d)(i)", unit: "mm", text: "at least 190", reason: "spiral stair",
  }),
  outside({
    item: "spiral headroom", clause: "9.8.4.7.(1)(e)", unit: "mm", text: "at least 1980", reason: "spiral stair",
  }),
  outside({
    item: "live load uniform stairs", clause: "9.8.9.1.(1)(a)", unit: "kPa", text: "1.9", reason: "live load",
  }),
];

/** Stairs of Part 9 of the National Building Code of Canada, 2020. */
export const nbcCa2020: CodeProfile = {
  id: "nbc-ca-2020",
  title: "National Building Code of Canada, Division B Part 9",
  edition: "2020",
  region: "Canada, houses and small buildings, where adopted",
  untypedNosing: "none",
  limits: LIMITS,
  outOfScope: OUT_OF_SCOPE,
};
