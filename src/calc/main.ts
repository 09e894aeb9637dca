import { readdirSync, readFileSync, statSync, writeFileSync } from "node:fs";
import path from "node:path";
import { version } from "../../package.json";
import { extension } from "./extension";
import type { ListedFunction } from "./listed-functions";

const FILE = "treadsheet.oxt";

const dist = path.resolve(__dirname, "..");
const components = path.resolve(__dirname, "../../src/calc/component");
const [, , folder = dist] = process.argv;

const built = (name: string): Uint8Array => new Uint8Array(readFileSync(path.join(dist, name)));

/** The files of a folder and of those in it, by their path in it. */
const filesIn = (inFolder: string, before = ""): readonly (readonly [name: string, bytes: Uint8Array])[] =>
  readdirSync(inFolder).sort().flatMap((name) => {
    const file = path.join(inFolder, name);
    if (statSync(file).isDirectory()) return name === "__pycache__" ? [] : filesIn(file, `${before}${name}/`);
    return [[before + name, new Uint8Array(readFileSync(file))] as const];
  });

const { functions } = JSON.parse(readFileSync(path.join(dist, "functions.json"), "utf8")) as { functions: readonly ListedFunction[] };

const bytes = extension({
  functions, version,
  carried: {
    ...Object.fromEntries(filesIn(components)),
    "functions.js": built("functions.js"),
    "functions.json": built("functions.json"),
    "answers.js": built("tools/answers.js"),
    "third-party-notices.txt": built("third-party-notices.txt"),
    "LICENSE": new Uint8Array(readFileSync(path.resolve(__dirname, "../../LICENSE"))),
  },
});
writeFileSync(path.join(folder, FILE), bytes);
const written = path.relative(process.cwd(), path.join(folder, FILE));
console.log(`Wrote ${written}: ${functions.length} functions, ${Math.round(bytes.length / 1000)} kB.`);
