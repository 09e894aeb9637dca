import { readFileSync } from "node:fs";
import path from "node:path";
import type { FunctionsJson } from "../workbook/function-metadata";
import type { BuiltFunctions } from "../workbook/node/open-workbook";
import { refusal } from "./refusal";

/** What the build made of our functions: it lies beside the command. */
export const builtFunctions = (folder: string): BuiltFunctions => {
  const read = (name: string): string => readFileSync(path.join(folder, name), "utf8");
  try {
    return { bundle: read("functions.js"), metadata: JSON.parse(read("functions.json")) as FunctionsJson };
  } catch (error) {
    const why = error instanceof Error ? error.message : String(error);
    throw refusal(`The built functions are not beside this command (${why}). Build again.`);
  }
};
