import type { Unit } from "../../solver/length/length";
import type { TreadBalusters } from "../../solver/layout/tread-balusters";
import type { Point } from "../figure";
import { inRows } from "./dimension-rows";
import { box, closed, type Draft, type DraftMark, hatch, inside, line, note, outside, upright } from "./draft";

export interface LevelBalusters {
  readonly opening: number;
  readonly width: number;
  readonly count: number;
  readonly gap: number;
  /** One run of a stair that goes on, its first baluster flush with the riser face. */
  readonly isRepeated: boolean;
  readonly unit: Unit;
}

/** Balusters between two posts, or along one run, from above. */
export const balustersDrawing = ({ opening, width, count, gap, isRepeated, unit }: LevelBalusters): Draft => {
  const before = isRepeated ? 0 : gap;
  const starts = Array.from({ length: count }, (_, index) => before + index * (width + gap));
  const post = Math.max(width * 1.6, opening / 40);
  const posts = isRepeated ? [] : [box([-post, -post / 2], [0, post / 2]), box([opening, -post / 2], [opening + post, post / 2])];
  const [first = 0, second = first] = starts;
  const gapFrom = isRepeated ? first + width : 0;
  return {
    title: isRepeated ? "Balusters of one run" : "Balusters between posts",
    says: `${count} balusters from above, ${isRepeated ? "along one run of a stair" : "between two posts"}, with their centres.`,
    unit,
    marks: [
      ...posts.flatMap((area): DraftMark[] => [closed("thick", ...area), hatch(area, { apart: 1.4 })]),
      ...(isRepeated ? [0, opening].map((face) => line("dashed", [face, -2 * width], [face, 2 * width])) : []),
      line("thin", [0, -width], [0, width]),
      ...starts.map((start) => closed("thick", ...box([start, -width / 2], [start + width, width / 2]))),
      ...starts.map((start, index) => {
        const centre = start + width / 2;
        return upright([0, width / 2], [centre, width / 2], centre, `centre ${index + 1}:`, "above");
      }),
      ...inRows([
        { side: "below", from: [gapFrom, 0], to: [gapFrom + gap, 0], value: gap, name: "gap" },
        { side: "below", from: [second, -width / 2], to: [second + width, -width / 2], value: width, name: "baluster" },
        { side: "below", from: [0, -width], to: [opening, -width], value: opening, name: isRepeated ? "run" : "opening" },
      ]),
    ],
    notes: [
      `Centres from ${isRepeated ? "the riser face below, level" : "the face of the left post"}, each from the same end. All gaps are ` +
        "equal and clear, level.",
    ],
  };
};

export interface BalustersOnTread {
  readonly rise: number;
  readonly run: number;
  readonly nosing: number;
  readonly tread: number;
  readonly width: number;
  readonly found: TreadBalusters;
  readonly unit: Unit;
}

/** Without a length, balusters are drawn so many rises high, and cut off. */
const NOMINAL_RISES = 2;

/** The balusters of one tread from the side, the stair going up to the right. */
export const treadBalustersDrawing = (given: BalustersOnTread): Draft => {
  const { rise, run, nosing, tread, width, found, unit } = given;
  const { balusters, gap } = found;
  const isLong = balusters.every(({ length }) => length !== undefined);
  const high = (part: number | undefined): number => part ?? NOMINAL_RISES * rise;
  const step = (x: number, y: number): Point[] => [[x, y - rise], [x, y - tread], [x - nosing, y - tread], [x - nosing, y], [x + run, y]];
  const [first] = balusters;
  const last = balusters[balusters.length - 1];
  const slope = rise / run;
  const after: Point = [(first?.centre ?? 0) + width / 2, high(first?.longPoint)];
  const rail = (x: number): Point => [x, high(first?.length) + (x - (first?.centre ?? 0)) * slope];
  return {
    title: "Balusters of a tread",
    says: `${balusters.length} balusters of one tread from the side, the stair going up to the right, with centres from the riser face.`,
    unit,
    marks: [
      line("thick", ...step(0, 0), ...step(run, rise)),
      ...balusters.map(({ centre, shortPoint, longPoint }) => {
        const [near, far] = [centre - width / 2, centre + width / 2];
        return closed("thin", [near, 0], [near, high(shortPoint)], [far, high(longPoint)], [far, 0]);
      }),
      ...(isLong ? [line("thick", rail(-nosing), rail(run + width))] : []),
      ...balusters.map(({ centre, baluster }) => upright([0, 0], [centre, 0], centre, `centre ${baluster}:`, "below")),
      ...balusters.flatMap(({ centre, length, baluster }): DraftMark[] =>
        length === undefined ? [] : [inside([centre, 0], [centre, length], length, `length ${baluster}:`)]),
      outside("above", 0, after, [after[0] + gap, after[1]], gap, "gap"),
      outside("below", 2, [0, -rise], [run, -rise], run, "run"),
      isLong ? note(rail(run + width), "underside of the rail", "right") : note([last?.centre ?? 0, high(undefined)], "cut off here"),
    ],
    notes: [
      "Centres from the riser face below, level. The next tread begins with a baluster the same gap on; gaps are clear, level.",
      isLong
        ? "Lengths on the centre, from the tread to the underside of the rail."
        : "For lengths give handrail height in the stair table, and the rail depth.",
    ],
  };
};
