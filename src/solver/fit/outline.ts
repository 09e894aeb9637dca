/** A place on the face of a piece that lies as at the saw: along its near edge to the right, and behind that edge. */
export interface FacePoint {
  readonly along: number;
  readonly behind: number;
}

/** One end of a finished piece. */
export interface OutlineEnd {
  readonly isOpen: boolean;
  /** On the nose (a riser's bottom), the toe at an open end of a tread. */
  readonly near: FacePoint;
  /** Where a return's mitre ends. */
  readonly heel?: FacePoint;
  /** On the ripped edge, on which the back mark is made; the same as `far` where nothing tapers. */
  readonly ripped: FacePoint;
  readonly far: FacePoint;
  /** How far the other side stands out past the face, along the near edge; less than 0 where it stands back. */
  readonly otherSide: number;
}

/** The face of a finished piece, in the unit of the readings, and the depth (a riser's height) it is ripped to. */
export interface Outline {
  readonly thickness: number;
  readonly depth: number;
  readonly ends: Readonly<Record<"left" | "right", OutlineEnd>>;
}

/** The corners in order: along the near edge from the left, then back along the far one. */
export const cornersOf = ({ ends: { left, right } }: Outline): readonly FacePoint[] => [
  left.near,
  right.near,
  ...(right.heel === undefined ? [] : [right.heel]),
  right.far,
  left.far,
  ...(left.heel === undefined ? [] : [left.heel]),
];
