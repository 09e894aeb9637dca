import type { Effort } from "../shelf/effort";
import { emptyFilling, fillStretches, layoutOf } from "./filled-layout";
import { optionsOf } from "./view";
import type { Layout, Yard } from "./yard";

/** What of a board is worth keeping, in marks. */
export interface Keeping {
  readonly length: number;
  readonly width: number;
}

/** What a plan leaves of a stretch, along and across the grain: the ends of its strips and what is not cut over its whole side. */
export const remnantsOf = (yard: Yard, layout: Layout, stretch: number): readonly Keeping[] => {
  const { kinds, stretches, kerf } = yard;
  const { length: long, width: wide } = stretches[stretch]!;
  const pattern = layout.get(stretch);
  if (pattern === undefined) return [{ length: long, width: wide }];
  const isRip = pattern.way === "rip";
  const acrossOf = (kind: number): number => (kinds[kind]!.width === 0 ? wide : kinds[kind]!.width);
  const along = (kind: number): number => (isRip ? kinds[kind]!.length : acrossOf(kind));
  const across = (kind: number): number => (isRip ? acrossOf(kind) : kinds[kind]!.length);
  const [room, side] = isRip ? [long, wide] : [wide, long];
  const turned = (one: number, other: number): Keeping => (isRip ? { length: one, width: other } : { length: other, width: one });
  const widths = pattern.strips.map((strip) => Math.max(...strip.map(across)));
  const ends = pattern.strips.map((strip, at) => turned(room - strip.reduce((sum, kind) => sum + along(kind) + kerf, 0), widths[at]!));
  const rest = turned(room, side - widths.reduce((sum, width) => sum + width + kerf, 0));
  return [...ends, rest].filter(({ length, width }) => length > 0 && width > 0);
};

const cutBoards = ({ stretches }: Yard, layout: Layout): number[] => [...new Set([...layout.keys()].map((at) => stretches[at]!.board))];

/** Area of the largest end of the boards cut that is worth keeping. */
const largestEnd = (yard: Yard, layout: Layout, keeping: Keeping): number =>
  Math.max(0, ...cutBoards(yard, layout)
    .flatMap((board) => yard.boards[board]!.stretches)
    .flatMap((stretch) => remnantsOf(yard, layout, stretch))
    .filter(({ length, width }) => length >= keeping.length && width >= keeping.width)
    .map(({ length, width }) => length * width));

/** Of plans on the same boards that are soon found, the one with the largest end worth keeping. */
export const withLargestEnd = (yard: Yard, layout: Layout, keeping: Keeping, effort: Effort): Layout => {
  const options = optionsOf(yard);
  const areas = yard.kinds.map(({ length, width }) => length * Math.max(1, width));
  const boards = cutBoards(yard, layout);
  const stretches = boards.flatMap((board) => yard.boards[board]!.stretches);
  let best = layout;
  let most = largestEnd(yard, layout, keeping);
  for (const last of stretches) {
    const filling = emptyFilling(yard);
    fillStretches(yard, options, filling, [...stretches.filter((stretch) => stretch !== last), last], areas, effort);
    const other = layoutOf(filling);
    if (other === undefined || cutBoards(yard, other).length < boards.length) continue;
    const end = largestEnd(yard, other, keeping);
    if (end <= most) continue;
    best = other;
    most = end;
  }
  return best;
};
