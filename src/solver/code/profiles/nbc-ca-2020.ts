import type { OutOfScope, Source } from "../profile";
import { edition } from "../record/edition";
import { limitRecord, type LimitRecord, outsideRecord } from "../record/limit-record";
import { printed, span } from "../record/printed-figure";
import {
  BOTH_HANDRAILS, EXIT, flightWidth, FREE_IN_DWELLING, GUARD_NEEDED, HANDRAIL_PROVIDED, HAS_GUARD, HAS_HANDRAIL, NOT_PRIVATE,
  NOT_SERVICE, OPEN_RISERS,
  OUTSIDE, POINTED_WINDERS, PRIVATE, PUBLIC, RISERS_OPEN, SPIRAL, TAPERED_TREADS, WINDERS_AMONG_STEPS,
} from "../record/stair-conditions";

const ALBERTA_2023: Source = { title: "National Building Code, 2023 Alberta Edition, section 9.8, which adopts the 2020 code" };

const limit = limitRecord({ unit: "mm", status: "checked against the code's text", sources: [ALBERTA_2023] });

const RECORDS: readonly LimitRecord[] = [
  limit({
    item: "riser height", clause: "Table 9.8.4.1.", text: "125 to 200",
    measured: "plumb, nosing to nosing",
    rule: { comparator: "range", of: "riserHeight" },
    applies: [PRIVATE],
    exceptions: [SPIRAL],
  }),
  limit({
    item: "run", clause: "Table 9.8.4.2.", text: "255 to 355",
    measured: "level, nosing to nosing",
    rule: { comparator: "range", of: "treadDepth" },
    applies: [PRIVATE],
    exceptions: [SPIRAL],
  }),
  limit({
    item: "riser height public", clause: "Table 9.8.4.1.", text: "125 to 180",
    measured: "plumb, nosing to nosing",
    rule: { comparator: "range", of: "riserHeight" },
    applies: [PUBLIC],
  }),
  limit({
    item: "run public", clause: "Table 9.8.4.2.", text: "280",
    measured: "level, nosing to nosing",
    rule: { comparator: "min", of: "treadDepth" },
    applies: [PUBLIC],
    remark: "there is no greatest run",
  }),
  limit({
    item: "tread depth over run", clause: "9.8.4.2.(2)", text: "0 to 25",
    measured: "depth of the tread less its run, which is the nosing",
    rule: { comparator: "range", of: "nosing" },
  }),
  limit({
    item: "riser uniformity adjacent", clause: "9.8.4.4.(1)(a)", text: "5",
    measured: "between neighbouring treads or landings",
    rule: { comparator: "uniformity", of: "rise", within: "neighbours" },
  }),
  limit({
    item: "riser uniformity", clause: "9.8.4.4.(1)(b)", text: "10",
    measured: "tallest less shortest riser of the flight",
    rule: { comparator: "uniformity", of: "rise", within: "flight" },
  }),
  limit({
    item: "run uniformity adjacent", clause: "9.8.4.4.(3)(a)", text: "5",
    measured: "between neighbouring treads",
    rule: { comparator: "uniformity", of: "run", within: "neighbours" },
    exceptions: [WINDERS_AMONG_STEPS],
  }),
  limit({
    item: "run uniformity", clause: "9.8.4.4.(3)(b)", text: "10",
    measured: "deepest less shallowest run of the flight",
    rule: { comparator: "uniformity", of: "run", within: "flight" },
    exceptions: [WINDERS_AMONG_STEPS],
  }),
  limit({
    item: "headroom", clause: "9.8.2.2.(3)", text: "1950",
    measured: "plumb above a line along the nosings",
    rule: { comparator: "min", of: "headroom" },
    applies: [PRIVATE],
    exceptions: [SPIRAL, {
      when: { fact: "underBeam", is: ["yes"], otherwise: "no" },
      words: "under beams and ducts of a secondary suite a row of its own counts",
      then: "does not apply",
    }],
  }),
  limit({
    item: "stair width", clause: "9.8.2.1.(4)", text: "860",
    measured: "between wall faces or guards",
    rule: { comparator: "min", of: ["clearWidth", "width"] },
    applies: [PRIVATE],
    exceptions: [SPIRAL],
  }),
  limit({
    item: "winder tread turn", clause: "9.8.4.6.(1)", unit: "deg", text: "30 or 45",
    measured: "turn of one winder",
    rule: { comparator: "equals", of: "winderTurn" },
    applies: [...POINTED_WINDERS, PRIVATE],
    remark: "exactly 30 or exactly 45 degrees, nothing between",
  }),
  limit({
    item: "winder set turn", clause: "9.8.4.6.(2)", unit: "deg", text: "90",
    measured: "turn of all winders of one set together",
    rule: { comparator: "max", of: "winderSetTurn" },
    applies: [...POINTED_WINDERS, PRIVATE],
  }),
  limit({
    item: "nosing bevel", clause: "9.8.4.8.(1)", text: "6 to 14",
    measured: "rounding or bevel of the edge",
    rule: { comparator: "range", of: ["nosingRadius", "nosingBevel"] },
    exceptions: [{
      when: { fact: "resilientCovering", is: ["yes"], otherwise: "no" },
      words: "a resilient covering: 3 to 14 mm",
      then: { comparator: "range", of: ["nosingRadius", "nosingBevel"], ...span("3 to 14 mm") },
    }],
    remark: "the 14 mm were read in the text of Ontario",
  }),
  limit({
    item: "handrail height", clause: "9.8.7.4.(2)", text: "865 to 1070",
    measured: "plumb above a line along the nosings",
    rule: { comparator: "range", of: "handrailHeight" },
    applies: [HAS_HANDRAIL],
  }),
  limit({
    item: "guard opening", clause: "9.8.8.5.(1)", text: "100",
    measured: "largest opening in the guard",
    rule: { comparator: "sphere", of: ["guardGap", "landingGuardGap"] },
    applies: [GUARD_NEEDED],
  }),
  limit({
    item: "stair width other", clause: "9.8.2.1.(1)", text: "900",
    measured: "between wall faces or guards",
    rule: { comparator: "min", of: ["clearWidth", "width"] },
    applies: [PUBLIC],
    remark: "where nobody lives, or 8 mm a person if that is more (9.8.2.1.(3))",
  }),
  limit({
    item: "headroom other", clause: "9.8.2.2.(2)", text: "2050",
    measured: "plumb above a line along the nosings",
    rule: { comparator: "min", of: "headroom" },
    applies: [NOT_PRIVATE],
  }),
  limit({
    item: "headroom secondary suite beams", clause: "9.8.2.2.(4)", text: "1850",
    measured: "under the beam or duct",
    rule: { comparator: "min", of: "headroom" },
    applies: {
      when: { fact: "underBeam", is: ["yes"], otherwise: "no" }, words: "headroom was taken under a beam or duct of a secondary suite",
    },
  }),
  limit({
    item: "flight vertical rise", clause: "9.8.3.3.", text: "3700",
    measured: "between floors or landings",
    rule: { comparator: "max", of: "totalRise" },
  }),
  limit({
    item: "flight risers", clause: "9.8.3.2.(1)", unit: "count", text: "3", counts: "flight",
    measured: "risers of an interior flight",
    rule: { comparator: "min", of: "risers" },
    applies: { when: { not: OUTSIDE }, words: "the flight is indoors" },
    exceptions: [FREE_IN_DWELLING],
  }),
  limit({
    item: "tapered tread run narrow end", clause: "9.8.4.3.(1)(a)", text: "150",
    measured: "run at the narrow end; 300 mm from the centre line of the inside handrail the run of a straight tread, 255 to 355 mm",
    rule: {
      comparator: "every", needs: "any",
      parts: [
        { comparator: "min", of: "winderNarrowEnd" },
        { comparator: "range", of: "winderDepth", ...span("255 to 355 mm") },
      ],
    },
    applies: TAPERED_TREADS,
    exceptions: [{
      when: { not: { fact: "use", is: ["private"], otherwise: "private" } },
      words: "the stair is not private: a run of at least 280 mm, and 150 mm at the narrow end",
      then: {
        comparator: "every", needs: "any",
        parts: [
          { comparator: "min", of: "winderNarrowEnd", min: printed("150 mm") },
          { comparator: "min", of: "winderDepth", min: printed("280 mm") },
        ],
      },
    }],
  }),
  limit({
    item: "tapered tread measure point", clause: "9.8.4.3.(1)(b)", text: "300",
    measured: "from the centre line of the handrail at the narrow end",
    rule: { comparator: "equals", of: "walklineFromHandrail" },
    applies: TAPERED_TREADS,
  }),
  limit({
    item: "tapered run uniformity", clause: "9.8.4.4.(4)", text: "5 between neighbours, 10 in a flight",
    measured: "deepest less shallowest tapered tread of the flight, 300 mm from the centre line of the handrail at the narrow end",
    rule: {
      comparator: "every", needs: "all",
      parts: [
        { comparator: "uniformity", of: { spread: "winderSpread" }, within: "flight", tolerance: printed("10 mm") },
        {
          comparator: "either",
          parts: [
            { comparator: "uniformity", of: { spread: "winderSpread" }, within: "flight", tolerance: printed("5 mm") },
            { comparator: "person", sense: "more than 5 mm over the flight: no two neighbours may be more than that apart" },
          ],
        },
      ],
    },
    applies: TAPERED_TREADS,
  }),
  limit({
    item: "winder tread turn deviation", clause: "9.8.4.6.(1)", unit: "deg", text: "one of two angles, with no deviation",
    measured: "turn of one winder",
    rule: { comparator: "shown" },
    remark: "a range from 30 to 45 degrees is Ontario's",
  }),
  limit({
    item: "winder sets", clause: "9.8.3.1.(3)", unit: "count", text: "1", counts: "stair",
    measured: "sets of winders between two floors",
    rule: { comparator: "max", of: "winderSets" },
    applies: POINTED_WINDERS,
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
  }),
  limit({
    item: "walking surface slope", clause: "9.8.4.4.(5)", unit: "ratio", text: "1:50",
    measured: "rise over run of treads and landings, the steepest way",
    rule: { comparator: "slope", of: ["treadSlope", "landingSlope"] },
  }),
  limit({
    item: "open riser", clause: "9.8.4.9.(1)", text: "not permitted, but in houses",
    measured: "whether the risers are open",
    rule: { comparator: "prohibited", thing: "open risers are", present: OPEN_RISERS },
    exceptions: [{
      when: { not: PUBLIC.when }, words: "in a house, and on a stair to service rooms, open risers are allowed and no opening is limited",
      then: { comparator: "shown", text: "allowed" },
    }],
    remark: "fire escapes and most industry are free too",
  }),
  limit({
    item: "landing width", clause: "9.8.6.3.(1)", text: "the width of the stair",
    measured: "across the direction of travel",
    rule: { comparator: "relation", of: "landingWidth", sense: "at least", than: ["clearWidth", "width"] },
  }),
  limit({
    item: "landing depth", clause: "9.8.6.3.(2)", text: "the width of the stair, at most 1100 mm",
    measured: "in the direction of travel",
    rule: { comparator: "relation", of: "landingDepth", sense: "at least", than: ["clearWidth", "width"], capped: printed("1100 mm") },
    exceptions: [{
      when: { fact: "landing", is: ["turn"], otherwise: "straight" },
      words: "a landing on which the stair turns by 90 degrees or more is as deep as the stair is wide",
      then: { comparator: "relation", of: "landingDepth", sense: "at least", than: ["clearWidth", "width"] },
    }],
  }),
  limit({
    item: "handrail required risers", clause: "9.8.7.1.(3)", unit: "count", text: "indoors 3 or more, outdoors 4 or more", counts: "stair",
    measured: "risers of the whole stair, all its flights together",
    rule: {
      comparator: "table",
      rows: [
        {
          when: { not: OUTSIDE }, words: "indoors, 3 or more",
          rule: {
            comparator: "required-when", of: "risers", from: { atLeast: printed("3 risers") },
            or: { of: "stairRisers", from: { atLeast: printed("3 risers") } },
            requires: "a handrail",
            provided: HANDRAIL_PROVIDED,
          },
        },
        {
          when: OUTSIDE, words: "outdoors, 4 or more",
          rule: {
            comparator: "required-when", of: "risers", from: { atLeast: printed("4 risers") },
            or: { of: "stairRisers", from: { atLeast: printed("4 risers") } },
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
    item: "handrail sides", clause: "Table 9.8.7.1.", unit: "count",
    text: "one side in a house; elsewhere both sides from 1100 mm of width on",
    measured: "sides of the stair with a handrail",
    rule: {
      comparator: "table",
      rows: [
        {
          when: PRIVATE.when, words: "in a house, at any width",
          rule: { comparator: "required", requires: "a handrail on one side", provided: HANDRAIL_PROVIDED },
        },
        {
          when: flightWidth({ atLeast: printed("1100 mm") }), words: "1100 mm wide or wider",
          rule: { comparator: "required", requires: "a handrail on both sides", provided: BOTH_HANDRAILS },
        },
        {
          when: { any: [{ given: "clearWidth" }, { given: "width" }] }, words: "under 1100 mm wide",
          rule: { comparator: "required", requires: "a handrail on one side", provided: HANDRAIL_PROVIDED },
        },
      ],
    },
    exceptions: [{
      when: {
        any: [
          {
            all: [
              PRIVATE.when, { not: OUTSIDE }, { fact: "risers", atMost: printed("2 risers") },
              { fact: "stairRisers", atMost: printed("2 risers") },
            ],
          },
          {
            all: [
              PRIVATE.when, OUTSIDE, { fact: "risers", atMost: printed("3 risers") },
              { fact: "stairRisers", atMost: printed("3 risers") },
            ],
          },
        ],
      },
      words: "in a house a stair of at most 2 risers indoors, 3 outdoors, needs none",
      then: "does not apply",
    }],
    remark: "a curved flight outside houses has handrails on both sides at any width",
  }),
  limit({
    item: "handrail top extension", clause: "9.8.7.3.(2)", text: "300",
    measured: "level, beyond the top and the bottom of the flight, of one handrail",
    rule: { comparator: "min", of: "handrailExtension" },
    applies: [HAS_HANDRAIL, NOT_PRIVATE],
  }),
  limit({
    item: "handrail wall clearance", clause: "9.8.7.5.(1)", text: "50",
    measured: "free space between handrail and wall",
    rule: { comparator: "min", of: "handrailClearance" },
    applies: [HAS_HANDRAIL],
    exceptions: [{
      when: { fact: "roughWall", is: ["yes"], otherwise: "no" },
      words: "a rough or abrasive wall: 60 mm",
      then: { comparator: "min", of: "handrailClearance", min: printed("60 mm") },
    }],
  }),
  limit({
    item: "handrail projection each side", clause: "9.8.7.6.(1)", text: "100",
    measured: "how far handrails, their supports and stringers stand into the required width",
    rule: { comparator: "max", of: "handrailProjection" },
    applies: [HAS_HANDRAIL],
  }),
  limit({
    item: "guard required drop", clause: "9.8.8.1.(1)", text: "more than 600",
    measured: "drop to the surface within 1.2 m of the open side",
    rule: {
      comparator: "required-when", of: "fallHeight", requires: "a guard along the open side",
      provided: HAS_GUARD,
    },
  }),
  limit({
    item: "guard height", clause: "9.8.8.3.(2)", text: "900",
    measured: "above the floor, landing or line of nosings",
    rule: { comparator: "min", of: ["guardHeight", "landingGuardHeight"] },
    applies: [GUARD_NEEDED, NOT_SERVICE],
    exceptions: [{
      when: { all: [OUTSIDE, { fact: "fallHeight", moreThan: printed("1800 mm") }] },
      words: "outdoors, over a drop of more than 1800 mm: 1070 mm",
      then: { comparator: "min", of: ["guardHeight", "landingGuardHeight"], min: printed("1070 mm") },
    }, {
      when: PUBLIC.when,
      words: "other places than a dwelling: 1070 mm (the figure is that of Ontario)",
      then: { comparator: "min", of: ["guardHeight", "landingGuardHeight"], min: printed("1070 mm") },
    }],
    remark: "give use if the stair is not private",
  }),
  limit({
    item: "guard opening stair triangle", clause: "9.8.8.5.(2)", text: "150",
    measured: "triangle between riser, tread and bottom rail",
    rule: { comparator: "sphere", of: "triangleGap" },
    applies: [GUARD_NEEDED],
  }),
  limit({
    item: "stringer effective depth", clause: "9.8.9.4.(1)(a)", text: "90",
    measured: "square to the bottom of the stringer at its least section",
    rule: { comparator: "min", of: "throat" },
  }),
  limit({
    item: "stringer overall depth", clause: "9.8.9.4.(1)(a)", text: "235",
    measured: "width of the board the stringer is cut from",
    rule: { comparator: "min", of: "stringerBoard" },
  }),
  limit({
    item: "stringer thickness supported", clause: "9.8.9.4.(1)(c)", text: "25",
    measured: "actual thickness",
    rule: {
      comparator: "table",
      rows: [
        {
          when: { fact: "stringerSupported", is: ["yes"] },
          words: "supported along their length: 25 mm",
          rule: { comparator: "min", of: "stringerThickness", min: printed("25 mm") },
        },
        {
          when: { fact: "stringerSupported", is: ["no"] },
          words: "not supported along their length: 38 mm (the figure is that of Ontario, 2024)",
          rule: { comparator: "min", of: "stringerThickness", min: printed("38 mm") },
        },
      ],
    },
  }),
  limit({
    item: "stringer spacing", clause: "9.8.9.4.(1)(d)", text: "900",
    measured: "between stringers",
    rule: { comparator: "max", of: "stringerSpacing" },
    applies: [NOT_SERVICE],
    exceptions: [{
      when: { fact: "risersSupportTreads", is: ["yes"], otherwise: "no" },
      words: "risers carry the front of the treads: 1200 mm",
      then: { comparator: "max", of: "stringerSpacing", max: printed("1200 mm") },
    }, {
      when: PUBLIC.when,
      words: "other stairs than those of a dwelling: 600 mm",
      then: { comparator: "max", of: "stringerSpacing", max: printed("600 mm") },
    }],
    remark: "give use if the stair is not private",
  }),
  limit({
    item: "tread thickness", clause: "9.8.9.5.(1)", text: "25",
    measured: "actual thickness of treads of lumber, plywood or OSB",
    rule: { comparator: "min", of: "treadThickness" },
    applies: [PRIVATE],
  }),
  limit({
    item: "tread thickness open riser", clause: "9.8.9.5.(1)", text: "38",
    measured: "actual thickness",
    rule: { comparator: "min", of: "treadThickness" },
    applies: [
      RISERS_OPEN, { when: { fact: "stringerSpacing", moreThan: printed("750 mm") }, words: "the stringers are more than 750 mm apart" },
    ],
  }),
];

const outside = outsideRecord({ status: "checked against the code's text", sources: [ALBERTA_2023] });

/** What the code rules on in words, or in sizes the stair table has no label for. */
const IN_WORDS: readonly OutOfScope[] = [
  outside({
    item: "tapered tread depth over run", clause: "9.8.4.3.(3)", unit: "mm", text: "0 to 25, at any point of a tapered tread",
    reason: "not in the stair table",
  }),
  outside({
    item: "landing required", clause: "9.8.6.2.(1)", unit: "in words",
    text: "at the top and the bottom of each flight, and where a doorway opens on a stair",
    reason: "not in the stair table",
  }),
  outside({
    item: "landing omitted risers", clause: "9.8.6.2.(3)(a)", unit: "count",
    text: "none at the top of an outside flight of at most 3 risers to a second entrance of a house",
    reason: "not in the stair table",
  }),
  outside({
    item: "landing bottom clear", clause: "9.8.6.2.(4)", unit: "mm",
    text: "900 left clear, or the width of the stair, at an outside stair without a bottom landing",
    reason: "not in the stair table",
  }),
  outside({
    item: "landing headroom", clause: "9.8.6.4.(2)", unit: "mm",
    text: "1950 in a house, 2050 elsewhere",
    reason: "not in the stair table",
  }),
  outside({
    item: "handrail reach", clause: "9.8.7.1.(2)", unit: "mm",
    text: "750 from the way people walk to a handrail, where more than two dwellings use the stair",
    reason: "not in the stair table",
  }),
  outside({
    item: "handrail narrow end", clause: "9.8.7.1.(5)", unit: "in words",
    text: "a handrail along the narrow end of tapered treads",
    reason: "not in the stair table",
  }),
  outside({
    item: "handrail continuity", clause: "9.8.7.2.(1)", unit: "in words",
    text: "graspable from the bottom riser to the top riser",
    reason: "not in the stair table",
  }),
  outside({
    item: "handrail grip", clause: "9.8.7.5.(2)", unit: "in words", text: "graspable along its length; Part 9 prints no size",
    reason: "not in the stair table",
  }),
  outside({ item: "handrail load", clause: "9.8.7.7.(1)", unit: "kN", text: "0.9", reason: "live load" }),
  outside({
    item: "guard exempt", clause: "9.8.8.1.(2)", unit: "in words",
    text: "loading docks, pits of repair garages, access for maintenance",
    reason: "not in the stair table",
  }),
  outside({
    item: "guard opening industrial", clause: "9.8.8.5.(3)", unit: "mm",
    text: "a ball of 535, in industry",
    reason: "not in the stair table",
  }),
  outside({
    item: "guard opening not required", clause: "9.8.8.5.(4)", unit: "mm",
    text: "a ball of 100, or one that lets a ball of 200 through, in a guard that is not required",
    reason: "not in the stair table",
  }),
  outside({
    item: "guard climb zone", clause: "9.8.8.6.(1)", unit: "mm",
    text: "nothing to climb on from 140 to 900 up, where the drop is more than 4.2 m", reason: "not in the stair table",
  }),
  outside({
    item: "spiral handrail height", clause: "9.8.4.7.(1)(a)", unit: "mm",
    text: "at least 1070, on both sides",
    reason: "spiral stair",
  }),
];

const OUT_OF_SCOPE: readonly OutOfScope[] = [
  ...IN_WORDS,
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
export const nbcCa2020 = edition({
  id: "nbc-ca-2020",
  title: "National Building Code of Canada, Division B Part 9",
  edition: "2020",
  region: "Canada, houses and small buildings, where adopted",
  family: "NBC CA",
  untypedNosing: "none",
  records: RECORDS,
  outOfScope: OUT_OF_SCOPE,
});
