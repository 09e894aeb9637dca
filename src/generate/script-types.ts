import { type Declaration, type Parameter, type Result, type ResultColumn, takesEach } from "../functions/declare";
import { isOmissible } from "../functions/describe";
import { exportedName } from "../package/exported-name";

/** Types that every function shares, as they stand in the file. */
export const SHARED_TYPES = `/** A length: a number in the unit of the call, or text such as \`9' 1 1/2"\`, \`7-5/8\` or \`2781 mm\`. */
export type Length = number | string;

/** A share: 0.25, or text with a percent sign, \`25%\`. */
export type Rate = number | string;

export type Unit = "in" | "mm";

/** What a cell in error shows. */
export type ErrorCode = "#VALUE!" | "#N/A" | "#DIV/0!" | "#NUM!" | "#NULL!";

/** Thrown where the whole call has no answer, else a cell in its place among the rows. \`message\` is the sentence that a cell shows. */
export declare class TreadsheetError extends Error {
  readonly code: ErrorCode;
  constructor(code: ErrorCode, says: string);
}

/** A cell of an answer. */
export type Cell = string | number | boolean | TreadsheetError;

/** Rows of an answer; those of a table begin with its headings. */
export type Rows = Cell[][];

/** A cell given; null is an empty one. */
export type GivenCell = Cell | null | undefined;

/** A range: rows of cells, or cells alone for a column. */
export type CellRange = readonly GivenCell[] | readonly (readonly GivenCell[])[];
`;

const choice = (option: string): string => (/^\d+$/.test(option) ? `"${option}" | ${option}` : `"${option}"`);

/** The type of one value of an argument, or of its range. */
export const parameterType = (parameter: Parameter, tableType: (parameter: Parameter) => string): string => {
  switch (parameter.kind) {
    case "length":
    case "reading":
      return "Length";
    case "rate":
      return "Rate";
    case "choice":
      return parameter.options.map(choice).join(" | ");
    case "unit":
      return "Unit";
    case "flag":
      return "boolean";
    case "text":
    case "date":
      return "string | number";
    case "table":
    case "stair":
      return tableType(parameter);
    case "lengths":
    case "numbers":
    case "cells":
      return "CellRange";
    default:
      return "number";
  }
};

const TEXTUAL: readonly string[] = ["text", "unit"];
const EITHER: readonly string[] = ["value", "label", "cell", "date"];

const valueType = (kind: string): string =>
  TEXTUAL.includes(kind) ? "string" : EITHER.includes(kind) ? "string | number | boolean" : "number";

const member = ([key, { kind, mayLack }]: readonly [string, ResultColumn]): string =>
  `${key}${mayLack === true ? "?" : ""}: ${valueType(kind)}`;

/** The type of an answer where each argument has one value. */
export const resultType = (result: Result): string => {
  if (result.kind === "row") return `[[${Object.entries(result.columns).map(member).join(", ")}]]`;
  return ["table", "lengths", "amounts"].includes(result.kind) ? "Rows" : valueType(result.kind);
};

export interface TypedArgument {
  readonly name: string;
  readonly type: string;
  readonly isOmissible: boolean;
  readonly isEach: boolean;
}

const argumentText = ({ name, type, isOmissible: isLeft }: TypedArgument): string => `${name}${isLeft ? "?" : ""}: ${type}`;

export const typedArguments = (declaration: Declaration, tableType: (parameter: Parameter) => string): readonly TypedArgument[] =>
  Object.entries(declaration.parameters).map(([name, parameter]) => ({
    name,
    type: parameterType(parameter, tableType),
    isOmissible: isOmissible(parameter),
    isEach: takesEach(parameter),
  }));

const signed = (declaration: Declaration, given: readonly TypedArgument[], answer: string): string =>
  `export declare function ${exportedName(declaration)}(${given.map(argumentText).join(", ")}): ${answer};`;

/** The call with one value for each argument. */
export const valueSignature = (declaration: Declaration, given: readonly TypedArgument[]): string =>
  signed(declaration, given, resultType(declaration.result));

/** The call with a range for the argument at a place, and for others as they come; before it none can be left out, only undefined. */
export const rangeSignature = (declaration: Declaration, given: readonly TypedArgument[], place: number): string =>
  signed(
    declaration,
    given.map((one, index) => {
      const type = index === place ? "CellRange" : one.isEach ? `${one.type} | CellRange` : one.type;
      if (index > place) return { ...one, type };
      return { ...one, type: index < place && one.isOmissible ? `${type} | undefined` : type, isOmissible: false };
    }),
    "Rows",
  );
