import { arcRadius } from "../../solver/layout/arc-radius";
import { declare } from "../declare";

export const ARC = declare({
  id: "ARC",
  group: "Layout",
  says: "Radius of an arc from its chord and its rise.",
  parameters: {
    chord: { kind: "reading", sign: "positive", each: true, says: "Straight from end to end." },
    rise: { kind: "reading", sign: "positive", each: true, says: "Height of the arc over the middle of the chord, in the same unit." },
  },
  result: { kind: "reading", says: "Radius, in the same unit." },
  problems: {},
  examples: [
    { given: { chord: 96, rise: 24 }, gives: 60, from: "Carpentry tips page, finding the arc radius: 48² / 24 + 24 = 120, the diameter" },
    {
      given: { chord: 76, rise: 3 },
      gives: 242.16666666666666,
      from: "York Technical College, Math Problem of the Week 1: 76² / 24 + 1.5",
    },
    { given: { chord: "2.4 m", rise: "300 mm" }, gives: 2550, from: "by hand: 2,400² / 2,400 + 150 = 2,550 mm" },
    {
      given: { chord: 2400, rise: "300 mm" },
      fails: "#VALUE!",
      says:
        'chord: 2400 has no unit and counts as inches, but rise is metric, "300 mm"; write all lengths in one unit, here "2400 mm" ' +
        "if it is millimetres",
      from: "by definition: 25.4 mm to the inch",
    },
    {
      given: { chord: 96, rise: 0 },
      fails: "#VALUE!",
      says: "rise: must be more than 0, got 0",
      from: "by hand: an arc that does not rise is straight",
    },
  ],
  source: "Radius = chord² / (8 x rise) + rise / 2 (Math Central, Univ. of Regina).",
  solve: ({ chord, rise }) => arcRadius(chord, rise),
});
