import type { Source } from "../profile";
import { laterEdition } from "../record/edition";
import { limitRecord } from "../record/limit-record";
import { BOTH_HANDRAILS, HAS_HANDRAIL } from "../record/stair-conditions";
import { nzD1as1 } from "./nz-d1as1";

const D1_AS1: Source = { title: "New Zealand Building Code, Acceptable Solution D1/AS1, edition not named" };

const limit = limitRecord({ unit: "mm", status: "checked against another edition", sources: [D1_AS1] });

/** Accessible stairs of New Zealand: the stair of D1/AS1 with a row of its own in Table 6. */
export const nzD1as1Accessible = laterEdition(nzD1as1, {
  id: "nz-d1as1-accessible",
  title: "New Zealand D1/AS1 and F4/AS1, accessible stair",
  edition: "not named",
  changed: {
    "riser height": { text: "180" },
    "tread depth": { text: "310" },
    pitch: { text: "32" },
    "handrail sides": {
      text: "both sides",
      rule: { comparator: "required", requires: "a handrail on both sides", provided: BOTH_HANDRAILS },
      remark: "",
    },
  },
  added: [
    limit({
      item: "handrail top extension", clause: "D1/AS1 6.0", text: "300",
      measured: "level, beyond the top and the bottom of the flight",
      rule: { comparator: "min", of: "handrailExtension" },
      applies: [HAS_HANDRAIL],
    }),
  ],
});
