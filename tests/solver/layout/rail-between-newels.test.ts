import fc from "fast-check";
import { type Newel, railBetweenNewels, type RailPiece, type RakedFlight } from "../../../src/solver/layout/rail-between-newels";
import { isProblem } from "../../../src/solver/problem";

/** A point in the plane of the flight: level behind the first nosing, plumb over the lower floor. */
type Point = readonly [number, number];

const piecesOf = (newels: readonly Newel[], flight: RakedFlight): readonly RailPiece[] => {
  const found = railBetweenNewels(newels, flight);
  if (isProblem(found)) throw new Error(found.problem);
  return found;
};

const among = (min: number, max: number) => fc.double({ min, max, noNaN: true });

const flights = fc.record({
  rise: among(6, 8.25), run: among(8, 12), risers: fc.integer({ min: 3, max: 18 }), handrailHeight: among(30, 42),
});

/** Newels up the stair: the first before or behind the first nosing, each further on by more than it is wide. */
const newels = fc.tuple(
  among(-12, 6),
  fc.array(fc.record({ on: among(8, 60), width: among(2, 6) }), { minLength: 2, maxLength: 4 }),
).map(([first, steps]) => {
  let place = first;
  return steps.map(({ on, width }, index): Newel => {
    place += index === 0 ? 0 : on;
    return { place, width };
  });
});

test("a worked rail: 7 3/4 by 10, handrail 34, newels 3 1/2 wide 2 1/2 before the first nosing and 132 behind it", () => {
  // By hand: faces at -0.75 and 130.25; 131 x sqrt(7.75² + 10²) / 10 = 131 x 1.265158 = 165.736. Top over the floor
  // 7.75 + 34 - 0.75 x 0.775 = 41.169, and 41.75 + 130.25 x 0.775 = 142.694; 14 rises are 108.5, and the landing nosing lies 130 along:
  // 34.194 over it.
  const flight = { rise: 7.75, run: 10, risers: 14, handrailHeight: 34 };
  const [piece] = piecesOf([{ place: -2.5, width: 3.5 }, { place: 132, width: 3.5 }], flight);
  expect(piece?.length).toBeCloseTo(165.736, 3);
  expect(piece?.from).toMatchObject({ newel: 1, side: "upper", footing: "lower floor" });
  expect(piece?.from.heightOverTheLowerFloor).toBeCloseTo(41.169, 3);
  expect(piece?.from.heightOverTheFooting).toBeCloseTo(41.169, 3);
  expect(piece?.to).toMatchObject({ newel: 2, side: "lower", footing: "upper floor" });
  expect(piece?.to.heightOverTheLowerFloor).toBeCloseTo(142.694, 3);
  expect(piece?.to.heightOverTheFooting).toBeCloseTo(34.194, 3);
});

// Kidder, Construction Superintendence, art. 188: the rail 2 ft 6 over the nosings, and on a landing as high as the stair rail stands at
// the middle of a tread, which it puts at 2 ft 8 to 2 ft 10. By hand: half a rise more, 33 1/2 for one of 7 in and 33 3/4 for one of 7 1/2.
test.each([[7, 33.5], [7.5, 33.75]])("over the middle of a tread the rail stands half a rise of %d higher", (rise, height) => {
  const flight = { rise, run: 10, risers: 10, handrailHeight: 30 };
  const [piece] = piecesOf([{ place: -4, width: 4 }, { place: 47, width: 4 }], flight);
  expect(piece?.to).toMatchObject({ footing: "tread", tread: 5 });
  expect(piece?.to.heightOverTheFooting).toBeCloseTo(height, 9);
  expect(height).toBeGreaterThanOrEqual(32);
  expect(height).toBeLessThanOrEqual(34);
});

test("met in the plane: the rail's line against the faces of newels, and the surface each face stands on", () => {
  fc.assert(
    fc.property(flights, newels, (flight, given) => {
      const { rise, run, risers, handrailHeight } = flight;
      const nosings = Array.from({ length: risers }, (_, index): Point => [index * run, (index + 1) * rise]);
      // The rail's top runs over the first and the last nosing; a face is a plumb line.
      const [first, last] = [nosings[0], nosings[risers - 1]];
      if (first === undefined || last === undefined) throw new Error("nosings");
      const topAt = (x: number): number =>
        first[1] + handrailHeight + ((x - first[0]) / (last[0] - first[0])) * (last[1] - first[1]);
      const surfaceAt = (x: number): number => Math.max(0, ...nosings.filter(([at]) => at <= x).map(([, high]) => high));
      const pieces = piecesOf(given, flight);
      expect(pieces).toHaveLength(given.length - 1);
      pieces.forEach(({ from, to, length }, index) => {
        const [lower, upper] = [given[index], given[index + 1]];
        if (lower === undefined || upper === undefined) throw new Error("newels");
        const [left, right] = [lower.place + lower.width / 2, upper.place - upper.width / 2];
        expect(length).toBeCloseTo(Math.hypot(right - left, topAt(right) - topAt(left)), 8);
        for (const [face, x] of [[from, left], [to, right]] as const) {
          expect(face.heightOverTheLowerFloor).toBeCloseTo(topAt(x), 8);
          expect(face.heightOverTheFooting).toBeCloseTo(topAt(x) - surfaceAt(x), 8);
          expect(face.footing === "lower floor").toBe(surfaceAt(x) === 0);
          expect(face.footing === "upper floor").toBe(surfaceAt(x) === last[1]);
          if (face.footing === "tread") expect((face.tread ?? 0) * rise).toBeCloseTo(surfaceAt(x), 8);
        }
      });
    }),
  );
});

test("a face on a nosing stands on the tread behind it, whatever digits a cell cut off", () => {
  // By hand: a run of 10/3, a newel whose lower face is two of them behind the first nosing: on the third.
  const run = 10 / 3;
  const [piece] = piecesOf([{ place: -4, width: 4 }, { place: 6.66666666666666 + 1, width: 2 }], {
    rise: 7, run, risers: 10, handrailHeight: undefined,
  });
  expect(piece?.to).toMatchObject({ footing: "tread", tread: 3, heightOverTheFooting: undefined });
});

test("one newel, and newels out of order or grown together, have no rail between them", () => {
  const flight = { rise: 7.5, run: 10, risers: 14, handrailHeight: 36 };
  expect(railBetweenNewels([{ place: 0, width: 4 }], flight)).toMatchObject({ problem: "one-newel" });
  expect(railBetweenNewels([{ place: 0, width: 4 }, { place: 4, width: 4 }], flight)).toMatchObject({
    problem: "newels-meet", details: { lower: 1, upper: 2, from: 2, to: 2 },
  });
  expect(railBetweenNewels([{ place: 50, width: 4 }, { place: 0, width: 4 }], flight)).toMatchObject({ problem: "newels-meet" });
});
