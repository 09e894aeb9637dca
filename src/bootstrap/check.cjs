const { spawnSync } = require("node:child_process");
const { root, record } = require("./record.cjs");

const jestArguments = process.argv.slice(2);

const steps = [
  ["build", ["src/bootstrap/build.cjs"]],
  ["types", ["node_modules/typescript/lib/tsc.js", "-b"]],
  ["lint", ["node_modules/eslint/bin/eslint.js", "--config", "tests/architecture/eslint.config.cjs", "src", "tests"]],
  [
    "import rules",
    ["node_modules/dependency-cruiser/bin/dependency-cruise.mjs", "--config", "tests/architecture/imports.cjs", "src", "tests"],
  ],
  ["tests", ["node_modules/jest/bin/jest.js", ...jestArguments]],
];

const main = () => {
  const began = performance.now();
  for (const [name, args] of steps) {
    console.log(`\n== ${name}`);
    const { status, signal } = spawnSync(process.execPath, args, { cwd: root, stdio: "inherit" });
    if (status !== 0) {
      console.error(`\nStopped at the step "${name}" (${signal ?? `code ${status}`}). The message above says why.`);
      return 1;
    }
  }
  const took = performance.now() - began;
  record("test", took);
  console.log(`\nAll steps passed in ${(took / 1000).toFixed(1)} s: ${steps.map(([name]) => name).join(", ")}.`);
  return 0;
};

process.exitCode = main();
