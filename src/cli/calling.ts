import { givenNames } from "../workbook-file/formula/file-formula";
import { formulaTokens, isCall } from "../workbook-file/formula/formula-tokens";

/** The functions a formula calls, in capitals; names that LET and LAMBDA give are none. */
export const calledIn = (formula: string): readonly string[] => {
  const tokens = formulaTokens(formula.replace(/^=/, ""));
  const given = givenNames(tokens);
  return tokens.flatMap(({ text }, at) => (isCall(tokens, at) && !given.has(text.toLowerCase()) ? [text.toUpperCase()] : []));
};
