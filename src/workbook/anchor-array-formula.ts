const TEXT_OR_SPILL_REFERENCE =
  /"(?:[^"]|"")*"|(?<![\w.$!'])((?:'(?:[^']|'')+'|[A-Za-z_][\w.]*)!)?\$?[A-Za-z]{1,3}\$?[1-9]\d*#(?![\w/!])/g;

/** The formula with each A1# in the spelling that workbook files use and the engine can be taught: ANCHORARRAY(A1). */
export const anchorArrayFormula = (formula: string): string =>
  formula.replace(TEXT_OR_SPILL_REFERENCE, (found) => (found.startsWith('"') ? found : `ANCHORARRAY(${found.slice(0, -1)})`));
