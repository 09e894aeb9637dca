import type { ListedFunction } from "./listed-functions";

/** Functions on rows of cells that our sheets call and that Calc got late or has not: ROWS.TAKE for TAKE. Mend puts them in the place. */
export const ROWS_COMPONENT = "rows";
export const ROWS_INTERFACE = "XRows";

/**
 * An argument that may be given several times stands so often: Calc takes an array for single values where it is one of any number of
 * arguments (com.sun.star.sheet.AddIn, sequence of any).
 */
const several = (name: string): readonly string[] => Array.from({ length: MOST }, (_, index) => `${name}${index + 1}`);
const MOST = 16;

const declared = (name: string, description: string, parameters: readonly string[]): ListedFunction => ({
  id: name, name, description,
  parameters: parameters.map((parameter) => ({ name: parameter, description: `As in Excel's ${name}.` })),
  result: { dimensionality: "matrix" },
});

/** What makes the texts of a long formula ones that Calc finds (treadsheet_texts.py): each cell is answered by itself. */
const FOUND: readonly ListedFunction[] = [
  {
    id: "SENT", name: "SENT", description: "A table with what each cell is, as texts for ROWS.CELLS.",
    parameters: [{ name: "table", description: "The table." }], result: { dimensionality: "matrix" },
  },
  {
    id: "CELLS", name: "CELLS", description: "The cells of ROWS.SENT, with texts that Calc finds.",
    parameters: [{ name: "sent", description: "What ROWS.SENT answers.", unoType: "string" }], result: { dimensionality: "scalar" },
  },
];

export const rowsFunctions: readonly ListedFunction[] = [
  ...FOUND,
  declared("CHOOSECOLS", "Some columns of a table, by number.", ["table", ...several("column")]),
  declared("DROP", "A table without its first or last rows and columns.", ["table", "rows", "columns"]),
  declared("FILTER", "The rows of a table for which something is true.", ["table", "include", "ifEmpty"]),
  declared("HSTACK", "Tables beside each other.", several("table")),
  declared("SEQUENCE", "Numbers one after another.", ["rows", "columns", "start", "step"]),
  declared("SORTBY", "The rows of a table in the order of a column.", ["table", "by1", "order1", "by2", "order2", "by3", "order3"]),
  declared("TAKE", "The first or last rows and columns of a table.", ["table", "rows", "columns"]),
  declared("UNIQUE", "The rows of a table, each once.", ["table"]),
  declared("VSTACK", "Tables under each other.", several("table")),
  declared("XLOOKUP", "What stands beside the first cell that is the value, or the last.", [
    "value", "cells", "results", "ifNotFound", "matchMode", "searchMode",
  ]),
  declared("XMATCH", "The place of a value in a row or a column.", ["value", "cells", "mode"]),
];
