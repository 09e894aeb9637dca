import type { Exact } from "../../length/exact";
import { joinedNotes, type NearName, suspectNote } from "../../goods/near-names";
import { counted, unitName } from "./article";
import type { Ledger } from "./ledger";
import type { LedgerLine } from "./ledger-line";
import type { Name } from "./move";
import type { Fault } from "./own-fault";
import type { Place } from "./place";

/** A row of the ledger as it is shown. */
export interface StockLedgerRow<Bad> {
  readonly row: number;
  readonly date: string | number;
  readonly kind: string;
  readonly item: Name;
  readonly from: Name;
  readonly to: Name;
  readonly quantity: Exact | string;
  readonly unit: string;
  readonly cost?: Exact;
  readonly charges?: Exact;
  readonly value?: Exact;
  readonly average?: Exact;
  readonly onTheRack?: Exact;
  readonly note?: string;
  readonly bad?: Bad | Fault;
}

/** What a note says of a job whose name is like another's. */
export const jobSuspect = (place: Place | undefined, near: NearName): string => {
  const found = place?.kind === "job" ? near(place.name) : undefined;
  return found === undefined ? "" : `like job "${found.item}" in row ${found.row}: same job?`;
};

const shownRow = <Bad>(line: LedgerLine<Bad>, { nearGoods, nearJob }: Ledger<Bad>): StockLedgerRow<Bad> => {
  const { move, kind, article, from, to, quantity, onTheRack, rackValue } = line;
  const facts = {
    row: move.row,
    date: move.date?.given ?? "",
    kind,
    item: article?.name ?? move.item ?? "",
    from: from?.name ?? "",
    to: to?.name ?? "",
    quantity: quantity === undefined || article === undefined ? "" : counted(article, quantity),
    unit: article === undefined || quantity === undefined ? "" : unitName(article),
  };
  if (line.bad !== undefined) return { ...facts, bad: line.bad };
  const suspects = [
    article === undefined ? "" : suspectNote(nearGoods(article.name)),
    jobSuspect(from, nearJob),
    to === from ? "" : jobSuspect(to, nearJob),
  ];
  const held = onTheRack === undefined || article === undefined ? undefined : counted(article, onTheRack);
  return {
    ...facts,
    ...(line.cost === undefined ? {} : { cost: line.cost }),
    ...(line.charges === undefined ? {} : { charges: line.charges }),
    ...(line.value === undefined ? {} : { value: line.value }),
    ...(held === undefined ? {} : { onTheRack: held }),
    ...(held === undefined || held.isZero() || rackValue === undefined ? {} : { average: rackValue.div(held) }),
    note: joinedNotes(line.note, ...suspects),
  };
};

/** Every row of the moves, in the order of reckoning, with what it is worth: every figure of the other tables is a sum of these. */
export const stockLedger = <Bad>(books: Ledger<Bad>): readonly StockLedgerRow<Bad>[] => books.lines.map((line) => shownRow(line, books));
