/** Rises from `low` to `high`, both allowed, in places. */
export interface Band {
  readonly low: number;
  readonly high: number;
}

/** A flight in places of its rises, of which there are `division` to a division of the tape. */
export interface PackedFlight {
  readonly rises: readonly number[];
  readonly division: number;
  /** Most divisions under each surface, from the lower floor to the upper one. */
  readonly most: readonly number[];
}

/** The rises of a flight with its surfaces packed: what goes under one raises the rise below it and lowers the one above. */
export const packedRises = ({ rises, division }: Pick<PackedFlight, "rises" | "division">, packing: readonly number[]): readonly number[] =>
  rises.map((rise, step) => rise + division * ((packing[step + 1] ?? 0) - (packing[step] ?? 0)));

/**
 * The packing that brings every rise into a band with the least under every surface at once, in divisions from the lower floor up;
 * undefined where none does. Each rule says a surface is at least so much above its neighbour; whatever obeys them is no less than this at
 * any surface, and one pass each way obeys them all, since up and down again gains nothing where the band holds a place of that rise.
 */
export const leastPacking = (
  { rises, division, most }: PackedFlight, { low, high }: Band,
): readonly number[] | undefined => {
  const packing = [0];
  for (const [step, rise] of rises.entries()) {
    packing.push(Math.max(0, (packing[step] ?? 0) + Math.ceil((low - rise) / division)));
  }
  for (let step = rises.length - 1; step >= 0; step--) {
    const above = packing[step + 1] ?? 0;
    if (above > (most[step + 1] ?? 0)) return undefined;
    packing[step] = Math.max(packing[step] ?? 0, above - Math.floor((high - (rises[step] ?? 0)) / division));
  }
  if ((packing[0] ?? 0) > (most[0] ?? 0)) return undefined;
  const isIn = (rise: number): boolean => rise >= low && rise <= high;
  return packedRises({ rises, division }, packing).every(isIn) ? packing : undefined;
};
