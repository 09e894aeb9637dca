// Writes tests/recorded-plans/plans.json anew from the solver as it stands: node tests/recorded-plans/record.cjs
// To be run when plans change on purpose; the change of the file is then part of the commit, for whoever reads it.
const { writeFileSync } = require("node:fs");
const path = require("node:path");
require("../bench/typescript-hook.cjs");

const { inNode } = require("./in-node.ts");
const { recordedJobs } = require("./jobs.ts");
const { hashOf } = require("./hashes.ts");

writeFileSync(path.join(__dirname, "plans.json"), `${JSON.stringify(recordedJobs.map((job) => hashOf(inNode(job))), null, 1)}\n`);
