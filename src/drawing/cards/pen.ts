import { textWidth } from "./letter-widths";

/** A place on a card in millimetres, down from its top. */
export type Spot = readonly [x: number, y: number];

export interface Box {
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
}

/** Weights of lines in millimetres. */
export const WEIGHT = { piece: 0.55, blade: 0.3, blank: 0.18, tape: 0.15, hatch: 0.13, hook: 0.7, frame: 0.8 } as const;
export const DASH = { blank: "0.8 0.6", square: "2 0.6 0.4 0.6" } as const;

export type Drawn =
  | {
      readonly kind: "line";
      readonly points: readonly Spot[];
      readonly weight: number;
      readonly dash?: string;
      readonly isClosed?: boolean;
      /** What is drawn, for whoever reads the drawing back. */
      readonly part?: string;
    }
  | { readonly kind: "circle"; readonly at: Spot; readonly radius: number }
  | {
      readonly kind: "text";
      readonly at: Spot;
      readonly text: string;
      readonly size: number;
      readonly isBold: boolean;
      readonly anchor: Anchor;
      readonly part?: string;
    };

export type Anchor = "start" | "middle" | "end";
type Text = Extract<Drawn, { readonly kind: "text" }>;

export const line = (points: readonly Spot[], weight: number, more: { readonly dash?: string; readonly part?: string } = {}): Drawn => ({
  kind: "line", points, weight, ...more,
});

export const closed = (points: readonly Spot[], weight: number, more: { readonly dash?: string; readonly part?: string } = {}): Drawn => ({
  kind: "line", points, weight, isClosed: true, ...more,
});

export const box = ({ left, right, top, bottom }: Box, weight: number): Drawn =>
  closed([[left, top], [right, top], [right, bottom], [left, bottom]], weight);

interface Lettering {
  readonly size: number;
  readonly isBold?: boolean;
  readonly anchor?: Anchor;
  readonly part?: string;
}

export const text = (at: Spot, words: string, { size, isBold = false, anchor = "start", part }: Lettering): Text => ({
  kind: "text", at, text: words, size, isBold, anchor, ...(part === undefined ? {} : { part }),
});

/** How far letters reach over and under the line they stand on, in parts of their size. */
const OVER = 0.76;
const UNDER = 0.24;

const START: Readonly<Record<Anchor, number>> = { start: 0, middle: 0.5, end: 1 };

export const textBox = ({ at: [x, y], text: words, size, isBold, anchor }: Text): Box => {
  const width = textWidth(words, size, isBold);
  const left = x - width * START[anchor];
  return { left, right: left + width, top: y - size * OVER, bottom: y + size * UNDER };
};

/** Of a strike: how heavy, how far past its text, and how high over the line the text stands on in parts of its size. */
const STRIKE = { weight: 0.45, past: 0.7, over: 0.35 } as const;

/** A text that nobody is to work to, with a line through it. */
export const struck = (drawn: Text): readonly Drawn[] => {
  const { left, right } = textBox(drawn);
  const y = drawn.at[1] - drawn.size * STRIKE.over;
  return [drawn, line([[left - STRIKE.past, y], [right + STRIKE.past, y]], STRIKE.weight, { part: "strike" })];
};

export const doMeet = (one: Box, other: Box): boolean =>
  one.left < other.right && other.left < one.right && one.top < other.bottom && other.top < one.bottom;

/** The circle an act's number stands in, and the size of that number. */
export const NUMBER_RADIUS = 2.05;
const NUMBER_SIZE = 2.7;
/** From the middle of figures down to the line they stand on, in parts of their size. */
const HALF_FIGURE = 0.36;

export const baseline = (middle: number, size: number): number => middle + size * HALF_FIGURE;

export const numbered = ([x, y]: Spot, number: string): readonly Drawn[] => [
  { kind: "circle", at: [x, y], radius: NUMBER_RADIUS },
  text([x, baseline(y, NUMBER_SIZE)], number, { size: NUMBER_SIZE, isBold: true, anchor: "middle" }),
];

/** A hundredth of a millimetre is seen by nobody; what reads a drawing back measures finer. */
const PARTS = 1000;
const rounded = (value: number): string => String(Math.round(value * PARTS) / PARTS);
const escaped = (words: string): string =>
  words.replace(/&/g, "&amp;").replace(/</g, "&lt;").replace(/>/g, "&gt;").replace(/"/g, "&quot;");
const named = (part: string | undefined): string => (part === undefined ? "" : ` data-part="${escaped(part)}"`);

const svgOf = (drawn: Drawn): string => {
  switch (drawn.kind) {
    case "line": {
      const { points, weight, dash, isClosed, part } = drawn;
      const places = points.map((spot) => spot.map(rounded).join(",")).join(" ");
      const dashed = dash === undefined ? "" : ` stroke-dasharray="${dash}"`;
      return `<${isClosed ? "polygon" : "polyline"}${named(part)} points="${places}" stroke-width="${weight}"${dashed}/>`;
    }
    case "circle":
      return `<circle cx="${rounded(drawn.at[0])}" cy="${rounded(drawn.at[1])}" r="${drawn.radius}" stroke-width="${WEIGHT.blade}"/>`;
    case "text": {
      const { at, size, isBold, anchor, part } = drawn;
      const looks = `${isBold ? ' font-weight="700"' : ""}${anchor === "start" ? "" : ` text-anchor="${anchor}"`}`;
      return (
        `<text${named(part)} x="${rounded(at[0])}" y="${rounded(at[1])}" font-size="${rounded(size)}"${looks} fill="#000" stroke="none">` +
        `${escaped(drawn.text)}</text>`
      );
    }
  }
};

/** None is wider than the one that texts are measured in. */
const FACES = "Arial, Helvetica, 'Liberation Sans', 'DejaVu Sans', sans-serif";

/** Black and white SVG as wide and high as said, in millimetres. */
export const svg = (drawn: readonly Drawn[], width: number, height: number, says: string): string =>
  `<svg xmlns="http://www.w3.org/2000/svg" role="img" aria-label="${escaped(says)}" width="${width}mm" height="${height}mm" ` +
  `viewBox="0 0 ${width} ${height}" font-family="${FACES}" fill="none" stroke="#000">` +
  `${drawn.map(svgOf).join("")}</svg>`;
