import { plainMarks } from "../../goods/plain-marks";
import { type Length } from "../../length/length";
import { type Problem, problem } from "../../problem";
import { called, type Stock } from "../cutting-job";
import { marksDown, marksUp } from "../mark";
import { edgeTrimOf, type SheetJob, type SheetPiece, sizeOnSheet } from "./sheet-job";

export type ImpossibleSheet =
  | "piece-without-width" | "stock-without-width" | "stock-without-thickness" | "no-stock-of-grade" | "no-stock-available"
  | "piece-too-thick" | "piece-across-the-grain" | "piece-fits-no-sheet" | "piece-fits-no-available-sheet";

/** Rows that are planned by themselves: they share no sheet with others. */
export interface SheetPart {
  readonly pieces: readonly number[];
  readonly stock: readonly number[];
}

const fitsLying = (job: SheetJob, stock: Stock, piece: SheetPiece, turned: boolean): boolean => {
  const size = sizeOnSheet(piece, turned);
  const usable = (length: Length, trim: Length): number => marksDown(length, job.unit) - 2 * marksUp(trim, job.unit);
  return (
    marksUp(size.length, job.unit) <= usable(stock.length, job.trim) &&
    marksUp(size.width, job.unit) <= usable(stock.width!, edgeTrimOf(job))
  );
};

const isThickEnough = (stock: Stock, { thickness }: SheetPiece): boolean =>
  thickness === undefined || (stock.thickness !== undefined && stock.thickness.gte(thickness));

/** Whether a piece can be cut from a sheet of this row. */
export const isTaken = (job: SheetJob, stock: Stock, piece: SheetPiece): boolean =>
  isThickEnough(stock, piece) && (fitsLying(job, stock, piece, false) || (piece.turns && fitsLying(job, stock, piece, true)));

const sizesMissing = (job: SheetJob): Problem<ImpossibleSheet> | undefined => {
  const at = job.pieces.findIndex(({ width }) => width === undefined);
  const piece = job.pieces[at];
  if (piece !== undefined) return problem("piece-without-width", { piece: called(piece.label, at), length: piece.length });
  for (const [row, stock] of job.stock.entries()) {
    const grade = plainMarks(stock.grade);
    const asking = (size: "width" | "thickness"): number =>
      job.pieces.findIndex((each) => each[size] !== undefined && plainMarks(each.grade) === grade);
    for (const size of ["width", "thickness"] as const) {
      const first = asking(size);
      if (stock[size] !== undefined || first < 0 || stock.available === 0) continue;
      return problem(size === "width" ? "stock-without-width" : "stock-without-thickness", {
        stock: called(stock.label, row), length: stock.length, piece: called(job.pieces[first]!.label, first),
        size: job.pieces[first]![size]!,
      });
    }
  }
  return undefined;
};

/** Why no sheet there is takes a piece. */
const takenByNone = (job: SheetJob, row: number): Problem<ImpossibleSheet> => {
  const piece = job.pieces[row]!;
  const facts = { piece: called(piece.label, row), length: piece.length, width: piece.width! };
  const ofGrade = job.stock.filter(({ grade }) => plainMarks(grade) === plainMarks(piece.grade));
  const there = ofGrade.filter(({ available }) => available > 0);
  if (there.length === 0)
    return problem(ofGrade.length === 0 ? "no-stock-of-grade" : "no-stock-available", { ...facts, grade: piece.grade });
  const thick = there.filter((stock) => isThickEnough(stock, piece));
  if (thick.length === 0) {
    const thickest = there.reduce((most, { thickness }) => (thickness!.gt(most) ? thickness! : most), there[0]!.thickness!);
    return problem("piece-too-thick", { ...facts, thickness: piece.thickness!, thickest });
  }
  if (thick.some((stock) => fitsLying(job, stock, piece, true))) return problem("piece-across-the-grain", facts);
  const largest = (of: readonly Stock[]): Stock =>
    of.reduce((most, each) => (each.length.times(each.width!).gt(most.length.times(most.width!)) ? each : most));
  const sizes = (stock: Stock) => ({ sheetLength: stock.length, sheetWidth: stock.width! });
  const absent = ofGrade.find((stock) => stock.width !== undefined && isTaken(job, stock, piece));
  return absent === undefined
    ? problem("piece-fits-no-sheet", { ...facts, ...sizes(largest(thick)) })
    : problem("piece-fits-no-available-sheet", { ...facts, ...sizes(absent) });
};

/** The parts of a job that share no sheet: by grade, thickness and size. */
export const sheetParts = (job: SheetJob): SheetPart[] | Problem<ImpossibleSheet> => {
  const missing = sizesMissing(job);
  if (missing !== undefined) return missing;
  const parts: { pieces: number[]; stock: Set<number> }[] = [];
  for (const [row, piece] of job.pieces.entries()) {
    const taking = job.stock.flatMap((stock, at) =>
      stock.available > 0 && plainMarks(stock.grade) === plainMarks(piece.grade) && isTaken(job, stock, piece) ? [at] : [],
    );
    if (taking.length === 0) return takenByNone(job, row);
    const sharing = parts.filter(({ stock }) => taking.some((at) => stock.has(at)));
    const [first] = sharing;
    if (first === undefined) {
      parts.push({ pieces: [row], stock: new Set(taking) });
      continue;
    }
    first.pieces.push(row);
    for (const at of taking) first.stock.add(at);
    for (const other of sharing.slice(1)) {
      first.pieces.push(...other.pieces);
      for (const at of other.stock) first.stock.add(at);
      parts.splice(parts.indexOf(other), 1);
    }
  }
  return parts.map(({ pieces, stock }) => ({ pieces: pieces.sort((a, b) => a - b), stock: [...stock].sort((a, b) => a - b) }));
};
