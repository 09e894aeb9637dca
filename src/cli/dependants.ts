import { cellPlace, type CellPlace } from "../sheets/cell-address";

/** A cell of a workbook. */
export interface CellOfBook {
  readonly sheet: string;
  readonly address: string;
}

/** A formula, and the block its result takes up. */
export interface FormulaOfBook extends CellOfBook {
  readonly formula: string;
  readonly rows: number;
  readonly columns: number;
}

const TEXTS = /"(?:[^"]|"")*"/g;
const READ = /(?:(?:'((?:[^']|'')+)'|([\p{L}_][\p{L}\p{N}_.]*))!)?\$?([A-Z]{1,3})\$?(\d+)(?::\$?([A-Z]{1,3})\$?(\d+))?(?![\w(])/gu;

interface Area {
  readonly sheet: string;
  readonly from: CellPlace;
  readonly to: CellPlace;
}

const areasIn = ({ sheet, formula }: FormulaOfBook): readonly Area[] =>
  [...formula.replace(TEXTS, '""').matchAll(READ)].map(([, quoted, plain, column = "", row = "", column2 = column, row2 = row]) => {
    const [one, other] = [cellPlace(`${column}${row}`), cellPlace(`${column2}${row2}`)];
    return {
      sheet: quoted?.replaceAll("''", "'") ?? plain ?? sheet,
      from: { row: Math.min(one.row, other.row), column: Math.min(one.column, other.column) },
      to: { row: Math.max(one.row, other.row), column: Math.max(one.column, other.column) },
    };
  });

const reads = (area: Area, { sheet, address, rows, columns }: FormulaOfBook): boolean => {
  if (area.sheet.toLowerCase() !== sheet.toLowerCase()) return false;
  const { row, column } = cellPlace(address);
  return area.from.row < row + rows && area.to.row >= row && area.from.column < column + columns && area.to.column >= column;
};

const keyOf = ({ sheet, address }: CellOfBook): string => `${sheet}!${address}`;

/** Every formula that rests on one of these cells, straight or by others, as far as references say so; the cells themselves left out. */
export const dependants = (kept: readonly CellOfBook[], formulas: readonly FormulaOfBook[]): readonly CellOfBook[] => {
  const areas = new Map(formulas.map((one) => [keyOf(one), areasIn(one)]));
  const found = new Map<string, FormulaOfBook>();
  let wave: readonly FormulaOfBook[] = kept.map((one) => ({ ...one, formula: "", rows: 1, columns: 1 }));
  const known = new Set(kept.map(keyOf));
  while (wave.length > 0) {
    const rests = (one: FormulaOfBook): boolean => (areas.get(keyOf(one)) ?? []).some((area) => wave.some((cell) => reads(area, cell)));
    const next = formulas.filter((one) => !known.has(keyOf(one)) && rests(one));
    for (const one of next) {
      known.add(keyOf(one));
      found.set(keyOf(one), one);
    }
    wave = next;
  }
  return [...found.values()].map(({ sheet, address }) => ({ sheet, address }));
};
