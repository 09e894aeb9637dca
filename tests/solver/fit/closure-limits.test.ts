import { closureLimits } from "../../../src/solver/fit/closure-limits";

test("two divisions, and never under 3/32 in, in the unit of the call", () => {
  // By hand: 2/16 = 1/8; 2/32 = 1/16 is under 3/32; a millimetre tape 2 mm, under 3/32 x 25.4 = 2.38125 mm.
  const most = (divisions: number | undefined, unit: "in" | "mm") => closureLimits(divisions, unit).most;
  expect([most(undefined, "in"), most(16, "in"), most(32, "in"), most(64, "in"), most(8, "in")]).toEqual([
    0.125, 0.125, 0.09375, 0.09375, 0.25,
  ]);
  expect([most(undefined, "mm"), most(1, "mm"), most(2, "mm")]).toEqual([2.38125, 2.38125, 2.38125]);
  expect(closureLimits(undefined, "mm")).toMatchObject({ division: 1, alike: 3.175 });
});
