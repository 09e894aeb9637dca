/** @jest-environment ./tests/workbook/engine-environment.cjs */
import { catalogue } from "../../src/functions/catalogue";
import type { Declaration } from "../../src/functions/declare";
import { words } from "../../src/solver/words";
import { columnsOf } from "../../src/sheets/result-looks";
import { cellAddress } from "../../src/sheets/cell-address";
import type { Ask } from "../../src/pane/insertion";
import { inserted, takenBack } from "../../src/pane/insertion";
import { laidOut } from "../../src/pane/laid-out";
import type { Workbook } from "../../src/workbook/workbook";
import { closeWorkbooks, openedWorkbook } from "../workbook/opened-workbook";
import type { CellHost } from "../../src/pane/host";
import { standingHost } from "./standing-host";

const SIGNIFICANT = 10;
const AT = { row: 1, column: 1 };

afterEach(closeWorkbooks);

/** The width of the engine's columns in pixels, where nobody has set one. */
const USUAL = 88;

/** The height of its rows, alike. */
const USUAL_HEIGHT = 22;

/** What is stored but for sizes: a column that was made wider says how wide it is again. */
const cellsOf = (workbook: Workbook) => workbook.data().sheets.map(({ columnWidths: _, rowHeights: __, ...sheet }) => sheet);

const declared = (id: string): Declaration => {
  const found = catalogue.find((one) => one.id === id);
  if (found === undefined) throw new Error(`no function ${id}`);
  return found;
};

const never: Ask = async (text) => {
  throw new Error(`asked: ${text}`);
};
const rounded = (cell: unknown): unknown => (typeof cell === "number" ? Number(cell.toPrecision(SIGNIFICANT)) : cell);

const resultOf = (workbook: Workbook, declaration: Declaration): unknown[][] => {
  const { formula } = laidOut(declaration, AT);
  return workbook.spill("Mine", cellAddress(formula)).map((row) => row.map(rounded));
};

