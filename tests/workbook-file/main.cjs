// Ten thousand damaged files, or as many as asked for: npm run damage -- 10000 [seed]. Prints the seed, how many were refused with which
// sentence, and each one that came to anything but sheets or a sentence.
require("../bench/typescript-hook.cjs");

const { damagedFile } = require("./damaged-files.ts");
const { outcomeOf } = require("./damage-fault.ts");

const wanted = Number(process.argv[2] ?? 10_000);
const first = Number(process.argv[3] ?? Math.floor(Math.random() * 2 ** 31));
const each = 1000;

const main = () => {
  if (!Number.isInteger(wanted) || wanted < 1 || !Number.isInteger(first)) {
    console.error("Give a whole number of files and, if you like, a whole number as seed: npm run damage -- 10000 7");
    return 1;
  }
  console.log(`${wanted} damaged files, from seed ${first}`);
  const outcomes = new Map();
  let [faults, longest, longestSeed] = [0, 0, 0];
  for (let seed = first; seed < first + wanted; seed += 1) {
    const { how, bytes } = damagedFile(seed);
    const began = performance.now();
    let outcome;
    try {
      outcome = outcomeOf(bytes);
    } catch (error) {
      faults += 1;
      outcome = "FAULT";
      console.log(`seed ${seed}, ${how}: ${error.stack ?? error}`);
    }
    const took = performance.now() - began;
    if (took > longest) [longest, longestSeed] = [took, seed];
    outcomes.set(outcome, (outcomes.get(outcome) ?? 0) + 1);
    if ((seed - first + 1) % each === 0) console.log(`${seed - first + 1} files, ${faults} faults`);
  }
  for (const [outcome, count] of [...outcomes].sort((one, other) => other[1] - one[1])) console.log(`${outcome}: ${count}`);
  console.log(`longest ${Math.round(longest)} ms, seed ${longestSeed}`);
  return faults === 0 ? 0 : 1;
};

process.exitCode = main();
