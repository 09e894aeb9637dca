import "./idle-callback";
import "./message-channel";
import { createContext, runInContext } from "node:vm";
import type { FunctionsJson } from "../function-metadata";
import { type HeadlessWorkbook, headlessWorkbook } from "../headless-workbook";
import { standIn } from "../stand-in";

/** The text of the built functions.js and of functions.json: all a workbook knows of our functions. */
export interface BuiltFunctions {
  readonly bundle: string;
  readonly metadata: FunctionsJson;
}

/** Whoever has a plan of a cutting job, both as plain data; what a cell would plan is worked out when it is asked for. */
export type OutsidePlanner = (job: unknown, inACell: () => unknown) => unknown;

export interface NodeWorkbook extends HeadlessWorkbook {
  /** Takes cutting plans from elsewhere from now on. */
  readonly planOutside: (planner: OutsidePlanner) => void;
}

/** Opens an empty workbook on Node; the built functions run where there is nothing but the language and the stand-in. */
export const openWorkbook = ({ bundle, metadata }: BuiltFunctions): NodeWorkbook => {
  const built = standIn();
  const context = createContext({ CustomFunctions: built.CustomFunctions }, { codeGeneration: { strings: false, wasm: false } });
  runInContext(bundle, context, { filename: "functions.js" });
  const { treadsheetPlanOutside } = context as { readonly treadsheetPlanOutside?: NodeWorkbook["planOutside"] };
  return { ...headlessWorkbook(metadata, built), planOutside: (planner) => treadsheetPlanOutside?.(planner) };
};
