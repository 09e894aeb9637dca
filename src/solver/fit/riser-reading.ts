/**
 * Readings of one riser at its back, in one unit; angles in degrees. A flare is a skirt's angle in plan, positive where it opens to the
 * front.
 */
export interface RiserReading {
  readonly step?: string | number;
  readonly height: number;
  readonly top: number;
  readonly bottom?: number;
  readonly diagonal?: number;
  readonly secondDiagonal?: number;
  readonly leftOffset?: number;
  readonly leftAngle?: number;
  readonly rightAngle?: number;
  readonly cutHeight?: number;
  readonly leftFlare: number;
  readonly rightFlare: number;
  /** Each of these stands in for the flight's own where it is given. */
  readonly leftGap?: number;
  readonly rightGap?: number;
}
