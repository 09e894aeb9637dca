import type { OutOfScope, Source } from "../profile";
import { edition } from "../record/edition";
import { DWELLING_LEAST_RISER, DWELLING_LEAST_RISER_ON_SLOPE, SLOPING_END_RISER } from "../record/ibc-exceptions";
import { limitRecord, type LimitRecord, outsideRecord } from "../record/limit-record";
import { printed, span } from "../record/printed-figure";
import {
  BOTH_HANDRAILS, DWELLING, EXIT, GUARD_NEEDED, GUARD_TOPPED_BY_HANDRAIL, HANDRAIL_PROVIDED, HAS_GUARD, HAS_HANDRAIL, HAS_WINDERS,
  IN_DWELLING,
  OPEN_RISERS, OTHER_HANDRAIL, RISERS_OPEN, ROUND_HANDRAIL, SPECIAL_STAIR_OR_AISLE, SPIRAL, WINDERS, WINDERS_AMONG_STEPS,
} from "../record/stair-conditions";
import { TYPE_TWO_GRIP, TYPE_TWO_GRIP_WORDS } from "../record/type-two-grip";

const MINNESOTA_2020: Source = {
  title: "Minnesota State Fire Code, 2020, chapter 10, which repeats the International Building Code, 2018",
  address: "https://codes.iccsafe.org/content/MNFC2020P1",
};
const IBC_2021: Source = { title: "International Building Code, 2021, as adopted by Texas" };
const IBC_2018: Source = { title: "International Building Code, 2018, section 1011.5" };

const limit = limitRecord({ unit: "in", status: "checked against the code's text", sources: [MINNESOTA_2020] });

