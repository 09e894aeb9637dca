import { textWidth } from "../../../src/drawing/cards/letter-widths";

/** Reads a card back from its SVG, by no figure of the program that drew it. */

export type Spot = readonly [x: number, y: number];

export interface Path {
  readonly part: string;
  readonly points: readonly Spot[];
  readonly isClosed: boolean;
}

export interface Text {
  readonly part: string;
  readonly text: string;
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
  readonly size: number;
}

export interface Card {
  readonly paths: readonly Path[];
  readonly circles: readonly { readonly x: number; readonly y: number; readonly r: number }[];
  readonly texts: readonly Text[];
}

const attribute = (tag: string, name: string): string => new RegExp(` ${name}="([^"]*)"`).exec(tag)?.[1] ?? "";
const plain = (text: string): string =>
  text.replace(/&lt;/g, "<").replace(/&gt;/g, ">").replace(/&quot;/g, '"').replace(/&amp;/g, "&");

const textOf = (tag: string, content: string): Text => {
  const [x, y, size] = ["x", "y", "font-size"].map((name) => Number(attribute(tag, name))) as [number, number, number];
  const text = plain(content);
  const width = textWidth(text, size, attribute(tag, "font-weight") === "700");
  const anchor = attribute(tag, "text-anchor");
  const left = anchor === "end" ? x - width : anchor === "middle" ? x - width / 2 : x;
  // Figures and capitals reach 0.73 of their size up, tails 0.22 down, as DejaVu Sans has them.
  const tail = /[gjpqy,;()_/]/.test(text) ? 0.22 : 0.02;
  return { part: attribute(tag, "data-part"), text, left, right: left + width, top: y - 0.73 * size, bottom: y + tail * size, size };
};

export const readCard = (svg: string): Card => ({
  paths: [...svg.matchAll(/<(polygon|polyline)([^>]*)\/>/g)].map(([, kind, tag = ""]) => ({
    part: attribute(tag, "data-part"),
    isClosed: kind === "polygon",
    points: attribute(tag, "points").split(" ").map((pair) => pair.split(",").map(Number) as unknown as Spot),
  })),
  circles: [...svg.matchAll(/<circle([^>]*)\/>/g)].map(([, tag = ""]) => {
    const [x, y, r] = ["cx", "cy", "r"].map((name) => Number(attribute(tag, name))) as [number, number, number];
    return { x, y, r };
  }),
  texts: [...svg.matchAll(/<text([^>]*)>([^<]*)<\/text>/g)].map(([, tag = "", content = ""]) => textOf(tag, content)),
});

export const path = ({ paths }: Card, part: string): Path => {
  const found = paths.find((one) => one.part === part);
  if (found === undefined) throw new Error(`nothing is drawn of ${part}`);
  return found;
};

/** Whether a line passes through a box: by halving it as often as it takes. */
const crosses = ([x1, y1]: Spot, [x2, y2]: Spot, box: Text): boolean => {
  if (Math.max(x1, x2) < box.left || Math.min(x1, x2) > box.right) return false;
  if (Math.max(y1, y2) < box.top || Math.min(y1, y2) > box.bottom) return false;
  const steps = Math.ceil(Math.hypot(x2 - x1, y2 - y1) / 0.25) + 1;
  return Array.from({ length: steps + 1 }, (_, step) => step / steps).some((part) => {
    const [x, y] = [x1 + (x2 - x1) * part, y1 + (y2 - y1) * part];
    return x > box.left && x < box.right && y > box.top && y < box.bottom;
  });
};

/** Texts with a line through them from end to end, at the height of their figures. */
export const struckTexts = ({ texts, paths }: Card): readonly Text[] => {
  const strikes = paths.filter(({ part }) => part === "strike").map(({ points }) => points as readonly [Spot, Spot]);
  return texts.filter(({ left, right, top, bottom }) => {
    const margin = (bottom - top) / 4;
    return strikes.some(([[from, y], [to]]) => from < left && to > right && y > top + margin && y < bottom - margin);
  });
};

/** Texts that touch one another, a line or the edge of the card, in words. */
export const touches = ({ texts, paths, circles }: Card): readonly string[] => {
  const apart = texts.flatMap((one, place) =>
    texts.slice(place + 1).flatMap((other) =>
      one.left < other.right && other.left < one.right && one.top < other.bottom && other.top < one.bottom
        ? [`"${one.text}" on "${other.text}"`]
        : []));
  const onLines = texts.flatMap((one) =>
    paths.filter(({ part }) => part !== "strike").flatMap(({ part, points, isClosed }) => {
      const ends = isClosed ? [...points, points[0] ?? [0, 0]] : points;
      return ends.slice(1).some((end, place) => crosses(ends[place] ?? end, end, one)) ? [`"${one.text}" on a line of ${part}`] : [];
    }));
  const inCircles = texts.flatMap((one) =>
    circles.flatMap(({ x, y, r }) => {
      const isOwn = one.left > x - r - 0.4 && one.right < x + r + 0.4;
      const meets = one.left < x + r && x - r < one.right && one.top < y + r && y - r < one.bottom;
      return meets && !isOwn ? [`"${one.text}" on a circle`] : [];
    }));
  const outside = texts.filter(({ left, right, top, bottom }) => left < 6.9 || right > 203.1 || top < 4 || bottom > 138);
  return [...apart, ...onLines, ...inCircles, ...outside.map(({ text }) => `"${text}" beyond the margin`)];
};
