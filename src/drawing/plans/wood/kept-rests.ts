import type { Unit } from "../../../solver/length/length";
import type { Area, DrawnRest } from "./cut-board";
import { flatText } from "./size-text";

export interface FlatSize {
  readonly length: number;
  readonly width: number;
}

const HAIR = 1e-6;
const isLike = (one: FlatSize, other: FlatSize): boolean =>
  Math.abs(one.length - other.length) < HAIR && Math.abs(one.width - other.width) < HAIR;

/** What is left of a board, those that the plan keeps said to be kept: it names them by their size. */
export const keptRests = (rests: readonly Area[], kept: readonly FlatSize[], unit: Unit): readonly DrawnRest[] => {
  const waiting = [...kept];
  return rests.map((area): DrawnRest => {
    const at = waiting.findIndex((one) => isLike(one, area));
    if (at >= 0) waiting.splice(at, 1);
    return { area, isKept: at >= 0, size: flatText(area.length, area.width, unit) };
  });
};

/** What is cut off all around: both ends over the whole width, and both edges between them. */
export const lostAround = (length: number, width: number, trim: number, edge: number): readonly Area[] => [
  ...(trim > 0 ? [0, length - trim].map((along): Area => ({ along, across: 0, length: trim, width })) : []),
  ...(edge > 0 ? [0, width - edge].map((across): Area => ({ along: trim, across, length: length - 2 * trim, width: edge })) : []),
];
