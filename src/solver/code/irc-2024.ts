import {
  EXTERIOR_DOOR, LANDING_DRAINS, LANDING_OF_OTHER_SHAPE, NOSING_OVER_OPEN_RISERS, OPENING_OVERLAPS, PASSING_NOSING,
} from "./irc-exceptions";
import { count, degrees, inches, limitRow, outsideRow } from "./limit-row";
import type { CodeProfile, Limit, OutOfScope, Source } from "./profile";
import {
  AT_FITTING, GUARD_NEEDED, GUARD_TOPPED_BY_HANDRAIL, HANDRAIL_PROVIDED, HAS_GUARD, HAS_HANDRAIL, OTHER_HANDRAIL, RISERS_OPEN,
  ROUND_HANDRAIL, SPIRAL, WINDERS, WINDERS_AMONG_STEPS,
} from "./stair-conditions";
import { TYPE_TWO_GRIP } from "./type-two-grip";

const IRC_2024: Source = { title: "International Residential Code, 2024" };

const limit = limitRow({ unit: "in", status: "checked against the code's text", sources: [IRC_2024] });

const LIMITS: readonly Limit[] = [
  limit({
    item: "clear width above handrail", clause: "R318.7.1", text: "36", printedMillimetres: ["914"], millimetresFrom: "from memory",
    measured: "clear width at every point above the handrail and under the required headroom",
    rule: { comparator: "min", of: "clearWidth", min: inches("36") },
    exceptions: [SPIRAL],
  }),
  limit({
    item: "clear width at handrail one side", clause: "R318.7.1", text: "31 1/2", printedMillimetres: ["787"], millimetresFrom: "from memory",
    measured: "clear width at and below the handrail, treads and landings alike",
    rule: { comparator: "min", of: "widthAtHandrails", min: inches("31.5") },
    applies: [{ when: { fact: "handrails", is: ["one"] }, words: "there is a handrail on one side" }],
    exceptions: [SPIRAL],
  }),
  limit({
    item: "clear width at handrail two sides", clause: "R318.7.1", text: "27", printedMillimetres: ["698"], millimetresFrom: "from memory",
    measured: "clear width at and below the handrails, treads and landings alike",
    rule: { comparator: "min", of: "widthAtHandrails", min: inches("27") },
    applies: [{ when: { fact: "handrails", is: ["both"] }, words: "there are handrails on both sides" }],
    exceptions: [SPIRAL],
  }),
  limit({
    item: "headroom", clause: "R318.7.2", text: "6 ft 8 in", printedMillimetres: ["2032"], millimetresFrom: "from memory",
    measured: "plumb above the line of the nosings, or above a landing",
    rule: { comparator: "min", of: "headroom", min: inches("80") },
    exceptions: [SPIRAL, OPENING_OVERLAPS],
  }),
  limit({
    item: "flight vertical rise", clause: "R318.7.3", text: "12 ft 7 in", printedMillimetres: ["3835"], millimetresFrom: "from memory",
    measured: "between floors or landings",
    rule: { comparator: "max", of: "totalRise", max: inches("151") },
  }),
  limit({
    item: "riser height", clause: "R318.7.5.1", text: "7 3/4", printedMillimetres: ["196"], millimetresFrom: "from memory",
    measured: "plumb between the leading edges of neighbouring treads",
    rule: { comparator: "max", of: "riserHeight", max: inches("7.75") },
    exceptions: [SPIRAL],
    remark: "the code sets no least riser",
  }),
  limit({
    item: "riser uniformity", clause: "R318.7.5.1", text: "3/8", printedMillimetres: ["9.5"], millimetresFrom: "from memory",
    measured: "largest less smallest riser of the flight",
    rule: { comparator: "uniformity", of: "rise", within: "flight", tolerance: inches("0.375") },
  }),
  limit({
    item: "riser slope from vertical", clause: "R318.7.5.1", unit: "deg", text: "30",
    measured: "lean of a closed riser, from the underside of the nosing above it",
    rule: { comparator: "max", of: "riserSlope", max: degrees("30") },
    applies: [{ when: { given: "riserSlope" }, words: "a closed riser is not plumb" }],
  }),
  limit({
    item: "open riser opening", clause: "R318.7.5.1", text: "4", printedMillimetres: ["102"], millimetresFrom: "from memory",
    measured: "clear opening between two treads with no riser",
    rule: { comparator: "sphere", of: "openRiserGap", sphere: inches("4") },
    applies: [
      RISERS_OPEN,
      { when: { fact: "openRiserHeight", moreThan: inches("30") }, words: "the opening is more than 30 in above the floor or grade below" },
    ],
    exceptions: [SPIRAL],
    remark: "lower openings are not limited",
  }),
  limit({
    item: "tread depth", clause: "R318.7.5.2", text: "10", printedMillimetres: ["254"], millimetresFrom: "from memory",
    measured: "level from nosing to nosing, square to the leading edge: the run, not the board",
    rule: { comparator: "min", of: "treadDepth", min: inches("10") },
    exceptions: [SPIRAL],
    remark: "winders have limits of their own",
  }),
  limit({
    item: "tread uniformity", clause: "R318.7.5.2", text: "3/8", printedMillimetres: ["9.5"], millimetresFrom: "from memory",
    measured: "largest less smallest tread depth of the flight",
    rule: { comparator: "uniformity", of: "run", within: "flight", tolerance: inches("0.375") },
    exceptions: [WINDERS_AMONG_STEPS],
  }),
  limit({
    item: "winder tread depth walkline", clause: "R318.7.5.2.1", text: "10", printedMillimetres: ["254"], millimetresFrom: "from memory",
    measured: "nosing to nosing where they cross the walkline",
    rule: { comparator: "min", of: "winderDepth", min: inches("10") },
    applies: [WINDERS],
    exceptions: [SPIRAL],
  }),
  limit({
    item: "winder tread depth any point", clause: "R318.7.5.2.1", text: "6", printedMillimetres: ["152"], millimetresFrom: "from memory",
    measured: "at any point within the clear width of the stair",
    rule: { comparator: "min", of: "winderNarrowEnd", min: inches("6") },
    applies: [WINDERS],
  }),
  limit({
    item: "winder uniformity walkline", clause: "R318.7.5.2.1", text: "3/8", printedMillimetres: ["9.5"], millimetresFrom: "from memory",
    measured: "deepest less shallowest winder of the flight at the walkline, as built",
    rule: { comparator: "uniformity", of: { spread: "winderSpread" }, within: "flight", tolerance: inches("0.375") },
    applies: [WINDERS],
    remark: "winders of one shape need not match the straight treads of the flight",
  }),
  limit({
    item: "walkline offset", clause: "R318.7.4", text: "12", printedMillimetres: ["305"], millimetresFrom: "from memory",
    measured: "from the narrow side of the clear walking surface to where the winder depth is measured",
    rule: { comparator: "equals", of: "walkline", values: [inches("12")] },
    applies: [WINDERS],
  }),
  limit({
    item: "nosing radius", clause: "R318.7.5.3", text: "9/16", printedMillimetres: ["14"], millimetresFrom: "from memory",
    measured: "rounding of the nosing, also of landings and floors of the stair",
    rule: { comparator: "max", of: "nosingRadius", max: inches("0.5625") },
    applies: [{ when: { any: [{ given: "nosingRadius" }, { not: { given: "nosingBevel" } }] }, words: "the nosing is rounded" }],
  }),
  limit({
    item: "nosing bevel", clause: "R318.7.5.3", text: "1/2", printedMillimetres: ["12.7"], millimetresFrom: "from memory",
    measured: "bevel of the nosing's edge",
    rule: { comparator: "max", of: "nosingBevel", max: inches("0.5") },
    applies: [{ when: { any: [{ given: "nosingBevel" }, { not: { given: "nosingRadius" } }] }, words: "the nosing is bevelled" }],
  }),
  limit({
    item: "nosing projection", clause: "R318.7.5.3", text: "3/4 to 1 1/4", printedMillimetres: ["19", "32"], millimetresFrom: "from memory",
    measured: "how far the tread stands out over the riser below",
    rule: { comparator: "range", of: "nosing", min: inches("0.75"), max: inches("1.25") },
    applies: [{ when: { not: { reached: "nosing exempt tread depth" } }, words: "the tread depth is under the exempt depth" }],
    exceptions: [NOSING_OVER_OPEN_RISERS],
  }),
  limit({
    item: "nosing exempt tread depth", clause: "R318.7.5.3", text: "11", printedMillimetres: ["279"], millimetresFrom: "from memory",
    measured: "tread depth, nosing to nosing",
    rule: { comparator: "exempt-when", of: "treadDepth", atLeast: inches("11"), frees: "nosing projection" },
    remark: "a nosing that is there still keeps to the radius or the bevel",
  }),
  limit({
    item: "nosing projection uniformity", clause: "R318.7.5.3", text: "3/8", printedMillimetres: ["9.5"], millimetresFrom: "from memory",
    measured: "largest less smallest projection of the flight and the landing at its top",
    rule: { comparator: "uniformity", of: "nosing", within: "flight", tolerance: inches("0.375") },
  }),
  limit({
    item: "landing depth straight run", clause: "R318.7.6", text: "36", printedMillimetres: ["914"], millimetresFrom: "from memory",
    measured: "in the direction of travel",
    rule: { comparator: "min", of: "landingDepth", min: inches("36") },
    applies: [{ when: { fact: "landing", is: ["straight", "exterior door"], otherwise: "straight" }, words: "the run is straight at the landing" }],
    exceptions: [EXTERIOR_DOOR],
  }),
  limit({
    item: "landing width", clause: "R318.7.6", text: "the width of the flight it serves",
    measured: "across the direction of travel",
    rule: { comparator: "relation", of: "landingWidth", sense: "at least", than: ["clearWidth", "width"] },
    exceptions: [LANDING_OF_OTHER_SHAPE],
    remark: "a landing that is not a rectangle has a depth and an area to keep as well; give landing shape if so",
  }),
  limit({
    item: "walking surface slope", clause: "R318.7.7", unit: "ratio", text: "1:48",
    measured: "rise over run of treads and landings, the steepest way",
    rule: { comparator: "slope", of: ["treadSlope", "landingSlope"], rise: 1, run: 48 },
    exceptions: [LANDING_DRAINS],
    remark: "2 percent is printed beside it, a rounding of 1/48",
  }),
  limit({
    item: "handrail required risers", clause: "R318.7.8", unit: "count", text: "4 or more risers",
    measured: "risers of the flight",
    rule: {
      comparator: "required-when", of: "risers", from: { atLeast: count("4") }, requires: "a handrail on at least one side",
      provided: HANDRAIL_PROVIDED,
    },
  }),
  limit({
    item: "handrail height", clause: "R320.2", text: "34 to 38", printedMillimetres: ["864", "965"], millimetresFrom: "from memory",
    measured: "plumb above the sloped plane along the nosings",
    rule: { comparator: "range", of: "handrailHeight", min: inches("34"), max: inches("38") },
    applies: [HAS_HANDRAIL],
    exceptions: [AT_FITTING],
  }),
  limit({
    item: "handrail projection each side", clause: "R320.3", text: "4 1/2", printedMillimetres: ["114"], millimetresFrom: "from memory",
    measured: "how far the handrail stands into the stair, each side",
    rule: { comparator: "max", of: "handrailProjection", max: inches("4.5") },
    applies: [HAS_HANDRAIL],
    exceptions: [PASSING_NOSING],
  }),
  limit({
    item: "handrail wall clearance", clause: "R320.4", text: "1 1/2", printedMillimetres: ["38"], millimetresFrom: "from memory",
    measured: "free space between handrail and wall",
    rule: { comparator: "min", of: "handrailClearance", min: inches("1.5") },
    applies: [HAS_HANDRAIL],
  }),
  limit({
    item: "handrail grip type1 diameter", clause: "R320.6", text: "1 1/4 to 2", printedMillimetres: ["32", "51"], millimetresFrom: "from memory",
    measured: "diameter of a round handrail",
    rule: { comparator: "range", of: "grip", min: inches("1.25"), max: inches("2") },
    applies: ROUND_HANDRAIL,
  }),
  limit({
    item: "handrail grip type1 perimeter", clause: "R320.6", text: "4 to 6 1/4", printedMillimetres: ["102", "160"], millimetresFrom: "from memory",
    measured: "perimeter of a handrail that is not round",
    rule: { comparator: "range", of: "gripPerimeter", min: inches("4"), max: inches("6.25") },
    applies: OTHER_HANDRAIL,
  }),
  limit({
    item: "handrail grip type1 cross section", clause: "R320.6", text: "2 1/4", printedMillimetres: ["57"], millimetresFrom: "from memory",
    measured: "largest dimension across a handrail that is not round",
    rule: { comparator: "max", of: "gripCrossSection", max: inches("2.25") },
    applies: OTHER_HANDRAIL,
  }),
  limit({
    item: "handrail grip type2 recess depth", clause: "R320.6", text: "5/16", printedMillimetres: ["8"], millimetresFrom: "from memory",
    measured: "finger recess on each side of a handrail whose perimeter is over 6 1/4 in",
    rule: TYPE_TWO_GRIP,
    applies: [
      HAS_HANDRAIL,
      {
        when: { any: [{ given: "gripRecess" }, { all: [{ given: "gripPerimeter" }, { fact: "gripPerimeter", moreThan: inches("6.25") }] }] },
        words: "the perimeter is over 6 1/4 in",
      },
    ],
    remark: "the recess starts within 3/4 in of the top, is full within 7/8 in under the widest part, holds for 3/8 in and down to 1 3/4 in "
      + "under the top; above it the rail is 1 1/4 to 2 3/4 in wide; each is held where its label is given",
  }),
  limit({
    item: "guard required drop", clause: "R321.1.1", text: "more than 30", printedMillimetres: ["762"], millimetresFrom: "from memory",
    measured: "plumb drop from the open side to the floor or grade anywhere within 36 in of it, level",
    rule: {
      comparator: "required-when", of: "fallHeight", from: { moreThan: inches("30") }, requires: "a guard along the open side",
      provided: HAS_GUARD,
    },
  }),
  limit({
    item: "guard height", clause: "R321.1.2", text: "36", printedMillimetres: ["914"], millimetresFrom: "from memory",
    measured: "level guards: above the landing or floor",
    rule: { comparator: "min", of: "landingGuardHeight", min: inches("36") },
    applies: [GUARD_NEEDED],
  }),
  limit({
    item: "guard height stair open side", clause: "R321.1.2", text: "34", printedMillimetres: ["864"], millimetresFrom: "from memory",
    measured: "plumb above the line of the nosings, on the open side of the stair",
    rule: { comparator: "min", of: "guardHeight", min: inches("34") },
    applies: [GUARD_NEEDED],
    exceptions: [{
      when: GUARD_TOPPED_BY_HANDRAIL,
      words: "the top of the guard is the handrail too: 34 to 38 in",
      then: { comparator: "range", of: "guardHeight", min: inches("34"), max: inches("38") },
    }],
  }),
  limit({
    item: "guard opening", clause: "R321.1.3", text: "4", printedMillimetres: ["102"], millimetresFrom: "from memory",
    measured: "level guards: openings from the walking surface up to the required height",
    rule: { comparator: "sphere", of: "landingGuardGap", sphere: inches("4") },
    applies: [GUARD_NEEDED],
    remark: "the open side of the stair and the triangle at its steps have rows of their own",
  }),
  limit({
    item: "guard opening stair side", clause: "R321.1.3", text: "4 3/8", printedMillimetres: ["111"], millimetresFrom: "from memory",
    measured: "openings of the guard on the open side of the stair",
    rule: { comparator: "sphere", of: "guardGap", sphere: inches("4.375") },
    applies: [GUARD_NEEDED],
  }),
  limit({
    item: "guard opening stair triangle", clause: "R321.1.3", text: "6", printedMillimetres: ["153"], millimetresFrom: "from memory",
    measured: "triangle between riser, tread and bottom rail",
    rule: { comparator: "sphere", of: "triangleGap", sphere: inches("6") },
    applies: [GUARD_NEEDED],
  }),
];

