import type { Unit } from "../../solver/length/length";
import { stringer, type StringerGiven } from "../../solver/layout/stringer";
import type { Point } from "../figure";
import { closed, type Draft, type DraftMark, inside, line, note, outside } from "./draft";

/** A cut stringer, or an open skirt cut like one. */
export interface CutBoard {
  readonly title: string;
  readonly unit: Unit;
  readonly given: StringerGiven;
  /** The rough upper floor down to the top level cut, where the board hangs on it. */
  readonly hang?: number;
}

/** Along the slope, and square to it on the upper side. */
const along = ({ rise, run }: StringerGiven, [x, y]: Point, on: number, up = 0): Point => {
  const slope = Math.hypot(rise, run);
  return [x + (on * run - up * rise) / slope, y + (on * rise + up * run) / slope];
};

/** Where the cuts lie: the foot on the rough floor, each tip and each inner corner, and the lower edge. */
const corners = (given: StringerGiven, throat: number) => {
  const { rise, run, risers, treadThickness, lowerBuildUp } = given;
  const treads = risers - 1;
  const foot: Point = [0, -lowerBuildUp];
  const tips = Array.from({ length: treads }, (_, step): Point => [step * run, (step + 1) * rise - treadThickness]);
  const inner = tips.map(([x, y]): Point => [x + run, y]);
  const under = along(given, inner[0] ?? foot, 0, -throat);
  const lowerEdge = (x: number): number => under[1] + ((x - under[0]) * rise) / run;
  const heel: Point = [under[0] + ((-lowerBuildUp - under[1]) * run) / rise, -lowerBuildUp];
  const top = inner[inner.length - 1] ?? foot;
  return { foot, tips, inner, heel, top, end: [top[0], lowerEdge(top[0])] as Point };
};

type Corners = ReturnType<typeof corners>;

/** What was taken off the foot, or left on it, by the line where the first cut would be a whole rise. */
const footMarks = ({ given }: CutBoard, { foot, tips, heel }: Corners, drop: number): DraftMark[] => {
  const whole = (tips[0]?.[1] ?? 0) - given.rise;
  if (drop === 0) return [];
  const at = -given.run / 3;
  return [
    line("dashed", [at * 1.4, whole], [Math.max(heel[0] / 2, given.run / 2), whole]),
    inside([at, whole], [at, foot[1]], Math.abs(drop), drop > 0 ? "drop" : "added at the foot", 0),
  ];
};

const topMarks = ({ given, hang }: CutBoard, { top }: Corners): DraftMark[] => {
  if (hang === undefined) return [];
  const reach = given.run * 1.2;
  const floor = top[1] + hang;
  return [
    line("thick", [top[0], floor], [top[0] + reach, floor]),
    line("thin", [top[0], Math.max(floor, top[1])], [top[0], Math.min(floor, top[1])]),
    line("thin", top, [top[0] + reach / 2, top[1]]),
    note([top[0] + reach, floor], "rough upper floor", "right"),
    inside([top[0] + reach / 3, top[1]], [top[0] + reach / 3, floor], hang, "hang"),
  ];
};

const dimensions = ({ given }: CutBoard, { foot, tips, inner, top }: Corners, found: ReturnType<typeof stringer>): DraftMark[] => {
  const { rise, run, boardWidth } = given;
  const deep = (rise * run) / Math.hypot(rise, run);
  const above = deep * 1.15;
  const [low, high] = [along(given, foot, 0, above), along(given, along(given, foot, 0, above), found.length)];
  const throatAt = inner[Math.floor((inner.length - 1) / 3)] ?? top;
  const widthAt = tips[Math.min(tips.length - 1, Math.ceil((2 * tips.length) / 3))] ?? top;
  const [, second] = tips;
  return [
    line("thin", foot, low),
    line("thin", top, high),
    inside(low, high, found.length, "length along the slope", 7),
    // The board's lower edge runs on past the ends of a short one, and is measured there.
    line("dashed", along(given, throatAt, 0, -found.throat), along(given, widthAt, 0, -boardWidth)),
    inside(along(given, throatAt, 0, -found.throat), throatAt, found.throat, "throat"),
    inside(along(given, widthAt, 0, -boardWidth), widthAt, boardWidth, "board"),
    outside("above", 0, tips[tips.length - 1] ?? foot, top, run, "run"),
    ...(second === undefined ? [] : [outside("left", 0, tips[0] ?? foot, second, rise, "rise")]),
  ];
};

/** A cut board from the side, going up to the right, or the sentence of why it cannot be cut. */
export const stringerDrawing = (board: CutBoard): Draft | string => {
  const { given, title, unit } = board;
  const found = stringer(given);
  if (found.throat <= 0) return "the cuts go through the board: its throat is 0 or less; a wider board";
  const all = corners(given, found.throat);
  const { foot, tips, inner, heel, top, end } = all;
  return {
    title,
    says: `${title} of ${given.risers} rises from the side, going up to the right, with throat, drop and length along the slope.`,
    unit,
    marks: [
      closed("thick", foot, ...tips.flatMap((tip, step): Point[] => [tip, inner[step] ?? tip]), end, heel),
      line("dashed", along(given, tips[0] ?? foot, 0), tips[tips.length - 1] ?? top),
      line("thick", [-given.run * 0.8, foot[1]], foot),
      line("thin", foot, [heel[0] + given.run * 0.8, foot[1]]),
      note([heel[0] + given.run * 0.8, foot[1]], "rough floor", "right"),
      ...footMarks(board, all, found.drop),
      ...topMarks(board, all),
      ...dimensions(board, all, found),
    ],
    notes: [
      `Plumb cut ${found.plumbCut.toFixed(1)}, level cut ${found.levelCut.toFixed(1)} degrees. Length from the foot of the first ` +
        "plumb cut to the back of the top level cut, along the slope. The first plumb cut is a rise less the drop.",
      "Throat and board square to the slope. Plumb cuts on the riser faces; what risers take is not taken off.",
    ],
  };
};
