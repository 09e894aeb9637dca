import { lengthIn } from "../../solver/length/length";
import { declare, unit } from "../declare";

export const TOINCHES = declare({
  id: "TOINCHES",
  words: "to inches",
  group: "Notation",
  says: "A length in any notation as a number of inches.",
  parameters: {
    measure: { kind: "length", sign: "any", each: true, says: "A number in `unit`, or text such as 9' 1 1/2\", 7-5/8 or 2781 mm." },
    unit: { ...unit, says: "Unit of a bare number: in or mm." },
  },
  result: { kind: "number", says: "Number of inches." },
  problems: {},
  examples: [
    {
      given: { measure: "7'-3\"" },
      gives: 87,
      from: "Math Review Questions, working with feet and inches (adult basic education handout): 7'-3\" is 87 in",
    },
    { given: { measure: "4 ft 10 in" }, gives: 58, from: "OpenStax Prealgebra 2e, Systems of Measurement: 4 ft 10 in is 58 in" },
    { given: { measure: "9' 1 1/2\"" }, gives: 109.5, from: "by hand: 9 x 12 + 1.5 = 109.5" },
    { given: { measure: "254 mm" }, gives: 10, from: "by definition: 25.4 mm to the inch, 254 / 25.4 = 10" },
    {
      given: { measure: "9' 14\"" },
      fails: "#VALUE!",
      says: 'measure: read "9\' 14"", with 14 inches after the feet; inches after feet stay under 12',
      from: "common practice, no source: inches after feet run from 0 to 11 and a fraction",
    },
  ],
  source: "International inch of 1959: 25.4 mm exactly.",
  solve: ({ measure }) => lengthIn(measure, "in"),
});
