// A million random calls, or as many as asked for: npm run fuzz -- 200000 [seed]. Each is made a second time, once more in every other way
// that says the same, and again in another process, the functions from the last to the first. Prints the seed, and each fault with the
// smallest call that shows it.
require("../bench/typescript-hook.cjs");

const { spawn } = require("node:child_process");
const { createHash } = require("node:crypto");
const path = require("node:path");
const fc = require("fast-check");
const { associated } = require("../host/stand-in.ts");
const { faultOf, outcome, written } = require("./faults.ts");
const { everyDeclaration, randomCalls } = require("./random-calls.ts");
const { isSameMeaning, twinsOf } = require("./twins.ts");

const wanted = Number(process.argv[2] ?? 1_000_000);
const seed = Number(process.argv[3] ?? Math.floor(Math.random() * 2 ** 31));
// Milliseconds of the processor, so that other work on the machine does not count.
const slow = 2000;

/** What the answers came to in a process of their own, by function. */
const elsewhere = (each) =>
  new Promise((resolve, reject) => {
    let told = "";
    const child = spawn(process.execPath, [path.join(__dirname, "other-process.cjs"), String(seed), String(each)], {
      stdio: ["ignore", "pipe", "inherit"],
    });
    child.stdout.on("data", (part) => (told += part));
    child.on("error", reject).on("close", () => resolve(new Map(told.trim().split("\n").map((line) => line.split(" ")))));
  });

const main = async () => {
  if (!Number.isInteger(wanted) || wanted < 1 || !Number.isInteger(seed)) {
    console.error("Give a whole number of calls and, if you like, a whole number as seed: npm run fuzz -- 200000 7");
    return 1;
  }
  const functions = associated();
  const each = Math.ceil(wanted / everyDeclaration.length);
  console.log(`${each} calls of each of ${everyDeclaration.length} functions, seed ${seed}`);
  const other = elsewhere(each);
  const sums = new Map();
  let faults = 0;
  let calls = 0;
  const byTwin = new Map();
  for (const declaration of everyDeclaration) {
    const solve = functions.get(declaration.id);
    const sum = createHash("sha256");
    let longest = 0;
    const found = fc.check(
      fc.property(randomCalls(declaration), (given) => {
        const began = process.cpuUsage();
        const first = outcome(solve, given);
        longest = Math.max(longest, process.cpuUsage(began).user / 1000);
        sum.update(written(first));
        const fault =
          faultOf(declaration, given, first) ??
          (written(first) === written(outcome(solve, given)) ? undefined : "another answer the second time");
        if (fault !== undefined) throw new Error(fault);
        calls += 2;
        for (const { how, given: twin, isInAnyOrder } of twinsOf(declaration, given)) {
          calls += 1;
          const said = outcome(solve, twin);
          byTwin.set(how, (byTwin.get(how) ?? 0) + 1);
          if (!isSameMeaning(first, said, { isInAnyOrder }))
            throw new Error(`another answer ${how}: ${JSON.stringify(twin)} ${written(first)} ${written(said)}`);
        }
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
    } else {
      sums.set(declaration.id, sum.digest("hex"));
      console.log(`${declaration.id}: nothing found; ${longestText}`);
    }
  }
  const sumsElsewhere = await other;
  for (const [id, sum] of sums) {
    if (sumsElsewhere.get(id) === sum) continue;
    faults += 1;
    console.log(`${id}: another answer in another process`);
  }
  console.log(`${each * sums.size} calls in another process`);
  for (const [how, count] of byTwin) console.log(`${count} ${how}`);
  console.log(`${calls} calls in all, ${faults} functions with a fault`);
  return faults === 0 ? 0 : 1;
};

main().then((code) => (process.exitCode = code));
