import type { Table } from "../../src/functions/columns";
import type { Declaration } from "../../src/functions/declare";
import { spills, tablesOf } from "../../src/functions/describe";
import { words } from "../../src/solver/words";
import { GLUE_LABELS } from "../../src/solver/yield/glue-up/glue-terms";
import type { WorksheetFunction } from "../host/stand-in";
import { type Arguments, MOST_CHARACTERS } from "./random-calls";

const ERRORS: readonly string[] = ["#VALUE!", "#N/A", "#DIV/0!", "#NUM!", "#NULL!"];
/** What is no word of ours: a value that ran through, or the mark of code on a page, which a cell shows as it stands. */
const NOT_WORDS = /\bundefined\b|\bNaN\b|\bInfinity\b|\[object |`/;

/** Text of the call's own cells, which an answer may repeat whatever it says. */
const textOf = (given: unknown): string => (Array.isArray(given) ? given.map(textOf).join("\n") : typeof given === "string" ? given : "");

/** Each cell of a call. */
const cellsOf = (given: unknown): readonly unknown[] => (Array.isArray(given) ? given.flatMap(cellsOf) : [given]);

/** What a call gave: its answer, or what it threw. */
export interface Outcome {
  readonly thrown: boolean;
  readonly answer: unknown;
}

export const outcome = (solve: WorksheetFunction, given: Arguments): Outcome => {
  try {
    return { thrown: false, answer: solve(...given) };
  } catch (error) {
    return { thrown: true, answer: error };
  }
};

const errorOf = (cell: unknown): { readonly code: string; readonly message: string } | undefined =>
  typeof cell === "object" && cell !== null && "code" in cell ? (cell as { code: string; message: string }) : undefined;

const faultOfText = (text: string, given: string): string | undefined => {
  if (text.length > MOST_CHARACTERS) return `a text of ${text.length} characters, more than a cell holds`;
  const found = NOT_WORDS.exec(text)?.[0];
  return found !== undefined && !given.includes(found) ? `"${found}" in ${JSON.stringify(text.slice(0, 200))}` : undefined;
};

const faultOfCell = (cell: unknown, given: string): string | undefined => {
  const error = errorOf(cell);
  if (error !== undefined) {
    if (!ERRORS.includes(error.code)) return `an error of the unknown code ${String(error.code)}`;
    if (typeof error.message !== "string" || error.message.length < 9) return `an error without a sentence: ${String(error.message)}`;
    return faultOfText(error.message, given);
  }
  if (typeof cell === "number") return Number.isFinite(cell) ? undefined : `the number ${cell}`;
  if (typeof cell === "string") return faultOfText(cell, given);
  return typeof cell === "boolean" ? undefined : `a cell that is ${cell === undefined ? "undefined" : JSON.stringify(cell)}`;
};

/** An error of the whole call begins with what is wrong, then a colon. */
const NAMED = /^(.{2,300}?): \S/su;

/** Tables read in place of others. */
const instead = ({ parameters }: Declaration): readonly Table[] =>
  Object.values(parameters).flatMap((parameter) =>
    parameter.kind === "table" && parameter.instead !== undefined ? [parameter.instead.table] : []);

/** What can be wrong with a call: an argument, the heading of a column of its tables, a label of the stair, or a heading given. */
const namesOf = (declaration: Declaration): readonly string[] => [
  declaration.id, ...Object.keys(declaration.parameters), ...Object.keys(declaration.parameters).map(words), "the cell given",
  ...[...tablesOf(declaration), ...instead(declaration)].flatMap(({ columns }) => Object.keys(columns).map(words)),
  // labels of a table of terms, which stand in its rows
  ...("glue" in declaration.parameters ? GLUE_LABELS.map(words) : []),
];

/** A heading may be a number as well as a text. */
const isNamed = (message: string, declaration: Declaration, given: Arguments): boolean => {
  const [, named = ""] = NAMED.exec(message) ?? [];
  const headings = cellsOf(given).filter((cell) => typeof cell === "string" || typeof cell === "number").map(String);
  return (
    named !== "" &&
    (namesOf(declaration).some((name) => named.includes(name)) ||
      headings.some((heading) => named.startsWith(heading.length > 1 ? heading : `${heading} in row`)))
  );
};

/** The error of a cell given, which an answer hands on as it is: its sentence names what was wrong there. */
const isGiven = ({ code, message }: { readonly code: string; readonly message: string }, given: Arguments): boolean =>
  cellsOf(given).map(errorOf).some((error) => error?.code === code && error.message === message);

/** What is wrong with the shape or the words of an outcome, whatever the call was; undefined where nothing is. */
export const faultOf = (declaration: Declaration, given: Arguments, { thrown, answer }: Outcome): string | undefined => {
  const text = textOf(given);
  if (thrown) {
    const error = errorOf(answer);
    if (error === undefined) return `it threw ${String(answer)}`;
    if (isGiven(error, given)) return undefined;
    if (!isNamed(error.message, declaration, given)) return `the sentence names nothing: ${JSON.stringify(error.message.slice(0, 200))}`;
    return faultOfCell(answer, text);
  }
  if (!spills(declaration)) return Array.isArray(answer) ? "a range where one value is declared" : faultOfCell(answer, text);
  if (!Array.isArray(answer) || answer.length === 0) return "no range where one is declared";
  const rows = answer as unknown[][];
  const width = rows[0]?.length ?? 0;
  if (width === 0) return "a range without columns";
  for (const row of rows) {
    if (row.length !== width) return `a row of ${row.length} cells among rows of ${width}`;
    for (const cell of row) {
      const fault = faultOfCell(cell, text);
      if (fault !== undefined) return fault;
    }
  }
  return undefined;
};

/** An outcome as text, to be compared with another. */
export const written = ({ thrown, answer }: Outcome): string =>
  JSON.stringify([thrown, answer], (_, value: unknown) => {
    const error = errorOf(value);
    return error === undefined ? value : { code: error.code, message: error.message };
  });
