import type { Source } from "../profile";
import { edition } from "../record/edition";
import { limitRecord, type LimitRecord } from "../record/limit-record";
import { printed, span } from "../record/printed-figure";
import { HAS_HANDRAIL, NOT_SERVICE, POINTED_WINDERS, PRIVATE, PUBLIC, TAPERED_TREADS, WINDERS_AMONG_STEPS, WITH_GUARD } from "../record/stair-conditions";

const OBC_2024: Source = { title: "Ontario Building Code, 2024, Division B Part 9" };

const limit = limitRecord({ unit: "mm", status: "checked against the code's text", sources: [OBC_2024] });

const RECORDS: readonly LimitRecord[] = [
  limit({
    item: "riser height", clause: "Table 9.8.4.1.", text: "125 to 200",
    measured: "plumb, nosing to nosing",
    rule: { comparator: "range", of: "riserHeight" },
    applies: [PRIVATE],
  }),
  limit({
    item: "run", clause: "Table 9.8.4.1.", text: "255 to 355",
    measured: "level, nosing to nosing",
    rule: { comparator: "range", of: "treadDepth" },
    applies: [PRIVATE],
  }),
  limit({
    item: "riser height public", clause: "Table 9.8.4.1.", text: "125 to 180",
    measured: "plumb, nosing to nosing",
    rule: { comparator: "range", of: "riserHeight" },
    applies: [PUBLIC],
  }),
  limit({
    item: "run public", clause: "Table 9.8.4.1.", text: "280",
    measured: "level, nosing to nosing",
    rule: { comparator: "min", of: "treadDepth" },
    applies: [PUBLIC],
    remark: "there is no greatest run",
  }),
  limit({
    item: "stair width", clause: "9.8.2.1.(4)", text: "860",
    measured: "between wall faces or guards",
    rule: { comparator: "min", of: ["clearWidth", "width"] },
    applies: [PRIVATE],
  }),
  limit({
    item: "headroom", clause: "9.8.2.2.(3)", text: "1950",
    measured: "plumb above a line along the nosings",
    rule: { comparator: "min", of: "headroom" },
    applies: [PRIVATE],
  }),
  limit({
    item: "flight vertical rise", clause: "9.8.3.3.", text: "3700",
    measured: "between floors or landings",
    rule: { comparator: "max", of: "totalRise" },
  }),
  limit({
    item: "tread depth over run", clause: "9.8.4.2.(2)", text: "0 to 25",
    measured: "depth of the tread less its run, which is the nosing",
    rule: { comparator: "range", of: "nosing" },
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
      words: "the stair is not private: a run of at least 280 mm",
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
    item: "winder tread turn", clause: "9.8.4.6.(1)(b)", unit: "deg", text: "30 to 45",
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
    item: "winder set turn", clause: "9.8.4.6.(1)(a)", unit: "deg", text: "90",
    measured: "turn of all winders of one set together",
    rule: { comparator: "max", of: "winderSetTurn" },
    applies: [...POINTED_WINDERS, PRIVATE],
  }),
  limit({
    item: "winder sets separation", clause: "9.8.4.6.(2)", text: "1200",
    measured: "in plan, between two sets of winders",
    rule: { comparator: "min", of: "winderSetsApart" },
    applies: { when: { any: [{ given: "winderSetsApart" }, { all: [{ given: "winderSets" }, { fact: "winderSets", moreThan: printed("1 set") }] }] }, words: "there is more than one set of winders between two floors" },
  }),
  limit({
    item: "nosing bevel", clause: "9.8.4.8.(1)", text: "6 to 14",
    measured: "rounding or bevel of the edge",
    rule: { comparator: "range", of: ["nosingRadius", "nosingBevel"] },
  }),
  limit({
    item: "handrail height", clause: "9.8.7.4.(2)", text: "865 to 1070",
    measured: "plumb above a line along the nosings",
    rule: { comparator: "range", of: "handrailHeight" },
    applies: [HAS_HANDRAIL],
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
    item: "guard height", clause: "9.8.8.3.(2)", text: "900",
    measured: "above the floor, landing or line of nosings",
    rule: { comparator: "min", of: ["guardHeight", "landingGuardHeight"] },
    applies: [WITH_GUARD, NOT_SERVICE],
    exceptions: [{
      when: PUBLIC.when,
      words: "other places than a dwelling: 1070 mm",
      then: { comparator: "min", of: ["guardHeight", "landingGuardHeight"], min: printed("1070 mm") },
    }],
    remark: "give use if the stair is not private",
  }),
  limit({
    item: "guard opening", clause: "9.8.8.5.(1)", text: "100",
    measured: "largest opening in the guard",
    rule: { comparator: "sphere", of: ["guardGap", "landingGuardGap"] },
    applies: [WITH_GUARD],
  }),
  limit({
    item: "guard opening stair triangle", clause: "9.8.8.5.(2)", text: "150",
    measured: "triangle between riser, tread and bottom rail",
    rule: { comparator: "sphere", of: "triangleGap" },
    applies: [WITH_GUARD],
  }),
  limit({
    item: "stringer thickness unsupported", clause: "9.8.9.4.(1)(c)", text: "38",
    measured: "actual thickness",
    rule: { comparator: "min", of: "stringerThickness" },
    exceptions: [{
      when: { fact: "stringerSupported", is: ["yes"] },
      words: "supported along its length: 25 mm",
      then: { comparator: "min", of: "stringerThickness", min: printed("25 mm") },
    }],
  }),
  limit({
    item: "tread thickness", clause: "9.8.9.5.(1)", text: "25",
    measured: "actual thickness of treads of lumber, plywood or OSB",
    rule: { comparator: "min", of: "treadThickness" },
    applies: [PRIVATE],
  }),
];

/** Stairs of Part 9 of the Ontario Building Code, 2024 compendium. */
export const obc2024Part9 = edition({
  id: "obc-2024-part9",
  title: "Ontario Building Code, Division B Part 9",
  edition: "2024",
  region: "Ontario, houses and small buildings",
  family: "OBC",
  untypedNosing: "none",
  records: RECORDS,
});
