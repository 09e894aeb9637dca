import { format as plainFormat } from "numfmt";

const FRACTION = /^(\D*?)(?:(\d[\d,]*)\s+)?(\d+)\/\s*(\d+)/;

// Under a "0 ?/16" a size under 1 shows its 0, under a "# ?/16" it does not.
const zeroShown = (pattern: string): string => (/0[^?#/]*[?#]+\s*\//.test(pattern) ? "0" : "");

/**
 * Number formatting with two faults of fractions put right, both of which read an inch wrong on a tape: 7.99 was shown as 8 16/16, and
 * every size from 19/20 up to the next whole took that whole for its own, so 7 31/32 was shown as 8 31/32.
 */
export const format: typeof plainFormat = (pattern, value, options) => {
  const text = plainFormat(pattern, value, options);
  if (typeof value !== "number") return text;
  const [, before = "", whole, over, under] = FRACTION.exec(text) ?? [];
  if (over === undefined) return text;
  const size = Math.abs(value);
  if (over === under) return plainFormat(pattern, Math.sign(value) * Math.round(size), options);
  if (whole === undefined || Number(whole.replaceAll(",", "")) !== Math.floor(size) + 1) return text;
  return size >= 1
    ? plainFormat(pattern, Math.sign(value) * (size - 1), options)
    : before + zeroShown(pattern) + text.slice(before.length + whole.length);
};
