import { type Draw, draws, shuffled } from "../draws";
import { type Candidate } from "./dive";
import { type Effort, isSpent } from "./effort";
import { cutsOf, patternOf } from "./pattern";
import { type Shelf, usedWidth } from "./shelf";

// The figures of this file were chosen on seeded triplets; none of them decides whether a plan is right.

/** Full sticks that are taken apart at a time. */
const LEAST_TAKEN = 3;
const MOST_TAKEN = 9;
/** Loose pieces that are put on sticks with theirs; where there are more, so many drawn ones. */
const MOST_LOOSE = 15;
const DRAWN_LOOSE = 12;
/** Looks of a try that has to put more pieces on full sticks, and of one that may put as many. */
const MORE_LOOKS = 100;
const TIE_LOOKS = 200;
/** Tries without gain after which every so many full sticks are loosened. */
const STALLED = 500;
const LOOSENED = 4;
/** Steps of a try for each stick and loose piece there is and for each of its own pieces, of a look, and of one piece in it. */
const KEPT_STEPS = 10;
const TRY_STEPS = 300;
const LOOK_STEPS = 60;
const PIECE_STEPS = 6;
const SEED = 7;

/** Pieces of which full sticks are to be made, so that few are left. */
interface Covering {
  readonly holds: number;
  /** Widest first. */
  readonly widths: readonly number[];
  readonly used: Uint8Array;
  readonly sticks: number[][];
  readonly left: number[];
  readonly mostLeft: number;
  readonly draw: Draw;
  readonly effort: Effort;
  looks: number;
}

/** The place of the widest piece that goes into the room, from a place on. */
const firstWithin = ({ widths }: Covering, from: number, room: number): number => {
  let low = from;
  let high = widths.length;
  while (low < high) {
    const middle = (low + high) >> 1;
    if (widths[middle]! > room) low = middle + 1;
    else high = middle;
  }
  return low;
};

/** Fills the last stick to its end by pieces from a place on, tried from a drawn one round, and then covers those after `first`. */
const filled = (covering: Covering, stick: number[], first: number, from: number, room: number): boolean => {
  if (room === 0) return covered(covering, first + 1);
  const { widths, used, draw, effort } = covering;
  covering.looks -= 1;
  effort.left -= LOOK_STEPS;
  const low = firstWithin(covering, from, room);
  const count = widths.length - low;
  if (count === 0 || covering.looks < 0) return false;
  const start = Math.floor(draw() * count);
  const narrowest = widths[widths.length - 1]!;
  let last = 0;
  effort.left -= PIECE_STEPS * count;
  for (let turn = 0; turn < count; turn += 1) {
    const at = low + ((turn + start) % count);
    const width = widths[at]!;
    if (used[at] === 1 || width === last || (width !== room && room - width < narrowest)) continue;
    last = width;
    used[at] = 1;
    stick.push(at);
    if (filled(covering, stick, first, at + 1, room - width)) return true;
    stick.pop();
    used[at] = 0;
  }
  return false;
};

/** Makes full sticks, each with the widest piece left; a piece that has none is left over, as far as that many may be. */
const covered = (covering: Covering, from: number): boolean => {
  const { holds, widths, used, sticks, left, mostLeft } = covering;
  let first = from;
  while (used[first] === 1) first += 1;
  if (first === widths.length) return true;
  if (covering.looks < 0) return false;
  used[first] = 1;
  const stick = [first];
  sticks.push(stick);
  if (filled(covering, stick, first, first + 1, holds - widths[first]!)) return true;
  sticks.pop();
  if (left.length < mostLeft) {
    left.push(first);
    if (covered(covering, first + 1)) return true;
    left.pop();
  }
  used[first] = 0;
  return false;
};

/** Full sticks and what is on none, as kinds of pieces. */
interface Covered {
  readonly full: readonly (readonly number[])[];
  readonly loose: readonly number[];
}

/** Full sticks of these pieces with at most so many left over; nothing where none are found within so many looks. */
const coveredBy = (
  shelf: Shelf, pieces: readonly number[], mostLeft: number, looks: number, draw: Draw, effort: Effort,
): Covered | undefined => {
  const widths = pieces.map((kind) => shelf.kinds[kind]!.width);
  const { holds } = shelf.sticks[0]!;
  const used = new Uint8Array(pieces.length);
  const covering: Covering = { holds, widths, used, sticks: [], left: [], mostLeft, draw, effort, looks };
  effort.left -= TRY_STEPS * pieces.length;
  if (!covered(covering, 0)) return undefined;
  const kindsAt = (places: readonly number[]): number[] => places.map((at) => pieces[at]!);
  return { full: covering.sticks.map(kindsAt), loose: kindsAt(covering.left) };
};

