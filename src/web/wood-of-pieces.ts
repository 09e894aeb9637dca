import type { CutPiece } from "../drawing/cards/pieces";
import { cellAddress, cellPlace } from "../sheets/cell-address";
import { namedIn } from "../sheets/renamed-sheets";
import type { CellValue, Workbook } from "../workbook/workbook";

type Book = Pick<Workbook, "value" | "spill">;

/** Formulas of a workbook with their places. */
export interface FormulaAt {
  readonly sheet: string;
  readonly address: string;
  readonly formula: string;
}

type Row = ReadonlyMap<string, CellValue>;

const textOf = (value: CellValue | undefined): string =>
  typeof value === "string" || typeof value === "number" ? String(value) : "";

/** A table that spilled from a cell, by its headings: its own, or those in the row above it. */
const tableAt = (book: Book, { sheet, address }: FormulaAt): readonly Row[] => {
  const spilled = book.spill(sheet, address);
  const [first = []] = spilled;
  const place = cellPlace(address);
  const above = first.map((_, column) =>
    place.row === 0 ? undefined : book.value(sheet, cellAddress({ row: place.row - 1, column: place.column + column })));
  const isHeaded = first.length > 1 && first.every((cell) => typeof cell === "string");
  const headings = (isHeaded ? first : above).map((cell) => textOf(cell).split(",")[0]?.trim().toLowerCase() ?? "");
  return (isHeaded ? spilled.slice(1) : spilled).map((row) => new Map(row.map((cell, column) => [headings[column] ?? "", cell])));
};

const CUTS = /\bSTAIR\.CUTS\(/i;
const ORDER = /\bSTAIR\.ORDER\(/i;

const sheetsIn = (formula: string): ReadonlySet<string> => new Set(namedIn(formula).map(({ sheet }) => sheet));

/** The one formula that is meant; undefined where there is none, or where it could be any of several. */
const only = <Item>(found: readonly Item[]): Item | undefined => (found.length === 1 ? found[0] : undefined);

const joined = (names: readonly string[]): string =>
  names.length < 2 ? names.join("") : `${names.slice(0, -1).join(", ")} or ${names.at(-1) ?? ""}`;

const unique = (names: readonly string[]): readonly string[] => [...new Set(names)];

/** What the cut plan that reads the risers' sheet calls a step's riser. */
const isRiser = (label: string, step: string): boolean => label === step || label === `riser ${step}`;

/** The board a riser is cut from, as the cut plan has it: the plan of the sheet that reads the risers of this one. */
const boardsOfRisers = (book: Book, formulas: readonly FormulaAt[], risers: FormulaAt): ((step: string) => string) => {
  const readers = new Set(formulas.filter(({ formula }) => sheetsIn(formula).has(risers.sheet)).map(({ sheet }) => sheet));
  const plans = formulas.filter(({ sheet, formula }) => CUTS.test(formula) && (readers.has(sheet) || sheet === risers.sheet));
  const plan = only(plans);
  const rows = plan === undefined ? [] : tableAt(book, plan);
  return (step) => {
    const found = rows.filter((row) => isRiser(textOf(row.get("piece") ?? row.get("label")), step));
    // behind the stock of a board that is ripped stands what is cut first
    const stocks = unique(found.map((row) => textOf(row.get("stock")).replace(/, (?:rip|crosscut) first$/, "")));
    const sticks = unique(found.map((row) => textOf(row.get("stick") ?? row.get("board"))));
    return stocks.includes("") || sticks.includes("") || found.length === 0
      ? ""
      : `${joined(stocks)}, board ${joined(sticks)} of the cut plan`;
  };
};

const FOR_TREADS = /^for (?:each|the) tread(?:;|$)/;

/** The blank a tread is cut from, as the order of the same stair has it: any of so many alike. */
const blankOfTreads = (book: Book, formulas: readonly FormulaAt[], treads: FormulaAt): ((piece: CutPiece) => string) => {
  const stair = sheetsIn(treads.formula);
  const order = only(formulas.filter(({ formula }) => ORDER.test(formula) && [...sheetsIn(formula)].some((sheet) => stair.has(sheet))));
  const rows = (order === undefined ? [] : tableAt(book, order)).filter((row) => FOR_TREADS.test(textOf(row.get("note"))));
  const names = unique(rows.map((row) => textOf(row.get("item"))));
  if (names.length === 0 || names.includes("")) return () => "";
  const count = rows.reduce((sum, row) => sum + Number(row.get("quantity")), 0);
  const said = `${joined(names)}${count > 1 ? `, any of ${count}` : ""}`;
  // Blanks are ordered by the stair as it was designed; a step is as long as it was taped.
  const longest = Math.max(...rows.map((row) => Number(row.get("length"))));
  const deepest = Math.max(...rows.map((row) => Number(row.get("width"))));
  return ({ acts }) => {
    const rip = acts.map(({ act }) => act).find((act) => act?.kind === "rip");
    if (rip?.kind !== "rip") return said;
    return rip.blank > longest || rip.distance > deepest ? `${joined(names)}: TOO SMALL` : said;
  };
};

/** The pieces of a call with the wood that order and cut plan give them; where the workbook does not say, without. */
export const withWood = (
  book: Book, formulas: readonly FormulaAt[], at: FormulaAt, pieces: readonly CutPiece[],
): readonly CutPiece[] => {
  const boards = boardsOfRisers(book, formulas, at);
  const blanks = blankOfTreads(book, formulas, at);
  return pieces.map((piece) => {
    const wood = piece.kind === "riser" ? boards(piece.step) : blanks(piece);
    return wood === "" ? piece : { ...piece, wood };
  });
};
