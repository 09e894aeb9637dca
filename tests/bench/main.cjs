const { spawnSync } = require("node:child_process");
const fs = require("node:fs");
const os = require("node:os");
const path = require("node:path");
const { gzipSync } = require("node:zlib");
require("./typescript-hook.cjs");

const { jobsYearRow, sharedLedgerRows } = require("./books.ts");
const { calcRows } = require("./calc-cells.cjs");
const { fileRounds, fileRows } = require("./file-bench.cjs");
const { flightBench } = require("./flights/flight-bench.ts");
const { largestInputRows } = require("./largest-inputs.ts");
const { plansAtOnceRows } = require("./plans-at-once.ts");
const { pageLoadRows } = require("./page-load.cjs");
const { printTable } = require("./print-table.ts");
const { associated, builtFunctions } = require("../host/stand-in.ts");
const { pitch } = require("../../src/solver/layout/pitch.ts");
const { riserCount } = require("../../src/solver/layout/riser-count.ts");
const { treadFits } = require("../../src/solver/fit/tread-fit.ts");
const { lengthOf } = require("../../src/solver/length/length.ts");

const project = path.resolve(__dirname, "../..");
const rounds = 7;
const roundMilliseconds = 200;
const batch = 500;
const inputs = 64;
const manyReadings = 1000;
const manyFormulas = 1000;

const seconds = (milliseconds) => `${(milliseconds / 1000).toFixed(1)} s`;
const kilobytes = (bytes) => `${(bytes / 1000).toFixed(1)} kB`;
const whole = (number) => Math.round(number).toLocaleString("en-US");
const middle = (numbers) => [...numbers].sort((a, b) => a - b)[Math.floor(numbers.length / 2)];

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

