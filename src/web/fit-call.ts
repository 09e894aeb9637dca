/** Functions whose results go to the saw. */
const FIT = /STAIR\.(TREADFIT|RISERFIT)\(/gi;
const TEXT = /"(?:[^"]|"")*"/g;

/** A call of a fit within a formula, as a formula of its own. */
export interface FitCall {
  readonly pieces: "treads" | "risers";
  readonly formula: string;
}

/** Where the bracket that opens before a place is closed. */
const closedAt = (plain: string, from: number): number => {
  let depth = 1;
  for (let place = from; place < plain.length; place += 1) {
    if (plain[place] === "(") depth += 1;
    if (plain[place] === ")") depth -= 1;
    if (depth === 0) return place;
  }
  return plain.length;
};

/** The fit that a formula calls, whatever stands around it; undefined where it calls none, or where it only shows a part of one. */
export const fitCall = (formula: string): FitCall | undefined => {
  // Texts out of the way, as long as they are, since brackets in them close nothing.
  const plain = formula.replace(TEXT, (text) => "_".repeat(text.length));
  const [found] = [...plain.matchAll(FIT)];
  if (found === undefined) return undefined;
  const end = closedAt(plain, found.index + found[0].length);
  return {
    pieces: found[1]?.toUpperCase() === "TREADFIT" ? "treads" : "risers",
    formula: `=${formula.slice(found.index, end + 1)}`,
  };
};
