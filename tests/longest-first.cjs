const Sequencer = require("@jest/test-sequencer").default;

// Begun last, one of these would run on alone: what opens a browser or works through a whole sheet many times.
const LONGEST = [
  "browser/index",
  "browser/pane",
  "jobs/demo/planted-errors",
  "browser/taskpane",
  "browser/take-in-readings",
  "browser/at-stair",
  "pane/drawn-workbooks",
  "drawing/",
  "workbook/page",
  "pane/insertion",
  "recorded-plans/",
  "solver/yield/cutting-plan",
  "witness/inputs",
  "witness/outputs",
];

const place = ({ path }) => {
  const found = LONGEST.findIndex((name) => path.replaceAll("\\", "/").includes(`/tests/${name}`));
  return found < 0 ? LONGEST.length : found;
};

/** The longest test files first, also in a fresh clone, where Jest has no times of an earlier run to go by. */
module.exports = class extends Sequencer {
  sort(tests) {
    return [...super.sort(tests)].sort((a, b) => place(a) - place(b));
  }
};
