import type { CellData } from "../../src/workbook/workbook-data";
import type { Step } from "./soak-steps";

interface PlainSheet {
  readonly name: string;
  readonly cells: Readonly<Record<string, CellData>>;
}

/** The sheets as a list of what was typed, and what they were before each step that can be undone. */
export interface PlainModel {
  readonly sheets: readonly PlainSheet[];
  readonly before: readonly (readonly PlainSheet[])[];
  /** How many sheets ever had a name, so that none has one twice. */
  readonly named: number;
}

export const sheetAt = ({ sheets }: PlainModel, which: number): PlainSheet => {
  const sheet = sheets[which % sheets.length];
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

/** The model after a step. */
export const stepped = (model: PlainModel, step: Step): PlainModel => {
  const { sheets, before, named } = model;
  const done = (next: readonly PlainSheet[], more = 0): PlainModel => ({ sheets: next, before: [...before, sheets], named: named + more });
  const inSheet = (which: number, change: (cells: PlainSheet["cells"]) => PlainSheet["cells"]): PlainModel => {
    const asked = sheetAt(model, which);
    return done(sheets.map((sheet) => (sheet === asked ? { ...sheet, cells: change(sheet.cells) } : sheet)));
  };
  switch (step.kind) {
    case "type":
      return inSheet(step.which, (cells) => ({ ...cells, [step.address]: cellOf(step.typed) }));
    case "clear":
      return inSheet(step.which, (cells) => without(cells, step.address));
    case "put":
      return inSheet(step.which, (cells) => ({ ...cells, ...Object.fromEntries(step.cells.map(([at, value]) => [at, { value }])) }));
    case "undo":
      return before.length === 0 ? model : { sheets: before.at(-1) ?? sheets, before: before.slice(0, -1), named };
    case "add":
      return done([...sheets, { name: nextName(model), cells: { A1: cellOf(step.typed) } }], 1);
    case "rename":
      return done(sheets.map((sheet) => (sheet === sheetAt(model, step.which) ? { ...sheet, name: nextName(model) } : sheet)), 1);
    case "remove":
      return sheets.length === 1 ? model : done(sheets.filter((sheet) => sheet !== sheetAt(model, step.which)));
    case "pause":
      return model;
    // What was done before a page was opened cannot be undone in it.
    case "reload":
    case "kill":
      return { ...model, before: [] };
  }
};
