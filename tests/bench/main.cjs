const { spawnSync } = require("node:child_process");
const fs = require("node:fs");
const os = require("node:os");
const path = require("node:path");
const { gzipSync } = require("node:zlib");
require("./typescript-hook.cjs");

const { associated, builtFunctions } = require("../host/stand-in.ts");
const { pitch } = require("../../src/solver/layout/pitch.ts");
const { riserCount } = require("../../src/solver/layout/riser-count.ts");
const { lengthOf } = require("../../src/solver/length/length.ts");

const project = path.resolve(__dirname, "../..");
const rounds = 7;
const roundMilliseconds = 200;
const batch = 500;
const inputs = 64;

const seconds = (milliseconds) => `${(milliseconds / 1000).toFixed(1)} s`;
const kilobytes = (bytes) => `${(bytes / 1000).toFixed(1)} kB`;
const whole = (number) => Math.round(number).toLocaleString("en-US");
const middle = (numbers) => [...numbers].sort((a, b) => a - b)[Math.floor(numbers.length / 2)];

const printTable = (title, rows) => {
  const widths = rows[0].map((_, column) => Math.max(...rows.map((row) => row[column].length)));
  console.log(`\n${title}`);
  for (const row of rows) console.log(`  ${row.map((cell, column) => (column === 0 ? cell.padEnd(widths[0]) : cell.padStart(widths[column]))).join("   ")}`);
};

const timed = (cwd, command, args) => {
  const began = performance.now();
  const { status, error, stdout, stderr } = spawnSync(command, args, {
    cwd,
    encoding: "utf8",
    maxBuffer: Infinity,
    shell: process.platform === "win32",
    env: { ...process.env, TREADSHEET_NO_BROWSER: "1" },
  });
  if (status !== 0) throw new Error(`${command} ${args.join(" ")} did not finish: ${error?.message ?? `${stdout}\n${stderr}`}`);
  return performance.now() - began;
};

// Measured in a fresh copy, as someone who has just fetched the project meets it; only what is committed is in it.
const freshCopy = () => {
  if (spawnSync("git", ["rev-parse", "--verify", "--quiet", "HEAD"], { cwd: project }).status !== 0) {
    return [["not measured", "nothing is committed here yet"]];
  }
  const parent = fs.mkdtempSync(path.join(os.tmpdir(), "treadsheet-bench-"));
  const copy = path.join(parent, "treadsheet");
  try {
    timed(parent, "git", ["clone", "--quiet", project, copy]);
    return [
      ["install (npm ci)", seconds(timed(copy, "npm", ["ci"]))],
      ["build", seconds(timed(copy, "npm", ["run", "build"]))],
      ["test (build, types, lint, import rules, tests)", seconds(timed(copy, "npm", ["test"]))],
    ];
  } finally {
    fs.rmSync(parent, { recursive: true, force: true });
  }
};

const callsPerSecond = (call) => {
  const began = performance.now();
  let calls = 0;
  let took = 0;
  while (took < roundMilliseconds) {
    for (let n = 0; n < batch; n += 1) call(n % inputs);
    calls += batch;
    took = performance.now() - began;
  }
  return (calls / took) * 1000;
};

// The two take turns, so that whatever else the machine does slows both.
const sideBySide = (built, bare) => {
  callsPerSecond(built);
  callsPerSecond(bare);
  const rates = Array.from({ length: rounds }, () => [callsPerSecond(built), callsPerSecond(bare)]);
  return [middle(rates.map(([rate]) => rate)), middle(rates.map(([, rate]) => rate))];
};

// A function that also takes ranges answers with one.
const single = (answer) => (Array.isArray(answer) ? answer[0][0] : answer);

const speed = () => {
  const functions = associated();
  const PITCH = functions.get("PITCH");
  const RISERS = functions.get("RISERS");
  const rises = Array.from({ length: inputs }, (_, n) => 6 + n / inputs);
  const totals = Array.from({ length: inputs }, (_, n) => 90 + n / 2);
  const inches = (number) => lengthOf(number, "in");
  const cases = [
    ["PITCH", (n) => single(PITCH(rises[n], 10)), (n) => pitch(rises[n], 10)],
    ["RISERS", (n) => single(RISERS(totals[n], 7.75)), (n) => riserCount(inches(totals[n]), inches(7.75))],
  ];
  return cases.map(([id, built, bare]) => {
    for (let n = 0; n < inputs; n += 1) {
      if (built(n) !== bare(n)) throw new Error(`${id}: the built function and the bare solver do not agree on input ${n}.`);
    }
    const [builtRate, bareRate] = sideBySide(built, bare);
    return [id, whole(builtRate), whole(bareRate), (bareRate / builtRate).toFixed(1)];
  });
};

const main = () => {
  timed(project, process.execPath, ["src/bootstrap/build.cjs"]);
  const bytes = fs.readFileSync(builtFunctions);
  printTable("Calls per second (median of " + rounds + " rounds each, taking turns)", [
    ["function", "built functions.js", "bare solver", "times slower"],
    ...speed(),
  ]);
  printTable("Size of functions.js", [
    ["as built", kilobytes(bytes.length)],
    ["gzipped", kilobytes(gzipSync(bytes).length)],
  ]);
  printTable("A fresh copy of the last commit", freshCopy());
};

main();
