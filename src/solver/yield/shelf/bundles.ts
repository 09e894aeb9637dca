import { type Shelf } from "./shelf";

/** The most worth that one stick kind can hold, and the pieces that come to it. */
export interface Filling {
  readonly worth: number;
  readonly kinds: readonly number[];
  readonly counts: readonly number[];
}

/** So many copies of one kind of piece that are taken together or not at all. */
export interface Bundle {
  readonly kind: number;
  readonly copies: number;
  readonly width: number;
}

/** Sticks of one section: they take the same pieces, so one list or table answers for all of them. */
export interface Section {
  readonly takes: readonly boolean[];
  readonly sticks: readonly number[];
  readonly longest: number;
}

export const sectionsOf = ({ takes, sticks }: Shelf): Section[] =>
  takes.flatMap((each, section) => {
    const of = sticks.flatMap((stick, index) => (stick.section === section ? [index] : []));
    return of.length === 0
      ? []
      : [{ takes: each, sticks: of, longest: of.reduce((most, index) => Math.max(most, sticks[index]!.holds), 0) }];
  });

/** Copies in bundles of 1, 2, 4, ...: every number up to the limit is a sum of some of them. Widest kinds first. */
export const bundlesOf = (shelf: Shelf, { longest, takes }: Section, wanted: ArrayLike<number>): Bundle[] => {
  const bundles: Bundle[] = [];
  for (const [kind, { width }] of shelf.kinds.entries()) {
    if (!takes[kind]!) continue;
    let rest = Math.min(wanted[kind]!, Math.floor(longest / width));
    for (let size = 1; rest > 0; size *= 2) {
      const copies = Math.min(size, rest);
      bundles.push({ kind, copies, width: width * copies });
      rest -= copies;
    }
  }
  return bundles;
};

/** Pieces that come to a filling, from the bundles taken for it. */
export const fillingOf = (worth: number, taken: readonly Bundle[]): Filling => {
  const counts = new Map<number, number>();
  for (const { kind, copies } of taken) counts.set(kind, (counts.get(kind) ?? 0) + copies);
  const kinds = [...counts.keys()].sort((a, b) => a - b);
  return { worth, kinds, counts: kinds.map((kind) => counts.get(kind)!) };
};
