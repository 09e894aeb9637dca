import { call } from "../functions/call";
import { type Answer, type AnswerCells, failed, type Failed, givenCells, isFailed, type Value } from "../functions/cells";
import { type Declaration, takesEach } from "../functions/declare";
import { exportedName } from "./exported-name";
import { TreadsheetError } from "./treadsheet-error";
import { unfitArgument } from "./unfit-argument";

export type ScriptCell = Value | TreadsheetError;
export type ScriptFunction = (...given: readonly unknown[]) => Value | ScriptCell[][];

const refusal = (declaration: Declaration, given: readonly unknown[]): Failed | undefined => {
  const names = Object.keys(declaration.parameters);
  const { length } = names;
  if (given.length > length) return failed(`${exportedName(declaration)}: takes up to ${length} arguments, got ${given.length}`);
  return names.map((name, index) => unfitArgument(name, given[index])).find((one) => one !== undefined);
};

const cellCount = (given: unknown): number => (Array.isArray(given) ? givenCells(given).flat().length : 0);

/** What is called cell by cell, where a range stands for one value: a range of one cell too, which to a spreadsheet is one value. */
const eachAnswer = (declaration: Declaration, given: readonly unknown[]): Answer | AnswerCells => {
  const places = Object.values(declaration.parameters).flatMap((parameter, index) => (takesEach(parameter) ? [index] : []));
  const ranges = places.filter((index) => cellCount(given[index]) > 0);
  if (ranges.length === 0 || ranges.some((index) => cellCount(given[index]) > 1)) return call(declaration, given);
  // With an empty row below it is a range to the spreadsheet, too.
  const longer = given.map((one, index) => (ranges.includes(index) ? [...(one as readonly unknown[]), [null]] : one));
  const answer = call(declaration, longer);
  return Array.isArray(answer) ? answer.slice(0, 1) : answer;
};

const thrown = ({ failed: code, says }: Failed): TreadsheetError => new TreadsheetError(code, says);

/**
 * A worksheet function as a script calls it. Where the function answers one value, that value; where it answers a table, a row, or cell by
 * cell, rows. What fails the whole call is thrown; a cell in error stands in its place among the rows, save in an answer of one row alone.
 */
export const scriptFunction =
  (declaration: Declaration): ScriptFunction =>
  (...given) => {
    const answer = refusal(declaration, given) ?? eachAnswer(declaration, given);
    if (!Array.isArray(answer)) {
      if (isFailed(answer)) throw thrown(answer);
      return answer;
    }
    const bad = declaration.result.kind === "row" ? answer.flat().find(isFailed) : undefined;
    if (bad !== undefined) throw thrown(bad);
    return answer.map((row) => row.map((cell) => (isFailed(cell) ? thrown(cell) : cell)));
  };
