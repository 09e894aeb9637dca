import type { Source } from "../profile";
import { laterEdition } from "../record/edition";
import { irc2024 } from "./irc-2024";

const CRC_2025: Source = { title: "California Residential Code, 2025" };

/** Stairs of the California Residential Code, 2025: the International Residential Code of 2024 with the amendments of the state. */
export const crc2025 = laterEdition(irc2024, {
  id: "crc-2025",
  title: "California Residential Code",
  edition: "2025",
  region: "California, one- and two-family dwellings and townhouses",
  family: "CRC",
  read: { status: "checked against the code's text", sources: [CRC_2025] },
  changed: {
    "guard height": { text: "42", printedMillimetres: ["1067"], remark: "36 in in the model code; the open side of the stair keeps its "
      + "34 in" },
  },
});
