// All tests that take part as one file, so that the source is loaded once a mutant and not once a test file.
const fs = require("node:fs");
const path = require("node:path");

const tests = path.resolve(__dirname, "..");
const [, part = "."] = /^src\/solver\/(.+)/.exec(process.env.MUTANTS_IN ?? "") ?? [];

/** What opens a workbook or compares plans for long would only wait. */
const LEFT_OUT = /functions\/(examples|sweep|signatures)|yield\/(three-ways|assignment-model|many-rows)/;

const textOf = (name) => fs.readFileSync(path.join(tests, name), "utf8");
/** The built file holds no mutant and is not there: what calls it takes no part. */
const readsBuiltFile = (name) => textOf(name).includes("/host/stand-in");
/** Of mutants in the functions alone, the solver's own tests that call none would notice nothing. */
const isApart = (name) => process.env.MUTANTS_IN === "src/functions" && name.startsWith("solver/") && !textOf(name).includes("/functions/");
/** Many drawn cases take long; most mutants are noticed before, by a case of its own. */
const drawsCases = (name) => textOf(name).includes('from "fast-check"');

const testFiles = (folder) =>
  fs
    .readdirSync(path.join(tests, folder), { recursive: true })
    .map((name) => path.posix.join(folder, name.replaceAll("\\", "/")))
    .filter((name) => name.endsWith(".test.ts") && !LEFT_OUT.test(name) && !readsBuiltFile(name) && !isApart(name))
    .sort();

if (process.env.__STRYKER_ACTIVE_MUTANT__ !== undefined) {
  beforeEach(() => {
    if (globalThis.isNoticed) throw new Error("Another test has noticed this mutant.");
  });
}

const others = process.env.MUTANTS_BY === "own" ? [] : ["functions", "witness"];
const files = [path.posix.join("solver", part), ...others].flatMap(testFiles);
for (const name of [...files.filter((file) => !drawsCases(file)), ...files.filter(drawsCases)]) {
  describe(name, () => {
    require(path.join(tests, name));
  });
}
