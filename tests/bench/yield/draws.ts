export type Draw = () => number;

/** Numbers of [0, 1) in one fixed order (mulberry32, public domain, from memory). */
export const draws = (seed: number): Draw => {
  let state = seed;
  return () => {
    state = (state + 0x6d2b79f5) | 0;
    let mixed = Math.imul(state ^ (state >>> 15), 1 | state);
    mixed = (mixed + Math.imul(mixed ^ (mixed >>> 7), 61 | mixed)) ^ mixed;
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 2 ** 32;
  };
};

/** A drawn share of the pieces that are left, one at least for each size to come; the last size takes all. */
export const shareOf = (left: number, later: number, share: number): number =>
  later === 0 ? left : Math.max(1, Math.min(left - later, Math.round(share)));
