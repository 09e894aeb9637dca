import { plainMarks } from "../../goods/plain-marks";
import { type Length } from "../../length/length";
import { type Problem, problem } from "../../problem";
import { called, type CuttingJob } from "../cutting-job";
import { marksDown, marksUp } from "../mark";

export type SideBySide = "like-pieces-side-by-side" | "pieces-side-by-side";

/** A piece by its row, with its width in whole marks. */
interface Across {
  readonly row: number;
  readonly width: Length;
  readonly marks: number;
}

/** The two narrowest pieces that can be cut from a row of stock. */
const narrowestTwo = (job: Pick<CuttingJob, "pieces" | "stock" | "trim" | "unit">, at: number): readonly Across[] => {
  const { unit } = job;
  const stock = job.stock[at]!;
  const usable = marksDown(stock.length, unit) - 2 * marksUp(job.trim, unit);
  const grade = plainMarks(stock.grade);
  return job.pieces
    .flatMap((piece, row): Across[] => {
      const { width, thickness, length } = piece;
      const isThick = thickness === undefined || (stock.thickness?.gte(thickness) ?? false);
      if (width === undefined || !isThick || plainMarks(piece.grade) !== grade || marksUp(length, unit) > usable) return [];
      return Array.from({ length: Math.min(piece.quantity, 2) }, () => ({ row, width, marks: marksUp(width, unit) }));
    })
    .sort((one, other) => one.marks - other.marks)
    .slice(0, 2);
};

/** Two pieces of a job that could lie side by side on a row of stock, a kerf between them. */
export const sideBySide = (
  job: Pick<CuttingJob, "pieces" | "stock" | "kerf" | "trim" | "unit">,
): Problem<SideBySide> | undefined => {
  const kerf = marksUp(job.kerf, job.unit);
  for (const [at, stock] of job.stock.entries()) {
    if (stock.width === undefined || stock.available === 0) continue;
    const [one, other] = narrowestTwo(job, at);
    if (one === undefined || other === undefined || one.marks + other.marks + kerf > marksDown(stock.width, job.unit)) continue;
    const name = ({ row }: Across): string | number => called(job.pieces[row]!.label, row);
    const of = stock.label === "" ? `stock number ${at + 1}` : stock.label;
    const facts = { piece: name(one), width: one.width, across: stock.width, stock: of };
    return one.row === other.row
      ? problem("like-pieces-side-by-side", facts)
      : problem("pieces-side-by-side", { ...facts, other: name(other), otherWidth: other.width });
  }
  return undefined;
};
