import { pitch } from "./pitch";

/** A handrail over a straight flight; lengths in one unit, angles in degrees. */
export interface Rail {
  readonly railLength: number;
  readonly cutAngle: number;
  /** Top of the rail, plumb over any nosing from the first to the landing's; undefined, as the others are, without a handrail height. */
  readonly heightOverTheNosings: number | undefined;
  /** The same taken square to the line of the nosings, for a template. */
  readonly squareHeight: number | undefined;
  /** The same point of the rail over the floor the stair stands on: a rise more. */
  readonly heightOverTheLowerFloorAtTheFirstNosing: number | undefined;
  readonly heightOverTheUpperFloorAtTheLandingNosing: number | undefined;
}

/** Length on the rake from the first nosing to the landing nosing, and the heights a plumb handrail height leads to. */
export const rail = (rise: number, run: number, risers: number, handrailHeight: number | undefined): Rail => ({
  railLength: (risers - 1) * Math.hypot(rise, run),
  cutAngle: pitch(rise, run),
  heightOverTheNosings: handrailHeight,
  squareHeight: handrailHeight === undefined ? undefined : (handrailHeight * run) / Math.hypot(rise, run),
  heightOverTheLowerFloorAtTheFirstNosing: handrailHeight === undefined ? undefined : handrailHeight + rise,
  heightOverTheUpperFloorAtTheLandingNosing: handrailHeight,
});
