import fc from "fast-check";
import { type StartingStep, type StartingStepGiven, startingStep } from "../../../src/solver/layout/starting-step";
import { isProblem } from "../../../src/solver/problem";

const USUAL: StartingStepGiven = {
  run: 10, nosing: 1.25, width: 36, runPast: 0.25, riserThickness: 0.75, past: 8, end: "half round", radius: undefined, bend: "veneer",
  leaf: 0.125, kerf: 0.125,
};

const stepOf = (given: Partial<StartingStepGiven>): StartingStep => {
  const found = startingStep({ ...USUAL, ...given });
  if (isProblem(found)) throw new Error(found.problem);
  return found;
};

const sized = (found: StartingStep, places: number): Record<string, number> =>
  Object.fromEntries(Object.entries(found).flatMap(([name, size]) => (size === undefined ? [] : [[name, Number(size.toFixed(places))]])));

describe("36 wide, run 10, nosing 1 1/4, standing 8 past, second riser 1/4 past", () => {
  test("half round", () => {
    // By hand: 36 + 8 - 5; 5 pi; 8 - 5 - 1/4; the three together; 36 + 8 + 1.25; 10 + 2.5; 5 + 1.25.
    expect(sized(stepOf({}), 3)).toMatchObject({
      riserRadius: 5,
      straightBeforeTheBend: 39,
      bendOnTheFace: 15.708,
      straightAfterTheBend: 2.75,
      riserLengthOnTheFace: 57.458,
      treadLength: 45.25,
      treadDepthAtTheEnd: 12.5,
      treadRadius: 6.25,
    });
  });

  test("quarter round at 5", () => {
    // By hand: 39, 5 pi / 2 = 7.854, and 10 - 5; the tread ends in line with the second riser, 10 + 1.25 deep.
    expect(sized(stepOf({ end: "quarter round" }), 3)).toMatchObject({ riserLengthOnTheFace: 51.854, treadDepthAtTheEnd: 11.25 });
  });

  test("a veneer of 1/8: by hand its block is 5 - 1/8 = 4.875, and it is pi x (5 - 1/16) = 15.512 long", () => {
    expect(sized(stepOf({}), 3)).toMatchObject({ blockRadius: 4.875, veneerLength: 15.512 });
  });
});

describe("a bend of kerfs", () => {
  const sawn = stepOf({ run: 11, bend: "kerfs" });

  test("half round at 5 1/2, 3/4 stock, 1/8 left, a 1/8 saw", () => {
    // By hand: pi x 0.625 / 0.125 = 15.7, so 16; 5.5 pi / 16 = 1.08 apart.
    expect(sawn.kerfs).toBe(16);
    expect(sawn.kerfSpacing).toBeCloseTo(1.08, 2);
    expect(sawn.kerfDepth).toBe(0.625);
  });

  test("the rule of Building Construction 3, article 13: spacing is what the piece drops over the radius as one kerf closes", () => {
    // One kerf turns the piece by kerf / depth = 0.2; over 5 1/2 its end moves 2 x 5.5 x sin 0.1 = 1.098. Without rounding up to a whole
    // count, kerfs stand 5.5 x 0.2 = 1.10 apart; rounded up, a little closer.
    const rule = 2 * 5.5 * Math.sin(0.2 / 2);
    expect(rule).toBeCloseTo(1.098, 3);
    const unrounded = (sawn.kerfSpacing ?? 0) * (16 / ((Math.PI * 0.625) / 0.125));
    expect(unrounded).toBeCloseTo(1.1, 10);
    expect(Math.abs(unrounded - rule)).toBeLessThan(0.002);
    expect(sawn.kerfSpacing).toBeLessThan(rule);
  });

  test("as many as close the bend and no more", () => {
    fc.assert(
      fc.property(
        fc.record({
          end: fc.constantFrom("half round" as const, "quarter round" as const),
          run: fc.double({ min: 9, max: 14, noNaN: true }),
          leaf: fc.double({ min: 0.0625, max: 0.25, noNaN: true }),
          kerf: fc.double({ min: 0.04, max: 0.15, noNaN: true }),
        }),
        (given) => {
          const { kerfs = 0, kerfSpacing = 0, kerfDepth = 0, riserRadius } = stepOf({ ...given, past: 9, bend: "kerfs" });
          // Piece by piece: each kerf that closes turns what follows by its width over its depth.
          const bend = given.end === "half round" ? Math.PI : Math.PI / 2;
          let turned = 0;
          let needed = 0;
          while (turned < bend - 1e-12) {
            turned += given.kerf / kerfDepth;
            needed += 1;
          }
          expect(kerfs).toBe(needed);
          // Spread evenly, the pieces of the face with equal turns between them make the bend: a chain of chords about the centre.
          const chord = 2 * riserRadius * Math.sin(bend / kerfs / 2);
          expect(kerfSpacing).toBeGreaterThanOrEqual(chord);
          expect(kerfSpacing).toBeLessThan(chord * 1.02);
          expect(kerfSpacing).toBeGreaterThan(given.kerf);
        },
      ),
    );
  });
});

