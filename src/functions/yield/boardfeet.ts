import { boardFeet } from "../../solver/yield/board-feet";
import { declare } from "../declare";

export const BOARDFEET = declare({
  id: "BOARDFEET",
  words: "board feet",
  group: "Cut plan",
  says: "Board feet of lumber.",
  parameters: {
    thickness: { kind: "length", sign: "positive", each: true, says: "Thickness; under 1 in counts as 1 in." },
    width: { kind: "length", sign: "positive", each: true, says: "Width of the board." },
    length: { kind: "length", sign: "positive", each: true, says: "Length; a number is inches, 14' is feet." },
    quantity: { kind: "count", sign: "not negative", default: 1, each: true, says: "How many boards." },
  },
  result: { kind: "number", says: "Board feet." },
  problems: {},
  examples: [
    { given: { thickness: 2, width: 12, length: "16'" }, gives: 32, from: "US Army EN5155 Carpentry I, table 1-5" },
    { given: { thickness: 3, width: 6, length: "17'" }, gives: 25.5, from: "Lumber measure handout" },
    {
      given: { thickness: 1, width: 8, length: "12'", quantity: 15 },
      gives: 120,
      from: "Wood Technology & Processes, self-check math quiz 13",
    },
    { given: { thickness: 0.75, width: 10, length: "6'" }, gives: 5, from: "Board foot quiz with answers: 3/4 stock counts as 1 in" },
    {
      given: { thickness: 0, width: 10, length: 60 },
      fails: "#VALUE!",
      says: "thickness: must be more than 0, got 0",
      from: "common practice, no source: lumber has a thickness",
    },
  ],
  source: 
    "Board feet = thickness x width x length / 144 x quantity, in inches; under 1 in counts as 1 in (US Navy Engineering Aid basic " +
    "manual, lumber).",
  solve: ({ thickness, width, length, quantity }) => boardFeet(thickness, width, length, quantity),
});
