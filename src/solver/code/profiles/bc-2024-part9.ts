import type { Source } from "../profile";
import { laterEdition } from "../record/edition";
import { limitRecord, outsideRecord } from "../record/limit-record";
import { printed } from "../record/printed-figure";
import { POINTED_WINDERS } from "../record/stair-conditions";
import { nbcCa2020 } from "./nbc-ca-2020";

const BC_2024: Source = { title: "British Columbia Building Code, 2024, Part 9, which amends the National Building Code of 2020" };
const ALBERTA_2023: Source = { title: "National Building Code, 2023 Alberta Edition, section 9.8, which adopts the 2020 code" };

const limit = limitRecord({ unit: "mm", status: "checked against the code's text", sources: [BC_2024] });
const outside = outsideRecord({ status: "checked against the code's text", sources: [BC_2024] });

/** Stairs of Part 9 of the British Columbia Building Code, 2024: the National Building Code of 2020 with the amendments of the province. */
export const bc2024Part9 = laterEdition(nbcCa2020, {
  id: "bc-2024-part9",
  title: "British Columbia Building Code, Division B Part 9",
  edition: "2024",
  region: "British Columbia, houses and small buildings",
  family: "BC",
  read: { status: "checked against the code's text", sources: [BC_2024, ALBERTA_2023] },
  dropped: ["winder tread turn deviation", "headroom secondary suite beams"],
  changed: {
    "riser height": { exceptions: [] },
    run: { exceptions: [] },
    headroom: { exceptions: [], sources: [BC_2024], remark: "the 1850 mm under beams of a secondary suite are struck here" },
    "stair width": { exceptions: [], sources: [BC_2024] },
    "winder tread turn": { sources: [BC_2024] },
    "tapered run uniformity": { sources: [BC_2024] },
    "handrail sides": { sources: [BC_2024] },
    "handrail required risers": { sources: [BC_2024] },
  },
  added: [
    limit({
      item: "winder run at 200", clause: "9.8.4.6.(3)", text: "255",
      measured: "run of a winder 200 mm from its narrow end; it may not come to a point without it",
      rule: {
        comparator: "table",
        rows: [{
          when: { all: [{ fact: "walkline", atLeast: printed("200 mm") }, { fact: "walkline", atMost: printed("200 mm") }] },
          words: "the winder depth was measured 200 mm from the narrow side: at least 255 mm",
          rule: { comparator: "min", of: "winderDepth", min: printed("255 mm") },
        }],
      },
      applies: POINTED_WINDERS,
      remark: "255 mm is the least run of a private stair in the National Building Code; give winder depth and a walkline of 200 mm",
    }),
  ],
  droppedOutside: ["spiral clear width", "spiral riser height", "spiral tread depth", "spiral headroom", "spiral handrail height"],
  addedOutside: [
    outside({
      item: "spiral stair", clause: "9.8.4.7.", unit: "in words",
      text: "reserved: Part 9 has no rule for spiral stairs here",
      reason: "spiral stair",
    }),
    outside({
      item: "tactile indicators", clause: "9.8.1.5.", unit: "in words",
      text: "tactile attention indicators to 3.3.1.19.",
      reason: "not in the stair table",
    }),
  ],
});
