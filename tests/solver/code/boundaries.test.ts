import type { Limit } from "../../../src/solver/code/profile";
import { PROFILES } from "../../../src/solver/code/profiles";
import { boundaryFaults, withOneFigureMoved } from "./boundary";

/** The parts of a limit that decide. */
const deciding = ({ rule, applies, exceptions }: Limit) => ({ rule, applies, exceptions });

describe("every figure decides as its printed text says: one mark under, on and one mark over, in each unit printed", () => {
  test.each(PROFILES.map((profile) => [profile.id, profile.limits] as const))("%s", (_id, limits) => {
    expect(limits.flatMap(boundaryFaults)).toEqual([]);
  });
});

describe("a figure that is a tenth off its printed text is noticed, and a count that is one off", () => {
  test.each(PROFILES.map((profile) => [profile.id, profile.limits] as const))("%s", (_id, limits) => {
    const moved = limits.flatMap((limit) => withOneFigureMoved(deciding(limit)).map((other) => ({ ...limit, ...other })));
    expect(moved.length).toBeGreaterThan(limits.length);
    const missed = moved.filter((limit) => boundaryFaults(limit).length === 0);
    expect(missed.map(({ item, rule, exceptions }) => `${item}: ${JSON.stringify([rule, exceptions])}`)).toEqual([]);
  });
});
