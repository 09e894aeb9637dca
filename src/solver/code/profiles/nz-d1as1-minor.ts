import { laterEdition } from "../record/edition";
import { nzD1as1 } from "./nz-d1as1";

/** Service and minor private stairs of New Zealand: the stair of D1/AS1 with a row of its own in Table 6. */
export const nzD1as1Minor = laterEdition(nzD1as1, {
  id: "nz-d1as1-minor",
  title: "New Zealand D1/AS1 and F4/AS1, service and minor private stair",
  edition: "not named",
  changed: {
    "riser height": { text: "220" },
    "tread depth": { text: "220" },
    pitch: { text: "47" },
  },
});
