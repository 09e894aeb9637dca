import { goodsKey } from "../../goods/goods-key";
import { type Problem, problem } from "../../problem";
import { type Articles, moneyText, unitName } from "./article";
import { isCharge, isOfGoods, isReturned, type MaybeMove, type MoveKind, type Name } from "./move";
import { type Place, type PlaceOf, RACK } from "./place";
import { ZERO } from "./stock";

export type LedgerProblem =
  | "marks-alone"
  | "no-item"
  | "no-cost"
  | "cost-at-average"
  | "no-quantity"
  | "quantity-of-nothing"
  | "signs-differ"
  | "quantity-of-money"
  | "unit-is-empty"
  | "units-differ"
  | "to-missing"
  | "to-not-read"
  | "same-place"
  | "job-missing"
  | "count-off-the-rack"
  | "own-name"
  | "of-missing"
  | "of-itself"
  | "share-missing"
  | "share-over-one"
  | "offcut-costs-more"
  | "opening-after-move"
  | "no-invoice"
  | "no-purchases"
  | "before-purchases"
  | "several-invoices"
  | "too-many-shares"
  | "credited-too-much"
  | "not-on-hand"
  | "never-there"
  | "never-bought"
  | "total-differs"
  | "after-bad-row";

export type Fault = Problem<LedgerProblem>;

/** The places a row is about: where goods come from and where they go, as its kind has it. */
export interface Ends {
  readonly from?: Place;
  readonly to?: Place;
}

const GOES_TO_JOB: readonly (MoveKind | undefined)[] = ["opening", "purchase", "issue"];
const READS_TO: readonly (MoveKind | undefined)[] = ["transfer", "offcut"];

export const endsOf = (move: MaybeMove<unknown>, placeOf: PlaceOf): Ends => {
  const place = placeOf(move.job) ?? RACK;
  if (isReturned(move)) return { from: place };
  if (move.kind === "issue") return { from: RACK, to: place };
  if (GOES_TO_JOB.includes(move.kind)) return { to: place };
  if (READS_TO.includes(move.kind)) {
    const to = move.to === undefined ? undefined : placeOf(move.to);
    return { from: place, ...(to === undefined ? {} : { to }) };
  }
  return isCharge(move) || move.kind === "invoice total" ? {} : { from: place };
};

const COSTS: readonly MoveKind[] = ["opening", "purchase", "freight", "tax", "credit", "invoice total", "return"];

const nameText = (name: Name | undefined): string => (name === undefined ? "" : String(name));

const costFault = ({ kind, cost }: MaybeMove<unknown>, facts: Facts): Fault | undefined => {
  if (kind === undefined) return undefined;
  if (COSTS.includes(kind)) return cost === undefined ? problem("no-cost", facts) : undefined;
  return cost === undefined || kind === "offcut" ? undefined : problem("cost-at-average", { ...facts, cost: moneyText(cost) });
};

type Facts = Readonly<Record<string, string | number>>;

const noQuantity = (quantity: number | undefined, facts: Facts): Fault =>
  problem("no-quantity", {
    ...facts,
    read: quantity === undefined ? "empty or 0" : '"none"',
    wanted: facts["kind"] === "count" ? 'how many were counted, or "none"' : "how many, more than 0",
  });

const quantityFault = (move: MaybeMove<unknown>, facts: Facts): Fault | undefined => {
  const { kind, quantity, cost } = move;
  if (!isOfGoods(kind)) return quantity === undefined || quantity === 0 ? undefined : problem("quantity-of-money", { ...facts, quantity });
  if (move.item === undefined) return problem("no-item", facts);
  if (quantity === undefined || (quantity === 0 && kind !== "count")) return noQuantity(quantity, facts);
  const isNegative = cost?.isNegative() === true;
  const isOpposed = kind === "purchase" ? cost !== undefined && quantity < 0 !== isNegative : isNegative && quantity > 0;
  if (isOpposed) return problem("signs-differ", { ...facts, quantity, cost: moneyText(cost ?? ZERO) });
  return quantity < 0 && kind !== "purchase" ? problem("quantity-of-nothing", { ...facts, quantity }) : undefined;
};

