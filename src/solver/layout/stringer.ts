import { Exact } from "../length/exact";
import { pitch } from "./pitch";
import { throat } from "./throat";

/** A cut stringer; lengths in one unit, angles in degrees. */
export interface Stringer {
  readonly length: number;
  readonly throat: number;
  readonly drop: number;
  readonly hang: number;
  readonly plumbCut: number;
  readonly levelCut: number;
}

export interface StringerGiven {
  readonly rise: number;
  readonly run: number;
  readonly risers: number;
  readonly boardWidth: number;
  readonly treadThickness: number;
  readonly lowerBuildUp: number;
  readonly upperBuildUp: number;
}

const RIGHT_ANGLE = 90;

/**
 * A cut stringer under finished treads: its length along the slope from the foot of the first riser on the rough floor to the back of the
 * top sub-tread, what the cuts leave of the board, what is dropped off the foot, and how far the top level cut hangs below the rough
 * upper floor.
 */
export const stringer = (given: StringerGiven): Stringer => {
  const { rise, run, risers, boardWidth, treadThickness, lowerBuildUp, upperBuildUp } = given;
  const slope = Math.hypot(rise, run);
  const drop = treadThickness - lowerBuildUp;
  return {
    length: (risers - 1) * slope - (drop * rise) / slope,
    throat: throat(new Exact(boardWidth), new Exact(rise), new Exact(run)).toNumber(),
    drop,
    hang: rise - upperBuildUp + treadThickness,
    plumbCut: pitch(rise, run),
    levelCut: RIGHT_ANGLE - pitch(rise, run),
  };
};
