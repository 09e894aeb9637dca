import type { Drawing } from "../../../src/drawing/plans/drawn-call";

export interface Box {
  readonly text: string;
  /** Corners, in order. */
  readonly corners: readonly (readonly [number, number])[];
}

export interface ParsedDimension {
  readonly text: string;
  /** As drawn, over the scale, in the unit of the drawing. */
  readonly length: number;
  readonly ends: readonly [readonly [number, number], readonly [number, number]];
}

export interface ParsedDraft {
  readonly scale: number;
  readonly unit: string;
  readonly dimensions: readonly ParsedDimension[];
  readonly boxes: readonly Box[];
  readonly segments: readonly (readonly [readonly [number, number], readonly [number, number]])[];
  readonly texts: readonly string[];
}

/** By definition. */
const MILLIMETRES_PER_INCH = 25.4;
const SIZE = 2.8;

/** Widths of Verdana and DejaVu Sans, the widest faces pages usually fall back to, in thousandths of the size, rounded up; from memory. */
const WIDTHS: Readonly<Record<string, number>> = {
  " ": 352, "i": 278, "j": 345, "l": 278, "t": 395, "f": 356, "r": 427, "m": 975, "w": 819, "'": 275, '"': 460, ".": 364, ",": 364,
  ":": 454, ";": 454, "/": 454, "(": 455, ")": 455, "M": 864, "W": 989, "-": 455,
};
const widthOf = (text: string): number =>
  [...text].reduce((sum, letter) => sum + (WIDTHS[letter] ?? (/[A-Z]/.test(letter) ? 790 : 637)), 0) * (SIZE / 1000);

const unescaped = (text: string): string =>
  text.replaceAll("&quot;", '"').replaceAll("&lt;", "<").replaceAll("&gt;", ">").replaceAll("&amp;", "&");

const attribute = (tag: string, name: string): string | undefined => new RegExp(` ${name}="([^"]*)"`).exec(tag)?.[1];
const number = (tag: string, name: string): number => Number(attribute(tag, name) ?? Number.NaN);

const boxOf = (tag: string, text: string): Box => {
  const [x, y, width] = [number(tag, "x"), number(tag, "y"), widthOf(text)];
  const left = { start: 0, middle: -width / 2, end: -width }[attribute(tag, "text-anchor") ?? "start"] ?? 0;
  const turned = Number(/rotate\((-?[\d.]+)/.exec(tag)?.[1] ?? 0) * (Math.PI / 180);
  // The body of a letter, from the top of a capital to the foot of a g.
  const [top, bottom] = [-0.76 * SIZE, 0.24 * SIZE];
  const corners = ([[left, top], [left + width, top], [left + width, bottom], [left, bottom]] as const).map(([dx, dy]) => [
    x + dx * Math.cos(turned) - dy * Math.sin(turned), y + dx * Math.sin(turned) + dy * Math.cos(turned),
  ] as const);
  return { text, corners };
};

const TEXT = /<text ([^>]*)>([^<]*)<\/text>/g;

const boxesIn = (svg: string): Box[] => [...svg.matchAll(TEXT)].map(([, tag = "", text = ""]) => boxOf(` ${tag}`, unescaped(text)));

const endsOf = (tag: string): ParsedDimension["ends"] => [[number(tag, "x1"), number(tag, "y1")], [number(tag, "x2"), number(tag, "y2")]];

/** Reads a finished drawing: lengths as drawn over the scale, texts with the boxes of a wide face, and every line. */
export const parsedDraft = ({ svg }: Pick<Drawing, "svg">): ParsedDraft => {
  const [head = ""] = /<svg [^>]*>/.exec(svg) ?? [];
  const scale = number(head, "data-scale");
  const unit = attribute(head, "data-unit") ?? "";
  const per = (unit === "in" ? MILLIMETRES_PER_INCH : 1) / scale;
  const dimensions = [...svg.matchAll(/<g class="dimension">(.*?)<\/g>/g)].map(([, inside = ""]) => {
    const [line = ""] = /<line class="length"[^>]*>/.exec(inside) ?? [];
    const ends = endsOf(line);
    const text = boxesIn(inside)[0]?.text ?? "";
    return { text, ends, length: Math.hypot(ends[1][0] - ends[0][0], ends[1][1] - ends[0][1]) / per };
  });
  const polylines = [...svg.matchAll(/<polyline [^>]*points="([^"]*)"/g)].flatMap(([, points = ""]) => {
    const spots = points.split(" ").map((spot) => spot.split(",").map(Number) as unknown as readonly [number, number]);
    return spots.slice(1).map((to, place) => [spots[place] ?? to, to] as const);
  });
  const lines = [...svg.matchAll(/<line [^>]*>/g)].filter(([tag]) => !tag.includes('stroke="none"')).map(([tag]) => endsOf(tag));
  const boxes = boxesIn(svg);
  return { scale, unit, dimensions, boxes, segments: [...polylines, ...lines], texts: boxes.map(({ text }) => text) };
};

type Corners = readonly (readonly [number, number])[];

/** Whether two convex shapes share more than a hair: the projections on the square of every edge overlap. */
export const overlap = (one: Corners, other: Corners): boolean =>
  [one, other].flatMap((shape) => shape.map(([x, y], place) => {
    const [u, v] = shape[(place + 1) % shape.length] ?? [x, y];
    return [v - y, x - u] as const;
  })).filter(([x, y]) => x !== 0 || y !== 0).every(([nx, ny]) => {
    const spread = (shape: Corners) => shape.map(([x, y]) => x * nx + y * ny);
    const [a, b] = [spread(one), spread(other)];
    return Math.max(...a) > Math.min(...b) + 1e-6 && Math.max(...b) > Math.min(...a) + 1e-6;
  });

interface Bounded {
  readonly name: string;
  readonly corners: Corners;
  readonly least: readonly [number, number];
  readonly most: readonly [number, number];
}

const bounded = (name: string, corners: Corners): Bounded => {
  const [xs, ys] = [corners.map(([x]) => x), corners.map(([, y]) => y)];
  return { name, corners, least: [Math.min(...xs), Math.min(...ys)], most: [Math.max(...xs), Math.max(...ys)] };
};

/** Most shapes are apart level or plumb, which is soon seen. */
const doMeet = (one: Bounded, other: Bounded): boolean =>
  one.least[0] <= other.most[0] && other.least[0] <= one.most[0] && one.least[1] <= other.most[1] && other.least[1] <= one.most[1] &&
  overlap(one.corners, other.corners);

/** Texts over texts or over lines; none in a drawing that is read. */
export const collisions = ({ boxes, segments }: ParsedDraft): string[] => {
  const texts = boxes.map(({ text, corners }) => bounded(text, corners));
  const lines = segments.map((ends) => bounded(JSON.stringify(ends), ends));
  return texts.flatMap((one, place) =>
    [...texts.slice(place + 1), ...lines].filter((other) => doMeet(one, other)).map((other) => `${one.name} | ${other.name}`));
};

/** The dimension whose text begins so. */
export const dimension = ({ dimensions }: ParsedDraft, begins: string): ParsedDimension => {
  const found = dimensions.find(({ text }) => text.startsWith(begins));
  if (found === undefined) throw new Error(`no dimension ${begins} among ${dimensions.map(({ text }) => text).join("; ")}`);
  return found;
};
