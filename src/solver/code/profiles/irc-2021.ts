import type { Source } from "../profile";
import { laterEdition } from "../record/edition";
import { LANDING_DRAINS } from "../record/irc-exceptions";
import { outsideRecord } from "../record/limit-record";
import { irc2018 } from "./irc-2018";

const IRC_2021: Source = { title: "International Residential Code, 2021, as adopted by Texas" };

const outside = outsideRecord({ status: "checked against the code's text", sources: [IRC_2021] });

/** Stairs of the International Residential Code, 2021 edition: the model text, before any local amendment. */
export const irc2021 = laterEdition(irc2018, {
  id: "irc-2021",
  edition: "2021",
  read: { status: "checked against the code's text", sources: [IRC_2021] },
  changed: {
    "flight vertical rise": { text: "12 ft 7 in" },
    "walking surface slope": { exceptions: [LANDING_DRAINS] },
    "guard height stair open side": { remark: "" },
  },
  addedOutside: [
    outside({
      item: "stair exempt", clause: "R311.7", unit: "in words", reason: "not in the stair table",
      text: "stairs that serve no building, porch or deck, and stairs to attics nobody lives in and to crawl spaces, are free",
    }),
  ],
});
