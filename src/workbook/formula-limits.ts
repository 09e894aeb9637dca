/** Most characters of a formula, and most calls and brackets within each other, in Excel ("Excel specifications and limits"). */
const MOST_CHARACTERS = 8192;
const MOST_DEPTH = 64;
/** The engine reads 1+1+1 as calls within each other: tried, it bears 1,000 signs and runs out of stack at 2,000 to 4,000. */
const MOST_SIGNS = 500;

const TEXTS_AND_SHEET_NAMES = /"(?:[^"]|"")*"|'(?:[^']|'')*'/g;
const SIGN = /[-+*/^&=<>%:@]/g;

const count = (size: number): string => size.toLocaleString("en-US");

const depthOf = (code: string): number => {
  let [depth, deepest] = [0, 0];
  for (const letter of code) {
    if (letter === "(" || letter === "{") depth += 1;
    else if (letter === ")" || letter === "}") depth -= 1;
    deepest = Math.max(deepest, depth);
  }
  return deepest;
};

/** What keeps a formula from the engine, which cannot work it out; undefined for one that may go there. */
export const formulaFault = (formula: string): string | undefined => {
  if (formula.length > MOST_CHARACTERS)
    return `must have at most ${count(MOST_CHARACTERS)} characters, as in Excel, this one has ${count(formula.length)}`;
  const code = formula.slice(1).replaceAll(TEXTS_AND_SHEET_NAMES, "");
  const depth = depthOf(code);
  if (depth > MOST_DEPTH)
    return `must have at most ${MOST_DEPTH} calls or brackets within each other, as in Excel, this one has ${count(depth)}`;
  const signs = code.match(SIGN)?.length ?? 0;
  if (signs > MOST_SIGNS)
    return `must have at most ${MOST_SIGNS} signs such as + and :, this one has ${count(signs)}; use SUM over a range`;
  return undefined;
};
