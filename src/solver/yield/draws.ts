/** Numbers of [0, 1) in one fixed order for each seed: a plan depends on nothing but the job (mulberry32, public domain, from memory). */
export const draws = (seed: number): (() => number) => {
  let state = seed;
  return () => {
    state = (state + 0x6d2b79f5) | 0;
    let mixed = Math.imul(state ^ (state >>> 15), 1 | state);
    mixed = (mixed + Math.imul(mixed ^ (mixed >>> 7), 61 | mixed)) ^ mixed;
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 2 ** 32;
  };
};

export type Draw = () => number;

/** The same things in a drawn order. */
export const shuffled = <Thing>(things: readonly Thing[], draw: Draw): Thing[] => {
  const found = [...things];
  for (let at = found.length - 1; at > 0; at -= 1) {
    const other = Math.floor(draw() * (at + 1));
    const moved = found[at]!;
    found[at] = found[other]!;
    found[other] = moved;
  }
  return found;
};
