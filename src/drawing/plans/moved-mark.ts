import type { Point } from "../figure";
import type { DraftMark } from "./draft";

/** A part of a drawing so far along and up. */
export const movedMark = (mark: DraftMark, [dx, dy]: Point): DraftMark => {
  const moved = ([x, y]: Point): Point => [x + dx, y + dy];
  switch (mark.kind) {
    case "line":
    case "hatch":
    case "full":
      return { ...mark, points: mark.points.map(moved) };
    case "dimension":
      return { ...mark, from: moved(mark.from), to: moved(mark.to) };
    case "note":
    case "led":
    case "words":
    case "dot":
      return { ...mark, at: moved(mark.at) };
  }
};
