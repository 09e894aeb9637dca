import { readFileSync } from "node:fs";
import path from "node:path";
import type { FunctionsJson } from "../../src/workbook/function-metadata";
import type { Workbook } from "../../src/workbook/workbook";
import type { CellData, PlainValue, WorkbookData } from "../../src/workbook/workbook-data";

const dist = path.resolve(__dirname, "../../dist");

interface Built {
  readonly bundle: string;
  readonly metadata: FunctionsJson;
}

const { openWorkbook } = (globalThis as unknown as { readonly sheetEngine: { readonly openWorkbook: (built: Built) => Workbook } })
  .sheetEngine;

export const builtFunctions = (): Built => ({
  bundle: readFileSync(path.join(dist, "functions.js"), "utf8"),
  metadata: JSON.parse(readFileSync(path.join(dist, "functions.json"), "utf8")) as FunctionsJson,
});

type Cells = Readonly<Record<string, PlainValue | CellData>>;

/** Sheets by name; a text that starts with = is a formula. */
export const dataOf = (sheets: Readonly<Record<string, Cells>>): WorkbookData => ({
  version: 1,
  sheets: Object.entries(sheets).map(([name, cells]) => ({
    name,
    cells: Object.fromEntries(
      Object.entries(cells).map(([address, cell]) => {
        if (typeof cell === "object") return [address, cell];
        return [address, typeof cell === "string" && cell.startsWith("=") ? { formula: cell } : { value: cell }];
      }),
    ),
  })),
});

const opened: Workbook[] = [];

export const openedData = async (data: WorkbookData, built: Built = builtFunctions()): Promise<Workbook> => {
  const workbook = openWorkbook(built);
  opened.push(workbook);
  workbook.load(data);
  await workbook.settled();
  // Whatever a test opens has been worked out twice: the engine keeps things from one calculation for the next.
  workbook.recalculate();
  await workbook.settled();
  return workbook;
};

export const openedWorkbook = (sheets: Readonly<Record<string, Cells>>, built: Built = builtFunctions()): Promise<Workbook> =>
  openedData(dataOf(sheets), built);

/** Functions of a test's own in the place of the built ones, written as the built file is. */
export const ownFunctions = (functions: Readonly<Record<string, string>>, ...ranges: readonly string[]): Built => ({
  bundle: Object.entries(functions)
    .map(([id, solve]) => `CustomFunctions.associate(${JSON.stringify(id)}, ${solve});`)
    .join("\n"),
  metadata: {
    functions: Object.keys(functions).map((id) => ({
      id,
      name: id,
      parameters: ["first", "second"].map((name) => ({ name, dimensionality: ranges.includes(id) ? "matrix" : "scalar", optional: true })),
    })),
  },
});

export const closeWorkbooks = (): void => {
  for (const workbook of opened.splice(0)) workbook.dispose();
};
