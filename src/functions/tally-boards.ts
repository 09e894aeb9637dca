import type { Length } from "../solver/length/length";
import { lengthIn, lengthOf, measure, type Unit } from "../solver/length/length";
import type { Stretch } from "../solver/yield/tally/clear-stretches";
import { boardName, type TallyBoard } from "../solver/yield/tally/tally-board";
import { type Failed, failed, isFailed } from "./cells";
import type { RowOf } from "./columns";
import { readLength } from "./read-value";
import { numberText, quoted, say } from "./say";
import type { tally } from "./tables";

export type TallyRow = RowOf<typeof tally.columns> & { readonly row: number };

/** A board with what stood in its cells. */
export type GivenBoard = TallyBoard & { readonly given: TallyRow };

/** No board is thicker; a date is a larger number. Common practice, no source. */
const THICKEST = 16;
/** The longest boards sold are some 24 ft, the widest some 3 ft; beyond these the unit is wrong. Common practice, no source. */
const LONGEST = 720;
const WIDEST = 72;

const QUARTERS = /^\s*(\d+)\s*[/\u2044\u2215]\s*4\s*$/;

/** Lumber is called in quarters of an inch, whatever the other lengths are in. */
const thicknessOf = (name: string, cell: string | number, unit: Unit): Length | Failed => {
  if (typeof cell === "number" && lengthIn(lengthOf(cell, unit), "in").gt(THICKEST))
    return failed(`${name}: ${numberText(cell)} is over ${THICKEST} in; the cell may hold a date: write '5/4 as text`);
  const quarters = typeof cell === "string" ? QUARTERS.exec(cell) : null;
  if (quarters !== null) {
    const found = lengthOf(Number(quarters[1]), "in").div(4);
    return found.isZero() || lengthIn(found, "in").gt(THICKEST) ? failed(say.mustBe(name, "4/4 to 64/4", cell)) : found;
  }
  const read = readLength(name, cell, unit, { sign: "positive" });
  if (isFailed(read)) return read;
  return lengthIn(read, "in").gt(THICKEST) ? failed(say.mustBe(name, `${THICKEST} in or less`, cell)) : read;
};

const TO = /^(.*\S)\s+to\s+(\S.*)$/i;

/** Ranges as 31 to 34; 88 1/2 to 92. A dash is refused: 8-11 is feet and inches too, and 3-4 a date. */
const rangesOf = (name: string, text: string | undefined, unit: Unit): readonly Stretch[] | Failed => {
  const found: Stretch[] = [];
  for (const part of (text ?? "").split(";").map((one) => one.trim())) {
    if (part === "") continue;
    const ends = TO.exec(part);
    if (ends === null) return failed(`${name}: read ${quoted(part)}, which is no range; write 31 to 34, several as 31 to 34; 88 1/2 to 92`);
    const from = readLength(name, ends[1] ?? "", unit, { sign: "not negative" });
    if (isFailed(from)) return from;
    const to = readLength(name, ends[2] ?? "", unit, { sign: "positive" });
    if (isFailed(to)) return to;
    found.push({ from, to });
  }
  return found;
};

const tooLarge = (name: string, length: Length, most: number, unit: Unit): Failed | undefined => {
  const limit = numberText(measure(lengthOf(most, "in"), unit));
  return lengthIn(length, "in").gt(most) ? failed(say.implausible(name, `over ${limit} ${unit}`, measure(length, unit), unit)) : undefined;
};

const boardOf = (given: TallyRow, unit: Unit): GivenBoard | Failed => {
  const { thickness: written, boardFeet, defects: spoilt, clear: usable, ...row } = given;
  const name = boardName(given);
  const implausible =
    tooLarge(`length: board ${name}`, given.length, LONGEST, unit) ?? tooLarge(`width: board ${name}`, given.width, WIDEST, unit);
  if (implausible !== undefined) return implausible;
  const thickness = thicknessOf(`thickness: board ${name}`, written, unit);
  if (isFailed(thickness)) return thickness;
  const defects = rangesOf(`defects: board ${name}`, spoilt, unit);
  if (isFailed(defects)) return defects;
  const clear = rangesOf(`clear: board ${name}`, usable, unit);
  if (isFailed(clear)) return clear;
  return { ...row, written, thickness, defects, clear, given, ...(boardFeet === undefined ? {} : { paperFeet: boardFeet }) };
};

/** The boards of a tally, or the sentence of the first cell that is none of what it should be; bare numbers are in the unit. */
export const tallyBoards = (rows: readonly TallyRow[], unit: Unit = "in"): readonly GivenBoard[] | Failed => {
  const boards: GivenBoard[] = [];
  for (const row of rows) {
    const board = boardOf(row, unit);
    if (isFailed(board)) return board;
    boards.push(board);
  }
  return boards;
};
