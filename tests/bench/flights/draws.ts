export interface Draws {
  /** Evenly from 0 up to 1. */
  even(): number;
  between(least: number, most: number): number;
  normal(deviation: number): number;
  /** Evenly one of 0, 1, … count - 1. */
  one(count: number): number;
}

/** Draws that are the same for the same seed (mulberry32, public domain, from memory: any that spreads would do). */
export const draws = (seed: number): Draws => {
  let state = seed >>> 0;
  const even = (): number => {
    state = (state + 0x6d2b79f5) >>> 0;
    let stirred = Math.imul(state ^ (state >>> 15), state | 1);
    stirred ^= stirred + Math.imul(stirred ^ (stirred >>> 7), stirred | 61);
    return ((stirred ^ (stirred >>> 14)) >>> 0) / 2 ** 32;
  };
  return {
    even,
    between: (least, most) => least + (most - least) * even(),
    // Box and Muller: two even draws make a normal one.
    normal: (deviation) => deviation * Math.sqrt(-2 * Math.log(1 - even())) * Math.cos(2 * Math.PI * even()),
    one: (count) => Math.floor(even() * count),
  };
};
