import { type Effort } from "../shelf/effort";
import { eachFilling, type SearchSide } from "./each-filling";
import { type Filling } from "./sheet-shelf";
import { lack, totalWorth, type Worths } from "./worths";

export type Searched = readonly Filling[] | "none" | "open";

/** Different fillings of one sheet that are looked at from one place; where there are more, nothing is proven. */
const MOST_FILLINGS = 3_000;
/** So many are compared with each other. */
const MOST_COMPARED = 400;
const MOST_REMEMBERED = 200_000;
/** Steps for one number of one place, and for two fillings compared. */
const STEP = 10;

interface Candidate {
  readonly filling: Filling;
  readonly counts: readonly number[];
  readonly worth: number;
}

/** Fillings that hold no more of anything than another of the same sheet are left out. */
const undominated = (found: readonly Candidate[]): Candidate[] => {
  const sorted = [...found].sort((one, other) => other.worth - one.worth);
  if (sorted.length > MOST_COMPARED) return sorted;
  const kept: Candidate[] = [];
  for (const each of sorted)
    if (!kept.some(({ counts }) => each.counts.every((count, kind) => count <= counts[kind]!))) kept.push(each);
  return kept;
};

/**
 * Whether so many of each kind of sheet hold all pieces: the largest piece left goes on some sheet, and every filling with it that leaves
 * the others enough room is tried. By worths, what is left can be too much for the sheets that are left.
 */
export const searchedCounts = (side: SearchSide, numbers: readonly number[], all: readonly Worths[], effort: Effort): Searched => {
  const { shelf, ways } = side;
  const counts = [...numbers];
  const left = shelf.kinds.map(({ wanted }) => wanted);
  const done: Filling[] = [];
  const failed = new Set<string>();
  let isOpen = false;
  const room = (worths: Worths): number => -lack({ ...worths, total: totalWorth(worths.worth, left) }, counts);
  const candidates = (kind: number, sheet: number, spare: readonly number[]): Candidate[] => {
    const found = new Map<string, Candidate>();
    for (const [way, { sheet: of }] of ways.entries()) {
      if (of !== sheet) continue;
      const needed = all[0]!.most[sheet]! - spare[0]!;
      const isAll = eachFilling(side, way, left, kind, needed, effort, (strips, held) => {
        const key = held.join();
        if (!found.has(key)) {
          const isEnough = all.every(({ worth, most }, at) => totalWorth(worth as number[], held) >= most[sheet]! - spare[at]!);
          if (isEnough) found.set(key, { filling: { way, strips }, counts: held, worth: totalWorth(side.areas, held) });
        }
        return found.size < MOST_FILLINGS;
      });
      if (!isAll) isOpen = true;
    }
    effort.left -= Math.min(found.size, MOST_COMPARED) * found.size;
    return undominated([...found.values()]);
  };
  const visit = (): boolean => {
    const kind = left.findIndex((count) => count > 0);
    if (kind < 0) return true;
    effort.left -= STEP * all.length * left.length;
    if (effort.left <= 0) {
      isOpen = true;
      return false;
    }
    const spare = all.map(room);
    if (spare.some((each) => each < 0)) return false;
    const key = `${left.join()}/${counts.join()}`;
    if (failed.has(key)) return false;
    for (const [sheet, count] of counts.entries()) {
      if (count === 0) continue;
      for (const { filling, counts: held } of candidates(kind, sheet, spare)) {
        counts[sheet]! -= 1;
        for (const [each, taken] of held.entries()) left[each]! -= taken;
        done.push(filling);
        if (visit()) return true;
        done.pop();
        for (const [each, taken] of held.entries()) left[each]! += taken;
        counts[sheet]! += 1;
        if (effort.left <= 0) return false;
      }
    }
    if (failed.size < MOST_REMEMBERED) failed.add(key);
    return false;
  };
  return visit() ? done : isOpen ? "open" : "none";
};
