import { type Exact } from "../length/exact";
import { type Length, lengthOf, type Unit } from "../length/length";

/** Plans are made on whole marks: finer than any saw stop, coarse enough for whole-number arithmetic (common practice, no source). */
const MARKS_PER: Readonly<Record<Unit, number>> = { in: 64, mm: 10 };

export const MARK_NAME: Readonly<Record<Unit, string>> = { in: "1/64 in", mm: "0.1 mm" };

/** One mark: 0.396875 mm or 0.1 mm, exact. */
const MARK: Readonly<Record<Unit, Length>> = { in: lengthOf(1, "in").div(MARKS_PER.in), mm: lengthOf(1, "mm").div(MARKS_PER.mm) };

/** The length of a whole number of marks, exact. */
export const lengthOfMarks = (marks: number, unit: Unit): Length => MARK[unit].times(marks);

const marks = (length: Length, unit: Unit): Exact => length.div(MARK[unit]);

export const isOnMark = (length: Length, unit: Unit): boolean => marks(length, unit).isInteger();

/** Whole marks that are not less than the length: for pieces, kerf and trim. */
export const marksUp = (length: Length, unit: Unit): number => marks(length, unit).ceil().toNumber();

/** Whole marks that are not more than the length: for stock. */
export const marksDown = (length: Length, unit: Unit): number => marks(length, unit).floor().toNumber();
