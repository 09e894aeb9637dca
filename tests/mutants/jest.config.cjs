const { jest } = require("../../package.json");

const [, solver = "**"] = /^src\/solver\/(.+)/.exec(process.env.MUTANTS_IN ?? "") ?? [];

/** Tests that import the source; what reads the built file, opens a workbook or compares plans for long would only wait. */
module.exports = {
  ...jest,
  rootDir: "../..",
  // Named here, as the runner stands in this folder and not where Jest looks.
  testEnvironment: require.resolve("@stryker-mutator/jest-runner/jest-env/node"),
  testMatch: [
    `<rootDir>/tests/solver/${solver}/**/*.test.ts`,
    "<rootDir>/tests/functions/**/*.test.ts",
    "<rootDir>/tests/witness/**/*.test.ts",
  ],
  testPathIgnorePatterns: [
    "node_modules",
    "functions/examples",
    "functions/sweep",
    "functions/signatures",
    "yield/three-ways",
    "yield/assignment-model",
    "yield/many-rows",
    "yield/cutting-plan",
  ],
};
