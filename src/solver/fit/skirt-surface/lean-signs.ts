/** Leans that are all alike still differ by so much, in degrees: a gauge and a hand. By trial on made-up flights. */
const LEAST_SPREAD = 0.2;
/** The median of what is off, less its sign, as a standard deviation of a normal. */
const AS_DEVIATION = 1.48;
const FAR = 3;
const NEAR = 2;
/** Leans without which there is no flight to go by. */
const LEAST_LEANS = 4;

const median = (numbers: readonly number[]): number => {
  const sorted = [...numbers].sort((one, other) => one - other);
  const half = sorted.length / 2;
  return (sorted[Math.ceil(half) - 1]! + sorted[Math.floor(half)]!) / 2;
};

/** The middle of a few degrees and how far one is usually from it. */
export const middleAndSpread = (degrees: readonly number[]): { readonly middle: number; readonly spread: number } => {
  const middle = median(degrees);
  return { middle, spread: Math.max(LEAST_SPREAD, AS_DEVIATION * median(degrees.map((each) => Math.abs(each - middle)))) };
};

/** Rows whose lean is far from the flight's with its sign, and near to it with the other; 0 was not read. */
export const wrongSigns = (leans: readonly number[]): readonly number[] => {
  const given = leans.filter((lean) => lean !== 0);
  if (given.length < LEAST_LEANS) return [];
  const { middle, spread } = middleAndSpread(given);
  return leans.flatMap((lean, row) =>
    lean !== 0 && Math.abs(lean - middle) > FAR * spread && Math.abs(-lean - middle) < NEAR * spread ? [row] : [],
  );
};
