import type { CodeProfile, Limit } from "../../../src/solver/code/profile";
import { PROFILES } from "../../../src/solver/code/profiles";
import { mainRule, rowTrials } from "./boundary";
import { stairFor } from "./meeting";
import { rowsOf } from "./stair-check";

/** A code of this limit, and of those its conditions ask after. */
const alone = (limit: Limit, profile: CodeProfile): CodeProfile => {
  const asked = JSON.stringify([limit.applies, limit.exceptions]);
  return { ...profile, limits: profile.limits.filter((one) => one === limit || asked.includes(`{"reached":"${one.item}"}`)) };
};

describe("the row of a limit passes and fails as its printed text says, its conditions met and its exceptions not", () => {
  test.each(PROFILES.map((profile) => [profile.id, profile] as const))("%s", (_id, profile) => {
    const faults = profile.limits
      .filter(({ rule }) => mainRule(rule) !== undefined)
      .flatMap((limit) =>
        rowTrials(limit).flatMap(({ facts, verdict, what }) => {
          const stair = stairFor(limit, profile, facts);
          if (stair === undefined) return [`${what}: no stair found`];
          const row = rowsOf(stair, [], [], alone(limit, profile)).find(({ item }) => item === limit.item);
          return row?.verdict === verdict ? [] : [`${what}: ${row?.verdict ?? "no row"}, not ${verdict}`];
        }),
      );
    expect(faults).toEqual([]);
  });
});
