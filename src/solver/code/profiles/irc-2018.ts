import type { OutOfScope, Source } from "../profile";
import { edition } from "../record/edition";
import {
  EXTERIOR_DOOR, LANDING_DRAINS, LANDING_OF_OTHER_SHAPE, NOSING_OVER_OPEN_RISERS, ofLaterEdition, OPENING_OVERLAPS, PASSING_NOSING,
} from "../record/irc-exceptions";
import { limitRecord, type LimitRecord, outsideRecord } from "../record/limit-record";
import { printed, span } from "../record/printed-figure";
import {
  AT_FITTING, GUARD_NEEDED, GUARD_TOPPED_BY_HANDRAIL, HANDRAIL_PROVIDED, HAS_GUARD, HAS_HANDRAIL, OTHER_HANDRAIL, RISERS_OPEN,
  ROUND_HANDRAIL, SPIRAL, WINDERS, WINDERS_AMONG_STEPS,
} from "../record/stair-conditions";
import { TYPE_TWO_GRIP, TYPE_TWO_GRIP_WORDS } from "../record/type-two-grip";

const IRC_2018: Source = { title: "International Residential Code, 2018, as adopted by Alaska" };
const JEFFERSON_STAIRWAYS: Source = {
  title: "International Residential Code, 2018, as adopted by Jefferson County, Colorado: Stairways",
  address: "https://www.jeffco.us/2095/Stairways",
};
const JEFFERSON_HANDRAILS: Source = {
  title: "International Residential Code, 2018, as adopted by Jefferson County, Colorado: Handrails",
  address: "https://www.jeffco.us/2090/Handrails",
};
const JEFFERSON_GUARDS: Source = {
  title: "International Residential Code, 2018, as adopted by Jefferson County, Colorado: Guards",
  address: "https://www.jeffco.us/2088/Guards",
};

const limit = limitRecord({ unit: "in", status: "checked against the code's text", sources: [IRC_2018] });

