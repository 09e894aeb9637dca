/** A return at one end of a tread, mitred into its nosing; seen with the skirt on the positive side. */
export interface MitredReturn {
  /** Place along the nose where the mitre starts, from the near left corner as read. */
  readonly heel: number;
  /** Place along the nose where the return's outer edge meets it. */
  readonly toe: number;
  /** Saw angle of the mitre, from the nose. */
  readonly mitre: number;
  /** Length of the return along its outer edge; it runs past the riser face by the overhang. */
  readonly length: number;
}

interface OpenSide {
  /** Cut angle of this end in degrees. */
  readonly angle: number;
  /** Where the skirt line stands at the near line, and per unit of depth how far it moves outward, positive away from the tread. */
  readonly skirtAtBack: number;
  readonly depth: number;
  readonly overhang: number;
  readonly returnWidth: number;
}

const DEGREES = Math.PI / 180;
const SQUARE = 90;

/**
 * Heel, toe and mitre of a return on the right-hand end, by intersecting the skirt line, the return's outer edge (the skirt line moved out
 * by the overhang, square to it) and its inner edge with the nose. For a left end, mirror the places.
 */
export const mitredReturn = ({ angle, skirtAtBack, depth, overhang, returnWidth }: OpenSide): MitredReturn => {
  const slope = Math.tan(angle * DEGREES);
  const along = Math.cos(angle * DEGREES);
  return {
    toe: skirtAtBack + depth * slope + overhang / along,
    heel: skirtAtBack + (depth - returnWidth) * slope - (returnWidth - overhang) / along,
    mitre: (SQUARE - angle) / 2,
    length: (depth + overhang) / along,
  };
};
