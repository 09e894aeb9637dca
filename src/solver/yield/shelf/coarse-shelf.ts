import { type Shelf } from "./shelf";

/** Widths beyond which, times the kinds, patterns are first looked for on a coarser measure, and the widths of that measure. */
const COARSE_FROM = 1_500_000;
const COARSE_WIDTHS = 4_000;

/** The shelf on a coarser measure: pieces rounded up and sticks down, so that its patterns fit the shelf itself. */
export const coarsened = (shelf: Shelf): Shelf | undefined => {
  const longest = Math.max(...shelf.sticks.map((stick) => stick.holds));
  const measure = Math.ceil(longest / COARSE_WIDTHS);
  if (longest * shelf.kinds.length < COARSE_FROM || measure === 1) return undefined;
  const coarse = {
    ...shelf,
    kinds: shelf.kinds.map((kind) => ({ ...kind, width: Math.ceil(kind.width / measure) })),
    sticks: shelf.sticks.map((stick) => ({ ...stick, holds: Math.floor(stick.holds / measure) })),
  };
  const isHeld = (width: number, kind: number): boolean =>
    coarse.sticks.some(({ holds, section }) => holds >= width && coarse.takes[section]![kind]!);
  return coarse.kinds.every(({ width }, kind) => isHeld(width, kind)) ? coarse : undefined;
};