const RECORDS: readonly LimitRecord[] = [
  limit({
    item: "stair width", clause: "1011.2", text: "44",
    printedMillimetres: ["1118"],
    measured: "width of the stair, between its sides",
    rule: { comparator: "min", of: ["clearWidth", "width"] },
    applies: { when: { fact: "occupants", atLeast: printed("50 people") }, words: "50 or more people use the stair" },
    exceptions: [{
      when: { given: "capacityWidth" },
      words: "the exit capacity may ask for more width than 44 in",
      then: {
        comparator: "every", needs: "all",
        parts: [
          { comparator: "min", of: ["clearWidth", "width"], min: printed("44 in") },
          { comparator: "relation", of: ["clearWidth", "width"], sense: "at least", than: ["capacityWidth"] },
        ],
      },
    }],
  }),
  limit({
    item: "stair width under 50 occupants", clause: "1011.2 Exc.", text: "36",
    printedMillimetres: ["914"],
    measured: "width of the stair, between its sides",
    rule: { comparator: "min", of: ["clearWidth", "width"] },
    applies: { when: { fact: "occupants", lessThan: printed("50 people") }, words: "fewer than 50 people use the stair" },
  }),
  limit({
    item: "headroom", clause: "1011.3", text: "80",
    printedMillimetres: ["2032"],
    measured: "plumb above the line of the nosings, as far as one tread depth beyond the bottom riser",
    rule: { comparator: "min", of: "headroom" },
    exceptions: [SPIRAL, {
      when: { all: [IN_DWELLING, { given: "openingOverlap" }, { fact: "openingOverlap", atMost: printed("4 3/4 in") }] },
      words: "inside a dwelling the edge of the floor opening may stand in over the side of the stair by up to 4 3/4 in",
      then: "does not apply",
    }],
  }),
  limit({
    item: "riser height", clause: "1011.5.2", text: "4 to 7",
    printedMillimetres: ["102", "178"],
    measured: "plumb between the nosings of neighbouring treads",
    rule: { comparator: "range", of: "riserHeight" },
    exceptions: [SPECIAL_STAIR_OR_AISLE, SLOPING_END_RISER, DWELLING_LEAST_RISER, DWELLING_LEAST_RISER_ON_SLOPE],
    sources: [IBC_2018],
  }),
  limit({
    item: "tread depth", clause: "1011.5.2", text: "11",
    printedMillimetres: ["279"],
    measured: "level from nosing to nosing, square to the nosing: the run, not the board",
    rule: { comparator: "min", of: "treadDepth" },
    exceptions: [SPECIAL_STAIR_OR_AISLE, {
      when: IN_DWELLING,
      words: "a stair inside, or only for, one dwelling has a row of its own",
      then: "does not apply",
    }],
    sources: [IBC_2018],
    remark: "winders have limits of their own",
  }),
  limit({
    item: "winder tread depth walkline", clause: "1011.5.2", text: "11",
    printedMillimetres: ["279"],
    measured: "nosing to nosing at the walkline, 12 in from the narrow side",
    rule: { comparator: "min", of: "winderDepth" },
    applies: [WINDERS],
    exceptions: [{
      when: IN_DWELLING,
      words: "a stair inside, or only for, one dwelling has a row of its own",
      then: "does not apply",
    }],
  }),
  limit({
    item: "winder tread depth any point", clause: "1011.5.2", text: "10",
    printedMillimetres: ["254"],
    measured: "at any point within the clear width",
    rule: { comparator: "min", of: "winderNarrowEnd" },
    applies: [WINDERS],
    exceptions: [{
      when: IN_DWELLING,
      words: "a stair inside, or only for, one dwelling has a row of its own",
      then: "does not apply",
    }],
  }),
  limit({
    item: "riser height dwelling", clause: "1011.5.2 Exc. 3", text: "7 3/4",
    printedMillimetres: ["197"],
    measured: "plumb between the nosings of neighbouring treads",
    rule: { comparator: "max", of: "riserHeight" },
    applies: [DWELLING],
    exceptions: [SPECIAL_STAIR_OR_AISLE],
  }),
  limit({
    item: "tread depth dwelling", clause: "1011.5.2 Exc. 3", text: "10",
    printedMillimetres: ["254"],
    measured: "level from nosing to nosing",
    rule: { comparator: "min", of: "treadDepth" },
    applies: [DWELLING],
    exceptions: [SPECIAL_STAIR_OR_AISLE],
  }),
  limit({
    item: "riser uniformity", clause: "1011.5.4", text: "3/8",
    printedMillimetres: ["9.5"],
    measured: "largest less smallest riser of the flight",
    rule: { comparator: "uniformity", of: "rise", within: "flight" },
  }),
  limit({
    item: "tread uniformity", clause: "1011.5.4", text: "3/8",
    printedMillimetres: ["9.5"],
    measured: "largest less smallest tread depth of the flight",
    rule: { comparator: "uniformity", of: "run", within: "flight" },
    exceptions: [WINDERS_AMONG_STEPS],
  }),
  limit({
    item: "bottom riser slope adjustment", clause: "1011.5.4.1", unit: "ratio", text: "1:12",
    measured: "slope across the width of the stair along that riser",
    rule: { comparator: "slope", of: "endRiserSlope" },
    applies: { when: { given: "endRiserSlope" }, words: "a bottom or top riser meets sloping ground" },
    remark: "that riser may then be lower than 4 in",
  }),
  limit({
    item: "nosing edge curvature or bevel", clause: "1011.5.5", text: "1/16 to 9/16",
    printedMillimetres: ["1.6", "14.3"],
    measured: "rounding or bevel of the edge, from its foremost point",
    rule: { comparator: "range", of: ["nosingRadius", "nosingBevel"] },
  }),
  limit({
    item: "nosing projection", clause: "1011.5.5.1", text: "1 1/4",
    printedMillimetres: ["32"],
    measured: "how far the tread stands out over the riser below",
    rule: { comparator: "max", of: "nosing" },
    remark: "all of one size, the floor at the top among them; no figure is given for how much they may differ",
  }),
  limit({
    item: "open riser opening", clause: "1011.5.5.3", text: "4",
    printedMillimetres: ["102"],
    measured: "clear opening between two treads, on the stairs that may have open risers",
    rule: {
      comparator: "every", needs: "all",
      parts: [
        { comparator: "sphere", of: "openRiserGap" },
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
    rule: { comparator: "max", of: "riserSlope" },
    applies: { when: { given: "riserSlope" }, words: "a closed riser is not plumb" },
  }),
  limit({
    item: "landing depth", clause: "1011.6", text: "the width of the stair, at most 48 in",
    printedMillimetres: ["1219"],
    measured: "in the direction of travel, on straight runs and turns alike",
    rule: { comparator: "relation", of: "landingDepth", sense: "at least", than: ["clearWidth", "width"], capped: printed("48 in") },
    remark: "the lesser of the width and 48 in",
  }),
  limit({
    item: "landing width", clause: "1011.6", text: "the width of the stair it serves",
    measured: "across the direction of travel",
    rule: { comparator: "relation", of: "landingWidth", sense: "at least", than: ["clearWidth", "width"] },
  }),
  limit({
    item: "walking surface slope", clause: "1011.7.1", unit: "ratio", text: "1:48",
    measured: "rise over run of treads and landings, the steepest way",
    rule: { comparator: "slope", of: ["treadSlope", "landingSlope"] },
    remark: "2 percent is printed beside it, a rounding of 1/48",
  }),
  limit({
    item: "flight vertical rise", clause: "1011.8", text: "12 ft",
    printedMillimetres: ["3658"],
    measured: "between floors or landings",
    rule: { comparator: "max", of: "totalRise" },
  }),
  limit({
    item: "handrail sides", clause: "1011.11", unit: "count", text: "both sides",
    measured: "sides of the flight with a handrail",
    rule: { comparator: "required", requires: "a handrail on both sides", provided: BOTH_HANDRAILS },
    exceptions: [{
      when: { all: [IN_DWELLING, { fact: "risers", atMost: printed("3 risers") }] },
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
    printedMillimetres: ["864", "965"],
    measured: "plumb above the line of the nosings",
    rule: { comparator: "range", of: "handrailHeight" },
    applies: [HAS_HANDRAIL],
  }),
  limit({
    item: "handrail grip type1 diameter", clause: "1014.3.1", text: "1 1/4 to 2",
    printedMillimetres: ["32", "51"],
    measured: "diameter of a round handrail",
    rule: { comparator: "range", of: "grip" },
    applies: ROUND_HANDRAIL,
  }),
  limit({
    item: "handrail top extension", clause: "1014.6", text: "12",
    printedMillimetres: ["305"],
    measured: "level, beyond the top riser",
    rule: {
      comparator: "every", needs: "first",
      parts: [
        { comparator: "min", of: "handrailExtension" },
        { comparator: "relation", of: "handrailFootExtension", sense: "at least", than: ["treadDepth"] },
      ],
    },
    applies: [HAS_HANDRAIL],
    exceptions: [{
      when: IN_DWELLING,
      words: "inside a dwelling none is needed",
      then: "does not apply",
    }],
    remark: "at the foot it runs on at the slope for one tread depth, held where handrail foot extension is given",
  }),
  limit({
    item: "handrail wall clearance", clause: "1014.7", text: "1 1/2",
    printedMillimetres: ["38"],
    measured: "free space between handrail and wall",
    rule: { comparator: "min", of: "handrailClearance" },
    applies: [HAS_HANDRAIL],
  }),
  limit({
    item: "guard required drop", clause: "1015.2", text: "more than 30",
    printedMillimetres: ["762"],
    measured: "plumb drop from the open side to the floor or grade anywhere within 36 in of it, level",
    rule: {
      comparator: "required-when", of: "fallHeight", requires: "a guard along the open side",
      provided: HAS_GUARD,
    },
  }),
  limit({
    item: "guard height", clause: "1015.3", text: "42",
    printedMillimetres: ["1067"],
    measured: "above the floor, landing or line of nosings",
    rule: { comparator: "min", of: ["guardHeight", "landingGuardHeight"] },
    applies: [GUARD_NEEDED],
    exceptions: [{
      when: { all: [IN_DWELLING, { fact: "storeys", atMost: printed("3 storeys") }] },
      words: "a dwelling of at most three storeys has rows of its own",
      then: "does not apply",
    }, {
      when: { all: [IN_DWELLING, { fact: "storeys", moreThan: printed("3 storeys") }] },
      words: "in a dwelling of more than three storeys 42 in, and the open side of a stair has a row of its own",
      then: { comparator: "min", of: "landingGuardHeight", min: printed("42 in") },
    }],
  }),
  limit({
    item: "guard opening", clause: "1015.4", text: "4",
    printedMillimetres: ["102"],
    measured: "openings up to 36 in high; from 36 to 42 in 4 3/8 in",
    rule: {
      comparator: "every", needs: "any",
      parts: [
        { comparator: "sphere", of: ["guardGap", "landingGuardGap"] },
        { comparator: "sphere", of: "upperGuardGap", sphere: printed("4 3/8 in") },
      ],
    },
    applies: [GUARD_NEEDED],
    exceptions: [{
      when: IN_DWELLING,
      words: "in a dwelling the open side of a stair has a row of its own; level guards 4 in, and 4 3/8 in from 36 in up",
      then: {
        comparator: "every", needs: "any",
        parts: [
          { comparator: "sphere", of: "landingGuardGap", sphere: printed("4 in") },
          { comparator: "sphere", of: "upperGuardGap", sphere: printed("4 3/8 in") },
        ],
      },
    }],
  }),
  limit({
    item: "walkline offset", clause: "1011.4", text: "12",
    printedMillimetres: ["305"],
    measured: "from the narrower side of the clear width to where the winder depth is measured",
    rule: { comparator: "equals", of: "walkline" },
    applies: [WINDERS],
  }),
  limit({
    item: "winders allowed", clause: "1011.5.3", text: "not on a required way out, but within a dwelling",
    measured: "whether the flight has winders",
    rule: {
      comparator: "prohibited", thing: "winders on a required way out, but within a dwelling, are",
      present: { all: [HAS_WINDERS, EXIT, { not: IN_DWELLING }] },
    },
    applies: [WINDERS],
    exceptions: [SPIRAL],
  }),
  limit({
    item: "winder tread depth walkline dwelling", clause: "1011.5.2 Exc. 3", text: "10",
    printedMillimetres: ["254"],
    measured: "nosing to nosing at the walkline",
    rule: { comparator: "min", of: "winderDepth" },
    applies: [WINDERS, DWELLING],
  }),
  limit({
    item: "winder tread depth any point dwelling", clause: "1011.5.2 Exc. 3", text: "6",
    printedMillimetres: ["152"],
    measured: "at any point within the clear width",
    rule: { comparator: "min", of: "winderNarrowEnd" },
    applies: [WINDERS, DWELLING],
  }),
  limit({
    item: "nosing projection dwelling", clause: "1011.5.2 Exc. 3", text: "3/4 to 1 1/4",
    printedMillimetres: ["19.1", "32"],
    measured: "how far the tread stands out over the riser below",
    rule: { comparator: "range", of: "nosing" },
    applies: [
      DWELLING, { when: { not: OPEN_RISERS }, words: "the risers are closed" },
      { when: { fact: "treadDepth", lessThan: printed("11 in") }, words: "the tread depth is under 11 in" },
    ],
  }),
  limit({
    item: "winder uniformity walkline", clause: "1011.5.4", text: "3/8",
    printedMillimetres: ["9.5"],
    measured: "deepest less shallowest winder of the flight at the walkline, as built",
    rule: { comparator: "uniformity", of: { spread: "winderSpread" }, within: "flight" },
    applies: [WINDERS],
  }),
  limit({
    item: "handrail grip type1 perimeter", clause: "1014.3.1", text: "4 to 6 1/4",
    printedMillimetres: ["102", "160"],
    measured: "perimeter of a handrail that is not round",
    rule: { comparator: "range", of: "gripPerimeter" },
    applies: OTHER_HANDRAIL,
  }),
  limit({
    item: "handrail grip type1 cross section", clause: "1014.3.1", text: "1 to 2 1/4",
    printedMillimetres: ["25", "57"],
    measured: "largest dimension across a handrail that is not round",
    rule: { comparator: "range", of: "gripCrossSection" },
    applies: OTHER_HANDRAIL,
  }),
  limit({
    item: "handrail grip type2 recess depth", clause: "1014.3.2", text: "5/16",
    printedMillimetres: ["8"],
    measured: "finger recess on each side of a handrail",
    rule: TYPE_TWO_GRIP,
    applies: [HAS_HANDRAIL, DWELLING, { when: { given: "gripRecess" }, words: "the handrail has finger recesses" }],
    remark: TYPE_TWO_GRIP_WORDS,
  }),
  limit({
    item: "handrail projection each side", clause: "1014.8", text: "4 1/2",
    printedMillimetres: ["114"],
    measured: "how far the handrail stands into the stair, each side",
    rule: { comparator: "max", of: "handrailProjection" },
    applies: [HAS_HANDRAIL],
  }),
  limit({
    item: "guard height dwelling", clause: "1015.3 Exc. 1", text: "36",
    printedMillimetres: ["914"],
    measured: "level guards: above the floor or landing",
    rule: { comparator: "min", of: "landingGuardHeight" },
    applies: [
      GUARD_NEEDED, DWELLING,
      { when: { fact: "storeys", atMost: printed("3 storeys") }, words: "the building has at most three storeys" },
    ],
  }),
  limit({
    item: "guard height stair open side", clause: "1015.3 Exc. 2", text: "34",
    printedMillimetres: ["864"],
    measured: "plumb above the line of the nosings, on the open side of the stair",
    rule: { comparator: "min", of: "guardHeight" },
    applies: [GUARD_NEEDED, DWELLING],
    exceptions: [{
      when: GUARD_TOPPED_BY_HANDRAIL,
      words: "the top of the guard is the handrail too: 34 to 38 in",
      then: { comparator: "range", of: "guardHeight", ...span("34 to 38 in") },
    }],
  }),
  limit({
    item: "guard opening stair triangle", clause: "1015.4 Exc. 2", text: "6",
    printedMillimetres: ["152"],
    measured: "triangle between riser, tread and bottom rail",
    rule: { comparator: "sphere", of: "triangleGap" },
    applies: [GUARD_NEEDED],
  }),
  limit({
    item: "guard opening stair side", clause: "1015.4 Exc. 6", text: "4 3/8",
    printedMillimetres: ["111"],
    measured: "openings of the guard on the open side of the stair",
    rule: { comparator: "sphere", of: "guardGap" },
    applies: [GUARD_NEEDED, DWELLING],
  }),
];

const outside = outsideRecord({ status: "checked against the code's text", sources: [MINNESOTA_2020] });

const OUT_OF_SCOPE: readonly OutOfScope[] = [
  outside({
    item: "landing required", clause: "1011.6", unit: "in words", text: "a floor or landing at the top and the bottom of each stair",
    reason: "not in the stair table",
  }),
  outside({
    item: "landing door reduction", clause: "1011.6", unit: "in",
    text: "a door swinging open leaves half the required width, and fully open stands in at most 7",
    reason: "not in the stair table", status: "checked against another edition", sources: [IBC_2021],
  }),
  outside({
    item: "curved stair radius", clause: "1011.9", unit: "in words", text: "smallest radius at least twice the least width, but in houses",
    reason: "not in the stair table",
  }),
  outside({
    item: "handrail exempt deck step", clause: "1011.11 Exc. 2", unit: "in words",
    text: "decks, patios and walkways with one change of level and a deeper landing on both sides need none",
    reason: "not in the stair table",
  }),
  outside({
    item: "handrail reach", clause: "1014.9", unit: "in", text: "no part of the required width further than 30 from a handrail",
    reason: "not in the stair table",
    status: "checked against another edition", sources: [IBC_2021],
  }),
  outside({
    item: "guard opening industrial", clause: "1015.4 Exc. 4", unit: "in",
    text: "a ball of 21, where the public does not come, in Groups I-3, F, H and S", reason: "not in the stair table",
  }),
  outside({
    item: "tread opening", clause: "1011.7.1", unit: "in",
    text: "a ball of 1/2; of 1 1/8 where the public does not come, in Groups F, H and S", reason: "not in the stair table",
  }),
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

/** Stairs of the International Building Code, 2018 edition: the model text, before any local amendment. */
export const ibc2018 = edition({
  id: "ibc-2018",
  title: "International Building Code",
  edition: "2018",
  region: "United States, buildings in general, where adopted",
  family: "IBC",
  records: RECORDS,
  outOfScope: OUT_OF_SCOPE,
});
