import { type Problem, problem } from "../problem";

/**
 * Readings of one piece between two surfaces that are not parallel, on two lines a known distance apart: the near line (a tread's back, a
 * riser's top) and the far line (a tread's front, a riser's bottom). All in one unit; angles in degrees.
 */
export interface CornerReading {
  readonly distance: number;
  readonly near: number;
  readonly far: number;
  /** Near left to far right. */
  readonly diagonal?: number;
  /** Near right to far left. */
  readonly secondDiagonal?: number;
  /** How far the far left corner lies right of the near left one. */
  readonly leftOffset?: number;
  /** Positive when the far line is the longer on this side. */
  readonly leftAngle?: number;
}

/** The four corners on the two lines, by the place of the far ones along the line; the near left corner is 0, the near right one `near`. */
export interface Corners {
  readonly distance: number;
  readonly near: number;
  readonly farLeft: number;
  readonly farRight: number;
  /** What the two diagonals disagree by; undefined where nothing checks the reading. */
  readonly closure: number | undefined;
  readonly unused: readonly ("leftOffset" | "leftAngle")[];
}

export type CornerProblem = "diagonal-too-short" | "second-diagonal-too-short" | "nothing-fixes-the-end" | "diagonal-on-the-wrong-side";

const DEGREES = Math.PI / 180;

const leg = (hypotenuse: number, other: number): number => Math.sqrt(hypotenuse * hypotenuse - other * other);

/** Where the far left corner lies, from whatever fixes it: both diagonals (their mean), one, an offset or an angle. */
export const corners = (reading: CornerReading): Corners | Problem<CornerProblem> => {
  const { distance, near, far, diagonal, secondDiagonal, leftOffset, leftAngle } = reading;
  if (diagonal !== undefined && diagonal <= distance) return problem("diagonal-too-short", { diagonal, distance });
  if (secondDiagonal !== undefined && secondDiagonal <= distance) return problem("second-diagonal-too-short", { diagonal: secondDiagonal, distance });
  const first = diagonal === undefined ? undefined : leg(diagonal, distance) - far;
  const second = secondDiagonal === undefined ? undefined : near - leg(secondDiagonal, distance);
  const byAngle = leftAngle === undefined ? undefined : -distance * Math.tan(leftAngle * DEGREES);
  const mean = first !== undefined && second !== undefined ? (first + second) / 2 : (first ?? second);
  const farLeft = mean ?? leftOffset ?? byAngle;
  if (farLeft === undefined) return problem("nothing-fixes-the-end");
  // Both far corners left of the near left one, or both right of the near right one: the diagonal was taken the other way.
  if (farLeft + far <= 0 || farLeft >= near) return problem("diagonal-on-the-wrong-side", { farLeft });
  return {
    distance,
    near,
    farLeft,
    farRight: farLeft + far,
    closure: first !== undefined && second !== undefined ? first - second : undefined,
    unused: [
      ...(mean !== undefined && leftOffset !== undefined ? (["leftOffset"] as const) : []),
      ...((mean ?? leftOffset) !== undefined && leftAngle !== undefined ? (["leftAngle"] as const) : []),
    ],
  };
};
