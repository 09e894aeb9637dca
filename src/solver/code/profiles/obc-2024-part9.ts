import type { Source } from "../profile";
import { laterEdition } from "../record/edition";
import { limitRecord, outsideRecord } from "../record/limit-record";
import { printed } from "../record/printed-figure";
import { PUBLIC, SERVICE } from "../record/stair-conditions";
import { nbcCa2020 } from "./nbc-ca-2020";

const OBC_2024: Source = { title: "Ontario Building Code, 2024, Division B Part 9" };

const limit = limitRecord({ unit: "mm", status: "checked against the code's text", sources: [OBC_2024] });
const outside = outsideRecord({ status: "checked against the code's text", sources: [OBC_2024] });

/** Stairs of Part 9 of the Ontario Building Code, 2024 compendium: the National Building Code of 2020 with what Ontario has otherwise. */
export const obc2024Part9 = laterEdition(nbcCa2020, {
  id: "obc-2024-part9",
  title: "Ontario Building Code, Division B Part 9",
  edition: "2024",
  region: "Ontario, houses and small buildings",
  family: "OBC",
  read: { status: "checked against the code's text", sources: [OBC_2024] },
  changed: {
    run: { clause: "Table 9.8.4.1." },
    "run public": { clause: "Table 9.8.4.1." },
    "winder tread turn": {
      clause: "9.8.4.6.(1)(b)", text: "30 to 45",
      rule: {
        comparator: "every", needs: "first",
        parts: [
          { comparator: "range", of: "winderTurn" },
          { comparator: "required", requires: "one angle for neighbouring winders", provided: { fact: "winderTurnsAlike", is: ["yes"] } },
        ],
      },
      remark: "neighbouring winders turn alike; they may come to a point",
    },
    "winder set turn": { clause: "9.8.4.6.(1)(a)" },
    "nosing bevel": { exceptions: [], remark: "" },
    "handrail required risers": {
      remark: "frees a single dwelling only, not a house with a secondary suite; the exemption counts the risers of the stair, not of "
        + "one flight",
    },
    "guard height": {
      exceptions: [{
        when: { all: [{ fact: "outside", is: ["yes"], otherwise: "no" }, { fact: "fallHeight", moreThan: printed("1800 mm") }] },
        words: "outdoors, over a drop of more than 1800 mm: 1070 mm",
        then: { comparator: "min", of: ["guardHeight", "landingGuardHeight"], min: printed("1070 mm") },
      }, {
        when: PUBLIC.when,
        words: "other places than a dwelling: 1070 mm",
        then: { comparator: "min", of: ["guardHeight", "landingGuardHeight"], min: printed("1070 mm") },
      }, {
        when: { all: [{ fact: "outside", is: ["yes"], otherwise: "no" }, { fact: "fallHeight", moreThan: printed("10 m") }] },
        words: "outdoors, more than 10 m above the ground: 1500 mm (9.8.8.3.(3.1))",
        then: { comparator: "min", of: ["guardHeight", "landingGuardHeight"], min: printed("1500 mm") },
      }],
    },
  },
  dropped: [
    "winder tread turn deviation", "winder sets", "stringer effective depth", "stringer overall depth",
    "stringer thickness supported", "stringer spacing",
    "tread thickness open riser",
  ],
  added: [
    limit({
      item: "riser height service", clause: "Table 9.8.4.1.", text: "125",
      measured: "plumb, nosing to nosing; the run is at most 355 mm",
      rule: {
        comparator: "every", needs: "any",
        parts: [{ comparator: "min", of: "riserHeight" }, { comparator: "max", of: "treadDepth", max: printed("355 mm") }],
      },
      applies: [SERVICE],
      remark: "no greatest rise and no least run",
    }),
    limit({
      item: "winder sets separation", clause: "9.8.4.6.(2)", text: "1200",
      measured: "in plan, between two sets of winders",
      rule: { comparator: "min", of: "winderSetsApart" },
      applies: {
        when: {
          any: [{ given: "winderSetsApart" }, { all: [{ given: "winderSets" }, { fact: "winderSets", moreThan: printed("1 set") }] }],
        },
        words: "there is more than one set of winders between two floors",
      },
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
  ],
  droppedOutside: ["handrail reach", "guard climb zone"],
  addedOutside: [
    outside({
      item: "handrail reach", clause: "9.8.7.1.(2)", unit: "mm", text: "825 to a handrail, where the stair has to be 2200 wide or wider",
      reason: "not in the stair table",
    }),
    outside({
      item: "guard climb zone", clause: "9.8.8.6.(1)", unit: "mm",
      text: "nothing to climb on from 140 to 900 up",
      reason: "not in the stair table",
    }),
  ],
});
