import { RADIANS_PER_DEGREE } from "../degrees";
import { type Problem, problem } from "../problem";

/** Winders that turn about a centre; lengths in one unit, angles in degrees. */
export interface WinderTurn {
  readonly walklineRadius: number;
  /** Straight between noses, as the codes measure. */
  readonly depthAtTheWalkline: number;
  /** Along the walkline, as old handbooks print. */
  readonly arcAtTheWalkline: number;
  readonly depthAtTheNarrowEnd: number;
  readonly nosings: readonly WinderNosing[];
}

/**
 * Where a nosing crosses a string, measured along it: round strings from the start of the turn, straight ones from the foot of the
 * perpendicular from the centre.
 */
export interface WinderNosing {
  readonly nosing: number;
  readonly string: "inner" | "outer" | "first" | "second";
  readonly along: number;
}

export interface WinderGiven {
  readonly winders: number;
  readonly turn: number;
  readonly innerRadius: number;
  readonly width: number;
  /** Distance of the walkline from the narrow end of the clear width: the code's own. */
  readonly walkline: number;
  readonly strings: "round" | "straight";
}

export type WinderProblem = "walkline-outside" | "straight-strings-past-half-turn";

const HALF_TURN = 180;

const roundPlaces = (given: WinderGiven, angle: number): WinderNosing[] =>
  Array.from({ length: given.winders + 1 }, (_, line) => line).flatMap((line) => {
    const turned = (angle * line) / given.winders;
    return [
      { nosing: line + 1, string: "inner", along: given.innerRadius * turned },
      { nosing: line + 1, string: "outer", along: (given.innerRadius + given.width) * turned },
    ] as const;
  });

const straightPlaces = (given: WinderGiven, angle: number): WinderNosing[] => {
  const away = given.innerRadius + given.width;
  return Array.from({ length: given.winders + 1 }, (_, line): WinderNosing => {
    // Counted in whole winders, so that the one in the corner is on the first string whatever the rounding.
    const isOnFirst = line * 2 <= given.winders;
    const turned = (angle * (isOnFirst ? line : given.winders - line)) / given.winders;
    return { nosing: line + 1, string: isOnFirst ? "first" : "second", along: away * Math.tan(turned) };
  });
};

/** Depths of equal winders at the walkline and the narrow end, and where their nosings cross the strings. */
export const winderTurn = (given: WinderGiven): WinderTurn | Problem<WinderProblem> => {
  const { winders, turn, innerRadius, width, walkline, strings } = given;
  if (walkline > width) return problem("walkline-outside", { walkline, width });
  if (strings === "straight" && turn >= HALF_TURN) return problem("straight-strings-past-half-turn", { turn });
  const angle = turn * RADIANS_PER_DEGREE;
  const radius = innerRadius + walkline;
  const chord = (at: number): number => 2 * at * Math.sin(angle / (2 * winders));
  return {
    walklineRadius: radius,
    depthAtTheWalkline: chord(radius),
    arcAtTheWalkline: (radius * angle) / winders,
    depthAtTheNarrowEnd: chord(innerRadius),
    nosings: strings === "round" ? roundPlaces(given, angle) : straightPlaces(given, angle),
  };
};
