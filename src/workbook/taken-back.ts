import type { Injector, IRange, ObjectMatrix } from "@univerjs/core";
import { type ArrayValueObject, type BaseValueObject, type FunctionVariantType, IFormulaRuntimeService } from "@univerjs/engine-formula";

type BySheet<Value> = Readonly<Record<string, Readonly<Record<string, Value | undefined>> | undefined>>;

/** What the engine keeps of the calculation that runs. */
interface Running {
  readonly _currentUnitId: string;
  readonly _currentSubUnitId: string;
  readonly _currentRow: number;
  readonly _currentColumn: number;
  readonly _unitArrayFormulaRange: BySheet<Record<number, Record<number, IRange | undefined> | undefined>>;
  readonly _runtimeArrayFormulaCellData: BySheet<ObjectMatrix<unknown>>;
}

/** Whether a value spills over all of a block again. */
const covers = (value: FunctionVariantType, { startRow, endRow, startColumn, endColumn }: IRange): boolean => {
  if (!value.isReferenceObject() && !(value.isValueObject() && (value as BaseValueObject).isArray())) return false;
  const now = (value as ArrayValueObject).getRangePosition();
  return now.endRow - now.startRow >= endRow - startRow && now.endColumn - now.startColumn >= endColumn - startColumn;
};

/**
 * A formula may be worked out twice in one calculation, where it reads a spill that is not there yet. What it spilled the first time stays
 * standing beside what it comes to the second time, so it is taken back before. Answers whether that has happened since it was last asked:
 * formulas worked out in between may have read it.
 */
export const takenBack = (injector: Injector): (() => boolean) => {
  const runtime = injector.get(IFormulaRuntimeService);
  const running = runtime as unknown as Running;
  if (typeof running._unitArrayFormulaRange !== "object" || typeof running._runtimeArrayFormulaCellData !== "object") {
    throw new Error("The sheet engine no longer keeps what a calculation spilled: see taken-back.ts.");
  }
  let wasTaken = false;
  const setRuntimeData = runtime.setRuntimeData.bind(runtime);
  runtime.setRuntimeData = (value) => {
    const { _currentUnitId: unit, _currentSubUnitId: sheet, _currentRow: row, _currentColumn: column } = running;
    const columns = running._unitArrayFormulaRange[unit]?.[sheet]?.[row];
    const range = columns?.[column];
    if (columns !== undefined && range !== undefined && !covers(value, range)) {
      wasTaken = true;
      delete columns[column];
      const cells = running._runtimeArrayFormulaCellData[unit]?.[sheet];
      for (let r = range.startRow; r <= range.endRow; r += 1) {
        for (let c = range.startColumn; c <= range.endColumn; c += 1) cells?.realDeleteValue(r, c);
      }
    }
    setRuntimeData(value);
  };
  return () => {
    const was = wasTaken;
    wasTaken = false;
    return was;
  };
};
