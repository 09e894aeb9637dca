const { inCalc, installed, officeFolder, removeFolder } = require("../calc/office.ts");

const cells = 1000;
const rounds = 5;
const middle = (numbers) => [...numbers].sort((a, b) => a - b)[Math.floor(numbers.length / 2)];

/** Seconds that LibreOffice Calc takes to recalculate cells of ours, each a call to the process beside it; the first starts that. */
const calcRows = () => {
  const folder = officeFolder();
  try {
    const at = { sheet: "Bench", row: 0, column: 0 };
    const formulas = Array.from({ length: cells }, (_, row) => ["enter", { ...at, row }, `=STAIR.RISERS(100+ROW()/100)`]);
    const answers = inCalc(folder, installed(folder), [
      ["open"], ...formulas, ["read", { ...at, rows: cells }], ...Array.from({ length: rounds }, () => ["calculate"]),
    ]);
    const shown = answers[1 + cells];
    if (!shown.every(([value]) => typeof value === "number")) throw new Error("A cell of the bench shows no number.");
    return [[`${cells} cells of RISERS`, `${middle(answers.slice(-rounds)).toFixed(2)} s`]];
  } finally {
    removeFolder(folder);
  }
};

module.exports = { calcRows };
