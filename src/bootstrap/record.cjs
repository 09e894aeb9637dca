const fs = require("node:fs");
const path = require("node:path");

const root = path.resolve(__dirname, "../..");
const cache = path.join(root, "node_modules", ".cache", "treadsheet");

// How long a step took, for the summary that `npm start` prints.
const record = (step, milliseconds) => {
  fs.mkdirSync(cache, { recursive: true });
  fs.writeFileSync(path.join(cache, `${step}.json`), `${JSON.stringify({ milliseconds: Math.round(milliseconds) })}\n`);
};

module.exports = { root, record };
