import type { SheetJob } from "../../../../src/solver/yield/sheets/sheet-job";
import type { SheetPartProof } from "../../../../src/solver/yield/sheets/sheet-proof";
import { down, MARK, up, whole } from "../checker-numbers";

/** A kind of piece in marks. */
export interface CheckedPanel {
  readonly length: number;
  readonly width: number;
  readonly wanted: number;
  readonly turns: boolean;
}

/** A kind of sheet in marks, between its trims; the price in billionths. */
export interface CheckedSheet {
  readonly length: number;
  readonly width: number;
  readonly price: number;
  readonly available: number;
  /** Whether grade and thickness do for each kind of piece. */
  readonly suits: readonly boolean[];
}

/** One part of a job as the checker of certificates reckons with it. */
export interface CertificatePart {
  readonly panels: readonly CheckedPanel[];
  readonly sheets: readonly CheckedSheet[];
  readonly pieces: number;
  readonly kerf: number;
  readonly ways: readonly ("rip" | "crosscut")[];
}

type Decimal = Parameters<typeof whole>[0];

const plainGrade = (grade: string): string => grade.toLowerCase().replace(/\s+/g, "");

/** Sizes of a job in whole marks, by row. */
const sizesOf = (job: SheetJob) => {
  const mark = MARK[job.unit];
  const upward = (size: Decimal): number => Number(up(whole(size), mark) / mark);
  const downward = (size: Decimal): number => Number(down(whole(size), mark) / mark);
  const [ends, edges] = [upward(job.trim), upward(job.edgeTrim ?? job.trim)];
  return {
    piece: (row: number) => {
      const { length, width } = job.pieces[row]!;
      return { length: upward(length), width: upward(width!) };
    },
    sheet: (row: number) => {
      const { length, width } = job.stock[row]!;
      return { length: downward(length) - 2 * ends, width: downward(width!) - 2 * edges };
    },
    kerf: upward(job.kerf),
  };
};

const isSuited = (job: SheetJob, sheet: number, piece: number): boolean => {
  const [stock, asked] = [job.stock[sheet]!, job.pieces[piece]!];
  const isThick = asked.thickness === undefined || (stock.thickness !== undefined && whole(stock.thickness) >= whole(asked.thickness));
  return isThick && plainGrade(stock.grade) === plainGrade(asked.grade);
};

/** Whether a piece can be cut from a sheet by itself. */
const isCutFrom = (job: SheetJob, sheet: number, piece: number): boolean => {
  if (job.stock[sheet]!.available === 0 || job.stock[sheet]!.width === undefined || !isSuited(job, sheet, piece)) return false;
  const sizes = sizesOf(job);
  const [room, { length, width }] = [sizes.sheet(sheet), sizes.piece(piece)];
  const fits = (along: number, across: number): boolean => along <= room.length && across <= room.width;
  return fits(length, width) || (job.pieces[piece]!.turns && fits(width, length));
};

const areAlike = (rows: readonly number[], keyOf: (row: number) => string): boolean => new Set(rows.map(keyOf)).size === 1;

const sorted = (rows: readonly number[]): number[] => [...rows].sort((one, other) => one - other);

/** What is wrong with how the rows of a job are said to be parted and alike. */
export const partingFaults = (job: SheetJob, parts: readonly SheetPartProof[]): string[] => {
  const sizes = sizesOf(job);
  const pieceRows = parts.flatMap((part) => part.pieceRows.flat());
  const stockRows = parts.flatMap((part) => part.stockRows.flat());
  if (sorted(pieceRows).join() !== job.pieces.map((_, row) => row).join()) return ["not every piece is in one part"];
  if (new Set(stockRows).size !== stockRows.length || stockRows.some((row) => job.stock[row]?.width === undefined))
    return ["a row of sheets is in two parts, or is not there"];
  return parts.flatMap((part) => {
    const [pieces, stock] = [part.pieceRows.flat(), part.stockRows.flat()];
    const pieceKey = (row: number): string =>
      JSON.stringify([sizes.piece(row), job.pieces[row]!.turns, stock.map((sheet) => isSuited(job, sheet, row))]);
    const sheetKey = (row: number): string => JSON.stringify([sizes.sheet(row), pieces.map((piece) => isSuited(job, row, piece))]);
    const others = [...job.stock.keys()].filter((sheet) => !stock.includes(sheet));
    const isCutFromOther = others.some((sheet) => pieces.some((piece) => isCutFrom(job, sheet, piece)));
    return [
      ...(part.pieceRows.every((rows) => areAlike(rows, pieceKey)) ? [] : ["pieces of one kind differ"]),
      ...(part.stockRows.every((rows) => areAlike(rows, sheetKey)) ? [] : ["sheets of one kind differ"]),
      ...(isCutFromOther ? ["a piece can be cut from sheets of no part"] : []),
    ];
  });
};

/** A part whose rows are sound. Of sheets said to be alike the least price counts for all. */
export const certificatePart = (job: SheetJob, { pieceRows, stockRows }: SheetPartProof): CertificatePart => {
  const sizes = sizesOf(job);
  const first = pieceRows.map(([row]) => row!);
  const panels = pieceRows.map((rows, kind): CheckedPanel => ({
    ...sizes.piece(first[kind]!), turns: job.pieces[first[kind]!]!.turns,
    wanted: rows.reduce((sum, row) => sum + job.pieces[row]!.quantity, 0),
  }));
  const pieces = panels.reduce((sum, { wanted }) => sum + wanted, 0);
  const sheets = stockRows.map((rows): CheckedSheet => ({
    ...sizes.sheet(rows[0]!),
    price: Math.min(...rows.map((row) => Number(whole(job.stock[row]!.price)))),
    available: Math.min(pieces, rows.reduce((sum, row) => sum + job.stock[row]!.available, 0)),
    suits: first.map((piece) => isSuited(job, rows[0]!, piece)),
  }));
  return { panels, sheets, pieces, kerf: sizes.kerf, ways: job.first === "either" ? ["rip", "crosscut"] : [job.first] };
};
