import type { Source } from "../profile";
import { edition, readInAnother } from "../record/edition";
import { limitRecord, type LimitRecord } from "../record/limit-record";
import { GUARD_NEEDED, HAS_GUARD, HAS_HANDRAIL, POINTED_WINDERS, PRIVATE, PUBLIC, WINDERS_AMONG_STEPS } from "../record/stair-conditions";
import { nbcCa2020 } from "./nbc-ca-2020";

const ALBERTA_2023: Source = { title: "National Building Code, 2023 Alberta Edition, section 9.8, which adopts the 2020 code" };
const BRITISH_COLUMBIA_2018: Source = { title: "British Columbia Building Code, 2018, section 9.8, which adopts the 2015 code" };
const BCAB_1936: Source = { title: "British Columbia Building Code, 2018, as quoted by the Building Code Appeal Board, 1936" };
const BCAB_1938: Source = { title: "British Columbia Building Code, 2018, as quoted by the Building Code Appeal Board, 1938" };

const limit = limitRecord({ unit: "mm", status: "checked against another edition", sources: [ALBERTA_2023] });

const RECORDS: readonly LimitRecord[] = [
  limit({
    item: "riser height", clause: "Table 9.8.4.1.", text: "125 to 200",
    measured: "plumb, nosing to nosing",
    rule: { comparator: "range", of: "riserHeight" },
    applies: [PRIVATE],
    status: "not yet checked", sources: [],
  }),
  limit({
    item: "run", clause: "Table 9.8.4.1.", text: "255 to 355",
    measured: "level, nosing to nosing",
    rule: { comparator: "range", of: "treadDepth" },
    applies: [PRIVATE],
    status: "not yet checked", sources: [],
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
    item: "tread depth over run", clause: "9.8.4.2.", text: "0 to 25",
    measured: "depth of the tread less its run, which is the nosing",
    rule: { comparator: "range", of: "nosing" },
  }),
  limit({
    item: "riser uniformity adjacent", clause: "9.8.4.4.", text: "5",
    measured: "between neighbouring treads or landings",
    rule: { comparator: "uniformity", of: "rise", within: "neighbours" },
  }),
  limit({
    item: "riser uniformity", clause: "9.8.4.4.", text: "10",
    measured: "tallest less shortest riser of the flight",
    rule: { comparator: "uniformity", of: "rise", within: "flight" },
  }),
  limit({
    item: "run uniformity adjacent", clause: "9.8.4.4.", text: "5",
    measured: "between neighbouring treads",
    rule: { comparator: "uniformity", of: "run", within: "neighbours" },
    exceptions: [WINDERS_AMONG_STEPS],
  }),
  limit({
    item: "run uniformity", clause: "9.8.4.4.", text: "10",
    measured: "deepest less shallowest run of the flight",
    rule: { comparator: "uniformity", of: "run", within: "flight" },
    exceptions: [WINDERS_AMONG_STEPS],
  }),
  limit({
    item: "headroom", clause: "9.8.2.2.", text: "1950",
    measured: "plumb above a line along the nosings",
    rule: { comparator: "min", of: "headroom" },
    applies: [PRIVATE],
  }),
  limit({
    item: "stair width", clause: "9.8.2.1.", text: "860",
    measured: "between wall faces or guards",
    rule: { comparator: "min", of: ["clearWidth", "width"] },
    applies: [PRIVATE],
    sources: [BRITISH_COLUMBIA_2018],
  }),
  limit({
    item: "winder tread turn", clause: "9.8.4.6.", unit: "deg", text: "30 to 45",
    measured: "turn of one winder",
    rule: { comparator: "range", of: "winderTurn" },
    applies: [...POINTED_WINDERS, PRIVATE],
    status: "not yet checked", sources: [],
    remark: "neighbouring winders turn alike; they may come to a point",
  }),
  limit({
    item: "winder set turn", clause: "9.8.4.6.", unit: "deg", text: "90",
    measured: "turn of all winders of one set together",
    rule: { comparator: "max", of: "winderSetTurn" },
    applies: [...POINTED_WINDERS, PRIVATE],
    status: "not yet checked", sources: [],
  }),
  limit({
    item: "nosing bevel", clause: "9.8.4.8.", text: "6 to 14",
    measured: "rounding or bevel of the edge",
    rule: { comparator: "range", of: ["nosingRadius", "nosingBevel"] },
    status: "not yet checked", sources: [],
  }),
  limit({
    item: "handrail height", clause: "9.8.7.4.", text: "865 to 1070",
    measured: "plumb above a line along the nosings",
    rule: { comparator: "range", of: "handrailHeight" },
    applies: [HAS_HANDRAIL],
  }),
  limit({
    item: "stair width other", clause: "9.8.2.1.(1)", text: "900",
    measured: "between wall faces or guards",
    rule: { comparator: "min", of: ["clearWidth", "width"] },
    applies: [PUBLIC],
    status: "checked against the code's text", sources: [BRITISH_COLUMBIA_2018],
    remark: "where nobody lives, or 8 mm a person if that is more (9.8.2.1.(3))",
  }),
  limit({
    item: "handrail projection each side", clause: "9.8.7.6.(1)", text: "100",
    measured: "how far handrails, their supports and stringers stand into the required width",
    rule: { comparator: "max", of: "handrailProjection" },
    applies: [HAS_HANDRAIL],
    status: "checked against the code's text", sources: [BCAB_1936],
  }),
  limit({
    item: "guard required drop", clause: "9.8.8.1.(1)", text: "more than 600",
    measured: "drop to the next surface",
    rule: { comparator: "required-when", of: "fallHeight", requires: "a guard along the open side", provided: HAS_GUARD },
    status: "checked against the code's text", sources: [BCAB_1938],
    remark: "also where the ground within 1.2 m slopes by more than 1 in 2, which is not in the stair table",
  }),
  limit({
    item: "guard opening", clause: "9.8.8.5.", text: "100",
    measured: "largest opening in the guard",
    rule: { comparator: "sphere", of: ["guardGap", "landingGuardGap"] },
    applies: [GUARD_NEEDED],
  }),
];

const READ_IN_2020: readonly LimitRecord[] = readInAnother(nbcCa2020, [ALBERTA_2023], [
  "flight vertical rise", "tapered tread run narrow end", "walking surface slope", "open riser", "landing width", "landing depth",
  "handrail required risers",
  "handrail sides", "handrail wall clearance", "guard height", "guard opening stair triangle",
]);

/** Stairs of Part 9 of the National Building Code of Canada, 2015. */
export const nbcCa2015 = edition({
  id: "nbc-ca-2015",
  title: "National Building Code of Canada, Division B Part 9",
  edition: "2015",
  region: "Canada, houses and small buildings, where adopted",
  family: "NBC CA",
  untypedNosing: "none",
  records: [...RECORDS, ...READ_IN_2020],
});
