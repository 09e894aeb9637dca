import { movement } from "../../solver/wood/movement";
import { declare } from "../declare";
import { WOOD_PROBLEMS } from "../wood-problems";

export const MOVEMENT = declare({
  id: "MOVEMENT",
  group: "Wood",
  says: "Change of a board's width between two moisture contents.",
  parameters: {
    width: { kind: "reading", sign: "positive", each: true, says: "Width across the grain." },
    species: { kind: "text", says: "Wood by its common name: white oak, hard maple, walnut." },
    fromMC: { kind: "number", sign: "not negative", says: "Moisture content now, percent, 6 to 14." },
    toMC: { kind: "number", sign: "not negative", says: "Moisture content later, percent, 6 to 14; EMC tells it from the air." },
    cut: { kind: "choice", options: ["flat", "quarter"], default: "flat", says: "Flatsawn or quartersawn." },
  },
  result: { kind: "reading", says: "Change in the unit of the width; positive swells." },
  problems: {
    ...WOOD_PROBLEMS,
    "moisture-outside": {
      cell: "#VALUE!",
      says: "{name}: {moisture} % is outside 6 to 14 %, where the coefficients hold; give a moisture content between, 8 for 8 %",
    },
    "no-movement-value": { cell: "#N/A", says: "species: no movement coefficient is on file for {species}" },
  },
  examples: [
    {
      given: { width: 5, species: "red oak", fromMC: 6.2, toMC: 11 },
      gives: 0.08856,
      from: "Hardwood Floors magazine, Feb/Mar 2017: 5 in x 0.00369 x 4.8 = 0.08856",
    },
    {
      given: { width: 9.15, species: "white fir", fromMC: 8, toMC: 11 },
      gives: 0.0672525,
      from:
        "Wood Handbook, FPL-GTR-190, chapter 13, example after equation 13-2: 0.067 in; 9.15 x 0.00245 x 3, the coefficient and " +
        "the 8 % from memory",
    },
    {
      given: { width: 10, species: "white oak", fromMC: 12, toMC: 7, cut: "quarter" },
      gives: -0.09,
      from: "by hand: 10 x 0.0018 x (7 - 12), Wood Handbook Table 13-5",
    },
    {
      given: { width: "250 mm", species: "white oak", fromMC: 12, toMC: 7, cut: "quarter" },
      gives: -2.25,
      from: "by hand: 250 mm x 0.0018 x (7 - 12), Wood Handbook Table 13-5",
    },
    {
      given: { width: 10, species: "oak", fromMC: 8, toMC: 10 },
      fails: "#N/A",
      says: 'species: "oak" may be white oak, red oak, live oak, overcup oak; write one of them',
      from: "by hand: four oaks are in the table",
    },
    {
      given: { width: 10, species: "white oak", fromMC: 8, toMC: 19 },
      fails: "#VALUE!",
      says: "toMC: 19 % is outside 6 to 14 %, where the coefficients hold; give a moisture content between, 8 for 8 %",
      from: "Wood Handbook chapter 13: the coefficients hold from 6 to 14 %",
    },
  ],
  source:
    "Change = width x coefficient x change of moisture content: Wood Handbook, FPL-GTR-190, equation 13-2 and Table 13-5; its " +
    "values for true hickory, yellow poplar, the southern pines and, flatsawn, white fir are from memory.",
  solve: ({ width, species, fromMC, toMC, cut }) => movement(width, species, fromMC, toMC, cut),
});
