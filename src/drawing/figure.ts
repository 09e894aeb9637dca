/** A point of a figure: level to the right, plumb up (or, on a plan, away from the reader). */
export type Point = readonly [x: number, y: number];

export type Mark =
  | { readonly kind: "line"; readonly points: readonly Point[]; readonly style?: "thin" | "dashed" }
  | { readonly kind: "shape"; readonly points: readonly Point[] }
  /** A distance between two points with what it is called. */
  | { readonly kind: "distance"; readonly from: Point; readonly to: Point; readonly name: string; readonly aside?: number }
  /** A named point. */
  | { readonly kind: "point"; readonly at: Point; readonly name: string; readonly side?: Side }
  | { readonly kind: "words"; readonly at: Point; readonly text: string; readonly side?: Side };

type Side = "left" | "right" | "above" | "below";

export interface Figure {
  /** What the figure shows, in a sentence; it is read out where the figure is not seen. */
  readonly says: string;
  readonly marks: readonly Mark[];
}

export const line = (...points: readonly Point[]): Mark => ({ kind: "line", points });
export const thin = (...points: readonly Point[]): Mark => ({ kind: "line", points, style: "thin" });
export const dashed = (...points: readonly Point[]): Mark => ({ kind: "line", points, style: "dashed" });
export const shape = (...points: readonly Point[]): Mark => ({ kind: "shape", points });
export const distance = (from: Point, to: Point, name: string, aside = 0): Mark => ({ kind: "distance", from, to, name, aside });
export const point = (at: Point, name: string, side: Side = "above"): Mark => ({ kind: "point", at, name, side });
export const caption = (at: Point, text: string, side: Side = "above"): Mark => ({ kind: "words", at, text, side });

/** Size of a figure in the page's own units, and the room around the drawing for its words. */
const WIDTH = 420;
const TALLEST = 300;
const MARGIN = 44;
const TEXT = 12;
const TICK = 5;

const pointsOf = (mark: Mark): readonly Point[] => {
  switch (mark.kind) {
    case "line":
    case "shape":
      return mark.points;
    case "distance":
      return [mark.from, mark.to];
    case "point":
    case "words":
      return [mark.at];
  }
};

const escaped = (text: string): string => text.replace(/&/g, "&amp;").replace(/</g, "&lt;").replace(/>/g, "&gt;").replace(/"/g, "&quot;");
const rounded = (value: number): string => String(Math.round(value * 10) / 10);

const OFFSETS: Readonly<Record<Side, readonly [dx: number, dy: number, anchor: string]>> = {
  left: [-6, 4, "end"],
  right: [6, 4, "start"],
  above: [0, -7, "middle"],
  below: [0, TEXT + 5, "middle"],
};

/** A figure as SVG text, in one line colour that the page sets, without any style of its own. */
export const svg = ({ says, marks }: Figure): string => {
  const all = marks.flatMap(pointsOf);
  const [left, right] = [Math.min(...all.map(([x]) => x)), Math.max(...all.map(([x]) => x))];
  const [bottom, top] = [Math.min(...all.map(([, y]) => y)), Math.max(...all.map(([, y]) => y))];
  const scale = Math.min((WIDTH - 2 * MARGIN) / Math.max(right - left, 1e-9), (TALLEST - 2 * MARGIN) / Math.max(top - bottom, 1e-9));
  const height = (top - bottom) * scale + 2 * MARGIN;
  const side = (WIDTH - (right - left) * scale) / 2;
  const place = ([x, y]: Point): Point => [side + (x - left) * scale, MARGIN + (top - y) * scale];
  const text = ([x, y]: Point, words: string, where: Side): string => {
    const [dx, dy, anchor] = OFFSETS[where];
    return `<text x="${rounded(x + dx)}" y="${rounded(y + dy)}" text-anchor="${anchor}">${escaped(words)}</text>`;
  };
  const path = (points: readonly Point[]): string => points.map(place).map(([x, y]) => `${rounded(x)},${rounded(y)}`).join(" ");
  const drawn = (mark: Mark): string => {
    switch (mark.kind) {
      case "line":
        return `<polyline points="${path(mark.points)}"${mark.style === undefined ? "" : ` class="${mark.style}"`}/>`;
      case "shape":
        return `<polygon points="${path(mark.points)}"/>`;
      case "point": {
        const at = place(mark.at);
        return `<circle cx="${rounded(at[0])}" cy="${rounded(at[1])}" r="2.5"/>${text(at, mark.name, mark.side ?? "above")}`;
      }
      case "words":
        return text(place(mark.at), mark.text, mark.side ?? "above");
      case "distance": {
        const [from, to] = [place(mark.from), place(mark.to)];
        const long = Math.hypot(to[0] - from[0], to[1] - from[1]) || 1;
        const normal: Point = [-(to[1] - from[1]) / long, (to[0] - from[0]) / long];
        const moved = ([x, y]: Point, by: number): Point => [x + normal[0] * by, y + normal[1] * by];
        const aside = mark.aside ?? 0;
        const [a, b] = [moved(from, aside), moved(to, aside)];
        const tick = (at: Point): string => {
          const [one, other] = [moved(at, -TICK), moved(at, TICK)];
          return `<line class="thin" x1="${rounded(one[0])}" y1="${rounded(one[1])}" x2="${rounded(other[0])}" y2="${rounded(other[1])}"/>`;
        };
        const middle: Point = [(a[0] + b[0]) / 2, (a[1] + b[1]) / 2];
        const upright = Math.abs(normal[0]) > Math.abs(normal[1]);
        const where: Side = upright ? (normal[0] * aside < 0 ? "left" : "right") : normal[1] * aside > 0 ? "below" : "above";
        return (
          `<line class="thin" x1="${rounded(a[0])}" y1="${rounded(a[1])}" x2="${rounded(b[0])}" ` +
          `y2="${rounded(b[1])}"/>${tick(a)}${tick(b)}${text(middle, mark.name, where)}`
        );
      }
    }
  };
  return (
    `<svg class="figure" role="img" aria-label="${escaped(says)}" viewBox="0 0 ${WIDTH} ${rounded(height)}" width="${WIDTH}" ` +
    `height="${rounded(height)}" xmlns="http://www.w3.org/2000/svg">${marks.map(drawn).join("")}</svg>`
  );
};
