import { type Cut, type Shelf } from "./shelf";

/** A way to fill one stick kind: kinds of pieces in the shelf's order, and how many of each. */
export interface Pattern {
  readonly stick: number;
  readonly kinds: readonly number[];
  readonly counts: readonly number[];
}

/** A pattern and how often it is used; a linear plan uses patterns in part. */
export interface Use {
  readonly pattern: Pattern;
  readonly times: number;
}

export const patternKey = ({ stick, kinds, counts }: Pattern): string => `${stick}:${kinds.join(",")}/${counts.join(",")}`;

export const patternWidth = (shelf: Shelf, { kinds, counts }: Pattern): number =>
  kinds.reduce((sum, kind, place) => sum + shelf.kinds[kind]!.width * counts[place]!, 0);

export const patternWorth = ({ kinds, counts }: Pattern, worth: ArrayLike<number>): number => {
  let sum = 0;
  for (let place = 0; place < kinds.length; place += 1) sum += worth[kinds[place]!]! * counts[place]!;
  return sum;
};

export const usesCost = (shelf: Shelf, uses: readonly Use[]): number =>
  uses.reduce((sum, { pattern, times }) => sum + shelf.sticks[pattern.stick]!.price * times, 0);

export const patternOf = (cut: Cut): Pattern => {
  const kinds = [...new Set(cut.kinds)];
  return { stick: cut.stick, kinds, counts: kinds.map((kind) => cut.kinds.filter((each) => each === kind).length) };
};

/**
 * Sticks and their pieces from whole uses. Patterns may hold more than is wanted: what is over is left out, from the sticks that
 * come last.
 */
export const cutsOf = (shelf: Shelf, uses: readonly Use[]): Cut[] => {
  const left = shelf.kinds.map((kind) => kind.wanted);
  const cuts: Cut[] = [];
  for (const { pattern, times } of uses) {
    for (let time = 0; time < times; time += 1) {
      const kinds = pattern.kinds.flatMap((kind, place) => {
        const count = Math.min(left[kind]!, pattern.counts[place]!);
        left[kind]! -= count;
        return Array.from({ length: count }, () => kind);
      });
      if (kinds.length > 0) cuts.push({ stick: pattern.stick, kinds });
    }
  }
  return cuts;
};
