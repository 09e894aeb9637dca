const { TestEnvironment } = require("jest-environment-node");

/** Leaves word for the tests after it that one has failed: a mutant needs to be noticed but once. */
module.exports = class extends TestEnvironment {
  async handleTestEvent({ name }) {
    if (name === "test_fn_failure" || name === "hook_failure") this.global.isNoticed = true;
  }
};
