import { argumentTaken, type Taken } from "./arguments-taken";
import { closingPlace, formulaTokens, isCall, isCell, isSheetName, isSign, type Token } from "./formula-tokens";

/** A call or brackets that are open, or the formula as a whole; of its arguments the one that is read. */
interface Open {
  readonly name: string;
  /** Whether what it comes to is taken as one value by the @ before it. */
  readonly isOne: boolean;
  argument: number;
  taken: Taken;
  hasOperator: boolean;
  /** What stands for several cells in the argument that is read, and in the one that comes next by @ alone. */
  several: string[];
  isNextOne: boolean;
  /** Where the argument begins. */
  from: number;
  /** Arguments that make OFFSET and INDEX answer several cells. */
  answersSeveral: boolean;
}

const OPERATORS = ["+", "-", "*", "/", "^", "&", "=", "<", ">", "%"];
const plain = (text: string): string => text.replaceAll("$", "").toUpperCase();

const ROWS_OF = /^\D*(\d+):\D*(\d+)$/;
const COLUMNS_OF = /^([A-Z]+)\d*:([A-Z]+)\d*$/;

/** ROW of cells in one row is one number, and COLUMN of those in one column. */
const isOneOf = (name: string, cells: string): boolean => {
  const [, from, to] = (name === "ROW" ? ROWS_OF : COLUMNS_OF).exec(plain(cells)) ?? [];
  return from !== undefined && from === to;
};

/** From which argument on OFFSET is told a size. */
const SIZES_OF_OFFSET = 3;

/** Whether an argument makes a function that answers cells answer several of them. */
const isSeveralAsked = ({ name, argument }: Open, said: string): boolean => {
  // Nothing or 0 for the row or the column is all of them.
  if (name === "INDEX") return argument > 0 && (said === "" || said === "0");
  if (name === "OFFSET") return argument >= SIZES_OF_OFFSET && said !== "" && said !== "1";
  return name === "INDIRECT" && said.includes(":");
};

const openedBy = (parent: Open | undefined, name: string, from: number): Open => {
  const isOne = parent?.isNextOne ?? false;
  if (parent !== undefined) parent.isNextOne = false;
  const open: Open = {
    name, isOne, argument: 0, taken: "one", hasOperator: false, several: [], isNextOne: false, from, answersSeveral: false,
  };
  if (parent !== undefined) open.taken = takenIn(parent, open);
  return open;
};

function takenIn(parent: Open, { name, argument }: Open): Taken {
  const taken = name === "" || name === "ROW" || name === "COLUMN" ? "through" : argumentTaken(name, argument);
  // What is worked out cell by cell is so to the innermost call, but for the condition of IF (from memory: it wants an array formula).
  const isCondition = (name === "IF" || name === "CHOOSE") && argument === 0;
  return parent.taken === "table" && !isCondition ? "table" : taken;
}

class SeveralFound extends Error {}

/** The end of an argument: several cells are wrong there, or go on to what stands around the call. */
const ended = (tokens: readonly Token[], at: number, open: Open, parent: Open | undefined): void => {
  const isPlace = open.name === "ROW" || open.name === "COLUMN";
  const several = isPlace ? open.several.filter((cells) => !isOneOf(open.name, cells)) : open.several;
  const isOneWanted = open.hasOperator || open.taken === "one" || (isPlace && !open.isOne);
  const [first] = several;
  if (first !== undefined && open.taken !== "table" && isOneWanted) throw new SeveralFound(first);
  const said = tokens.slice(open.from, at).map(({ text }) => text).join("").trim();
  if (isSeveralAsked(open, said)) open.answersSeveral = true;
  if (open.taken === "through" && !isPlace && !open.isOne) parent?.several.push(...several);
};

const separated = (tokens: readonly Token[], at: number, open: Open, parent: Open): void => {
  ended(tokens, at, open, parent);
  open.argument += 1;
  Object.assign(open, { several: [], hasOperator: false, isNextOne: false, from: at + 1 });
  open.taken = takenIn(parent, open);
};

const closed = (tokens: readonly Token[], at: number, open: Open, parent: Open): void => {
  ended(tokens, at, open, parent);
  if (open.answersSeveral && !open.isOne) parent.several.push(open.name);
};

const isSameCell = (one: string, other: string): boolean => isCell(one) && plain(one) === plain(other);

const noteSeveral = (open: Open, cells: string): void => {
  if (open.isNextOne) open.isNextOne = false;
  else open.several.push(cells);
};

/** A sign within a formula, but for brackets. */
const signed = (tokens: readonly Token[], at: number, open: Open): void => {
  const [before, { text }, behind] = [tokens[at - 1]?.text ?? "", tokens[at] ?? { text: "" }, tokens[at + 1]?.text ?? ""];
  if (text === "@") open.isNextOne = true;
  else if (text === "#") noteSeveral(open, `${before}#`);
  else if (text === ":" && !isSameCell(before, behind)) noteSeveral(open, before === ")" ? "a range" : `${before}:${behind}`);
  else if (OPERATORS.includes(text)) Object.assign(open, { hasOperator: true, isNextOne: false });
};

/** Throws the cells that stand where one value belongs. One pass, however deep brackets go. */
const search = (tokens: readonly Token[]): void => {
  const opens = [openedBy(undefined, "", 0)];
  for (let at = 0; at < tokens.length; at += 1) {
    const [open, parent, token] = [opens.at(-1), opens.at(-2), tokens[at]];
    if (open === undefined || token === undefined) break;
    // Jan:Dec!A1 has a colon that makes no range.
    if (isSheetName(tokens, at)) at += isSign(tokens[at + 1], "!") ? 2 : 4;
    else if (isCall(tokens, at)) {
      opens.push(openedBy(open, token.text.toUpperCase(), at + 2));
      at += 1;
    } else if (isSign(token, "(")) opens.push(openedBy(open, "", at + 1));
    else if (isSign(token, "{")) at = closingPlace(tokens, at);
    else if (parent !== undefined && isSign(token, ",")) separated(tokens, at, open, parent);
    else if (parent !== undefined && isSign(token, ")")) closed(tokens, at, opens.pop() ?? open, parent);
    else if (token.kind === "sign") signed(tokens, at, open);
  }
  const [whole] = opens;
  if (whole !== undefined && opens.length === 1) ended(tokens, tokens.length, whole, undefined);
};

/**
 * The cells that a plain formula, written as a live sheet takes it but without its = sign, has where one value belongs: beside an operator,
 * as an argument that takes one value, or as all of the formula. Spreadsheets take of them the one in the row or the column of the formula
 * (Microsoft, "Implicit intersection operator: @"); a live sheet works out all of them, which is another number.
 */
export const severalForOne = (formula: string): string | undefined => {
  try {
    search(formulaTokens(formula));
    return undefined;
  } catch (error) {
    if (error instanceof SeveralFound) return error.message;
    throw error;
  }
};
