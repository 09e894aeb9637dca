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
  return coarse.kinds[0]!.width > Math.max(...coarse.sticks.map((stick) => stick.holds)) ? undefined : coarse;
};
