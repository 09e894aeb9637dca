/** The name that workbook files give to A1#. */
export const SPILL_FUNCTION = "ANCHORARRAY";
/** The name that A1#:B9 is read by; nobody types it. */
export const SPILL_RANGE_FUNCTION = "SPILL.RANGE";

const SHEET = String.raw`((?:'(?:[^']|'')+'|[A-Za-z_][\w.]*)!)?`;
const CELL = String.raw`(\$?[A-Za-z]{1,3}\$?[1-9]\d*)(#?)(?![\w!.(])`;

const TEXT_OR_REFERENCE = new RegExp(String.raw`"(?:[^"]|"")*"|(?<![\w.$!':])${SHEET}${CELL}(?::${SHEET}${CELL})?`, "g");

const spilled = (cell: string, mark: string): string => (mark === "" ? cell : `${SPILL_FUNCTION}(${cell})`);

/** The formula with each A1# in the spelling that workbook files use and the engine can be taught: ANCHORARRAY(A1). */
export const anchorArrayFormula = (formula: string): string =>
  formula.replace(TEXT_OR_REFERENCE, (found, sheet = "", cell?: string, mark = "", otherSheet?: string, other?: string, otherMark = "") => {
    if (cell === undefined || !found.includes("#")) return found;
    const first = spilled(sheet + cell, mark);
    return other === undefined ? first : `${SPILL_RANGE_FUNCTION}(${first},${spilled((otherSheet ?? sheet) + other, otherMark)})`;
  });