const unitFault = ({ item, unit, kind }: MaybeMove<unknown>, articles: Articles, isConvertible: boolean): Fault | undefined => {
  if (item === undefined || !isOfGoods(kind)) return undefined;
  const article = articles.get(goodsKey(item));
  if (article?.unit === undefined) return undefined;
  const facts = { item: nameText(article.name), unit, other: unitName(article) };
  if (unit === "") return problem("unit-is-empty", facts);
  return isConvertible ? undefined : problem("units-differ", facts);
};

const NAMED = /[\p{L}\p{N}]/u;

/** What to write in the place of a name in marks alone: a dash may mean nothing, and a question mark that nobody knows. */
const instead = (column: "job" | "item" | "to" | "invoice" | "of", kind: MoveKind | undefined): string => {
  if (column === "item") return isOfGoods(kind) ? "name the goods" : "name the goods, or leave it empty";
  if (column === "of") return kind === "offcut" ? "name what the offcut was cut from" : "leave it empty";
  if (column === "invoice") return "write the number of the paper, or leave it empty";
  if (column === "to") return READS_TO.includes(kind) ? "write the job it goes to, shop or rack" : "leave it empty";
  return "write the job or shop, or leave it empty for the rack";
};

/** A name in marks alone, such as `-` or `?`, is nobody's: money would gather under it unseen. */
const nameFault = ({ kind, job, item, to, invoice, of }: MaybeMove<unknown>): Fault | undefined => {
  for (const [column, name] of [["job", job], ["item", item], ["to", to], ["invoice", invoice], ["of", of]] as const)
    if (name !== undefined && !NAMED.test(String(name)))
      return problem("marks-alone", { column, name: nameText(name), instead: instead(column, kind) });
  return undefined;
};

const placeFault = (move: MaybeMove<unknown>, { from, to }: Ends, placeOf: PlaceOf, facts: Facts): Fault | undefined => {
  const { kind, job, to: written } = move;
  for (const [column, name] of [["job", job], ["to", written]] as const)
    if (name !== undefined && placeOf(name) === undefined) return problem("own-name", { ...facts, column, name: nameText(name) });
  const place = placeOf(job) ?? RACK;
  const isRack = place.kind === "rack";
  if (isRack && (kind === "issue" || kind === "transfer")) return problem("job-missing", facts);
  if (!isRack && kind === "count") return problem("count-off-the-rack", { ...facts, place: nameText(place.name) });
  if (READS_TO.includes(kind)) {
    if (written === undefined) return problem("to-missing", facts);
    return kind === "transfer" && from?.key === to?.key ? problem("same-place", { ...facts, to: nameText(written) }) : undefined;
  }
  const isSaidAgain = written !== undefined && GOES_TO_JOB.includes(kind) && placeOf(written)?.key === place.key;
  return written === undefined || isSaidAgain || !isOfGoods(kind) ? undefined : problem("to-not-read", { ...facts, to: nameText(written) });
};

const offcutFault = ({ kind, item, of, share }: MaybeMove<unknown>, facts: Facts): Fault | undefined => {
  if (kind !== "offcut") return undefined;
  if (of === undefined) return problem("of-missing", facts);
  if (item !== undefined && goodsKey(item) === goodsKey(of)) return problem("of-itself", facts);
  if (share === undefined) return problem("share-missing", { ...facts, of: nameText(of) });
  return share > 1 ? problem("share-over-one", { ...facts, of: nameText(of), share }) : undefined;
};

/** What is wrong with a row by itself, whatever the others come to. */
export const ownFault = (
  move: MaybeMove<unknown>, ends: Ends, placeOf: PlaceOf, articles: Articles, isConvertible: boolean,
): Fault | undefined => {
  const { kind, item, invoice } = move;
  const known = item === undefined ? undefined : articles.get(goodsKey(item))?.name;
  const facts = { kind: kind ?? "", item: nameText(known ?? item) || (kind ?? "") };
  const isFreeTotal = kind === "invoice total" && invoice === undefined;
  return (
    nameFault(move) ??
    placeFault(move, ends, placeOf, facts) ??
    quantityFault(move, facts) ??
    costFault(move, facts) ??
    unitFault(move, articles, isConvertible) ??
    offcutFault(move, facts) ??
    (isFreeTotal ? problem("no-invoice", facts) : undefined)
  );
};
