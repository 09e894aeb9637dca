import { flightReadings, type PieceReading } from "../../../../src/solver/fit/skirt-surface/flight-readings";
import { repairsOf } from "../../../../src/solver/fit/skirt-surface/repairs";
import { skirtModel } from "../../../../src/solver/fit/skirt-surface/skirt-model";
import { isProblem } from "../../../../src/solver/problem";
import { augmented } from "./plain-algebra";
import { plainModel, plainSkirts, tread } from "./plain-skirts";

/**
 * Two treads, run 10, rise 7 3/4 as nobody read it: fronts at (0, 7.75) and (10, 15.5), backs at (10, 7.75) and (20, 15.5), along and
 * up.
 */
const TREADS: readonly PieceReading[] = [
  { step: 1, distance: 10, near: 36, far: 36.5, diagonal: 38.0625, secondDiagonal: 37.125 },
  { step: 2, distance: 10, near: 35.4375, far: 36.0625, diagonal: 37.5, secondDiagonal: 36.625 },
];
const SKIRT = { waves: 0.0625, reach: 30, roughness: 0.02, squareness: 0.004 };
const TAPE = 0.0005;

const FRONT_1 = { along: 0, high: 7.75 };
const BACK_1 = { along: 10, high: 7.75 };
const FRONT_2 = { along: 10, high: 15.5 };
const BACK_2 = { along: 20, high: 15.5 };
const BACK_3 = { along: 30, high: 23.25 };

const SEEN = [...tread(1, BACK_1, FRONT_1, 36.5), ...tread(2, BACK_2, FRONT_2, 36.0625)];
const { shared, design } = plainSkirts(SKIRT);
const { covariance: COVARIANCE, design: DESIGN, plain } = plainModel(SKIRT, SEEN, TAPE);
const LENGTHS = TREADS.flatMap(({ near, far, diagonal, secondDiagonal }) => [
  near!, far!, Math.sqrt(diagonal! ** 2 - 100), Math.sqrt(secondDiagonal! ** 2 - 100),
]);

const flight = flightReadings(TREADS, [], "in");
if (isProblem(flight)) throw new Error("each step stands once");
const model = skirtModel(flight, SKIRT, TAPE);

test("lengths are the edges, and the legs of the diagonals", () => {
  flight.observed.forEach(({ length }, at) => expect(length).toBeCloseTo(LENGTHS[at]!, 12));
  // By hand: 38 1/16 squared is 1448.7539, less 100 is 1348.7539; 36.725 squared is 1348.7256, and 0.0283 / 73.45 more.
  expect(flight.observed[2]!.length).toBeCloseTo(36.725385, 5);
});

test("the weighted sum of squares is that of one plain system", () => {
  expect(repairsOf(flight, model.projection, LENGTHS, new Set()).sum).toBeCloseTo(plain.sum(LENGTHS), 6);
});

test("what the sum is weighed against is the size of the plain system: |V| times |XᵀV⁻¹X|", () => {
  expect(model.logSpread).toBeCloseTo(plain.logSize, 8);
});

test("a reading's gain is the fall of the sum when it is left out, less what a free value buys", () => {
  const { repairs } = repairsOf(flight, model.projection, LENGTHS, new Set());
  const sum = plain.sum(LENGTHS);
  LENGTHS.forEach((_, out) => {
    const kept = <Value>(values: readonly Value[]): Value[] => values.filter((__, at) => at !== out);
    const without = augmented(kept(COVARIANCE).map(kept), kept(DESIGN));
    const found = repairs.find(({ kind, changes }) => kind === "off" && changes[0]!.reading === out)!;
    expect(found.gain + 6.5).toBeCloseTo(sum - without.sum(kept(LENGTHS)), 6);
    // Put right, it is what the others guess of it.
    const guess = without.guess(kept(LENGTHS), kept(COVARIANCE[out]!), shared(SEEN[out]!, SEEN[out]!), DESIGN[out]!);
    expect(found.changes[0]!.to).toBeCloseTo(guess.value, 8);
  });
});

test("an exchange's gain is the fall of the sum when it is put right, less what the choice buys", () => {
  const { repairs } = repairsOf(flight, model.projection, LENGTHS, new Set());
  const exchanged = [1, 0, 2, 3, 4, 5, 6, 7].map((at) => LENGTHS[at]!);
  const found = repairs.find(({ kind, changes }) => kind === "exchanged" && changes.some(({ reading }) => reading === 0))!;
  expect(found.gain + 1.5).toBeCloseTo(plain.sum(LENGTHS) - plain.sum(exchanged), 6);
  const steps = [4, 5, 6, 7, 0, 1, 2, 3].map((at) => LENGTHS[at]!);
  const whole = repairs.find(({ kind }) => kind === "steps exchanged")!;
  expect(whole.gain + 1.5).toBeCloseTo(plain.sum(LENGTHS) - plain.sum(steps), 6);
});

test("a length nobody read is guessed as by the plain system, with its variance", () => {
  const sighting = { left: BACK_3, right: BACK_3, turn: 0, tread: 3, slant: 1 };
  const found = model.guess(LENGTHS, sighting);
  const own = shared(sighting, sighting);
  const wanted = plain.guess(LENGTHS, SEEN.map((one) => shared(sighting, one)), own, design(sighting));
  expect(found.value).toBeCloseTo(wanted.value, 8);
  expect(found.variance).toBeCloseTo(wanted.variance, 8);
});
