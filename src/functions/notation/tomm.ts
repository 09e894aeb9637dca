import { lengthIn } from "../../solver/length/length";
import { declare, unit } from "../declare";

export const TOMM = declare({
  id: "TOMM",
  words: "to mm",
  group: "Notation",
  says: "A length in any notation as a number of millimetres.",
  parameters: {
    measure: { kind: "length", sign: "any", each: true, says: "A number in `unit`, or text such as 7 5/8, 2.781 m or 278.1 cm." },
    unit: { ...unit, says: "Unit of a bare number: in or mm." },
  },
  result: { kind: "number", says: "Number of millimetres." },
  problems: {},
  examples: [
    { given: { measure: "7/16" }, gives: 11.1125, from: "Inch-fraction to millimetre table: 7/16 in is 11.1125 mm; by hand 7 x 25.4 / 16" },
    { given: { measure: 7.75 }, gives: 196.85, from: "by hand: 7.75 x 25.4 = 196.85" },
    { given: { measure: "2.781 m" }, gives: 2781, from: "by definition: 1,000 mm to the metre" },
    {
      given: { measure: "2,781 m" },
      fails: "#VALUE!",
      says: 'measure: read "2,781 m", which has a comma; write 2781 m or 2.781 m, whichever is meant',
      from: "common practice, no source: a comma may group thousands or mark decimals, so it is never guessed",
    },
  ],
  source: "International inch of 1959: 25.4 mm exactly.",
  solve: ({ measure }) => lengthIn(measure, "mm"),
});
