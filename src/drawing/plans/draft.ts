import { exact } from "../../solver/length/exact";
import type { Unit } from "../../solver/length/length";
import { tapeText } from "../../solver/length/tape-text";
import { USUAL_TAPE } from "../../solver/length/usual-tape";
import type { Point } from "../figure";

/** A piece of a cut plan is drawn fine, as only a kerf lies between two; what is cut first heavy. */
export type LineStyle = "thick" | "thin" | "dashed" | "centre" | "piece" | "cut";

/** Which side of the whole drawing a dimension stands on. */
export type Side = "above" | "below" | "left" | "right";

export interface Dimension {
  readonly kind: "dimension";
  readonly from: Point;
  readonly to: Point;
  /** What the result says, in the unit of the draft; the text is this, and the line is drawn between the points. */
  readonly value: number;
  /** What it is of. */
  readonly name?: string;
  /** Outside the drawing, in a row of that side counted from it; or where it is, moved square to itself by so much of the paper. */
  readonly place:
    | { readonly side: Side; readonly row: number }
    | { readonly aside: number }
    /** Running, each from the same zero along a line that is drawn already: the text stands beside the far end. */
    | { readonly beside: Side; readonly isUpright?: true };
}

/** Part of a drafting drawing, in the unit of the draft: level to the right, plumb up (on a plan, away from the reader). */
export type DraftMark =
  | { readonly kind: "line"; readonly points: readonly Point[]; readonly style: LineStyle }
  /** Lines at 45 degrees within an outline, so far apart on the paper. */
  | { readonly kind: "hatch"; readonly points: readonly Point[]; readonly apart?: number; readonly falls?: boolean }
  | Dimension
  /** Words at a point, wherever there is room by it. */
  | { readonly kind: "note"; readonly at: Point; readonly text: string; readonly side: Side }
  /** Words for a point with no room for them by it: they stand farther off, with a line to it. */
  | { readonly kind: "led"; readonly at: Point; readonly text: string }
  /** Words about a point that was chosen with room for them; read from below, or from the right where they are turned. */
  | { readonly kind: "words"; readonly at: Point; readonly text: string; readonly isUpright: boolean }
  /** An area full of words of its own: none that found no room where they belong stand in it. */
  | { readonly kind: "full"; readonly points: readonly Point[] }
  | { readonly kind: "dot"; readonly at: Point };

/** A drafting drawing to scale. */
export interface Draft {
  readonly title: string;
  /** What it shows, in a sentence. */
  readonly says: string;
  readonly unit: Unit;
  readonly marks: readonly DraftMark[];
  /** 1 to so many, where it was chosen with the room for words; else the largest that goes on the sheet. */
  readonly scale?: number;
  /** Sentences under the title. */
  readonly notes: readonly string[];
}

/** A length as it is dimensioned: as TAPE says it, or in millimetres. */
export const dimensionText = (value: number, unit: Unit): string =>
  unit === "in"
    ? tapeText(exact(value), { denominator: USUAL_TAPE.in, feet: false, strong: false })
    : `${exact(value).toDecimalPlaces(0).toString()} mm`;

export const line = (style: LineStyle, ...points: readonly Point[]): DraftMark => ({ kind: "line", style, points });
export const closed = (style: LineStyle, ...points: readonly Point[]): DraftMark => ({
  kind: "line", style, points: [...points, ...points.slice(0, 1)],
});
export const hatch = (points: readonly Point[], how: { readonly apart?: number; readonly falls?: boolean } = {}): DraftMark => ({
  kind: "hatch", points, ...how,
});
export const note = (at: Point, text: string, side: Side = "above"): DraftMark => ({ kind: "note", at, text, side });
export const led = (at: Point, text: string): DraftMark => ({ kind: "led", at, text });
export const wordsAt = (at: Point, text: string, isUpright = false): DraftMark => ({ kind: "words", at, text, isUpright });
export const outside = (
  side: Side, row: number, from: Point, to: Point, value: number, name?: string,
): DraftMark => ({ kind: "dimension", from, to, value, place: { side, row }, ...(name === undefined ? {} : { name }) });
export const inside = (from: Point, to: Point, value: number, name?: string, aside = 0): DraftMark => ({
  kind: "dimension", from, to, value, place: { aside }, ...(name === undefined ? {} : { name }),
});
export const box = ([x, y]: Point, [u, v]: Point): readonly Point[] => [[x, y], [u, y], [u, v], [x, v]];
export const running = (from: Point, to: Point, value: number, name: string, beside: Side): DraftMark => ({
  kind: "dimension", from, to, value, place: { beside }, ...(name === "" ? {} : { name }),
});
/** The same with its text standing upright over or under the far end, where many stand close. */
export const upright = (from: Point, to: Point, value: number, name: string, beside: "above" | "below"): DraftMark => ({
  kind: "dimension", from, to, value, place: { beside, isUpright: true }, ...(name === "" ? {} : { name }),
});
