import { type BadRow, besideBadRows, isBadRow } from "../bad-row";
import { blankNote, INCLUDED } from "../goods/meant-nothing";
import { joinedNotes, suspectNote } from "../goods/near-names";
import { amountFor, figuresFor, isListed, type Listed, listedFigure, type NoFigure, notListed } from "../goods/per-unit-list";
import { type Exact, exact } from "../length/exact";
import type { Problem } from "../problem";

export interface Work {
  readonly item: string | number;
  /** Absent: 0 or empty, which a host may not tell apart. 0: none, in words. */
  readonly quantity?: number;
  readonly unit: string;
  readonly row: number;
}

export interface Rate {
  readonly item: string | number;
  /** Hours for one. Absent: 0 or empty, which a host may not tell apart. 0: included elsewhere, in words. */
  readonly hours?: number;
  /** Empty: the rate fits any unit. */
  readonly unit: string;
  readonly row: number;
}

/** Hours of a piece of work, or what is wrong with it or its rate. */
export interface HoursLine<Bad> {
  readonly item: string;
  readonly quantity?: Exact;
  readonly unit: "hour";
  readonly hoursEach?: Exact | typeof INCLUDED;
  readonly note?: string;
  readonly bad?: Bad | Problem<NoFigure>;
}

const noteOfNothing = (quantity: number | undefined, { isBlank }: Listed): string =>
  blankNote([...(quantity === undefined ? ["quantity"] : []), ...(isBlank ? ["hours"] : [])], isBlank, "no hours here");

/**
 * Hours of every piece of work by the shop's own rates; work without a rate is named in its row, and what is included says so in place of
 * its hours.
 */
export const hours = <Bad>(work: readonly (Work | BadRow<Bad>)[], rates: readonly (Rate | BadRow<Bad>)[]): readonly HoursLine<Bad>[] => {
  const figures = rates.map((row) => (isBadRow(row) ? row : { ...row, figure: exact(row.hours ?? 0), isBlank: row.hours === undefined }));
  const { list, near, isOfPieces } = figuresFor(work, figures, "rates");
  const lineOf = (row: Work): HoursLine<Bad> => {
    const item = String(row.item);
    const found = listedFigure(list, { ...row, isOfPieces }) ?? notListed(list, row.item);
    if (!isListed(found)) return { item, unit: "hour", bad: found };
    const isMeant = row.quantity === 0 || (found.figure.isZero() && !found.isBlank);
    return {
      item,
      quantity: amountFor(exact(row.quantity ?? 0).times(found.figure), row.unit, found),
      unit: "hour",
      hoursEach: isMeant ? INCLUDED : amountFor(found.figure, row.unit, found),
      note: joinedNotes(isMeant ? "" : noteOfNothing(row.quantity, found), suspectNote(near(row.item))),
    };
  };
  return besideBadRows(work, (good) => good.map(lineOf), ({ label, bad }): HoursLine<Bad> => ({ item: String(label), unit: "hour", bad }));
};
