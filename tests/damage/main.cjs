// Ten thousand damaged things of each kind that is read, or as many as asked for: npm run damage -- 10000 [seed] [kind]. Prints the seed,
// what each came to, and each one that came to anything but what can be shown or a sentence.
require("../bench/typescript-hook.cjs");

const { damagedFile, warmed } = require("../workbook-file/damaged-files.ts");
const { outcomeOf } = require("../workbook-file/damage-fault.ts");
const { asking } = require("./addresses.ts");
const { keptOutcome, readingsOutcome } = require("./readings.ts");
const { savedOutcome, tableOutcome } = require("./tables.ts");

const ofChance = (outcome) => (seed) => outcome(warmed(seed));
const kinds = {
  workbooks: (seed) => outcomeOf(damagedFile(seed).bytes),
  tables: ofChance(tableOutcome),
  saved: ofChance(savedOutcome),
  readings: ofChance(readingsOutcome),
  stairs: ofChance(keptOutcome),
  requests: undefined,
};

const given = process.argv.slice(2);
const asked = given.filter((word) => word in kinds);
const [wanted = 10_000, first = Math.floor(Math.random() * 2 ** 31)] = given.filter((word) => !asked.includes(word)).map(Number);
const each = 1000;

const tried = async (kind, outcome) => {
  console.log(`${kind}: ${wanted}, from seed ${first}`);
  const outcomes = new Map();
  let [faults, longest, longestSeed] = [0, 0, 0];
  for (let seed = first; seed < first + wanted; seed += 1) {
    const began = performance.now();
    let came;
    try {
      came = await outcome(seed);
    } catch (error) {
      faults += 1;
      came = "FAULT";
      console.log(`${kind}, seed ${seed}: ${error.stack ?? error}`);
    }
    const took = performance.now() - began;
    if (took > longest) [longest, longestSeed] = [took, seed];
    outcomes.set(came, (outcomes.get(came) ?? 0) + 1);
    if ((seed - first + 1) % each === 0) console.log(`  ${seed - first + 1}, ${faults} faults`);
  }
  for (const [came, count] of [...outcomes].sort((one, other) => other[1] - one[1])) console.log(`  ${came}: ${count}`);
  console.log(`  longest ${Math.round(longest)} ms, seed ${longestSeed}`);
  return faults;
};

const main = async () => {
  if (!Number.isInteger(wanted) || wanted < 1 || !Number.isInteger(first)) {
    const names = Object.keys(kinds).join(", ");
    console.error(`Give a whole number, and if you like one as seed and one of ${names}: npm run damage -- 10000 7 tables`);
    return 1;
  }
  const server = await asking();
  let faults = 0;
  try {
    for (const [kind, outcome = ofChance(server.outcome)] of Object.entries(kinds))
      if (asked.length === 0 || asked.includes(kind)) faults += await tried(kind, outcome);
  } finally {
    await server.close();
  }
  return faults === 0 ? 0 : 1;
};

main().then((code) => (process.exitCode = code));
