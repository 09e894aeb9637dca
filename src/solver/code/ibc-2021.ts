import { DWELLING_LEAST_RISER, DWELLING_LEAST_RISER_ON_SLOPE, SLOPING_END_RISER } from "./ibc-exceptions";
import { count, degrees, inches, limitRow, outsideRow } from "./limit-row";
import type { CodeProfile, Limit, OutOfScope, Rule, Source } from "./profile";
import {
  BOTH_HANDRAILS, DWELLING, GUARD_NEEDED, GUARD_TOPPED_BY_HANDRAIL, HANDRAIL_PROVIDED, HAS_GUARD, HAS_HANDRAIL, IN_DWELLING,
  OPEN_RISERS, RISERS_OPEN, SPECIAL_STAIR_OR_AISLE, SPIRAL, WINDERS, WINDERS_AMONG_STEPS,
} from "./stair-conditions";

const IBC_2021: Source = { title: "International Building Code, 2021, as adopted by Texas" };
const IBC_2021_1011: Source = { title: "International Building Code, 2021, section 1011" };

const limit = limitRow({ unit: "in", status: "checked against the code's text", sources: [IBC_2021] });

const AT_WALKLINE: Rule = { comparator: "equals", of: "walkline", values: [inches("12")] };

const LIMITS: readonly Limit[] = [
  limit({
    item: "stair width", clause: "1011.2", text: "44",
    printedMillimetres: ["1118"], millimetresFrom: "seen",
    measured: "width of the stair, between its sides",
    rule: { comparator: "min", of: ["clearWidth", "width"], min: inches("44") },
    applies: { when: { fact: "occupants", atLeast: count("50") }, words: "50 or more people use the stair" },
    exceptions: [{
      when: { given: "capacityWidth" },
      words: "the exit capacity may ask for more width",
      then: {
        comparator: "every", needs: "all",
        parts: [
          { comparator: "min", of: ["clearWidth", "width"], min: inches("44") },
          { comparator: "relation", of: ["clearWidth", "width"], sense: "at least", than: ["capacityWidth"] },
        ],
      },
    }],
    sources: [IBC_2021_1011],
  }),
  limit({
    item: "stair width under 50 occupants", clause: "1011.2 Exc.", text: "36",
    printedMillimetres: ["914"], millimetresFrom: "seen",
    measured: "width of the stair, between its sides",
    rule: { comparator: "min", of: ["clearWidth", "width"], min: inches("36") },
    applies: { when: { fact: "occupants", lessThan: count("50") }, words: "fewer than 50 people use the stair" },
  }),
  limit({
    item: "headroom", clause: "1011.3", text: "80",
    printedMillimetres: ["2032"], millimetresFrom: "from memory",
    measured: "plumb above the line of the nosings, as far as one tread depth beyond the bottom riser",
    rule: { comparator: "min", of: "headroom", min: inches("80") },
    exceptions: [SPIRAL, {
      when: { all: [IN_DWELLING, { given: "openingOverlap" }, { fact: "openingOverlap", atMost: inches("4.75") }] },
      words: "inside a dwelling the edge of the floor opening may stand in over the side of the stair by up to 4 3/4 in",
      then: "does not apply",
    }],
  }),
  limit({
    item: "riser height", clause: "1011.5.2", text: "4 to 7",
    printedMillimetres: ["102", "178"], millimetresFrom: "seen",
    measured: "plumb between the nosings of neighbouring treads",
    rule: { comparator: "range", of: "riserHeight", min: inches("4"), max: inches("7") },
    exceptions: [SPECIAL_STAIR_OR_AISLE, SLOPING_END_RISER, DWELLING_LEAST_RISER, DWELLING_LEAST_RISER_ON_SLOPE],
  }),
  limit({
    item: "tread depth", clause: "1011.5.2", text: "11",
    printedMillimetres: ["279"], millimetresFrom: "seen",
    measured: "level from nosing to nosing, square to the nosing: the run, not the board",
    rule: { comparator: "min", of: "treadDepth", min: inches("11") },
    exceptions: [SPECIAL_STAIR_OR_AISLE, {
      when: IN_DWELLING,
      words: "a stair inside, or only for, one dwelling has a row of its own",
      then: "does not apply",
    }],
    remark: "winders have limits of their own",
  }),
  limit({
    item: "winder tread depth walkline", clause: "1011.5.2", text: "11",
    printedMillimetres: ["279"], millimetresFrom: "from memory",
    measured: "nosing to nosing at the walkline, 12 in from the narrow side",
    rule: { comparator: "every", needs: "first", parts: [{ comparator: "min", of: "winderDepth", min: inches("11") }, AT_WALKLINE] },
    applies: [WINDERS],
    exceptions: [{
      when: IN_DWELLING,
      words: "inside a dwelling 10 in",
      then: { comparator: "every", needs: "first", parts: [{ comparator: "min", of: "winderDepth", min: inches("10") }, AT_WALKLINE] },
    }],
    remark: "the walkline is of clause 1011.4",
  }),
  limit({
    item: "winder tread depth any point", clause: "1011.5.2", text: "10",
    printedMillimetres: ["254"], millimetresFrom: "from memory",
    measured: "at any point within the clear width",
    rule: { comparator: "min", of: "winderNarrowEnd", min: inches("10") },
    applies: [WINDERS],
    exceptions: [{
      when: IN_DWELLING,
      words: "inside a dwelling 6 in",
      then: { comparator: "min", of: "winderNarrowEnd", min: inches("6") },
    }],
  }),
  limit({
    item: "riser height dwelling", clause: "1011.5.2 Exc. 3", text: "7 3/4",
    printedMillimetres: ["197"], millimetresFrom: "from memory",
    measured: "plumb between the nosings of neighbouring treads",
    rule: { comparator: "max", of: "riserHeight", max: inches("7.75") },
    applies: [DWELLING],
    exceptions: [SPECIAL_STAIR_OR_AISLE],
  }),
  limit({
    item: "tread depth dwelling", clause: "1011.5.2 Exc. 3", text: "10",
    printedMillimetres: ["254"], millimetresFrom: "from memory",
    measured: "level from nosing to nosing",
    rule: { comparator: "min", of: "treadDepth", min: inches("10") },
    applies: [DWELLING],
    exceptions: [SPECIAL_STAIR_OR_AISLE],
  }),
  limit({
    item: "riser uniformity", clause: "1011.5.4", text: "3/8",
    printedMillimetres: ["9.5"], millimetresFrom: "seen",
    measured: "largest less smallest riser of the flight",
    rule: { comparator: "uniformity", of: "rise", within: "flight", tolerance: inches("0.375") },
  }),
  limit({
    item: "tread uniformity", clause: "1011.5.4", text: "3/8",
    printedMillimetres: ["9.5"], millimetresFrom: "seen",
    measured: "largest less smallest tread depth of the flight",
    rule: { comparator: "uniformity", of: "run", within: "flight", tolerance: inches("0.375") },
    exceptions: [WINDERS_AMONG_STEPS],
  }),
  limit({
    item: "bottom riser slope adjustment", clause: "1011.5.4.1", unit: "ratio", text: "1:12",
    measured: "slope across the width of the stair along that riser",
    rule: { comparator: "slope", of: "endRiserSlope", rise: 1, run: 12 },
    applies: { when: { given: "endRiserSlope" }, words: "a bottom or top riser meets sloping ground" },
    remark: "that riser may then be lower than 4 in",
  }),
  limit({
    item: "nosing edge curvature or bevel", clause: "1011.5.5", text: "1/16 to 9/16",
    printedMillimetres: ["1.6", "14.3"], millimetresFrom: "from memory",
    measured: "rounding or bevel of the edge, from its foremost point",
    rule: { comparator: "range", of: ["nosingRadius", "nosingBevel"], min: inches("0.0625"), max: inches("0.5625") },
  }),
  limit({
    item: "nosing projection", clause: "1011.5.5.1", text: "1 1/4",
    printedMillimetres: ["32"], millimetresFrom: "from memory",
    measured: "how far the tread stands out over the riser below",
    rule: { comparator: "max", of: "nosing", max: inches("1.25") },
    exceptions: [{
      when: { all: [IN_DWELLING, { not: OPEN_RISERS }, { fact: "treadDepth", lessThan: inches("11") }] },
      words: "inside a dwelling, over closed risers and under 11 in of tread, 3/4 to 1 1/4 in",
      then: { comparator: "range", of: "nosing", min: inches("0.75"), max: inches("1.25") },
    }],
    remark: "all of one size, the floor at the top among them; no figure is given for how much they may differ",
  }),
  limit({
    item: "open riser opening", clause: "1011.5.5.3", text: "4",
    printedMillimetres: ["102"], millimetresFrom: "from memory",
    measured: "clear opening between two treads, on the stairs that may have open risers",
    rule: {
      comparator: "every", needs: "all",
      parts: [
        { comparator: "sphere", of: "openRiserGap", sphere: inches("4") },
        {
          comparator: "prohibited", thing: "open risers, but on the stairs listed, are",
          present: { all: [OPEN_RISERS, { not: { fact: "openRisersAllowed", is: ["yes"] } }] },
        },
      ],
    },
    applies: [RISERS_OPEN],
    remark: "closed risers are the general rule",
  }),
  limit({
    item: "riser slope from vertical", clause: "1011.5.5", unit: "deg", text: "30",
    measured: "lean of a closed riser, from the underside of the nosing above it",
    rule: { comparator: "max", of: "riserSlope", max: degrees("30") },
    applies: { when: { given: "riserSlope" }, words: "a closed riser is not plumb" },
  }),
  limit({
    item: "landing depth straight run", clause: "1011.6", text: "the width of the stair, at most 48 in",
    printedMillimetres: ["1219"], millimetresFrom: "from memory",
    measured: "in the direction of travel, on straight runs and turns alike",
    rule: { comparator: "relation", of: "landingDepth", sense: "at least", than: ["clearWidth", "width"], capped: inches("48") },
    remark: "the lesser of the width and 48 in",
  }),
  limit({
    item: "walking surface slope", clause: "1011.7.1", unit: "ratio", text: "1:48",
    measured: "rise over run of treads and landings, the steepest way",
    rule: { comparator: "slope", of: ["treadSlope", "landingSlope"], rise: 1, run: 48 },
    remark: "2 percent is printed beside it, a rounding of 1/48",
  }),
  limit({
    item: "flight vertical rise", clause: "1011.8", text: "12 ft",
    printedMillimetres: ["3658"], millimetresFrom: "from memory",
    measured: "between floors or landings",
    rule: { comparator: "max", of: "totalRise", max: inches("144") },
  }),
  limit({
    item: "handrail sides", clause: "1011.11", unit: "count", text: "both sides",
    measured: "sides of the flight with a handrail",
    rule: { comparator: "required", requires: "a handrail on both sides", provided: BOTH_HANDRAILS },
    exceptions: [{
      when: { all: [IN_DWELLING, { fact: "risers", atMost: count("3") }] },
      words: "inside a dwelling three risers or fewer need none",
      then: "does not apply",
    }, {
      when: { any: [IN_DWELLING, { fact: "stairKind", is: ["spiral"], otherwise: "standard" }] },
      words: "inside a dwelling, and on a spiral stair, one side is enough",
      then: { comparator: "required", requires: "a handrail on one side", provided: HANDRAIL_PROVIDED },
    }],
  }),
  limit({
    item: "handrail height", clause: "1014.2", text: "34 to 38",
    printedMillimetres: ["864", "965"], millimetresFrom: "seen",
    measured: "plumb above the line of the nosings",
    rule: { comparator: "range", of: "handrailHeight", min: inches("34"), max: inches("38") },
    applies: [HAS_HANDRAIL],
    sources: [IBC_2021_1011],
  }),
  limit({
    item: "handrail grip type1 diameter", clause: "1014.3.1", text: "1 1/4 to 2",
    printedMillimetres: ["32", "51"], millimetresFrom: "from memory",
    measured: "diameter of a round handrail",
    rule: { comparator: "range", of: "grip", min: inches("1.25"), max: inches("2") },
    applies: [HAS_HANDRAIL, { when: { any: [{ given: "grip" }, { not: { given: "gripRecess" } }] }, words: "the handrail has no finger recess" }],
    exceptions: [{
      when: { all: [{ any: [{ given: "gripPerimeter" }, { given: "gripCrossSection" }] }, { not: { given: "grip" } }, { not: { given: "gripRecess" } }] },
      words: "one that is not round: 4 to 6 1/4 in around and 1 to 2 1/4 in across",
      then: {
        comparator: "every", needs: "any",
        parts: [
          { comparator: "range", of: "gripPerimeter", min: inches("4"), max: inches("6.25") },
          { comparator: "range", of: "gripCrossSection", min: inches("1"), max: inches("2.25") },
        ],
      },
    }],
  }),
  limit({
    item: "handrail top extension", clause: "1014.6", text: "12",
    printedMillimetres: ["305"], millimetresFrom: "from memory",
    measured: "level, beyond the top riser",
    rule: {
      comparator: "every", needs: "first",
      parts: [
        { comparator: "min", of: "handrailExtension", min: inches("12") },
        { comparator: "relation", of: "handrailFootExtension", sense: "at least", than: ["treadDepth"] },
      ],
    },
    applies: [HAS_HANDRAIL],
    exceptions: [{
      when: IN_DWELLING,
      words: "inside a dwelling none is needed",
      then: "does not apply",
    }],
    sources: [IBC_2021_1011],
    remark: "at the foot it runs on at the slope for one tread depth, held where handrail foot extension is given",
  }),
  limit({
    item: "handrail wall clearance", clause: "1014.7", text: "1 1/2",
    printedMillimetres: ["38"], millimetresFrom: "from memory",
    measured: "free space between handrail and wall",
    rule: { comparator: "min", of: "handrailClearance", min: inches("1.5") },
    applies: [HAS_HANDRAIL],
  }),
  limit({
    item: "guard required drop", clause: "1015.2", text: "more than 30",
    printedMillimetres: ["762"], millimetresFrom: "from memory",
    measured: "plumb drop from the open side to the floor or grade anywhere within 36 in of it, level",
    rule: {
      comparator: "required-when", of: "fallHeight", from: { moreThan: inches("30") }, requires: "a guard along the open side",
      provided: HAS_GUARD,
    },
  }),
  limit({
    item: "guard height", clause: "1015.3", text: "42",
    printedMillimetres: ["1067"], millimetresFrom: "seen",
    measured: "above the floor, landing or line of nosings",
    rule: { comparator: "min", of: ["guardHeight", "landingGuardHeight"], min: inches("42") },
    applies: [GUARD_NEEDED],
    exceptions: [{
      when: { all: [IN_DWELLING, { fact: "storeys", atMost: count("3") }] },
      words: "a dwelling of at most three storeys: 36 in, 34 in on the open side of the stair",
      then: {
        comparator: "every", needs: "any",
        parts: [
          { comparator: "min", of: "landingGuardHeight", min: inches("36") },
          { comparator: "min", of: "guardHeight", min: inches("34") },
        ],
      },
    }, {
      when: { all: [IN_DWELLING, { fact: "storeys", atMost: count("3") }, GUARD_TOPPED_BY_HANDRAIL] },
      words: "a dwelling of at most three storeys, the top of the guard being the handrail: 34 to 38 in",
      then: {
        comparator: "every", needs: "any",
        parts: [
          { comparator: "min", of: "landingGuardHeight", min: inches("36") },
          { comparator: "range", of: "guardHeight", min: inches("34"), max: inches("38") },
        ],
      },
    }],
  }),
  limit({
    item: "guard opening", clause: "1015.4", text: "4",
    printedMillimetres: ["102"], millimetresFrom: "from memory",
    measured: "openings up to 36 in high; from 36 to 42 in 4 3/8 in; 6 in in the triangle at the steps",
    rule: {
      comparator: "every", needs: "any",
      parts: [
        { comparator: "sphere", of: ["guardGap", "landingGuardGap"], sphere: inches("4") },
        { comparator: "sphere", of: "upperGuardGap", sphere: inches("4.375") },
        { comparator: "sphere", of: "triangleGap", sphere: inches("6") },
      ],
    },
    applies: [GUARD_NEEDED],
    exceptions: [{
      when: IN_DWELLING,
      words: "the open side of a stair in a dwelling: 4 3/8 in",
      then: {
        comparator: "every", needs: "any",
        parts: [
          { comparator: "sphere", of: "landingGuardGap", sphere: inches("4") },
          { comparator: "sphere", of: "upperGuardGap", sphere: inches("4.375") },
          { comparator: "sphere", of: "guardGap", sphere: inches("4.375") },
          { comparator: "sphere", of: "triangleGap", sphere: inches("6") },
        ],
      },
    }],
  }),
];

const outside = outsideRow({ status: "checked against the code's text", sources: [IBC_2021] });

const OUT_OF_SCOPE: readonly OutOfScope[] = [
  outside({
    item: "spiral tread depth", clause: "1011.10", unit: "in", text: "at least 6 3/4", reason: "spiral stair",
  }),
  outside({
    item: "spiral riser height", clause: "1011.10", unit: "in", text: "at most 9 1/2", reason: "spiral stair",
  }),
  outside({
    item: "spiral headroom", clause: "1011.10", unit: "in", text: "at least 78", reason: "spiral stair",
  }),
  outside({
    item: "spiral clear width", clause: "1011.10", unit: "in", text: "at least 26", reason: "spiral stair",
  }),
];

/** Stairs of the International Building Code, 2021 edition: the model text, before any local amendment. */
export const ibc2021: CodeProfile = {
  id: "ibc-2021",
  title: "International Building Code",
  edition: "2021",
  region: "United States, buildings in general, where adopted",
  limits: LIMITS,
  outOfScope: OUT_OF_SCOPE,
};
