import path from "node:path";
import { type Drawing, drawnCall, drawnCalls, drawnSays, type HeardCall, isDrawn, isOurs } from "../drawing/plans/drawn-call";
import { stairTable } from "../drawing/plans/stair-table";
import { cellAddress, cellPlace } from "../sheets/cell-address";
import { isFileFault } from "../workbook-file/file-fault";
import { type ReadWorkbook, readWorkbookFile } from "../workbook-file/read-workbook-file";
import { formulaTokens, isCall } from "../workbook-file/formula/formula-tokens";
import { type BuiltFunctions, heardName, type NodeWorkbook, openWorkbook } from "../workbook/node/open-workbook";
import type { CellValue } from "../workbook/workbook";
import { DATA_VERSION, isSoundSheet, workbookData } from "../workbook/workbook-data";
import type { DrawAsked } from "./command-line";
import { refusing } from "./recalc";
import { refusal } from "./refusal";
import { bytesOf, writeWhole } from "./written-file";

/** The cell whose formula answers in a cell: itself, or where a spill over it begins. */
const anchorOf = (book: NodeWorkbook, sheet: string, address: string): string => {
  const { row, column } = cellPlace(address);
  const block = book.spills(sheet).find((one) =>
    row >= one.row && row < one.row + one.rows && column >= one.column && column < one.column + one.columns);
  return block === undefined ? address : cellAddress(block);
};

/** A workbook and the calls heard in it so far. */
interface HeardBook {
  readonly book: NodeWorkbook;
  readonly heard: HeardCall[];
}

/** A formula that calls our functions by their second names. */
const heardFormula = (formula: string): string => {
  const tokens = formulaTokens(formula.replace(/^=/, ""));
  return `=${tokens.map(({ text }, at) => (isCall(tokens, at) && isOurs(text) ? heardName(text) : text)).join("")}`;
};

/** The calls that a formula makes of functions with drawings. */
const callsOf = async (formula: string, sheet: string, { book, heard }: HeardBook, free: string): Promise<readonly HeardCall[]> => {
  // In a cell that nothing reads, so that the calls heard are the formula's own.
  book.setCell(sheet, free, heardFormula(formula));
  await book.settled();
  return heard;
};

const drawingsAt = async (asked: DrawAsked, { sheets }: ReadWorkbook, hearing: HeardBook): Promise<readonly Drawing[] | string> => {
  const { book } = hearing;
  const { file, address } = asked;
  const sheet = sheets.find(({ name }) => name.toLowerCase() === asked.sheet.toLowerCase());
  if (sheet === undefined) {
    throw refusal(`draw: ${file} has no sheet "${asked.sheet}"; it has ${sheets.map(({ name }) => name).join(", ")}`);
  }
  const { name } = sheet;
  const anchor = anchorOf(book, name, address);
  const formula = book.formula(name, anchor);
  const places = Object.keys(sheet.cells).map(cellPlace);
  const [rows, columns] = [Math.max(0, ...places.map(({ row }) => row)) + 1, Math.max(0, ...places.map(({ column }) => column)) + 1];
  const spills = book.spills(name);
  const right = Math.max(columns, ...spills.map((one) => one.column + one.columns));
  if (formula !== undefined) {
    const found = drawnCalls(await callsOf(formula, name, hearing, cellAddress({ row: 0, column: right + 1 })));
    if (found !== undefined) return found;
  }
  const value = (row: number, column: number): CellValue => book.value(name, cellAddress({ row, column }));
  const { row, column } = cellPlace(address);
  const cells = Array.from({ length: rows }, (_, down) => Array.from({ length: columns }, (__, over) => value(down, over)))
    .map((line) => line.map((cell) => (typeof cell === "object" && cell !== null ? null : cell)));
  const table = stairTable(cells, row, column);
  return table === undefined ? `there is no table with a drawing. ${drawnSays()}` : drawnCall("LAYOUT", [table]);
};

const drawn = async (asked: DrawAsked, built: BuiltFunctions, progress: (step: string) => void): Promise<readonly string[]> => {
  const { file, sheet, address, out } = asked;
  progress(`reading ${file}`);
  const heard: HeardCall[] = [];
  const book = openWorkbook(built, (id, cells) => {
    if (isDrawn(id)) heard.push({ id, cells });
  });
  // The engine has its functions together once it has a workbook.
  book.load({ version: DATA_VERSION, sheets: [{ name: "Sheet1", cells: {} }] });
  await book.settled();
  const read = readWorkbookFile(bytesOf(file), { refuses: refusing(book, true, new Map()), isSound: isSoundSheet });
  progress("working it out");
  book.load(workbookData({ version: DATA_VERSION, sheets: read.sheets }));
  await book.settled();
  const found = await drawingsAt(asked, read, { book, heard });
  if (typeof found === "string") throw refusal(`draw: ${sheet}!${address}: ${found}`);
  const [only] = found;
  if (out === undefined) {
    if (found.length === 1 && only !== undefined) return [only.svg];
    const names = found.map(({ name }) => name).join(", ");
    throw refusal(`draw: ${sheet}!${address} has ${found.length} drawings (${names}); say where they go, as in --out stair.svg`);
  }
  const { dir, name: stem, ext } = path.parse(out);
  return found.map(({ name, svg }) => {
    const to = found.length === 1 ? out : path.join(dir, `${stem} ${name}${ext === "" ? ".svg" : ext}`);
    progress(`writing ${to}`);
    writeWhole(to, Buffer.from(`${svg}\n`, "utf8"));
    return to;
  });
};

/** The drawings of the table in a cell, written where that was asked; answers what is to be printed. */
export const draw = async (
  asked: DrawAsked, built: BuiltFunctions, progress: (step: string) => void,
): Promise<readonly string[]> => {
  try {
    return await drawn(asked, built, progress);
  } catch (error) {
    throw isFileFault(error) ? refusal(`${asked.file}: ${error.message}`) : error;
  }
};
