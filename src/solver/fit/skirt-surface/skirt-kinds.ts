import { RADIANS_PER_DEGREE } from "../../degrees";

/** How straight a pair of skirts may be: root mean squares in inches, the squareness of a step in radians. */
export interface SkirtKind {
  /** Waves: their height, and the length over which one place tells of another. */
  readonly waves: number;
  readonly reach: number;
  /** Roughness of each corner by itself. */
  readonly roughness: number;
  /** How far each tread or riser is out of square by itself. */
  readonly squareness: number;
}

/** Three kinds of skirt are tried on every flight. Assumptions about walls, not measurements: by trial on made-up flights. */
export const SKIRT_KINDS: readonly SkirtKind[] = [
  { waves: 1 / 32, reach: 40, roughness: 0.01, squareness: 0.1 * RADIANS_PER_DEGREE },
  { waves: 1 / 16, reach: 30, roughness: 0.02, squareness: 0.2 * RADIANS_PER_DEGREE },
  { waves: 1 / 8, reach: 25, roughness: 0.04, squareness: 0.3 * RADIANS_PER_DEGREE },
];
