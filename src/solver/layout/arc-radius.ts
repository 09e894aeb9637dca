/** Radius of an arc over a chord with the given rise at its middle; one unit. */
export const arcRadius = (chord: number, rise: number): number => (chord * chord) / (8 * rise) + rise / 2;
