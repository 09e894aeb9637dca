import { type Cut } from "./greedy-sheets";
import { type SheetShelf, type Way } from "./sheet-shelf";

/** The largest area that a plan leaves in one piece worth keeping; 0 where there is none. */
export const largestKept = ({ kinds, sheets, kerf, keep }: SheetShelf, ways: readonly Way[], cuts: readonly Cut[]): number => {
  if (keep === undefined) return 0;
  const areaOf = (length: number, width: number): number =>
    length > 0 && width > 0 && length >= keep.length && width >= keep.width ? length * width : 0;
  return cuts.reduce((largest, { filling: { way, strips } }) => {
    const { sheet, first, shapes } = ways[way]!;
    const isRip = first === "rip";
    const { length, width } = sheets[sheet]!;
    const [room, depth] = isRip ? [length, width] : [width, length];
    let deep = depth - kerf;
    let most = largest;
    for (const strip of strips) {
      const sizes = strip.map((place) => {
        const { kind, turned } = shapes[place]!;
        const { length: long, width: wide } = kinds[kind]!;
        return isRip !== turned ? { along: long, across: wide } : { along: wide, across: long };
      });
      const across = sizes.reduce((widest, each) => Math.max(widest, each.across), 0);
      const end = sizes.reduce((left, { along }) => left - along, room - kerf);
      deep -= across;
      most = Math.max(most, isRip ? areaOf(end, across - kerf) : areaOf(across - kerf, end));
    }
    return Math.max(most, isRip ? areaOf(length - kerf, deep) : areaOf(deep, width - kerf));
  }, 0);
};
