const { spawnSync } = require("node:child_process");
const fs = require("node:fs");
const path = require("node:path");
const { buildArguments } = require("./build-arguments.cjs");
const { packed, packedText } = require("./packed.cjs");
const { root, record } = require("./record.cjs");

const run = (what, args) => {
  const { status, signal } = spawnSync(process.execPath, args, { cwd: root, stdio: "inherit" });
  if (status === 0) return true;
  console.error(`Building stopped at: ${what} (${signal ?? `code ${status}`}). The message above says why.`);
  return false;
};

// What `npm start` opens is made of, and what writes the ready workbooks; the rest is for tests, benches, hosts and the command line.
const partsFor = {
  page: ["functions", "pages", "sheet page", "tools"],
  workbooks: ["functions", "engine", "tools", "more tools"],
};

const main = () => {
  const { address, only, refused } = buildArguments(process.argv.slice(2));
  if (refused !== undefined) {
    console.error(refused);
    return 1;
  }
  const parts = only === undefined ? [] : partsFor[only];
  const began = performance.now();
  // A file that is no longer built must not linger and be served.
  fs.rmSync(path.join(root, "dist"), { recursive: true, force: true });
  const built =
    run("webpack", [
      "node_modules/webpack-cli/bin/cli.js",
      "--config",
      "webpack.config.js",
      ...parts.flatMap((name) => ["--config-name", name]),
    ]) &&
    run("writing functions.json and the reference", ["dist/tools/generate.js", "dist", ...(only === undefined ? ["--package"] : [])]) &&
    run("the licences of what is shipped", ["dist/tools/licences.js"]) &&
    // A person who starts the page does not wait for files: the page makes them itself.
    (only === "page" || run("the ready workbooks", ["dist/tools/workbooks.js", "dist/workbooks"])) &&
    (address === undefined || run("the folder for the host", ["dist/tools/hosting.js", address, "hosted"]));
  if (!built) return 1;
  if (only === undefined) console.log(packedText(packed()));
  const took = performance.now() - began;
  record("build", took);
  const much = { page: ", as much as the page needs,", workbooks: ", as much as the ready workbooks need," }[only] ?? "";
  console.log(`Built dist/${much} in ${(took / 1000).toFixed(1)} s.`);
  return 0;
};

process.exitCode = main();
