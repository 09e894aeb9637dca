import { isFailed } from "../functions/cells";
import { CAUTION } from "../functions/caution";
import { type CodeSource, codeSource } from "../functions/code-source";
import { type Declaration, takesEach } from "../functions/declare";
import { figuredSteps } from "../functions/figured-steps";
import { NAMESPACE } from "../functions/formula";
import { plainText } from "../functions/plain-text";
import type { ToldAnswer } from "../functions/told-answer";
import { type ToldArgument, toldCall, type ToldCall } from "../functions/told-call";
import type { Solve } from "./answer";
import { type FormulaTree, treeParts } from "./formula/formula-tree";
import { sheetFunctions } from "./formula/sheet-functions";
import { type CellsOf, isKnown, ourFunction, workedOut, type WorkedCell, type WorkedRows } from "./formula/worked-out";
import type { HeldCell } from "./host";

/** What stands behind a cell, under its name. */
export interface ExplainedLine {
  readonly name: string;
  readonly says: string;
}

type Call = Extract<FormulaTree, { readonly kind: "call" }>;


/** A line, none where nothing is said; what is code on a page is between quotation marks. */
export const line = (name: string, says: string): readonly ExplainedLine[] => (says === "" ? [] : [{ name, says: plainText(says) }]);

export const shownText = (value: HeldCell["value"]): string => {
  if (value === null || value === "") return "nothing";
  if (typeof value === "object") return value.error;
  if (typeof value === "string") return `"${value}"`;
  return typeof value === "boolean" ? String(value).toUpperCase() : String(value);
};

/** Calls of ours in a formula, the outermost first. */
export const ourCalls = (tree: FormulaTree): readonly (readonly [Call, Declaration])[] =>
  treeParts(tree).flatMap((part): readonly (readonly [Call, Declaration])[] => {
    const declaration = part.kind === "call" ? ourFunction(part.name) : undefined;
    return part.kind === "call" && declaration !== undefined ? [[part, declaration]] : [];
  });

export const nameOf = ({ id }: Declaration): string => `${NAMESPACE}.${id}`;

export const textOf = (part: FormulaTree): string => ("text" in part ? part.text : "");

/** Where an argument stands in the sheet; empty where it is typed into the call. */
const from = (part: FormulaTree | undefined): string => (part === undefined ? "" : part.kind === "value" ? "" : textOf(part));

/** What an argument holds for one cell of the answer; of a range where one value may stand, the value at that cell's place. */
const heldFor = (rows: WorkedRows, isEach: boolean, row: number, column: number): WorkedCell | WorkedRows =>
  rows.length === 1 && rows[0]?.length === 1 ? (rows[0][0] ?? null) : isEach ? (rows[row]?.[column] ?? null) : rows;

export interface AskedCall {
  readonly call: Call;
  readonly declaration: Declaration;
  readonly cellsOf: CellsOf;
  readonly solve: Solve;
  /** Which cell of the answer is asked about; 0 where the answer is one value. */
  readonly row: number;
  readonly column: number;
}

/** What a call is given, as a host passes it; undefined where only the spreadsheet works out a part of it. */
const passedTo = ({ call, declaration, cellsOf, solve, row, column }: AskedCall): readonly (WorkedCell | WorkedRows)[] | undefined => {
  const parameters = Object.values(declaration.parameters);
  const passed: (WorkedCell | WorkedRows)[] = [];
  for (const [place, argument] of call.arguments.entries()) {
    const worked = argument === undefined ? [[null]] : workedOut(argument, cellsOf, solve, sheetFunctions);
    if (!isKnown(worked)) return undefined;
    const parameter = parameters[place];
    passed.push(heldFor(worked, parameter !== undefined && takesEach(parameter), row, column));
  }
  return passed;
};

/** A call as it was read; undefined where it cannot be read, or only the spreadsheet works out what it is given. */
export const readAsked = (asked: AskedCall): ToldCall | undefined => {
  const passed = passedTo(asked);
  const read = passed === undefined ? undefined : toldCall(asked.declaration, passed);
  return read === undefined || isFailed(read) ? undefined : read;
};

