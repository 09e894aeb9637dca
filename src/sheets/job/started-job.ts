import { freeNames, renamedSheets, sheetText } from "../renamed-sheets";
import type { CellData, SheetData } from "../sheet-data";
import { GATHERED } from "./bid";
import { PLANNED } from "./books";
import { ALL_BOUGHT, YARD_GOODS } from "./cut-plan";
import { type AskedJob, ownJob } from "./own-job";
import { PRICED } from "./takeoff";
import { YARD_GATHERED } from "./yard-places";

/** Sheets that stand once in a workbook, for all its stairs. */
export const SHARED: readonly string[] = ["Yard order", "Bid", "Quote", "Books", "Register"];

/** A formula of the workbook that gathers every stair, and what a further stair adds to it. */
export interface Gathering {
  readonly sheet: string;
  readonly address: string;
  /** Without the equals sign: a table whose headings are left out. */
  readonly adds: string;
}

export interface StartedJob {
  readonly sheets: readonly SheetData[];
  readonly gatherings: readonly Gathering[];
}

const gatheringsOf = (names: ReadonlyMap<string, string>): readonly Gathering[] => {
  const dropped = (sheet: string, address: string): string => `DROP(${sheetText(names.get(sheet) ?? sheet)}!${address}#,1)`;
  return [
    { sheet: "Bid", address: GATHERED, adds: dropped("Takeoff", PRICED) },
    { sheet: "Books", address: PLANNED, adds: dropped("Cut plan", ALL_BOUGHT) },
    { sheet: "Yard order", address: YARD_GATHERED, adds: dropped("Cut plan", YARD_GOODS) },
  ];
};

/** Whether a workbook, by the formulas of its gathering cells, has a job to which a stair can be added. */
export const canGather = (formula: string | undefined): formula is string => /^=VSTACK\(.*\)$/.test(formula ?? "");

/** The gathering formula with a further stair in it. */
export const gathering = (formula: string, adds: string): string => `${formula.slice(0, -1)},${adds})`;

/** Without these no stair can be added to a workbook; the others gather it where they are there. */
const GATHERING_SHEETS: readonly string[] = ["Bid", "Books"];

/** Where Bid and Books gather the stairs of a workbook. */
export const GATHERING_CELLS: readonly { readonly sheet: string; readonly address: string }[] =
  gatheringsOf(new Map()).filter(({ sheet }) => GATHERING_SHEETS.includes(sheet));

/** The sheets of a job as one more stair of a workbook, whose Bid they read, and what the sheets for all stairs then gather. */
export const furtherStair = (job: readonly SheetData[], taken: readonly string[]): StartedJob => {
  const sheets = job.filter(({ name }) => !SHARED.includes(name));
  const names = freeNames(sheets.map(({ name }) => name), taken);
  const isThere = (sheet: string): boolean => GATHERING_SHEETS.includes(sheet) || taken.includes(sheet);
  return { sheets: renamedSheets(sheets, names), gatherings: gatheringsOf(names).filter(({ sheet }) => isThere(sheet)) };
};

/** The sheets of a workbook once Bid and Books gather a further stair. */
export const withGathered = (sheets: readonly SheetData[], gatherings: readonly Gathering[]): readonly SheetData[] =>
  sheets.map((sheet) => {
    const gathered = gatherings.flatMap(({ sheet: name, address, adds }): readonly (readonly [string, CellData])[] => {
      const cell = sheet.cells[address];
      if (name !== sheet.name || cell === undefined || !canGather(cell.formula)) return [];
      return [[address, { ...cell, formula: gathering(cell.formula, adds) }]];
    });
    return gathered.length === 0 ? sheet : { ...sheet, cells: { ...sheet.cells, ...Object.fromEntries(gathered) } };
  });

/**
 * The sheets of a job of one's own for a workbook: every one of them under a name that is free there; or, as a further stair, those of the
 * stair, which read the Bid of the workbook, and what Bid and Books then gather.
 */
export const startedJob = (asked: AskedJob, taken: readonly string[], isFurther: boolean): StartedJob => {
  const sheets = ownJob(asked);
  if (isFurther) return furtherStair(sheets, taken);
  return { sheets: renamedSheets(sheets, freeNames(sheets.map(({ name }) => name), taken)), gatherings: [] };
};
