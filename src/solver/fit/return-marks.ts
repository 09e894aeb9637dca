import { RADIANS_PER_DEGREE } from "../degrees";

/**
 * Marks of a return mitred into the nosing at one end of a tread. The others of its family are measured from the other end as it is already
 * cut: at a wall from the finished nose corner, at a second open end from its toe or its heel.
 */
export interface ReturnMarks {
  /** Along the nose to where the return's outer edge meets it. */
  readonly toe: number;
  /** Along the nose to the heel, which lies the return's width behind it. */
  readonly heel: number;
  /** The heel again on its own line, the return's width behind the nose, from where the other end's cut crosses that line. */
  readonly heelAtTheHook: number;
  /** Toe to heel; proves both marks. */
  readonly mitreLine: number;
  /** Along the back edge to the line the return lies on, from the other end's back corner. */
  readonly returnLine: number;
  /** From the back edge along that line to the heel; proves the heel again. */
  readonly returnLineToHeel: number;
  /** Saw angle of the mitre, from the nose. */
  readonly mitre: number;
  /** Length of the return along its outer edge, the long point of its mitre; it runs past the riser face by the overhang. */
  readonly outerEdge: number;
  /** Length along its inner edge, the short point. */
  readonly innerEdge: number;
}

interface Returns {
  /** Depth of the piece at this end, square to the nose. */
  readonly depth: number;
  /** Degrees the back edge turns off the nose, positive where that makes this end the deeper. */
  readonly taper?: number;
  readonly overhang: number;
  readonly returnWidth: number;
  /** What the back edge was taken back by; the return, which runs past the riser, is not. */
  readonly backGap: number;
}

interface Edges {
  /** Lengths on the face, at the skirt. */
  readonly back: number;
  readonly front: number;
}

const SQUARE = 90;

/** Half of the right angle between nose and return, and half of what the skirt adds to it. */
const heelFromToe = (angle: number, { returnWidth }: Returns): number =>
  returnWidth * Math.tan(((SQUARE + angle) / 2) * RADIANS_PER_DEGREE);

const oneReturn = (angle: number, returns: Returns) => {
  const { depth, taper = 0, overhang, returnWidth, backGap } = returns;
  const along = Math.cos(angle * RADIANS_PER_DEGREE);
  const behind = (angle - taper) * RADIANS_PER_DEGREE;
  const mitre = (SQUARE - angle) / 2;
  // Lines along the skirt, further in or out: a back edge that is not parallel to the nose makes each another length.
  const perInward = Math.tan(behind) - Math.tan(angle * RADIANS_PER_DEGREE);
  const inner = returnWidth - overhang;
  const pastRiser = (backGap + overhang) / Math.cos(behind);
  const returnLineToHeel = (depth - returnWidth) / along + inner * perInward;
  return {
    past: overhang / along,
    inside: inner / Math.cos(behind),
    own: {
      mitre,
      mitreLine: returnWidth / Math.sin(mitre * RADIANS_PER_DEGREE),
      returnLineToHeel,
      outerEdge: depth / along - overhang * perInward + pastRiser,
      innerEdge: returnLineToHeel + pastRiser,
    },
  };
};

/** Marks of the return at the one open end; `angle` is that end's cut angle, `wallAngle` the finished end's. */
export const returnMarks = (angle: number, wallAngle: number, { back, front }: Edges, returns: Returns): ReturnMarks => {
  const { past, inside, own } = oneReturn(angle, returns);
  const toe = front + past;
  const heel = toe - heelFromToe(angle, returns);
  return {
    ...own,
    toe,
    heel,
    heelAtTheHook: heel - returns.returnWidth * Math.tan(wallAngle * RADIANS_PER_DEGREE),
    returnLine: back - inside,
  };
};

/** Marks of two returns, each measured from the other. */
export const bothReturnMarks = (
  leftAngle: number, rightAngle: number, { back, front }: Edges, leftReturns: Returns, rightReturns: Returns = leftReturns,
): { readonly left: ReturnMarks; readonly right: ReturnMarks } => {
  const [left, right] = [oneReturn(leftAngle, leftReturns), oneReturn(rightAngle, rightReturns)];
  const [fromLeft, fromRight] = [heelFromToe(leftAngle, leftReturns), heelFromToe(rightAngle, rightReturns)];
  const toe = front + left.past + right.past;
  const shared = { toe, heelAtTheHook: toe - fromLeft - fromRight, returnLine: back - left.inside - right.inside };
  return { left: { ...left.own, ...shared, heel: toe - fromLeft }, right: { ...right.own, ...shared, heel: toe - fromRight } };
};
