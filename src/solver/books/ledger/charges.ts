import { allocation } from "../../bid/allocation";
import { goodsKey } from "../../goods/goods-key";
import { plainMarks } from "../../goods/plain-marks";
import type { Exact } from "../../length/exact";
import { problem } from "../../problem";
import { dayText, monthText } from "../day";
import { type Article, moneyText } from "./article";
import type { MaybeMove, MoveKind, Name } from "./move";
import type { Fault } from "./own-fault";
import type { Place } from "./place";
import { ZERO } from "./stock";

export type ChargeKind = Extract<MoveKind, "freight" | "tax" | "credit">;

/** A line of an invoice: goods that charges may belong to. Wrong rows have no cost that could be shared by. */
export interface PurchaseLine {
  readonly row: number;
  readonly day: number;
  readonly month: string;
  readonly article: Article;
  readonly place: Place;
  readonly quantity: Exact;
  readonly cost: Exact;
  readonly invoice: string;
  readonly invoiceName: Name | undefined;
  /** Its shares of the charges of its month, by kind. */
  readonly shares: Record<ChargeKind, Exact>;
  /** The row that is wrong with it, its own or that of a charge or a line beside it. */
  badRow?: number;
}

/** Lines of one item, place and month: they share as one, so that it does not matter how an invoice is split into lines. */
interface LineGroup {
  readonly article: Article;
  readonly place: Place;
  readonly month: string;
  readonly lines: PurchaseLine[];
  cost: Exact;
  quantity: Exact;
}

/** What a late charge brings to goods of an earlier month. */
export interface LateShare {
  readonly article: Article;
  readonly place: Place;
  readonly bought: Exact;
  readonly amount: Exact;
}

/** A charge with the lines it falls on. */
export interface Charge {
  readonly move: MaybeMove<unknown>;
  readonly kind: ChargeKind;
  readonly groups: readonly LineGroup[];
  readonly lines: readonly PurchaseLine[];
  fault?: Fault;
  late: readonly LateShare[];
  /** Its shares in goods of its month, in words. */
  now: readonly string[];
}

export const invoiceKey = (invoice: Name | undefined): string => (invoice === undefined ? "" : plainMarks(String(invoice)));

/** Shares of all charges together: more take longer than a cell should. */
const MOST_SHARES = 200_000;
/** Shares that a note names. */
const MOST_NAMED = 12;

const listOf = <Key, Value>(lists: Map<Key, Value[]>, key: Key): Value[] => {
  const list = lists.get(key) ?? [];
  lists.set(key, list);
  return list;
};

const grouped = (lines: readonly PurchaseLine[]): readonly LineGroup[] => {
  const groups = new Map<string, LineGroup>();
  for (const line of lines) {
    const { article, place, month } = line;
    const key = `${month}\n${place.key}\n${article.key}`;
    const group = groups.get(key) ?? { article, place, month, lines: [], cost: ZERO, quantity: ZERO };
    group.lines.push(line);
    group.cost = group.cost.plus(line.cost);
    group.quantity = group.quantity.plus(line.quantity);
    groups.set(key, group);
  }
  return [...groups.values()];
};

/** The lines of a charge's paper that it falls on, or why there are none. */
const target = (
  move: MaybeMove<unknown>, onPaper: readonly PurchaseLine[], place: Place | undefined,
): readonly PurchaseLine[] | Fault => {
  const { day, item, invoice } = move;
  const facts = { kind: move.kind ?? "", date: dayText(day), invoice: String(invoice ?? ""), month: "", beside: "" };
  const beside = `${item === undefined ? "" : ` of ${String(item)}`}${place === undefined ? "" : ` for ${String(place.name)}`}`;
  const isMeant = (line: PurchaseLine): boolean =>
    (item === undefined || line.article.key === goodsKey(item)) && (place === undefined || line.place.key === place.key);
  const there = item === undefined && place === undefined ? onPaper : onPaper.filter(isMeant);
  const [first] = there;
  if (first === undefined) return problem("no-purchases", { ...facts, beside, on: invoice === undefined ? dayText(day) : String(invoice) });
  if (invoice === undefined && there.some((line) => line.invoice !== first.invoice)) return problem("several-invoices", facts);
  const ofCharge = monthText(day);
  const isKnown = ({ month }: PurchaseLine): boolean => month <= ofCharge;
  const known = there.every(isKnown) ? there : there.filter(isKnown);
  return known.length === 0 ? problem("before-purchases", { ...facts, month: first.month }) : known;
};

