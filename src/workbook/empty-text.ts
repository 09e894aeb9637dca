import { CellValueType } from "@univerjs/core";
import { BaseReferenceObject } from "@univerjs/engine-formula";

const readCell = BaseReferenceObject.prototype.getCellData;

// Of a cell with an empty text the engine takes only the one for filled that belongs to a formula.
const FORMULA_OF_ITS_OWN = { si: "empty text" };

/**
 * An empty text that a formula came to is a text, as in Excel: it is not 0, ISBLANK is FALSE, COUNTA counts it. The engine takes it for an
 * empty cell in the round in which it is worked out and wherever it spilled, and for a text in the rounds after, so that one sheet could
 * have two values. A cell that a person emptied stays empty.
 */
export const keepEmptyTexts = (): void => {
  BaseReferenceObject.prototype.getCellData = function (row, column) {
    const cell = readCell.call(this, row, column);
    if (cell?.v !== "" || cell.t !== CellValueType.STRING) return cell;
    return cell === this.getCurrentActiveSheetData()?.cellData.getValue(row, column) ? cell : { ...cell, ...FORMULA_OF_ITS_OWN };
  };
};
