// npm run test:calc: says first what is missing, builds where nothing is built, and runs the tests of this folder in LibreOffice Calc.
const { spawnSync } = require("node:child_process");
const fs = require("node:fs");
const path = require("node:path");

const project = path.resolve(__dirname, "../..");
const install = "On Debian: apt-get install libreoffice-calc python3-uno";

const runs = (command, args) => spawnSync(command, args, { stdio: "ignore" }).status === 0;

const missing = () => {
  const lacks = [];
  if (!runs("soffice", ["--version"])) lacks.push("LibreOffice Calc");
  if (!["/usr/bin/python3", "python3"].some((python) => runs(python, ["-c", "import uno"]))) lacks.push("python3-uno");
  return lacks;
};

const step = (args) => spawnSync(process.execPath, args, { cwd: project, stdio: "inherit" }).status ?? 1;

const needed = ["functions.js", "tools/treadsheet.cjs", "tools/calc.js", "tools/answers.js", "workbooks", "third-party-notices.txt"];
const isBuilt = () => needed.every((name) => fs.existsSync(path.join(project, "dist", name)));

const main = () => {
  const lacks = missing();
  if (lacks.length > 0) {
    console.error(`npm run test:calc needs ${lacks.join(" and ")}. ${install}`);
    return 1;
  }
  const steps = [
    ...(isBuilt() ? [] : [["src/bootstrap/build.cjs"]]),
    ["dist/tools/calc.js"],
    ["node_modules/jest/bin/jest.js", "--config", "tests/calc/jest.config.cjs", ...process.argv.slice(2)],
  ];
  for (const args of steps) {
    const code = step(args);
    if (code !== 0) return code;
  }
  return 0;
};

process.exitCode = main();
