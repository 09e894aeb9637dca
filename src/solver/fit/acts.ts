import type { Outline } from "./outline";
import type { OtherSide } from "./saw-set";

export type Side = "left" | "right";

/** An edge of a piece, or the line gauged behind a tread's nose, along which a tape lies. */
export type Edge = "nose" | "gauged line" | "back" | "top" | "bottom";

/** A mark by the end it is for and the place it marks. */
export interface Mark {
  readonly end: Side;
  readonly place: "nose" | "toe" | "heel" | "back" | "top" | "bottom";
}

/** Where a tape begins: at a finished end, or at the blank's own end, squared for that. */
export interface Hook {
  readonly end: Side;
  readonly along: Edge;
  readonly isSquared: boolean;
}

/** A corner of the finished end a check is taken from, or a mark. */
export type CheckedFrom = Mark | { readonly end: Side; readonly corner: Edge };

/** One cut: from square by so many degrees, positive where the nearer of two edges is the longer, over a distance across the piece. */
export interface Swing {
  readonly angle: number;
  readonly over: number;
  /** What lies at the saw's fence, and what toward the operator. */
  readonly far: Mark["place"];
  readonly near: Mark["place"];
}

/** One act at the bench or the saw, in the unit of the readings; angles in degrees. */
export type Act =
  | { readonly kind: "read again"; readonly note: string }
  | { readonly kind: "rip"; readonly distance: number; readonly piece: PieceKind; readonly blank: number; readonly note: string }
  | { readonly kind: "square the blank"; readonly end: Side }
  | { readonly kind: "gauge"; readonly distance: number }
  | {
      readonly kind: "mark";
      readonly mark: Mark;
      readonly hook: Hook;
      readonly distance: number;
      readonly isBurnt: boolean;
    }
  | { readonly kind: "check"; readonly from: CheckedFrom; readonly to: Mark; readonly distance: number; readonly isBurnt: boolean }
  | {
      readonly kind: "saw end";
      readonly end: Side;
      readonly piece: PieceKind;
      readonly swing: Swing;
      readonly tilt: number;
      /** The two marks it is sawn on; the first end has none. */
      readonly on?: readonly [Mark, Mark];
    }
  | { readonly kind: "saw to the heel"; readonly end: Side; readonly swing: Swing }
  | { readonly kind: "mitre"; readonly end: Side; readonly fromNose: number; readonly toePastHeel: number }
  | {
      readonly kind: "mitre the return";
      readonly end: Side;
      readonly fromNose: number;
      readonly toePastHeel: number;
      readonly width: number;
    }
  | {
      readonly kind: "end the return";
      readonly end: Side;
      readonly distance: number;
      /** Cut angle of the end it lies on. */
      readonly angle: number;
      /** How much longer the inner edge is than a square end leaves it; the outer edge where it is less than 0. */
      readonly innerLonger: number;
    }
  | { readonly kind: "mark the depth"; readonly end: Side; readonly isOpen: boolean; readonly distance: number }
  /** The back edge of a tapered piece, between the ends whose depths are marked and the ripped corners of the others. */
  | { readonly kind: "scribe"; readonly marked: readonly Side[] }
  | { readonly kind: "mark the notch"; readonly end: Side; readonly way: "along" | "up"; readonly distance: number }
  | { readonly kind: "saw the notch"; readonly end: Side }
  | { readonly kind: "end the bevel"; readonly end: Side; readonly distance: number }
  | { readonly kind: "bevel"; readonly degrees: number; readonly relief: number };

export type PieceKind = "tread" | "riser";

/** What the side away from the face is called. */
export const OTHER_SIDE: Readonly<Record<PieceKind, OtherSide>> = { tread: "underside", riser: "back" };

/** What readings that disagree would make: to show what hangs on them, never to be sawn. */
export interface AsRead {
  readonly acts: readonly Act[];
  /** What two ways to one corner disagree by, in the unit of the readings. */
  readonly closure?: number;
}

/** The acts of one step, in the order in which they are done, or why there are none. */
export interface ActsOfAStep<Bad> {
  readonly step: string | number | undefined;
  readonly acts: readonly Act[];
  /** The finished piece, where there is an answer. */
  readonly outline?: Outline;
  /** Of readings that are to be taken again. */
  readonly asRead?: AsRead;
  readonly bad?: Bad;
}

/** Tilts are set to a tenth of a degree. */
const TILT_DIGITS = 1;

export const degreesOf = (angle: number): string => Math.abs(angle).toFixed(TILT_DIGITS);

/** A tape's hook stands off an end whose other side is the longer, unless that is too little for a saw to show. */
export const standsOff = (tilt: number): boolean => tilt < 0 && Number(degreesOf(tilt)) !== 0;

export const otherEnd = (end: Side): Side => (end === "left" ? "right" : "left");
