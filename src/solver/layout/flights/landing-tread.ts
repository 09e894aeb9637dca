import type { Length } from "../../length/length";
import type { Stair } from "../resolved-stair";
import type { Flight } from "./flight-stair";

/** The nosing piece of the landing above a flight. */
export interface LandingTread {
  readonly depth: Length;
  /** As long as a tread where nobody gave it. */
  readonly length: Length | undefined;
  readonly note: string;
  readonly isAssumed: boolean;
}

const LEAST = "depth of its nosing piece: the least, over the riser and its nosing; stock pieces are deeper";

/** The piece a landing ends on over the last riser of a flight; none where the stair's floors get none, or the landing's row says so. */
export const landingTread = (stair: Stair, { landing, given }: Flight): LandingTread | undefined => {
  if (landing === undefined) return undefined;
  const depth = given.landingTread ?? stair.landingTread;
  const length = given.landingTreadLength ?? stair.landingTreadLength;
  if (depth === undefined) {
    return stair.landingNosing ? { depth: stair.nosing.plus(stair.riserThickness), length, note: LEAST, isAssumed: true } : undefined;
  }
  return depth.isZero() ? undefined : { depth, length, note: "depth of its nosing piece", isAssumed: false };
};
