import { mkdirSync, readdirSync, readFileSync, writeFileSync } from "node:fs";
import { join, resolve } from "node:path";
import { version } from "../../package.json";
import { catalogue } from "../functions/catalogue";
import { CAUTION } from "../functions/caution";
import * as tables from "../functions/tables";
import { PROFILES } from "../solver/code/profiles";
import { codeReference } from "./code-reference";
import { documentPage, pageName } from "./document";
import { functionsJson } from "./functions-json";
import { packageModule } from "./package-module";
import { packageTypes } from "./package-types";
import { reference } from "./reference";
import { signatures } from "./signatures";

const FOR_SCRIPTS = "--package";
const [, , folder = "dist", signaturesFile] = process.argv.filter((given) => given !== FOR_SCRIPTS);
const allTables = Object.values(tables);

/** Beside functions.cjs, which the build bundles: the same for `import`, and the types of both. */
const forScripts = {
  "tools/package/functions.mjs": packageModule(catalogue, "./functions.cjs"),
  "tools/package/functions.d.cts": packageTypes(catalogue, tables, version, CAUTION),
  "tools/package/functions.d.mts": 'export * from "./functions.cjs";\n',
};

mkdirSync(folder, { recursive: true });
const pages = reference(catalogue, tables, version, CAUTION);
const codes = codeReference(PROFILES, version, CAUTION);
const project = resolve(__dirname, "../..");
const documents = readdirSync(join(project, "docs")).filter((name) => name.endsWith(".md")).map((name) => join("docs", name));
const documentPages = [...documents, "CHANGELOG.md"].map((name) =>
  [pageName(name), documentPage(readFileSync(join(project, name), "utf8"))] as const);
const written = {
  ...Object.fromEntries(documentPages),
  "functions.json": `${JSON.stringify(functionsJson(catalogue), null, 1)}\n`,
  "reference.html": pages.html,
  "reference.md": pages.markdown,
  "codes.html": codes.html,
  "codes.md": codes.markdown,
  ...(process.argv.includes(FOR_SCRIPTS) ? forScripts : {}),
};
for (const [name, text] of Object.entries(written)) writeFileSync(join(folder, name), text);
if (signaturesFile !== undefined) {
  writeFileSync(signaturesFile, signatures(catalogue, allTables.filter((table) => table !== tables.stair), tables.stair));
}
