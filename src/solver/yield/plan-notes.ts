import type { Length } from "../length/length";
import type { CuttingJob } from "./cutting-job";
import { isOnMark, MARK_NAME } from "./mark";
import type { PlannedStick } from "./planned-sticks";

const markNotes = (job: CuttingJob): string[] => {
  const { unit } = job;
  const off = (length: Length): boolean => !isOnMark(length, unit);
  const notes: string[] = [];
  const mark = MARK_NAME[unit];
  if (job.pieces.some((piece) => off(piece.length))) notes.push(`pieces finer than ${mark} are planned rounded up to it`);
  if (job.stock.some((stock) => off(stock.length))) notes.push(`stock finer than ${mark} is planned rounded down to it`);
  if (off(job.kerf)) notes.push(`the kerf is planned rounded up to ${mark}`);
  if (off(job.trim)) notes.push(`the trim is planned rounded up to ${mark}`);
  return notes;
};

const sectionNotes = (job: CuttingJob, sticks: readonly PlannedStick[]): string[] => {
  const isThicker = (stock: number, piece: number): boolean => {
    const { thickness } = job.pieces[piece]!;
    return thickness !== undefined && (job.stock[stock]!.thickness?.gt(thickness) ?? false);
  };
  const planed = sticks.reduce((count, { stock, pieces }) => count + pieces.filter(({ piece }) => isThicker(stock, piece)).length, 0);
  return planed === 0 ? [] : [`pieces cut from thicker stock and planed down: ${planed}`];
};

/** Notes beside a plan: lengths that were rounded, and boards planed down. */
export const planNotes = (job: CuttingJob, sticks: readonly PlannedStick[]): string[] => [...markNotes(job), ...sectionNotes(job, sticks)];