const outside = outsideRow({ status: "checked against the code's text", sources: [IRC_2024] });

const OUT_OF_SCOPE: readonly OutOfScope[] = [
  outside({ item: "spiral clear width", clause: "R318.7.11.1", unit: "in", text: "at least 26", reason: "spiral stair" }),
  outside({ item: "spiral tread depth walkline", clause: "R318.7.11.1", unit: "in", text: "at least 6 3/4", reason: "spiral stair" }),
  outside({ item: "spiral walkline radius", clause: "R318.7.11.1", unit: "in", text: "at most 24 1/2", reason: "spiral stair" }),
  outside({ item: "spiral riser height", clause: "R318.7.11.1", unit: "in", text: "at most 9 1/2", reason: "spiral stair" }),
  outside({ item: "spiral headroom", clause: "R318.7.11.1", unit: "in", text: "at least 6 ft 6 in", reason: "spiral stair" }),
  outside({ item: "live load uniform stairs", clause: "Table R301.5", unit: "psf", text: "40", reason: "live load" }),
  outside({ item: "live load concentrated tread", clause: "Table R301.5 note c", unit: "lb", text: "300 on 4 sq in", reason: "live load" }),
  outside({ item: "live load guard top", clause: "Table R301.5", unit: "lb", text: "200", reason: "live load" }),
];

/** Stairs of the International Residential Code, 2024 edition: the model text, before any local amendment. */
export const irc2024: CodeProfile = {
  id: "irc-2024",
  title: "International Residential Code",
  edition: "2024",
  region: "United States, one- and two-family dwellings and townhouses, where adopted",
  limits: LIMITS,
  outOfScope: OUT_OF_SCOPE,
};
