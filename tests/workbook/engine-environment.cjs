const path = require("node:path");
const { TestEnvironment } = require("jest-environment-node");

const engine = path.resolve(__dirname, "../../dist/tools/engine.cjs");

// The engine is loaded once in a process, outside the tests' own world: it is large, and some of its packages do not load inside.
module.exports = class extends TestEnvironment {
  async setup() {
    await super.setup();
    this.global.sheetEngine = require(engine);
  }
};