const RECORDS: readonly LimitRecord[] = [
  limit({
    item: "clear width above handrail", clause: "R311.7.1", text: "36", printedMillimetres: ["914"],
    measured: "clear width at every point above the handrail and under the required headroom",
    rule: { comparator: "min", of: "clearWidth" },
    exceptions: [SPIRAL],
    sources: [JEFFERSON_STAIRWAYS],
  }),
  limit({
    item: "clear width at handrail one side", clause: "R311.7.1", text: "31 1/2", printedMillimetres: ["787"],
    measured: "clear width at and below the handrail, treads and landings alike",
    rule: { comparator: "min", of: "widthAtHandrails" },
    applies: [{ when: { fact: "handrails", is: ["one"] }, words: "there is a handrail on one side" }],
    exceptions: [SPIRAL],
    sources: [JEFFERSON_STAIRWAYS],
  }),
  limit({
    item: "clear width at handrail two sides", clause: "R311.7.1", text: "27", printedMillimetres: ["698"],
    measured: "clear width at and below the handrails, treads and landings alike",
    rule: { comparator: "min", of: "widthAtHandrails" },
    applies: [{ when: { fact: "handrails", is: ["both"] }, words: "there are handrails on both sides" }],
    exceptions: [SPIRAL],
    sources: [JEFFERSON_STAIRWAYS],
  }),
  limit({
    item: "headroom", clause: "R311.7.2", text: "6 ft 8 in", printedMillimetres: ["2032"],
    measured: "plumb above the line of the nosings, or above a landing",
    rule: { comparator: "min", of: "headroom" },
    exceptions: [SPIRAL, OPENING_OVERLAPS],
  }),
  limit({
    item: "flight vertical rise", clause: "R311.7.3", text: "151", printedMillimetres: ["3835"],
    measured: "between floors or landings",
    rule: { comparator: "max", of: "totalRise" },
  }),
  limit({
    item: "riser height", clause: "R311.7.5.1", text: "7 3/4", printedMillimetres: ["196"],
    measured: "plumb between the leading edges of neighbouring treads",
    rule: { comparator: "max", of: "riserHeight" },
    exceptions: [SPIRAL],
    sources: [JEFFERSON_STAIRWAYS],
    remark: "the code sets no least riser",
  }),
  limit({
    item: "riser uniformity", clause: "R311.7.5.1", text: "3/8", printedMillimetres: ["9.5"],
    measured: "largest less smallest riser of the flight",
    rule: { comparator: "uniformity", of: "rise", within: "flight" },
  }),
  limit({
    item: "riser slope from vertical", clause: "R311.7.5.1", unit: "deg", text: "30",
    measured: "lean of a closed riser, from the underside of the nosing above it",
    rule: { comparator: "max", of: "riserSlope" },
    applies: [{ when: { given: "riserSlope" }, words: "a closed riser is not plumb" }],
  }),
  limit({
    item: "open riser opening", clause: "R311.7.5.1", text: "4", printedMillimetres: ["102"],
    measured: "clear opening between two treads with no riser",
    rule: { comparator: "sphere", of: "openRiserGap" },
    applies: [
      RISERS_OPEN,
      {
        when: { fact: "openRiserHeight", moreThan: printed("30 in") },
        words: "the opening is more than 30 in above the floor or grade below",
      },
    ],
    exceptions: [SPIRAL],
    remark: "lower openings are not limited",
  }),
  limit({
    item: "tread depth", clause: "R311.7.5.2", text: "10", printedMillimetres: ["254"],
    measured: "level from nosing to nosing, square to the leading edge: the run, not the board",
    rule: { comparator: "min", of: "treadDepth" },
    exceptions: [SPIRAL],
    sources: [JEFFERSON_STAIRWAYS],
    remark: "winders have limits of their own",
  }),
  limit({
    item: "tread uniformity", clause: "R311.7.5.2", text: "3/8", printedMillimetres: ["9.5"],
    measured: "largest less smallest tread depth of the flight",
    rule: { comparator: "uniformity", of: "run", within: "flight" },
    exceptions: [WINDERS_AMONG_STEPS],
  }),
  limit({
    item: "winder tread depth walkline", clause: "R311.7.5.2.1", text: "10", printedMillimetres: ["254"],
    measured: "nosing to nosing where they cross the walkline",
    rule: { comparator: "min", of: "winderDepth" },
    applies: [WINDERS],
    exceptions: [SPIRAL],
  }),
  limit({
    item: "winder tread depth any point", clause: "R311.7.5.2.1", text: "6", printedMillimetres: ["152"],
    measured: "at any point within the clear width of the stair",
    rule: { comparator: "min", of: "winderNarrowEnd" },
    applies: [WINDERS],
  }),
  limit({
    item: "winder uniformity walkline", clause: "R311.7.5.2.1", text: "3/8", printedMillimetres: ["9.5"],
    measured: "deepest less shallowest winder of the flight at the walkline, as built",
    rule: { comparator: "uniformity", of: { spread: "winderSpread" }, within: "flight" },
    applies: [WINDERS],
    remark: "winders of one shape need not match the straight treads of the flight",
  }),
  limit({
    item: "walkline offset", clause: "R311.7.4", text: "12", printedMillimetres: ["305"],
    measured: "from the narrow side of the clear walking surface to where the winder depth is measured",
    rule: { comparator: "equals", of: "walkline" },
    applies: [WINDERS],
  }),
  limit({
    item: "nosing radius", clause: "R311.7.5.3", text: "9/16", printedMillimetres: ["14"],
    measured: "rounding of the nosing, also of landings and floors of the stair",
    rule: { comparator: "max", of: "nosingRadius" },
    applies: [{ when: { any: [{ given: "nosingRadius" }, { not: { given: "nosingBevel" } }] }, words: "the nosing is rounded" }],
  }),
  limit({
    item: "nosing bevel", clause: "R311.7.5.3", text: "1/2", printedMillimetres: ["12.7"],
    measured: "bevel of the nosing's edge",
    rule: { comparator: "max", of: "nosingBevel" },
    applies: [{ when: { any: [{ given: "nosingBevel" }, { not: { given: "nosingRadius" } }] }, words: "the nosing is bevelled" }],
  }),
  limit({
    item: "nosing projection", clause: "R311.7.5.3", text: "3/4 to 1 1/4", printedMillimetres: ["19", "32"],
    measured: "how far the tread stands out over the riser below",
    rule: { comparator: "range", of: "nosing" },
    applies: [{ when: { not: { reached: "nosing exempt tread depth" } }, words: "the tread depth is under the exempt depth" }],
    exceptions: [ofLaterEdition(NOSING_OVER_OPEN_RISERS)],
  }),
  limit({
    item: "nosing exempt tread depth", clause: "R311.7.5.3", text: "11", printedMillimetres: ["279"],
    measured: "tread depth, nosing to nosing",
    rule: { comparator: "exempt-when", of: "treadDepth", frees: "nosing projection" },
    remark: "a nosing that is there still keeps to the radius or the bevel",
  }),
  limit({
    item: "nosing projection uniformity", clause: "R311.7.5.3", text: "3/8", printedMillimetres: ["9.5"],
    measured: "largest less smallest projection of the stair, the nosings of landings and of the upper floor among them",
    rule: { comparator: "uniformity", of: "nosing", within: "flight" },
  }),
  limit({
    item: "landing depth straight run", clause: "R311.7.6", text: "36", printedMillimetres: ["914"],
    measured: "in the direction of travel",
    rule: { comparator: "min", of: "landingDepth" },
    applies: [
      { when: { fact: "landing", is: ["straight", "exterior door"], otherwise: "straight" }, words: "the run is straight at the landing" },
    ],
    exceptions: [ofLaterEdition(EXTERIOR_DOOR)],
    remark: "none is needed at the top of a flight indoors where no door swings over the stair",
  }),
  limit({
    item: "landing width", clause: "R311.7.6", text: "the width of the flight it serves",
    measured: "across the direction of travel",
    rule: { comparator: "relation", of: "landingWidth", sense: "at least", than: ["clearWidth", "width"] },
    exceptions: [LANDING_OF_OTHER_SHAPE],
    remark: "a landing that is not a rectangle has a depth and an area to keep as well (of the 2024 edition); give landing shape if so",
  }),
  limit({
    item: "walking surface slope", clause: "R311.7.7", unit: "ratio", text: "1:48",
    measured: "rise over run of treads and landings, the steepest way",
    rule: { comparator: "slope", of: ["treadSlope", "landingSlope"] },
    exceptions: [ofLaterEdition(LANDING_DRAINS)],
    remark: "2 percent is printed beside it, a rounding of 1/48",
  }),
  limit({
    item: "handrail required risers", clause: "R311.7.8", unit: "count", text: "4 or more risers", counts: "flight",
    measured: "risers of the flight",
    rule: {
      comparator: "required-when", of: "risers", requires: "a handrail on at least one side",
      provided: HANDRAIL_PROVIDED,
    },
    sources: [JEFFERSON_HANDRAILS],
  }),
  limit({
    item: "handrail height", clause: "R311.7.8.1", text: "34 to 38", printedMillimetres: ["864", "965"],
    measured: "plumb above the sloped plane along the nosings",
    rule: { comparator: "range", of: "handrailHeight" },
    applies: [HAS_HANDRAIL],
    exceptions: [AT_FITTING],
    sources: [JEFFERSON_HANDRAILS],
  }),
  limit({
    item: "handrail projection each side", clause: "R311.7.8.2", text: "4 1/2", printedMillimetres: ["114"],
    measured: "how far the handrail stands into the stair, each side",
    rule: { comparator: "max", of: "handrailProjection" },
    applies: [HAS_HANDRAIL],
    exceptions: [PASSING_NOSING],
  }),
  limit({
    item: "handrail wall clearance", clause: "R311.7.8.3", text: "1 1/2", printedMillimetres: ["38"],
    measured: "free space between handrail and wall",
    rule: { comparator: "min", of: "handrailClearance" },
    applies: [HAS_HANDRAIL],
  }),
  limit({
    item: "handrail grip type1 diameter", clause: "R311.7.8.5", text: "1 1/4 to 2", printedMillimetres: ["32", "51"],
    measured: "diameter of a round handrail",
    rule: { comparator: "range", of: "grip" },
    applies: ROUND_HANDRAIL,
  }),
  limit({
    item: "handrail grip type1 perimeter", clause: "R311.7.8.5", text: "4 to 6 1/4", printedMillimetres: ["102", "160"],
    measured: "perimeter of a handrail that is not round",
    rule: { comparator: "range", of: "gripPerimeter" },
    applies: OTHER_HANDRAIL,
  }),
  limit({
    item: "handrail grip type1 cross section", clause: "R311.7.8.5", text: "2 1/4", printedMillimetres: ["57"],
    measured: "largest dimension across a handrail that is not round",
    rule: { comparator: "max", of: "gripCrossSection" },
    applies: OTHER_HANDRAIL,
  }),
  limit({
    item: "handrail grip type2 recess depth", clause: "R311.7.8.5", text: "5/16", printedMillimetres: ["8"],
    measured: "finger recess on each side of a handrail whose perimeter is over 6 1/4 in",
    rule: TYPE_TWO_GRIP,
    applies: [
      HAS_HANDRAIL,
      {
        when: {
          any: [{ given: "gripRecess" }, { all: [{ given: "gripPerimeter" }, { fact: "gripPerimeter", moreThan: printed("6 1/4 in") }] }],
        },
        words: "the perimeter is over 6 1/4 in",
      },
    ],
    remark: TYPE_TWO_GRIP_WORDS,
  }),
  limit({
    item: "guard required drop", clause: "R312.1.1", text: "more than 30", printedMillimetres: ["762"],
    measured: "plumb drop from the open side to the floor or grade anywhere within 36 in of it, level",
    rule: {
      comparator: "required-when", of: "fallHeight", requires: "a guard along the open side",
      provided: HAS_GUARD,
    },
    sources: [JEFFERSON_GUARDS],
  }),
  limit({
    item: "guard height", clause: "R312.1.2", text: "36", printedMillimetres: ["914"],
    measured: "level guards: above the landing or floor",
    rule: { comparator: "min", of: "landingGuardHeight" },
    applies: [GUARD_NEEDED],
    sources: [JEFFERSON_GUARDS],
  }),
  limit({
    item: "guard height stair open side", clause: "R312.1.2", text: "34", printedMillimetres: ["864"],
    measured: "plumb above the line of the nosings, on the open side of the stair",
    rule: { comparator: "min", of: "guardHeight" },
    applies: [GUARD_NEEDED],
    exceptions: [{
      when: GUARD_TOPPED_BY_HANDRAIL,
      words: "the top of the guard is the handrail too: 34 to 38 in",
      then: { comparator: "range", of: "guardHeight", ...span("34 to 38 in") },
    }],
    remark: "amended in places: one county prints 36 in for stairs too",
  }),
  limit({
    item: "guard opening", clause: "R312.1.3", text: "4", printedMillimetres: ["102"],
    measured: "level guards: openings from the walking surface up to the required height",
    rule: { comparator: "sphere", of: "landingGuardGap" },
    applies: [GUARD_NEEDED],
    sources: [JEFFERSON_GUARDS],
    remark: "the open side of the stair and the triangle at its steps have rows of their own",
  }),
  limit({
    item: "guard opening stair side", clause: "R312.1.3", text: "4 3/8", printedMillimetres: ["111"],
    measured: "openings of the guard on the open side of the stair",
    rule: { comparator: "sphere", of: "guardGap" },
    applies: [GUARD_NEEDED],
  }),
  limit({
    item: "guard opening stair triangle", clause: "R312.1.3", text: "6", printedMillimetres: ["153"],
    measured: "triangle between riser, tread and bottom rail",
    rule: { comparator: "sphere", of: "triangleGap" },
    applies: [GUARD_NEEDED],
  }),
];

