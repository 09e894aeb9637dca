const { jest } = require("../../package.json");

module.exports = {
  ...jest,
  rootDir: "../..",
  // As a path, because Stryker's runner looks for a name from its own folder.
  testEnvironment: require.resolve("./noticing-environment.cjs"),
  testMatch: ["<rootDir>/tests/mutants/together.test.cjs"],
};
