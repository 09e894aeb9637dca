import { type DraftMark, wordsAt } from "../draft";
import { textWidth } from "../paper";
import type { Area } from "./cut-board";

/** A line of words with the room it wants, and from line to line, in millimetres of paper. */
const LINE_HIGH = 4.2;
const LINE_STEP = 3.8;
const BESIDE = 1.6;
const ELLIPSIS = "...";

/** Words in lines that have room within an area. */
export interface FittedWords {
  readonly lines: readonly string[];
  readonly isUpright: boolean;
}

/** The first of several wordings that has room, lying before standing; undefined where none has. */
export const fittedWords = (wordings: readonly (readonly string[])[], { length, width }: Area, per: number): FittedWords | undefined => {
  for (const lines of wordings) {
    const wide = Math.max(...lines.map(textWidth)) + BESIDE;
    const high = LINE_HIGH + (lines.length - 1) * LINE_STEP;
    if (wide <= length * per && high <= width * per) return { lines, isUpright: false };
    if (wide <= width * per && high <= length * per) return { lines, isUpright: true };
  }
  return undefined;
};

/** The words about the middle of the area, whose lower left corner is on the drawing at `left`, `low`. */
export const wordsIn = ({ lines, isUpright }: FittedWords, [x, y]: readonly [number, number], per: number): DraftMark[] =>
  lines.map((text, place) => {
    const off = ((place - (lines.length - 1) / 2) * LINE_STEP) / per;
    return wordsAt(isUpright ? [x + off, y] : [x, y - off], text, isUpright);
  });

/** What the words cover, in the unit of the drawing. */
export const wordsSize = ({ lines, isUpright }: FittedWords, per: number): readonly [number, number] => {
  const [wide, high] = [(Math.max(...lines.map(textWidth)) + BESIDE) / per, (LINE_HIGH + (lines.length - 1) * LINE_STEP) / per];
  return isUpright ? [high, wide] : [wide, high];
};

/** A text that goes into so many millimetres, its end cut off where it is longer. */
export const clippedText = (text: string, most: number): string => {
  if (textWidth(text) <= most) return text;
  let kept = text;
  while (kept !== "" && textWidth(kept + ELLIPSIS) > most) kept = kept.slice(0, -1);
  return `${kept}${ELLIPSIS}`;
};
