import { pagePolicy, sheetPolicy } from "../serve/page-policy";
import type { Files } from "./hashed-names";

/** A page with its policy and the script for use without a signal. */
const onSitePage = (page: string, policy: string): string =>
  page
    .replace('<meta charset="utf-8">', `$&\n    <meta http-equiv="Content-Security-Policy" content="${policy}">`)
    .replace("  </head>", '    <script src="on-site.js" defer></script>\n  </head>');

const hostedPage = (page: string): string =>
  onSitePage(page, sheetPolicy)
    .replace("<html ", '<html data-functions="sheet-functions.json" ')
    .replace(' src="functions.js"', ' src="sheet-functions.js"');

/**
 * The files with the live sheet and the reading screen as a host has them: each page brings its policy and the script for use without a
 * signal, and the sheet loads copies of the two files of functions, since the names that Excel knows them by stay the same from build to
 * build.
 */
export const withHostedSheet = (files: Files, onSite: Buffer): Files => {
  const copyOf = (name: string): Buffer => files.get(name) ?? Buffer.alloc(0);
  return new Map([
    ...files,
    ["index.html", Buffer.from(hostedPage(copyOf("index.html").toString("utf8")))],
    ["at-stair.html", Buffer.from(onSitePage(copyOf("at-stair.html").toString("utf8"), pagePolicy))],
    ["sheet-functions.js", copyOf("functions.js")],
    ["sheet-functions.json", copyOf("functions.json")],
    ["on-site.js", onSite],
  ]);
};
