/**
 * Whole numbers of a billionth of a millimetre, for the checkers (1/64 in is 396,875,000 of them, exactly). Shares no code with the
 * solver: decimals are read as text.
 */
const DIGITS = 9;

/** The whole billionths of a decimal number, cut off: enough for lengths typed by people. */
export const whole = (decimal: { toFixed: () => string }): bigint => {
  const [units = "0", fraction = ""] = decimal.toFixed().split(".");
  const sign = units.startsWith("-") ? -1n : 1n;
  return sign * (BigInt(units.replace("-", "")) * 10n ** BigInt(DIGITS) + BigInt(fraction.padEnd(DIGITS, "0").slice(0, DIGITS)));
};

export const MARK = { in: 396_875_000n, mm: 100_000_000n } as const;

export const up = (size: bigint, mark: bigint): bigint => ((size + mark - 1n) / mark) * mark;
export const down = (size: bigint, mark: bigint): bigint => (size / mark) * mark;
