// What Excel gives functions.js, for a page without Excel: loaded before it.

type WorksheetFunction = (...cells: readonly unknown[]) => unknown;

class CellError extends Error {
  readonly code: string;

  constructor(code: string, message?: string) {
    super(message ?? code);
    this.code = code;
  }
}

const functions = new Map<string, WorksheetFunction>();

Object.assign(globalThis, {
  CustomFunctions: {
    Error: CellError,
    ErrorCode: {
      invalidValue: "#VALUE!",
      notAvailable: "#N/A",
      divisionByZero: "#DIV/0!",
      invalidNumber: "#NUM!",
      nullReference: "#NULL!",
      invalidName: "#NAME?",
      invalidReference: "#REF!",
    },
    associate: (id: string, solve: WorksheetFunction): void => {
      functions.set(id, solve);
    },
  },
  treadsheetFunctions: functions,
});
