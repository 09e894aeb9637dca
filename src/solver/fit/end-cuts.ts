import { DEGREES_PER_RADIAN, RADIANS_PER_DEGREE } from "../degrees";
import { type Problem, problem } from "../problem";
import type { Corners } from "./corner-reading";

/** One end of a piece. An open end meets no surface: it has neither lean nor gap, and is never undercut. */
export interface End {
  readonly isOpen: boolean;
  /** Degrees the surface it meets leans away from the piece, from the side the readings were taken on to the face. */
  readonly lean: number;
  /** Clearance to that surface, square to it. */
  readonly gap: number;
  /** What is added past an open end. */
  readonly past: number;
}

/** The piece between the lines read: from where its near edge lies beyond the near line, and how deep it is. */
export interface Span {
  readonly from: number;
  readonly depth: number;
}

/** Places of the four corners on the face, along the near line from the near left corner as read. */
export interface Places {
  readonly nearLeft: number;
  readonly nearRight: number;
  readonly farLeft: number;
  readonly farRight: number;
}

/** A piece carried to its own edges and thickness, seen on its face. */
export interface EndCuts {
  readonly leftAngle: number;
  readonly rightAngle: number;
  /** Bevel of the saw, square to the cut: positive where the face is the longer, negative where the other side is. */
  readonly leftTilt: number;
  readonly rightTilt: number;
  /** Lengths on the face: along both edges, over all, and where the edges overlap. */
  readonly near: number;
  readonly far: number;
  readonly longPoint: number;
  readonly shortPoint: number;
  readonly places: Places;
  /** How much the other side stands past the face at each end; 0 where the face is the longer. */
  readonly leftUnder: number;
  readonly rightUnder: number;
}

interface EndCut {
  /** How far the face stands outward of the line the readings were taken on. */
  readonly gain: number;
  readonly angle: number;
  readonly tilt: number;
  readonly under: number;
}

const OPEN = { lean: 0, gap: 0 };

/** One end from the slope of its line, outward per unit of depth. */
const endCut = (slope: number, end: End, thickness: number, undercut: number): EndCut => {
  const { lean, gap } = end.isOpen ? OPEN : end;
  const rise = Math.tan(lean * RADIANS_PER_DEGREE);
  const along = 1 / Math.hypot(1, slope);
  const tilt = Math.atan(rise * along) + (end.isOpen ? 0 : undercut * RADIANS_PER_DEGREE);
  return {
    // A gap square to the surface, seen along the nose: the length of the surface's own normal there.
    gain: end.past + thickness * rise - gap * Math.hypot(1, slope, rise),
    angle: Math.atan(slope) * DEGREES_PER_RADIAN,
    tilt: tilt * DEGREES_PER_RADIAN,
    under: Math.max(0, (-thickness * Math.tan(tilt)) / along),
  };
};

/** Cut angles, lengths and tilts of a piece `thickness` thick between the corners read. */
export const endCuts = (
  read: Corners, { from, depth }: Span, thickness: number, ends: { readonly left: End; readonly right: End }, undercut: number,
): EndCuts | Problem<"edges-cross"> => {
  const [leftSlope, rightSlope] = [-read.farLeft / read.distance, (read.farRight - read.near) / read.distance];
  const left = endCut(leftSlope, ends.left, thickness, undercut);
  const right = endCut(rightSlope, ends.right, thickness, undercut);
  const to = from + depth;
  const places: Places = {
    nearLeft: -from * leftSlope - left.gain,
    nearRight: read.near + from * rightSlope + right.gain,
    farLeft: -to * leftSlope - left.gain,
    farRight: read.near + to * rightSlope + right.gain,
  };
  const { nearLeft, nearRight, farLeft, farRight } = places;
  const shortPoint = Math.min(nearRight, farRight) - Math.max(nearLeft, farLeft);
  if (farRight - farLeft <= 0 || nearRight - nearLeft <= 0 || shortPoint <= 0) return problem("edges-cross", { depth });
  return {
    leftAngle: left.angle,
    rightAngle: right.angle,
    leftTilt: left.tilt,
    rightTilt: right.tilt,
    near: nearRight - nearLeft,
    far: farRight - farLeft,
    longPoint: Math.max(nearRight, farRight) - Math.min(nearLeft, farLeft),
    shortPoint,
    places,
    leftUnder: left.under,
    rightUnder: right.under,
  };
};
