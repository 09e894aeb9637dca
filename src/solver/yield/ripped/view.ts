import { commonDivisor } from "../common-divisor";
import type { Way, Yard } from "./yard";

/**
 * The sizes of a yard as one way of cutting sees them: `along` a strip and `across` it; crosscut first is rip first turned. In steps of
 * the common divisor, the kerf that follows each piece counted in.
 */
export interface View {
  readonly way: Way;
  readonly along: readonly number[];
  readonly across: readonly number[];
  /** Room of each stretch, with the kerf that the last piece does not need. */
  readonly roomAlong: readonly number[];
  readonly roomAcross: readonly number[];
  /** Kinds from the narrowest across the strip. */
  readonly order: readonly number[];
}

/** Strips side by side that no others are better than: how many of each width, the widest first. */
export interface Side {
  readonly widths: readonly number[];
  readonly counts: readonly number[];
}

export const isWhole = ({ kinds }: Yard, kind: number): boolean => kinds[kind]!.width === 0;

const MOST_SIDES = 40;
/** Looked at while they are listed. */
const MOST_TRIED = 4_000;

/** One holds what the other holds: strip by strip at least as wide, and at least as many. */
const isBetter = (one: Side, other: Side): boolean => {
  let strips = 0;
  let others = 0;
  return one.counts.every((count, at) => {
    strips += count;
    others += other.counts[at]!;
    return strips >= others;
  });
};

/** The strips that fit beside one another, a strip as wide as its widest piece, so no more of a width than pieces of it. */
const sidesOf = (widths: readonly number[], wanted: readonly number[], room: number): readonly Side[] | undefined => {
  const found: Side[] = [];
  let tried = 0;
  const decide = (at: number, left: number, counts: readonly number[]): void => {
    tried += 1;
    if (tried > MOST_TRIED) return;
    if (at === widths.length) {
      found.push({ widths, counts });
      return;
    }
    const most = Math.min(wanted[at]!, Math.floor(left / widths[at]!));
    for (let count = most; count >= 0; count -= 1) decide(at + 1, left - count * widths[at]!, [...counts, count]);
  };
  decide(0, room, []);
  if (tried > MOST_TRIED) return undefined;
  const best = found.filter((side) => side.counts.some((count) => count > 0) && !found.some((one) => one !== side && isBetter(one, side)));
  return best.length > MOST_SIDES ? undefined : best;
};

const sidesOfStretch = (yard: Yard, view: View, stretch: number): readonly Side[] | undefined => {
  const takes = yard.takes[yard.stretches[stretch]!.class]!;
  const fitting = view.order.filter(
    (kind) =>
      takes[kind]! && !isWhole(yard, kind) &&
      view.along[kind]! <= view.roomAlong[stretch]! && view.across[kind]! <= view.roomAcross[stretch]!,
  );
  const widths = [...new Set(fitting.map((kind) => view.across[kind]!))].reverse();
  const wanted = widths.map((width) =>
    fitting.reduce((sum, kind) => sum + (view.across[kind] === width ? yard.kinds[kind]!.wanted : 0), 0),
  );
  return sidesOf(widths, wanted, view.roomAcross[stretch]!);
};

export const viewOf = (yard: Yard, way: Way): View => {
  const { kinds, stretches, kerf } = yard;
  const lengthStep = kinds.map(({ length }) => length + kerf).reduce(commonDivisor, 0) || 1;
  const widthStep = kinds.filter(({ width }) => width > 0).map(({ width }) => width + kerf).reduce(commonDivisor, 0) || 1;
  const lengths = kinds.map(({ length }) => (length + kerf) / lengthStep);
  const widths = kinds.map(({ width }) => (width === 0 ? 0 : (width + kerf) / widthStep));
  const long = stretches.map(({ length }) => Math.floor((length + kerf) / lengthStep));
  const wide = stretches.map(({ width }) => Math.floor((width + kerf) / widthStep));
  const [along, across, roomAlong, roomAcross] = way === "rip" ? [lengths, widths, long, wide] : [widths, lengths, wide, long];
  const order = kinds.map((_, kind) => kind).sort((one, other) => across[one]! - across[other]! || one - other);
  return { way, along, across, roomAlong, roomAcross, order };
};

/** One way to divide a stretch: strips of listed widths; strips each led by its widest piece; one strip as wide as the board. */
export interface Option {
  readonly view: View;
  readonly into: Side | "led" | "whole";
}

const optionsOfView = (yard: Yard, view: View, stretch: number): readonly Option[] => {
  const hasWhole = yard.kinds.some((_, kind) => isWhole(yard, kind));
  const sides = hasWhole && view.way === "crosscut" ? undefined : sidesOfStretch(yard, view, stretch);
  return [
    ...(sides === undefined ? [{ view, into: "led" } as const] : sides.map((into): Option => ({ view, into }))),
    ...(hasWhole && view.way === "rip" ? [{ view, into: "whole" } as const] : []),
  ];
};

/** The options of each stretch; sides that begin alike stand together. */
export const optionsOf = (yard: Yard): readonly (readonly Option[])[] => {
  const views = yard.ways.map((way) => viewOf(yard, way));
  return yard.stretches.map((_, stretch) => views.flatMap((view) => optionsOfView(yard, view, stretch)));
};
