import { mergedReadings } from "../../src/readings/merged-readings";
import type { ReadingSet, ReadStep } from "../../src/readings/reading-set";
import { ownJob } from "../../src/sheets/job/own-job";
import { furtherStair } from "../../src/sheets/job/started-job";
import type { CellData, SheetData } from "../../src/sheets/sheet-data";
import { type Stair, stairsIn } from "../../src/web/fit-readings";
import type { CellValue } from "../../src/workbook/workbook";

/** A workbook that shows what is stored, and of formulas and spills what it is told. */
const bookOf = (sheets: readonly SheetData[], worked: Readonly<Record<string, CellValue>> = {}) => {
  const stored = (sheet: string, address: string): CellData | undefined => sheets.find(({ name }) => name === sheet)?.cells[address];
  return {
    data: () => ({ version: 1 as const, sheets }),
    value: (sheet: string, address: string) => worked[`${sheet}!${address}`] ?? stored(sheet, address)?.value ?? null,
    format: (sheet: string, address: string) => stored(sheet, address)?.format ?? "General",
  };
};

const MINE: SheetData = {
  name: "Mine",
  cells: {
    A1: { value: "Treads as taped, in" },
    A2: { value: "step" }, B2: { value: "run" }, C2: { value: "back" }, D2: { value: "front" },
    A3: { value: 1 }, B3: { formula: "=10" }, C3: { value: 36, format: "# ??/16" }, D3: { format: "@" },
    F1: { formula: "=STAIR.TREADFIT(A2:D5)" },
  },
};

const set = (...treads: readonly ReadStep[]): ReadingSet => ({ job: "", unit: "in", tape: 16, taken: "2026-03-04", treads, risers: [] });
const step = (number: number, read: Readonly<Record<string, number>>): ReadStep => ({ step: number, read, kept: false });

const putsOf = (stair: Stair | undefined, readings: ReadingSet) => {
  if (stair === undefined) throw new Error("no stair");
  const steps = mergedReadings(stair.readings, readings);
  if ("says" in steps) throw new Error(steps.says);
  return stair.puts(steps);
};

test("a reading is put as typing would put it: a number under the mark it needs, a text in a cell of texts", () => {
  const [stair] = stairsIn(bookOf([MINE], { "Mine!B3": 10 }));
  expect(putsOf(stair, set(step(1, { back: 36.65625, front: 36.5 })))).toEqual({
    // 36 21/32 in a cell of sixteenths.
    C3: { value: 36.65625, format: "# ??/32" },
    D3: { value: "36 1/2" },
  });
});

test("a cell with a formula, or one that another's spill fills, is not put", () => {
  const [stair] = stairsIn(bookOf([MINE], { "Mine!B3": 10, "Mine!D3": 36 }));
  expect(putsOf(stair, set(step(1, { run: 11, back: 36, front: 35 })))).toEqual({});
});

test("a step without a row is put with its number into the next free one, and none below the table", () => {
  const [stair] = stairsIn(bookOf([MINE], { "Mine!B3": 10 }));
  // The table ends in row 5.
  expect(putsOf(stair, set(step(4, { back: 36 }), step(5, { back: 37 }), step(6, { back: 38 })))).toEqual({
    A4: { value: 4 }, C4: { value: 36 }, A5: { value: 5 }, C5: { value: 37 },
  });
});

test("an error in a cell is shown by its code", () => {
  const [stair] = stairsIn(bookOf([MINE], { "Mine!B3": { error: "#N/A" } }));
  expect(stair?.readings.parts.treads?.[0]?.cells["run"]).toEqual({ value: "#N/A", isFormula: true });
});

test("each stair of a workbook is known by its own job; a sheet that reads no Job has none", () => {
  const asked = { unit: "in", code: "irc-2021", totalRise: 105, run: 10, width: 36, openEnd: "none" } as const;
  const first = ownJob({ ...asked, job: "Front stair" });
  const { sheets } = furtherStair(ownJob({ ...asked, job: "Back stair" }), first.map(({ name }) => name));
  expect(stairsIn(bookOf([...first, ...sheets, MINE])).map(({ sheet, job }) => [sheet, job]))
    .toEqual([["Fit", "Front stair"], ["Fit 2", "Back stair"], ["Mine", undefined]]);
});
