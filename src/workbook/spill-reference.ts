import type { Injector, IRange } from "@univerjs/core";
import {
  BaseFunction,
  type BaseReferenceObject,
  type BaseValueObject,
  ErrorType,
  ErrorValueObject,
  IFormulaCurrentConfigService,
  IFormulaRuntimeService,
  StringValueObject,
} from "@univerjs/engine-formula";
import { SPILL_FUNCTION, SPILL_RANGE_FUNCTION } from "./anchor-array-formula";
import { cellObject } from "./error-sentence";
import { isOverSheets } from "./several-sheets";

type Answer = ReturnType<BaseFunction["calculate"]>;

const wrongReference = (): ErrorValueObject => ErrorValueObject.create(ErrorType.REF);

const isError = (found: IRange | ErrorValueObject): found is ErrorValueObject => found instanceof ErrorValueObject;

/** The block that spilled from the one cell a reference names, or what stands in the place of A1# where none did. */
const blockFrom = (reference: BaseReferenceObject): IRange | ErrorValueObject => {
  const cell = reference.getRangePosition();
  const { startRow: row, startColumn: column } = cell;
  if (row !== cell.endRow || column !== cell.endColumn) return wrongReference();
  const anchor = cellObject(reference, row, column);
  if (anchor.isError())
    return (anchor as ErrorValueObject).getErrorType() === ErrorType.SPILL ? wrongReference() : (anchor as ErrorValueObject);
  const now = reference.getCurrentRuntimeActiveArrayFormulaRange()?.[row]?.[column];
  // A cell worked out in this round that has no block in it has none left from the round before either.
  const isWorkedOut = reference.getCurrentRuntimeSheetData()?.getValue(row, column) !== undefined;
  const block = now ?? (isWorkedOut ? undefined : reference.getCurrentActiveArrayFormulaRange()?.[row]?.[column]);
  if (block) return block;
  return reference.getCurrentActiveSheetData()?.cellData.getValue(row, column)?.f ? cell : wrongReference();
};

/** A function that answers a reference, as OFFSET does: the cells it leads to are worked out before whoever reads them. */
abstract class Address extends BaseFunction {
  override needsReferenceObject = true;

  override isAddress(): boolean {
    return true;
  }
}

/** A1#, the block that spilled from a cell, as the cells it takes up. The engine reads A1# but has no such function. */
class AnchorArray extends Address {
  override minParams = 1;
  override maxParams = 1;

  override calculate(given: BaseValueObject): Answer {
    if (!given.isReferenceObject()) return given.isError() ? given : wrongReference();
    const reference = given as unknown as BaseReferenceObject;
    const block = blockFrom(reference);
    return isError(block) ? block : this.createReferenceObject(reference, block);
  }
}

/** A1#:B9, the cells from the one to the other and all between. */
class SpillRange extends Address {
  override minParams = 2;
  override maxParams = 2;

  override calculate(...ends: readonly BaseValueObject[]): Answer {
    const failed = ends.find((end) => end.isError());
    if (failed) return failed;
    const [first, last] = ends as unknown as readonly BaseReferenceObject[];
    if (!first?.isReferenceObject() || !last?.isReferenceObject() || first.getSheetId() !== last.getSheetId()) return wrongReference();
    const [one, other] = [first.getRangePosition(), last.getRangePosition()];
    return this.createReferenceObject(first, {
      startRow: Math.min(one.startRow, other.startRow),
      startColumn: Math.min(one.startColumn, other.startColumn),
      endRow: Math.max(one.endRow, other.endRow),
      endColumn: Math.max(one.endColumn, other.endColumn),
    });
  }
}

export const spillFunctions = (): BaseFunction[] => [
  new AnchorArray(SPILL_FUNCTION),
  new AnchorArray(`_XLFN.${SPILL_FUNCTION}`),
  new SpillRange(SPILL_RANGE_FUNCTION),
];

/** Lets a reference made of a text know of the cells, as the engine does once a function has answered with one. */
const withCells = (reference: BaseReferenceObject, injector: Injector): BaseReferenceObject => {
  const [sheets, worked] = [injector.get(IFormulaCurrentConfigService), injector.get(IFormulaRuntimeService)];
  reference.setForcedSheetId(sheets.getSheetNameMap());
  reference.setUnitData(sheets.getUnitData());
  reference.setUnitStylesData(sheets.getUnitStylesData());
  reference.setArrayFormulaCellData(sheets.getArrayFormulaCellData());
  reference.setArrayFormulaRange(sheets.getArrayFormulaRange());
  reference.setRuntimeData(worked.getUnitData());
  reference.setRuntimeArrayFormulaCellData(worked.getRuntimeArrayFormulaCellData());
  reference.setRuntimeArrayFormulaRange(worked.getUnitArrayFormula());
  return reference;
};

const textOf = (given: BaseValueObject): string => {
  const one = given.isArray() ? (given as unknown as { getFirstCell: () => BaseValueObject }).getFirstCell() : given;
  return one.isString() ? String(one.getValue()).trim() : "";
};

/** INDIRECT("A1#") is the block. The engine's own drops the # and answers the one cell. */
export const withSpillTexts = (indirect: BaseFunction, injector: Injector): void => {
  const plain = indirect.calculate.bind(indirect);
  indirect.calculate = (given, ...style) => {
    const text = textOf(given);
    if (isOverSheets(text)) return wrongReference();
    if (!text.includes("#")) return plain(given, ...style);
    if (text.indexOf("#") !== text.length - 1) return wrongReference();
    const cell = plain(StringValueObject.create(text.slice(0, -1)), ...style);
    if (!cell.isReferenceObject()) return cell;
    const reference = withCells(cell as unknown as BaseReferenceObject, injector);
    const block = blockFrom(reference);
    return isError(block) ? block : indirect.createReferenceObject(reference, block);
  };
};
