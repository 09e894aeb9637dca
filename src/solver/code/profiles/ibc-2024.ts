import type { Source } from "../profile";
import { laterEdition } from "../record/edition";
import { limitRecord, outsideRecord } from "../record/limit-record";
import { printed } from "../record/printed-figure";
import { DWELLING, GUARD_NEEDED, IN_DWELLING, OPEN_RISERS } from "../record/stair-conditions";
import { ibc2021 } from "./ibc-2021";

const IBC_2024: Source = { title: "International Building Code, 2024" };

const limit = limitRecord({ unit: "in", status: "checked against the code's text", sources: [IBC_2024] });
const outside = outsideRecord({ status: "checked against the code's text", sources: [IBC_2024] });

const ACCESSIBLE_UNITS = "not for dwellings of Group R-2 that have to be Accessible or Type A units, which is new in this edition";

/** Stairs of the International Building Code, 2024 edition: the model text, before any local amendment. */
export const ibc2024 = laterEdition(ibc2021, {
  id: "ibc-2024",
  edition: "2024",
  read: { status: "checked against the code's text", sources: [IBC_2024] },
  renumbered: [
    [
      "1014.3", "1014.4"], ["1014.6", "1014.7"], ["1014.7", "1014.8"], ["1014.8", "1014.9"], ["1014.9", "1014.10"], ["1015.3 Exc. 2",
      "1015.3 Exc. 3",
    ],
  ],
  changed: {
    "stair width under 50 occupants": { clause: "1011.2 Exc. 1" },
    "riser height dwelling": { remark: ACCESSIBLE_UNITS },
    "tread depth dwelling": { remark: ACCESSIBLE_UNITS },
    "winder tread depth walkline dwelling": { remark: ACCESSIBLE_UNITS },
    "winder tread depth any point dwelling": { remark: ACCESSIBLE_UNITS },
    "nosing projection": {
      exceptions: [{
        when: { all: [OPEN_RISERS, { fact: "openRisersAllowed", is: ["yes"] }] },
        words: "where solid risers are not required the projection may be more",
        then: "does not apply",
      }],
      remark: "",
    },
    "open riser opening": { clause: "1011.5.5.3 Exc. 1" },
    "guard height": {
      exceptions: [{
        when: { all: [IN_DWELLING, { fact: "storeys", atMost: printed("3 storeys") }] },
        words: "a dwelling of at most three storeys has rows of its own",
        then: "does not apply",
      }, {
        when: { all: [IN_DWELLING, { fact: "storeys", moreThan: printed("3 storeys") }] },
        words: "in a dwelling of more than three storeys 42 in, and the open side of a stair has a row of its own",
        then: { comparator: "min", of: "landingGuardHeight", min: printed("42 in") },
      }, {
        when: {
          all: [
            IN_DWELLING, { fact: "storeys", moreThan: printed("3 storeys") }, { fact: "outside", is: ["no"] },
            { fact: "fallHeight", atMost: printed("25 ft") },
          ],
        },
        words: "inside a dwelling of more than three storeys, over a fall of at most 25 ft, a row of its own",
        then: "does not apply",
      }],
    },
  },
  added: [
    limit({
      item: "nosing projection uniformity", clause: "1011.5.5.2", text: "of uniform size, no figure",
      measured: "nosings of the flight, with the floor or landing at its top",
      rule: {
        comparator: "alike", of: ["nosing"],
        sense: "nosings are to be of uniform size, the floor or landing at the top among them; no figure is given",
      },
    }),
    limit({
      item: "guard height dwelling interior", clause: "1015.3 Exc. 2", text: "36", printedMillimetres: ["914"],
      measured: "level guards inside a dwelling: above the floor or landing",
      rule: { comparator: "min", of: "landingGuardHeight" },
      applies: [
        GUARD_NEEDED, DWELLING, { when: { fact: "outside", is: ["no"], otherwise: "no" }, words: "the guard is indoors" },
        { when: { fact: "fallHeight", atMost: printed("25 ft") }, words: "the fall is at most 25 ft" },
      ],
    }),
  ],
  addedOutside: [
    outside({
      item: "handrail lateral location", clause: "1014.3", unit: "in", text: "at most 6 outward of the edge of the walking surface",
      reason: "not in the stair table",
    }),
  ],
});
