/** Readings of one tread, at the level of the sub-tread, in one unit; angles in degrees. */
export interface TreadReading {
  readonly step?: string | number;
  readonly run?: number;
  readonly back: number;
  readonly front?: number;
  readonly diagonal?: number;
  readonly secondDiagonal?: number;
  readonly leftOffset?: number;
  readonly leftAngle?: number;
  readonly rightAngle?: number;
  readonly at?: number;
  readonly leftLean: number;
  readonly rightLean: number;
  readonly depth?: number;
  readonly leftRun?: number;
  readonly rightRun?: number;
  /** Each of these stands in for the flight's own where it is given. */
  readonly leftGap?: number;
  readonly rightGap?: number;
  readonly backGap?: number;
}