/** Columns as wide as their names and numbers, no length as text where it is a number, no long tail of decimals. */
const readsWell = (workbook: Workbook, declaration: Declaration): void => {
  const { cells, widths } = laidOut(declaration, AT);
  expect(workbook.columnWidths("Mine", 1, widths.length)).toEqual(widths.map((width) => Math.max(width, USUAL)));
  for (const [down, row] of cells.entries()) {
    for (const column of row.keys()) {
      const address = cellAddress({ row: AT.row + down, column: AT.column + column });
      const shown = workbook.shown("Mine", address).trim();
      const held = row[column]?.value;
      const [value, ...beside] = [...row.keys()].slice(column).map((right) =>
        workbook.value("Mine", cellAddress({ row: AT.row + down, column: AT.column + right })));
      // What something stands beside is cut off where its column ends; sentences of Arial have some 0.45 of the size of the type a letter.
      const lines = workbook.look("Mine", address).wrap ? Math.floor((workbook.rowHeights("Mine", AT.row + down, 1)[0] ?? 0) / 20) : 1;
      const isAlone = beside.every((one) => one === null || one === "");
      if (typeof value === "string" && value.length > 20 && (lines > 1 || !isAlone))
        expect([value, value.length * 0.45 * 14.67 <= lines * (widths[column] ?? 0)]).toEqual([value, true]);
      if (typeof held === "string") expect([held, /^\d+(?:[ -]\d+\/\d+)?"?$/.test(held)]).toEqual([held, false]);
      if (typeof workbook.value("Mine", address) !== "number" || workbook.format("Mine", address) === "General") continue;
      // Digits of Arial are 0.556 of the size of the type, 11 points or 14.67 pixels, and a point half of that; 6 pixels are free.
      expect([shown, shown.length * 0.5 * 14.67 + 6 <= (widths[column] ?? 0)]).toEqual([shown, true]);
      expect(shown).not.toMatch(/\.\d{5}/);
    }
  }
};

/** A column of notes is at least 200 pixels wide and its cells wrap, the heading does not; no other column is wider than 280 for words. */
const notesWrap = (workbook: Workbook, declaration: Declaration): void => {
  if (declaration.result.kind !== "table") return;
  const { formula } = laidOut(declaration, AT);
  const rows = workbook.spill("Mine", cellAddress(formula));
  for (const [column, key] of Object.keys(declaration.result.columns).entries()) {
    const [width = 0] = workbook.columnWidths("Mine", formula.column + column, 1);
    if (key === "note") expect([declaration.id, width >= 200]).toEqual([declaration.id, true]);
    const doWrap = rows.map((_, row) =>
      workbook.look("Mine", cellAddress({ row: formula.row + row, column: formula.column + column })).wrap === true);
    const isLong = rows.some((row) => String(row[column]).length > 60);
    if (key === "note" || isLong) expect([declaration.id, key, doWrap.slice(1)]).toEqual([declaration.id, key, doWrap.slice(1).fill(true)]);
  }
};

describe(
  "inserted with its arguments laid out, the first example that answers comes out as it is " + "stated, and undone nothing is left of it:",
  () => {
    test.each(catalogue.map((declaration) => [declaration.id, declaration] as const))("%s", async (_, declaration) => {
      const workbook = await openedWorkbook({ Mine: { A1: "mine" } });
      const before = cellsOf(workbook);
      const { cells } = standingHost(workbook, "Mine", "B2");
      const { says, left } = await inserted(declaration, cells, never);
      expect(says).toMatch(new RegExp(`^${declaration.id} inserted at Mine B2`));
      const rows = resultOf(workbook, declaration);
      const example = declaration.examples.find((one) => !("fails" in one));
      if (example !== undefined && "gives" in example) {
        expect(rows).toEqual((typeof example.gives === "object" ? example.gives : [[example.gives]]).map((row) => row.map(rounded)));
      } else if (example !== undefined && "shows" in example) {
        const [headings = [], ...data] = rows;
        for (const wanted of example.shows) {
          const row = Object.fromEntries(Object.entries(wanted).map(([heading, cell]) => [words(heading), rounded(cell)]));
          expect(data.map((each) => Object.fromEntries(each.map((cell, column) => [String(headings[column]), cell])))).toContainEqual(
            expect.objectContaining(row),
          );
        }
      }
      readsWell(workbook, declaration);
      notesWrap(workbook, declaration);
      if (left === undefined) throw new Error("nothing to undo");
      expect((await takenBack(left, cells, never)).says).toMatch(new RegExp(`^The insert of ${declaration.id} is undone`));
      expect(cellsOf(workbook)).toEqual(before);
      expect(new Set(workbook.rowHeights("Mine", 0, 60))).toEqual(new Set([USUAL_HEIGHT]));
    });
  },
);

test("a note of 90 letters has three lines or more, its row their height, and the rows beside it are left", async () => {
  const workbook = await openedWorkbook({ Mine: { A1: "mine" } });
  const { left } = await inserted(declared("ORDER"), standingHost(workbook, "Mine", "B2").cells, never);
  const { formula, cells, widths } = laidOut(declared("ORDER"), AT);
  const column = Object.keys(columnsOf(declared("ORDER"))).indexOf("note");
  // A column of 280 pixels takes 42 letters of 0.45 times 14.67 pixels.
  expect(widths[column]).toBe(280);
  const notes = workbook.spill("Mine", cellAddress(formula)).map((row) => String(row[column] ?? ""));
  const heights = workbook.rowHeights("Mine", formula.row, notes.length);
  expect(notes.some((note) => note.length > 42)).toBe(true);
  for (const [row, note] of notes.entries()) {
    if (note.length > 60) expect([note, (heights[row] ?? 0) >= 2 * 18]).toEqual([note, true]);
    if (note.length < 20) expect([note, heights[row]]).toEqual([note, USUAL_HEIGHT]);
  }
  // A row that is higher already stays as it is.
  if (left === undefined) throw new Error("nothing to undo");
  await takenBack(left, standingHost(workbook, "Mine", "B2").cells, never);
  workbook.setRowHeights("Mine", formula.row, notes.map(() => 300));
  await inserted(declared("ORDER"), standingHost(workbook, "Mine", "B2").cells, never);
  expect(new Set(workbook.rowHeights("Mine", formula.row, notes.length))).toEqual(new Set([300]));
  expect(cells.length).toBe(formula.row - AT.row + notes.length);
});

test("each argument stands under its name, lengths take 1/2 as a length, and what spills has the formats of its columns", async () => {
  const workbook = await openedWorkbook({ Mine: { A1: "mine" } });
  await inserted(declared("STORYPOLE"), standingHost(workbook, "Mine", "B2").cells, never);
  const names = ["B2", "B3", "B4", "B5", "B6", "B7"].map((address) => workbook.value("Mine", address));
  // The declaration's own order; denominator has no default and is left out.
  expect(names).toEqual(["totalRise", "risers", "below", "unit", "headings", "STORYPOLE"]);
  expect([workbook.format("Mine", "C2"), workbook.format("Mine", "C5")]).toEqual(["# ??/16", "General"]);
  expect(workbook.formula("Mine", "B8")).toBe("=STAIR.STORYPOLE(C2,C3,,C4,C5,C6)");
  // Height of the first mark, under the headings.
  expect([workbook.format("Mine", "C8"), workbook.format("Mine", "C9")]).toEqual(["General", "# ??/16"]);
});

test("what stands in the way is asked about once, left on no, and put back by undo after yes", async () => {
  const workbook = await openedWorkbook({ Mine: { C2: { value: "7-5/8", format: "@" }, D9: "=1+1", Z1: 5 } });
  const before = cellsOf(workbook);
  const { cells } = standingHost(workbook, "Mine", "B2");
  const asked: string[] = [];
  const answer = (yes: boolean): Ask => async (text) => {
    asked.push(text);
    return yes;
  };
  const refused = await inserted(declared("STORYPOLE"), cells, answer(false));
  expect(refused).toEqual({ says: "STORYPOLE was not inserted: what stands at Mine C2 was left." });
  expect(cellsOf(workbook)).toEqual(before);
  const { left } = await inserted(declared("STORYPOLE"), cells, answer(true));
  expect(asked).toEqual(
    Array(2).fill(
      expect.stringMatching(
        /^STORYPOLE takes Mine B2:F\d+\. 2 cells of Mine B2:F\d+ are not empty, Mine C2 first\. Replace what stands there\?$/,
      ),
    ),
  );
  expect(workbook.value("Mine", "B7")).toBe("STORYPOLE");
  if (left === undefined) throw new Error("nothing to undo");
  await takenBack(left, cells, never);
  expect(cellsOf(workbook)).toEqual(before);
  expect(workbook.columnWidths("Mine", 1, 3)).toEqual([USUAL, USUAL, USUAL]);
  expect(workbook.value("Mine", "D9")).toBe(2);
});

test("an argument changed since is not lost to undo without a question", async () => {
  const workbook = await openedWorkbook({ Mine: { A1: "mine" } });
  const { cells } = standingHost(workbook, "Mine", "B2");
  const { left } = await inserted(declared("PITCH"), cells, never);
  if (left === undefined) throw new Error("nothing to undo");
  workbook.setCell("Mine", "C2", "7 1/2");
  await workbook.settled();
  const asked: string[] = [];
  const kept = await takenBack(left, cells, async (text) => {
    asked.push(text);
    return false;
  });
  // The formula's own cell shows another value, not another formula.
  expect(asked).toEqual(["Mine C2 changed since PITCH was inserted. Put back what was there before the insert?"]);
  expect(kept).toEqual({ says: "The insert of PITCH stays.", left });
  expect(workbook.value("Mine", "C2")).toBe(7.5);
});

test("nothing is put into a spilled table, nor past the end of the sheet, nor without a cell", async () => {
  const workbook = await openedWorkbook({ Mine: { B4: "=STAIR.STORYPOLE(31,4)" } });
  const before = workbook.data();
  expect((await inserted(declared("PITCH"), standingHost(workbook, "Mine", "B3").cells, never)).says).toBe(
    "Mine B3:C5 reaches into a table that a formula spills, which would then not fit: select a cell with 3 free rows and 2 free columns.",
  );
  expect((await inserted(declared("PITCH"), standingHost(workbook, "Mine", "B1048575").cells, never)).says).toContain(
    "more than the sheet has: select a cell further up or to the left.",
  );
  expect(
    (await inserted(declared("PITCH"), { ...standingHost(workbook, "Mine", "B3").cells, selected: async () => undefined }, never)).says,
  ).toBe("No cell is selected: select an empty cell of a sheet, then insert again.");
  expect(workbook.data()).toEqual(before);
});

test("a host that refuses to show lengths as on a tape has the insert, and it can be taken back", async () => {
  const workbook = await openedWorkbook({ Mine: { A1: "mine" } });
  const before = cellsOf(workbook);
  const { cells: plain } = standingHost(workbook, "Mine", "B2");
  const cells: CellHost = {
    ...plain,
    insert: async (block) => {
      await plain.write([block]);
      return { takeBack: (before) => cells.write([before]), refused: "the sheet is protected." };
    },
  };
  const { says, left } = await inserted(declared("STORYPOLE"), cells, never);
  expect(says).toContain("Fractions there are not shown in lowest terms: the sheet is protected.");
  if (left === undefined) throw new Error("nothing can be taken back");
  await takenBack(left, cells, never);
  expect(cellsOf(workbook)).toEqual(before);
});
