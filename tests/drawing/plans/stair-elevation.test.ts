import fc from "fast-check";
import { drawnCall, type Drawing } from "../../../src/drawing/plans/drawn-call";
import { collisions, dimension, parsedDraft } from "./parsed-draft";

const elevation = (...rows: readonly (readonly [string, string | number])[]): Drawing => {
  const drawn = drawnCall("LAYOUT", [rows]);
  if (typeof drawn === "string") throw new Error(drawn);
  const [first] = drawn;
  if (first?.name !== "elevation") throw new Error("no elevation");
  return first;
};

/** To half a percent, as a drawing is measured. */
const near = (drawn: number, wanted: number): void => expect(Math.abs(drawn - wanted)).toBeLessThanOrEqual(0.005 * Math.abs(wanted));

test("a stair worked out by hand has its sizes in the drawing, by their text and by the line over the scale", () => {
  // By hand: 98 / 14 = 7; 13 x 9.5 = 123.5; (80 + 11 1/4) x 9.5 / 7 = 123.839 or 123 13/16.
  const found = parsedDraft(elevation(
    ["total rise", 98], ["risers", 14], ["run", 9.5], ["headroom", 80], ["floor thickness", 11.25], ["nosing", 1.25],
  ));
  for (const [begins, text, length] of [
    ["rise", 'rise 7"', 7], ["14 rises", '14 rises, total rise 98"', 98], ["run", 'run 9 1/2"', 9.5],
    ["13 runs", '13 runs, total run 123 1/2"', 123.5], ["opening", 'opening needed 123 13/16"', 123.839], ["headroom", 'headroom 80"', 80],
    ["floor", 'floor 11 1/4"', 11.25], ["nosing", 'nosing 1 1/4"', 1.25],
    // The fifth mark of the pole, 5 x 7.
    ["5:", '5: 35"', 35],
  ] as const) {
    const drawn = dimension(found, begins);
    expect(drawn.text).toBe(text);
    near(drawn.length, length);
  }
});

test("a metric stair is drawn in millimetres, with the opening there is and the headroom found under it", () => {
  // By hand: 2800 / 16 = 175; 3300 x 175 / 250 - 280 = 2030.
  const found = parsedDraft(elevation(
    ["unit", "mm"], ["total rise", 2800], ["risers", 16], ["run", 250], ["opening", 3300], ["floor thickness", 280],
  ));
  expect(found.unit).toBe("mm");
  for (const [begins, text, length] of [
    ["rise", "rise 175 mm", 175], ["opening", "opening there is 3300 mm", 3300], ["headroom", "headroom 2030 mm", 2030],
    ["15 runs", "15 runs, total run 3750 mm", 3750],
  ] as const) {
    const drawn = dimension(found, begins);
    expect(drawn.text).toBe(text);
    near(drawn.length, length);
  }
});

test("a call in error has no drawing and says what the call says", () => {
  expect(drawnCall("LAYOUT", [[["run", 10]]])).toBe("total rise: is missing, empty or 0; give total rise, finish floor to finish floor");
});

test("in 200 random stairs no text stands over a text or a line, and every length over the scale is the stair's", () => {
  const stair = fc.record({
    risers: fc.integer({ min: 2, max: 26 }), rise: fc.integer({ min: 48, max: 70 }), run: fc.integer({ min: 64, max: 112 }),
    nosing: fc.integer({ min: 0, max: 12 }), floor: fc.integer({ min: 32, max: 128 }), headroom: fc.integer({ min: 600, max: 700 }),
    isFlush: fc.boolean(), hasOpening: fc.boolean(), isMetric: fc.boolean(),
  });
  fc.assert(fc.property(stair, (one) => {
    // Eighths of an inch, or as many times 3 mm.
    const size = (eighths: number): number => (one.isMetric ? eighths * 3 : eighths / 8);
    const found = parsedDraft(elevation(
      ["unit", one.isMetric ? "mm" : "in"], ["total rise", size(one.rise * one.risers)], ["risers", one.risers], ["run", size(one.run)],
      ["nosing", size(one.nosing)], ["top tread", one.isFlush ? "flush" : "floor"], ["floor thickness", size(one.floor)],
      [one.hasOpening ? "opening" : "headroom", size(one.headroom)],
    ));
    expect(collisions(found)).toEqual([]);
    near(dimension(found, "rise").length, size(one.rise));
    near(dimension(found, `${one.risers} rises`).length, size(one.rise * one.risers));
    near(dimension(found, "run").length, size(one.run));
    near(dimension(found, "floor").length, size(one.floor));
  }), { numRuns: 200 });
});

test("lines are black and nothing is filled but letters", () => {
  const { svg } = elevation(["total rise", 107.5], ["run", 10]);
  const tags = svg.match(/<[a-z][^>]*>/g) ?? [];
  for (const tag of tags.filter((one) => !one.startsWith("<text"))) expect(tag).not.toMatch(/ fill="(?!none)|style=|url\(/);
  const paints = new Set(svg.match(/ (?:fill|stroke)="[^"]*"/g));
  expect(paints).toEqual(new Set([' fill="none"', ' stroke="#000"', ' stroke="none"', ' fill="#000"']));
});
