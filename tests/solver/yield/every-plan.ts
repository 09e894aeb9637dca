import type { PlainJob } from "./job";

export interface Best {
  readonly cents: number;
  readonly newLength: number;
  readonly sticks: number;
  /** Different ways of cutting: lengths from one kind of stick. */
  readonly patterns: number;
  /** The longest end worth keeping, and all of them. */
  readonly largestEnd: number;
  readonly ends: number;
}

/**
 * The best of all plans of a tiny job, by laying one piece after another into every stick that is open and into a new one of every
 * kind: piece by piece, where the solver goes by patterns. Judged by cost, new length, sticks, patterns, largest end, all ends. Lengths
 * must be whole numbers here. Nothing where no plan exists.
 */
export const everyPlan = (job: PlainJob): Best | undefined => {
  const kerf = job.kerf ?? 0;
  const trim = job.trim ?? 0;
  const todo = job.pieces.flatMap(({ length, quantity, grade, width, thickness }) =>
    Array.from({ length: quantity ?? 1 }, () => ({ length, grade: grade ?? "", width: width ?? 0, thickness: thickness ?? 0 })),
  );
  const left = job.stock.map(({ available }) => available ?? Infinity);
  const open: { row: number; taken: number; lengths: number[] }[] = [];
  let best: Best | undefined;
  const fits = (row: number, taken: number, pieces: number): boolean =>
    taken + Math.max(0, pieces - 1) * kerf <= job.stock[row]!.length - 2 * trim;
  const isOfKind = (row: number, piece: (typeof todo)[number]): boolean => {
    const { grade, width, thickness } = job.stock[row]!;
    return (grade ?? "") === piece.grade && (width ?? 0) >= piece.width && (thickness ?? 0) >= piece.thickness;
  };
  const lay = (at: number, cents: number, newLength: number): void => {
    const piece = todo[at];
    if (piece === undefined) {
      const kept = open
        .map(({ row, taken, lengths }) => job.stock[row]!.length - 2 * trim - taken - lengths.length * kerf)
        .filter((end) => end > 0 && end >= (job.keep ?? 0));
      const patterns = new Set(
        open.map(({ row, lengths }) => {
          const { length, cents: price, owned } = job.stock[row]!;
          return [length, price ?? 0, owned ?? false, [...lengths].sort((a, b) => b - a)].join("/");
        }),
      ).size;
      const now = {
        cents,
        newLength,
        sticks: open.length,
        patterns,
        largestEnd: Math.max(0, ...kept),
        ends: kept.reduce((sum, end) => sum + end, 0),
      };
      const order = (plan: Best): number[] => [plan.cents, plan.newLength, plan.sticks, plan.patterns, -plan.largestEnd, -plan.ends];
      const difference = best === undefined ? -1 : order(now).map((value, index) => value - order(best!)[index]!).find((d) => d !== 0) ?? 0;
      if (difference < 0) best = now;
      return;
    }
    for (const stick of open) {
      if (!isOfKind(stick.row, piece) || !fits(stick.row, stick.taken + piece.length, stick.lengths.length + 1)) continue;
      stick.taken += piece.length;
      stick.lengths.push(piece.length);
      lay(at + 1, cents, newLength);
      stick.lengths.pop();
      stick.taken -= piece.length;
    }
    for (const [row, stock] of job.stock.entries()) {
      if (left[row] === 0 || !isOfKind(row, piece) || !fits(row, piece.length, 1)) continue;
      left[row]! -= 1;
      open.push({ row, taken: piece.length, lengths: [piece.length] });
      lay(at + 1, cents + (stock.cents ?? 0), newLength + (stock.owned ? 0 : stock.length));
      open.pop();
      left[row]! += 1;
    }
  };
  lay(0, 0, 0);
  return best;
};
