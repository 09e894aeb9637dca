import { type Length, lengthOf } from "../../length/length";

/** From one place along a board to another, from the end chalked 0. */
export interface Stretch {
  readonly from: Length;
  readonly to: Length;
}

const NOTHING = lengthOf(0, "in");

/** Ranges in order, those that overlap or touch joined. */
const joined = (ranges: readonly Stretch[]): readonly Stretch[] => {
  const found: Stretch[] = [];
  for (const range of [...ranges].sort((one, other) => one.from.cmp(other.from))) {
    const last = found[found.length - 1];
    if (last === undefined || range.from.gt(last.to)) found.push(range);
    else if (range.to.gt(last.to)) found[found.length - 1] = { from: last.from, to: range.to };
  }
  return found;
};

/** What of a board is clear: the ranges given as clear, else what its defects leave. A defect takes the whole width. */
export const clearStretches = (length: Length, defects: readonly Stretch[], clear: readonly Stretch[]): readonly Stretch[] => {
  if (clear.length > 0) return joined(clear);
  const found: Stretch[] = [];
  let from = NOTHING;
  for (const defect of joined(defects)) {
    if (defect.from.gt(from)) found.push({ from, to: defect.from });
    from = defect.to;
  }
  return from.lt(length) ? [...found, { from, to: length }] : found;
};

export const longestClear = (stretches: readonly Stretch[]): Length =>
  stretches.reduce((longest, { from, to }) => {
    const size = to.minus(from);
    return size.gt(longest) ? size : longest;
  }, NOTHING);
