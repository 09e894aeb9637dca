import { catalogue } from "../../src/functions/catalogue";
import type { Declaration } from "../../src/functions/declare";
import { argumentsOf } from "../../src/functions/formula";
import { exportedName } from "../../src/package/exported-name";
import type { InstalledPackage } from "./installed-package";

export interface ErrorCell {
  readonly code: string;
  readonly message: string;
  /** Whether it is an Error of the package. */
  readonly isOurs: boolean;
}

export interface Called {
  readonly thrown?: ErrorCell;
  readonly answer?: unknown;
  readonly again?: unknown;
}

export interface DeclaredExample {
  readonly declaration: Declaration;
  readonly example: Declaration["examples"][number];
}

export const examples: readonly DeclaredExample[] = catalogue.flatMap((declaration) =>
  declaration.examples.map((example) => ({ declaration, example })),
);

// There is no clock and no chance; what is given is frozen; each call is made twice, and the first answer is scribbled over in between.
const RUNNER = `
const refuse = () => { throw new Error("a pure function asks no clock and no chance"); };
globalThis.Date = new Proxy(Date, { construct: refuse, apply: refuse, get: refuse });
globalThis.performance = undefined;
Math.random = refuse;
const stairs = require("treadsheet");
const frozen = (value) => (Array.isArray(value) ? Object.freeze(value.map(frozen)) : value);
const plain = (cell) =>
  cell instanceof Error ? { code: cell.code, message: cell.message, isOurs: cell instanceof stairs.TreadsheetError } : cell;
const plainAnswer = (answer) => (Array.isArray(answer) ? answer.map((row) => row.map(plain)) : answer);
const called = ({ name, given }) => {
  const values = given.map((one) => (one === null ? undefined : frozen(one)));
  try {
    const first = stairs[name](...values);
    const answer = plainAnswer(first);
    if (Array.isArray(first)) first.forEach((row) => row.fill("scribbled"));
    return { answer, again: plainAnswer(stairs[name](...values)) };
  } catch (error) {
    return { thrown: plain(error) };
  }
};
console.log(JSON.stringify(JSON.parse(CALLS).map(called)));
`;

/** Every example of every declaration, called by a script of its own, in the order of `examples`. */
export const calledExamples = ({ printed }: InstalledPackage): readonly Called[] => {
  const calls = examples.map(({ declaration, example }) => ({
    name: exportedName(declaration),
    given: argumentsOf(declaration, example.given),
  }));
  return JSON.parse(printed("examples.cjs", RUNNER.replace("CALLS", () => JSON.stringify(JSON.stringify(calls))))) as Called[];
};
