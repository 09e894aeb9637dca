import type { Length } from "../length/length";

/**
 * Finished rises from rough ones measured sub-tread to sub-tread, bottom first, when treads go on and floors are still to be laid. The
 * first gains the tread and loses the lower floor, the last gains the upper floor and loses the tread. A rise that is not known stays so.
 */
export const finishedRises = (
  rough: readonly (Length | undefined)[], treadThickness: Length, lowerBuildUp: Length, upperBuildUp: Length,
): readonly (Length | undefined)[] =>
  rough.map((rise, step) => {
    const first = step === 0 ? treadThickness.minus(lowerBuildUp) : 0;
    const last = step === rough.length - 1 ? upperBuildUp.minus(treadThickness) : 0;
    return rise?.plus(first).plus(last);
  });
