/** A worksheet function as the built functions associate it. */
export type WorksheetFunction = (...cells: readonly unknown[]) => unknown;

/** An error as a worksheet function throws, returns or is given it. */
export interface FunctionError extends Error {
  readonly code: string;
}

/** What Excel gives functions.js to find under the name CustomFunctions, and what functions.js left there. */
export interface StandIn {
  readonly CustomFunctions: object;
  readonly functions: ReadonlyMap<string, WorksheetFunction>;
  readonly error: (code: string, message?: string) => FunctionError;
}

class CellFailure extends Error implements FunctionError {
  readonly code: string;

  constructor(code: string, message?: string) {
    super(message ?? code);
    this.code = code;
  }
}

// The names of CustomFunctions.ErrorCode, @types/custom-functions-runtime.
const ErrorCode = {
  invalidValue: "#VALUE!",
  notAvailable: "#N/A",
  divisionByZero: "#DIV/0!",
  invalidNumber: "#NUM!",
  nullReference: "#NULL!",
  invalidName: "#NAME?",
  invalidReference: "#REF!",
};

export const standIn = (): StandIn => {
  const functions = new Map<string, WorksheetFunction>();
  return {
    CustomFunctions: {
      Error: CellFailure,
      ErrorCode,
      associate: (id: string, solve: WorksheetFunction): void => {
        functions.set(id.toUpperCase(), solve);
      },
    },
    functions,
    error: (code, message) => new CellFailure(code, message),
  };
};
