import type { Corners } from "./corner-reading";

/** The line a side runs on, at the level read: one of its points, and how far it opens outward per unit towards the far line. */
export interface Side {
  readonly at: number;
  readonly ahead: number;
  readonly slope: number;
}

/**
 * A reading seen along its far line, on which the piece lies at the saw: places along it, from the near left corner, and ahead, square to
 * it, towards it.
 */
export interface PieceFrame {
  readonly left: Side;
  readonly right: Side;
  /** How far ahead the far line lies. */
  readonly distance: number;
  /** How far the near line runs ahead per unit to the right: 0 where it is parallel to the far one. */
  readonly nearSlope: number;
  /** Cosine of the angle between the two lines. */
  readonly nearCosine: number;
}

/** The corners turned so that the far line lies level. */
export const pieceFrame = ({ leftDistance, rightDistance, near, farLeft, farRight }: Corners): PieceFrame => {
  const [wide, taper] = [farRight - farLeft, rightDistance - leftDistance];
  const long = Math.hypot(wide, taper);
  const [cos, sin] = [wide / long, taper / long];
  const distance = leftDistance * cos - farLeft * sin;
  const right = { at: near * cos, ahead: -near * sin };
  const [farLeftAt, farRightAt] = [farLeft * cos + leftDistance * sin, farRight * cos + rightDistance * sin];
  return {
    left: { at: 0, ahead: 0, slope: -farLeftAt / distance },
    right: { ...right, slope: (farRightAt - right.at) / (distance - right.ahead) },
    distance,
    nearSlope: -taper / wide,
    nearCosine: cos,
  };
};

/** Whether the far line lies ahead of the near one at both sides: the two do not meet between them. */
export const isAhead = ({ distance, right }: PieceFrame): boolean => distance > 0 && distance > right.ahead;
