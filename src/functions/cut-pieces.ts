import type { Act, PieceKind } from "../solver/fit/acts";
import type { Outline } from "../solver/fit/outline";
import type { Unit } from "../solver/length/length";
import { ACT_COLUMNS, type Made } from "./act-words";
import { call } from "./call";
import { type Answer, type AnswerCells, isFailed } from "./cells";
import type { Declaration } from "./declare";
import { MARKS } from "./fit/marks";
import { RISERMARKS } from "./fit/risermarks";

type Column = keyof typeof ACT_COLUMNS;

/** An act as its row on the sheet has it, every cell as text, with what the words are said of. */
export interface PieceAct {
  readonly act?: Act;
  readonly cells: Readonly<Record<Column, string>>;
}

/** One tread or riser: what is done to make it, and its face once it is made. */
export interface CutPiece {
  readonly kind: PieceKind;
  readonly step: string;
  readonly unit: Unit;
  readonly acts: readonly PieceAct[];
  /** Undefined where the step has no answer. */
  readonly outline?: Outline;
}

const COLUMNS = Object.keys(ACT_COLUMNS) as Column[];

const textOf = (cell: Answer | undefined): string => (cell === undefined || isFailed(cell) ? "" : String(cell));

const cellsOf = (row: readonly Answer[] | undefined): PieceAct["cells"] =>
  Object.fromEntries(COLUMNS.map((column, place) => [column, textOf(row?.[place])])) as PieceAct["cells"];

const isTable = (answer: Answer | AnswerCells): answer is AnswerCells => Array.isArray(answer);

/** The rows of a call as they are written, beside what each is made of; or the sentence of the whole call. */
const rowsOf = (kind: PieceKind, passed: readonly unknown[]): readonly (PieceAct & Made)[] | string => {
  let made: readonly { readonly made: Made }[] = [];
  const declaration = kind === "tread" ? MARKS : RISERMARKS;
  const solve = (given: never): readonly object[] => {
    const rows = (declaration.solve as (of: never) => readonly object[])(given);
    made = rows as typeof made;
    return rows;
  };
  const answer = call({ ...declaration, solve } as unknown as Declaration, passed);
  if (!isTable(answer)) return isFailed(answer) ? answer.says : String(answer);
  // With headings the first row is theirs.
  const cells = answer.slice(answer.length - made.length);
  return made.map((row, place) => ({ ...row.made, cells: cellsOf(cells[place]) }));
};

const isFirst = ({ cells }: PieceAct): boolean => cells.number === "" || cells.number === "1";

/** The pieces a call of MARKS or RISERMARKS makes, in its order, or the sentence it answers instead. */
export const cutPieces = (kind: PieceKind, passed: readonly unknown[]): readonly CutPiece[] | string => {
  const rows = rowsOf(kind, passed);
  if (typeof rows === "string") return rows;
  const steps: (PieceAct & Made)[][] = [];
  for (const row of rows) {
    if (isFirst(row)) steps.push([row]);
    else steps.at(-1)?.push(row);
  }
  return steps.flatMap((acts): readonly CutPiece[] => {
    const [first] = acts;
    if (first === undefined) return [];
    const { cells, outline } = first;
    const unit: Unit = cells.unit === "mm" ? "mm" : "in";
    return [{ kind, step: cells.step, unit, acts, ...(outline === undefined ? {} : { outline }) }];
  });
};
