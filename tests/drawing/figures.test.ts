import { catalogue } from "../../src/functions/catalogue";
import { FIGURES } from "../../src/drawing/figures";
import { svg } from "../../src/drawing/figure";

/** Steps of the job whose functions are geometry; the others count, price or read. */
const GEOMETRIC = ["Survey", "Layout", "Fit"];
/** Geometric steps of the job hold these too, which have nothing to draw. */
const NOTHING_TO_DRAW = ["RISERS", "UNIFORMITY", "CHOICES"];

test("every geometric function has at least one figure, and every figure a function", () => {
  const wanted = catalogue.filter(({ group, id }) => GEOMETRIC.includes(group) && !NOTHING_TO_DRAW.includes(id)).map(({ id }) => id);
  expect(Object.keys(FIGURES).sort()).toEqual([...wanted].sort());
});

test.each(Object.entries(FIGURES).flatMap(([id, figures]) => figures.map((figure) => [id, figure] as const)))(
  "a figure of %s is plain SVG that says what it shows",
  (_, figure) => {
    const drawn = svg(figure);
    expect(figure.says).toMatch(/^[A-Z].{30,}\.$/);
    expect(drawn).toMatch(/^<svg [^>]*role="img" aria-label="[^"]+"/);
    expect(drawn).not.toMatch(/NaN|undefined|style=|<script|http:\/\/(?!www\.w3\.org)/);
    const [, width = "0", height = "0"] = /viewBox="0 0 ([\d.]+) ([\d.]+)"/.exec(drawn) ?? [];
    const places = [...drawn.matchAll(/ (?:x1?|x2|cx)="(-?[\d.]+)" (?:y1?|y2|cy)="(-?[\d.]+)"/g)];
    expect(places.length).toBeGreaterThan(2);
    for (const [, x, y] of places) {
      expect(Number(x)).toBeGreaterThanOrEqual(0);
      expect(Number(x)).toBeLessThanOrEqual(Number(width));
      expect(Number(y)).toBeGreaterThanOrEqual(0);
      expect(Number(y)).toBeLessThanOrEqual(Number(height));
    }
  },
);
