// Plants mutants, one at a time, and counts those that no test notices:
// npm run mutants -- [lines] [seed] [--in src/solver/fit] [--own] [--static].
// Two mutants a line on the average. With --in, of the solver's tests only those of that folder take part, and the sample is of it alone;
// with --own too, no others do, which is several times as quick and notices no more than all of them.
const path = require("node:path");
const { pathToFileURL } = require("node:url");
const sampledLines = require("./sampled-lines.cjs");

const root = path.resolve(__dirname, "../..");
const given = process.argv.slice(2);
const at = given.indexOf("--in");
const folder = at < 0 ? "src" : given[at + 1];
const [lines = 300, seed = 1] = given.filter((argument, place) => !argument.startsWith("--") && (at < 0 || place !== at + 1)).map(Number);
process.env.MUTANTS_IN = folder;
process.env.MUTANTS_BY = given.includes("--own") ? "own" : "all";

/** Where the share lies with 95 % certainty: Wilson 1927. */
const wilson = (found, all) => {
  const z = 1.96;
  const share = found / all;
  const middle = share + (z * z) / (2 * all);
  const half = z * Math.sqrt((share * (1 - share)) / all + (z * z) / (4 * all * all));
  return [middle - half, middle + half].map((limit) => `${Math.round((100 * limit) / (1 + (z * z) / all))} %`).join(" to ");
};

// A mutant with which the tests cannot even be loaded, Stryker's RuntimeError, is noticed by that.
const NOTICED = ["Killed", "Timeout", "RuntimeError"];
const MISSED = ["Survived", "NoCoverage"];

const print = (mutants) => {
  const files = (name) => path.relative(root, name).replaceAll("\\", "/");
  const folders = new Map();
  for (const mutant of mutants) {
    if (![...NOTICED, ...MISSED].includes(mutant.status)) continue;
    const part = files(mutant.fileName).split("/").slice(0, 3).filter((part) => !part.endsWith(".ts")).join("/");
    for (const name of [part, "all"]) folders.set(name, [...(folders.get(name) ?? []), mutant]);
  }
  console.log("\nfolder, noticed of planted, share, between");
  for (const [name, all] of [...folders].sort(([one], [other]) => one.localeCompare(other))) {
    const noticed = all.filter(({ status }) => NOTICED.includes(status)).length;
    console.log(`${name}: ${noticed} of ${all.length}, ${Math.round((100 * noticed) / all.length)} %, ${wilson(noticed, all.length)}`);
  }
  console.log("\nNot noticed; tests/mutants/survivors.md has a word for each that is known:");
  for (const { fileName, location, mutatorName, replacement, status } of mutants) {
    if (MISSED.includes(status))
      console.log(
        `${files(fileName)}:${location.start.line} ${mutatorName}: ` +
          `${String(replacement).replace(/\s+/g, " ").slice(0, 100)}${status === "NoCoverage" ? " (no test comes here)" : ""}`,
      );
  }
};

const main = async () => {
  if (folder === undefined || !Number.isInteger(lines) || lines < 1 || !Number.isInteger(seed) || seed < 0) {
    console.error("Give a whole number of lines and, if you like, a whole number as seed: npm run mutants -- 300 7");
    return 1;
  }
  process.chdir(root);
  const { Stryker } = await import(pathToFileURL(require.resolve("@stryker-mutator/core")).href);
  const mutants = await new Stryker({
    mutate: sampledLines(root, folder, lines, seed),
    testRunner: "jest",
    plugins: ["@stryker-mutator/jest-runner", path.join(__dirname, "each-mutant.mjs")],
    jest: { projectType: "custom", configFile: "tests/mutants/jest.config.cjs", enableFindRelatedTests: false },
    coverageAnalysis: "perTest",
    // Words of sentences are no arithmetic; a test on each would be the sentence again.
    mutator: { excludedMutations: ["StringLiteral"] },
    ignorePatterns: ["dist", "hosted", "docs", "tests/browser"],
    tempDirName: ".mutants",
    concurrency: Number(process.env.MUTANTS_AT_ONCE ?? 2),
    reporters: ["each-mutant"],
    checkers: [],
    disableTypeChecks: true,
    warnings: false,
    allowEmpty: true,
    // What is worked out when a file is loaded takes every test again for each mutant: a night's work, with --static.
    ignoreStatic: !given.includes("--static"),
    dryRunTimeoutMinutes: 60,
    // Only what never ends runs out of time; loading the tests takes a while that Stryker does not count.
    timeoutMS: 90000,
  }).runMutationTest();
  print(mutants);
  return 0;
};

main().then((code) => (process.exitCode = code));
