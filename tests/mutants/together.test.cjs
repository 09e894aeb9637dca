// All tests that take part as one file, so that the source is loaded once a mutant and not once a test file.
const fs = require("node:fs");
const path = require("node:path");

const tests = path.resolve(__dirname, "..");
const [, part = "."] = /^src\/solver\/(.+)/.exec(process.env.MUTANTS_IN ?? "") ?? [];

/** What reads the built file, in which there is no mutant, opens a workbook or compares plans for long would only wait. */
const LEFT_OUT = /functions\/(examples|sweep|signatures)|yield\/(three-ways|assignment-model|many-rows)/;
const holds = (name, words) => fs.readFileSync(path.join(tests, name), "utf8").includes(words);
/** Of mutants in the functions alone, the solver's own tests that call none would notice nothing. */
const isApart = (name) => process.env.MUTANTS_IN === "src/functions" && name.startsWith("solver/") && !holds(name, "/functions/");

const testFiles = (folder) =>
  fs
    .readdirSync(path.join(tests, folder), { recursive: true })
    .map((name) => path.posix.join(folder, name.replaceAll("\\", "/")))
    .filter((name) => name.endsWith(".test.ts") && !LEFT_OUT.test(name) && !holds(name, "/host/stand-in") && !isApart(name))
    .sort();

if (process.env.__STRYKER_ACTIVE_MUTANT__ !== undefined) {
  beforeEach(() => {
    if (globalThis.isNoticed) throw new Error("Another test has noticed this mutant.");
  });
}

for (const name of [path.posix.join("solver", part), "functions", "witness"].flatMap(testFiles)) {
  describe(name, () => {
    require(path.join(tests, name));
  });
}
