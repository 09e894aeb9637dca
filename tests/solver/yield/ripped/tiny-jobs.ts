import fc from "fast-check";
import type { PlainBoard, PlainJob, PlainPiece } from "./plain-job";

/** Four shapes at most, twelve pieces, six boards: small enough for every choice there is. */
const pieces: fc.Arbitrary<PlainPiece[]> = fc.array(
  fc.record({
    label: fc.constant("piece"),
    length: fc.integer({ min: 20, max: 90 }).map((halves) => halves / 2),
    width: fc.option(fc.constantFrom(2, 3.5, 5, 7.25), { nil: undefined, freq: 8 }),
    quantity: fc.integer({ min: 1, max: 3 }),
    grade: fc.constantFrom("FAS", "1C"),
    alsoFrom: fc.constantFrom("", "FAS", "any"),
  }).map(({ width, ...rest }) => (width === undefined ? rest : { ...rest, width })),
  { minLength: 1, maxLength: 4 },
);

const boards: fc.Arbitrary<PlainBoard[]> = fc.array(
  fc.record({
    length: fc.integer({ min: 30, max: 110 }),
    width: fc.integer({ min: 24, max: 96 }).map((eighths) => eighths / 8),
    price: fc.integer({ min: 5, max: 60 }),
    grade: fc.constantFrom("FAS", "FAS", "1C"),
    knot: fc.option(fc.integer({ min: 5, max: 25 }), { nil: undefined }),
    owned: fc.constantFrom(false, false, false, true),
    lot: fc.constantFrom(undefined, undefined, "X"),
  }).map(({ knot, lot, price, ...rest }, ): PlainBoard => ({
    ...rest,
    ...(knot === undefined ? {} : { defects: [[knot, knot + 3]] as const }),
    ...(lot === undefined || rest.owned ? { price } : { lot, lotPrice: 40 }),
  })),
  { minLength: 1, maxLength: 6 },
);

export const tinyJobs: fc.Arbitrary<PlainJob> = fc.record({
  pieces, boards,
  kerf: fc.constantFrom(0, 0.125, 0.25),
  trim: fc.constantFrom(0, 0.5),
  first: fc.constantFrom("rip", "crosscut", "either"),
});