const outside = outsideRecord({ status: "checked against the code's text", sources: [IRC_2018] });

const OUT_OF_SCOPE: readonly OutOfScope[] = [
  outside({
    item: "landing required", clause: "R311.7.6", unit: "in words",
    text: "a floor or landing at the top and the bottom of each stair",
    reason: "not in the stair table",
  }),
  outside({
    item: "handrail continuity", clause: "R311.7.8.4", unit: "in words",
    text: "over the whole length of the flight, with its ends returned or in newel posts or safety terminals",
    reason: "not in the stair table",
  }),
  outside({ item: "spiral clear width", clause: "R311.7.10.1", unit: "in", text: "at least 26", reason: "spiral stair" }),
  outside({ item: "spiral tread depth walkline", clause: "R311.7.10.1", unit: "in", text: "at least 6 3/4", reason: "spiral stair" }),
  outside({ item: "spiral walkline radius", clause: "R311.7.10.1", unit: "in", text: "at most 24 1/2", reason: "spiral stair" }),
  outside({ item: "spiral riser height", clause: "R311.7.10.1", unit: "in", text: "at most 9 1/2", reason: "spiral stair" }),
  outside({ item: "spiral headroom", clause: "R311.7.10.1", unit: "in", text: "at least 6 ft 6 in", reason: "spiral stair" }),
  outside({ item: "live load uniform stairs", clause: "Table R301.5", unit: "psf", text: "40", reason: "live load" }),
  outside({ item: "live load concentrated tread", clause: "Table R301.5 note c", unit: "lb", text: "300 on 4 sq in", reason: "live load" }),
  outside({ item: "live load guard top", clause: "Table R301.5", unit: "lb", text: "200", reason: "live load" }),
];

/** Stairs of the International Residential Code, 2018 edition: the model text, before any local amendment. */
export const irc2018 = edition({
  id: "irc-2018",
  title: "International Residential Code",
  edition: "2018",
  region: "United States, one- and two-family dwellings and townhouses, where adopted",
  family: "IRC",
  records: RECORDS,
  outOfScope: OUT_OF_SCOPE,
});
