import type { Source } from "../profile";
import { laterEdition } from "../record/edition";
import { EXTERIOR_DOOR, NOSING_OVER_OPEN_RISERS } from "../record/irc-exceptions";
import { outsideRecord } from "../record/limit-record";
import { irc2021 } from "./irc-2021";

const IRC_2024: Source = { title: "International Residential Code, 2024" };

const outside = outsideRecord({ status: "checked against the code's text", sources: [IRC_2024] });

/** Stairs of the International Residential Code, 2024 edition: the model text, before any local amendment. */
export const irc2024 = laterEdition(irc2021, {
  id: "irc-2024",
  edition: "2024",
  read: { status: "checked against the code's text", sources: [IRC_2024] },
  renumbered: [
    ["R311.7.8.1", "R320.2"], ["R311.7.8.2", "R320.3"], ["R311.7.8.3", "R320.4"], ["R311.7.8.4", "R320.5"], ["R311.7.8.5", "R320.6"],
    ["R311.7.10.1", "R318.7.11.1"], ["R311.7", "R318.7"], ["R312", "R321"],
  ],
  changed: {
    "nosing projection": { exceptions: [NOSING_OVER_OPEN_RISERS] },
    "nosing projection uniformity": { measured: "largest less smallest projection of the flight and the landing at its top" },
    "landing depth straight run": {
      exceptions: [EXTERIOR_DOOR],
      remark: "the landing at the top of a stair indoors may lie beyond a door that does not swing over the stair; in an enclosed garage "
        + "it may lie up to 7 3/4 in "
        + "under the threshold",
    },
    "landing width": { remark: "a landing that is not a rectangle has a depth and an area to keep as well; give landing shape if so" },
  },
  addedOutside: [
    outside({
      item: "handrail return gap", clause: "R320.5", unit: "in",
      text: "an end returned to a wall at most 1/4 from it",
      reason: "not in the stair table",
    }),
    outside({
      item: "deck step landing", clause: "R318.7.6", unit: "in", reason: "not in the stair table",
      text: "an outside stair to grade of three risers or fewer at a deck, porch or patio, not the required way out: bottom landing at "
        + "least 36 wide",
    }),
  ],
});
