import fc from "fast-check";
import { drawnCall, type Drawing } from "../../../src/drawing/plans/drawn-call";
import { collisions, dimension, parsedDraft, type ParsedDraft } from "./parsed-draft";

const drawings = (id: string, ...args: readonly unknown[]): readonly Drawing[] => {
  const found = drawnCall(id, args);
  if (typeof found === "string") throw new Error(found);
  return found;
};
const parsed = (id: string, ...args: readonly unknown[]): ParsedDraft => {
  const [first] = drawings(id, ...args);
  if (first === undefined) throw new Error("nothing drawn");
  return parsedDraft(first);
};

const near = (length: number, wanted: number): void => expect(Math.abs(length - wanted)).toBeLessThanOrEqual(0.005 * Math.abs(wanted));

const expectSizes = (found: ParsedDraft, sizes: readonly (readonly [begins: string, text: string, length: number])[]): void => {
  for (const [begins, text, length] of sizes) {
    const one = dimension(found, begins);
    expect(one.text).toBe(text);
    near(one.length, length);
  }
};

const STAIR = [["total rise", 108.5], ["run", 10], ["width", 36], ["nosing", 1.25]];
const quarter = (turn: string) => [["flight", "risers", "turn"], [1, 7, turn], [2, 8, ""]];

test("two flights with a quarter turn have their sizes in the plan", () => {
  const found = parsed("FLIGHTS", STAIR, quarter("quarter left"));
  // By hand: 6 x 10 + 36 = 96; 7 x 10 + 36 = 106.
  expectSizes(found, [
    ["length in plan", 'length in plan 96"', 96], ["width in plan", 'width in plan 106"', 106],
    ["flight 1, 6 runs", 'flight 1, 6 runs 60"', 60], ["flight 2, 7 runs", 'flight 2, 7 runs 70"', 70],
    ["landing 1 depth", 'landing 1 depth 36"', 36], ["flight 2 width", 'flight 2 width 36"', 36],
  ]);
  // By hand: 7 x 108.5 / 15 = 50.633.
  expect(found.texts).toContain('landing 50 5/8" up');
});

/** Ends of the flights' and landings' lines, in tenths of a millimetre, each line with its lower end first. */
const lines = ({ svg }: Drawing, mirroredAbout?: number): readonly string[] =>
  [...svg.matchAll(/<polyline class="(?:thick|thin)"[^>]*points="([^"]*)"/g)].flatMap(([, points = ""]) => {
    const spots = points.split(" ").map((spot) => spot.split(",").map(Number) as [number, number])
      .map(([x, y]) => [mirroredAbout === undefined ? x : 2 * mirroredAbout - x, y])
      .map((spot) => spot.map((one) => (Math.round(one * 10) / 10 || 0).toFixed(1)).join());
    return spots.slice(1).map((to, place) => [spots[place] ?? to, to].sort().join(" "));
  }).sort();

test.each(["quarter", "half"])("a %s turn to the left is the mirror image of one to the right, about flight 1", (turn) => {
  const [left] = drawings("FLIGHTS", STAIR, quarter(`${turn} left`));
  const [right] = drawings("FLIGHTS", STAIR, quarter(`${turn} right`));
  if (left === undefined || right === undefined) throw new Error("nothing drawn");
  const { scale } = parsedDraft(left);
  expect(parsedDraft(right).scale).toBe(scale);
  // Flight 1 is 36 wide, from the left end of its first riser face.
  expect(lines(left)).toEqual(lines(right, (18 * 25.4) / scale));
  expect(lines(left)).not.toEqual(lines(right));
});

test("winders between straight walls have their depths and their places on the walls in the plan", () => {
  // By hand: 2 x 18 sin 15 = 9.3175; 2 x 6 sin 15 = 3.1058; 42 tan 30 = 24.2487 along each wall.
  const found = parsed("WINDERS", 3, 90, 6, 36, 12, "straight");
  expectSizes(found, [
    ["at the walkline", 'at the walkline 9 5/16"', 9.3175], ["narrow end", 'narrow end 3 1/8"', 3.1058],
    ["2:", '2: 24 1/4"', 24.2487], ["3:", '3: 24 1/4"', 24.2487], ["walkline radius", 'walkline radius 18"', 18],
    ["width", 'width 36"', 36],
  ]);
});

