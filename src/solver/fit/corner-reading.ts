import { RADIANS_PER_DEGREE } from "../degrees";
import { type Problem, problem } from "../problem";

/**
 * Readings of one piece between two surfaces that are not parallel, on two lines: the near line (a tread's back, a riser's top) and the far
 * line (a tread's front, a riser's bottom). All in one unit; angles in degrees, from square to the near line.
 */
export interface CornerReading extends Distances {
  readonly near: number;
  /** How far from the near line, towards the far one, the length `near` was read: the bar of a template. */
  readonly at?: number;
  /** Left out where both angles give it. */
  readonly far?: number;
  /** Near left to far right. */
  readonly diagonal?: number;
  /** Near right to far left. */
  readonly secondDiagonal?: number;
  /** How far the far left corner lies right of the near left one. */
  readonly leftOffset?: number;
  /** Positive when the far line is the longer on this side. */
  readonly leftAngle?: number;
  readonly rightAngle?: number;
}

/** From the near line to the far corners, square to the near line: the same twice where the two lines are parallel. */
export interface Distances {
  readonly leftDistance: number;
  readonly rightDistance: number;
}

export type UnusedReading = "diagonal" | "secondDiagonal" | "leftOffset" | "leftAngle" | "rightAngle";

/** The four corners on the two lines, by their places along the near one; the near left corner is 0, the near right one `near`. */
export interface Corners extends Distances {
  readonly near: number;
  readonly farLeft: number;
  readonly farRight: number;
  /** What two ways to the same corner disagree by; undefined where nothing checks the reading. */
  readonly closure: number | undefined;
  /** What closes the reading: both diagonals, or both lengths with both angles. */
  readonly closedBy: "diagonals" | "angles" | undefined;
  /** Only angles tell the far line: a length along it would check them. */
  readonly isFarByAngles: boolean;
  readonly unused: readonly UnusedReading[];
}

export type CornerProblem =
  | "diagonal-too-short"
  | "second-diagonal-too-short"
  | "nothing-fixes-the-end"
  | "diagonal-on-the-wrong-side"
  | "nothing-gives-the-far-line"
  | "bar-without-angles"
  | "angles-leave-no-length";

const leg = (hypotenuse: number, other: number): number => Math.sqrt(hypotenuse * hypotenuse - other * other);
const slope = (angle: number | undefined): number | undefined => (angle === undefined ? undefined : Math.tan(angle * RADIANS_PER_DEGREE));
/** The far line, seen from square to the near one; each diagonal has a leg of its own where the two are not parallel. */
const alongNear = (far: number, { leftDistance, rightDistance }: Distances): number => leg(far, rightDistance - leftDistance);
const mean = (one: number | undefined, other: number | undefined): number | undefined =>
  one !== undefined && other !== undefined ? (one + other) / 2 : (one ?? other);

const tooShort = ({ diagonal, secondDiagonal, leftDistance, rightDistance }: CornerReading): Problem<CornerProblem> | undefined => {
  if (diagonal !== undefined && diagonal <= rightDistance) return problem("diagonal-too-short", { diagonal, distance: rightDistance });
  if (secondDiagonal !== undefined && secondDiagonal <= leftDistance)
    return problem("second-diagonal-too-short", { diagonal: secondDiagonal, distance: leftDistance });
  return undefined;
};

/** Where the far left corner lies, from whatever fixes it: both diagonals (their mean), one, an offset, or the angles of the ends. */
export const corners = (reading: CornerReading): Corners | Problem<CornerProblem> => {
  const { leftDistance, rightDistance, at, diagonal, secondDiagonal, leftOffset } = reading;
  const short = tooShort(reading);
  if (short !== undefined) return short;
  const [left, right] = [slope(reading.leftAngle), slope(reading.rightAngle)];
  const opening = left === undefined || right === undefined ? undefined : left + right;
  if (at !== undefined && opening === undefined) return problem("bar-without-angles", { at });
  const near = reading.near - (at ?? 0) * (opening ?? 0);
  const byAngles = left === undefined || right === undefined ? undefined : near + leftDistance * left + rightDistance * right;
  const far = reading.far === undefined ? byAngles : alongNear(reading.far, reading);
  if (far === undefined) return problem("nothing-gives-the-far-line");
  if (near <= 0 || far <= 0) return problem("angles-leave-no-length");
  const isFarRead = reading.far !== undefined;
  const first = diagonal === undefined || !isFarRead ? undefined : leg(diagonal, rightDistance) - far;
  const second = secondDiagonal === undefined || !isFarRead ? undefined : near - leg(secondDiagonal, leftDistance);
  const byDiagonals = mean(first, second);
  const byLeft = left === undefined ? undefined : -leftDistance * left;
  const byRight = right === undefined ? undefined : near + rightDistance * right - far;
  const farLeft = byDiagonals ?? (isFarRead ? leftOffset : undefined) ?? mean(byLeft, byRight);
  if (farLeft === undefined) return problem("nothing-fixes-the-end");
  // Both far corners left of the near left one, or both right of the near right one: the diagonal was taken the other way.
  if (farLeft + far <= 0 || farLeft >= near) return problem("diagonal-on-the-wrong-side", { farLeft });
  const isClosedByDiagonals = first !== undefined && second !== undefined;
  const isByAngles = byDiagonals === undefined && (leftOffset === undefined || !isFarRead);
  const isClosedByAngles = isByAngles && isFarRead && byLeft !== undefined && byRight !== undefined;
  const given = (name: UnusedReading, isUsed: boolean): readonly UnusedReading[] => (reading[name] !== undefined && !isUsed ? [name] : []);
  // The angles of a bar read `at` its own place have served to bring it to the near line.
  const isAngleUsed = isByAngles || at !== undefined || !isFarRead;
  return {
    leftDistance,
    rightDistance,
    near,
    farLeft,
    farRight: farLeft + far,
    closure: isClosedByDiagonals ? first - second : isClosedByAngles ? byLeft - byRight : undefined,
    closedBy: isClosedByDiagonals ? "diagonals" : isClosedByAngles ? "angles" : undefined,
    isFarByAngles: !isFarRead,
    unused: [
      ...given("diagonal", first !== undefined),
      ...given("secondDiagonal", second !== undefined),
      ...given("leftOffset", byDiagonals === undefined && isFarRead),
      ...given("leftAngle", isAngleUsed),
      ...given("rightAngle", isAngleUsed),
    ],
  };
};
