import { devDependencies } from "../../package.json";

/** A package that is part of what is delivered. */
export interface Licence {
  readonly name: keyof typeof devDependencies;
  readonly version: string;
  readonly licence: string;
  readonly serves: string;
}

const licence = (name: Licence["name"], terms: string, serves: string): Licence => ({
  name,
  version: devDependencies[name],
  licence: terms,
  serves,
});

const SHEET = "the sheet of the local page";
const FILES = "workbook files of the local page";

/** The packages delivered, with their licences as each package states its own. */
export const licences: readonly Licence[] = [
  licence("decimal.js", "MIT", "exact lengths and money"),
  licence("fastest-levenshtein", "MIT", "the nearest word to a misspelt one"),
  licence("@microsoft/office-js", "Microsoft's own terms, in its LICENSE file", "loaded from Microsoft, in Excel only"),
  licence("@univerjs/core", "Apache-2.0", SHEET),
  licence("@univerjs/data-validation", "Apache-2.0", SHEET),
  licence("@univerjs/engine-formula", "Apache-2.0", SHEET),
  licence("@univerjs/find-replace", "Apache-2.0", SHEET),
  licence("@univerjs/preset-sheets-core", "Apache-2.0", SHEET),
  licence("@univerjs/sheets", "Apache-2.0", SHEET),
  licence("@univerjs/sheets-conditional-formatting", "Apache-2.0", SHEET),
  licence("@univerjs/sheets-data-validation", "Apache-2.0", SHEET),
  licence("@univerjs/sheets-data-validation-ui", "Apache-2.0", SHEET),
  licence("@univerjs/sheets-filter", "Apache-2.0", SHEET),
  licence("@univerjs/sheets-filter-ui", "Apache-2.0", SHEET),
  licence("@univerjs/sheets-find-replace", "Apache-2.0", SHEET),
  licence("@univerjs/sheets-formula", "Apache-2.0", SHEET),
  licence("@univerjs/sheets-numfmt", "Apache-2.0", SHEET),
  licence("@univerjs/sheets-sort", "Apache-2.0", SHEET),
  licence("@univerjs/sheets-sort-ui", "Apache-2.0", SHEET),
  licence("fflate", "MIT", FILES),
  licence("highs", "MIT", "the long search of the command line"),
  licence("numfmt", "MIT", SHEET),
  licence("papaparse", "MIT", FILES),
  licence("saxes", "ISC", FILES),
];
