import type { Effort } from "../shelf/effort";
import { stretchWorth } from "./stretch-worth";
import type { Options } from "./refutation";
import { isWhole, type View } from "./view";
import type { Layout, Pattern, Yard } from "./yard";

/** A layout being filled, and the pieces that have no place yet. */
export interface Filling {
  readonly layout: Map<number, Pattern>;
  readonly left: Int32Array;
}

export const emptyFilling = (yard: Yard): Filling => ({ layout: new Map(), left: Int32Array.from(yard.kinds, ({ wanted }) => wanted) });

export const isFull = ({ left }: Filling): boolean => left.every((count) => count === 0);

/** Takes a strip's pieces as far as they are wanted, and more that fit beside them, the most worth first. */
const filledStrip = (
  yard: Yard, view: View, strip: readonly number[], room: number, takes: readonly boolean[], left: Int32Array, worth: ArrayLike<number>,
): number[] => {
  const held = strip.filter((kind) => {
    if (left[kind]! === 0) return false;
    left[kind]! -= 1;
    return true;
  });
  if (strip.some((kind) => isWhole(yard, kind))) return held;
  const across = Math.max(...strip.map((kind) => view.across[kind]!));
  let free = room - held.reduce((sum, kind) => sum + view.along[kind]!, 0);
  const fitting = yard.kinds.map((_, kind) => kind).filter((kind) => takes[kind]! && !isWhole(yard, kind) && view.across[kind]! <= across);
  for (const kind of fitting.sort((one, other) => worth[other]! - worth[one]!)) {
    while (left[kind]! > 0 && view.along[kind]! <= free) {
      left[kind]! -= 1;
      free -= view.along[kind]!;
      held.push(kind);
    }
  }
  return held;
};

/** Lays a pattern on its stretch, without pieces that have their place already. */
export const layPattern = (
  yard: Yard, options: Options, { layout, left }: Filling, stretch: number, pattern: Pattern, worth: ArrayLike<number>,
): void => {
  const view = options[stretch]!.find((option) => option.view.way === pattern.way)?.view;
  if (view === undefined) return;
  const takes = yard.takes[yard.stretches[stretch]!.class]!;
  const room = view.roomAlong[stretch]!;
  const strips = pattern.strips
    .map((strip) => filledStrip(yard, view, strip, room, takes, left, worth))
    .filter((strip) => strip.length > 0);
  if (strips.length > 0) layout.set(stretch, { way: pattern.way, strips });
};

/** Fills the stretches in the order given, each with what is worth most there of what is left. */
export const fillStretches = (
  yard: Yard, options: Options, filling: Filling, stretches: readonly number[], worth: ArrayLike<number>, effort: Effort,
): void => {
  for (const stretch of stretches) {
    if (isFull(filling)) return;
    const { pattern } = stretchWorth(yard, options[stretch]!, { worth, wanted: filling.left }, stretch, effort);
    layPattern(yard, options, filling, stretch, pattern(), worth);
  }
};

export const layoutOf = (filling: Filling): Layout | undefined => (isFull(filling) ? filling.layout : undefined);
