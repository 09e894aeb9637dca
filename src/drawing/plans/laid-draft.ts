import { lengthOf, type Unit } from "../../solver/length/length";
import type { Point } from "../figure";
import { type Dimension, dimensionText, type Draft, type DraftMark, type LineStyle, type Side } from "./draft";
import { hatching } from "./hatching";
import type { Outline, PlacedText, Spot } from "./paper";
import { textPlaces, type Settled, type Wish } from "./text-places";

export interface LaidLine {
  readonly spots: readonly Spot[];
  readonly style: LineStyle | "hatch";
}

export interface LaidDimension {
  readonly length: readonly [Spot, Spot];
  /** Ticks across its ends, and lines out to them. */
  readonly others: readonly (readonly [Spot, Spot])[];
  readonly text: Settled;
  /** Its line is one that is drawn already. */
  readonly isRunning: boolean;
}

/** A draft at a scale on the paper, every text in its place. */
export interface LaidDraft {
  readonly lines: readonly LaidLine[];
  readonly dots: readonly Spot[];
  readonly dimensions: readonly LaidDimension[];
  readonly notes: readonly Settled[];
}

/** From the drawing to its first row of dimensions, and from row to row. */
const FIRST_ROW = 8;
const ROW = 6.5;
const TICK = 1.1;
/** A line out to a dimension starts short of what is measured and ends past the dimension. */
const SHORT = 0.8;
const PAST = 1.2;
/** From a line to the foot of a text above it, and below it. */
const ABOVE = 1.4;
const BELOW = 3.4;
const BESIDE = 1.8;
const HATCH_APART = 2.2;
const UPRIGHT_STEP = 3;
/** From the foot of a letter to its middle. */
const HALF_LETTER = 1;

interface Bounds {
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
}

const boundsOf = (spots: readonly Spot[]): Bounds => {
  const [xs, ys] = [spots.map(([x]) => x), spots.map(([, y]) => y)];
  return { left: Math.min(...xs), right: Math.max(...xs), top: Math.min(...ys), bottom: Math.max(...ys) };
};

const moved = ([x, y]: Spot, [dx, dy]: Spot, by: number): Spot => [x + dx * by, y + dy * by];

const rowAt = (bounds: Bounds, side: Side, row: number): number => {
  const away = FIRST_ROW + row * ROW;
  if (side === "below") return bounds.bottom + away;
  if (side === "above") return bounds.top - away;
  return side === "left" ? bounds.left - away : bounds.right + away;
};

/** Where a dimension's line runs: level or plumb beside the drawing, or along what it measures. */
const endsOf = ({ place }: Dimension, from: Spot, to: Spot, bounds: Bounds): readonly [Spot, Spot] => {
  if ("side" in place) {
    const at = rowAt(bounds, place.side, place.row);
    return place.side === "above" || place.side === "below" ? [[from[0], at], [to[0], at]] : [[at, from[1]], [at, to[1]]];
  }
  if ("beside" in place) return [from, to];
  const long = Math.hypot(to[0] - from[0], to[1] - from[1]) || 1;
  const normal: Spot = [(to[1] - from[1]) / long, -(to[0] - from[0]) / long];
  return [moved(from, normal, place.aside), moved(to, normal, place.aside)];
};

/** The line out from what is measured to its dimension; none where the dimension lies on it. */
const lineOut = (measured: Spot, end: Spot): readonly (readonly [Spot, Spot])[] => {
  const long = Math.hypot(end[0] - measured[0], end[1] - measured[1]);
  if (long < SHORT) return [];
  const way: Spot = [(end[0] - measured[0]) / long, (end[1] - measured[1]) / long];
  return [[moved(measured, way, SHORT), moved(end, way, PAST)]];
};

const DEGREES = 180 / Math.PI;

/** Along a dimension, its middle first. */
const SHARES = [0.5, 0.38, 0.62, 0.26, 0.74] as const;

/** On the line, under it, and past either end; read from below or from the right. */
const likesOf = (text: string, [a, b]: readonly [Spot, Spot]): readonly PlacedText[] => {
  const isBack = b[0] < a[0] - 1e-6 || (Math.abs(b[0] - a[0]) <= 1e-6 && b[1] > a[1]);
  const [from, to] = isBack ? [b, a] : [a, b];
  const long = Math.hypot(to[0] - from[0], to[1] - from[1]) || 1;
  const way: Spot = [(to[0] - from[0]) / long, (to[1] - from[1]) / long];
  const up: Spot = [way[1], -way[0]];
  const turned = Math.atan2(way[1], way[0]) * DEGREES;
  const onLine = -1;
  const along = [ABOVE, -BELOW].flatMap((away) => SHARES.map((share): PlacedText => ({
    at: moved(moved(from, way, share * long), up, away), text, anchor: "middle", turned,
  })));
  return [
    ...along,
    { at: moved(moved(to, way, BESIDE), up, onLine), text, anchor: "start", turned },
    { at: moved(moved(from, way, -BESIDE), up, onLine), text, anchor: "end", turned },
  ];
};

const NOTE_AT: Readonly<Record<Side, (spot: Spot) => Pick<PlacedText, "at" | "anchor">>> = {
  above: ([x, y]) => ({ at: [x, y - 1.6], anchor: "middle" }),
  below: ([x, y]) => ({ at: [x, y + 4], anchor: "middle" }),
  left: ([x, y]) => ({ at: [x - 1.6, y + 1], anchor: "end" }),
  right: ([x, y]) => ({ at: [x + 1.6, y + 1], anchor: "start" }),
};

const noteWish = (text: string, at: Spot, side: Side): Wish => {
  const sides: readonly Side[] = [side, "above", "below", "right", "left"];
  return { text, of: at, likes: sides.map((one) => ({ ...NOTE_AT[one](at), text, turned: 0 })) };
};

