const { spawnSync } = require("node:child_process");
const fs = require("node:fs");
const os = require("node:os");
const path = require("node:path");

const sizes = [2_000, 10_000];
const rounds = 3;
const ways = ["read", "calculate", "write", "over", "exceljs read", "exceljs write"];
const words = {
  read: "read", calculate: "calculate, all of it", write: "write anew", over: "save over the file, every value another",
  "exceljs read": "exceljs reads the same file", "exceljs write": "exceljs writes it",
};

const middle = (numbers) => [...numbers].sort((a, b) => a - b)[Math.floor(numbers.length / 2)];

const worked = (step, count, file) => {
  const { status, stdout, stderr } = spawnSync(
    process.execPath, ["--expose-gc", path.join(__dirname, "file-work.cjs"), step, String(count), file], { encoding: "utf8" },
  );
  if (status !== 0) throw new Error(`${step} of ${count} formulas did not finish: ${stderr}`);
  return JSON.parse(stdout);
};

const times = (one, other) => (one / other).toFixed(1);

/** How long workbooks of so many formulas take to read, work out and write, and what that takes up, the sizes taking turns. */
const fileRows = () => {
  const folder = fs.mkdtempSync(path.join(os.tmpdir(), "treadsheet-files-"));
  const found = new Map();
  try {
    const fileOf = (count) => path.join(folder, `${count}.xlsx`);
    for (const count of sizes) worked("make", count, fileOf(count));
    for (const step of ways) {
      const runs = sizes.map(() => []);
      for (let round = 0; round < rounds; round += 1)
        for (const [place, count] of sizes.entries()) runs[place].push(worked(step, count, fileOf(count)));
      found.set(step, runs.map((all) => ({ took: middle(all.map(({ took }) => took)), grew: middle(all.map(({ grew }) => grew)) })));
    }
    const bytes = sizes.map((count) => `${Math.round(fs.statSync(fileOf(count)).size / 1000)} kB`);
    const reference = { read: "exceljs read", write: "exceljs write", over: "exceljs write" };
    const rows = ways.map((step) => {
      const [small, large] = found.get(step);
      const [, beside] = found.get(reference[step]) ?? [];
      return [
        words[step], `${Math.round(small.took)} ms`, `${Math.round(large.took)} ms`, times(large.took, small.took),
        beside === undefined ? "" : times(large.took, beside.took), `${Math.round(small.grew)} MB`, `${Math.round(large.grew)} MB`,
        beside === undefined ? "" : times(large.grew, beside.grew),
      ];
    });
    const [small, large] = sizes.map((count) => count.toLocaleString("en-US"));
    return [
      [`a file of ${bytes.join(" and ")}`, small, large, "times", "to exceljs", `grows, ${small}`, large, "to exceljs"],
      ...rows,
    ];
  } finally {
    fs.rmSync(folder, { recursive: true, force: true });
  }
};

module.exports = { fileRows, fileRounds: rounds };
