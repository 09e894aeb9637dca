import { wordKey } from "../solver/word-key";

/** The error codes a worksheet function may put into a cell; only the first two keep their sentence in Excel. */
export type ErrorCode = "#VALUE!" | "#N/A" | "#DIV/0!" | "#NUM!" | "#NULL!";

/** An error cell with its sentence: what a call answers, or puts into a table, where there is no value. */
export interface Failed {
  readonly failed: ErrorCode;
  readonly says: string;
  /** The code of an error cell that was given, where it cannot leave under the same one. */
  readonly held?: string;
}

export type Value = string | number | boolean;
/** A cell as it arrives: null for an empty one. */
export type Given = Value | null | Failed;
export type GivenCells = readonly (readonly Given[])[];
/** A cell as it leaves. */
export type Answer = Value | Failed;
export type AnswerCells = Answer[][];

export const failed = (says: string, code: ErrorCode = "#VALUE!"): Failed => ({ failed: code, says });

export const isFailed = (value: unknown): value is Failed =>
  typeof value === "object" && value !== null && "failed" in value && "says" in value;

/** How the sentence begins where a cell brings no sentence of its own. */
const HOLDS = "the cell given holds";

/** The error of a cell given for an argument as a whole: its own sentence where it brings one, else the argument it was given for. */
export const givenFor = (name: string, { says, failed: code }: Failed): Failed =>
  failed(says.startsWith(HOLDS) ? `${name}: ${says}` : says, code);

const PASSED_ON: readonly string[] = ["#VALUE!", "#N/A", "#DIV/0!", "#NUM!", "#NULL!"] satisfies ErrorCode[];

const text = (value: unknown): string | undefined => (typeof value === "string" ? value : undefined);

/** An error cell of the host, under any of the names hosts give its code. */
const errorCell = (cell: object): Failed | undefined => {
  const { code, errorCode, basicValue, message } = cell as Record<string, unknown>;
  const found = [code, errorCode, basicValue].map(text).find((name) => name?.startsWith("#"));
  if (found === undefined) return undefined;
  return PASSED_ON.includes(found)
    ? failed(text(message) ?? `${HOLDS} ${found}`, found as ErrorCode)
    : { ...failed(`${HOLDS} ${found}`), held: found };
};

/** What a host passes for one cell, made one of five things: text, number, true or false, an error, or nothing. */
export const givenCell = (raw: unknown): Given => {
  if (raw === undefined || raw === null) return null;
  if (typeof raw === "number") return Number.isFinite(raw) ? raw : failed(`${HOLDS} no number`);
  if (typeof raw === "string" || typeof raw === "boolean") return raw;
  if (isFailed(raw)) return raw;
  if (typeof raw === "object") {
    const error = errorCell(raw);
    if (error) return error;
    if ("basicValue" in raw) return givenCell(raw.basicValue);
  }
  return failed(`${HOLDS} something that is neither text nor number`);
};

/** An argument as a rectangle of cells; short rows of a ragged range are filled with empty cells. */
export const givenCells = (raw: unknown): GivenCells => {
  if (!Array.isArray(raw)) return [[givenCell(raw)]];
  const rows = raw.map((row: unknown) => (Array.isArray(row) ? row.map(givenCell) : [givenCell(row)]));
  const width = rows.reduce((widest, row) => Math.max(widest, row.length), 1);
  if (rows.length === 0) return [[null]];
  return rows.map((row) => (row.length === width ? row : [...row, ...Array.from({ length: width - row.length }, () => null)]));
};

/**
 * Whether an object is the host's own last argument and no cell. The platform's documentation: every custom function gets an invocation
 * object last (functionName, address, parameterAddresses); an object of a cell has a `type` (CellValueType) or a `basicValue`, an error of
 * a cell its code.
 */
export const isInvocation = (raw: unknown): boolean =>
  typeof raw === "object" &&
  raw !== null &&
  !Array.isArray(raw) &&
  !isFailed(raw) &&
  !("type" in raw) &&
  !("basicValue" in raw) &&
  errorCell(raw) === undefined;

/** Nothing stands in the cell: the host gave nothing, or an empty text. */
export const isEmpty = (cell: Given): cell is null | string =>
  cell === null || (typeof cell === "string" && cell.trim() === "");

/** Desktop hosts send 0 for an empty cell, so in a range the two are one. */
export const isEmptyOrZero = (cell: Given): boolean => isEmpty(cell) || cell === 0;

/** Labels, headings and words of choice match by their letters and digits alone, in either spelling, singular or plural. */
export const folded = wordKey;
