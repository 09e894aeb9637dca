// A thousand random steps at the page, or as many as asked for: npm run soak -- 5000 [seed]. Prints the seed, and the first step after
// which the sheets are not what was typed. With job behind the seed it is a whole job's workbook, from Start my job on: readings taken in,
// files saved, opened and worked out by the command too; its last file is kept, to be opened elsewhere.
require("../bench/typescript-hook.cjs");

const { mkdtempSync } = require("node:fs");
const { tmpdir } = require("node:os");
const path = require("node:path");

globalThis.sheetEngine = require(path.resolve(__dirname, "../../dist/tools/engine.cjs"));
const { builtFunctions } = require("../workbook/opened-workbook.ts");
const { jobLife } = require("./job-life.ts");
const { soak } = require("./soak.ts");

const steps = Number(process.argv[2] ?? 1000);
const seed = Number(process.argv[3] ?? Math.floor(Math.random() * 2 ** 31));
const isJob = process.argv[4] === "job";

const opened = () => globalThis.sheetEngine.openWorkbook(builtFunctions());

const ofJob = async () => {
  const folder = mkdtempSync(path.join(tmpdir(), "treadsheet-soak-"));
  const { fault, file, counts } = await jobLife({ acts: steps, seed, folder, opened, tell: console.log });
  console.log(Object.entries(counts).map(([kind, count]) => `${kind} ${count}`).join(", "));
  console.log(`The last file: ${file}`);
  return fault;
};

const main = async () => {
  if (!Number.isInteger(steps) || steps < 1 || !Number.isInteger(seed)) {
    console.error("Give a whole number of steps and, if you like, a whole number as seed: npm run soak -- 5000 7, or 1000 7 job");
    return 1;
  }
  console.log(`${steps} steps, seed ${seed}`);
  const fault = isJob ? await ofJob() : await soak(opened(), steps, seed);
  console.log(fault ?? `After each ${isJob ? "hundred acts" : "step"} the sheets were what was typed.`);
  return fault === undefined ? 0 : 1;
};

void main().then((code) => process.exit(code));
