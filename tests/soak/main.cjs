// A thousand random steps at the page, or as many as asked for: npm run soak -- 5000 [seed]. Prints the seed, and the first step after
// which the sheets are not what was typed.
require("../bench/typescript-hook.cjs");

const path = require("node:path");

globalThis.sheetEngine = require(path.resolve(__dirname, "../../dist/tools/engine.cjs"));
const { builtFunctions } = require("../workbook/opened-workbook.ts");
const { soak } = require("./soak.ts");

const steps = Number(process.argv[2] ?? 1000);
const seed = Number(process.argv[3] ?? Math.floor(Math.random() * 2 ** 31));

const main = async () => {
  if (!Number.isInteger(steps) || steps < 1 || !Number.isInteger(seed)) {
    console.error("Give a whole number of steps and, if you like, a whole number as seed: npm run soak -- 5000 7");
    return 1;
  }
  console.log(`${steps} steps, seed ${seed}`);
  const fault = await soak(globalThis.sheetEngine.openWorkbook(builtFunctions()), steps, seed);
  console.log(fault ?? "After each step the sheets were what was typed.");
  return fault === undefined ? 0 : 1;
};

void main().then((code) => process.exit(code));
