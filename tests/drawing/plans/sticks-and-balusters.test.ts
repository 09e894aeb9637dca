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

/** Texts and lengths of all dimensions, in order. */
const expectAll = ({ dimensions }: ParsedDraft, sizes: readonly (readonly [text: string, length: number])[]): void => {
  for (const [text, length] of sizes) {
    const found = dimensions.filter((one) => one.text === text);
    expect([text, found.length]).toEqual([text, sizes.filter(([other]) => other === text).length]);
    for (const one of found) near(one.length, length);
  }
};

const PIECES = [["label", "length", "quantity"], ["tread", 36, 2], ["riser", 20, 1]];
const STOCK = [["label", "length", "price"], ["oak 8 ft", 96, 24.5], ["oak 10 ft", 120, 31]];

test.each(["CUTS", "PLAN"])("the sticks of %s lie to scale, with the start of each piece, kerfs and what is left over", (id) => {
  // By hand: 95 usable less 36 + 36 + 20 and three kerfs of 1/8 leaves 2 5/8; positions 1/2, + 36 1/8, + 36 1/8.
  const found = parsed(id, PIECES, STOCK, "1/8", 0.5);
  expectAll(found, [
    ['tread 36"', 36], ['tread 36"', 36], ['riser 20"', 20], ['1/2"', 0.5], ['36 5/8"', 36.625], ['72 3/4"', 72.75],
    ['left over 2 5/8"', 2.625], ['stick 96"', 96],
  ]);
  expect(found.texts).toContain("stick 1, oak 8 ft");
  // The pieces begin where their positions say: by hand 1/2, 36 5/8 and 72 3/4 from the left end.
  const end = dimension(found, "stick").ends[0][0];
  const per = 25.4 / found.scale;
  const starts = found.dimensions.filter(({ text }) => /^(tread|riser)/.test(text)).map(({ ends }) => (ends[0][0] - end) / per);
  expect(starts.map((start) => start.toFixed(2))).toEqual(["0.50", "36.63", "72.75"]);
});

test("an end worth keeping is said to be kept, and sticks that are cut alike are drawn once", () => {
  // By hand: 100 - 2 x 40 - 2 x 1/8 = 19 3/4 on each of three sticks.
  const found = parsed("CUTS", [["length", "quantity"], [40, 6]], [["length", "price"], [100, 10]], 0.125, 0, 15);
  expectAll(found, [['offcut kept 19 3/4"', 19.75], ['stick 100"', 100]]);
  expect(found.texts).toContain("sticks 1 to 3, 3 alike");
});

test("a job without a plan has its sentence in the place of a drawing", () => {
  expect(drawnCall("CUTS", [[["label", "length"], ["skirt", 130]], STOCK, null, 0.5]))
    .toBe('length: piece skirt is 130", more than the 119" that can be cut from the longest stock of its grade');
});

test("balusters between posts stand on their centres, each from the left post", () => {
  // By hand: 9 of 1 1/2 in 52 leave (52 - 13 1/2) / 10 = 3.85; centres at 3.85 + 3/4 = 4.6 and 5.35 on.
  expectAll(parsed("BALUSTERS", 52, 1.5, 4), [
    ['gap 3 7/8"', 3.85], ['opening 52"', 52], ['centre 1: 4 5/8"', 4.6], ['centre 2: 9 15/16"', 9.95], ['centre 9: 47 3/8"', 47.4],
  ]);
});

test("balusters of one run begin flush with the riser face", () => {
  // By hand: (10 - 2 1/2) / 2 = 3 3/4; 5/8 and 5 on.
  expectAll(parsed("BALUSTERS", 10, 1.25, null, true), [['gap 3 3/4"', 3.75], ['centre 1: 5/8"', 0.625], ['centre 2: 5 5/8"', 5.625]]);
});

test("balusters of a tread have their centres and lengths on the 3-4-5 triangle", () => {
  const stair = [["total rise", 60], ["risers", 10], ["run", 8], ["nosing", 1], ["handrail height", 35]];
  // By hand: 4 apart; a rail 2 deep is 2 1/2 plumb, so 32 1/2 over the nosings; 32 1/2 + (1 + 1/2) x 3/4 = 33 5/8, half a rise more.
  expectAll(parsed("TREADBALUSTERS", stair, 1, null, 2), [
    ['centre 1: 1/2"', 0.5], ['centre 2: 4 1/2"', 4.5], ['length 1: 33 5/8"', 33.625], ['length 2: 36 5/8"', 36.625],
    ['gap 3"', 3], ['run 8"', 8],
  ]);
});

test("in 200 random cut plans no text stands over a text or a line, and pieces over the scale are as long as given", () => {
  const piece = fc.record({ length: fc.integer({ min: 12, max: 400 }), count: fc.integer({ min: 1, max: 4 }) });
  const job = fc.record({
    pieces: fc.array(piece, { minLength: 1, maxLength: 4 }),
    stick: fc.integer({ min: 420, max: 1200 }), trim: fc.integer({ min: 0, max: 8 }), isMetric: fc.boolean(),
  });
  fc.assert(fc.property(job, ({ pieces, stick, trim, isMetric }) => {
    // Eighths of an inch, or as many times 3 mm.
    const size = (eighths: number): number => (isMetric ? eighths * 3 : eighths / 8);
    const all = drawings(
      "CUTS", [["label", "length", "quantity"], ...pieces.map(({ length, count }, place) => [`p${place}`, size(length), count])],
      [["label", "length", "price"], ["oak", size(stick), 10]], size(1), size(trim), null, isMetric ? "mm" : "in",
    );
    for (const one of all) {
      const found = parsedDraft(one);
      expect(collisions(found)).toEqual([]);
      for (const [place, { length }] of pieces.entries()) {
        for (const { length: drawn } of found.dimensions.filter(({ text }) => text.startsWith(`p${place} `))) near(drawn, size(length));
      }
    }
  }), { numRuns: 200 });
});

test("in 200 random openings and treads no text stands over a text or a line", () => {
  const given = fc.record({
    opening: fc.integer({ min: 64, max: 1200 }), width: fc.integer({ min: 6, max: 24 }), kind: fc.constantFrom("posts", "run", "tread"),
    height: fc.constantFrom(null, 34, 38),
  });
  fc.assert(fc.property(given, ({ opening, width, kind, height }) => {
    const run = 8 + (opening % 5);
    const stair = [["total rise", 60], ["risers", 8], ["run", run], ...(height === null ? [] : [["handrail height", height]])];
    const found = kind === "posts" ? parsed("BALUSTERS", opening / 8, width / 8)
      : kind === "run" ? parsed("BALUSTERS", run, width / 8, null, true)
      : parsed("TREADBALUSTERS", stair, width / 8, null, height === null ? null : 2);
    expect(collisions(found)).toEqual([]);
  }), { numRuns: 200 });
});
