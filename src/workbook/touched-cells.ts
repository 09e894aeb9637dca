import { CommandType, type ICommandInfo, type IExecutionOptions, ObjectMatrix } from "@univerjs/core";
import { type ISetRangeValuesMutationParams, SetRangeValuesMutation } from "@univerjs/sheets";
import { cellAddress } from "../sheets/cell-address";

/** Cells of one sheet that may be stored otherwise than before. */
export interface TouchedCells {
  readonly sheet: string;
  readonly addresses: readonly string[];
}

/** Names of the engine's own messages about calculation begin so. */
const CALCULATION = "formula.";

/** What a message of the engine may have changed of what is stored; undefined where nothing. */
export const touchedCells = (
  { id, type, params }: Readonly<ICommandInfo>, options: IExecutionOptions | undefined, sheetName: (id: string) => string | undefined,
): TouchedCells | "anything" | undefined => {
  // Results of formulas come as values of cells; they are not stored.
  if (type !== CommandType.MUTATION || id.startsWith(CALCULATION) || options?.["applyFormulaCalculationResult"] === true) return undefined;
  if (id !== SetRangeValuesMutation.id) return "anything";
  const { subUnitId, cellValue } = params as ISetRangeValuesMutationParams;
  const sheet = sheetName(subUnitId);
  if (sheet === undefined || cellValue === undefined) return "anything";
  const addresses: string[] = [];
  new ObjectMatrix(cellValue).forValue((row, column) => void addresses.push(cellAddress({ row, column })));
  return { sheet, addresses };
};
