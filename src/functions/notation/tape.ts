import { lengthIn } from "../../solver/length/length";
import { tapeText } from "../../solver/length/tape-text";
import { declare } from "../declare";

/** Divisions found on tapes and rules. */
const DENOMINATORS = ["2", "4", "8", "16", "32", "64"] as const;

export const TAPE = declare({
  id: "TAPE",
  group: "Notation",
  says: "A length as it is read on a tape.",
  parameters: {
    length: { kind: "length", sign: "any", each: true, says: "A number of inches, or text in any notation." },
    denominator: { kind: "choice", options: DENOMINATORS, default: "16", says: "Parts of an inch: 2, 4, 8, 16, 32 or 64." },
    feet: { kind: "flag", default: false, says: "Feet and inches from 12 inches up." },
    strong: { kind: "flag", default: false, says: "Append + where the length is longer than the mark, − where it is shy of it." },
  },
  result: { kind: "text", says: "Tape text, the nearest mark, ties away from zero, the fraction reduced." },
  problems: {},
  convertsNotation: true,
  examples: [
    { given: { length: 7.8125 }, gives: '7 13/16"', from: "by hand: 0.8125 = 13/16" },
    {
      given: { length: 49.125, denominator: 16, feet: true },
      gives: "4' 1 1/8\"",
      from: "Glencoe, Carpentry & Building Construction, self-check math activity 1: 4 ft 1 in and 2/16 reads 4' 1 1/8\"",
    },
    {
      given: { length: 90.6, feet: true },
      gives: "7' 6 5/8\"",
      from: "Math Central, Univ. of Regina, roof triangle: 90.60 in is approximately 7 ft 6 5/8 in",
    },
    { given: { length: 7.69, strong: true }, gives: '7 11/16"+', from: "by hand: 11/16 = 0.6875, 0.69 is longer than the mark" },
    { given: { length: 7.03125 }, gives: '7 1/16"', from: "by hand: 1/32 lies half way between 0 and 1/16, ties go away from zero" },
  ],
  source: "Common practice, no source: nearest mark, ties away from zero; strong and shy as said on site.",
  solve: ({ length, denominator, feet, strong }) => tapeText(lengthIn(length, "in"), { denominator: Number(denominator), feet, strong }),
});
