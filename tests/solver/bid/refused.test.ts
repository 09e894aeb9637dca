import { bid } from "../../../src/solver/bid/bid";
import type { Cost } from "../../../src/solver/bid/cost";
import { priceChange } from "../../../src/solver/bid/price-change";
import { partOfOption, quote } from "../../../src/solver/bid/quote";
import { clashing, termsWith, termText, termTexts } from "../../../src/solver/bid/terms";
import { Exact } from "../../../src/solver/length/exact";
import { isProblem } from "../../../src/solver/problem";

/** Bids that have no price, whoever asks, and terms in words. */

const cost = (more: Partial<Cost> = {}): Cost => ({ item: "oak", row: 2, cost: new Exact(100), ...more });
const NO_TERMS = termsWith({});
const told = <Found>(found: Found): unknown => (isProblem(found) ? found.problem : "answered");
const priced = (costs: readonly Cost[], terms = NO_TERMS, option = "") => ({ costs, terms, option });

test.each([
  ["an option that no row has", [cost()], NO_TERMS, "elm", "no-options"],
  ["an option that other rows have", [cost(), cost({ option: "ash" })], NO_TERMS, "elm", "no-such-option"],
  ["labour that is taxed", [cost({ kind: "labour", taxed: true })], NO_TERMS, "", "taxed-without-goods"],
  [
    "terms that leave nothing for the cost", [cost()],
    termsWith({ overheadOfPrice: new Exact("0.5"), profitOfPrice: new Exact("0.5") }), "", "nothing-left",
  ],
] as const)("%s: no bid, and no change to it or from it", (_, costs, terms, option, problem) => {
  const [good, bad] = [priced([cost()]), priced(costs, terms, option)];
  expect([bid(costs, terms, option), priceChange(bad, good), priceChange(good, bad)].map(told)).toEqual([problem, problem, problem]);
  // A quote has every option, so only what is wrong with the bid itself is refused.
  expect(told(quote(costs, terms))).toBe(option === "" ? problem : "answered");
});

test("an alternate is named in the column of parts as its rows name it, else by its option", () => {
  const rows = [
    cost({ option: "ash", part: "hall" }), cost({ option: "Ash", part: "loft" }), cost({ option: "elm", part: "" }), cost({ part: "yard" }),
  ];
  expect([partOfOption(rows, "ash"), partOfOption(rows, "elm"), partOfOption(rows, "oak")]).toEqual(["hall, loft", "elm", "oak"]);
});

test("terms in words: a rate in percent with four decimals, an amount as it is, those that are 0 left out", () => {
  const terms = termsWith({ burden: new Exact("0.3"), overheadOfPrice: new Exact("0.0123456789"), roundUpTo: new Exact(10) });
  expect([termText("burden", terms), termText("overheadOfPrice", terms), termText("roundUpTo", terms)]).toEqual([
    "burden 30 %", "overhead of price 1.2346 %", "round up to 10",
  ]);
  expect(termTexts(["burden", "contingency", "roundUpTo"], terms)).toEqual(["burden 30 %", "round up to 10"]);
});

test("two terms clash only where both are more than nothing", () => {
  const one = new Exact("0.1");
  expect(clashing(termsWith({ overheadOnCost: one, profitOnCost: one, taxOnPrice: one }))).toBeUndefined();
  expect(clashing(termsWith({ overheadOnLabour: one, overheadOnMaterials: one, overheadOfPrice: one }))).toBeUndefined();
  expect(clashing(termsWith({ taxOnPrice: one, taxOnMaterials: one }))).toEqual(["taxOnPrice", "taxOnMaterials"]);
  expect(clashing(termsWith({ taxOnPrice: one, taxOnMaterials: new Exact(0) }))).toBeUndefined();
});