/** Charges that cannot be shared make their lines uncertain, and lines that are wrong the charges over them, until all is said. */
const spreadFaults = (charges: readonly Charge[]): void => {
  let isSettled = false;
  while (!isSettled) {
    isSettled = true;
    for (const charge of charges) {
      const bad = charge.lines.find(({ badRow }) => badRow !== undefined);
      if (charge.fault === undefined && bad?.badRow !== undefined) {
        charge.fault = problem("after-bad-row", { item: charge.kind, first: bad.badRow });
        isSettled = false;
      }
      if (charge.fault === undefined) continue;
      const { details } = charge.fault;
      const badRow = charge.fault.problem === "after-bad-row" ? Number(details["first"]) : charge.move.row;
      for (const line of charge.lines) {
        if (line.badRow !== undefined || line.month !== monthText(charge.move.day)) continue;
        line.badRow = badRow;
        isSettled = false;
      }
    }
  }
};

/** What a charge is on, in words. */
export const chargedOn = ({ move, lines: [first] }: Charge): string =>
  first === undefined || first.invoice === "" ? `the purchases of ${dayText(move.day)}` : String(first.invoiceName);

/** So many of some shares as a note has room for. */
export const namedShares = (shares: readonly string[], separator: string): string =>
  shares.length > MOST_NAMED
    ? [...shares.slice(0, MOST_NAMED), `and ${shares.length - MOST_NAMED} more`].join(separator)
    : shares.join(separator);

const share = (charge: Charge): void => {
  const { move, kind, groups } = charge;
  const month = monthText(move.day);
  const amounts = allocation(move.cost ?? ZERO, groups.map(({ cost }) => cost));
  const names = new Map<string, number>();
  for (const { article } of groups) names.set(article.key, (names.get(article.key) ?? 0) + 1);
  const now: string[] = [];
  const late: LateShare[] = [];
  groups.forEach(({ article, place, month: ofGroup, lines, quantity }, at) => {
    const amount = amounts[at] ?? ZERO;
    if (ofGroup !== month) {
      late.push({ article, place, amount, bought: quantity });
      return;
    }
    const parts = allocation(amount, lines.map(({ cost }) => cost));
    lines.forEach((line, index) => (line.shares[kind] = line.shares[kind].plus(parts[index] ?? ZERO)));
    const where = (names.get(article.key) ?? 0) > 1 ? `${String(place.name)} ` : "";
    now.push(`${where}${String(article.name)} ${moneyText(amount)}`);
  });
  charge.late = late;
  charge.now = now;
};

const creditedTooMuch = (charges: readonly Charge[]): void => {
  for (const charge of charges) {
    if (charge.fault !== undefined) continue;
    const over = charge.lines.find(({ cost, shares }) => cost.plus(shares.freight).plus(shares.tax).minus(shares.credit).isNegative());
    if (over === undefined || (charge.kind === "credit") === charge.move.cost?.isNegative()) continue;
    charge.fault = problem("credited-too-much", {
      item: String(over.article.name),
      cost: moneyText(charge.move.cost ?? ZERO),
      value: moneyText(over.cost.plus(over.shares.freight).plus(over.shares.tax)),
    });
  }
};

/** Finds the lines of each charge and shares it over them by their cost; what cannot be shared has a fault. */
export const sharedCharges = (
  moves: readonly MaybeMove<unknown>[], lines: readonly PurchaseLine[], faultOf: (move: MaybeMove<unknown>) => Fault | undefined,
  placeOf: (move: MaybeMove<unknown>) => Place | undefined,
): ReadonlyMap<number, Charge> => {
  const byInvoice = new Map<string, PurchaseLine[]>();
  const byDay = new Map<number, PurchaseLine[]>();
  for (const line of lines) {
    if (line.invoice !== "") listOf(byInvoice, line.invoice).push(line);
    listOf(byDay, line.day).push(line);
  }
  /** Charges of one paper fall on the same lines. */
  const groupsOf = new Map<readonly PurchaseLine[], readonly LineGroup[]>();
  let shares = 0;
  const charges = moves.map((move): Charge => {
    const kind = move.kind as ChargeKind;
    const { day, invoice } = move;
    const onPaper = (invoice === undefined ? byDay.get(day) : byInvoice.get(invoiceKey(invoice))) ?? [];
    // All of them are looked at, though the charge may be for one.
    shares += onPaper.length;
    const found = shares > MOST_SHARES ? [] : target(move, onPaper, placeOf(move));
    const isFound = !("problem" in found);
    const tooMany = shares > MOST_SHARES ? problem("too-many-shares", { most: MOST_SHARES }) : undefined;
    const fault = faultOf(move) ?? tooMany ?? (isFound ? undefined : found);
    const over = isFound ? found : [];
    const groups = groupsOf.get(over) ?? grouped(over);
    groupsOf.set(over, groups);
    const charge: Charge = { move, kind, lines: over, groups, late: [], now: [] };
    return fault === undefined ? charge : { ...charge, fault };
  });
  spreadFaults(charges);
  for (const charge of charges) if (charge.fault === undefined) share(charge);
  creditedTooMuch(charges);
  spreadFaults(charges);
  return new Map(charges.map((charge) => [charge.move.row, charge]));
};
