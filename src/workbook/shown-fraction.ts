import { format } from "./fraction-format";

/** A pattern whose fraction is counted in one part of an inch, as a tape is: "# ??/16", "0 ?/8". */
const OF_ONE_PART = /[?#0]\s*\/\s*(?:2|4|8|16|32|64)(?!\d)/;

const FRACTION = /(\d+)\/\s*(\d+)/;

/**
 * A number as its cell shows it: rounded to the part its format names, and then in the coarsest mark of the tape that says the same, 7 1/2
 * for 7 8/16. In a formula TEXT gives 8/16, as its format asks; what is looked at is read against a tape.
 */
export const shownFraction: typeof format = (pattern, value, options) => {
  const text = format(pattern, value, options);
  if (typeof value !== "number" || !OF_ONE_PART.test(pattern)) return text;
  const [printed, over, under] = FRACTION.exec(text) ?? [];
  if (printed === undefined) return text.trimEnd();
  let [count, parts] = [Number(over), Number(under)];
  while (count % 2 === 0 && parts % 2 === 0) [count, parts] = [count / 2, parts / 2];
  // A "??" holds the place of a second digit, which the coarser mark does not have.
  return parts === Number(under) ? text : text.replace(/(^|\s)\s*\d+\/\s*\d+/, `$1${count}/${parts}`);
};
