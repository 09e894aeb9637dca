import { count, degrees, limitRow, millimetres } from "./limit-row";
import type { CodeProfile, Limit, Source } from "./profile";
import { HAS_HANDRAIL, NOT_SERVICE, POINTED_WINDERS, PRIVATE, PUBLIC, TAPERED_TREADS, WINDERS_AMONG_STEPS, WITH_GUARD } from "./stair-conditions";

const OBC_2024: Source = { title: "Ontario Building Code, 2024, Division B Part 9" };

const limit = limitRow({ unit: "mm", status: "checked against the code's text", sources: [OBC_2024] });

const LIMITS: readonly Limit[] = [
  limit({
    item: "riser height", clause: "Table 9.8.4.1.", text: "125 to 200",
    measured: "plumb, nosing to nosing",
    rule: { comparator: "range", of: "riserHeight", min: millimetres("125"), max: millimetres("200") },
    applies: [PRIVATE],
  }),
  limit({
    item: "run", clause: "Table 9.8.4.1.", text: "255 to 355",
    measured: "level, nosing to nosing",
    rule: { comparator: "range", of: "treadDepth", min: millimetres("255"), max: millimetres("355") },
    applies: [PRIVATE],
  }),
  limit({
    item: "riser height public", clause: "Table 9.8.4.1.", text: "125 to 180",
    measured: "plumb, nosing to nosing",
    rule: { comparator: "range", of: "riserHeight", min: millimetres("125"), max: millimetres("180") },
    applies: [PUBLIC],
  }),
  limit({
    item: "run public", clause: "Table 9.8.4.1.", text: "280",
    measured: "level, nosing to nosing",
    rule: { comparator: "min", of: "treadDepth", min: millimetres("280") },
    applies: [PUBLIC],
    remark: "there is no greatest run",
  }),
  limit({
    item: "stair width", clause: "9.8.2.1.(4)", text: "860",
    measured: "between wall faces or guards",
    rule: { comparator: "min", of: ["clearWidth", "width"], min: millimetres("860") },
    applies: [PRIVATE],
  }),
  limit({
    item: "headroom", clause: "9.8.2.2.(3)", text: "1950",
    measured: "plumb above a line along the nosings",
    rule: { comparator: "min", of: "headroom", min: millimetres("1950") },
    applies: [PRIVATE],
  }),
  limit({
    item: "flight vertical rise", clause: "9.8.3.3.", text: "3700",
    measured: "between floors or landings",
    rule: { comparator: "max", of: "totalRise", max: millimetres("3700") },
  }),
  limit({
    item: "tread depth over run", clause: "9.8.4.2.(2)", text: "0 to 25",
    measured: "depth of the tread less its run, which is the nosing",
    rule: { comparator: "range", of: "nosing", min: millimetres("0"), max: millimetres("25") },
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
    item: "riser uniformity adjacent", clause: "9.8.4.4.(1)(a)", text: "5",
    measured: "between neighbouring treads or landings",
    rule: { comparator: "uniformity", of: "rise", within: "neighbours", tolerance: millimetres("5") },
  }),
  limit({
    item: "riser uniformity", clause: "9.8.4.4.(1)(b)", text: "10",
    measured: "tallest less shortest riser of the flight",
    rule: { comparator: "uniformity", of: "rise", within: "flight", tolerance: millimetres("10") },
  }),
  limit({
    item: "run uniformity adjacent", clause: "9.8.4.4.(3)(a)", text: "5",
    measured: "between neighbouring treads",
    rule: { comparator: "uniformity", of: "run", within: "neighbours", tolerance: millimetres("5") },
    exceptions: [WINDERS_AMONG_STEPS],
  }),
  limit({
    item: "run uniformity", clause: "9.8.4.4.(3)(b)", text: "10",
    measured: "deepest less shallowest run of the flight",
    rule: { comparator: "uniformity", of: "run", within: "flight", tolerance: millimetres("10") },
    exceptions: [WINDERS_AMONG_STEPS],
  }),
  limit({
    item: "winder tread turn", clause: "9.8.4.6.(1)(b)", unit: "deg", text: "30 to 45",
    measured: "turn of one winder",
    rule: {
      comparator: "every", needs: "first",
      parts: [
        { comparator: "range", of: "winderTurn", min: degrees("30"), max: degrees("45") },
        { comparator: "required", requires: "one angle for neighbouring winders", provided: { fact: "winderTurnsAlike", is: ["yes"] } },
      ],
    },
    applies: [...POINTED_WINDERS, PRIVATE],
    remark: "neighbouring winders turn alike; they may come to a point",
  }),
  limit({
    item: "winder set turn", clause: "9.8.4.6.(1)(a)", unit: "deg", text: "90",
    measured: "turn of all winders of one set together",
    rule: { comparator: "max", of: "winderSetTurn", max: degrees("90") },
    applies: [...POINTED_WINDERS, PRIVATE],
  }),
  limit({
    item: "winder sets separation", clause: "9.8.4.6.(2)", text: "1200",
    measured: "in plan, between two sets of winders",
    rule: { comparator: "min", of: "winderSetsApart", min: millimetres("1200") },
    applies: { when: { any: [{ given: "winderSetsApart" }, { all: [{ given: "winderSets" }, { fact: "winderSets", moreThan: count("1") }] }] }, words: "there is more than one set of winders between two floors" },
  }),
  limit({
    item: "nosing bevel", clause: "9.8.4.8.(1)", text: "6 to 14",
    measured: "rounding or bevel of the edge",
    rule: { comparator: "range", of: ["nosingRadius", "nosingBevel"], min: millimetres("6"), max: millimetres("14") },
  }),
  limit({
    item: "handrail height", clause: "9.8.7.4.(2)", text: "865 to 1070",
    measured: "plumb above a line along the nosings",
    rule: { comparator: "range", of: "handrailHeight", min: millimetres("865"), max: millimetres("1070") },
    applies: [HAS_HANDRAIL],
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
    item: "guard height", clause: "9.8.8.3.(2)", text: "900",
    measured: "above the floor, landing or line of nosings",
    rule: { comparator: "min", of: ["guardHeight", "landingGuardHeight"], min: millimetres("900") },
    applies: [WITH_GUARD, NOT_SERVICE],
    exceptions: [{
      when: PUBLIC.when,
      words: "other places than a dwelling: 1070 mm",
      then: { comparator: "min", of: ["guardHeight", "landingGuardHeight"], min: millimetres("1070") },
    }],
    remark: "give use if the stair is not private",
  }),
  limit({
    item: "guard opening", clause: "9.8.8.5.(1)", text: "100",
    measured: "largest opening in the guard",
    rule: { comparator: "sphere", of: ["guardGap", "landingGuardGap"], sphere: millimetres("100") },
    applies: [WITH_GUARD],
  }),
  limit({
    item: "guard opening stair triangle", clause: "9.8.8.5.(2)", text: "150",
    measured: "triangle between riser, tread and bottom rail",
    rule: { comparator: "sphere", of: "triangleGap", sphere: millimetres("150") },
    applies: [WITH_GUARD],
  }),
  limit({
    item: "stringer thickness unsupported", clause: "9.8.9.4.(1)(c)", text: "38",
    measured: "actual thickness",
    rule: { comparator: "min", of: "stringerThickness", min: millimetres("38") },
    exceptions: [{
      when: { fact: "stringerSupported", is: ["yes"] },
      words: "supported along its length: 25 mm",
      then: { comparator: "min", of: "stringerThickness", min: millimetres("25") },
    }],
  }),
  limit({
    item: "tread thickness", clause: "9.8.9.5.(1)", text: "25",
    measured: "actual thickness of treads of lumber, plywood or OSB",
    rule: { comparator: "min", of: "treadThickness", min: millimetres("25") },
    applies: [PRIVATE],
  }),
];

/** Stairs of Part 9 of the Ontario Building Code, 2024 compendium. */
export const obc2024Part9: CodeProfile = {
  id: "obc-2024-part9",
  title: "Ontario Building Code, Division B Part 9",
  edition: "2024",
  region: "Ontario, houses and small buildings",
  untypedNosing: "none",
  limits: LIMITS,
  outOfScope: [],
};
