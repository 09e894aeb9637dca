// A million random calls, or as many as asked for: npm run fuzz -- 200000 [seed]. Prints the seed, and each fault with the smallest call
// that shows it.
require("../bench/typescript-hook.cjs");

const fc = require("fast-check");
const { associated } = require("../host/stand-in.ts");
const { faultOf, outcome, written } = require("./faults.ts");
const { everyDeclaration, randomCalls } = require("./random-calls.ts");

const wanted = Number(process.argv[2] ?? 1_000_000);
const seed = Number(process.argv[3] ?? Math.floor(Math.random() * 2 ** 31));
// Milliseconds of the processor, so that other work on the machine does not count.
const slow = 2000;

const main = () => {
  if (!Number.isInteger(wanted) || wanted < 1 || !Number.isInteger(seed)) {
    console.error("Give a whole number of calls and, if you like, a whole number as seed: npm run fuzz -- 200000 7");
    return 1;
  }
  const functions = associated();
  const each = Math.ceil(wanted / everyDeclaration.length);
  console.log(`${each} calls of each of ${everyDeclaration.length} functions, seed ${seed}`);
  let faults = 0;
  for (const declaration of everyDeclaration) {
    const solve = functions.get(declaration.id);
    let longest = 0;
    const found = fc.check(
      fc.property(randomCalls(declaration), (given) => {
        const began = process.cpuUsage();
        const first = outcome(solve, given);
        longest = Math.max(longest, process.cpuUsage(began).user / 1000);
        const fault =
          faultOf(declaration, given, first) ??
          (written(first) === written(outcome(solve, given)) ? undefined : "another answer the second time");
        if (fault !== undefined) throw new Error(fault);
      }),
      { seed, numRuns: each },
    );
    const longestText = `longest call ${Math.round(longest)} ms${longest > slow ? ", SLOW" : ""}`;
    if (found.failed) {
      faults += 1;
      console.log(
        `${declaration.id}: ${found.errorInstance?.message ?? found.error}; ${longestText}\n  ` +
          `${JSON.stringify(found.counterexample).slice(0, 600)}`,
      );
    } else console.log(`${declaration.id}: nothing found; ${longestText}`);
  }
  return faults === 0 ? 0 : 1;
};

process.exitCode = main();
