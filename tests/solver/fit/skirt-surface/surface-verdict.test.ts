import fc from "fast-check";
import { flightReadings, type PieceReading, PLACES } from "../../../../src/solver/fit/skirt-surface/flight-readings";
import { stepsWithDiagonals, surfaceVerdict } from "../../../../src/solver/fit/skirt-surface/surface-verdict";
import { isProblem } from "../../../../src/solver/problem";
import { changed, FIVE_STEPS, flightInSpace, skirts, type SteppedFlight } from "./flight-in-space";

const SIXTEENTHS = 16;

const looked = (treads: readonly PieceReading[], risers: readonly PieceReading[] = []) => {
  const flight = flightReadings(treads, risers, "in");
  if (isProblem(flight)) throw new Error(flight.problem);
  const { mistakes, gain } = surfaceVerdict(flight, SIXTEENTHS);
  return {
    gain,
    first: mistakes[0]?.repair.gain,
    mistakes: mistakes.map(({ repair, rival }) => ({
      kind: repair.kind,
      readings: repair.changes
        .map(({ reading }) => flight.observed[reading]!)
        .map(({ kind, row, place }) => `${kind} ${row + 1} ${place}`)
        .sort(),
      likely: repair.changes.map(({ reading, to }) => Math.hypot(to, flight.observed[reading]!.across)),
      isSure: rival === undefined,
    })),
  };
};

/** Gains were measured by an independent trial of the same method on the same five steps, and are given as it printed them. */
describe("five steps", () => {
  test("as read, nothing stands out: best gain -4.4", () => {
    const { mistakes, gain } = looked(FIVE_STEPS);
    expect(mistakes).toEqual([]);
    expect(gain).toBeCloseTo(-4.4, 1);
  });

  test("diagonals of step 3 exchanged: named, gain 304", () => {
    const { mistakes, first } = looked(
      changed(FIVE_STEPS, 3, ({ diagonal, secondDiagonal }) => ({ diagonal: secondDiagonal!, secondDiagonal: diagonal! })),
    );
    expect(mistakes).toEqual([
      expect.objectContaining({ kind: "exchanged", readings: ["tread 3 diagonal", "tread 3 secondDiagonal"], isSure: true }),
    ]);
    expect(first).toBeCloseTo(304, 0);
  });

  test("front of step 4 an inch long: named, 36", () => {
    const { mistakes } = looked(changed(FIVE_STEPS, 4, ({ far }) => ({ far: far! + 1 })));
    expect(mistakes).toEqual([expect.objectContaining({ kind: "off", readings: ["tread 4 far"], isSure: true })]);
    expect(Math.round(mistakes[0]!.likely[0]! * SIXTEENTHS) / SIXTEENTHS).toBe(36);
  });

  test("back and front of step 2 exchanged, 1/8 apart: named, gain 21.0", () => {
    const { mistakes, first } = looked(changed(FIVE_STEPS, 2, ({ near, far }) => ({ near: far!, far: near! })));
    expect(mistakes).toEqual([expect.objectContaining({ kind: "exchanged", readings: ["tread 2 far", "tread 2 near"], isSure: true })]);
    expect(first).toBeCloseTo(21, 1);
  });

  test("second diagonal of step 5 a quarter short: named, 37 11/16", () => {
    const { mistakes } = looked(changed(FIVE_STEPS, 5, ({ secondDiagonal }) => ({ secondDiagonal: secondDiagonal! - 0.25 })));
    expect(mistakes).toEqual([expect.objectContaining({ kind: "off", readings: ["tread 5 secondDiagonal"], isSure: true })]);
    expect(Math.round(mistakes[0]!.likely[0]! * SIXTEENTHS) / SIXTEENTHS).toBe(37.6875);
  });

  test("steps 2 and 3 exchanged, 1/16 apart: silent", () => {
    const exchanged = [FIVE_STEPS[0]!, { ...FIVE_STEPS[2]!, step: 2 }, { ...FIVE_STEPS[1]!, step: 3 }, ...FIVE_STEPS.slice(3)];
    expect(looked(exchanged).mistakes).toEqual([]);
  });

  test("two mistakes in one flight are found one after the other", () => {
    const { mistakes } = looked(
      changed(changed(FIVE_STEPS, 4, ({ far }) => ({ far: far! + 1 })), 1, ({ diagonal }) => ({ diagonal: diagonal! - 0.5 })),
    );
    expect(mistakes.map(({ readings }) => readings)).toEqual([["tread 4 far"], ["tread 1 diagonal"]]);
  });
});

