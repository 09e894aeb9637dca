import type { Source } from "../profile";
import { edition } from "../record/edition";
import { limitRecord, type LimitRecord, outsideRecord } from "../record/limit-record";
import { GUARD_NEEDED, HAS_GUARD, HAS_HANDRAIL, RISERS_OPEN } from "../record/stair-conditions";

const guide = (part: string, address: string): Source => ({
  title: `National Construction Code, 2022, Volume One, ${part}, as given by the guide of the Board`, address,
});
const D3D14 = guide("D3D14", "https://www.abcb.gov.au/guide/d3d14-goings-and-risers");
const D3D18 = guide("D3D18", "https://www.abcb.gov.au/guide/d3d18-height-barriers");
const D3D22 = guide("D3D22", "https://ncc.abcb.gov.au/guide/d3d22-handrails");

const limit = limitRecord({ unit: "mm", status: "checked against the code's text", sources: [D3D14] });

const RECORDS: readonly LimitRecord[] = [
  limit({
    item: "riser height", clause: "Table D3D14", text: "115 to 190",
    measured: "plumb, tread to tread",
    rule: { comparator: "range", of: "riserHeight" },
    status: "not yet checked", sources: [],
  }),
  limit({
    item: "going", clause: "Table D3D14", text: "250 to 355",
    measured: "level, nosing to nosing, of a public stair",
    rule: { comparator: "range", of: "treadDepth" },
    status: "not yet checked", sources: [],
    remark: "240 to 355 mm on a private stair (from memory)",
  }),
  limit({
    item: "two r plus g", clause: "Table D3D14", text: "550 to 700",
    measured: "twice the riser plus the going",
    rule: { comparator: "range", of: { formula: "two risers plus run" } },
    status: "not yet checked", sources: [],
  }),
  limit({
    item: "flight risers", clause: "D3D14(1)(a)", unit: "count", text: "2 to 18", counts: "flight",
    measured: "risers of one flight, winders among them",
    rule: { comparator: "range", of: "risers" },
  }),
  limit({
    item: "riser uniformity adjacent", clause: "D3D14(1)(c)", text: "5",
    measured: "between neighbouring risers",
    rule: { comparator: "uniformity", of: "rise", within: "neighbours" },
  }),
  limit({
    item: "open riser opening", clause: "D3D14(1)(e)", text: "125",
    measured: "clear opening between two treads",
    rule: { comparator: "sphere", of: "openRiserGap" },
    applies: [RISERS_OPEN],
    status: "not yet checked", sources: [],
  }),
  limit({
    item: "handrail height", clause: "D3D22(1)(d)", text: "865",
    measured: "plumb above the line of the nosings",
    rule: { comparator: "min", of: "handrailHeight" },
    applies: [HAS_HANDRAIL],
    sources: [D3D22],
  }),
  limit({
    item: "guard required drop", clause: "D3D17", text: "1000 or more",
    measured: "fall from the open side",
    rule: { comparator: "required-when", of: "fallHeight", requires: "a barrier along the open side", provided: HAS_GUARD },
    status: "not yet checked", sources: [],
  }),
  limit({
    item: "guard height stair", clause: "D3D18(1)", text: "865",
    measured: "stairs and ramps: plumb above the line of the nosings",
    rule: { comparator: "min", of: "guardHeight" },
    applies: [GUARD_NEEDED],
    sources: [D3D18],
  }),
  limit({
    item: "guard height", clause: "D3D18(1)", text: "1000",
    measured: "above floors and landings",
    rule: { comparator: "min", of: "landingGuardHeight" },
    applies: [GUARD_NEEDED],
    sources: [D3D18],
  }),
];

const outside = outsideRecord({ status: "checked against the code's text", sources: [D3D22] });

/** Stairs of buildings other than houses (Classes 2 to 9): Volume One of the National Construction Code of 2022, as far as it was read. */
export const auNcc2022Vol1 = edition({
  id: "au-ncc-2022-vol1",
  title: "National Construction Code, Volume One, Part D3",
  edition: "2022",
  region: "Australia, buildings other than houses",
  family: "AU NCC",
  isOneKind: true,
  records: RECORDS,
  outOfScope: [
    outside({
      item: "handrail height second", clause: "D3D22(1)(c)", unit: "mm", text: "665 to 750, a second handrail in a primary school",
      reason: "not in the stair table",
    }),
    outside({
      item: "handrail continuity", clause: "D3D22(1)(e)", unit: "in words",
      text: "continuous between the landings of the flight",
      reason: "not in the stair table",
    }),
  ],
});
