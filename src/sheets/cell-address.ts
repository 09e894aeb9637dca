/** A cell by its place, both counted from 0. */
export interface CellPlace {
  readonly row: number;
  readonly column: number;
}

const LETTERS = 26;
const FIRST_LETTER = "A".charCodeAt(0);
const ADDRESS = /^([A-Z]{1,3})([1-9]\d{0,6})$/;

export const columnName = (column: number): string =>
  (column < LETTERS ? "" : columnName(Math.floor(column / LETTERS) - 1)) + String.fromCharCode(FIRST_LETTER + (column % LETTERS));

export const columnPlace = (name: string): number =>
  [...name].reduce((place, letter) => place * LETTERS + letter.charCodeAt(0) - FIRST_LETTER + 1, 0) - 1;

export const cellAddress = ({ row, column }: CellPlace): string => `${columnName(column)}${row + 1}`;

export const cellPlace = (address: string): CellPlace => {
  const [, letters, digits] = ADDRESS.exec(address.replace(/[$]/g, "").toUpperCase()) ?? [];
  if (letters === undefined || digits === undefined) throw new Error(`address: must be one cell such as B7, got "${address}"`);
  return { row: Number(digits) - 1, column: columnPlace(letters) };
};
