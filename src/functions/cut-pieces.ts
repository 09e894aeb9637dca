import { isBadRow } from "../solver/bad-row";
import type { Act, PieceKind } from "../solver/fit/acts";
import { closureLimits } from "../solver/fit/closure-limits";
import type { Outline } from "../solver/fit/outline";
import type { TreadReading } from "../solver/fit/tread-reading";
import type { Unit } from "../solver/length/length";
import { ACT_COLUMNS, actRows, type Made } from "./act-words";
import { call } from "./call";
import { type Answer, type AnswerCells, isFailed } from "./cells";
import type { Declaration } from "./declare";
import { type Across, acrossBy, doubts, type TakenReading } from "./doubt-of-step";
import { MARKS } from "./fit/marks";
import { RISERMARKS } from "./fit/risermarks";

type Column = keyof typeof ACT_COLUMNS;

/** An act as its row on the sheet has it, every cell as text, with what the words are said of. */
export interface PieceAct {
  readonly act?: Act;
  readonly cells: Readonly<Record<Column, string>>;
}

/** Of a step whose readings are to be taken again: the readings, and what they would make, to show what hangs on them. */
export interface Doubt {
  readonly readings: readonly TakenReading[];
  /** What two ways to one corner come to. */
  readonly across?: Across;
  readonly acts: readonly PieceAct[];
}

/** One tread or riser: what is done to make it, and its face once it is made. */
export interface CutPiece {
  readonly kind: PieceKind;
  readonly step: string;
  readonly unit: Unit;
  readonly acts: readonly PieceAct[];
  /** Undefined where the step has no answer. */
  readonly outline?: Outline;
  readonly doubt?: Doubt;
  /** What it is cut from, where that is known. */
  readonly wood?: string;
}

const COLUMNS = Object.keys(ACT_COLUMNS) as Column[];

const textOf = (cell: Answer | undefined): string => (cell === undefined || isFailed(cell) ? "" : String(cell));

const cellsOf = (row: readonly Answer[] | undefined): PieceAct["cells"] =>
  Object.fromEntries(COLUMNS.map((column, place) => [column, textOf(row?.[place])])) as PieceAct["cells"];

const isTable = (answer: Answer | AnswerCells): answer is AnswerCells => Array.isArray(answer);

type Row = PieceAct & Made;

/** What a call was given, as far as doubtful readings are concerned. */
interface Taken {
  readonly readings: readonly (TreadReading | { readonly bad: unknown; readonly label: string | number })[];
  readonly tape?: number;
  readonly unit: Unit;
}

/** The rows of a call as they are written, beside what each is made of; or the sentence of the whole call. */
const rowsOf = (kind: PieceKind, passed: readonly unknown[]): { readonly rows: readonly Row[]; readonly taken: Taken } | string => {
  let made: readonly { readonly made: Made }[] = [];
  let taken: Taken = { readings: [], unit: "in" };
  const declaration = kind === "tread" ? MARKS : RISERMARKS;
  const solve = (given: never): readonly object[] => {
    taken = given;
    const rows = (declaration.solve as (of: never) => readonly object[])(given);
    made = rows as typeof made;
    return rows;
  };
  const answer = call({ ...declaration, solve } as unknown as Declaration, passed);
  if (!isTable(answer)) return isFailed(answer) ? answer.says : String(answer);
  // With headings the first row is theirs.
  const cells = answer.slice(answer.length - made.length);
  return { taken, rows: made.map((row, place) => ({ ...row.made, cells: cellsOf(cells[place]) })) };
};

const isFirst = ({ cells }: PieceAct): boolean => cells.number === "" || cells.number === "1";

/** Rows of a step, of which the first has number 1 or is all there is. */
const stepsOf = (rows: readonly Row[]): readonly (readonly Row[])[] => {
  const steps: Row[][] = [];
  for (const row of rows) {
    if (isFirst(row)) steps.push([row]);
    else steps[steps.length - 1]?.push(row);
  }
  return steps;
};

/** An act that no sheet shows, in the words it would have there. */
const wordsOf = (row: object): PieceAct["cells"] => {
  const said = row as Readonly<Record<string, string | number | undefined>>;
  return Object.fromEntries(COLUMNS.map((column) => [column, String(said[column] ?? "")])) as PieceAct["cells"];
};

/** The readings of the steps that are to be read again, and what hangs on them. */
const doubtsOf = (kind: PieceKind, { readings, tape, unit }: Taken) => {
  const good = readings.filter((row) => !isBadRow(row)) as readonly TreadReading[];
  const said = doubts({ kind, rows: good, unit, division: closureLimits(tape, unit).division });
  return ({ asRead, cells }: Row, place: number): Doubt | undefined => {
    if (asRead === undefined) return undefined;
    const row = readings.slice(0, place).filter((one) => !isBadRow(one)).length;
    const { acts, closure } = asRead;
    const across = acrossBy(kind, good[row], closure, cells.note, unit);
    return {
      readings: said(row, cells.note),
      acts: actRows({ step: cells.step, acts }, unit).map((one) => ({ ...one.made, cells: wordsOf(one) })),
      ...(across === undefined ? {} : { across }),
    };
  };
};

/** The pieces a call of MARKS or RISERMARKS makes, in its order, or the sentence it answers instead. */
export const cutPieces = (kind: PieceKind, passed: readonly unknown[]): readonly CutPiece[] | string => {
  const found = rowsOf(kind, passed);
  if (typeof found === "string") return found;
  const doubtOf = doubtsOf(kind, found.taken);
  return stepsOf(found.rows).flatMap((acts, place): readonly CutPiece[] => {
    const [first] = acts;
    if (first === undefined) return [];
    const { cells, outline } = first;
    const unit: Unit = cells.unit === "mm" ? "mm" : "in";
    const doubt = doubtOf(first, place);
    return [{
      kind, step: cells.step, unit, acts, ...(outline === undefined ? {} : { outline }), ...(doubt === undefined ? {} : { doubt }),
    }];
  });
};
