import type { PlainBoard, PlainJob, PlainPiece } from "./plain-job";

/** Whole 64ths, so that an exact fit fits. */
const MARKS = 64;
const marks = (inches: number): number => Math.round(inches * MARKS);

type Counts = readonly number[];
const added = (one: Counts, other: Counts, most: Counts): Counts => one.map((count, at) => Math.min(most[at]!, count + other[at]!));
const distinct = (all: readonly Counts[]): Counts[] => [...new Map(all.map((counts) => [counts.join(), counts])).values()];

/** Every way to fill a room with sizes, each a kerf more but for the last: how many of each. */
const fillings = (sizes: readonly (number | undefined)[], most: Counts, room: number, kerf: number): Counts[] => {
  const found: Counts[] = [];
  const next = (at: number, left: number, counts: Counts): void => {
    if (at === sizes.length) {
      found.push(counts);
      return;
    }
    const size = sizes[at];
    for (let count = 0; count <= (size === undefined ? 0 : most[at]!); count += 1) {
      if (count * ((size ?? 0) + kerf) > left) break;
      next(at + 1, left - count * ((size ?? 0) + kerf), [...counts, count]);
    }
  };
  next(0, room + kerf, []);
  return found;
};

/** Everything that a rectangle gives in strips along one direction: every strip, then every set of strips that fits across. */
const inStrips = (
  along: readonly (number | undefined)[], across: readonly number[], wanted: Counts, long: number, wide: number, kerf: number,
): Counts[] => {
  const strips = fillings(along, wanted, long, kerf).filter((counts) => counts.some((count) => count > 0));
  const sized = strips.map((counts) => ({ counts, width: Math.max(...counts.map((count, at) => (count > 0 ? across[at]! : 0))) }));
  // the least width in which so many pieces lie
  const best = new Map<string, { readonly counts: Counts; readonly used: number }>();
  const empty = wanted.map(() => 0);
  const open: { readonly counts: Counts; readonly used: number }[] = [{ counts: empty, used: 0 }];
  best.set(empty.join(), open[0]!);
  for (let one = open.pop(); one !== undefined; one = open.pop()) {
    if (best.get(one.counts.join())!.used < one.used) continue;
    for (const { counts, width } of sized) {
      const used = one.used + width + kerf;
      const sum = one.counts.map((count, at) => count + counts[at]!);
      if (used > wide + kerf || sum.some((count, at) => count > wanted[at]!)) continue;
      const known = best.get(sum.join());
      if (known !== undefined && known.used <= used) continue;
      best.set(sum.join(), { counts: sum, used });
      open.push({ counts: sum, used });
    }
  }
  return [...best.values()].map(({ counts }) => counts);
};

const takes = ({ grade = "", alsoFrom = "" }: PlainPiece, board: PlainBoard): boolean =>
  [grade, ...alsoFrom.split(",").map((one) => one.trim()).filter((one) => one !== "")]
    .some((one) => one === (board.grade ?? "") || one === "any");

const clearOf = ({ length, defects = [] }: PlainBoard, trim: number): (readonly [number, number])[] => {
  let clear: (readonly [number, number])[] = [[trim, length - trim]];
  for (const [from, to] of defects)
    clear = clear.flatMap(([a, b]): [number, number][] => (to <= a || from >= b ? [[a, b]] : [[a, from], [to, b]]));
  return clear.filter(([a, b]) => b > a);
};

/** Everything that a board gives, each of its stretches any way that is allowed. */
const givenBy = ({ pieces, kerf, trim, first }: PlainJob, board: PlainBoard, wanted: Counts): Counts[] => {
  const wide = marks(board.width - (board.edge ?? 0));
  const lengths = pieces.map((piece) => (takes(piece, board) ? marks(piece.length) : undefined));
  const widths = pieces.map(({ width }) => (width === undefined ? wide : marks(width)));
  const cross = widths.map((width, at) => (lengths[at] === undefined ? undefined : width));
  let all: Counts[] = [wanted.map(() => 0)];
  for (const [from, to] of clearOf(board, trim)) {
    const long = marks(to) - marks(from);
    const here = [
      ...(first === "crosscut" ? [] : inStrips(lengths, widths, wanted, long, wide, marks(kerf))),
      ...(first === "rip" ? [] : inStrips(cross, pieces.map(({ length }) => marks(length)), wanted, wide, long, marks(kerf))),
    ];
    all = distinct(all.flatMap((one) => here.map((other) => added(one, other, wanted))));
  }
  return all;
};

/** The least that any set of boards costs that gives all pieces, by looking at every set and every plan; undefined where none does. */
export const leastOfAll = (job: PlainJob): number | undefined => {
  const wanted = job.pieces.map(({ quantity = 1 }) => quantity);
  const gives = job.boards.map((board) => givenBy(job, board, wanted));
  let least: number | undefined;
  for (let set = 1; set < 2 ** job.boards.length; set += 1) {
    const used = job.boards.flatMap((_, at) => ((set >> at) % 2 === 1 ? [at] : []));
    const lots = new Set(used.flatMap((at) => (job.boards[at]!.lotPrice === undefined ? [] : [job.boards[at]!.lot])));
    const lotMoney = [...lots].reduce<number>((sum, lot) => sum + job.boards.find((board) => board.lot === lot)!.lotPrice!, 0);
    const cost = used.reduce((sum, at) => sum + (job.boards[at]!.owned === true ? 0 : job.boards[at]!.price ?? 0), lotMoney);
    if (least !== undefined && cost >= least) continue;
    let all: Counts[] = [wanted.map(() => 0)];
    for (const at of used) all = distinct(all.flatMap((one) => gives[at]!.map((other) => added(one, other, wanted))));
    if (all.some((counts) => counts.every((count, at) => count === wanted[at]!))) least = cost;
  }
  return least;
};
