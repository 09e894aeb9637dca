import { laterEdition } from "../record/edition";
import { nzD1as1 } from "./nz-d1as1";

/** Secondary private stairs of New Zealand: the stair of D1/AS1 with a row of its own in Table 6. */
export const nzD1as1Secondary = laterEdition(nzD1as1, {
  id: "nz-d1as1-secondary",
  title: "New Zealand D1/AS1 and F4/AS1, secondary private stair",
  edition: "not named",
  changed: {
    "riser height": { text: "200" },
    "tread depth": { text: "250" },
    pitch: { text: "41" },
  },
});
