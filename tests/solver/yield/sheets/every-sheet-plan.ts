import type { PlainSheetJob } from "./job";

export interface Rect {
  readonly length: number;
  readonly width: number;
  readonly free: boolean;
}

/** Whether the pieces can be cut from one sheet in two stages, by laying piece after piece into every strip there is and into a new one. */
export const isCut = (pieces: readonly Rect[], sheet: { length: number; width: number }, kerf: number, isRip: boolean): boolean => {
  const [room, depth] = isRip ? [sheet.length, sheet.width] : [sheet.width, sheet.length];
  const strips: { taken: number; widest: number }[] = [];
  const lay = (at: number): boolean => {
    const piece = pieces[at];
    if (piece === undefined) return strips.reduce((sum, { widest }) => sum + widest, 0) + (strips.length - 1) * kerf <= depth;
    for (const turned of piece.free ? [false, true] : [false]) {
      const [along, across] = isRip !== turned ? [piece.length, piece.width] : [piece.width, piece.length];
      for (const strip of strips) {
        const before = { ...strip };
        if (strip.taken + kerf + along > room) continue;
        strip.taken += kerf + along;
        strip.widest = Math.max(strip.widest, across);
        if (lay(at + 1)) return true;
        Object.assign(strip, before);
      }
      if (along > room || across > depth) continue;
      strips.push({ taken: along, widest: across });
      if (lay(at + 1)) return true;
      strips.pop();
    }
    return false;
  };
  return lay(0);
};

/**
 * The least cost of a tiny job: every set of pieces against every sheet, then every way to share the pieces among sheets. Whole numbers.
 * Infinity where no plan exists.
 */
export const everySheetPlan = ({ pieces, stock, kerf = 0, trim = 0, edges = trim, first = "either" }: PlainSheetJob): number => {
  const all = pieces.flatMap(({ length, width, quantity = 1, free = false }) =>
    Array.from({ length: quantity }, (): Rect => ({ length, width: width!, free })),
  );
  const ways = [true, false].filter((isRip) => first === "either" || isRip === (first === "rip"));
  const holds = stock.map((sheet) => {
    const usable = { length: sheet.length - 2 * trim, width: sheet.width! - 2 * edges };
    return Array.from({ length: 2 ** all.length }, (_, set) =>
      ways.some((isRip) => isCut(all.filter((_piece, place) => (set >> place) % 2 === 1), usable, kerf, isRip)),
    );
  });
  const left = stock.map(({ available }) => available ?? Infinity);
  const known = new Map<string, number>();
  const least = (set: number): number => {
    if (set === 0) return 0;
    const key = `${set}/${left.join()}`;
    const before = known.get(key);
    if (before !== undefined) return before;
    const lowest = set & -set;
    let best = Infinity;
    for (let part = set; part > 0; part = (part - 1) & set) {
      if ((part & lowest) === 0) continue;
      for (const [row, { cents = 0 }] of stock.entries()) {
        if (left[row] === 0 || !holds[row]![part]!) continue;
        left[row]! -= 1;
        best = Math.min(best, cents + least(set & ~part));
        left[row]! += 1;
      }
    }
    known.set(key, best);
    return best;
  };
  return least(2 ** all.length - 1);
};
