/** @jest-environment ./tests/workbook/engine-environment.cjs */
import { DRAWN } from "../../src/drawing/plans/drawn-call";
import { drawnCell } from "../../src/pane/drawn-cell";
import { type CellsPart, formulaBlocks } from "../../src/pane/formula-blocks";
import { type FormulaTree, formulaTree, treeParts } from "../../src/pane/formula/formula-tree";
import { sheetFunctions } from "../../src/pane/formula/sheet-functions";
import { workedOut, type WorkedRows } from "../../src/pane/formula/worked-out";
import type { CellHost, HeldCells } from "../../src/pane/host";
import { cellPlace } from "../../src/sheets/cell-address";
import { readyWorkbooks } from "../../src/sheets/ready-workbooks";
import type { SheetData } from "../../src/sheets/sheet-data";
import { standIn } from "../../src/workbook/stand-in";
import { associated } from "../host/stand-in";
import { closeWorkbooks, openedData } from "../workbook/opened-workbook";
import { standingHost } from "./standing-host";

afterEach(closeWorkbooks);

const functions = associated();
const solve = (id: string, args: readonly unknown[]): unknown => {
  const found = functions.get(id);
  if (found === undefined) throw standIn().error("#NAME?", `no function ${id}`);
  return found(...args);
};

const CALLS = new RegExp(`STAIR[.](${DRAWN.join("|")})[(]`);

interface FormulaCell {
  readonly sheet: string;
  readonly address: string;
  readonly formula: string;
}

/** The cells whose formula calls a function with drawings. */
const drawable = (sheets: readonly SheetData[]): readonly FormulaCell[] =>
  sheets.flatMap(({ name, cells }) => Object.entries(cells).flatMap(([address, { formula = "" }]) =>
    (CALLS.test(formula) ? [{ sheet: name, address, formula }] : [])));

const valuesOf = (cells: HeldCells): WorkedRows =>
  cells.map((row) => row.map(({ value }) => (typeof value === "object" && value !== null ? { code: value.error, message: "" } : value)));

/** What a formula comes to as the pane works it out, and as the sheet shows it. */
const both = async ({ sheet, address, formula }: FormulaCell, host: CellHost) => {
  const tree = formulaTree(formula);
  if (tree === undefined) throw new Error(`${formula} cannot be read`);
  const parts = treeParts(tree).filter((part): part is CellsPart => part.kind === "cells");
  const read = await host.read(await formulaBlocks(parts, sheet, host));
  const cells = new Map<FormulaTree, WorkedRows>(parts.map((part, which) => [part, valuesOf(read[which] ?? [])]));
  const place = { sheet, ...cellPlace(address) };
  const [spill] = await host.spills([place]);
  const [shown = []] = await host.read([spill ?? { ...place, rows: 1, columns: 1 }]);
  return { worked: workedOut(tree, (part) => cells.get(part), solve, sheetFunctions), shown: valuesOf(shown) };
};

/** A cell as both have it: an empty one is an empty text. */
const plain = (rows: WorkedRows) =>
  rows.map((row) => row.map((cell) => (cell === null ? "" : typeof cell === "object" ? cell.code : cell)));

/** Cells whose own formula makes no drawing of what is typed: the lower flight of the L-shaped stair stands between walls. */
const NONE: Readonly<Record<string, readonly string[]>> = { "demo-l-shaped-stair-millimetres": ["Layout N28"] };

/** The cells of a demo that can be drawn, with the drawings of each. */
const drawnIn = async (sheets: readonly SheetData[]): Promise<Readonly<Record<string, readonly string[]>>> => {
  const workbook = await openedData({ version: 1, sheets });
  const found: Record<string, readonly string[]> = {};
  for (const one of drawable(sheets)) {
    const { cells } = standingHost(workbook, one.sheet, one.address);
    if (cells === undefined) throw new Error("no cells");
    const at = `${one.sheet} ${one.address}`;
    const { worked, shown } = await both(one, cells);
    expect([at, "notKnown" in worked ? worked : plain(worked)]).toEqual([at, plain(shown)]);
    const drawn = await drawnCell({ sheet: one.sheet, ...cellPlace(one.address) }, cells, solve);
    found[at] = Array.isArray(drawn) ? drawn.map(({ name }: { readonly name: string }) => name) : [];
  }
  return found;
};

const demos = readyWorkbooks.filter(({ file }) => file.startsWith("demo-"));

test.each(demos.map(({ file, sheets }) => [file, sheets] as const))(
  "every cell of %s that can be drawn is, and comes to what the sheet shows",
  async (file, sheets) => {
    const found = await drawnIn(sheets());
    expect(Object.keys(found).length).toBeGreaterThan(8);
    expect(Object.keys(found).filter((at) => found[at]?.length === 0)).toEqual(NONE[file] ?? []);
    // One of each kind, by what its formula asks for; the first demo's plan of sticks has two CUTS in it, one of them with a FILTER.
    expect(found["Layout AA7"]).toEqual(["elevation", "stringer", "closed skirt", "open skirt"]);
    expect(found["Layout N8"]).toEqual(["closed skirt", "open skirt"]);
    for (const [at, kind, least] of [["Cut plan J8", "stick", 2], ["Fit AA8", "tread", 2], ["Fit CN8", "riser", 2]] as const) {
      expect(found[at]?.filter((name) => !name.startsWith(kind))).toEqual([]);
      expect(found[at]?.length).toBeGreaterThanOrEqual(least);
    }
  },
);
