import type { Exact } from "../length/exact";

export interface RisePlaces {
  /** Of each rise as found, its place. */
  readonly found: readonly number[];
  /** Places from a rise to the one a division higher. */
  readonly division: number;
  /** The last place not above a height. */
  readonly notAbove: (height: Exact) => number;
  /** The last place not above that of a rise and a spread more. */
  readonly within: (spread: Exact) => (place: number) => number;
  readonly heightAt: (place: number) => Exact;
}

/** Whole divisions in a height and what is over, which is never negative. */
const divided = (height: Exact, division: Exact): { readonly whole: number; readonly rest: Exact } => {
  const towardZero = height.divToInt(division);
  const whole = height.lt(towardZero.times(division)) ? towardZero.minus(1) : towardZero;
  return { whole: whole.toNumber(), rest: height.minus(whole.times(division)) };
};

const distinct = (rests: readonly Exact[]): readonly Exact[] =>
  [...rests].sort((one, other) => one.cmp(other)).filter((rest, index, sorted) => index === 0 || !rest.eq(sorted[index - 1] ?? rest));

/**
 * Every height that a rise as found can come to when it is changed by whole divisions has a place, counted upward: whole numbers that
 * compare as the heights do, so that nothing is rounded and thousands of packings are tried without exact arithmetic.
 */
export const risePlaces = (found: readonly Exact[], division: Exact): RisePlaces => {
  const parts = found.map((rise) => divided(rise, division));
  const rests = distinct(parts.map(({ rest }) => rest));
  const count = rests.length;
  const notAbove = (height: Exact): number => {
    const { whole, rest } = divided(height, division);
    return whole * count + rests.filter((one) => one.lte(rest)).length - 1;
  };
  const remainder = (place: number): number => ((place % count) + count) % count;
  const heightAt = (place: number): Exact => {
    const rest = remainder(place);
    return division.times((place - rest) / count).plus(rests[rest] ?? 0);
  };
  return {
    found: found.map(notAbove),
    division: count,
    notAbove,
    within: (spread) => {
      const further = rests.map((rest, index) => notAbove(rest.plus(spread)) - index);
      return (place) => place + (further[remainder(place)] ?? 0);
    },
    heightAt,
  };
};
