import { cornersOf, type FacePoint, type Outline } from "../../solver/fit/outline";
import type { PieceAct } from "../../functions/cut-pieces";
import type { Unit } from "../../solver/length/length";
import type { Box, Spot } from "./pen";

/** Paper for the plan, in millimetres, and where the far edge of the blank lies on it. */
const ROOM = { left: 55, right: 151, top: 31.5 } as const;
/** Waste drawn past each end: the blank is at least so long as is written, and mostly longer. */
export const WASTE = 3.2;
const SCALES = [10, 12, 15, 20, 25, 30, 40, 50, 75, 100] as const;
const MILLIMETRES: Readonly<Record<Unit, number>> = { in: 25.4, mm: 1 };

/** Where a piece lies on paper. */
export interface PlanFrame {
  /** Paper is so many times smaller. */
  readonly scale: number;
  readonly outline: Outline;
  readonly spot: (at: FacePoint) => Spot;
  /** The blank on paper; `isSquared` where its left end is one of its own, sawn square. */
  readonly blank: Box & { readonly isSquared: boolean };
}

/** Where a blank squared at its left end begins: as far from the left toe as the tape says. */
const squaredAt = (acts: readonly PieceAct[], { ends }: Outline): number | undefined => {
  const found = acts.flatMap(({ act }) =>
    act?.kind === "mark" && act.hook.isSquared && act.mark.end === "left" && act.mark.place === "toe" ? [act.distance] : [],
  );
  return found[0] === undefined ? undefined : ends.left.near.along - found[0];
};

export const planFrame = (outline: Outline, acts: readonly PieceAct[], unit: Unit, deep: number): PlanFrame => {
  const { left, right } = outline.ends;
  const corners = [...cornersOf(outline), left.ripped, right.ripped].map(({ along }) => along);
  const from = Math.min(...corners, left.near.along - left.otherSide, left.ripped.along - left.otherSide);
  const to = Math.max(...corners, right.near.along + right.otherSide, right.ripped.along + right.otherSide);
  const squared = squaredAt(acts, outline);
  const begins = squared ?? from;
  const millimetres = MILLIMETRES[unit];
  const wide = ROOM.right - ROOM.left - 2 * WASTE;
  const scale = SCALES.find((one) => ((to - begins) * millimetres) / one <= wide && (outline.depth * millimetres) / one <= deep) ??
    Math.ceil(Math.max(((to - begins) * millimetres) / wide, (outline.depth * millimetres) / deep));
  const paper = (length: number): number => (length * millimetres) / scale;
  const bottom = ROOM.top + paper(outline.depth);
  const start = (ROOM.left + ROOM.right - paper(to - begins)) / 2;
  const spot = ({ along, behind }: FacePoint): Spot => [start + paper(along - begins), bottom - paper(behind)];
  const end = start + paper(to - begins);
  return {
    scale, outline, spot,
    blank: {
      left: squared === undefined ? start - WASTE : start, right: end + WASTE, top: ROOM.top, bottom, isSquared: squared !== undefined,
    },
  };
};