test("winders with round strings say the arcs along the outer one", () => {
  // By hand: pi x 1000 / 6 = 523.6 mm each.
  const { texts } = parsed("WINDERS", 6, 180, 100, 900, 300, "round", "mm");
  expect(texts).toEqual(expect.arrayContaining(["2: arc 524 mm", "4: arc 1571 mm", "7: arc 3142 mm"]));
});

test("a winder's tread lies on its blank, each corner from the blank's end and back from the nose", () => {
  const [first] = drawings("WINDERTREADS", 3, 90, 6, 36, 1.25, "straight");
  if (first === undefined) throw new Error("nothing drawn");
  expect(first.name).toBe("winder 1");
  const found = parsedDraft(first);
  const square = found.dimensions.filter(({ text }) => text.startsWith("back edge, wide end")).map(({ text }) => text);
  // By hand: 42 tan 30 + 1 1/4 / cos 30 = 25.692.
  expect(square).toContain('back edge, wide end 25 11/16"');
  expect(found.dimensions.find(({ text }) => text === 'blank 25 11/16"')?.length).toBeCloseTo(25.692, 1);
});

test("treads that are alike are drawn once", () => {
  // Round strings about the centre and a round well: every winder is the first one turned.
  expect(drawings("WINDERTREADS", 4, 90, 6, 36).map(({ name }) => name)).toEqual(["winders 1, 2, 3, 4"]);
});

test("in 200 random stairs of flights and turns no text stands over a text or a line, and lengths over the scale are the stair's", () => {
  const turn = fc.constantFrom("quarter left", "quarter right", "half left", "half right", "none");
  const stair = fc.record({
    flights: fc.array(fc.record({ risers: fc.integer({ min: 2, max: 9 }), turn }), { minLength: 1, maxLength: 4 }),
    width: fc.integer({ min: 30, max: 60 }), run: fc.integer({ min: 8, max: 13 }), isMetric: fc.boolean(),
  });
  fc.assert(fc.property(stair, ({ flights, width, run, isMetric }) => {
    const size = (inches: number): number => (isMetric ? inches * 25 : inches);
    const risers = flights.reduce((sum, one) => sum + one.risers, 0);
    const rows = flights.map((one, place) => [place + 1, one.risers, place === flights.length - 1 ? "" : one.turn]);
    const found = parsed("FLIGHTS", [
      ["unit", isMetric ? "mm" : "in"], ["total rise", size(7 * risers)], ["run", size(run)], ["width", size(width)],
    ], [["flight", "risers", "turn"], ...rows]);
    expect(collisions(found)).toEqual([]);
    for (const [place, one] of flights.entries()) {
      near(dimension(found, `flight ${place + 1}, ${one.risers - 1} runs`).length, size(run) * (one.risers - 1));
      near(dimension(found, `flight ${place + 1} width`).length, size(width));
    }
  }), { numRuns: 200 });
});

test("in 200 random turns of winders no text stands over a text or a line", () => {
  const turn = fc.record({
    winders: fc.integer({ min: 2, max: 9 }), turn: fc.constantFrom(45, 60, 90, 120, 170), inner: fc.integer({ min: 2, max: 20 }),
    width: fc.integer({ min: 28, max: 60 }), strings: fc.constantFrom("round", "straight"), isTread: fc.boolean(),
  });
  fc.assert(fc.property(turn, ({ winders, turn: degrees, inner, width, strings, isTread }) => {
    const all = isTread
      ? drawings("WINDERTREADS", winders, degrees, inner, width, 1.25, strings)
      : drawings("WINDERS", winders, degrees, inner, width, 12, strings);
    for (const one of all) expect(collisions(parsedDraft(one))).toEqual([]);
  }), { numRuns: 200 });
});
