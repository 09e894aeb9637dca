import { Exact } from "../length/exact";
import type { Length } from "../length/length";
import type { CuttingGroup } from "./cutting-groups";
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

/** Where two pieces of one group could lie side by side on its stock, a plan that rips could cost less. */
const isSideBySide = (job: CuttingJob, { pieces, stock }: CuttingGroup): boolean => {
  const widths = pieces.flatMap((row) => {
    const { width, quantity } = job.pieces[row]!;
    return width === undefined ? [] : Array.from({ length: Math.min(quantity, 2) }, () => width);
  });
  const [narrowest, next] = widths.sort((one, other) => one.cmp(other));
  const widest = stock.reduce<Length>((most, row) => (job.stock[row]!.width?.gt(most) ? job.stock[row]!.width! : most), new Exact(0));
  return narrowest !== undefined && next !== undefined && narrowest.plus(next).plus(job.kerf).lte(widest);
};

const sectionNotes = (job: CuttingJob, groups: readonly CuttingGroup[], sticks: readonly PlannedStick[]): string[] => {
  const isThicker = (stock: number, piece: number): boolean => {
    const { thickness } = job.pieces[piece]!;
    return thickness !== undefined && (job.stock[stock]!.thickness?.gt(thickness) ?? false);
  };
  const planed = sticks.reduce((count, { stock, pieces }) => count + pieces.filter(({ piece }) => isThicker(stock, piece)).length, 0);
  return [
    ...(planed === 0 ? [] : [`pieces cut from thicker stock and planed down: ${planed}`]),
    ...(groups.some((group) => isSideBySide(job, group))
      ? ["one piece across each board; ripping two side by side is not planned, and could cost less"]
      : []),
  ];
};

/** Notes beside a plan: lengths that were rounded, boards planed down, and what a plan that rips could do. */
export const planNotes = (job: CuttingJob, groups: readonly CuttingGroup[], sticks: readonly PlannedStick[]): string[] => [
  ...markNotes(job), ...sectionNotes(job, groups, sticks),
];
