import type { Declaration } from "../functions/declare";
import { exportedName } from "../package/exported-name";

/** The package for `import`: each name of what `require` gets, so that both have the very same functions. */
export const packageModule = (catalogue: readonly Declaration[], required: string): string =>
  [
    `import exported from ${JSON.stringify(required)};`,
    "export const {",
    ...["TreadsheetError", ...catalogue.map(exportedName)].map((name) => `  ${name},`),
    "} = exported;",
    "",
  ].join("\n");
