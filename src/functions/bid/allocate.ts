import { allocation } from "../../solver/bid/allocation";
import { problem } from "../../solver/problem";
import { declare } from "../declare";

export const ALLOCATE = declare({
  id: "ALLOCATE",
  group: "Takeoff and bid",
  says: "An amount shared by weights, in cents that add up to it: freight over goods by weight or board feet, a price over parts.",
  parameters: {
    amount: { kind: "money", sign: "any", says: "What is shared, rounded to cents; a credit is negative." },
    weights: {
      kind: "numbers", sign: "not negative", says: "What it is shared by: costs, pounds, board feet. An empty cell gets no share.",
    },
  },
  result: { kind: "amounts", shapeOf: "weights", says: "Shares in the shape of the weights; they add up to the amount." },
  problems: {
    "no-weight": { cell: "#VALUE!", says: "weights: add up to 0; give at least one that is more than 0" },
  },
  examples: [
    {
      given: { amount: 12.5, weights: [[50], [60], [90]] },
      gives: [[3.13], [3.75], [5.62]],
      from: "an enterprise software manual, Allocating Freight Costs by Item for Inbound Transactions: 3.13, 3.75, 5.62",
    },
    {
      given: { amount: -25, weights: [[1070, 266.04, "", 171.5]] },
      gives: [[-17.75, -4.41, "", -2.84]],
      from:
        "by hand: 25 x 1,070, 266.04 and 171.50 / 1,507.54 = 17.7441, 4.4118, 2.8440; rounded down 17.74, 4.41, 2.84, and the cent left " +
        "over is for 0.41 of one",
    },
    {
      given: { amount: 10, weights: [[0], [0]] },
      fails: "#VALUE!",
      says: "weights: add up to 0; give at least one that is more than 0",
      from: "by hand: nothing says who gets it",
    },
    {
      given: { amount: 10, weights: [[1], [-1]] },
      fails: "#VALUE!",
      says: "weights, row 2: must be 0 or more, got -1",
      from: "common practice, no source: a share is no debt",
    },
  ],
  source:
    "Largest remainder: each share rounded down to the cent, the cents left over to the largest remainders, of equal ones to the " +
    "earlier. A negative amount is shared as its mirror.",
  solve: ({ amount, weights }) => (weights.every((weight) => weight.isZero()) ? problem("no-weight") : allocation(amount, weights)),
});