type Spot = readonly [x: number, y: number];

const lengthOf = (path: readonly Spot[]): number =>
  path.slice(1).reduce((sum, [x, y], place) => {
    const [fromX, fromY] = path[place] ?? [0, 0];
    return sum + Math.hypot(x - fromX, y - fromY);
  }, 0);

const steps = fc.record({
  end: fc.constantFrom("half round" as const, "quarter round" as const),
  run: fc.double({ min: 9, max: 14, noNaN: true }),
  nosing: fc.double({ min: 0, max: 1.5, noNaN: true }),
  width: fc.double({ min: 30, max: 48, noNaN: true }),
  runPast: fc.double({ min: 0, max: 0.5, noNaN: true }),
  past: fc.double({ min: 7.6, max: 12, noNaN: true }),
  leaf: fc.double({ min: 0.0625, max: 0.25, noNaN: true }),
});

/** Places one after the other: round the bend, and all along the riser. */
interface Walk {
  readonly bend: readonly Spot[];
  readonly all: readonly Spot[];
}

/**
 * The riser on the floor: x from the wall skirt, y from its front to the face of the second riser at the run. The bend is a line turned a
 * little again and again about the centre; `inward` walks as deep in the wood.
 */
const walked = ({ end, run, width = 0, runPast, past }: StartingStepGiven, inward: number): Walk => {
  const radius = run / 2;
  const [far, parts] = [width + past, 20_000];
  const centre: Spot = [far - radius, radius];
  // Turned by a small angle again and again from the foot of the bend.
  const turn = (end === "half round" ? Math.PI : Math.PI / 2) / parts;
  const bend: Spot[] = [[0, -(radius - inward)]];
  for (let part = 0; part < parts; part += 1) {
    const [x, y] = bend[part] ?? [0, 0];
    bend.push([x * Math.cos(turn) - y * Math.sin(turn), x * Math.sin(turn) + y * Math.cos(turn)]);
  }
  const placed = bend.map(([x, y]): Spot => [centre[0] + x, centre[1] + y]);
  const back: Spot = end === "half round" ? [width + runPast, run] : [far, run];
  return { bend: placed, all: [[0, 0], ...placed, back] };
};

