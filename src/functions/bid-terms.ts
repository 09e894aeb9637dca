import { isWholeCents } from "../solver/bid/cents";
import { clashing, TERM_NAMES, type TermName, type Terms, termsWith } from "../solver/bid/terms";
import { Exact } from "../solver/length/exact";
import { words } from "../solver/words";
import { type Failed, failed, folded, isFailed } from "./cells";
import type { RateOf } from "./columns";
import { readMoney, readRate } from "./read-value";
import { inSight, say } from "./say";

/** A row of a table of terms: what was typed, before its label says how to read it. */
export interface GivenTerm {
  readonly label: string | number;
  readonly rate?: string | number;
  readonly row: number;
}

/** What each rate is a share of; it decides how large a bare number can be meant. */
const OF: Readonly<Record<Exclude<TermName, "roundUpTo">, RateOf>> = {
  burden: "the cost",
  taxPaidOnMaterials: "what it falls on",
  contingency: "what it falls on",
  overheadOnLabour: "the cost",
  overheadOnMaterials: "the cost",
  overheadOnCost: "the cost",
  overheadOfPrice: "the price",
  profitOnCost: "the cost",
  profitOfPrice: "the price",
  taxOnPrice: "what it falls on",
  taxOnMaterials: "what it falls on",
};

const LABELS = TERM_NAMES.map(words);
const NAMES: ReadonlyMap<string, TermName> = new Map(TERM_NAMES.map((name) => [folded(words(name)), name]));

/** An amount to round up to: whole cents, so that the price is in cents. */
const readRoundUp = (name: string, cell: string | number): Exact | Failed => {
  const amount = readMoney(name, cell, "not negative");
  return isFailed(amount) || isWholeCents(amount) ? amount : failed(say.mustBe(name, "an amount in whole cents", cell));
};

const readTerm = (name: TermName, where: string, rate: string | number): Exact | Failed =>
  name === "roundUpTo" ? readRoundUp(where, rate) : readRate(where, rate, OF[name]);

const isGiven = (rate: string | number | undefined): rate is string | number => rate !== undefined && rate !== "";

/** The terms that a table states. An empty rate is no term; a label that is not known, or two that charge one thing twice, are refused. */
export const termsOfRows = (argument: string, rows: readonly GivenTerm[]): Terms | Failed => {
  const terms: Partial<Record<TermName, Exact>> = {};
  for (const { label, rate, row } of rows) {
    const text = String(label);
    const name = NAMES.get(folded(text));
    if (name === undefined) return failed(say.unknown(`${argument}, label in row ${row}`, text, LABELS));
    if (!isGiven(rate)) continue;
    const read = readTerm(name, `rate in row ${row} (${inSight(text)})`, rate);
    if (isFailed(read)) return read;
    if (read.isZero()) continue;
    if (terms[name] !== undefined) return failed(say.twiceTerm(argument, words(name)));
    terms[name] = read;
  }
  const all = termsWith(terms);
  const clash = clashing(all);
  if (clash === undefined) return all;
  const [one = "", other = ""] = clash.map(words);
  return failed(say.termsClash(argument, one, other));
};

/** Solves with the terms a table states; what is wrong with the table is the answer. */
export const withTerms = <Result>(
  argument: string, rows: readonly GivenTerm[], solve: (terms: Terms) => Result,
): Result | Failed => {
  const terms = termsOfRows(argument, rows);
  return isFailed(terms) ? terms : solve(terms);
};
