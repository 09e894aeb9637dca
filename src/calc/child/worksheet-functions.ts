import { createContext, runInContext } from "node:vm";
import type { WorksheetFunction } from "./answered";

/** CustomFunctions.ErrorCode of the platform, by the text that shows in a cell. */
const ERROR_CODES = {
  invalidValue: "#VALUE!",
  notAvailable: "#N/A",
  divisionByZero: "#DIV/0!",
  invalidNumber: "#NUM!",
  nullReference: "#NULL!",
};

const CELL_ERROR = "(class extends Error { constructor(code, message) { super(message ?? code); this.code = code; } })";

/** The functions that the text of functions.js associates, where there is nothing but the language and a stand-in for the host. */
export const worksheetFunctions = (text: string): ReadonlyMap<string, WorksheetFunction> => {
  const functions = new Map<string, WorksheetFunction>();
  const context = createContext(Object.create(null) as object, { codeGeneration: { strings: false, wasm: false } });
  const host = {
    associate: (id: string, solve: WorksheetFunction) => functions.set(id, solve),
    Error: runInContext(CELL_ERROR, context) as unknown,
    ErrorCode: ERROR_CODES,
  };
  Object.assign(context, { CustomFunctions: host });
  runInContext(text, context, { filename: "functions.js" });
  return functions;
};
