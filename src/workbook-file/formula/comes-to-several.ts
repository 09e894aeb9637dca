import { answersSeveralCells } from "./arguments-taken";
import { OURS } from "./file-formula";
import { formulaTokens, isCall, isSign, type Token } from "./formula-tokens";
import { futurePrefix } from "./future-functions";
import { severalForOne } from "./several-for-one";

const callsOurs = (tokens: readonly Token[]): boolean => tokens.some(({ text }, at) => isCall(tokens, at) && OURS.test(text));

/**
 * Whether a formula, as a live sheet takes it but without its = sign, may come to several cells when it is typed. One that calls a function
 * of ours may: the platform itself keeps each of them as a dynamic array (tests/workbook-file/as-excel-saves.ts names its source).
 */
export const mayComeToSeveral = (formula: string): boolean => {
  const tokens = formulaTokens(formula);
  // Beside an operator even a function alone shows whether it answers several cells.
  return callsOurs(tokens) || tokens.some((token) => isSign(token, "{")) || severalForOne(`0+(${formula})`) !== undefined;
};

/** Whether a formula calls a function that answers several cells and is younger than the formulas that take one of them. */
export const callsSpilling = (formula: string): boolean => {
  const tokens = formulaTokens(formula);
  return callsOurs(tokens) || tokens.some(({ text }, at) => {
    const name = text.toUpperCase();
    return isCall(tokens, at) && answersSeveralCells(name) && futurePrefix(name) !== "";
  });
};
