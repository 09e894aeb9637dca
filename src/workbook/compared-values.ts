import {
  ArrayValueObject, type BaseValueObject, BooleanValueObject, CELL_INVERTED_INDEX_CACHE, type compareToken, type ErrorValueObject,
} from "@univerjs/engine-formula";

/** A value and the rows of a column it stands in. Text in capitals and in small letters is one value, as in every comparison. */
interface Same {
  readonly value: BaseValueObject;
  readonly rows: number[];
}

/** A column by its values: numbers and texts by what they are; and empty cells, TRUE, FALSE and errors. */
interface Column {
  readonly plain: ReadonlyMap<number | string, Same>;
  readonly others: readonly Same[];
}

type Answers = BaseValueObject[][];

/** What the engine keeps to itself: how it works out a column of an array with one value, and what it does when an array is altered. */
interface Inside {
  _batchOperatorValue: (
    this: ArrayValueObject,
    value: BaseValueObject,
    column: number,
    answers: Answers,
    kind: number,
    operator?: compareToken,
    inCase?: boolean,
  ) => void;
  _clearCache: (this: ArrayValueObject) => void;
}

// The engine's number for a comparison, BatchOperatorType.COMPARE.
const COMPARISON = 5;

const NO = BooleanValueObject.create(false);

const keyOf = (value: BaseValueObject): number | string => {
  if (value.isNumber()) return Number(value.getValue());
  if (value.isString()) return `"${String(value.getValue()).toLocaleLowerCase()}`;
  if (value.isError()) return String(value.getValue()) + (value as ErrorValueObject).getErrorContent();
  return value.isNull() ? "" : String(value.getValue());
};

const columnOf = (array: ArrayValueObject, column: number): Column | undefined => {
  const plain = new Map<number | string, Same>();
  const others = new Map<number | string, Same>();
  for (let row = 0; row < array.getRowCount(); row += 1) {
    const value = array.getValueOrDefault(row, column) as BaseValueObject | null | undefined;
    if (!value) return undefined;
    const [values, key] = [value.isNumber() || value.isString() ? plain : others, keyOf(value)];
    const same = values.get(key);
    if (same === undefined) values.set(key, { value, rows: [row] });
    else same.rows.push(row);
  }
  return { plain, others: [...others.values()] };
};

const hasWildcard = (value: BaseValueObject): boolean => value.isString() && /[*?]/.test(String(value.getValue()));

/** Of a column the values that may be other than FALSE: for = the value itself, if it is there. */
const toCompare = ({ plain, others }: Column, value: BaseValueObject, operator: compareToken): readonly Same[] => {
  if (String(operator) !== "=" || hasWildcard(value)) return [...plain.values(), ...others];
  const same = plain.get(keyOf(value));
  return same === undefined ? others : [same, ...others];
};

/** Whether a value compares with equal cells alike: not a date, which meets dates less exactly, nor an empty cell, which is 0 and "". */
const isComparedAlike = (value: BaseValueObject): boolean =>
  (value.isNumber() && !value.isDateFormat()) || value.isString() || value.isBoolean();

/**
 * Comparisons of many cells with one value. The engine remembers them by sheet, row and column, also for arrays that formulas work out,
 * which stand in no cell: CHOOSECOLS(A1:B3,2)>0 was answered from the cells that the formula itself had spilled into, and a text 12 was
 * taken for the number. Here nothing is remembered by place. An array that is compared again, as the list of many look-ups is, is
 * remembered by itself, each of its values once, for as long as nothing in it is altered.
 */
export const compareByValue = (): void => {
  CELL_INVERTED_INDEX_CACHE.set = () => undefined;
  CELL_INVERTED_INDEX_CACHE.setContinueBuildingCache = () => undefined;
  CELL_INVERTED_INDEX_CACHE.canUseCache = () => ({ rowsInCache: [], rowsNotInCache: [] });

  const remembered = new WeakMap<ArrayValueObject, Map<number, Column | undefined>>();
  const inside = ArrayValueObject.prototype as unknown as Inside;
  const { _batchOperatorValue: cellByCell, _clearCache: altered } = inside;

  /** The column where it was compared before: most arrays are compared once, and are not worth remembering. */
  const known = (array: ArrayValueObject, column: number): Column | undefined => {
    const columns = remembered.get(array);
    if (columns === undefined) remembered.set(array, new Map([[column, undefined]]));
    else if (columns.has(column)) columns.set(column, columns.get(column) ?? columnOf(array, column));
    else columns.set(column, undefined);
    return columns?.get(column);
  };

  inside._batchOperatorValue = function (value, column, answers, kind, operator, inCase) {
    const isPlain = kind === COMPARISON && operator !== undefined && inCase !== true && isComparedAlike(value);
    const values = isPlain ? known(this, column) : undefined;
    if (values === undefined || operator === undefined) return cellByCell.call(this, value, column, answers, kind, operator, inCase);
    const [height, isOneColumn] = [this.getRowCount(), this.getColumnCount() === 1];
    // Most answers of a look-up are this one: a row for each would cost more than all the rest.
    const noRow = [NO];
    for (let row = 0; row < height; row += 1) {
      if (isOneColumn) answers[row] = noRow;
      else (answers[row] ??= [])[column] = NO;
    }
    for (const { value: held, rows } of toCompare(values, value, operator)) {
      const answer = held.isError() ? held : held.compare(value, operator);
      for (const row of rows) {
        if (isOneColumn) answers[row] = [answer];
        else (answers[row] ??= [])[column] = answer;
      }
    }
  };
  inside._clearCache = function () {
    remembered.delete(this);
    altered.call(this);
  };
};
