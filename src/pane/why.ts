import { NAMESPACE } from "../functions/formula";
import { isErrorCell, type Solve } from "./answer";
import { type CellsPart, formulaBlocks } from "./formula-blocks";
import { type FormulaTree, formulaTree, treeParts } from "./formula/formula-tree";
import { isKnown, ourFunction, type Worked, workedOut, type WorkedCell, type WorkedRows } from "./formula/worked-out";
import type { Block, CellHost, HeldCell, Place } from "./host";
import { placeText } from "./place-text";

/** Cells in error are followed back so far, and no more of them in one formula. */
const DEEPEST = 12;
const MOST_ERRORS = 12;

/** What an error says where the formula itself has no sentence for it. */
const GENERAL: Readonly<Record<string, string>> = {
  "#NAME?":
    "a name in the formula is unknown here. If it is one of ours, the formula was typed before the functions were there: press Mend.",
  "#SPILL!": "the result does not fit: clear the cells below and to the right that it needs.",
  "#REF!": "the formula names cells that are not there any more: point it at the cells it is to read.",
  "#DIV/0!": "something is divided by 0 or by an empty cell.",
  "#NUM!": "a number in the formula is out of the range that its function takes.",
  "#N/A": "something that was looked for is not there.",
  "#NULL!": "two ranges in the formula have no cell in common: put a comma or a colon between them.",
  "#VALUE!": "a value in the formula is of the wrong kind.",
  "#BUSY!": "it is still being worked out.",
  "#CALC!": "the spreadsheet cannot work this out, most often because nothing is left to answer.",
};

const errorOf = (cell: HeldCell | undefined): string | undefined =>
  typeof cell?.value === "object" && cell.value !== null ? cell.value.error : undefined;
/** The sentence that came with the error; one that only repeats a code came along from another cell. */
const keptOf = (cell: HeldCell | undefined): string | undefined => {
  const says = typeof cell?.value === "object" && cell.value !== null ? cell.value.says : undefined;
  return says === undefined || says.startsWith("#") ? undefined : says;
};
const oneCell = (place: Place): Block => ({ sheet: place.sheet, row: place.row, column: place.column, rows: 1, columns: 1 });
const key = ({ sheet, row, column }: Place): string => [sheet, row, column].join("\n");

/** An error followed to where it comes from. */
interface Found {
  /** The function's own sentence, undefined where nothing is known beyond the code. */
  readonly says: string | undefined;
  /** What would have to be known to say more. */
  readonly notKnown?: string;
  /** What the call answers now, where that is no error any more. */
  readonly answers?: WorkedCell;
  /** The first cell in error that this one reads, or that one reads, and so back to where it begins. */
  readonly begins?: { readonly at: Place; readonly says: string };
}

/** How one cell after another is followed back. */
interface Following {
  readonly host: CellHost;
  readonly solve: Solve;
  /** What was found of each cell: a formula may name one many times. */
  readonly found: Map<string, Found>;
}

const explained = async (place: Place, following: Following, seen: ReadonlySet<string>): Promise<Found> => {
  const known = following.found.get(key(place));
  if (known !== undefined) return known;
  const found = await explainedAnew(place, following, seen);
  following.found.set(key(place), found);
  return found;
};

