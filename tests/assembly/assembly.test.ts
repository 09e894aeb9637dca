import fc from "fast-check";
import type { Misreading } from "../functions/simulated-saw";
import { type House, houses, inchesPer, type RoughFlight, SIDES } from "./house";
import { type Built, built, isOpen } from "./joints";
import { type Tickets, ticketsOf } from "./tickets";

/** A joint may stand open by so much: the tickets' figures are rounded, the readings are exact. */
const TIGHT_INCHES = 1 / 64;
/** Where two pieces meet that were each rounded: a return in its seat on the tread. */
const TOGETHER_INCHES = 1 / 32;
/** A tilt is told to a tenth of a degree: 1 1/2 x tan 0.05 is 0.0013. */
const TILT_INCHES = 1 / 512;
/** Rounding of a number in a double. */
const ROUNDING = 1e-9;

const close = (one: number, other: number, within: number): void => expect(Math.abs(one - other)).toBeLessThanOrEqual(within);

/** Where a riser laps the tread below, its notch lets the return run back past it. */
const notchesClear = ({ sizes }: House, { notches, inRiser }: Built, { notch }: Tickets, inch: number): void => {
  for (const { along, up } of notches) {
    close(along / inch, notch.width / inch, TIGHT_INCHES);
    close(up / inch, notch.height / inch, TIGHT_INCHES);
    expect(up / inch).toBeGreaterThanOrEqual(sizes.lap / inch - TIGHT_INCHES);
  }
  if (sizes.lap > 0) for (const each of inRiser) expect(each).toBeLessThanOrEqual(TIGHT_INCHES);
};

const flightFits = (house: House, flight: RoughFlight): number => {
  const inch = inchesPer[house.sizes.unit];
  const { nosing, lap, spread: asked } = house.sizes;
  const tickets = ticketsOf(house, flight);
  const stair = built(house, flight, tickets);
  const steps = flight.steps.length;
  for (const { where, off } of stair.joints) expect(off <= TIGHT_INCHES ? "" : `${where}: ${String(off)}`).toBe("");
  for (const { where, off } of stair.returns) expect(off <= TOGETHER_INCHES ? "" : `${where}: ${String(off)}`).toBe("");
  for (const each of stair.proud) expect(each).toBeLessThanOrEqual(TILT_INCHES);
  // Every nosing as far out as the next, and as far as was asked.
  expect(stair.nosings).toHaveLength(steps - 1);
  for (const each of stair.nosings) close(each, nosing / inch, TIGHT_INCHES);
  // The rises as they stand, and as the sheet says they will.
  stair.rises.forEach((rise, index) => close(rise, (tickets.rises[index] ?? NaN) / inch, ROUNDING));
  const spread = Math.max(...stair.rises) - Math.min(...stair.rises);
  close(spread, tickets.spread / inch, ROUNDING);
  if (tickets.isWithin && asked !== "least") expect(spread).toBeLessThanOrEqual(0.375 + ROUNDING);
  stair.riserHeights.forEach((height, index) => close(height / inch, (tickets.riserHeights[index] ?? NaN) / inch, TIGHT_INCHES));
  const open = SIDES.filter((side) => isOpen(house.sizes, side)).length;
  expect(stair.notches).toHaveLength(lap > 0 ? open * (steps - 1) : 0);
  notchesClear(house, stair, tickets, inch);
  return stair.rises.reduce((sum, rise) => sum + rise, 0);
};

describe("a stair built from its tickets alone", () => {
  test.each(["in", "mm"] as const)("fits a hundred crooked houses, floor to floor, %s", (unit) => {
    fc.assert(
      fc.property(houses(unit), (house) => {
        const climbed = house.flights.map((flight) => flightFits(house, flight)).reduce((sum, each) => sum + each, 0);
        close(climbed, house.totalRise / inchesPer[unit], ROUNDING);
      }),
      { numRuns: 100 },
    );
  });
});

describe("what is done wrongly opens a joint", () => {
  const worstOf = (house: House, misread?: Misreading): number =>
    Math.max(...house.flights.flatMap((flight) => built(house, flight, ticketsOf(house, flight), misread).joints.map(({ off }) => off)));
  const isCrooked = ({ sizes, flights }: House): boolean =>
    sizes.openEnd === "none" && sizes.lap > 0 &&
    flights.some(({ steps }) => steps.some(({ skirts: { left } }) => Math.abs(left.perY) > 0.04 && Math.abs(left.perZ) > 0.04));
  const [house] = fc.sample(houses("in").filter(isCrooked), { numRuns: 1, seed: 11 });

  test.each(["swing mirrored", "tilt mirrored", "inch forgotten"] as const)("%s", (misread) => {
    if (house === undefined) throw new Error("no house");
    expect(worstOf(house)).toBeLessThanOrEqual(TIGHT_INCHES);
    // By hand: one of its steps is 0.04 to the inch off both ways: over 10 of run 0.4, over 3/4 of thickness twice 0.03, halved by sliding.
    expect(worstOf(house, misread)).toBeGreaterThan(TIGHT_INCHES);
  });

  test("risers ripped without their lap leave a gap under every tread but the first", () => {
    if (house === undefined) throw new Error("no house");
    const { lap } = house.sizes;
    const open = house.flights.flatMap((flight) => {
      const tickets = ticketsOf({ ...house, sizes: { ...house.sizes, lap: 0 } }, flight);
      return built(house, flight, tickets).joints.filter(({ where }) => where.includes("under the tread above")).map(({ off }) => off);
    });
    const first = house.flights.length;
    expect(open.filter((off) => off <= TIGHT_INCHES)).toHaveLength(first);
    expect(open.filter((off) => Math.abs(off - lap) <= TIGHT_INCHES)).toHaveLength(open.length - first);
  });
});
