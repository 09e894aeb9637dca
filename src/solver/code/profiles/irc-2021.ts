import type { Source } from "../profile";
import { laterEdition } from "../record/edition";
import { irc2018 } from "./irc-2018";

const IRC_2021: Source = { title: "International Residential Code, 2021, as adopted by Texas" };

/** Stairs of the International Residential Code, 2021 edition: the model text, before any local amendment. */
export const irc2021 = laterEdition(irc2018, {
  id: "irc-2021",
  edition: "2021",
  status: "checked against the code's text", sources: [IRC_2021],
  changed: {
    "flight vertical rise": { text: "12 ft 7 in" },
    "guard height stair open side": { remark: "" },
  },
});
