import type { Drawing } from "../drawing/plans/drawn-call";

const POINTS_AN_INCH = 72;
const MILLIMETRES_AN_INCH = 25.4;

export interface DrawingSize {
  readonly width: number;
  readonly height: number;
}

/** How large a drawing prints, in points. */
export const drawingSize = ({ svg }: Pick<Drawing, "svg">): DrawingSize => {
  const millimetres = (name: string): number => Number(new RegExp(`^<svg [^>]*\\b${name}="([\\d.]+)mm"`).exec(svg)?.[1] ?? 0);
  const points = (name: string): number => (millimetres(name) * POINTS_AN_INCH) / MILLIMETRES_AN_INCH;
  return { width: points("width"), height: points("height") };
};
