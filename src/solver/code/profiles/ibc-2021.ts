import type { Source } from "../profile";
import { laterEdition } from "../record/edition";
import { LANDING_OF_OTHER_SHAPE } from "../record/irc-exceptions";
import { ibc2018 } from "./ibc-2018";

const IBC_2021: Source = { title: "International Building Code, 2021, as adopted by Texas" };
const IBC_2021_1011: Source = { title: "International Building Code, 2021, section 1011" };

/** Stairs of the International Building Code, 2021 edition: the model text, before any local amendment. */
export const ibc2021 = laterEdition(ibc2018, {
  id: "ibc-2021",
  edition: "2021",
  read: { status: "checked against the code's text", sources: [IBC_2021] },
  changed: {
    "stair width": { sources: [IBC_2021_1011] },
    "landing depth": { exceptions: [LANDING_OF_OTHER_SHAPE] },
    "handrail height": { sources: [IBC_2021_1011] },
    "handrail top extension": { sources: [IBC_2021_1011] },
  },
});