describe("against an outline walked on the floor", () => {
  test("the riser is as long as its outline, a veneer as the middle of its leaf", () => {
    fc.assert(
      fc.property(steps, (some) => {
        const given = { ...USUAL, ...some };
        const found = stepOf(given);
        expect(found.riserLengthOnTheFace).toBeCloseTo(lengthOf(walked(given, 0).all), 5);
        expect(found.veneerLength).toBeCloseTo(lengthOf(walked(given, given.leaf / 2).bend), 5);
        expect((found.riserLengthLaidFlat ?? 0) - (found.veneerLength ?? 0)).toBeCloseTo(
          (found.straightBeforeTheBend ?? 0) + found.straightAfterTheBend, 9,
        );
      }),
      { numRuns: 30 },
    );
  });

  test("the tread stands a nosing past the riser on every side that shows", () => {
    fc.assert(
      fc.property(steps, (some) => {
        const given = { ...USUAL, ...some };
        const { bend } = walked(given, 0);
        const found = stepOf(given);
        const farthest = Math.max(...bend.map(([x]) => x));
        expect(found.treadLength).toBeCloseTo(farthest + given.nosing, 6);
        // Both faces of a half round show; behind a quarter round stands the second riser.
        const isHalf = given.end === "half round";
        const [front, back] = [Math.min(...bend.map(([, y]) => y)), isHalf ? Math.max(...bend.map(([, y]) => y)) : given.run];
        const behind = isHalf ? given.nosing : 0;
        expect(found.treadDepthAtTheEnd).toBeCloseTo(back + behind - (front - given.nosing), 6);
        // The tread's own round runs a nosing outside the riser's, about one centre.
        const [foot = [0, 0]] = bend;
        const centre: Spot = [foot[0], foot[1] + found.treadRadius - given.nosing];
        for (const [x, y] of bend.filter((_, place) => place % 500 === 0))
          expect(Math.hypot(x - centre[0], y - centre[1]) + given.nosing).toBeCloseTo(found.treadRadius, 6);
      }),
      { numRuns: 30 },
    );
  });
});

test.each([
  ["an end that just clears the second riser", { past: 5.25 }, "straightAfterTheBend", 0],
  ["a quarter round that takes the whole run", { end: "quarter round" as const, radius: 10 }, "straightAfterTheBend", 0],
  ["a bend from the wall skirt on", { end: "quarter round" as const, width: 4, past: 1 }, "straightBeforeTheBend", 0],
  ["a side as far past as the second riser", { end: "quarter round" as const, past: 0.25 }, "treadLength", 37.5],
  ["cuts as wide as deep", { bend: "kerfs" as const, kerf: 0.625 }, "kerfs", 4],
] as const)("at the very edge there is an answer: %s", (_, given, name, size) => {
  // By hand: 5.25 - 5 - 1/4; 10 - 10; 4 + 1 - 5; 36 + 1/4 + 1 1/4; pi x 0.625 / 0.625 = 3.14, so 4.
  expect(stepOf(given)[name]).toBeCloseTo(size, 12);
});

test("without a width only what counts from the wall skirt is not known", () => {
  const found = stepOf({ width: undefined });
  const fromTheWall = ["straightBeforeTheBend", "riserLengthOnTheFace", "riserLengthLaidFlat", "treadLength"];
  const unknown = [...fromTheWall, "kerfs", "kerfDepth", "kerfSpacing"];
  expect(Object.entries(found).flatMap(([name, size]) => (size === undefined ? [name] : [])).sort()).toEqual(unknown.sort());
  expect(found.bendOnTheFace).toBeCloseTo(5 * Math.PI, 12);
});

test.each([
  [{ radius: 4 }, "radius-of-a-half-round"],
  [{ end: "quarter round" as const, radius: 11 }, "radius-over-the-run"],
  [{ past: 5.2 }, "past-too-short"],
  [{ end: "quarter round" as const, past: 0.2 }, "past-too-short"],
  [{ end: "quarter round" as const, width: 3, past: 1 }, "bend-past-the-wall"],
  [{ leaf: 0.75 }, "leaf-too-thick"],
  [{ riserThickness: 5 }, "riser-too-thick"],
  // By hand: 3/4 - 1/8 = 5/8 deep, less than 0.63 wide; and pi / 2 x 1.3 / 1.2 = 1.7, so two cuts of 1.2 where pi / 2 x 1.5 = 2.356 is.
  [{ bend: "kerfs" as const, kerf: 0.63 }, "kerfs-too-wide"],
  [{ end: "quarter round" as const, bend: "kerfs" as const, kerf: 1.2, radius: 1.5, riserThickness: 1.425 }, "kerfs-too-wide"],
])("what cannot be built is told: %j", (given, told) => {
  expect(startingStep({ ...USUAL, ...given })).toMatchObject({ problem: told });
});
