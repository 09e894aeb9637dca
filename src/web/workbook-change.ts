import type { CellData, SheetData, WorkbookData } from "../workbook/workbook-data";

/** What a sheet has besides its cells and its name. */
type SheetSettings = Omit<SheetData, "name" | "cells">;

/** What became of one sheet: only what is different now. */
interface SheetChange {
  readonly name: string;
  /** By address; null for a cell that is empty now. */
  readonly cells?: Readonly<Record<string, CellData | null>>;
  readonly settings?: SheetSettings;
}

/** What became of a workbook from one moment to another, small enough to be kept with every edit. */
export interface WorkbookChange {
  /** The names of all its sheets in order, where sheets came, went, moved or have another name. */
  readonly order?: readonly string[];
  /** A sheet that is new stands here whole. */
  readonly sheets: readonly SheetChange[];
}

const same = (one: unknown, other: unknown): boolean => JSON.stringify(one) === JSON.stringify(other);

const settingsOf = ({ name: _name, cells: _cells, ...settings }: SheetData): SheetSettings => settings;

/** The cells that are different, of those asked for. */
export const cellsBetween = (
  before: Readonly<Record<string, CellData>>, after: Readonly<Record<string, CellData | undefined>>, asked: Iterable<string>,
): Record<string, CellData | null> => {
  const cells: Record<string, CellData | null> = {};
  for (const address of asked) if (!same(before[address], after[address])) cells[address] = after[address] ?? null;
  return cells;
};

const sheetBetween = (before: SheetData | undefined, after: SheetData): readonly SheetChange[] => {
  const cells = cellsBetween(before?.cells ?? {}, after.cells, new Set([...Object.keys(before?.cells ?? {}), ...Object.keys(after.cells)]));
  const settings = settingsOf(after);
  const change: SheetChange = {
    name: after.name,
    ...(Object.keys(cells).length === 0 ? {} : { cells }),
    ...(before !== undefined && same(settingsOf(before), settings) ? {} : { settings }),
  };
  return Object.keys(change).length === 1 ? [] : [change];
};

/** What has to be done to one workbook to come to the other; undefined where nothing has. */
export const changeBetween = (before: WorkbookData, after: WorkbookData): WorkbookChange | undefined => {
  const [were, are] = [before, after].map(({ sheets }) => sheets.map(({ name }) => name));
  const known = new Map(before.sheets.map((sheet) => [sheet.name, sheet]));
  const sheets = after.sheets.flatMap((sheet) => sheetBetween(known.get(sheet.name), sheet));
  if (same(were, are)) return sheets.length === 0 ? undefined : { sheets };
  return { order: are ?? [], sheets };
};

const changedSheet = (sheet: SheetData, { cells = {}, settings }: SheetChange): SheetData => {
  const kept: Record<string, CellData> = { ...sheet.cells };
  for (const [address, cell] of Object.entries(cells)) {
    if (cell === null) delete kept[address];
    else kept[address] = cell;
  }
  return { ...(settings ?? settingsOf(sheet)), name: sheet.name, cells: kept };
};

/** The workbook after a change. */
export const changed = (data: WorkbookData, { order, sheets }: WorkbookChange): WorkbookData => {
  const known = new Map(data.sheets.map((sheet) => [sheet.name, sheet]));
  for (const change of sheets) known.set(change.name, changedSheet(known.get(change.name) ?? { name: change.name, cells: {} }, change));
  const names = order ?? [...known.keys()];
  return { ...data, sheets: names.flatMap((name) => known.get(name) ?? []) };
};
