import { isOpen, type OpenEnd } from "../layout/stair-facts";
import type { Problem } from "../problem";
import { type ClosureLimits, closureNotes } from "./closure-notes";
import type { Corners } from "./corner-reading";
import type { End, EndCuts } from "./end-cuts";
import { type OtherSide, sawSet } from "./saw-set";
import type { EndReadings } from "./unused-at-open-ends";

/** What one reading gives, before it is compared with those of the other steps. */
export interface Fitted<Fit> {
  readonly fit: Fit;
  readonly read: Corners;
  /** What was read and changes nothing, in words. */
  readonly unused: string;
}

interface Step {
  readonly step?: string | number;
}

/**
 * Fits of a flight with their notes, `doubtful` among them, one a reading where there is any; a reading that gives no fit keeps its
 * problem.
 */
export const fittedRows = <Reading extends Step, Fit, Bad extends string>(
  readings: readonly Reading[], one: (reading: Reading) => Fitted<Fit> | Problem<Bad>, closure: ClosureLimits,
  doubtful: readonly string[],
): readonly ((Fit & { readonly note: string }) | { readonly step: string | number | undefined; readonly bad: Problem<Bad> })[] => {
  const fitted = readings.map(one);
  const notes = closureNotes(fitted.map((found) => ("problem" in found ? undefined : found.read)), closure);
  return fitted.map((found, row) =>
    "problem" in found
      ? { step: readings[row]?.step, bad: found }
      : { ...found.fit, note: [found.unused, notes[row], doubtful[row]].filter(Boolean).join("; ") },
  );
};

/** What both ends of a piece meet: its own reading, or what the flight shares. */
export const endsOf = (
  read: EndReadings,
  { openEnd, gap }: { readonly openEnd: OpenEnd; readonly gap: number },
  past: number,
): { readonly left: End; readonly right: End } => {
  const end = (side: "left" | "right"): End => ({
    isOpen: isOpen(side, openEnd),
    lean: read[side].lean,
    gap: read[side].gap ?? gap,
    past: isOpen(side, openEnd) ? past : 0,
  });
  return { left: end("left"), right: end("right") };
};

/** The columns of any piece's cuts: lengths on the face, angles and tilts, and both as the saw is set. */
export const cutFigures = ({ longPoint, shortPoint, leftAngle, rightAngle, leftTilt, rightTilt }: EndCuts, otherSide: OtherSide) => ({
  longPoint, shortPoint, leftAngle, rightAngle, leftTilt, rightTilt,
  leftSet: sawSet("left", leftAngle, leftTilt, otherSide),
  rightSet: sawSet("right", rightAngle, rightTilt, otherSide),
});
