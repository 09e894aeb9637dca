import { DEGREES_PER_RADIAN, RADIANS_PER_DEGREE } from "../degrees";
import { type Problem, problem } from "../problem";
import type { PieceFrame, Side } from "./piece-frame";

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

/** The piece between the lines read: how far ahead of the near left corner its near edge begins, and its far one runs. */
export interface Span {
  readonly from: number;
  readonly to: number;
}

/** Places of the four corners on the face, along the far line from the near left corner as read. */
export interface Places {
  readonly nearLeft: number;
  readonly nearRight: number;
  readonly farLeft: number;
  readonly farRight: number;
}

/** A piece carried to its own edges and thickness, seen on its face. */
export interface EndCuts {
  /** From square to the far edge. */
  readonly leftAngle: number;
  readonly rightAngle: number;
  /** Degrees the near edge turns off the far one, positive where the right end is the deeper. */
  readonly taper: number;
  /** From the far edge to both near corners, square to the far edge. */
  readonly leftDepth: number;
  readonly rightDepth: number;
  /** Bevel of the saw, square to the cut: positive where the face is the longer, negative where the other side is. */
  readonly leftTilt: number;
  readonly rightTilt: number;
  /** Lengths on the face: along both edges, over all, and where the edges overlap. */
  readonly near: number;
  readonly far: number;
  readonly longPoint: number;
  readonly shortPoint: number;
  readonly places: Places;
  /** The same corners on the other side, where it stands past the face at that end; the face's own where it does not. */
  readonly under: Places;
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

/** How far a piece reaches along its far edge, face and other side. */
export const reach = ({ under }: EndCuts): { readonly left: number; readonly right: number } => ({
  left: Math.min(under.nearLeft, under.farLeft),
  right: Math.max(under.nearRight, under.farRight),
});

/** Where a side moved `out` meets the near edge and the far one. */
const meets = ({ at, ahead, slope }: Side, out: number, way: -1 | 1, { from, to }: Span, nearSlope: number) => {
  const near = (at + way * ((from - ahead) * slope + out)) / (1 - way * nearSlope * slope);
  return { near, nearAhead: from + near * nearSlope, far: at + way * ((to - ahead) * slope + out) };
};

/** Cut angles, lengths and tilts of a piece `thickness` thick between the sides read. */
export const endCuts = (
  frame: PieceFrame, span: Span, thickness: number, ends: { readonly left: End; readonly right: End }, undercut: number,
): EndCuts | Problem<"edges-cross"> => {
  const { nearSlope, nearCosine } = frame;
  const left = endCut(frame.left.slope, ends.left, thickness, undercut);
  const right = endCut(frame.right.slope, ends.right, thickness, undercut);
  const placesOf = (more: { readonly left: number; readonly right: number }) => ({
    left: meets(frame.left, left.gain + more.left, -1, span, nearSlope),
    right: meets(frame.right, right.gain + more.right, 1, span, nearSlope),
  });
  const named = ({ left: one, right: other }: ReturnType<typeof placesOf>): Places => ({
    nearLeft: one.near, nearRight: other.near, farLeft: one.far, farRight: other.far,
  });
  const face = placesOf({ left: 0, right: 0 });
  const places = named(face);
  const { nearLeft, nearRight, farLeft, farRight } = places;
  const shortPoint = Math.min(nearRight, farRight) - Math.max(nearLeft, farLeft);
  if (farRight - farLeft <= 0 || nearRight - nearLeft <= 0 || shortPoint <= 0) {
    return problem("edges-cross", { depth: span.to - span.from });
  }
  return {
    leftAngle: left.angle,
    rightAngle: right.angle,
    taper: -Math.atan(nearSlope) * DEGREES_PER_RADIAN,
    leftDepth: span.to - face.left.nearAhead,
    rightDepth: span.to - face.right.nearAhead,
    leftTilt: left.tilt,
    rightTilt: right.tilt,
    near: (nearRight - nearLeft) / nearCosine,
    far: farRight - farLeft,
    longPoint: Math.max(nearRight, farRight) - Math.min(nearLeft, farLeft),
    shortPoint,
    places,
    under: named(placesOf({ left: left.under, right: right.under })),
  };
};
