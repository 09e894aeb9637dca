import fc from "fast-check";
import { drawnCall, type Drawing } from "../../../src/drawing/plans/drawn-call";
import { collisions, dimension, parsedDraft, type ParsedDraft } from "./parsed-draft";

const drawn = (id: string, name: string, ...args: readonly unknown[]): Drawing => {
  const found = drawnCall(id, args);
  if (typeof found === "string") throw new Error(found);
  const one = found.find((drawing) => drawing.name === name);
  if (one === undefined) throw new Error(`no ${name} among ${found.map((drawing) => drawing.name).join()}`);
  return one;
};

const near = (length: number, wanted: number): void => expect(Math.abs(length - wanted)).toBeLessThanOrEqual(0.005 * Math.abs(wanted));

const expectSizes = (found: ParsedDraft, sizes: readonly (readonly [begins: string, text: string, length: number])[]): void => {
  for (const [begins, text, length] of sizes) {
    const one = dimension(found, begins);
    expect(one.text).toBe(text);
    near(one.length, length);
  }
};

test("a stringer on the 3-4-5 triangle has its throat, drop, hang and length in the drawing", () => {
  // By hand: 9 x 10 - 1 x 6 / 10 = 89.4; 11 1/4 - 6 x 8 / 10 = 6.45; 1 - 0; 6 - 0 + 1.
  const found = parsedDraft(drawn("STRINGER", "stringer", 6, 8, 10, 11.25));
  expectSizes(found, [
    ["length", 'length along the slope 89 3/8"', 89.4], ["throat", 'throat 6 7/16"', 6.45], ["drop", 'drop 1"', 1], ["hang", 'hang 7"', 7],
    ["board", 'board 11 1/4"', 11.25], ["rise", 'rise 6"', 6], ["run", 'run 8"', 8],
  ]);
  // The first plumb cut is a rise less the drop: 6 - 1, from the foot up, plumb.
  const [outline] = drawn("STRINGER", "stringer", 6, 8, 10, 11.25).svg.match(/<polyline class="thick"[^>]*>/) ?? [];
  const spots = (/points="([^"]*)"/.exec(outline ?? "")?.[1] ?? "").split(" ").map((spot) => spot.split(",").map(Number));
  const [[x, y] = [], [u, v] = []] = spots;
  expect(u).toBe(x);
  near((((y ?? 0) - (v ?? 0)) * found.scale) / 25.4, 5);
});

test("where the floor still to be laid is thicker than the tread, the stringer stands higher and the drawing says so", () => {
  // By hand: 25 - 40 = -15.
  const found = parsedDraft(drawn("STRINGER", "stringer", 185, 250, 5, 286, 25, 40, 0, "mm"));
  expectSizes(found, [["added", "added at the foot 15 mm", 15], ["hang", "hang 210 mm", 210]]);
});

test("a board that the cuts go through is not drawn", () => {
  // By hand: 6 x 8 / 10 = 4.8 is more than 4.
  expect(drawnCall("STRINGER", [6, 8, 10, 4])).toBe("the cuts go through the board: its throat is 0 or less; a wider board");
});

test("a closed skirt on the 3-4-5 triangle has its width and length in the drawing", () => {
  const rows = [["total rise", 60], ["risers", 10], ["run", 8], ["nosing", 1], ["skirt shows", 2]];
  // By hand: 2 + (9 x 6 + 1 x 8) / 10 = 8.2; 72 x 10 / 8 + 6/8 x (2 + 4.8) = 95.1.
  expectSizes(parsedDraft(drawn("SKIRT", "closed skirt", rows)), [
    ["width", 'width 8 3/16"', 8.2], ["length", 'length along the slope 95 1/8"', 95.1], ["shows", 'shows 2"', 2],
  ]);
  // By hand: 9 x 10 - 0.6, as the stringer's.
  expectSizes(parsedDraft(drawn("SKIRT", "open skirt", rows)), [["length", 'length along the slope 89 3/8"', 89.4]]);
});

test("in 200 random boards no text stands over a text or a line, and lengths over the scale are the stair's", () => {
  const stair = fc.record({
    risers: fc.integer({ min: 2, max: 20 }), rise: fc.integer({ min: 48, max: 66 }), run: fc.integer({ min: 64, max: 104 }),
    nosing: fc.integer({ min: 0, max: 12 }), shows: fc.integer({ min: 4, max: 32 }), foot: fc.integer({ min: 0, max: 40 }),
    floor: fc.integer({ min: 0, max: 16 }), isMetric: fc.boolean(), kind: fc.constantFrom("stringer", "closed skirt", "open skirt"),
  });
  fc.assert(fc.property(stair, (one) => {
    // Eighths of an inch, or as many times 3 mm.
    const size = (eighths: number): number => (one.isMetric ? eighths * 3 : eighths / 8);
    const rows = [
      ["unit", one.isMetric ? "mm" : "in"], ["total rise", size(one.rise * one.risers)], ["risers", one.risers], ["run", size(one.run)],
      ["nosing", size(one.nosing)], ["skirt shows", size(one.shows)], ["skirt foot", size(one.foot)], ["lower build-up", size(one.floor)],
    ];
    const found = parsedDraft(drawn("LAYOUT", one.kind, rows));
    expect(collisions(found)).toEqual([]);
    if (one.kind === "closed skirt") near(dimension(found, "shows").length, size(one.shows));
    else near(dimension(found, "run").length, size(one.run));
  }), { numRuns: 200 });
});
