import { cents, isWholeCents } from "../../solver/bid/cents";
import { roundedUp } from "../../solver/bid/rounded-up";
import { sellingPrice } from "../../solver/bid/selling-price";
import { isProblem, problem } from "../../solver/problem";
import { declare } from "../declare";
import { say } from "../say";

export const SELLINGPRICE = declare({
  id: "SELLINGPRICE",
  words: "selling price",
  group: "Takeoff and bid",
  says: "Price that covers a cost, by markup on the cost or by margin on the price.",
  parameters: {
    cost: { kind: "money", sign: "any", each: true, says: "Cost to be covered; a credit is negative." },
    rate: {
      kind: "rate",
      of: "the cost or of the price",
      says: "Markup or margin as a share: 25% or 0.25; a markup of 250 % is 250% or 2.5.",
    },
    basis: {
      kind: "choice",
      options: ["markup", "margin"],
      default: "markup",
      says: "Whether the rate is a share of the cost (markup) or of the price (margin).",
    },
    roundUpTo: {
      kind: "money",
      sign: "not negative",
      default: 0,
      each: true,
      says: "The price is the next whole so many, as 5 or 0.05; 0 for none.",
    },
  },
  result: { kind: "money", says: "Price, rounded to cents, half a cent away from zero." },
  problems: {
    "margin-of-all": { cell: "#VALUE!", says: say.marginOfAll("rate") },
    "part-of-a-cent": { cell: "#VALUE!", says: "roundUpTo: must be an amount in whole cents, got {roundUpTo}" },
  },
  examples: [
    {
      given: { cost: 250, rate: 0.4 },
      gives: 350,
      from: "OpenStax Prealgebra 2e, mark-up (modules/m81307): 250 marked up 40 % sells at 350",
    },
    {
      given: { cost: 15, rate: "25%", basis: "margin" },
      gives: 20,
      from: "York University retail pricing worksheet (ADMS 2200): cost 15, margin 25 % of the price, price 20",
    },
    {
      given: { cost: [[1200], [16]], rate: 0.5 },
      gives: [[1800], [24]],
      from: "OpenStax Prealgebra 2e, mark-up (modules/m81307): 1,200 marked up 50 % is 1,800; by hand: 16 x 1.5 = 24",
    },
    { given: { cost: 1000, rate: 0.42, basis: "margin" }, gives: 1724.14, from: "by hand: 1,000 / (1 - 0.42) = 1,724.1379" },
    {
      given: { cost: 15, rate: 25 },
      fails: "#VALUE!",
      says: "rate: 25 is 2500 %, write 25% or 0.25",
      from: "by hand: 25 as a share is 2,500 %",
    },
    { given: { cost: 1000, rate: 0.42, basis: "margin", roundUpTo: 5 }, gives: 1725, from: "by hand: 1,724.14 to the next whole 5" },
    {
      given: { cost: 15, rate: 0.4, roundUpTo: 0.004 },
      fails: "#VALUE!",
      says: "roundUpTo: must be an amount in whole cents, got 0.004",
      from: "by hand: a price is in whole cents",
    },
    { given: { cost: 20, rate: "250%" }, gives: 70, from: "by hand: 20 x (1 + 2.5) = 70" },
    { given: { cost: 20, rate: 2.5 }, gives: 70, from: "by hand: a cell that shows 250 % holds 2.5" },
    { given: { cost: 71.25, rate: "133%" }, gives: 166.01, from: "by hand: 71.25 x 2.33 = 166.0125" },
    {
      given: { cost: 15, rate: "133%", basis: "margin" },
      fails: "#VALUE!",
      says: "rate: a margin of 133 % leaves no cost; write less than 100 %",
      from: "by hand: 15 / (1 - 1.33) is under 0",
    },
    {
      given: { cost: 15, rate: 1, basis: "margin" },
      fails: "#VALUE!",
      says: "rate: a margin of 100 % leaves no cost; write less than 100 %",
      from: "by hand: 15 / (1 - 1) has no answer",
    },
  ],
  source: "By markup m: cost x (1 + m). By margin g: cost / (1 - g). In cents, then up to the next whole roundUpTo.",
  solve: ({ cost, rate, basis, roundUpTo }) => {
    if (!isWholeCents(roundUpTo)) return problem("part-of-a-cent", { roundUpTo: roundUpTo.toNumber() });
    const price = sellingPrice(cost, rate, basis);
    return isProblem(price) ? price : roundedUp(cents(price), roundUpTo);
  },
});
