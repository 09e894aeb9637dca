import type { Source } from "../profile";
import { laterEdition } from "../record/edition";
import { EXTERIOR_DOOR, LANDING_DRAINS, NOSING_OVER_OPEN_RISERS, OPENING_OVERLAPS, PASSING_NOSING } from "../record/irc-exceptions";
import { SPIRAL } from "../record/stair-conditions";
import { irc2021 } from "./irc-2021";

const IRC_2024: Source = { title: "International Residential Code, 2024" };

/** Stairs of the International Residential Code, 2024 edition: the model text, before any local amendment. */
export const irc2024 = laterEdition(irc2021, {
  id: "irc-2024",
  edition: "2024",
  status: "checked against the code's text", sources: [IRC_2024],
  renumbered: [
    ["R311.7.8.1", "R320.2"], ["R311.7.8.2", "R320.3"], ["R311.7.8.3", "R320.4"], ["R311.7.8.5", "R320.6"], ["R311.7.10.1", "R318.7.11.1"],
    ["R311.7", "R318.7"], ["R312", "R321"],
  ],
  changed: {
    headroom: { exceptions: [SPIRAL, OPENING_OVERLAPS] },
    "nosing projection": { exceptions: [NOSING_OVER_OPEN_RISERS] },
    "nosing projection uniformity": { measured: "largest less smallest projection of the flight and the landing at its top" },
    "landing depth straight run": { exceptions: [EXTERIOR_DOOR] },
    "landing width": { remark: "a landing that is not a rectangle has a depth and an area to keep as well; give landing shape if so" },
    "walking surface slope": { exceptions: [LANDING_DRAINS] },
    "handrail projection each side": { exceptions: [PASSING_NOSING] },
  },
});
