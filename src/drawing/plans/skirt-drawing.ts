import type { Unit } from "../../solver/length/length";
import { skirt, type SkirtGiven } from "../../solver/layout/skirt";
import type { Point } from "../figure";
import { closed, type Draft, inside, line, outside } from "./draft";

/** The finished steps behind it, thin. */
const steps = ({ rise, run, risers, nosing, treadThickness }: SkirtGiven): Point[] =>
  Array.from({ length: risers }, (_, step): Point[] => {
    const [face, top] = [step * run, (step + 1) * rise];
    return [[face, step * rise], [face, top - treadThickness], [face - nosing, top - treadThickness], [face - nosing, top]];
  }).flat();

/** A closed skirt from the stair's side, going up to the right, or the sentence of why it has no such shape. */
export const skirtDrawing = (given: SkirtGiven, unit: Unit): Draft | string => {
  const { rise, run, risers, nosing, shows, foot, head } = given;
  const found = skirt(given);
  const slope = Math.hypot(rise, run);
  const [first, last]: readonly [Point, Point] = [[-nosing, rise], [(risers - 1) * run - nosing, risers * rise]];
  const top = (x: number): number => rise + ((x + nosing) * rise) / run + (shows * slope) / run;
  const deep = (found.closedSkirtWidth * slope) / run;
  const [from, to] = [first[0] - foot, last[0] + head];
  if (top(from) <= 0) return "skirt foot: the board meets the floor before its end; a shorter one";
  const meets = from + ((deep - top(from)) * run) / rise;
  const square = (at: Point, by: number): Point => [at[0] - (by * rise) / slope, at[1] + (by * run) / slope];
  const upper = (share: number): Point => [from + (to - from) * share, top(from + (to - from) * share)];
  // Where the board begins, along the slope, on its upper edge.
  const begins = square([from, 0], (top(from) * run) / slope);
  const showsAt: Point = [last[0] - run * 1.5, last[1] - rise * 1.5];
  return {
    title: "Closed skirt",
    says: `A closed skirt of ${risers} rises from the side, going up to the right, with what it shows over the nosing line.`,
    unit,
    marks: [
      closed("thick", [from, 0], [from, top(from)], [to, top(to)], [to, top(to) - deep], [meets, 0]),
      line("thin", [from - run * 0.6, 0], [meets + run * 0.6, 0]),
      line("thin", ...steps(given), [to + run * 0.4, risers * rise]),
      line("dashed", first, last),
      line("thin", [from, 0], begins),
      inside(begins, [to, top(to)], found.closedSkirtLength, "length along the slope", 7),
      inside(square(upper(0.45), -found.closedSkirtWidth), upper(0.45), found.closedSkirtWidth, "width"),
      inside(showsAt, square(showsAt, shows), shows, "shows"),
      ...(foot === 0 ? [] : [outside("below", 0, [from, 0], first, foot, "foot")]),
      ...(head === 0 ? [] : [outside("above", 0, last, [to, top(to)], head, "head")]),
    ],
    notes: [
      `Plumb ends, ${found.plumbCut.toFixed(1)} degrees; a level cut on the floor, ${found.levelCut.toFixed(1)} degrees. Width and what ` +
        "it shows over the nosing line, square to the slope.",
      "Foot level from the first nosing, head level from the landing nosing. The finished steps stand before it, thin.",
    ],
  };
};
