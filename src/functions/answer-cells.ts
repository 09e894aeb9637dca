import { type Length, measure, type Unit } from "../solver/length/length";
import { isProblem, type Problem } from "../solver/problem";
import { words } from "../solver/words";
import { type Answer, type AnswerCells, type Failed, failed, isFailed } from "./cells";
import type { Declaration, Measured, ResultCell, ResultColumn, ResultColumns, ResultKind, ResultRow } from "./declare";
import { isLengthKind } from "./kinds";
import type { Context, Lengths, Numbers } from "./read-argument";
import { sentence } from "./say";

/** The sentence of a problem, worded by the declaration. */
const worded = (found: Problem, { declaration, unit }: Context): Failed => {
  const wording = declaration.problems[found.problem];
  if (wording === undefined) throw new Error(`${declaration.id} does not word the problem "${found.problem}"`);
  return failed(sentence(wording.says, found.details, unit ?? "in"), wording.cell);
};

const isMeasured = (value: unknown): value is Measured =>
  typeof value === "object" && value !== null && "kind" in value && "value" in value;

const finite = (value: number, context: Context): Answer => {
  if (!Number.isFinite(value)) return failed(`${context.declaration.id}: the numbers given lead to no finite answer`);
  return value === 0 ? 0 : value;
};

/** A cell holds so many characters (Excel specifications and limits). */
const MOST_CHARACTERS = 32_767;

const fitting = (text: string): string => (text.length <= MOST_CHARACTERS ? text : `${text.slice(0, MOST_CHARACTERS - 1)}…`);

const answerCell = (value: ResultCell | boolean, kind: ResultKind, context: Context): Answer => {
  if (value === undefined) return "";
  if (typeof value === "string") return fitting(value);
  if (typeof value === "boolean") return value;
  if (typeof value === "number") return finite(value, context);
  if (isFailed(value)) return value;
  if (isProblem(value)) return worded(value, context);
  if (isMeasured(value)) return answerCell(value.value, value.kind, context);
  return finite(kind === "length" ? measure(value, context.unit ?? "in") : value.toNumber(), context);
};

/** What stands in the unit column beside a value. */
const unitText = (value: ResultCell, unit: Unit | undefined): string | undefined => {
  if (!isMeasured(value)) return undefined;
  if (isLengthKind(value.kind)) return unit ?? "in";
  return value.kind === "angle" ? "deg" : "";
};

const TEXTUAL: readonly ResultKind[] = ["text", "label"];

const answerRow = (row: ResultRow, columns: readonly (readonly [string, ResultColumn])[], context: Context): Answer[] => {
  const bad = row.bad === undefined ? undefined : isProblem(row.bad) ? worded(row.bad, context) : row.bad;
  return columns.map(([key, column]) => {
    if (column.kind === "unit") return context.unit ?? "in";
    const value = key === "unit" ? (row[key] ?? unitText(row["value"], context.unit)) : row[key];
    if (value !== undefined || bad === undefined) return answerCell(value, column.kind, context);
    if (key === "note") return bad.says;
    return TEXTUAL.includes(column.kind) ? "" : bad;
  });
};

const headingsOf = (columns: ResultColumns): Answer[] => Object.keys(columns).map(words);

/** What a solver is given: an argument left out that follows another one has its value. */
export const givenOf = ({ parameters }: Declaration, filled: ReadonlyMap<string, unknown>): Record<string, unknown> => {
  const given: Record<string, unknown> = Object.fromEntries(filled);
  for (const [name, parameter] of Object.entries(parameters)) {
    if (given[name] === undefined && parameter.defaultsTo !== undefined) given[name] = given[parameter.defaultsTo];
  }
  return given;
};

/** What a function answers, as cells; `shape` is that of the lengths or numbers it was given, where it has one. */
export const answerCells = (
  filled: ReadonlyMap<string, unknown>, context: Context, shape: Lengths | Numbers | undefined,
): Answer | AnswerCells => {
  const { declaration } = context;
  const given = givenOf(declaration, filled);
  const answer = declaration.solve(given as never);
  if (isProblem(answer)) return worded(answer, context);
  if (isFailed(answer)) return answer;
  const { result } = declaration;
  if (result.kind === "table") {
    const columns = Object.entries(result.columns);
    const rows = (answer as readonly ResultRow[]).map((row) => answerRow(row, columns, context));
    return given["headings"] === false ? rows : [headingsOf(result.columns), ...rows];
  }
  if (result.kind === "row") {
    const row = answer as ResultRow;
    const columns = Object.entries(result.columns).filter(([key, { mayLack }]) => mayLack !== true || row[key] !== undefined);
    return [answerRow(row, columns, context)];
  }
  if (result.kind === "lengths" || result.kind === "amounts") {
    const kind = result.kind === "lengths" ? "length" : "money";
    const lengths = (answer as readonly (Length | Problem | undefined)[]).values();
    return (shape?.rows ?? []).map((row) =>
      row.map((cell) => {
        if (cell === undefined) return "";
        const length = lengths.next().value;
        return isFailed(cell) ? cell : answerCell(length, kind, context);
      }),
    );
  }
  return answerCell(answer as ResultCell, result.kind === "cell" ? "value" : result.kind, context);
};
