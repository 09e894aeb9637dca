import { cellPlace, columnPlace } from "../sheets/cell-address";
import { COLUMNS, formulaTokens, isCall, isCell, isSheetName, isSign, ROWS, type Token } from "../workbook-file/formula/formula-tokens";

/** A cell of a workbook. */
export interface CellOfBook {
  readonly sheet: string;
  readonly address: string;
}

/** A cell with the block that what it holds takes up. */
export interface BlockOfBook extends CellOfBook {
  readonly rows: number;
  readonly columns: number;
}

/** A formula, and the block its result takes up. */
export interface FormulaOfBook extends BlockOfBook {
  readonly formula: string;
}

/** Cells of a sheet, from the one row and column to the other. */
interface Area {
  readonly sheet: string;
  readonly top: number;
  readonly bottom: number;
  readonly left: number;
  readonly right: number;
}

const COLUMN = /^\$?[A-Z]{1,3}$/i;
const ROW = /^\$?[1-9]\d{0,6}$/;

type Corner = Omit<Area, "sheet">;

/** A corner of a reference: a cell, and before or behind a colon a whole column or row too. */
const corner = (text: string, isWhole: boolean): Corner | undefined => {
  const bare = text.replaceAll("$", "").toUpperCase();
  if (isCell(text)) {
    const { row, column } = cellPlace(bare);
    return { top: row, bottom: row, left: column, right: column };
  }
  if (isWhole && COLUMN.test(text)) return { top: 0, bottom: ROWS - 1, left: columnPlace(bare), right: columnPlace(bare) };
  return isWhole && ROW.test(text) ? { top: Number(bare) - 1, bottom: Number(bare) - 1, left: 0, right: COLUMNS - 1 } : undefined;
};

const sheetOf = (token: Token | undefined): string =>
  token?.kind === "quoted" ? token.text.slice(1, -1).replaceAll("''", "'") : (token?.text ?? "");

const areasIn = ({ sheet: own, formula }: FormulaOfBook): readonly Area[] => {
  const tokens = formulaTokens(formula.replace(/^=/, ""));
  const areas: Area[] = [];
  let sheet = own;
  for (let at = 0; at < tokens.length; at += 1) {
    const isRange = isSign(tokens[at + 1], ":");
    if (isSheetName(tokens, at) && !(isRange && isSign(tokens[at - 1], "!"))) {
      sheet = sheetOf(tokens[at]);
      at += isSign(tokens[at + 1], "!") ? 1 : 3;
      continue;
    }
    const from = isCall(tokens, at) ? undefined : corner(tokens[at]?.text ?? "", isRange);
    // Bid!A1:Bid!A3 says the sheet twice.
    const last = isSheetName(tokens, at + 2) && isRange ? at + 4 : at + 2;
    const to = from && isRange && !isCall(tokens, last) ? corner(tokens[last]?.text ?? "", true) : undefined;
    if (from !== undefined) {
      const other = to ?? from;
      areas.push({
        sheet: sheet.toLowerCase(), top: Math.min(from.top, other.top), bottom: Math.max(from.bottom, other.bottom),
        left: Math.min(from.left, other.left), right: Math.max(from.right, other.right),
      });
      if (to !== undefined) at = last;
    }
    if (!isSign(tokens[at], "!")) sheet = own;
  }
  return areas;
};

/** An area with the formulas that read it, until they are found. */
interface Read extends Area {
  readonly formulas: FormulaOfBook[];
  isFound: boolean;
}

/** Half of the rows of the one above, and so on down to one row; what is read of all its rows stands in it. */
interface Rows {
  areas: Read[];
  upper?: Rows;
  lower?: Rows;
}

const noRows = (): Rows => ({ areas: [] });

const put = (rows: Rows, first: number, count: number, area: Read): void => {
  if (area.top <= first && area.bottom >= first + count - 1) {
    rows.areas.push(area);
    return;
  }
  const half = count / 2;
  if (area.top < first + half) put((rows.upper ??= noRows()), first, half, area);
  if (area.bottom >= first + half) put((rows.lower ??= noRows()), first + half, half, area);
};

/** Takes out the areas that have cells of another in them. */
const taken = (rows: Rows | undefined, first: number, count: number, area: Area, found: Read[]): void => {
  if (rows === undefined || area.top >= first + count || area.bottom < first) return;
  rows.areas = rows.areas.filter((one) => {
    if (!one.isFound && one.left <= area.right && one.right >= area.left) {
      one.isFound = true;
      found.push(one);
    }
    return !one.isFound;
  });
  taken(rows.upper, first, count / 2, area, found);
  taken(rows.lower, first + count / 2, count / 2, area, found);
};

const blockArea = ({ sheet, address, rows, columns }: BlockOfBook): Area => {
  const { row, column } = cellPlace(address);
  return { sheet: sheet.toLowerCase(), top: row, bottom: row + rows - 1, left: column, right: column + columns - 1 };
};

const areaKey = ({ sheet, top, bottom, left, right }: Area): string => [sheet, top, bottom, left, right].join("!");

/** Answers the formulas that read a block, each formula's each area once. */
const readersOf = (formulas: readonly FormulaOfBook[]): ((block: BlockOfBook) => readonly FormulaOfBook[]) => {
  const known = new Map<string, Read>();
  const sheets = new Map<string, Rows>();
  for (const formula of formulas) {
    for (const area of areasIn(formula)) {
      const key = areaKey(area);
      const same = known.get(key) ?? { ...area, formulas: [], isFound: false };
      same.formulas.push(formula);
      if (known.has(key)) continue;
      known.set(key, same);
      const rows = sheets.get(area.sheet) ?? noRows();
      sheets.set(area.sheet, rows);
      put(rows, 0, ROWS, same);
    }
  }
  return (block) => {
    const [area, found] = [blockArea(block), [] as Read[]];
    taken(sheets.get(area.sheet), 0, ROWS, area, found);
    return found.flatMap((one) => one.formulas);
  };
};

export const keyOf = ({ sheet, address }: CellOfBook): string => `${sheet}!${address}`;

/** The formulas that read one of these blocks themselves. */
export const readers = (blocks: readonly BlockOfBook[], formulas: readonly FormulaOfBook[]): ReadonlySet<string> => {
  const of = readersOf(formulas);
  return new Set(blocks.flatMap((block) => of(block).map(keyOf)));
};

/** Every formula that rests on one of these cells, straight or by others, as far as references say so; the cells themselves left out. */
export const dependants = (kept: readonly BlockOfBook[], formulas: readonly FormulaOfBook[]): readonly CellOfBook[] => {
  const of = readersOf(formulas);
  const known = new Set(kept.map(keyOf));
  const found: CellOfBook[] = [];
  const open: BlockOfBook[] = [...kept];
  for (let block = open.pop(); block !== undefined; block = open.pop()) {
    for (const one of of(block)) {
      if (known.has(keyOf(one))) continue;
      known.add(keyOf(one));
      found.push({ sheet: one.sheet, address: one.address });
      open.push(one);
    }
  }
  const order = new Map(formulas.map((one, at) => [keyOf(one), at]));
  return found.sort((one, other) => (order.get(keyOf(one)) ?? 0) - (order.get(keyOf(other)) ?? 0));
};