const leftOut = (told: readonly ToldArgument[]): string =>
  told.filter(({ name, value, isLeftOut }) => isLeftOut && value !== "" && name !== "headings")
    .map(({ name, value }) => `${name}: ${value.replace(/^Left out: /, "").replace(/[.]$/, "")}`).join("; ");

/** Arguments as they were read; those only the spreadsheet works out, and those that cannot be read, as they stand in the formula. */
export const argumentLines = ({ call, declaration }: AskedCall, told: ToldCall | undefined): readonly ExplainedLine[] => {
  if (told === undefined) {
    return Object.entries(declaration.parameters).flatMap(([name, { says }], place) => {
      const argument = call.arguments[place];
      if (argument === undefined) return [];
      const stands = argument.kind === "value" ? shownText(argument.value) : textOf(argument);
      return line(name, `${stands}. ${says}`);
    });
  }
  const given = told.arguments.flatMap(({ name, value, says, isLeftOut }, place) => {
    const at = from(call.arguments[place]);
    return isLeftOut ? [] : line(name, `${value}${at === "" ? "" : `, from ${at}`}. ${says}`);
  });
  return [...given, ...line("Left out", leftOut(told.arguments))];
};

/** Names with one value each: those of the call, and those that stand with the answer. */
const figuresOf = (told: ToldCall | undefined, answer: ToldAnswer): ReadonlyMap<string, string> => {
  const figures = new Map(told?.figures);
  for (const [name, value] of answer.figures) {
    const known = figures.get(name);
    if (known === undefined) figures.set(name, value);
    else if (known !== value) figures.delete(name);
  }
  return figures;
};

/** The code that a call names, with the limit that the call or the row is about. */
export const codeOf = (told: ToldCall | undefined, answer: ToldAnswer): CodeSource | undefined => {
  const valueOf = (name: string): string => told?.arguments.find((argument) => argument.name === name)?.value ?? "";
  const item = answer.texts.get("item") ?? valueOf("item");
  return valueOf("code") === "" ? undefined : codeSource(valueOf("code"), item === "" ? undefined : item);
};

/** Lengths of a limit are in the unit of the call where it has one, all else is as the code prints it. */
export const unitOfLimit = (declaration: Declaration, told: ToldCall | undefined, code: CodeSource | undefined): string =>
  "unit" in declaration.parameters && ["in", "mm", "cm"].includes(code?.unit ?? "") ? (told?.unit ?? "in") : (code?.unit ?? "");

/** What was compared, the code with its edition, the clause, and where it was read. */
export const codeLines = (code: CodeSource | undefined, { texts }: ToldAnswer, unit: string): readonly ExplainedLine[] => {
  if (code === undefined) return [];
  const { clause, printed = "", status = "", read = [], edition } = code;
  const compared = ["given", "limit", "margin"].flatMap((name) => {
    const value = texts.get(name) ?? "";
    return value === "" ? [] : [`${name} ${value}${unit !== "" && /^-?[\d.]+( to [\d.]+)?$/.test(value) ? ` ${unit}` : ""}`];
  }).join(", ");
  const verdict = texts.get("verdict");
  return [
    ...(verdict === undefined || compared === "" ? [] : line("Compared", `${compared}: ${verdict}.`)),
    ...(clause === undefined ? [] : line("Clause", `${clause}, as printed: ${printed}; ${texts.get("source status") ?? status}.`)),
    ...line("Code", `${edition}.`),
    ...line("Read in", read.length === 0 ? "" : `${read.join("; ")}.`),
  ];
};

export const answerLines = (
  asked: AskedCall, told: ToldCall | undefined, answer: ToldAnswer, code: readonly ExplainedLine[],
): readonly ExplainedLine[] => {
  const { source, caution } = asked.declaration;
  const { steps, rest } = figuredSteps(source, answer, figuresOf(told, answer));
  return [
    ...answer.means.flatMap(({ name, says }) => line(name, says)),
    ...steps.flatMap((step) => line("Steps", step)),
    ...code,
    ...line("Assumed", (answer.texts.get("assumed") ?? "").replace(/^assumed: /, "")),
    ...line("Note", answer.texts.get("note") ?? ""),
    ...line("Source", rest),
    ...(caution === undefined || caution === CAUTION ? [] : line("Caution", caution)),
  ];
};
