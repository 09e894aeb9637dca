import { sheetPolicy } from "../serve/page-policy";
import type { Files } from "./hashed-names";

const hostedPage = (page: string): string =>
  page
    .replace("<html ", '<html data-functions="sheet-functions.json" ')
    .replace('<meta charset="utf-8">', `$&\n    <meta http-equiv="Content-Security-Policy" content="${sheetPolicy}">`)
    .replace(' src="functions.js"', ' src="sheet-functions.js"')
    .replace("  </head>", '    <script src="on-site.js" defer></script>\n  </head>');

/**
 * The files with the live sheet as a host has it: its page brings its policy and the script for use without a signal, and loads copies of
 * the two files of functions, since the names that Excel knows them by stay the same from build to build.
 */
export const withHostedSheet = (files: Files, onSite: Buffer): Files => {
  const copyOf = (name: string): Buffer => files.get(name) ?? Buffer.alloc(0);
  return new Map([
    ...files,
    ["index.html", Buffer.from(hostedPage(copyOf("index.html").toString("utf8")))],
    ["sheet-functions.js", copyOf("functions.js")],
    ["sheet-functions.json", copyOf("functions.json")],
    ["on-site.js", onSite],
  ]);
};
