import { chargeOf } from "./certificate";
import { type Effort, isSpent } from "./effort";
import { type Filling } from "./bundles";
import { type Limits } from "./master";
import { type Pattern } from "./pattern";
import { type PieceKind, type Shelf } from "./shelf";

/** What worths say of a shelf: what a stick of each kind costs over and above its price where its number is limited. */
export interface Weighed {
  readonly worth: ArrayLike<number>;
  readonly steps: number;
  /** Below 0 for sticks that may be used and save; above 0 for sticks that must be used and cost. */
  readonly charges: readonly number[];
}

export const weighedBy = (
  shelf: Shelf,
  limits: Limits,
  steps: number,
  worth: ArrayLike<number>,
  fillings: readonly Pick<Filling, "worth">[],
): Weighed => ({
  worth,
  steps,
  charges: shelf.sticks.map(({ price }, stick) => {
    const charge = chargeOf(price, steps, fillings[stick]!.worth);
    return charge < 0 || limits.least[stick]! > 0 ? charge : 0;
  }),
});

/** A pattern with what it lacks of the worth its stick would have to hold, in steps. */
export interface NearPattern {
  readonly pattern: Pattern;
  readonly lack: number;
}

/** Cells of the tables that say what the rest of a stick can hold. */
const MOST_CELLS = 16_000_000;

/** later[kind][room]: the most worth of that kind and the ones after it in so much room, of the kinds a section takes. */
const fillLater = (
  later: Float64Array,
  kinds: readonly PieceKind[],
  takes: readonly boolean[],
  worth: ArrayLike<number>,
  longest: number,
  effort: Effort,
): void => {
  const row = longest + 1;
  for (let kind = kinds.length - 1; kind >= 0; kind -= 1) {
    const at = kind * row;
    later.copyWithin(at, at + row, at + 2 * row);
    if (!takes[kind]!) continue;
    const { width, wanted } = kinds[kind]!;
    let rest = Math.min(wanted, Math.floor(longest / width));
    for (let copies = 1; rest > 0; copies *= 2) {
      const count = Math.min(copies, rest);
      rest -= count;
      effort.left -= row;
      const gain = worth[kind]! * count;
      for (let room = longest; room >= width * count; room -= 1) {
        const now = later[at + room - width * count]! + gain;
        if (now > later[at + room]!) later[at + room] = now;
      }
    }
  }
};

/**
 * All patterns whose lack is at most `slack`: only these can be in a plan that costs no more than the proven least and the slack.
 * `isFull` leaves out patterns to which a wanted piece could be added. Nothing where there are more than `most`.
 */
export const nearPatterns = (
  shelf: Shelf,
  limits: Limits,
  { worth, steps, charges }: Weighed,
  slack: number,
  isFull: boolean,
  most: number,
  effort: Effort,
): NearPattern[] | undefined => {
  const { kinds, sticks } = shelf;
  const used = sticks.flatMap((_, stick) => (limits.most[stick]! > 0 ? [stick] : []));
  const longest = Math.max(0, ...used.map((stick) => sticks[stick]!.holds));
  const row = longest + 1;
  if ((kinds.length + 1) * row > MOST_CELLS) return undefined;
  const later = new Float64Array((kinds.length + 1) * row);
  let takes: readonly boolean[] = [];
  const found: NearPattern[] = [];
  const counts = new Int32Array(kinds.length);
  const narrowest = kinds[kinds.length - 1]!.width;
  let isOver = false;
  const visit = (stick: number, needed: number, kind: number, room: number, held: number, spare: number): void => {
    effort.left -= 4;
    if (isOver || held + later[kind * row + room]! < needed) return;
    if (kind === kinds.length || room < narrowest) {
      if (isFull && spare <= room) return;
      if (isFull) for (let each = kind; each < kinds.length; each += 1) if (kinds[each]!.width <= room && takes[each]!) return;
      const chosen = kinds.flatMap((_, each) => (each < kind && counts[each]! > 0 ? [each] : []));
      if (chosen.length === 0) return;
      found.push({ pattern: { stick, kinds: chosen, counts: chosen.map((each) => counts[each]!) }, lack: needed + slack - held });
      if (found.length > most || isSpent(effort)) isOver = true;
      return;
    }
    if (!takes[kind]!) return visit(stick, needed, kind + 1, room, held, spare);
    const { width, wanted } = kinds[kind]!;
    for (let count = Math.min(wanted, Math.floor(room / width)); count >= 0; count -= 1) {
      counts[kind] = count;
      visit(stick, needed, kind + 1, room - count * width, held + count * worth[kind]!, count < wanted ? Math.min(spare, width) : spare);
    }
    counts[kind] = 0;
  };
  for (const [section, each] of shelf.takes.entries()) {
    const ofSection = used.filter((stick) => sticks[stick]!.section === section);
    if (ofSection.length === 0) continue;
    takes = each;
    fillLater(later, kinds, takes, worth, longest, effort);
    for (const stick of ofSection) {
      const { price, holds } = sticks[stick]!;
      visit(stick, price * steps - charges[stick]! - slack, 0, holds, 0, Infinity);
      if (isOver) return undefined;
    }
  }
  return found;
};
