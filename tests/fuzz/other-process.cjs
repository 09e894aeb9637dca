// The same calls in a process of their own, the functions from the last to the first: prints what all answers of each came to, as one sum.
require("../bench/typescript-hook.cjs");

const { createHash } = require("node:crypto");
const fc = require("fast-check");
const { associated } = require("../host/stand-in.ts");
const { outcome, written } = require("./faults.ts");
const { everyDeclaration, randomCalls } = require("./random-calls.ts");

const [seed, each] = process.argv.slice(2).map(Number);
const functions = associated();

for (const declaration of [...everyDeclaration].reverse()) {
  const solve = functions.get(declaration.id);
  const sum = createHash("sha256");
  fc.check(fc.property(randomCalls(declaration), (given) => void sum.update(written(outcome(solve, given)))), { seed, numRuns: each });
  console.log(`${declaration.id} ${sum.digest("hex")}`);
}