const out = fc.record({ along: fc.double({ min: -4, max: 4, noNaN: true }), up: fc.double({ min: -4, max: 4, noNaN: true }) });
/** Runs differ; rises are alike, as treads alone do not tell them. */
const flights: fc.Arbitrary<SteppedFlight> = fc
  .record({
    width: fc.double({ min: 30, max: 46, noNaN: true }),
    left: out,
    right: out,
    rise: fc.double({ min: 7, max: 7.9, noNaN: true }),
    runs: fc.array(fc.double({ min: 9.5, max: 10.5, noNaN: true }), { minLength: 4, maxLength: 12 }),
  })
  .map(({ width, left, right, rise, runs }) => flightInSpace(skirts(width, left, right), runs, runs.map(() => rise)));

/** A step is mirrored when right and left change places: its two diagonals do. */
const mirrored = (readings: readonly PieceReading[]): readonly PieceReading[] =>
  readings.map(({ diagonal, secondDiagonal, ...rest }) => ({ ...rest, diagonal: secondDiagonal!, secondDiagonal: diagonal! }));

const mirroredName = (reading: string): string =>
  reading.replace(/ (diagonal|secondDiagonal)$/, (_, name: string) => (name === "diagonal" ? " secondDiagonal" : " diagonal"));

describe("skirts that are planes, built in space", () => {
  test("with exact readings nothing stands out, of treads alone and with risers", () => {
    fc.assert(
      fc.property(flights, ({ treads, risers }) => {
        expect(looked(treads).mistakes).toEqual([]);
        expect(looked(treads, risers).mistakes).toEqual([]);
      }),
      { numRuns: 30, seed: 16 },
    );
  });

  test("one planted inch is named, and its value with it", () => {
    fc.assert(
      fc.property(
        flights,
        fc.nat(),
        fc.constantFrom(...PLACES),
        fc.constantFrom(1, -1),
        fc.boolean(),
        ({ treads, risers }, at, place, inch, inRisers) => {
          const step = (at % treads.length) + 1;
          const add = (reading: PieceReading): Partial<PieceReading> => ({ [place]: reading[place]! + inch });
          const { mistakes } = inRisers ? looked(treads, changed(risers, step, add)) : looked(changed(treads, step, add));
          const kind = inRisers ? "riser" : "tread";
          expect(mistakes).toEqual([expect.objectContaining({ kind: "off", readings: [`${kind} ${step} ${place}`], isSure: true })]);
          expect(mistakes[0]!.likely[0]).toBeCloseTo((inRisers ? risers : treads)[step - 1]![place]!, 6);
        },
      ),
      { numRuns: 60, seed: 17 },
    );
  });

  test("a mirrored stair gives the mirrored names", () => {
    fc.assert(
      fc.property(flights, fc.nat(), fc.constantFrom(...PLACES), fc.constantFrom(0.5, -0.5, 0.25), ({ treads }, at, place, off) => {
        const read = changed(treads, (at % treads.length) + 1, (reading) => ({ [place]: reading[place]! + off }));
        const [here, there] = [looked(read), looked(mirrored(read))];
        const names = there.mistakes.map(({ readings }) => readings.map(mirroredName).sort());
        expect(names).toEqual(here.mistakes.map(({ readings }) => readings));
      }),
      { numRuns: 30, seed: 18 },
    );
  });

  test("neighbouring steps in each other's place are named where they differ", () => {
    // The width shrinks by 4 in 100 along and grows by 1 up: 0.32 from step to step.
    const { treads } = flightInSpace(skirts(38, { along: -2, up: 0 }, { along: 2, up: 1 }), Array(6).fill(10), Array(6).fill(7.7));
    const exchanged = [treads[0]!, treads[1]!, { ...treads[3]!, step: 3 }, { ...treads[2]!, step: 4 }, ...treads.slice(4)];
    const { mistakes } = looked(exchanged);
    expect(mistakes).toHaveLength(1);
    expect(mistakes[0]).toMatchObject({ kind: "steps exchanged", isSure: true });
    expect(new Set(mistakes[0]!.readings.map((reading) => reading.split(" ")[1]))).toEqual(new Set(["3", "4"]));
  });
});

test("a step counts with both lengths and a diagonal", () => {
  const flight = flightReadings(
    [
      { step: 1, distance: 10, near: 36, far: 36, diagonal: 37.375 },
      { step: 2, distance: 10, near: 36, far: 36, secondDiagonal: 37.375 },
      { step: 3, distance: 10, near: 36, far: 36 },
      { step: 4, distance: 10, near: 36, diagonal: 37.375 },
      { step: 5, near: 36, far: 36, diagonal: 37.375 },
    ],
    [],
    "in",
  );
  // By hand: 3 has no diagonal, 4 no front, and a diagonal without a run says nothing.
  expect(isProblem(flight) ? 0 : stepsWithDiagonals(flight, "tread")).toBe(2);
});
