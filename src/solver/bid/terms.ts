import { Exact } from "../length/exact";
import { words } from "../words";

/** The terms of a bid, in the order they are reckoned. The name says what a rate is of. */
export const TERM_NAMES = [
  "burden",
  "taxPaidOnMaterials",
  "contingency",
  "overheadOnLabour",
  "overheadOnMaterials",
  "overheadOnCost",
  "overheadOfPrice",
  "profitOnCost",
  "profitOfPrice",
  "roundUpTo",
  "taxOnPrice",
  "taxOnMaterials",
] as const;
export type TermName = (typeof TERM_NAMES)[number];

/** What the rate of each is of, and who pays a tax. */
export const TERM_OF: Readonly<Record<TermName, string>> = {
  burden: "on labour",
  taxPaidOnMaterials: "which the shop pays when it buys: a cost like the wood",
  contingency: "on direct cost",
  overheadOnLabour: "labour with its burden",
  overheadOnMaterials: "materials with the tax paid",
  overheadOnCost: "direct cost and contingency",
  overheadOfPrice: "a share of the price",
  profitOnCost: "direct cost, contingency and overhead",
  profitOfPrice: "a share of the price",
  roundUpTo: "an amount: the price comes up to whole so many",
  taxOnPrice: "which the customer is charged beside the price",
  taxOnMaterials: "charged to the customer beside the price, on materials at cost",
};

/** Rates as shares, 0.1 for 10 %; `roundUpTo` is an amount of money. 0 where a bid has no such term. */
export type Terms = Readonly<Record<TermName, Exact>>;

const NOTHING = new Exact(0);

/** The terms that are given, and 0 for every other. */
export const termsWith = (given: Partial<Terms>): Terms =>
  Object.fromEntries(TERM_NAMES.map((name) => [name, given[name] ?? NOTHING])) as Terms;

/** Terms of which a bid has one: both would charge one thing twice. */
const EITHER_OR: readonly (readonly TermName[])[] = [
  ["overheadOnCost", "overheadOfPrice"],
  ["overheadOnCost", "overheadOnLabour"],
  ["overheadOnCost", "overheadOnMaterials"],
  ["profitOnCost", "profitOfPrice"],
  ["taxOnPrice", "taxOnMaterials"],
];

/** Two terms given that would charge one thing twice. */
export const clashing = (terms: Terms): readonly TermName[] | undefined =>
  EITHER_OR.find((names) => names.every((name) => !terms[name].isZero()));

const PERCENT = 100;
const DECIMALS = 4;

const isRate = (name: TermName): boolean => name !== "roundUpTo";

/** A term in words: overhead of price 22 %, round up to 10. */
export const termText = (name: TermName, terms: Terms): string =>
  `${words(name)} ${isRate(name) ? `${terms[name].times(PERCENT).toDecimalPlaces(DECIMALS).toString()} %` : terms[name].toString()}`;

/** Those of some terms that a bid has, in words. */
export const termTexts = (names: readonly TermName[], terms: Terms): readonly string[] =>
  names.filter((name) => !terms[name].isZero()).map((name) => termText(name, terms));
