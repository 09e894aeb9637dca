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

/** Opens an empty workbook on Node; the built functions run where there is nothing but the language and the stand-in. */
export const openWorkbook = ({ bundle, metadata }: BuiltFunctions): HeadlessWorkbook => {
  const built = standIn();
  const context = createContext({ CustomFunctions: built.CustomFunctions }, { codeGeneration: { strings: false, wasm: false } });
  runInContext(bundle, context, { filename: "functions.js" });
  return headlessWorkbook(metadata, built);
};
