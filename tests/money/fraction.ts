/** Whole numbers over whole numbers, for a reckoning that shares nothing with the project's own decimals. */
export interface Fraction {
  readonly over: bigint;
  readonly under: bigint;
}

const divisor = (a: bigint, b: bigint): bigint => (b === 0n ? a : divisor(b, a % b));
const size = (a: bigint): bigint => (a < 0n ? -a : a);

export const fraction = (over: bigint, under = 1n): Fraction => {
  const common = divisor(size(over), size(under)) * (under < 0n ? -1n : 1n);
  return { over: over / common, under: under / common };
};

export const NONE = fraction(0n);
export const plus = (a: Fraction, b: Fraction): Fraction => fraction(a.over * b.under + b.over * a.under, a.under * b.under);
export const less = (a: Fraction, b: Fraction): Fraction => plus(a, { over: -b.over, under: b.under });
export const times = (a: Fraction, b: Fraction): Fraction => fraction(a.over * b.over, a.under * b.under);
export const by = (a: Fraction, b: Fraction): Fraction => fraction(a.over * b.under, a.under * b.over);
export const isAtMost = (a: Fraction, b: Fraction): boolean => a.over * b.under <= b.over * a.under;
export const isSame = (a: Fraction, b: Fraction): boolean => isAtMost(a, b) && isAtMost(b, a);
/** To a whole number, half away from zero. */
export const rounded = ({ over, under }: Fraction): bigint => {
  const doubled = (2n * size(over) + under) / (2n * under);
  return over < 0n ? -doubled : doubled;
};
/** A number that a double holds exactly, as quantities in eighths and twelfths of feet typed in inches are. */
export const ofNumber = (value: number): Fraction => {
  if (!Number.isFinite(value)) throw new Error(`${String(value)} is no quantity`);
  let under = 1n;
  let over = value;
  while (!Number.isInteger(over)) {
    over *= 2;
    under *= 2n;
  }
  return fraction(BigInt(over), under);
};
export const toNumber = ({ over, under }: Fraction): number => Number(over) / Number(under);