/** Read from the right, over its spot or under it; a little farther off where another stands there. */
const uprightWish = (text: string, at: Spot, side: Side): Wish => {
  const isAbove = side !== "below";
  const places = [0, 1, 2, 3].flatMap((more) => [1, 2.6, -0.6].map((aside): PlacedText => {
    const away = 1.6 + more * UPRIGHT_STEP;
    return { at: [at[0] + aside, at[1] + (isAbove ? -away : away)], text, anchor: isAbove ? "start" : "end", turned: -90 };
  }));
  return { text, of: at, likes: places };
};

/** Where it was put, its letters' middle on the spot. */
const wordsWish = (text: string, at: Spot, isUpright: boolean): Wish => {
  const placed: PlacedText = isUpright
    ? { at: [at[0] + HALF_LETTER, at[1]], text, anchor: "middle", turned: -90 }
    : { at: [at[0], at[1] + HALF_LETTER], text, anchor: "middle", turned: 0 };
  return { text, of: at, likes: [placed] };
};

const linesOf = (marks: readonly DraftMark[], onPaper: (point: Point) => Spot): LaidLine[] =>
  marks.flatMap((mark): LaidLine[] => {
    if (mark.kind === "line") return [{ spots: mark.points.map(onPaper), style: mark.style }];
    if (mark.kind !== "hatch") return [];
    return hatching(mark.points.map(onPaper), mark.apart ?? HATCH_APART, mark.falls === true).map((spots) => ({ spots, style: "hatch" }));
  });

const segmentsOf = (spots: readonly Spot[]): Outline[] => spots.slice(1).map((to, place) => [spots[place] ?? to, to]);

/** Millimetres on the paper for one unit, at a scale of 1 to so many. */
export const paperPer = (unit: Unit, scale: number): number => lengthOf(1, unit).toNumber() / scale;

const laidDimension = (mark: Dimension, onPaper: (point: Point) => Spot, bounds: Bounds): Omit<LaidDimension, "text"> => {
  const [from, to] = [onPaper(mark.from), onPaper(mark.to)];
  const length = endsOf(mark, from, to, bounds);
  if ("beside" in mark.place) return { length, others: [], isRunning: true };
  const [a, b] = length;
  const long = Math.hypot(b[0] - a[0], b[1] - a[1]) || 1;
  const [dx, dy] = [(b[0] - a[0]) / long, (b[1] - a[1]) / long];
  // Half way between the line and its square, as a pen strikes them.
  const slant: Spot = [(dx + dy) * Math.SQRT1_2, (dy - dx) * Math.SQRT1_2];
  const ticks = length.map((end) => [moved(end, slant, -TICK), moved(end, slant, TICK)] as const);
  return { length, others: [...ticks, ...lineOut(from, a), ...lineOut(to, b)], isRunning: false };
};

type Words = Extract<DraftMark, { readonly kind: "note" | "led" | "words" }>;
const isWords = (mark: DraftMark): mark is Words => mark.kind === "note" || mark.kind === "led" || mark.kind === "words";

/** Puts a draft on the paper at a scale of 1 to so many. */
export const laidDraft = ({ unit, marks }: Draft, scale: number): LaidDraft => {
  const per = paperPer(unit, scale);
  const onPaper = ([x, y]: Point): Spot => [x * per, -y * per];
  const lines = linesOf(marks, onPaper);
  const bounds = boundsOf(lines.flatMap(({ spots }) => spots));
  const measured = marks.filter((mark): mark is Dimension => mark.kind === "dimension");
  const dimensions = measured.map((mark) => laidDimension(mark, onPaper, bounds));
  const dots = marks.flatMap((mark) => (mark.kind === "dot" ? [onPaper(mark.at)] : []));
  const wordsOf = marks.filter(isWords);
  const wishes = [
    ...measured.map((mark, place): Wish => {
      const [a, b] = dimensions[place]?.length ?? [[0, 0], [0, 0]];
      const figure = dimensionText(mark.value, unit);
      const text = mark.name === undefined ? figure : `${mark.name} ${figure}`;
      if ("beside" in mark.place) {
        const { beside, isUpright } = mark.place;
        return isUpright === true ? uprightWish(text, b, beside) : noteWish(text, b, beside);
      }
      return { text, of: [(a[0] + b[0]) / 2, (a[1] + b[1]) / 2], likes: likesOf(text, [a, b]) };
    }),
    ...wordsOf.map((mark): Wish => {
      if (mark.kind === "note") return noteWish(mark.text, onPaper(mark.at), mark.side);
      if (mark.kind === "led") return { text: mark.text, of: onPaper(mark.at), likes: [] };
      return wordsWish(mark.text, onPaper(mark.at), mark.isUpright);
    }),
  ];
  const settled = textPlaces(wishes, [
    ...lines.flatMap(({ spots }) => segmentsOf(spots)),
    ...dimensions.flatMap(({ length, others }) => [length, ...others]),
    ...dots.map(([x, y]): Outline => [[x - 0.6, y - 0.6], [x + 0.6, y - 0.6], [x + 0.6, y + 0.6], [x - 0.6, y + 0.6]]),
  ], marks.flatMap((mark) => (mark.kind === "full" ? [mark.points.map(onPaper)] : [])));
  return {
    lines, dots,
    dimensions: dimensions.flatMap((one, place) => {
      const text = settled[place];
      return text === undefined ? [] : [{ ...one, text }];
    }),
    // Words led from afar say nothing without their line.
    notes: settled.slice(dimensions.length).filter(({ leader }, place) => leader !== undefined || wordsOf[place]?.kind !== "led"),
  };
};
