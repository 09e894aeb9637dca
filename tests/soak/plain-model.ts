import type { CellData } from "../../src/workbook/workbook-data";
import { type PlainTable, rowsFiltered, rowsInserted, rowsRemoved, rowsSorted, tableData, tableOf } from "./plain-table";
import type { Step } from "./soak-steps";

interface PlainSheet extends PlainTable {
  readonly name: string;
  readonly isTable: boolean;
}

/** The sheets as a list of what was typed, and what they were before each step that can be undone. */
export interface PlainModel {
  readonly sheets: readonly PlainSheet[];
  readonly before: readonly (readonly PlainSheet[])[];
  /** How many sheets ever had a name, so that none has one twice. */
  readonly named: number;
}

const roundAbout = (sheets: readonly PlainSheet[], which: number): PlainSheet | undefined => sheets[which % sheets.length];

const ofKind = ({ sheets }: PlainModel, isTable: boolean): readonly PlainSheet[] => sheets.filter((sheet) => sheet.isTable === isTable);

/** A sheet on which formulas are typed; there is always one. */
export const sheetAt = (model: PlainModel, which: number): PlainSheet => {
  const sheet = roundAbout(ofKind(model, false), which);
  if (sheet === undefined) throw new Error("a workbook without sheets");
  return sheet;
};

/** A table, where there is one. */
export const tableAt = (model: PlainModel, which: number): PlainSheet | undefined => roundAbout(ofKind(model, true), which);

/** A sheet that may be taken away, where there is one. */
export const removableAt = (model: PlainModel, which: number): PlainSheet | undefined => {
  const sheet = roundAbout(model.sheets, which);
  return sheet?.isTable === false && ofKind(model, false).length === 1 ? undefined : sheet;
};

export const anyAt = ({ sheets }: PlainModel, which: number): PlainSheet => {
  const sheet = roundAbout(sheets, which);
  if (sheet === undefined) throw new Error("a workbook without sheets");
  return sheet;
};

const cellOf = (typed: string | number): CellData =>
  typeof typed === "string" && typed.startsWith("=") ? { formula: typed } : { value: typed };

const without = (cells: PlainSheet["cells"], address: string): PlainSheet["cells"] => {
  const { [address]: _, ...rest } = cells;
  return rest;
};

export const nextName = ({ named }: PlainModel): string => `Sheet ${named + 1}`;

export const plainSheet = (name: string, cells: PlainSheet["cells"]): PlainSheet => ({ name, isTable: false, cells, over: {} });

const filled = (cells: readonly (readonly [string, string | number])[]): PlainSheet["cells"] =>
  Object.fromEntries(cells.map(([at, value]) => [at, { value }]));

const withoutSheet = (model: PlainModel, which: number, done: (next: readonly PlainSheet[]) => PlainModel): PlainModel => {
  const gone = removableAt(model, which);
  return gone === undefined ? model : done(model.sheets.filter((sheet) => sheet !== gone));
};

/** The model after a step. */
export const stepped = (model: PlainModel, step: Step): PlainModel => {
  const { sheets, before, named } = model;
  const done = (next: readonly PlainSheet[], more = 0): PlainModel => ({ sheets: next, before: [...before, sheets], named: named + more });
  const inSheet = (which: number, change: (cells: PlainSheet["cells"]) => PlainSheet["cells"]): PlainModel => {
    const asked = sheetAt(model, which);
    return done(sheets.map((sheet) => (sheet === asked ? { ...sheet, cells: change(sheet.cells) } : sheet)));
  };
  /** A table as it is afterwards; undefined where nothing comes of the step. */
  const inTable = (which: number, change: (table: PlainTable) => PlainTable | undefined): PlainModel => {
    const asked = tableAt(model, which);
    const next = asked === undefined ? undefined : change(asked);
    if (asked === undefined || next === undefined) return model;
    const { name, isTable } = asked;
    return done(sheets.map((sheet) => (sheet === asked ? { name, isTable, ...next } : sheet)));
  };
  switch (step.kind) {
    case "type":
      return inSheet(step.which, (cells) => ({ ...cells, [step.address]: cellOf(step.typed) }));
    case "clear":
      return inSheet(step.which, (cells) => without(cells, step.address));
    case "put":
      return inSheet(step.which, (cells) => ({ ...cells, ...filled(step.cells) }));
    case "undo":
      return before.length === 0 ? model : { sheets: before.at(-1) ?? sheets, before: before.slice(0, -1), named };
    case "add":
      return done([...sheets, plainSheet(nextName(model), { A1: cellOf(step.typed) })], 1);
    case "table":
      return done([...sheets, { name: nextName(model), isTable: true, ...tableOf(tableData("")) }], 1);
    case "fill":
      return inTable(step.which, (table) => ({ ...table, cells: { ...table.cells, ...filled(step.cells) } }));
    case "insert":
      return inTable(step.which, (table) => rowsInserted(table, step.row, step.count));
    case "take":
      return inTable(step.which, (table) => rowsRemoved(table, step.row, step.count));
    case "sort":
      return inTable(step.which, (table) => rowsSorted(table, step.column, step.isUp));
    case "filter":
      return inTable(step.which, (table) => rowsFiltered(table, step.column, step.keeps));
    case "show all":
      return inTable(step.which, ({ filter, ...table }) => (filter === undefined ? undefined : table));
    case "rename":
      return done(sheets.map((sheet) => (sheet === anyAt(model, step.which) ? { ...sheet, name: nextName(model) } : sheet)), 1);
    case "remove":
      return withoutSheet(model, step.which, done);
    case "pause":
      return model;
    // What was done before a page was opened cannot be undone in it.
    case "reload":
    case "kill":
      return { ...model, before: [] };
  }
};
