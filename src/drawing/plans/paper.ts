/** A point on the paper, in millimetres from its upper left corner, right and down. */
export type Spot = readonly [x: number, y: number];

/** Corners of something flat on the paper, in order; two make a line. */
export type Outline = readonly Spot[];

const spans = (outline: Outline, [ax, ay]: Spot): readonly [number, number] => {
  let [least, most] = [Infinity, -Infinity];
  for (const [x, y] of outline) {
    const along = x * ax + y * ay;
    least = Math.min(least, along);
    most = Math.max(most, along);
  }
  return [least, most];
};

const normals = (outline: Outline): Spot[] =>
  outline.map(([x, y], place): Spot => {
    const [u, v] = outline[(place + 1) % outline.length] ?? [x, y];
    return [v - y, x - u];
  });

/** Whether two convex outlines share any of the paper: no line can be drawn between them. */
export const isOver = (one: Outline, other: Outline): boolean => {
  const isApart = (normal: Spot): boolean => {
    if (normal[0] === 0 && normal[1] === 0) return false;
    const [a, b] = spans(one, normal);
    const [c, d] = spans(other, normal);
    return b <= c || d <= a;
  };
  return !normals(one).some(isApart) && !normals(other).some(isApart);
};

/** Height of a letter's body, and of a line of text with the room around it. */
export const TEXT_SIZE = 2.8;
const ASCENT = 0.95;
const DESCENT = 0.25;
const ROOM = 0.35;

const NARROW = new Set([..."ijlI.,:;'|!()[]"]);
const WIDE = new Set([..."mwMW@%"]);
/** Of a wide face, in parts of the size, so that text fits whatever face the reader has. */
const NARROW_LETTER = 0.46;
const LETTER = 0.68;
const CAPITAL = 0.8;
const WIDE_LETTER = 1;
const SPACE = 0.38;

const letterWidth = (letter: string): number => {
  if (letter === " ") return SPACE;
  if (NARROW.has(letter)) return NARROW_LETTER;
  if (WIDE.has(letter)) return WIDE_LETTER;
  return /[A-Z]/.test(letter) ? CAPITAL : LETTER;
};

export const textWidth = (text: string): number => [...text].reduce((sum, letter) => sum + letterWidth(letter), 0) * TEXT_SIZE;

export type Anchor = "start" | "middle" | "end";

/** A text on the paper; turned about where it stands, in degrees the way of the clock. */
export interface PlacedText {
  readonly at: Spot;
  readonly text: string;
  readonly anchor: Anchor;
  readonly turned: number;
}

const START: Readonly<Record<Anchor, number>> = { start: 0, middle: -0.5, end: -1 };
const RADIANS = Math.PI / 180;

/** What a text covers, with a little room around it. */
export const textOutline = ({ at, text, anchor, turned }: PlacedText): Outline => {
  const width = textWidth(text);
  const left = START[anchor] * width - ROOM;
  const [right, top, bottom] = [left + width + 2 * ROOM, -ASCENT * TEXT_SIZE - ROOM / 4, DESCENT * TEXT_SIZE + ROOM / 4];
  const [cos, sin] = [Math.cos(turned * RADIANS), Math.sin(turned * RADIANS)];
  return ([[left, top], [right, top], [right, bottom], [left, bottom]] as const).map(([x, y]): Spot => [
    at[0] + x * cos - y * sin, at[1] + x * sin + y * cos,
  ]);
};
