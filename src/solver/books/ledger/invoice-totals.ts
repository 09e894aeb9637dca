import type { Exact } from "../../length/exact";
import { problem } from "../../problem";
import { monthText } from "../day";
import { moneyText } from "./article";
import { invoiceKey } from "./charges";
import type { MaybeMove } from "./move";
import type { Fault } from "./own-fault";
import { ZERO } from "./stock";

const ON_THE_PAPER = ["purchase", "freight", "tax"] as const;
type OnThePaper = (typeof ON_THE_PAPER)[number];

interface Paper {
  readonly sums: Record<OnThePaper, Exact>;
  badRow?: number;
}

const isOnThePaper = (kind: string | undefined): kind is OnThePaper => ON_THE_PAPER.some((one) => one === kind);

/**
 * What each row `invoice total` comes to beside the purchases, freight and tax of its invoice and month: agrees, or the fault. A purchase
 * of less than nothing is a line of the paper too.
 */
export const invoiceTotals = (
  rows: readonly { readonly move: MaybeMove<unknown>; readonly fault: Fault | undefined }[],
): ReadonlyMap<number, string | Fault> => {
  const papers = new Map<string, Paper>();
  const paperOf = ({ invoice, day }: MaybeMove<unknown>): Paper => {
    const key = `${monthText(day)}\n${invoiceKey(invoice)}`;
    const paper = papers.get(key) ?? { sums: { purchase: ZERO, freight: ZERO, tax: ZERO } };
    papers.set(key, paper);
    return paper;
  };
  for (const { move, fault } of rows) {
    if (!isOnThePaper(move.kind) || move.invoice === undefined) continue;
    const { sums } = paperOf(move);
    sums[move.kind] = sums[move.kind].plus(move.cost ?? ZERO);
    if (fault !== undefined) paperOf(move).badRow ??= move.row;
  }
  return new Map(rows.flatMap(({ move }): (readonly [number, string | Fault])[] => {
    if (move.kind !== "invoice total") return [];
    const { sums, badRow } = paperOf(move);
    const cost = move.cost ?? ZERO;
    const total = ON_THE_PAPER.reduce((sum, kind) => sum.plus(sums[kind]), ZERO);
    const invoice = String(move.invoice ?? "");
    if (badRow !== undefined) return [[move.row, problem("after-bad-row", { item: invoice, first: badRow })]];
    if (total.eq(cost)) return [[move.row, "agrees"]];
    const [purchases, freight, tax] = ON_THE_PAPER.map((kind) => moneyText(sums[kind])) as [string, string, string];
    const facts = { invoice, cost: moneyText(cost), month: monthText(move.day), sum: moneyText(total), purchases, freight, tax };
    return [[move.row, problem("total-differs", facts)]];
  }));
};
