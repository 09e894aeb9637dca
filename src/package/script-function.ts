import { call } from "../functions/call";
import { type Answer, type AnswerCells, failed, type Failed, givenCell, givenCells, isFailed, type Value } from "../functions/cells";
import { type Declaration, takesEach } from "../functions/declare";
import { exportedName } from "./exported-name";
import { TreadsheetError } from "./treadsheet-error";

export type ScriptCell = Value | TreadsheetError;
export type ScriptFunction = (...given: readonly unknown[]) => Value | ScriptCell[][];

/** An argument as a host passes it: no hole in its rows, and an object that is no cell is a cell in error, never the host's own. */
const passed = (given: unknown): unknown => {
  if (Array.isArray(given)) return Array.from(given, (row: unknown) => (Array.isArray(row) ? Array.from<unknown>(row) : row));
  return given === undefined || given === null ? undefined : givenCell(given);
};

const cellCount = (given: unknown): number => (Array.isArray(given) ? givenCells(given).flat().length : 0);

const thrown = ({ failed: code, says }: Failed): TreadsheetError => new TreadsheetError(code, says);

const cell = (answer: Answer): ScriptCell => (isFailed(answer) ? thrown(answer) : answer);

/** What is called cell by cell, where a range stands for one value: a range of one cell too, which to a spreadsheet is one value. */
const eachAnswer = (declaration: Declaration, given: readonly unknown[]): Answer | AnswerCells => {
  const places = Object.values(declaration.parameters).flatMap((parameter, index) => (takesEach(parameter) ? [index] : []));
  const ranges = places.filter((index) => cellCount(given[index]) > 0);
  if (ranges.length === 0 || ranges.some((index) => cellCount(given[index]) > 1)) return call(declaration, given);
  const answer = call(
    declaration,
    // With an empty row below it is a range to the spreadsheet, too.
    given.map((one, index) => (ranges.includes(index) ? [...(one as readonly unknown[]), [null]] : one)),
  );
  return Array.isArray(answer) ? answer.slice(0, 1) : answer;
};

const tooMany = (declaration: Declaration, given: readonly unknown[]): Failed | undefined => {
  const takes = Object.keys(declaration.parameters).length;
  return given.length > takes ? failed(`${exportedName(declaration)}: takes up to ${takes} arguments, got ${given.length}`) : undefined;
};

/**
 * A worksheet function as a script calls it. Where the function answers one value, that value; where it answers a table, a row, or cell by
 * cell, rows. What fails the whole call is thrown; a cell in error stands in its place among the rows, save in an answer of one row alone.
 */
export const scriptFunction =
  (declaration: Declaration): ScriptFunction =>
  (...given) => {
    const answer = tooMany(declaration, given) ?? eachAnswer(declaration, given.map(passed));
    if (!Array.isArray(answer)) {
      if (isFailed(answer)) throw thrown(answer);
      return answer;
    }
    const bad = declaration.result.kind === "row" ? answer.flat().find(isFailed) : undefined;
    if (bad !== undefined) throw thrown(bad);
    return answer.map((row) => row.map(cell));
  };
