import { isBadRow } from "../solver/bad-row";
import type { Exact } from "../solver/length/exact";
import { type Length, lengthOf, type Unit } from "../solver/length/length";
import { type Failed, failed, folded, type Given, type GivenCells, givenFor, isEmpty, isEmptyOrZero, isFailed } from "./cells";
import type { Sign } from "./columns";
import type { CellParameter, Declaration, Parameter, RangeParameter } from "./declare";
import { defaultOf, readCell } from "./kinds";
import { ownHeadings } from "./own-headings";
import type { GivenStair } from "./read-stair";
import { readTable } from "./read-table";
import { readExactNumber, readLength, readSize } from "./read-value";
import { say } from "./say";

/** What a call works in: the unit of its bare numbers; undefined where a function has none and its numbers, in inches, say none. */
export interface Context {
  readonly declaration: Declaration;
  readonly unit: Unit | undefined;
  /** The stair tables of the call, by argument: read once, for the unit and for their labels. */
  readonly stairs: Stairs;
}

export type Stairs = ReadonlyMap<string, GivenStair | Failed>;

/** The length that a word stands for where the argument has words. */
const lengthInWords = (cell: Given, parameter: CellParameter, unit: Unit | undefined): Length | undefined => {
  if (typeof cell !== "string" || parameter.kind !== "length") return undefined;
  const [, length] = Object.entries(parameter.words ?? {}).find(([word]) => folded(word) === folded(cell)) ?? [];
  return length === undefined ? undefined : lengthOf(length, unit ?? "in");
};

/** The value of an argument that takes one cell; undefined means it was left out and nothing stands in for it. */
export const readArgument = (name: string, cells: GivenCells | undefined, parameter: CellParameter, unit: Unit | undefined): unknown => {
  const rows = cells?.length ?? 0;
  const columns = cells?.[0]?.length ?? 0;
  if (rows * columns > 1) return failed(say.oneValue(name, rows, columns));
  const cell = cells?.[0]?.[0] ?? null;
  // An empty cell, which desktop hosts send as 0, is no date.
  const isNoDate = cell === 0 && parameter.kind === "date" && parameter.optional === true;
  if (!isEmpty(cell) && parameter.kind === "length" && parameter.crossed === true) return readSize(name, cell, unit, parameter);
  if (!isEmpty(cell) && !isNoDate) return lengthInWords(cell, parameter, unit) ?? readCell(name, cell, parameter, unit);
  if (parameter.default !== undefined) {
    const value = defaultOf(parameter, unit);
    return parameter.kind === "length" && parameter.crossed === true ? { length: value } : value;
  }
  if (parameter.optional === true || parameter.defaultsTo !== undefined) return undefined;
  return failed(say.missing(name, parameter.says));
};

export const isLeftOut = (cells: GivenCells | undefined): boolean =>
  cells === undefined || (cells.length === 1 && cells[0]?.length === 1 && isEmpty(cells[0][0] ?? null));

/** The value of an argument that takes a range. */
export const readRange = (
  name: string,
  cells: GivenCells | undefined,
  parameter: RangeParameter,
  { declaration, unit, stairs }: Context,
): unknown => {
  if (isLeftOut(cells) || cells === undefined) {
    return parameter.optional === true ? undefined : failed(say.missing(name, parameter.says));
  }
  const [only] = cells;
  if (cells.length === 1 && only?.length === 1 && only[0] !== undefined && isFailed(only[0])) return givenFor(name, only[0]);
  if (parameter.kind === "stair") return stairs.get(name);
  if (parameter.kind === "table") {
    const rows = readTable(name, parameter.table, cells, unit, ownHeadings(declaration.id));
    if (isFailed(rows)) return rows;
    return (parameter.badRows === "refuse" ? rows.find(isBadRow)?.bad : undefined) ?? rows;
  }
  if (parameter.kind === "lengths") return lengthsOf(name, cells, parameter, unit);
  if (parameter.kind === "numbers") return numbersOf(name, cells, parameter.sign);
  return cells;
};

/** Numbers in the shape they were given in; undefined where a cell is empty. */
export interface Numbers {
  readonly rows: readonly (readonly (Exact | undefined)[])[];
}

const numbersOf = (name: string, cells: GivenCells, sign: Sign): Numbers | Failed => {
  const rows = cells.map((row, line) =>
    row.map((cell, column) => {
      const place = row.length > 1 ? `${name}, row ${line + 1}, column ${column + 1}` : `${name}, row ${line + 1}`;
      return isEmpty(cell) ? undefined : readExactNumber(place, cell, sign);
    }),
  );
  const bad = rows.flat().find(isFailed);
  return bad ?? { rows: rows as Numbers["rows"] };
};

/** Lengths in the shape they were given in; undefined where a cell takes no part. */
export interface Lengths {
  readonly rows: readonly (readonly (Length | Failed | undefined)[])[];
}

const lengthsOf = (
  name: string,
  cells: GivenCells,
  parameter: Extract<Parameter, { kind: "lengths" }>,
  unit: Unit | undefined,
): Lengths | Failed => {
  const rows = cells.map((row, line) =>
    row.map((cell) =>
      isEmptyOrZero(cell) && parameter.sign === "positive"
        ? undefined
        : readLength(`${name}, row ${line + 1}`, isEmpty(cell) ? 0 : cell, unit, parameter),
    ),
  );
  const bad = parameter.badCells === "refuse" ? rows.flat().find(isFailed) : undefined;
  return bad ?? (rows.flat().every((cell) => cell === undefined) ? failed(say.emptyOrZero(name)) : { rows });
};
