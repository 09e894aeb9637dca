import type { Unit } from "../solver/length/length";
import { answerCells, givenOf } from "./answer-cells";
import {
  type Answer,
  type AnswerCells,
  type Failed,
  failed,
  type GivenCells,
  givenCells,
  isEmpty,
  isEmptyOrZero,
  isFailed,
  isInvocation,
} from "./cells";
import { type CellParameter, type Declaration, isRange, takesEach } from "./declare";
import { KINDS } from "./kinds";
import { size, tooLarge } from "./range-size";
import { type Context, isLeftOut, type Lengths, type Numbers, readArgument, readRange, type Stairs } from "./read-argument";
import { readStair } from "./read-stair";
import { say } from "./say";
import { asHeaded } from "./table-as-headed";
import { unitOfLengths } from "./unit-of-lengths";

type Arguments = ReadonlyMap<string, GivenCells>;

interface Filled {
  readonly filled: ReadonlyMap<string, unknown>;
  /** That of the lengths or numbers given, where there are such. */
  readonly shape: Lengths | Numbers | undefined;
}

const filledIn = (given: Arguments, context: Context): Filled | Failed => {
  const filled = new Map<string, unknown>();
  let shape: Lengths | Numbers | undefined;
  for (const [name, parameter] of Object.entries(context.declaration.parameters)) {
    const cells = given.get(name);
    const value = isRange(parameter)
      ? readRange(name, cells, asHeaded(parameter, given), context)
      : readArgument(name, cells, parameter, context.unit);
    if (isFailed(value)) return value;
    if (parameter.kind === "numbers" && value !== undefined) {
      shape = value as Numbers;
      filled.set(name, shape.rows.flat().filter((cell) => cell !== undefined));
    } else if (parameter.kind === "lengths") {
      const lengths = value as Lengths;
      shape = lengths;
      filled.set(name, lengths.rows.flat().filter((cell) => cell !== undefined).map((cell) => (isFailed(cell) ? undefined : cell)));
    } else filled.set(name, value);
  }
  return { filled, shape };
};

const once = (given: Arguments, context: Context): Answer | AnswerCells => {
  const found = filledIn(given, context);
  return isFailed(found) ? found : answerCells(found.filled, context, found.shape);
};

const isZeroPossible = (parameter: CellParameter): boolean =>
  ("sign" in parameter && parameter.sign !== "positive") || KINDS[parameter.kind].hasZero === true;

/** Answers cell by cell where a range stands for one value; undefined where none does. */
const lifted = (given: Arguments, context: Context): AnswerCells | Failed | undefined => {
  const ranges = Object.entries(context.declaration.parameters).flatMap(([name, parameter]) => {
    const cells = given.get(name);
    return takesEach(parameter) && cells !== undefined && cells.flat().length > 1 ? [{ name, parameter, cells }] : [];
  });
  const [first] = ranges;
  if (first === undefined) return undefined;
  const [rows, columns] = size(first.cells);
  for (const { name, cells } of ranges) {
    const [r, c] = size(cells);
    if (r !== rows || c !== columns) return failed(say.shapes(name, r, c, first.name, rows, columns));
  }
  return Array.from({ length: rows }, (_, row) =>
    Array.from({ length: columns }, (__, column): Answer => {
      const here = new Map(given);
      for (const { name, parameter, cells } of ranges) {
        const cell = cells[row]?.[column] ?? null;
        if (typeof cell === "string" && isEmpty(cell)) return "";
        if (isEmptyOrZero(cell) && !isZeroPossible(parameter)) return "";
        here.set(name, [[cell === null ? 0 : cell]]);
      }
      const answer = once(here, context);
      return Array.isArray(answer) ? failed(say.oneValue(first.name, rows, columns)) : answer;
    }),
  );
};

const stairsOf = (declaration: Declaration, given: Arguments): Stairs =>
  new Map(Object.entries(declaration.parameters).flatMap(([name, { kind }]) => {
    const cells = given.get(name);
    return kind !== "stair" || cells === undefined || isLeftOut(cells) ? [] : [[name, readStair(name, cells)] as const];
  }));

/** The unit of bare numbers: the `unit` argument, the unit row of the stair table, or, with neither, what the lengths given say. */
const unitOf = (declaration: Declaration, given: Arguments, stairs: Stairs): Unit | undefined | Failed => {
  for (const [name, parameter] of Object.entries(declaration.parameters)) {
    if (parameter.kind === "unit") return readArgument(name, given.get(name), parameter, undefined) as Unit | Failed;
    if (parameter.kind === "stair") {
      const read = stairs.get(name);
      if (read === undefined && parameter.optional === true) continue;
      return read === undefined || isFailed(read) ? undefined : read.unit;
    }
  }
  return declaration.convertsNotation === true ? undefined : unitOfLengths(declaration, given);
};

/** The cells of a call by argument, and what it works in. */
const opened = (
  declaration: Declaration, passed: readonly unknown[],
): { readonly given: Arguments; readonly context: Context } | Failed => {
  const raw = isInvocation(passed[passed.length - 1]) ? passed.slice(0, -1) : passed;
  const given = new Map<string, GivenCells>();
  for (const [index, [name, parameter]] of Object.entries(declaration.parameters).entries()) {
    if (raw[index] === undefined || raw[index] === null) continue;
    const cells = givenCells(raw[index]);
    const large = tooLarge(declaration.id, name, cells, parameter);
    if (large !== undefined) return large;
    given.set(name, cells);
  }
  const stairs = stairsOf(declaration, given);
  const unit = unitOf(declaration, given, stairs);
  return isFailed(unit) ? unit : { given, context: { declaration, unit, stairs } };
};

/**
 * Calls a worksheet function with cells as a host passes them. A value, a table of values and errors, or the error of the whole call.
 * The host's own object, which comes last, is dropped first: while it still keeps the metadata of an earlier version, that is where an
 * argument of this one stands. Arguments beyond the declared ones are passed over.
 */
export const call = (declaration: Declaration, passed: readonly unknown[]): Answer | AnswerCells => {
  const found = opened(declaration, passed);
  if (isFailed(found)) return found;
  return lifted(found.given, found.context) ?? once(found.given, found.context);
};

/** What a call gives its solver, by argument, and the unit it works in. */
export interface ReadCall {
  readonly unit: Unit | undefined;
  readonly given: Readonly<Record<string, unknown>>;
}

/** Reads the arguments of a call as `call` does, one value where one is asked for. */
export const readCall = (declaration: Declaration, passed: readonly unknown[]): ReadCall | Failed => {
  const found = opened(declaration, passed);
  if (isFailed(found)) return found;
  const read = filledIn(found.given, found.context);
  return isFailed(read) ? read : { unit: found.context.unit, given: givenOf(declaration, read.filled) };
};