const took = (work) => {
  const began = performance.now();
  work();
  return performance.now() - began;
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

// One reading of a tread by diagonals, a little different each time.
const readings = (count) =>
  Array.from({ length: count }, (_, n) => ({
    step: n + 1,
    run: 10,
    back: 36 + n / count,
    front: 36.25 + n / count,
    diagonal: 37.6 + n / count,
    secondDiagonal: 37.4 + n / count,
    leftLean: 0,
    rightLean: 0,
  }));

const fits = () => {
  const TREADFIT = associated().get("TREADFIT");
  const rows = readings(manyReadings);
  const table = [
    ["step", "run", "back", "front", "diagonal", "second diagonal"],
    ...rows.map(({ step, run, back, front, diagonal, secondDiagonal }) => [step, run, back, front, diagonal, secondDiagonal]),
  ];
  const piece = { nosing: 1.25, openEnd: "none", overhang: 1.25, returnWidth: 1.25, thickness: 1, closure: { most: 0.125, alike: 0.125 } };
  const built = TREADFIT(table).slice(1);
  for (const [index, fit] of treadFits(rows, piece).entries()) {
    if (Math.abs(built[index][1] - fit.length) > 1e-9) throw new Error(`TREADFIT and the bare solver do not agree on row ${index + 1}.`);
  }
  const pair = Array.from({ length: rounds }, () => [took(() => TREADFIT(table)), took(() => treadFits(rows, piece))]);
  const [call, bare] = [middle(pair.map(([time]) => time)), middle(pair.map(([, time]) => time))];
  return [`${whole(manyReadings)} readings`, `${call.toFixed(1)} ms`, `${bare.toFixed(1)} ms`, (call / bare).toFixed(1)];
};

const opened = () => {
  const { openWorkbook } = require(path.join(project, "dist/tools/engine.cjs"));
  return openWorkbook({
    bundle: fs.readFileSync(builtFunctions, "utf8"),
    metadata: JSON.parse(fs.readFileSync(path.join(project, "dist/functions.json"), "utf8")),
  });
};

// A thousand of our formulas in the engine beside a thousand native ones that do the same.
const recalculation = async () => {
  const sheet = (formula) => ({
    version: 1,
    sheets: [
      {
        name: "Bench",
        cells: Object.fromEntries([
          ["A1", { value: 10 }],
          ...Array.from({ length: manyFormulas }, (_, n) => [`B${n + 1}`, { formula: formula(n) }]),
        ]),
      },
    ],
  });
  const edited = async (formula) => {
    const book = opened();
    book.load(sheet(formula));
    await book.settled();
    const times = [];
    for (let round = 0; round < rounds; round += 1) {
      const began = performance.now();
      book.setCell("Bench", "A1", 10 + round / rounds);
      await book.settled();
      times.push(performance.now() - began);
    }
    book.dispose();
    return middle(times);
  };
  const ours = await edited((n) => `=STAIR.PITCH(${6 + n / manyFormulas},$A$1)`);
  const native = await edited((n) => `=DEGREES(ATAN2($A$1,${6 + n / manyFormulas}))`);
  return [`${whole(manyFormulas)} formulas that read one cell`, `${whole(ours)} ms`, `${whole(native)} ms`, (ours / native).toFixed(1)];
};

// From npm start until the sheet is ready in a browser: cold with nothing built, warm when the server runs already.
const pageReady = async () => {
  const { openedPages } = require("../browser/opened-page.ts");
  const began = performance.now();
  timed(project, process.execPath, ["src/bootstrap/build.cjs"]);
  const pages = await openedPages();
  const ready = async () => (await pages.open("")).page.waitForSelector("html[data-ready=yes]");
  await ready();
  const cold = performance.now() - began;
  const again = performance.now();
  await ready();
  const warm = performance.now() - again;
  await pages.close();
  return [["cold: build, serve, open", seconds(cold)], ["warm: open again", seconds(warm)]];
};

// Of the built file, one call each: the seconds a person waits.
const largest = () => {
  printTable("The largest input promised, one call each", [["function", "input", "took", "2 s"], ...largestInputRows(associated())]);
  printTable("Different cutting plans in one recalculation", [["plans", "took", "longest", "5 s"], ...plansAtOnceRows(associated())]);
};

// Moves of a shop: the four functions over one table, and a year of jobs in a workbook.
const books = async () => {
  printTable("20,000 moves, four functions over one table", [["function", "", "took", "2 s"], ...sharedLedgerRows(associated())]);
  printTable("A year of jobs in one workbook: an edit of one invoice until all is settled", [
    ["", "our four functions", "720 SUMIFS", "ours / SUMIFS"],
    await jobsYearRow(opened),
  ]);
};

// Beside other built folders, such as one of an earlier commit: npm run bench -- --page ../earlier/dist
const pageLoads = async () => {
  const others = process.argv.slice(process.argv.indexOf("--page") + 1).filter((argument) => !argument.startsWith("--"));
  const folders = [path.join(project, "dist"), ...(process.argv.includes("--page") ? others.map((folder) => path.resolve(folder)) : [])];
  printTable("Opening the live sheet", await pageLoadRows(folders));
};

// Custom formulas, one in twenty of them spilling, each step in a process of its own.
const files = () => printTable(`Workbook files of custom formulas (median of ${fileRounds}, the sizes taking turns)`, fileRows());

// Of the solver alone: nothing built is needed.
const isFlights = process.argv.includes("--flights");

const main = async () => {
  if (isFlights) return flightBench();
  // The extension is what npm run calc built last.
  if (process.argv.includes("--calc")) return printTable("Recalculated in LibreOffice Calc", calcRows());
  timed(project, process.execPath, ["src/bootstrap/build.cjs"]);
  if (process.argv.includes("--files")) return files();
  if (process.argv.includes("--largest")) return largest();
  if (process.argv.includes("--books")) return books();
  if (process.argv.includes("--page")) return pageLoads();
  const bytes = fs.readFileSync(builtFunctions);
  printTable("Calls per second (median of " + rounds + " rounds each, taking turns)", [
    ["function", "built functions.js", "bare solver", "times slower"],
    ...speed(),
  ]);
  printTable("Fits of treads in one call (median of " + rounds + ")", [["", "TREADFIT", "bare solver", "times slower"], fits()]);
  largest();
  await books();
  printTable("One edit in the sheet engine until all is settled (median of " + rounds + ")", [
    ["", "ours", "native", "times slower"],
    await recalculation(),
  ]);
  files();
  printTable("From npm start to a sheet that is ready", await pageReady());
  await pageLoads();
  printTable("Size of functions.js", [
    ["as built", kilobytes(bytes.length)],
    ["gzipped", kilobytes(gzipSync(bytes).length)],
  ]);
  printTable("A fresh copy of the last commit", freshCopy());
};

main().then(
  () => process.exit(0),
  (error) => {
    console.error(error);
    process.exit(1);
  },
);
