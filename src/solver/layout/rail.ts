import { pitch } from "./pitch";

/** A handrail over a straight flight; lengths in one unit, angles in degrees. */
export interface Rail {
  readonly railLength: number;
  readonly cutAngle: number;
  /** The rail's height over the nosing line taken square to it, for a template; undefined without a handrail height. */
  readonly squareHeight: number | undefined;
  /** Top of the rail over the lower floor at the first nosing, and over the upper floor at the landing nosing. */
  readonly heightAtTheFirstNosing: number | undefined;
  readonly heightAtTheLandingNosing: number | undefined;
}

/** Length on the rake from the first nosing to the landing nosing, and the heights a plumb handrail height leads to. */
export const rail = (rise: number, run: number, risers: number, handrailHeight: number | undefined): Rail => ({
  railLength: (risers - 1) * Math.hypot(rise, run),
  cutAngle: pitch(rise, run),
  squareHeight: handrailHeight === undefined ? undefined : (handrailHeight * run) / Math.hypot(rise, run),
  heightAtTheFirstNosing: handrailHeight === undefined ? undefined : handrailHeight + rise,
  heightAtTheLandingNosing: handrailHeight,
});
