import { BaseFunction, type BaseReferenceObject, type BaseValueObject, ErrorType, ErrorValueObject } from "@univerjs/engine-formula";
import { blockOf } from "./engine-block";
import { cellObject } from "./error-sentence";

/** The block that spilled from a cell. The engine reads A1# but has no such function. */
class AnchorArray extends BaseFunction {
  override minParams = 1;
  override maxParams = 1;
  override needsReferenceObject = true;

  override calculate(given: BaseValueObject): BaseValueObject {
    if (!given.isReferenceObject()) return ErrorValueObject.create(ErrorType.REF);
    const reference = given as unknown as BaseReferenceObject;
    const { startRow, startColumn, endRow, endColumn } = reference.getRangePosition();
    if (startRow !== endRow || startColumn !== endColumn) return ErrorValueObject.create(ErrorType.REF);
    const anchor = cellObject(reference, startRow, startColumn);
    if (anchor.isError())
      return (anchor as ErrorValueObject).getErrorType() === ErrorType.SPILL ? ErrorValueObject.create(ErrorType.REF) : anchor;
    const now = reference.getCurrentRuntimeActiveArrayFormulaRange()?.[startRow]?.[startColumn];
    // A cell worked out in this round that has no block in it has none left from the round before either.
    const isWorkedOut = reference.getCurrentRuntimeSheetData()?.getValue(startRow, startColumn) !== undefined;
    const block = now ?? (isWorkedOut ? undefined : reference.getCurrentActiveArrayFormulaRange()?.[startRow]?.[startColumn]);
    if (block === undefined) {
      const isFormula = Boolean(reference.getCurrentActiveSheetData()?.cellData.getValue(startRow, startColumn)?.f);
      return isFormula ? anchor : ErrorValueObject.create(ErrorType.REF);
    }
    const rows: BaseValueObject[][] = [];
    for (let row = block.startRow; row <= block.endRow; row += 1) {
      const cells: BaseValueObject[] = [];
      for (let column = block.startColumn; column <= block.endColumn; column += 1) cells.push(cellObject(reference, row, column));
      rows.push(cells);
    }
    return blockOf(rows);
  }
}

export const anchorArrayFunctions = (): BaseFunction[] => [new AnchorArray("ANCHORARRAY"), new AnchorArray("_XLFN.ANCHORARRAY")];
