import { type ArrayValueObject, type BaseFunction, BooleanValueObject, type compareToken, StringValueObject } from "@univerjs/engine-formula";

/** What the engine keeps to itself of comparing a text, and TRUE or FALSE, with a text or a number. */
interface TextInside {
  _checkWildcard: (this: StringValueObject, pattern: string, operator: compareToken) => BooleanValueObject;
  _compareString: (held: string, other: string, operator: compareToken) => boolean;
}

interface TruthInside {
  _compareString: (operator: compareToken) => boolean;
}

const texts = StringValueObject.prototype as unknown as TextInside;
const truths = BooleanValueObject.prototype as unknown as TruthInside;
const { _checkWildcard: byPattern } = texts;
const { _compareString: byKind } = truths;

let isOperator = false;

// Only COUNTIF, MATCH and their like read * and ? in a text as any letters; between = < > they are letters like others.
texts._checkWildcard = function (pattern, operator) {
  if (!isOperator) return byPattern.call(this, pattern, operator);
  return BooleanValueObject.create(texts._compareString(this.getValue().toLocaleLowerCase(), pattern, operator));
};

// TRUE is no number and no text, so TRUE<>1 is TRUE.
truths._compareString = (operator) => String(operator) === "<>" || byKind(operator);

const exactly = <Answer>(work: () => Answer): Answer => {
  isOperator = true;
  try {
    return work();
  } finally {
    isOperator = false;
  }
};

/** The engine's = <> < > <= >= as in a cell of Excel. */
export const asOperator = (compare: BaseFunction): void => {
  const plain = compare.calculate.bind(compare);
  compare.calculate = (...values) => exactly(() => plain(...values));
};

const WILDCARDS = 2;

/** XLOOKUP and XMATCH: only the match mode 2, given in this place, reads * and ? as any letters. */
export const withExactMode = (place: number) => (lookup: BaseFunction): void => {
  const plain = lookup.calculate.bind(lookup);
  lookup.calculate = (...values) => {
    const given = values[place];
    const mode = given?.isArray() ? (given as ArrayValueObject).getFirstCell() : given;
    return Number(mode?.getValue()) === WILDCARDS ? plain(...values) : exactly(() => plain(...values));
  };
};
