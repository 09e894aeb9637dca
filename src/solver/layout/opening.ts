/**
 * Level length of a stairwell opening that gives `headroom` under a floor of `floorThickness`, from the landing nosing, or from the face of
 * the top riser when its nosing is given. One unit.
 */
export const opening = (rise: number, run: number, headroom: number, floorThickness: number, nosing: number): number =>
  ((headroom + floorThickness) * run) / rise + nosing;
