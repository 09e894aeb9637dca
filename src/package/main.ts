import { catalogue } from "../functions/catalogue";
import { exportedName } from "./exported-name";
import { scriptFunction } from "./script-function";
import { TreadsheetError } from "./treadsheet-error";

/** All that a script gets; what the package writes beside it, src/generate makes of the same declarations. */
export const exported: Readonly<Record<string, unknown>> = {
  TreadsheetError,
  ...Object.fromEntries(catalogue.map((declaration) => [exportedName(declaration), scriptFunction(declaration)])),
};
