import { columnName } from "../../sheets/cell-address";
import { blockAddress, type CellBlock } from "../../sheets/cell-blocks";
import type { SheetData } from "../../sheets/sheet-data";
import { COLUMNS, ROWS } from "../formula/formula-tokens";
import { colourOf, type Colours } from "../look/colours";
import { childOf, childrenOf, countOf, isSet, numberOf, type XmlElement } from "../xml-tree";
import { fileBlock } from "./file-block";

/** The digits of the usual font are 7 pixels wide, and a width counts them (ECMA-376-1, 18.3.1.13). */
export const DIGIT = 7;
/** A width is kept in 256ths. */
export const WIDTH_PARTS = 256;
/** A column whose width nobody has set, in pixels, as a live sheet has it. */
export const USUAL_WIDTH = 88;
const MOST_PIXELS = 10_000;
/** A stretch of columns to the end of the sheet says nothing of the ones far behind the last cell. */
const COLUMNS_BEHIND = 64;
/** Each is compared with every other. */
const MOST_MERGED = 10_000;

export const pixelsOf = (width: number): number =>
  Math.trunc(((WIDTH_PARTS * width + Math.trunc((WIDTH_PARTS / 2) / DIGIT)) / WIDTH_PARTS) * DIGIT);

type Settings = Omit<SheetData, "name" | "cells">;

const columnSettings = (sheet: XmlElement, used: number): Settings => {
  const widths: Record<string, number> = {};
  const hidden: string[] = [];
  const usual = numberOf(childOf(sheet, "sheetFormatPr")?.attributes["defaultColWidth"]);
  const set = (column: number, width: number | undefined): void => {
    const pixels = width === undefined ? 0 : pixelsOf(width);
    if (pixels > 0) widths[columnName(column)] = Math.min(pixels, MOST_PIXELS);
  };
  if (usual !== undefined && pixelsOf(usual) !== USUAL_WIDTH) for (let column = 0; column < used; column += 1) set(column, usual);
  let steps = 0;
  for (const { attributes: given } of childrenOf(childOf(sheet, "cols"), "col")) {
    const [from, to] = [countOf(given["min"]) ?? 1, countOf(given["max"]) ?? 0];
    const last = Math.min(to, COLUMNS, Math.max(used, from + COLUMNS_BEHIND));
    // Stretches do not meet, so together they have no more columns than there are.
    for (let column = Math.max(from, 1) - 1; column < last && steps < COLUMNS; column += 1) {
      steps += 1;
      set(column, numberOf(given["width"]));
      if (isSet(given["hidden"])) hidden.push(columnName(column));
    }
  }
  return {
    ...(Object.keys(widths).length === 0 ? {} : { columnWidths: widths }),
    ...(hidden.length === 0 ? {} : { hiddenColumns: [...new Set(hidden)] }),
  };
};

const frozen = (sheet: XmlElement): Settings => {
  const view = childOf(childOf(sheet, "sheetViews"), "sheetView");
  const pane = childrenOf(view, "pane").find(({ attributes }) => attributes["state"] === "frozen" || attributes["state"] === "frozenSplit");
  const [rows, columns] = [countOf(pane?.attributes["ySplit"]) ?? 0, countOf(pane?.attributes["xSplit"]) ?? 0];
  return {
    ...(rows > 0 && rows < ROWS ? { frozenRows: rows } : {}),
    ...(columns > 0 && columns < COLUMNS ? { frozenColumns: columns } : {}),
    ...(view !== undefined && view.attributes["showGridLines"] !== undefined && !isSet(view.attributes["showGridLines"])
      ? { hidesGridLines: true as const }
      : {}),
  };
};

const meet = (one: CellBlock, other: CellBlock): boolean =>
  one.row < other.row + other.rows && other.row < one.row + one.rows &&
  one.column < other.column + other.columns && other.column < one.column + one.columns;

const merged = (sheet: XmlElement): Settings => {
  const blocks: CellBlock[] = [];
  for (const { attributes } of childrenOf(childOf(sheet, "mergeCells"), "mergeCell").slice(0, MOST_MERGED)) {
    const block = fileBlock(attributes["ref"] ?? "");
    if (block !== undefined && block.rows * block.columns > 1 && !blocks.some((other) => meet(block, other))) blocks.push(block);
  }
  return blocks.length === 0 ? {} : { merged: blocks.map(blockAddress) };
};

/** What a sheet has besides its cells, its rules and its lists. */
export const readSettings = (sheet: XmlElement, colours: Colours, used: number): Settings => {
  const tabColour = colourOf(childOf(childOf(sheet, "sheetPr"), "tabColor"), colours);
  return { ...columnSettings(sheet, used), ...frozen(sheet), ...merged(sheet), ...(tabColour === undefined ? {} : { tabColour }) };
};
