import { readFileSync } from "node:fs";
import path from "node:path";
import { type Context, createContext, runInContext } from "node:vm";

export type WorksheetFunction = (...cells: readonly unknown[]) => unknown;

export const builtFunctions = path.resolve(__dirname, "../../dist/functions.js");

// The codes of CustomFunctions.ErrorCode, @types/custom-functions-runtime.
const errorCodes = {
  invalidValue: "#VALUE!",
  notAvailable: "#N/A",
  divisionByZero: "#DIV/0!",
  invalidNumber: "#NUM!",
  nullReference: "#NULL!",
  invalidName: "#NAME?",
  invalidReference: "#REF!",
};

/**
 * What functions.js associates when it is run where there is nothing but the language and a stand-in for the host; `prepare` changes the
 * language beforehand.
 */
export const associated = (
  file = builtFunctions, prepare: (context: Context) => void = () => undefined,
): ReadonlyMap<string, WorksheetFunction> => {
  const functions = new Map<string, WorksheetFunction>();
  const context = createContext(Object.create(null), { codeGeneration: { strings: false, wasm: false } });
  prepare(context);
  const CellError = runInContext(
    "(class extends Error { constructor(code, message) { super(message ?? code); this.code = code; } })",
    context,
  ) as unknown;
  context["CustomFunctions"] = {
    associate: (id: string, solve: WorksheetFunction) => {
      if (functions.has(id)) throw new Error(`${id} is associated twice.`);
      functions.set(id, solve);
    },
    Error: CellError,
    ErrorCode: errorCodes,
  };
  runInContext(readFileSync(file, "utf8"), context, { filename: file });
  return functions;
};
