import { ArrayValueObject, type BaseValueObject } from "@univerjs/engine-formula";

/** Rows of values as the engine spills them; it places them at the formula's cell itself. */
export const blockOf = (rows: BaseValueObject[][]): ArrayValueObject =>
  ArrayValueObject.create({
    calculateValueList: rows,
    rowCount: rows.length,
    columnCount: rows[0]?.length ?? 0,
    unitId: "",
    sheetId: "",
    row: -1,
    column: -1,
  });
