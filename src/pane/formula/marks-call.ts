/** Functions whose results are the tickets of the bench. */
const MARKS = /STAIR\.(MARKS|RISERMARKS)\(/gi;
const TEXT = /"(?:[^"]|"")*"/g;

/** A call of MARKS or RISERMARKS within a formula, as a formula of its own. */
export interface MarksCall {
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

/** The marks that a formula asks for, whatever stands around the call; undefined where it asks for none, or only shows a part of them. */
export const marksCall = (formula: string): MarksCall | undefined => {
  // Texts out of the way, as long as they are, since brackets in them close nothing.
  const plain = formula.replace(TEXT, (text) => "_".repeat(text.length));
  const [found] = [...plain.matchAll(MARKS)];
  if (found === undefined) return undefined;
  const end = closedAt(plain, found.index + found[0].length);
  return {
    pieces: found[1]?.toUpperCase() === "MARKS" ? "treads" : "risers",
    formula: `=${formula.slice(found.index, end + 1)}`,
  };
};
