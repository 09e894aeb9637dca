import { variance, varianceWord } from "../../solver/books/variance";
import { exact } from "../../solver/length/exact";
import { declare } from "../declare";

export const VARIANCE = declare({
  id: "VARIANCE",
  group: "Books",
  says: "Price variance apart from usage variance, each with the word favourable or unfavourable.",
  parameters: {
    standardPrice: { kind: "money", sign: "not negative", says: "Price planned for one unit." },
    standardQuantity: { kind: "number", sign: "not negative", says: "Quantity planned for what was made." },
    actualPrice: { kind: "money", sign: "not negative", says: "Price paid for one unit." },
    actualBought: { kind: "number", sign: "any", says: "Quantity bought." },
    actualUsed: { kind: "number", sign: "any", defaultsTo: "actualBought", says: "Quantity used." },
  },
  result: {
    kind: "row",
    says: "Four cells: price variance and its word, usage variance and its word; positive is unfavourable.",
    columns: {
      priceVariance: { kind: "money", says: "(price paid - standard) x bought." },
      priceWord: { kind: "text", says: "favourable, unfavourable or none." },
      usageVariance: { kind: "money", says: "(used - standard quantity) x standard price." },
      usageWord: { kind: "text", says: "favourable, unfavourable or none." },
    },
  },
  problems: {},
  examples: [
    {
      given: { standardPrice: 3, standardQuantity: 6048, actualPrice: 2.9, actualBought: 10800, actualUsed: 9720 },
      gives: [[-1080, "favourable", 11016, "unfavourable"]],
      from: "Textbook exercise with worked answer: 1,080 F on quantity purchased, 11,016 U on quantity used; 1,080 units x 5.6 = 6,048",
    },
    {
      given: { standardPrice: 7, standardQuantity: 20, actualPrice: 6, actualBought: 20 },
      gives: [[-20, "favourable", 0, "none"]],
      from: "OpenStax, Principles of Accounting 2, 8.2: $20 favorable on 20 lb",
    },
    {
      given: { standardPrice: "x", standardQuantity: 20, actualPrice: 6, actualBought: 20 },
      fails: "#VALUE!",
      says: 'standardPrice: must be an amount of money, got "x"',
      from: "by hand: x is no price",
    },
  ],
  source:
    "OpenStax, Principles of Accounting, Volume 2, 8.2: price on quantity purchased, quantity on quantity used. Mix variance, " +
    "one wood in the place of another, is out of scope.",
  solve: ({ standardPrice, standardQuantity, actualPrice, actualBought, actualUsed }) => {
    const { price, usage } = variance(standardPrice, exact(standardQuantity), actualPrice, exact(actualBought), exact(actualUsed));
    return { priceVariance: price, priceWord: varianceWord(price), usageVariance: usage, usageWord: varianceWord(usage) };
  },
});
