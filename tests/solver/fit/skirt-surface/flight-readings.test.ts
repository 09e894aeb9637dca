import { flightReadings, type PieceReading } from "../../../../src/solver/fit/skirt-surface/flight-readings";
import { isProblem } from "../../../../src/solver/problem";

const flightOf = (treads: readonly PieceReading[], risers: readonly PieceReading[] = [], unit: "in" | "mm" = "in") => {
  const found = flightReadings(treads, risers, unit);
  if (isProblem(found)) throw new Error(found.problem);
  return found;
};

const cornersOf = (flight: ReturnType<typeof flightOf>, kind: "tread" | "riser") =>
  flight.observed
    .filter((one) => one.kind === kind && one.across === 0)
    .map(({ row, place, right }) => [row, place, flight.corners[right]!.along, flight.corners[right]!.high]);

test("corners run up the stair in a zig-zag, and a tread's front is the top of its riser", () => {
  const flight = flightOf(
    [{ step: 1, distance: 10, near: 36, far: 36 }, { step: 2, distance: 9, near: 36, far: 36 }],
    [7, 8, 7.5].map((distance, row) => ({ step: row + 1, distance, near: 36, far: 36 })),
  );
  // By hand: risers of 7, 8, 7 1/2; runs of 10 and 9. Near is a tread's back and a riser's top.
  expect(cornersOf(flight, "tread")).toEqual([[0, "near", 10, 7], [0, "far", 0, 7], [1, "near", 19, 15], [1, "far", 10, 15]]);
  expect(cornersOf(flight, "riser")).toEqual([
    [0, "near", 0, 7], [0, "far", 0, 0], [1, "near", 10, 15], [1, "far", 10, 7], [2, "near", 19, 22.5], [2, "far", 19, 15],
  ]);
  // The top of riser 1 and the front of tread 1 are one corner, so is the foot of riser 3 and the back of tread 2.
  const at = (kind: string, row: number, place: string) =>
    flight.observed.find((one) => one.kind === kind && one.row === row && one.place === place)!.right;
  expect(at("riser", 0, "near")).toBe(at("tread", 0, "far"));
  expect(at("riser", 2, "far")).toBe(at("tread", 1, "near"));
  // The next tread stands on riser 3, a middle run deep: of 9 and 10 the upper one.
  expect(flight.next).toEqual({ front: { along: 19, high: 22.5 }, back: { along: 29, high: 22.5 } });
});

test("steps are placed by number, and steps nobody read in between count as like the others", () => {
  const flight = flightOf([{ step: 5, distance: 10, near: 36 }, { step: "2", distance: 10, near: 36 }]);
  // By hand: step 2 begins the flight, its back 10 along; step 5 stands three runs and three rises of 7 3/4 further.
  expect(cornersOf(flight, "tread")).toEqual([[0, "near", 40, 31], [1, "near", 10, 7.75]]);
});

test("readings without a number, or with names, count from the bottom as they stand", () => {
  const flight = flightOf([{ step: "foot", distance: 10, near: 36 }, { distance: 10, near: 36 }]);
  expect(cornersOf(flight, "tread")).toEqual([[0, "near", 10, 7.75], [1, "near", 20, 15.5]]);
});

test("a step in two rows of one table is no single flight", () => {
  expect(flightReadings([{ step: 2, near: 36 }, { step: 2, near: 36 }], [], "in")).toEqual({ problem: "step-twice", details: { step: 2 } });
});

test("millimetres are brought to inches, 25.4 each by definition", () => {
  const [length] = flightOf([{ step: 1, distance: 254, near: 914.4 }], [], "mm").observed;
  expect(length!.length).toBeCloseTo(36, 12);
});

test("a diagonal no longer than the run leaves no leg, and is there to stand out", () => {
  const found = flightOf([{ step: 1, distance: 10, near: 36, far: 36, diagonal: 9 }]).observed.find(({ place }) => place === "diagonal");
  expect(found!.length).toBe(0);
});
