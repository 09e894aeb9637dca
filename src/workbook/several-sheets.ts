import { BaseFunction, type BaseValueObject, ErrorType } from "@univerjs/engine-formula";
import { errorObject } from "./error-sentence";

/** The name that a range over several sheets is read by; nobody types it. */
const NAME = "SEVERAL.SHEETS";

const SHEET = String.raw`(?:'(?:[^']|'')+'|[A-Za-z_][\w.]*)`;
const PLACE = String.raw`\$?[A-Za-z]{0,3}\$?\d*(?::\$?[A-Za-z]{0,3}\$?\d*)?#?`;
// Sheet1:Sheet3!A2, or 'Cut plan:Bid'!A2: no name of a sheet has a colon in it.
const OVER_SHEETS = String.raw`(?<![\w.$!'])(?:${SHEET}:${SHEET}|'(?:[^':]|'')+:(?:[^']|'')+')!${PLACE}`;
const TEXT_OR_OVER_SHEETS = new RegExp(String.raw`"(?:[^"]|"")*"|${OVER_SHEETS}`, "g");

export const isOverSheets = (text: string): boolean => new RegExp(OVER_SHEETS).test(text);

/**
 * A formula with a range over several sheets, which the engine would read as anything, as a call that refuses it; any other as it is. The
 * whole of it: COUNT and IFERROR would make a number of the error of a part.
 */
export const refusedOverSheets = (formula: string): string => {
  const range = [...formula.matchAll(TEXT_OR_OVER_SHEETS)].map(([found]) => found).find((found) => !found.startsWith('"'));
  return range === undefined ? formula : `${formula.startsWith("=") ? "=" : ""}${NAME}("${range.replaceAll('"', '""')}")`;
};

class SeveralSheets extends BaseFunction {
  override minParams = 1;
  override maxParams = 1;

  override calculate(range: BaseValueObject): BaseValueObject {
    const says = `${String(range.getValue())}: a range over several sheets is not read here; name each sheet, as in SUM(Fit!A2,Bid!A2)`;
    return errorObject(ErrorType.REF, says);
  }
}

export const severalSheets = (): BaseFunction => new SeveralSheets(NAME);
