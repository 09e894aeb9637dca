import { type Effort } from "./effort";
import { type Shelf } from "./shelf";

/** The most worth that one stick kind can hold, and the pieces that come to it. */
export interface Filling {
  readonly worth: number;
  readonly kinds: readonly number[];
  readonly counts: readonly number[];
}

export interface Knapsack {
  /** The best filling of each stick kind for a whole-number worth of each kind of piece, with no more of a kind than is wanted of it. */
  readonly fill: (worth: ArrayLike<number>, wanted: ArrayLike<number>, effort: Effort) => Filling[];
}

/** Cells of the table beyond which it is not built: they are bytes. */
const MOST_CELLS = 60_000_000;

/** So many copies of one kind of piece that are taken together or not at all. */
interface Bundle {
  readonly kind: number;
  readonly copies: number;
  readonly width: number;
}

/** Sticks of one section: they take the same pieces, so one table answers for all of them. */
interface Section {
  readonly takes: readonly boolean[];
  readonly sticks: readonly number[];
  readonly longest: number;
}

const sectionsOf = ({ takes, sticks }: Shelf): Section[] =>
  takes.flatMap((each, section) => {
    const of = sticks.flatMap((stick, index) => (stick.section === section ? [index] : []));
    return of.length === 0
      ? []
      : [{ takes: each, sticks: of, longest: of.reduce((most, index) => Math.max(most, sticks[index]!.holds), 0) }];
  });

/** Copies in bundles of 1, 2, 4, ...: every number up to the limit is a sum of some of them. */
const bundlesOf = (shelf: Shelf, { longest, takes }: Section, wanted: ArrayLike<number>): Bundle[] =>
  shelf.kinds.flatMap(({ width }, kind) => {
    const bundles: Bundle[] = [];
    if (!takes[kind]!) return bundles;
    let rest = Math.min(wanted[kind]!, Math.floor(longest / width));
    for (let size = 1; rest > 0; size *= 2) {
      const copies = Math.min(size, rest);
      bundles.push({ kind, copies, width: width * copies });
      rest -= copies;
    }
    return bundles;
  });

/** Pieces that come to a filling, from the bundles taken for it. */
const fillingOf = (worth: number, taken: readonly Bundle[]): Filling => {
  const counts = new Map<number, number>();
  for (const { kind, copies } of taken) counts.set(kind, (counts.get(kind) ?? 0) + copies);
  const kinds = [...counts.keys()].sort((a, b) => a - b);
  return { worth, kinds, counts: kinds.map((kind) => counts.get(kind)!) };
};

/**
 * One table over the widths of the longest stick answers for every stick kind of a section (Gilmore and Gomory 1961, from memory). Exact:
 * worths are whole and their sums stay below 2^53. Nothing where the tables would take too much memory.
 */
export const knapsackOf = (shelf: Shelf): Knapsack | undefined => {
  const sections = sectionsOf(shelf);
  const all = shelf.kinds.map((kind) => kind.wanted);
  const cells = sections.map((section) => bundlesOf(shelf, section, all).length * (section.longest + 1));
  if (cells.reduce((sum, each) => sum + each, 0) > MOST_CELLS) return undefined;
  const most = new Float64Array(Math.max(...sections.map(({ longest }) => longest)) + 1);
  const taken = new Uint8Array(Math.max(...cells));
  const fillSection = (
    section: Section,
    worth: ArrayLike<number>,
    wanted: ArrayLike<number>,
    effort: Effort,
    fillings: Filling[],
  ): void => {
    const { longest } = section;
    const row = longest + 1;
    const bundles = bundlesOf(shelf, section, wanted)
      .filter(({ kind }) => worth[kind]! > 0)
      .reverse();
    // narrowest first: as long as all pieces so far are narrower than the longest stick, wider rooms hold no more than all of them
    const reach = new Int32Array(bundles.length + 1);
    taken.fill(0, 0, bundles.length * row);
    most[0] = 0;
    for (let place = 0; place < bundles.length; place += 1) {
      const { kind, copies, width } = bundles[place]!;
      const gain = worth[kind]! * copies;
      const from = place * row;
      const full = Math.min(longest, reach[place]! + width);
      most.fill(most[reach[place]!]!, reach[place]! + 1, full + 1);
      reach[place + 1] = full;
      for (let room = full; room >= width; room -= 1) {
        const now = most[room - width]! + gain;
        if (now <= most[room]!) continue;
        most[room] = now;
        taken[from + room] = 1;
      }
      effort.left -= Math.max(0, full - width);
    }
    for (const stick of section.sticks) {
      const chosen: Bundle[] = [];
      let room = Math.min(shelf.sticks[stick]!.holds, reach[bundles.length]!);
      const held = most[room]!;
      for (let place = bundles.length - 1; place >= 0; place -= 1) {
        room = Math.min(room, reach[place + 1]!);
        if (taken[place * row + room] === 0) continue;
        chosen.push(bundles[place]!);
        room -= bundles[place]!.width;
      }
      fillings[stick] = fillingOf(held, chosen);
    }
  };
  const fill = (worth: ArrayLike<number>, wanted: ArrayLike<number>, effort: Effort): Filling[] => {
    const fillings: Filling[] = [];
    for (const section of sections) fillSection(section, worth, wanted, effort, fillings);
    return fillings;
  };
  return { fill };
};