/** Some of the full sticks: one of those with most pieces, which are the ones that long pieces lack, and any others. */
const taken = (full: readonly (readonly number[])[], draw: Draw): Set<number> => {
  const count = Math.min(full.length, LEAST_TAKEN + Math.floor(draw() * (MOST_TAKEN - LEAST_TAKEN + 1)));
  const most = full.reduce((found, { length }) => Math.max(found, length), 0);
  const largest = [...full.keys()].filter((at) => full[at]!.length === most);
  const found = new Set(largest.length === 0 || draw() < 0.5 ? [] : [largest[Math.floor(draw() * largest.length)]!]);
  while (found.size < count) found.add(Math.floor(draw() * full.length));
  return found;
};

/** Some of the full sticks and of the loose pieces, put on full sticks anew: with fewer left if that can be, or as many. */
const coveredAnew = (shelf: Shelf, { full, loose }: Covered, draw: Draw, effort: Effort): Covered => {
  effort.left -= KEPT_STEPS * (full.length + loose.length);
  const apart = taken(full, draw);
  const drawn = loose.length > MOST_LOOSE ? shuffled(loose, draw) : loose;
  const used = loose.length > MOST_LOOSE ? drawn.slice(0, DRAWN_LOOSE) : drawn;
  const pieces = [...used, ...[...apart].flatMap((at) => full[at]!)].sort((a, b) => a - b);
  const found =
    coveredBy(shelf, pieces, Math.max(0, used.length - 2), MORE_LOOKS, draw, effort) ??
    coveredBy(shelf, pieces, used.length, TIE_LOOKS, draw, effort);
  if (found === undefined) return { full, loose };
  return { full: [...full.filter((_, at) => !apart.has(at)), ...found.full], loose: [...drawn.slice(used.length), ...found.loose] };
};

const loosened = ({ full, loose }: Covered, draw: Draw): Covered => {
  const drawn = shuffled(full, draw);
  const kept = Math.ceil(full.length * (1 - 1 / LOOSENED));
  return { full: drawn.slice(0, kept), loose: [...loose, ...drawn.slice(kept).flat()] };
};

/** Whether all pieces together fill whole sticks of the one kind there is to the end. */
const isExact = ({ kinds, sticks }: Shelf): boolean =>
  sticks.length === 1 && kinds.reduce((sum, { width, wanted }) => sum + width * wanted, 0) % sticks[0]!.holds === 0;

/**
 * The plan with every stick full to its end, where the pieces come to whole sticks of one kind: full sticks are kept, a few of them are
 * taken apart with the loose pieces and made anew, until none is loose. Nothing where it is not found within the effort.
 */
export const fullSticksPlan = (shelf: Shelf, start: Candidate, effort: Effort): Candidate | undefined => {
  if (!isExact(shelf)) return undefined;
  const draw = draws(SEED);
  const { holds, price } = shelf.sticks[0]!;
  const cuts = cutsOf(shelf, start.uses);
  const isFull = cuts.map((cut) => usedWidth(shelf, cut) === holds);
  let now: Covered = {
    full: cuts.flatMap(({ kinds }, at) => (isFull[at]! ? [kinds] : [])),
    loose: cuts.flatMap(({ kinds }, at) => (isFull[at]! ? [] : kinds)),
  };
  let stalled = 0;
  let least = now.loose.length;
  while (now.loose.length > 0 && !isSpent(effort)) {
    now = coveredAnew(shelf, now, draw, effort);
    stalled = now.loose.length < least ? 0 : stalled + 1;
    least = Math.min(least, now.loose.length);
    if (stalled < STALLED) continue;
    now = loosened(now, draw);
    stalled = 0;
    least = now.loose.length;
  }
  if (now.loose.length > 0) return undefined;
  return { cost: price * now.full.length, uses: now.full.map((kinds) => ({ pattern: patternOf({ stick: 0, kinds }), times: 1 })) };
};
