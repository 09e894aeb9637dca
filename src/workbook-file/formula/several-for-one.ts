import { answersSeveralCells, argumentTaken, type Taken } from "./arguments-taken";
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
  /** What the first argument was: several cells, and in more than one row and column. */
  isOfSeveral: boolean;
  isOfTable: boolean;
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

/** Whether cells lie in one row or in one column. */
const isLine = (cells: string): boolean => isOneOf("ROW", cells) || isOneOf("COLUMN", cells);

/** From which argument on OFFSET is told a size. */
const SIZES_OF_OFFSET = 3;

/** Whether an argument, from its first token to before the last, makes a function that answers cells answer several of them. */
const isSeveralAsked = ({ name, argument, from }: Open, tokens: readonly Token[], to: number): boolean => {
  if (name === "INDIRECT") return tokens.slice(from, to).some(({ text }) => text.includes(":"));
  if (name !== "INDEX" && name !== "OFFSET") return false;
  const [first, ...more] = tokens.slice(from, to).filter(({ kind }) => kind !== "space");
  const said = more.length > 0 ? undefined : (first?.text ?? "");
  // Nothing or 0 for the row or the column is all of them.
  return name === "INDEX" ? argument > 0 && (said === "" || said === "0") : argument >= SIZES_OF_OFFSET && said !== "" && said !== "1";
};

const openedBy = (parent: Open | undefined, name: string, from: number): Open => {
  const isOne = parent?.isNextOne ?? false;
  if (parent !== undefined) parent.isNextOne = false;
  const open: Open = {
    name, isOne, argument: 0, taken: "one", hasOperator: false, several: [], isNextOne: false, from, answersSeveral: false,
    isOfSeveral: false, isOfTable: false,
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

/** What stands for several cells in an argument is told apart up to here, so that deep brackets do not carry long lists out. */
const MOST_TOLD = 16;
const A_RANGE = "a range";

const addSeveral = ({ several }: Open, added: readonly string[]): void => {
  for (const one of added) if (several.length <= MOST_TOLD) several.push(several.length < MOST_TOLD ? one : A_RANGE);
};

class SeveralFound extends Error {}

/** The end of an argument: several cells are wrong there, or go on to what stands around the call. */
const ended = (tokens: readonly Token[], at: number, open: Open, parent: Open | undefined): void => {
  const isPlace = open.name === "ROW" || open.name === "COLUMN";
  const several = isPlace ? open.several.filter((cells) => !isOneOf(open.name, cells)) : open.several;
  const isOneWanted = open.hasOperator || open.taken === "one" || (isPlace && !open.isOne);
  const [first] = several;
  if (first !== undefined && open.taken !== "table" && isOneWanted) throw new SeveralFound(first);
  if (isSeveralAsked(open, tokens, at)) open.answersSeveral = true;
  if (open.argument === 0) Object.assign(open, { isOfSeveral: several.length > 0, isOfTable: !several.every(isLine) });
  if (open.taken === "through" && !isPlace && !open.isOne && parent !== undefined) addSeveral(parent, several);
};

const separated = (tokens: readonly Token[], at: number, open: Open, parent: Open): void => {
  ended(tokens, at, open, parent);
  open.argument += 1;
  Object.assign(open, { several: [], hasOperator: false, isNextOne: false, from: at + 1 });
  open.taken = takenIn(parent, open);
};

const closed = (tokens: readonly Token[], at: number, open: Open, parent: Open): void => {
  ended(tokens, at, open, parent);
  // OFFSET goes on being as large as it was; a row of a table, with no column said, is all of it (Microsoft, "INDEX function").
  const isAll = (open.name === "OFFSET" && open.isOfSeveral) || (open.name === "INDEX" && open.argument === 1 && open.isOfTable);
  if ((open.answersSeveral || isAll || answersSeveralCells(open.name)) && !open.isOne) addSeveral(parent, [open.name]);
};

const isSameCell = (one: string, other: string): boolean => isCell(one) && plain(one) === plain(other);

const noteSeveral = (open: Open, cells: string): void => {
  if (open.isNextOne) open.isNextOne = false;
  else addSeveral(open, [cells]);
};

/** A sign within a formula, but for brackets. */
const signed = (tokens: readonly Token[], at: number, open: Open): void => {
  const [before, { text }, behind] = [tokens[at - 1]?.text ?? "", tokens[at] ?? { text: "" }, tokens[at + 1]?.text ?? ""];
  if (text === "@") open.isNextOne = true;
  else if (text === "#") noteSeveral(open, `${before}#`);
  else if (text === ":" && !isSameCell(before, behind)) noteSeveral(open, before === ")" ? A_RANGE : `${before}:${behind}`);
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
  if (whole === undefined || opens.length > 1) return;
  // A function alone that answers several cells shows by its size that it does.
  if (!whole.hasOperator) whole.several = whole.several.filter((one) => !answersSeveralCells(one));
  ended(tokens, tokens.length, whole, undefined);
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
