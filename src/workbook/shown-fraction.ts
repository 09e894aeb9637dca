import { format } from "./fraction-format";

/** A pattern whose fraction is counted in one part of an inch, as a tape is: "# ??/16", "0 ?/8". */
const OF_ONE_PART = /[?#0]\s*\/\s*(?:2|4|8|16|32|64)(?!\d)/;

const FRACTION = /(^|\s)\s*(\d+)\/\s*(\d+)/;

/**
 * A number as its cell shows it: rounded to the part its format names, and then in the coarsest mark of the tape that says the same, 7 1/2
 * for 7 8/16, without the room a "??" holds for a second digit. In a formula TEXT gives 8/16, as its format asks; what is looked at is
 * read against a tape.
 */
export const shownFraction: typeof format = (pattern, value, options) => {
  const text = format(pattern, value, options);
  if (typeof value !== "number" || !OF_ONE_PART.test(pattern)) return text;
  const reduced = text.replace(FRACTION, (_, before: string, over: string, under: string) => {
    let [count, parts] = [Number(over), Number(under)];
    while (count % 2 === 0 && parts % 2 === 0) [count, parts] = [count / 2, parts / 2];
    return `${before}${parts === 1 ? count : `${count}/${parts}`}`;
  });
  const close = reduced.trim().replace(/\s+/g, " ").replace(/^-\s*(?=\d)/, "-").replace(/\s+"/, '"');
  // What is too small for a part is nothing, on either side of 0.
  return close.replace(/^-0(?!\s*\d)/, "0");
};
