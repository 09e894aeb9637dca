/** Texts and names of sheets in quotes, out of the way. */
const QUOTED = /"(?:[^"]|"")*"|'(?:[^']|'')*'/g;
const CALLED = /(?<![\w.])([A-Z_][A-Z0-9_.]*)\(/gi;

/** The functions a formula calls, in capitals. */
export const calledIn = (formula: string): readonly string[] =>
  [...formula.replace(QUOTED, (found) => "_".repeat(found.length)).matchAll(CALLED)].map(([, name = ""]) => name.toUpperCase());
