import { riserCount } from "../../solver/layout/riser-count";
import { STAIR_LABELS } from "../../solver/stair-labels";
import { CAUTION } from "../caution";
import { declare, unit } from "../declare";

export const RISERS = declare({
  id: "RISERS",
  group: "Layout",
  says: "Fewest equal risers between two finished floors.",
  parameters: {
    totalRise: {
      kind: "length",
      sign: "positive",
      plausible: "total rise",
      each: true,
      says: "Finish floor to finish floor, measured plumb.",
    },
    maxRise: {
      kind: "length",
      sign: "positive",
      plausible: "rise",
      default: STAIR_LABELS.maxRise.default.inches,
      says: "Greatest rise allowed; a rise equal to it passes.",
    },
    unit,
  },
  result: { kind: "count", says: "Number of risers." },
  problems: {},
  examples: [
    {
      given: { totalRise: 106.5, maxRise: 8 },
      gives: 14,
      from: "Stair layout question-and-answer page: 106 1/2 against 8 is 13.31, so 14 risers",
    },
    { given: { totalRise: 108.5 }, gives: 14, from: "by hand: 14 x 7 3/4 = 108 1/2, the boundary passes" },
    { given: { totalRise: 108.515625 }, gives: 15, from: "by hand: 1/64 over 14 x 7 3/4" },
    {
      given: { totalRise: 2781, unit: "mm" },
      gives: 15,
      from: "by hand: 14 x 196.85 = 2,755.9 is less than 2,781, 15 x 196.85 = 2,952.75 is more",
    },
    {
      given: { totalRise: 2781 },
      fails: "#VALUE!",
      says: 'totalRise: 2781 in is over 400 in; if this is millimetres, write "2781 mm"',
      from: "common practice, no source: no stair rises 400 in between two floors",
    },
  ],
  source:
    "Risers = total rise / max rise, rounded up, in exact arithmetic. The default is the greatest rise of the IRC, " +
    "R311.7.5.1: 7 3/4 in.",
  caution: CAUTION,
  solve: ({ totalRise, maxRise }) => riserCount(totalRise, maxRise),
});