/** Explains error cells with the functions of the bundle, from the formulas and values of the workbook. */
const explainedAnew = async (place: Place, following: Following, seen: ReadonlySet<string>): Promise<Found> => {
  const { host, solve } = following;
  const [spill] = await host.spills([place]);
  const anchor: Place = spill ?? place;
  const [[[held] = []] = [], [[own] = []] = []] = await host.read([oneCell(anchor), oneCell(place)]);
  const tree = held?.formula === undefined ? undefined : formulaTree(held.formula);
  if (tree === undefined) return { says: undefined };
  const parts = treeParts(tree).filter((part): part is CellsPart => part.kind === "cells");
  const isDeep = seen.size >= DEEPEST;
  const blocks = await formulaBlocks(parts, anchor.sheet, host);
  const read = await host.read(blocks);
  const cells = new Map<FormulaTree, WorkedRows>();
  let begins: Found["begins"];
  let errors = 0;
  let index = 0;
  for (const [which, part] of parts.entries()) {
    const block = blocks[which];
    if (block === undefined) continue;
    const rows: WorkedCell[][] = [];
    for (const [down, row] of (read[index] ?? []).entries()) {
      const worked: WorkedCell[] = [];
      for (const [right, cell] of row.entries()) {
        const code = errorOf(cell);
        if (code === undefined) {
          worked.push(cell.value as WorkedCell);
          continue;
        }
        const at: Place = { sheet: block.sheet, row: block.row + down, column: block.column + right };
        errors += 1;
        const from =
          isDeep || errors > MOST_ERRORS || seen.has(key(at)) ? undefined : await explained(at, following, new Set([...seen, key(at)]));
        const says = from?.says ?? keptOf(cell) ?? `${placeText(at)} shows ${code}`;
        begins ??= from?.begins ?? (from?.says === undefined ? undefined : { at, says: from.says });
        worked.push({ code, message: says });
      }
      rows.push(worked);
    }
    cells.set(part, rows);
    index += 1;
  }
  const offset = { row: place.row - anchor.row, column: place.column - anchor.column };
  const found = sentenceOf(tree, (part) => cells.get(part), solve, offset);
  // Where only the spreadsheet works the formula out, the sentence that came with the error speaks.
  const says = found.says ?? (found.answers === undefined ? keptOf(own) : undefined);
  return { ...found, says, ...(begins === undefined ? {} : { begins }) };
};

const sayingOf = (cell: WorkedCell | undefined): string | undefined =>
  isErrorCell(cell) && cell.message !== "" ? cell.message : undefined;
const firstSaying = (rows: WorkedRows): string | undefined => rows.flat().map(sayingOf).find((says) => says !== undefined);

const sentenceOf = (
  tree: FormulaTree,
  cellsOf: (part: FormulaTree) => WorkedRows | undefined,
  solve: Solve,
  offset: { readonly row: number; readonly column: number },
): Found => {
  const whole = workedOut(tree, cellsOf, solve);
  if (isKnown(whole)) {
    const cell = whole[offset.row]?.[offset.column];
    return isErrorCell(cell) ? { says: sayingOf(cell) } : { says: undefined, ...(cell === undefined ? {} : { answers: cell }) };
  }
  // What only the spreadsheet works out stands around our calls and their cells: the first of them in error is the one that speaks.
  for (const part of treeParts(tree)) {
    if (part.kind !== "cells" && (part.kind !== "call" || ourFunction(part.name) === undefined)) continue;
    const worked: Worked = workedOut(part, cellsOf, solve);
    const says = isKnown(worked) ? firstSaying(worked) : undefined;
    if (says !== undefined) return { says };
  }
  const ours = treeParts(tree).some((part) => part.kind === "call" && ourFunction(part.name) !== undefined);
  return { says: undefined, ...(ours ? { notKnown: whole.notKnown } : {}) };
};

/** Why a cell shows an error, in a sentence, worked out again from the workbook; undefined for a cell without one. */
export const why = async (place: Place, host: CellHost, solve: Solve): Promise<string | undefined> => {
  const [[[cell] = []] = []] = await host.read([oneCell(place)]);
  const code = errorOf(cell);
  if (code === undefined) return undefined;
  // The spreadsheet's own words for these say more than the call would: it was not made, or its answer not shown.
  const isHosts = code === "#NAME?" || code === "#SPILL!" || code === "#BUSY!";
  const found: Found = isHosts ? { says: undefined } : await explained(place, { host, solve, found: new Map() }, new Set([key(place)]));
  const where = `${placeText(place)} shows ${code}: `;
  const { begins } = found;
  if (found.says !== undefined)
    return (
      where +
      found.says +
      (begins === undefined || found.says.includes(begins.says) ? "" : `. It begins at ${placeText(begins.at)}: ${begins.says}`)
    );
  if (begins !== undefined) return `${where}it begins at ${placeText(begins.at)}: ${begins.says}`;
  if (found.notKnown !== undefined) {
    return (
      `${where}what the function of ${NAMESPACE} says depends on ${found.notKnown}, which only the sheet works out. Put that into ` +
      `a cell of its own and name the cell in the formula; then its sentence stands here.`
    );
  }
  if (found.answers !== undefined)
    return `${where}worked out again it answers ${JSON.stringify(found.answers)}. Recalculate all, under Mend.`;
  return where + (GENERAL[code] ?? "the spreadsheet's own error; its help says what it stands for.");
};
